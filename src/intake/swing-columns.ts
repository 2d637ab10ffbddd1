import type { SetAsideReason } from "../schema/reasons.ts";
import {
  CANONICAL_CELL,
  type CellContext,
  type CellReader,
  cellReader,
  NOBODY,
  OUTSIDE,
  SEVERAL,
  UNREADABLE,
} from "./cell-reader.ts";
import type { CsvRecords } from "./csv-records.ts";
import type { SwingFields } from "./swing-fields.ts";
import type { PlannedColumn, SwingPlan } from "./swing-plan.ts";
import type { SwingTable } from "./swing-table.ts";

/** First fault of each row. */
export interface RowFaults {
  readonly reason: (SetAsideReason | undefined)[];
  /** The column of the fault; absent when the row as a whole is meant. */
  readonly column: (PlannedColumn | undefined)[];
}

type Rows = CsvRecords["rows"];

/** A table that is being filled, column by column. */
class Filling {
  readonly faults: RowFaults;
  readonly athlete: Int32Array;
  readonly day: Float64Array;
  readonly numbers = new Map<string, Float64Array>();
  readonly words = new Map<string, (string | null)[]>();
  readonly rows: Rows;

  constructor(rows: Rows, width: number) {
    const n = rows.length;
    this.rows = rows;
    this.faults = { reason: new Array(n).fill(undefined), column: new Array(n).fill(undefined) };
    this.athlete = new Int32Array(n).fill(NOBODY);
    this.day = new Float64Array(n).fill(Number.NaN);
    for (let row = 0; row < n; row++) if (rows[row]?.length !== width) this.faults.reason[row] = "unreadable-row";
  }

  fail(row: number, reason: SetAsideReason, column: PlannedColumn): void {
    this.faults.reason[row] = reason;
    this.faults.column[row] = column;
  }

  /** Cells of one column as text, blanks and translated words settled; rows that already failed come as blank. */
  cell(row: number, { index, words }: PlannedColumn): string {
    const text = (this.rows[row]?.[index] ?? "").trim();
    return words === null || !Object.hasOwn(words, text) ? text : (words[text] ?? "").trim();
  }

  /** Every row's athlete, also where something else in the row is wrong: the ledger wants to know whose row it was. */
  readAthletes(column: PlannedColumn | undefined, read: (text: string) => number, otherwise: number): void {
    for (let row = 0; row < this.rows.length; row++) {
      const text = column === undefined ? "" : this.cell(row, column);
      this.athlete[row] = text === "" ? otherwise : read(text);
    }
  }

  judgeAthletes(column: PlannedColumn): void {
    for (let row = 0; row < this.rows.length; row++) {
      const who = this.athlete[row] ?? NOBODY;
      if (who >= 0 || this.faults.reason[row] !== undefined) continue;
      this.fail(row, who === SEVERAL ? "ambiguous-name" : "unknown-athlete", column);
    }
  }

  readDays(column: PlannedColumn, read: (text: string) => number, otherwise: number): void {
    for (let row = 0; row < this.rows.length; row++) {
      if (this.faults.reason[row] !== undefined) continue;
      const text = this.cell(row, column);
      const value = text === "" ? otherwise : read(text);
      this.day[row] = value;
      if (!Number.isFinite(value)) this.fail(row, "unreadable-date", column);
    }
  }

  readNumbers(column: PlannedColumn, read: (text: string) => number, otherwise: number): void {
    const values = new Float64Array(this.rows.length).fill(Number.NaN);
    this.numbers.set(column.column.field, values);
    for (let row = 0; row < this.rows.length; row++) {
      if (this.faults.reason[row] !== undefined) continue;
      const text = this.cell(row, column);
      const value = text === "" ? otherwise : read(text);
      values[row] = value;
      if (value === UNREADABLE) this.fail(row, "unreadable-number", column);
      else if (value === OUTSIDE) this.fail(row, "out-of-range", column);
    }
  }

  readWords(column: PlannedColumn, reader: CellReader & { as: "words" }, otherwise: string | null): void {
    const values = new Array<string | null>(this.rows.length).fill(null);
    this.words.set(column.column.field, values);
    for (let row = 0; row < this.rows.length; row++) {
      if (this.faults.reason[row] !== undefined) continue;
      const text = this.cell(row, column);
      const value = text === "" ? otherwise : reader.read(text);
      if (typeof value === "object" && value !== null) this.fail(row, value.reason, column);
      else values[row] = value;
    }
  }
}

/**
 * Reads a file's cells into typed columns, each column in one go: no object and no schema call per row.
 * A row's first fault in the order of the columns is its fault.
 */
export function swingColumns(
  records: CsvRecords,
  plan: SwingPlan,
  fields: SwingFields,
  context: CellContext,
): Omit<SwingTable, "file" | "kept"> & { readonly faults: RowFaults } {
  const { rows, lines } = records;
  const filling = new Filling(rows, records.header?.length ?? 0);
  const fixed = fixedValues(plan, fields, context);
  const number = (field: string): number =>
    typeof fixed.get(field) === "number" ? Number(fixed.get(field)) : Number.NaN;
  const readers = plan.columns.map((planned) => ({ planned, reader: readerOf(planned, plan, context) }));
  const who = readers.find(({ reader }) => reader.as === "athlete");
  const fixedAthlete = fixed.has("athlete_id") ? number("athlete_id") : NOBODY;
  filling.readAthletes(who?.planned, who?.reader.as === "athlete" ? who.reader.read : () => NOBODY, fixedAthlete);
  if (!plan.columns.some(({ column }) => column.field === "date")) filling.day.fill(number("date"));
  for (const { planned, reader } of readers) {
    const { field } = planned.column;
    if (reader.as === "athlete") filling.judgeAthletes(planned);
    else if (reader.as === "day") filling.readDays(planned, reader.read, number(field));
    else if (reader.as === "number") filling.readNumbers(planned, reader.read, number(field));
    else filling.readWords(planned, reader, typeof fixed.get(field) === "string" ? String(fixed.get(field)) : null);
  }
  for (const [field, value] of fixed) {
    if (field === "athlete_id" || field === "date") continue;
    if (typeof value === "number" && !filling.numbers.has(field))
      filling.numbers.set(field, new Float64Array(rows.length).fill(value));
    if (typeof value === "string" && !filling.words.has(field))
      filling.words.set(field, new Array(rows.length).fill(value));
  }
  const { athlete, day, numbers, words, faults } = filling;
  const fieldNumbers = new Map(plan.columns.map(({ column, index }) => [column.field, index + 1]));
  return { n: rows.length, lines, athlete, day, numbers, words, fieldNumbers, faults };
}

function readerOf({ column, unit, form }: PlannedColumn, plan: SwingPlan, context: CellContext): CellReader {
  const reader = cellReader(column, { unit, form, decimal: plan.decimal }, context);
  if (reader === null)
    throw new Error(`${column.field} cannot be read in ${unit}: plans are checked before they are used`);
  return reader;
}

/** A mapping's fixed values, read as the cells of canonical columns. */
function fixedValues({ fixed }: SwingPlan, fields: SwingFields, context: CellContext): Map<string, number | string> {
  const values = new Map<string, number | string>();
  for (const [field, text] of Object.entries(fixed)) {
    const column = fields.byField.get(field);
    const value = column && cellReader(column, CANONICAL_CELL, context)?.read(text.trim());
    if (text.trim() !== "" && value !== undefined && typeof value !== "object") values.set(field, value);
  }
  return values;
}
