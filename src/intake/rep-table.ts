import type { RepTable, RowPlace } from "../schema/season.ts";
import { isoDay } from "./calendar-day.ts";
import type { SwingFields } from "./swing-fields.ts";
import type { SwingTable } from "./swing-table.ts";

/** The other device's row of a swing. */
export type PartnerOf = (table: SwingTable, row: number) => RowPlace | null;

/** Kept rows of one athlete in one file. */
interface Part {
  readonly table: SwingTable;
  readonly rows: readonly number[];
}

/**
 * Every athlete's kept rows as plain columns, in the order of file and line.
 *
 * @param athletes  ids by the index that stands for them in the tables
 * @param partnerOf where two rows became one rep
 * @returns one table per id, empty for an athlete without rows
 */
export function repTables(
  tables: readonly SwingTable[],
  athletes: readonly string[],
  fields: SwingFields,
  partnerOf: PartnerOf = () => null,
): Map<string, RepTable> {
  const parts = athletes.map((): Part[] => []);
  for (const table of tables) {
    const rows = athletes.map((): number[] => []);
    for (let row = 0; row < table.n; row++) if (table.kept[row] === 1) rows[table.athlete[row] ?? -1]?.push(row);
    for (const [index, own] of rows.entries()) if (own.length > 0) parts[index]?.push({ table, rows: own });
  }
  return new Map(athletes.map((id, index) => [id, repTable(parts[index] ?? [], fields, partnerOf)]));
}

function repTable(parts: readonly Part[], fields: SwingFields, partnerOf: PartnerOf): RepTable {
  const numbers: Record<string, (number | null)[]> = {};
  const words: Record<string, (string | null)[]> = {};
  for (const { field } of fields.columns) {
    if (parts.some(({ table }) => table.numbers.has(field))) numbers[field] = column(parts, numberAt(field));
    if (parts.some(({ table }) => table.words.has(field))) words[field] = column(parts, wordAt(field));
  }
  for (const field of ["assigned", "pairing"])
    if (parts.some(({ table }) => table.words.has(field))) words[field] = column(parts, wordAt(field));
  const day = column(
    parts,
    ({ day: days }) =>
      (row) =>
        days[row] ?? Number.NaN,
  );
  const names = new Map([...new Set(day)].map((ms) => [ms, isoDay(ms)]));
  return {
    n: day.length,
    date: day.map((ms) => names.get(ms) ?? isoDay(ms)),
    day,
    file: column(
      parts,
      ({ file }) =>
        () =>
          file,
    ),
    line: column(
      parts,
      ({ lines }) =>
        (row) =>
          lines[row] ?? 0,
    ),
    partner: column(parts, (table) => (row) => partnerOf(table, row)),
    numbers,
    words,
  };
}

/** One column over all parts. Filled by hand: flattening an array per row took longer than reading the file. */
function column<T>(parts: readonly Part[], of: (table: SwingTable) => (row: number) => T): T[] {
  const values: T[] = [];
  for (const { table, rows } of parts) {
    const at = of(table);
    for (const row of rows) values.push(at(row));
  }
  return values;
}

const numberAt = (field: string) => (table: SwingTable) => {
  const values = table.numbers.get(field);
  return (row: number): number | null => {
    const value = values?.[row] ?? Number.NaN;
    return Number.isNaN(value) ? null : value;
  };
};

const wordAt = (field: string) => (table: SwingTable) => {
  const values = table.words.get(field);
  return (row: number): string | null => values?.[row] ?? null;
};
