import { parse } from "csv-parse/sync";
import { type LineQuotes, lineQuotes } from "./line-quotes.ts";

/** Why a line is no row of cells. */
export type BrokenRow = "quotes" | "long" | "nul";
export type CsvRow = readonly string[] | BrokenRow;

/** Some consecutive records of a table, blank lines left out. */
export interface Batch {
  readonly rows: readonly CsvRow[];
  /** Line on which each record starts, from 1. */
  readonly lines: readonly number[];
}

const NEWLINE = 10;
const RETURN = 13;
const QUOTE = 34;

/** Bytes handed to the parser at once: small enough that its rows die young, large enough that starting it costs nothing. */
const PART = 1 << 18;
/** After a break the next one may be near: what is read behind it is read again. */
const WARY_PART = 1 << 12;
/** A record longer than this is no swing. */
export const LONGEST_RECORD = PART;
/** How far the end of a quoted cell is looked for. */
const LONGEST_LOOK = 1 << 21;

/** Line ends of the file: LF, CRLF or both mixed; a lone CR only where nothing else ends a line. */
function lineEnds(bytes: Uint8Array): string[] {
  const returns = bytes.includes(RETURN);
  if (!bytes.includes(NEWLINE)) return returns ? ["\r"] : ["\n"];
  return returns ? ["\r\n", "\n"] : ["\n"];
}

const isBlank = (record: readonly string[]): boolean => record.length < 2 && (record[0] ?? "").trim() === "";

/**
 * Reads CSV part by part, so that a file of any size costs the memory of one part. Where quoting is broken, the line on
 * which the broken record starts is lost, and reading goes on with the next line. In a line of which no cell begins with a
 * quotation mark, those inside cells are text.
 *
 * @param bytes     UTF-8, with or without byte order mark
 * @param firstLine on which reading starts, from 1
 */
export function* csvBatches(bytes: Uint8Array, delimiter: string, firstLine = 1): Generator<Batch> {
  const ends = lineEnds(bytes);
  const newline = ends.at(-1) === "\r" ? RETURN : NEWLINE;
  const marked = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  let at = skipLines(bytes, marked ? 3 : 0, firstLine - 1, newline);
  let line = firstLine;
  let part = PART;
  const mark = delimiter.charCodeAt(0);
  while (at < bytes.length) {
    const end = partEnd(bytes, at, part, newline);
    if (end === null) {
      yield { rows: ["long"], lines: [line] };
      at = after(bytes, at, newline);
      line++;
      continue;
    }
    const piece = bytes.subarray(at, end);
    const { records, stopped } = cut(piece, delimiter, ends);
    const starts = lineStarts(records, piece, line, newline, stopped === null);
    if (records.length > 0) yield batchOf(records, starts.of, piece);
    line = starts.next;
    at = stopped === null ? end : skipLines(bytes, at, starts.next - starts.first, newline);
    if (stopped === null) part = Math.min(PART, 2 * part);
    else if (stopped === "open" && end < bytes.length && (records.length > 0 || part < LONGEST_LOOK)) {
      // The quotation may close further on: look at more, unless that helped already.
      if (records.length === 0) part *= 2;
    } else {
      const bare = runOf("bare", bytes, at, mark, newline);
      const lost = bare.lines > 0 ? bare : runOf("broken", bytes, at, mark, newline);
      const count = Math.max(1, lost.lines);
      const lines = Array.from({ length: count }, (_, index) => line + index);
      const run = bytes.subarray(at, bare.end);
      if (bare.lines > 0) yield batchOf(unquoted(run, delimiter, ends), lines, run);
      else yield { rows: lines.map(() => "quotes" as const), lines };
      at = lost.lines > 0 ? lost.end : after(bytes, at, newline);
      line += count;
      part = WARY_PART;
    }
  }
}

/** Consecutive lines from `at` on of which the quotation marks are of one kind, about a part of them at most. */
function runOf(
  kind: LineQuotes,
  bytes: Uint8Array,
  at: number,
  mark: number,
  newline: number,
): { lines: number; end: number } {
  let lines = 0;
  let end = at;
  while (end < bytes.length && end - at < PART) {
    const { quotes, next } = lineQuotes(bytes, end, mark, newline);
    if (quotes !== kind) break;
    end = next;
    lines++;
  }
  return { lines, end };
}

/** Lines in which quotation marks are text. */
const unquoted = (part: Uint8Array, delimiter: string, ends: string[]): string[][] =>
  parse(part, { delimiter, record_delimiter: ends, relax_column_count: true, quote: null });

/** Cuts a part into records; `stopped` tells that quoting broke, or that a quotation was still open at the end. */
function cut(
  part: Uint8Array,
  delimiter: string,
  ends: string[],
): { records: string[][]; stopped: "broken" | "open" | null } {
  const options = { delimiter, record_delimiter: ends, relax_column_count: true };
  try {
    return { records: parse(part, options), stopped: null };
  } catch {
    // Once more for the records before the break: listening to every one of them costs time that sound files need not spend.
    const records: string[][] = [];
    try {
      parse(part, {
        ...options,
        on_record: (record: string[]) => {
          records.push(record);
          return null;
        },
      });
      return { records, stopped: null };
    } catch (error) {
      const open = error instanceof Error && "code" in error && error.code === "CSV_QUOTE_NOT_CLOSED";
      return { records, stopped: open ? "open" : "broken" };
    }
  }
}

function batchOf(records: readonly string[][], starts: readonly number[], part: Uint8Array): Batch {
  const long = part.length > LONGEST_RECORD;
  const nul = part.includes(0);
  const rows: CsvRow[] = [];
  const lines: number[] = [];
  for (const [index, record] of records.entries()) {
    if (isBlank(record)) continue;
    rows.push(long || nul ? sound(record, nul) : record);
    lines.push(starts[index] ?? 0);
  }
  return { rows, lines };
}

function sound(record: readonly string[], nul: boolean): CsvRow {
  if (record.reduce((length, cell) => length + cell.length, 0) > LONGEST_RECORD) return "long";
  return nul && record.some((cell) => cell.includes("\0")) ? "nul" : record;
}

/** Start line of every record of a part, and the line that follows the last one. */
function lineStarts(
  records: readonly (readonly string[])[],
  part: Uint8Array,
  first: number,
  newline: number,
  whole: boolean,
): { of: number[]; first: number; next: number } {
  if (whole && countLines(part, newline) === records.length) {
    return { of: records.map((_, index) => first + index), first, next: first + records.length };
  }
  const code = String.fromCharCode(newline);
  let line = first;
  const of = records.map((record) => {
    const start = line;
    line++;
    for (const cell of record) for (let at = cell.indexOf(code); at !== -1; at = cell.indexOf(code, at + 1)) line++;
    return start;
  });
  return { of, first, next: line };
}

/** Lines of a part; a last line without a line end counts too. */
function countLines(bytes: Uint8Array, newline: number): number {
  let count = 0;
  for (let at = bytes.indexOf(newline); at !== -1; at = bytes.indexOf(newline, at + 1)) count++;
  return bytes.length > 0 && bytes[bytes.length - 1] !== newline ? count + 1 : count;
}

/** Where the next line starts. */
function after(bytes: Uint8Array, at: number, newline: number): number {
  const end = bytes.indexOf(newline, at);
  return end === -1 ? bytes.length : end + 1;
}

function skipLines(bytes: Uint8Array, at: number, count: number, newline: number): number {
  let to = at;
  for (let line = 0; line < count; line++) to = after(bytes, to, newline);
  return to;
}

/**
 * Where a part that starts at `at` may end: behind a line end outside quotation marks, as far as counting them tells; the
 * parser has the last word. Null when the line at `at` is longer than anything that is looked at.
 */
function partEnd(bytes: Uint8Array, at: number, length: number, newline: number): number | null {
  const limit = at + length;
  if (limit >= bytes.length) return bytes.length;
  const quotes: number[] = [];
  const window = bytes.subarray(at, limit);
  for (let quote = window.indexOf(QUOTE); quote !== -1; quote = window.indexOf(QUOTE, quote + 1))
    quotes.push(at + quote);
  let before = limit;
  for (let count = quotes.length; count >= 0; count--) {
    const from = quotes[count - 1] ?? at - 1;
    if (count % 2 === 0) {
      const end = bytes.lastIndexOf(newline, before - 1);
      if (end > from) return end + 1;
    }
    before = from;
  }
  const look = bytes.subarray(at, at + Math.max(LONGEST_LOOK, length));
  const next = look.indexOf(newline, length);
  const end = next === -1 ? look.lastIndexOf(newline) : next;
  return end === -1 ? null : at + end + 1;
}
