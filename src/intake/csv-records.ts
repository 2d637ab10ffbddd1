import { parse } from "csv-parse/sync";

/** A CSV file as rows of cells, just as they are written. */
export interface CsvRecords {
  /** Names of the header, spaces at the ends removed; null when its quoting is broken, empty when there is none. */
  readonly header: readonly string[] | null;
  readonly headerLine: number;
  /** Data rows. A row whose quoting is broken is null. Blank lines are no rows. */
  readonly rows: readonly (readonly string[] | null)[];
  /** Line on which each row starts, from 1. */
  readonly lines: Int32Array;
}

const NEWLINE = 10;
const RETURN = 13;

/** Line ends of the file: LF, CRLF or both mixed; a lone CR only where nothing else ends a line. */
function lineEnds(bytes: Uint8Array): string[] {
  const returns = bytes.includes(RETURN);
  if (!bytes.includes(NEWLINE)) return returns ? ["\r"] : ["\n"];
  return returns ? ["\r\n", "\n"] : ["\n"];
}

function records(input: Uint8Array | string, delimiter: string, ends: string[], to?: number): string[][] {
  const options = { bom: true, delimiter, record_delimiter: ends, relax_column_count: true };
  return parse(input, to === undefined ? options : { ...options, to });
}

const isBlank = (record: readonly string[]): boolean => record.length < 2 && (record[0] ?? "").trim() === "";

/**
 * Names of the first row alone.
 *
 * @returns null when its quoting is broken, nothing when the file holds nothing
 */
export function readHeader(bytes: Uint8Array, delimiter: string): string[] | null {
  try {
    for (let count = 1; ; count++) {
      const found = records(bytes, delimiter, lineEnds(bytes), count);
      const last = found.at(-1);
      if (last === undefined || found.length < count) return [];
      if (!isBlank(last)) return last.map((name) => name.trim());
    }
  } catch {
    return null;
  }
}

/**
 * Reads a whole CSV file. Where quoting is broken the file is read again line by line, so that only the broken
 * lines are lost (and a cell with a line break in it counts as broken there).
 *
 * @param bytes UTF-8, with or without byte order mark
 */
export function readRecords(bytes: Uint8Array, delimiter: string): CsvRecords {
  const ends = lineEnds(bytes);
  const newline = ends.at(-1) === "\r" ? RETURN : NEWLINE;
  let found: (string[] | null)[];
  try {
    found = records(bytes, delimiter, ends);
  } catch {
    found = lineByLine(bytes, delimiter, ends);
  }
  const starts = lineStarts(found, bytes, newline);
  const first = found.findIndex((record) => record === null || !isBlank(record));
  if (first === -1) return { header: [], headerLine: 1, rows: [], lines: new Int32Array(0) };
  const rows: (string[] | null)[] = [];
  const lines: number[] = [];
  for (let index = first + 1; index < found.length; index++) {
    const record = found[index] ?? null;
    if (record !== null && isBlank(record)) continue;
    rows.push(record);
    lines.push(starts === null ? index + 1 : (starts[index] ?? 0));
  }
  const header = found[first]?.map((name) => name.trim()) ?? null;
  return { header, headerLine: starts?.[first] ?? first + 1, rows, lines: Int32Array.from(lines) };
}

function lineByLine(bytes: Uint8Array, delimiter: string, ends: string[]): (string[] | null)[] {
  const text = new TextDecoder("utf-8").decode(bytes);
  const lines = text.split(ends.at(-1) === "\r" ? "\r" : /\r?\n/);
  if (lines.at(-1) === "") lines.pop();
  return lines.map((line) => {
    if (!line.includes('"')) return line.split(delimiter);
    try {
      return records(line, delimiter, ["\n"])[0] ?? [""];
    } catch {
      return null;
    }
  });
}

/** Line on which each record starts; null when every record is one line, so that counting them is enough. */
function lineStarts(found: readonly (readonly string[] | null)[], bytes: Uint8Array, newline: number): number[] | null {
  if (countLines(bytes, newline) === found.length) return null;
  const code = String.fromCharCode(newline);
  let line = 1;
  return found.map((record) => {
    const start = line;
    line += 1 + (record ?? []).reduce((breaks, cell) => breaks + cell.split(code).length - 1, 0);
    return start;
  });
}

/** Lines of a file; a last line without a line end counts too. */
function countLines(bytes: Uint8Array, newline: number): number {
  let count = 0;
  for (let at = bytes.indexOf(newline); at !== -1; at = bytes.indexOf(newline, at + 1)) count++;
  return bytes.length > 0 && bytes[bytes.length - 1] !== newline ? count + 1 : count;
}
