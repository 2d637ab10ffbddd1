import type { SummaryRows } from "./swing-plan.ts";

/** What marks a row below the header as no swing. */
export interface RowMarks {
  /** Names of the header, spaces at the ends removed. */
  readonly header: readonly string[];
  readonly unitsRow: readonly string[] | null;
  readonly summary: SummaryRows | null;
}

/**
 * Whether a row is no swing: the header once more, the row of units, or a sum of other rows by the words of the mapping.
 */
export function isSummary(row: readonly string[], { header, unitsRow, summary }: RowMarks): boolean {
  return (
    sameCells(row, header) ||
    (unitsRow !== null && sameCells(row, unitsRow)) ||
    (summary !== null && sumsUp(row, summary))
  );
}

/** Cell by cell, spaces at the ends aside. */
export function sameCells(row: readonly string[], other: readonly string[]): boolean {
  if (row.length !== other.length) return false;
  for (let index = 0; index < row.length; index++) if ((row[index] ?? "").trim() !== other[index]) return false;
  return true;
}

function sumsUp(row: readonly string[], { index, words }: SummaryRows): boolean {
  const cell = index === null ? row.find((text) => text.trim() !== "") : row[index];
  return cell !== undefined && words.has(cell.trim().toLowerCase());
}
