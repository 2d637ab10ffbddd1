import type { RepTable } from "../schema/season.ts";
import { isoDay } from "./calendar-day.ts";
import type { SwingFields } from "./swing-fields.ts";
import type { SwingTable } from "./swing-table.ts";

/** Kept rows of one athlete in one file. */
interface Part {
  readonly table: SwingTable;
  readonly rows: readonly number[];
}

/**
 * Every athlete's kept rows as plain columns, in the order of file and line.
 *
 * @param athletes ids by the index that stands for them in the tables
 * @returns one table per id, empty for an athlete without rows
 */
export function repTables(
  tables: readonly SwingTable[],
  athletes: readonly string[],
  fields: SwingFields,
): Map<string, RepTable> {
  const parts = athletes.map((): Part[] => []);
  for (const table of tables) {
    const rows = athletes.map((): number[] => []);
    for (let row = 0; row < table.n; row++) if (table.kept[row] === 1) rows[table.athlete[row] ?? -1]?.push(row);
    for (const [index, own] of rows.entries()) if (own.length > 0) parts[index]?.push({ table, rows: own });
  }
  return new Map(athletes.map((id, index) => [id, repTable(parts[index] ?? [], fields)]));
}

function repTable(parts: readonly Part[], fields: SwingFields): RepTable {
  const each = <T>(of: (table: SwingTable, row: number) => T): T[] =>
    parts.flatMap(({ table, rows }) => rows.map((row) => of(table, row)));
  const day = each((table, row) => table.day[row] ?? Number.NaN);
  const numbers: Record<string, (number | null)[]> = {};
  const words: Record<string, (string | null)[]> = {};
  for (const { field } of fields.columns) {
    if (parts.some(({ table }) => table.numbers.has(field)))
      numbers[field] = parts.flatMap((part) => numbersOf(part, field));
    if (parts.some(({ table }) => table.words.has(field))) words[field] = parts.flatMap((part) => wordsOf(part, field));
  }
  return {
    n: day.length,
    date: day.map(isoDay),
    day,
    file: each((table) => table.file),
    line: each((table, row) => table.lines[row] ?? 0),
    numbers,
    words,
  };
}

function numbersOf({ table, rows }: Part, field: string): (number | null)[] {
  const values = table.numbers.get(field);
  return rows.map((row) => {
    const value = values?.[row] ?? Number.NaN;
    return Number.isNaN(value) ? null : value;
  });
}

function wordsOf({ table, rows }: Part, field: string): (string | null)[] {
  const values = table.words.get(field);
  return rows.map((row) => values?.[row] ?? null);
}
