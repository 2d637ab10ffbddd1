import { csvBatches } from "./csv-batches.ts";

/** A small CSV file as rows of cells, just as they are written. */
export interface CsvRecords {
  /** Names of the header, spaces at the ends removed; null when its quoting is broken, empty when there is none. */
  readonly header: readonly string[] | null;
  readonly headerLine: number;
  /** Data rows. A row that cannot be cut into cells is null. Blank lines are no rows. */
  readonly rows: readonly (readonly string[] | null)[];
  /** Line on which each row starts, from 1. */
  readonly lines: Int32Array;
}

/**
 * Reads a whole CSV file, the first record as header. Swing files do not pass here: see `swing-file.ts`.
 *
 * @param bytes UTF-8, with or without byte order mark
 */
export function readRecords(bytes: Uint8Array, delimiter: string): CsvRecords {
  const rows: (readonly string[] | null)[] = [];
  const lines: number[] = [];
  for (const batch of csvBatches(bytes, delimiter)) {
    for (const row of batch.rows) rows.push(typeof row === "string" ? null : row);
    lines.push(...batch.lines);
  }
  const [first, ...others] = rows;
  if (first === undefined) return { header: [], headerLine: 1, rows: [], lines: new Int32Array(0) };
  const header = first?.map((name) => name.trim()) ?? null;
  return { header, headerLine: lines[0] ?? 1, rows: others, lines: Int32Array.from(lines.slice(1)) };
}
