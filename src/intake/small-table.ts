import { basename } from "node:path/posix";
import type { z } from "zod";
import type { Place, Problem } from "../schema/season.ts";
import { type CsvRecords, readRecords } from "./csv-records.ts";
import { decode } from "./decode.ts";
import { near } from "./near.ts";
import { fault, remark, rowFault, wholeFile, withSuggestion } from "./problem.ts";
import { findings } from "./schema-issues.ts";
import { wrongDelimiter } from "./wrong-delimiter.ts";

type RowSchema<T> = z.ZodType<T> & { readonly shape: Readonly<Record<string, z.ZodType>> };

/** A small table as read. A row that does not hold is set aside with its problems; the others stand. */
export interface SmallTable<T> {
  /** Names of its columns, in order; none where there is no table. */
  readonly header: readonly string[];
  readonly rows: readonly T[];
  /** Line on which each of `rows` starts, from 1. */
  readonly lines: readonly number[];
  readonly problems: readonly Problem[];
}

/**
 * Reads one of the small tables that the trainer keeps as CSV. A blank cell is absent.
 *
 * @param schema of a row; its keys are the columns, those that do not take a blank are required
 */
export function readSmallTable<T>(file: string, bytes: Uint8Array, schema: RowSchema<T>): SmallTable<T> {
  const none = (problems: readonly Problem[]): SmallTable<T> => ({ header: [], rows: [], lines: [], problems });
  if (decode(bytes) === null) return none([fault("not-utf-8", wholeFile(file))]);
  const records = readRecords(bytes, ",");
  const { header } = records;
  if (header === null) return none([fault("broken-header", { file, line: records.headerLine, column: null })]);
  if (records.rows.length === 0 && header.length === 0) return none([remark("empty-file", wholeFile(file))]);
  const problems = headerProblems(file, header, records.headerLine, schema.shape);
  const missing = problems.some((problem) => problem.code !== "unknown-column");
  if (missing) return none(problems);
  const rows: T[] = [];
  const lines: number[] = [];
  for (let index = 0; index < records.rows.length; index++) {
    const row = readRow(file, records, index, schema);
    problems.push(...row.problems);
    if (row.value === null) continue;
    rows.push(row.value);
    lines.push(records.lines[index] ?? 0);
  }
  return { header, rows, lines, problems };
}

function headerProblems(
  file: string,
  header: readonly string[],
  line: number,
  shape: RowSchema<unknown>["shape"],
): Problem[] {
  const columns = Object.keys(shape);
  const free = columns.filter((column) => !header.includes(column));
  const hint = wrongDelimiter(header, columns);
  if (hint !== null) return [fault("wrong-delimiter", { file, line, column: null }, { delimiter: hint })];
  const problems = header.flatMap((name, index) => {
    const at = { file, line, column: index + 1 };
    if (header.indexOf(name) < index && name !== "")
      return [fault("repeated-column", at, { column: name, other: name })];
    return columns.includes(name) || name === ""
      ? []
      : [fault("unknown-column", at, withSuggestion({ column: name }, near(name, free)))];
  });
  for (const column of free) {
    if (shape[column]?.safeParse(undefined).success) continue;
    const unknown = header.filter((name) => !columns.includes(name));
    const args = withSuggestion({ column }, near(column, unknown));
    problems.push(fault("missing-column", { file, line, column: null }, args));
  }
  return problems;
}

function readRow<T>(
  file: string,
  { header, rows, lines }: CsvRecords,
  index: number,
  schema: RowSchema<T>,
): { value: T | null; problems: Problem[] } {
  const names = header ?? [];
  const cells = rows[index];
  const at: Place = { file, line: lines[index] ?? null, column: null };
  if (!cells) return { value: null, problems: [rowFault("unreadable-row", at, { detail: "quotes" })] };
  if (cells.length !== names.length) {
    return {
      value: null,
      problems: [rowFault("unreadable-row", at, { fields: cells.length, expected: names.length })],
    };
  }
  const written = names.flatMap((name, column) => {
    const cell = (cells[column] ?? "").trim();
    return name in schema.shape && cell !== "" ? [[name, cell] as const] : [];
  });
  const data = Object.fromEntries(written);
  const result = schema.safeParse(data);
  if (result.success) return { value: present(result.data), problems: [] };
  const problems = findings(schema, data, result.error.issues).map((found) => {
    const key = String(found.path[0] ?? "");
    const place = { ...at, column: names.indexOf(key) + 1 };
    if (found.code === "missing-key") return rowFault("missing-key", place, { key, in: basename(file) });
    const args = { key, found: found.found, expected: found.expected };
    return rowFault("wrong-value", place, withSuggestion(args, found.suggestion));
  });
  return { value: null, problems };
}

/** An absent cell is an absent key, so that the row is plain JSON. */
function present<T>(row: T): T {
  return Object.fromEntries(Object.entries(row as object).filter(([, value]) => value !== undefined)) as T;
}
