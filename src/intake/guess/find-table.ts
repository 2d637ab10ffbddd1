import { HEADER_LINES } from "../../schema/mapping.ts";
import { clockForm } from "./clock-form.ts";
import { numberIn } from "./column-values.ts";
import { dateForms } from "./date-form.ts";
import { unaccented, unitOf } from "./header-name.ts";

/** A table found among the rows of a file. */
export interface FoundTable {
  /** Cells of the header, spaces at the ends removed. */
  readonly header: readonly string[];
  /** Rows that stand above the header. */
  readonly above: number;
  /** Cells of the row of units below the header, spaces at the ends removed; null when there is none. */
  readonly unitsRow: readonly string[] | null;
  /** Data rows, and nothing else. */
  readonly rows: readonly (readonly string[])[];
  /** First cells of rows that sum up others, as they are written; each once, in order. */
  readonly summaryWords: readonly string[];
  /** Share of the rows that are as wide as the header, 0 to 1. */
  readonly even: number;
}

type Row = readonly string[];

const filledOf = (row: Row): string[] => row.map((cell) => cell.trim()).filter((cell) => cell !== "");
const isNumber = (text: string): boolean => numberIn(text, ".") !== null || numberIn(text, ",") !== null;
const isMoment = (text: string): boolean => {
  const [day = "", ...rest] = text.split(/[T ]/);
  return dateForms([day]).share > 0 || dateForms([text]).share > 0 || clockForm([rest.join(" ") || text]).share > 0;
};

/** Most common number of fields among rows; the wider of equally common ones. */
function usualWidth(rows: readonly Row[]): number {
  const counts = new Map<number, number>();
  for (const { length } of rows) counts.set(length, (counts.get(length) ?? 0) + 1);
  return [...counts].sort(([w, n], [v, m]) => m - n || v - w)[0]?.[0] ?? 0;
}

/** A header names its columns: nothing in it is a number or a day, and most of it is filled. */
function isHeader(row: Row, width: number): boolean {
  const filled = filledOf(row);
  if (row.length !== width || filled.length < Math.max(2, width * 0.6)) return false;
  if (filled.some((cell) => isNumber(cell) || isMoment(cell))) return false;
  return filled.some((cell) => /\p{L}/u.test(cell)) && filled.filter((cell) => unitOf(cell) === null).length > 1;
}

/** A row under the header that holds units, and neither numbers nor days. */
function isUnitsRow(row: Row | undefined, width: number): boolean {
  if (row === undefined || row.length !== width) return false;
  const filled = filledOf(row);
  const units = filled.filter((cell) => unitOf(cell) !== null).length;
  return units > 0 && !filled.some((cell) => isNumber(cell) || isMoment(cell)) && units * 2 >= filled.length;
}

const SUMS: ReadonlySet<string> = new Set(
  "total totals average averages avg mean max maximum min minimum median sum summary best promedio media total totales maximo minimo resumen suma".split(
    " ",
  ),
);

/** A row that sums up others begins with a word for it and has no day of its own. */
function summaryWord(row: Row): string | null {
  const [first = ""] = filledOf(row);
  const [word = ""] = unaccented(first).split(/[\s:]+/);
  return SUMS.has(word) && !filledOf(row).slice(1).some(isMoment) ? first : null;
}

const isAgain = (row: Row, header: Row): boolean => row.every((cell, i) => cell.trim() === header[i]);

/** Takes out rows that sum up others. A word that also begins a row with a day of its own is somebody's name. */
function withoutSums(rows: readonly Row[]): { data: Row[]; words: Set<string> } {
  const found = rows.map((row) => summaryWord(row));
  const names = new Set(rows.flatMap((row, i) => (found[i] === null ? [filledOf(row)[0] ?? ""] : [])));
  const words = new Set(found.filter((word) => word !== null && !names.has(word)) as string[]);
  return { data: rows.filter((_, i) => !words.has(found[i] ?? "")), words };
}

/**
 * Finds header and data among the rows of a file: lines above the header, a header that comes again, a row of units and rows
 * that sum up others are told apart from swings.
 *
 * @returns null when nothing looks like a header of two columns or more with a row below it
 */
export function findTable(rows: readonly Row[]): FoundTable | null {
  const filled = rows.filter((row) => filledOf(row).length > 0);
  const width = usualWidth(filled.length > HEADER_LINES ? filled.slice(HEADER_LINES) : filled);
  const at = filled.slice(0, HEADER_LINES).findIndex((row) => isHeader(row, width));
  const header = filled[at]?.map((cell) => cell.trim());
  if (header === undefined || width < 2) return null;
  const below = filled.slice(at + 1);
  const unitsRow = isUnitsRow(below[0], width) ? (below[0]?.map((cell) => cell.trim()) ?? null) : null;
  const { data, words } = withoutSums(
    (unitsRow === null ? below : below.slice(1)).filter((row) => !isAgain(row, header)),
  );
  const even = data.filter(({ length }) => length === width).length / Math.max(1, data.length);
  if (data.length === 0) return null;
  return {
    header,
    above: at,
    unitsRow,
    rows: data.filter(({ length }) => length === width),
    summaryWords: [...words].sort(),
    even,
  };
}
