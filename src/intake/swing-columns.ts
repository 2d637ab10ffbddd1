import { MOMENT_COLUMN } from "../schema/columns.ts";
import { Reading, type RowFault } from "./batch-reading.ts";
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
import { columnStore } from "./column-store.ts";
import type { Batch } from "./csv-batches.ts";
import { clockShift, type MomentReader, momentReader, NoTimeZone } from "./moments.ts";
import type { RowMarks } from "./row-marks.ts";
import type { SwingFields } from "./swing-fields.ts";
import type { PlannedColumn, SwingPlan } from "./swing-plan.ts";
import type { SwingTable } from "./swing-table.ts";

type ColumnReader = CellReader | { readonly as: "moment"; readonly read: MomentReader };

/**
 * A file's cells as typed columns, filled batch by batch and in each batch column by column: no object and no schema call
 * per row. Every cell of a row is read, also behind a fault; the first fault in the order of the columns is the row's.
 */
export class SwingColumns {
  /** An offset was written although the facility names no time zone. */
  needsTimeZone = false;
  readonly #plan: SwingPlan;
  readonly #width: number;
  readonly #marks: RowMarks;
  readonly #store = columnStore();
  readonly #readers: readonly { readonly planned: PlannedColumn; readonly reader: ColumnReader }[];
  readonly #fixed: Map<string, number | string>;
  readonly #shift: ReturnType<typeof clockShift>;

  constructor(plan: SwingPlan, marks: RowMarks, fields: SwingFields, context: CellContext) {
    this.#plan = plan;
    this.#width = marks.header.length;
    this.#marks = marks;
    this.#readers = plan.columns.map((planned) => ({ planned, reader: readerOf(planned, plan, context) }));
    this.#fixed = fixedValues(plan, fields, context);
    this.#shift = clockShift(plan.zone, context.timeZone);
  }

  /**
   * Reads the rows of a batch behind those of the batches before.
   *
   * @returns number of the batch's first row, what cannot stand, and the athlete of a row by its number
   */
  add({ rows, lines }: Batch): { base: number; faults: RowFault[]; athlete(row: number): number } {
    const reading = new Reading(rows, this.#width, this.#marks);
    const base = this.#store.open(lines);
    this.#start(reading, base);
    for (const { planned, reader } of this.#readers) this.#read(reading, base, planned, reader);
    this.#setClock(reading, base);
    return { base, faults: reading.faults(base), athlete: (row) => this.#store.athlete[row] ?? NOBODY };
  }

  finish(): Omit<SwingTable, "file" | "kept"> {
    const fixed = new Map(this.#fixed);
    fixed.delete("athlete_id");
    fixed.delete("date");
    const fieldNumbers = new Map(
      this.#plan.columns.flatMap(({ column, index }) => fieldsOf(column.field).map((field) => [field, index + 1])),
    );
    return { ...this.#store.close(), fixed, fieldNumbers };
  }

  #number(field: string): number {
    const value = this.#fixed.get(field);
    return typeof value === "number" ? value : Number.NaN;
  }

  /** What stands in athlete and day before, or without, a column of theirs. */
  #start({ rows, closed }: Reading, base: number): void {
    const { athlete, day } = this.#store;
    const who = this.#fixed.has("athlete_id") ? this.#number("athlete_id") : NOBODY;
    const when = this.#plan.columns.some(({ column }) => column.field === "date") ? Number.NaN : this.#number("date");
    for (let row = 0; row < rows.length; row++) {
      athlete[base + row] = closed[row] === 1 ? NOBODY : who;
      day[base + row] = when;
    }
  }

  #read(reading: Reading, base: number, planned: PlannedColumn, reader: ColumnReader): void {
    const { field } = planned.column;
    if (reader.as === "athlete") this.#readAthletes(reading, base, planned, reader.read);
    else if (reader.as === "day") this.#readDays(reading, base, planned, reader.read);
    else if (reader.as === "moment") this.#readMoments(reading, base, planned, reader.read);
    else if (reader.as === "number") {
      const values = this.#store.numbers(field);
      reading.each(planned, (row, text) => {
        const value = text === "" ? Number.NaN : reader.read(text);
        values[base + row] = value;
        if (value === UNREADABLE) reading.fail(row, "unreadable-number", planned);
        else if (value === OUTSIDE) reading.fail(row, "out-of-range", planned);
      });
    } else {
      const values = this.#store.words(field);
      reading.each(planned, (row, text) => {
        const value = text === "" ? null : reader.read(text);
        if (typeof value === "object" && value !== null) reading.fail(row, value.reason, planned);
        else values[base + row] = value;
      });
    }
  }

  #readAthletes(reading: Reading, base: number, planned: PlannedColumn, read: (text: string) => number): void {
    const { athlete } = this.#store;
    // The ledger wants to know whose row it was, whatever is wrong with it.
    reading.eachOfBroken(planned, (row, text) => {
      athlete[base + row] = text === "" ? NOBODY : read(text);
    });
    reading.each(planned, (row, text) => {
      const who = text === "" ? (athlete[base + row] ?? NOBODY) : read(text);
      athlete[base + row] = who;
      if (who < 0) reading.fail(row, who === SEVERAL ? "ambiguous-name" : "unknown-athlete", planned);
    });
  }

  #readDays(reading: Reading, base: number, planned: PlannedColumn, read: (text: string) => number): void {
    const { day } = this.#store;
    const otherwise = this.#number("date");
    reading.each(planned, (row, text) => {
      const value = text === "" ? otherwise : read(text);
      day[base + row] = value;
      if (!Number.isFinite(value)) reading.fail(row, "unreadable-date", planned);
    });
  }

  #readMoments(reading: Reading, base: number, planned: PlannedColumn, read: MomentReader): void {
    const { day } = this.#store;
    const times = this.#store.words("time");
    reading.each(planned, (row, text) => {
      const moment = this.#zoned(() => (text === "" ? null : read(text)));
      day[base + row] = moment?.day ?? Number.NaN;
      times[base + row] = moment?.time ?? null;
      if (moment === null) reading.fail(row, "unreadable-date", planned);
    });
  }

  #zoned<T>(work: () => T | null): T | null {
    try {
      return work();
    } catch (error) {
      if (!(error instanceof NoTimeZone)) throw error;
      this.needsTimeZone = true;
      return null;
    }
  }

  /** Day and clock in columns of their own, shown by a clock in another zone than the facility's. */
  #setClock(reading: Reading, base: number): void {
    const clock = this.#plan.columns.find(({ column }) => column.field === "time");
    const shift = this.#shift;
    if (shift === null || clock === undefined) return;
    const { day } = this.#store;
    const times = this.#store.words("time");
    for (let row = 0; row < reading.rows.length; row++) {
      const shown = { day: day[base + row] ?? Number.NaN, time: times[base + row] ?? null };
      if (!Number.isFinite(shown.day) || shown.time === null) continue;
      const own = shift({ day: shown.day, time: shown.time });
      if (own === null) reading.fail(row, "unreadable-date", clock);
      else {
        day[base + row] = own.day;
        times[base + row] = own.time;
      }
    }
  }
}

const fieldsOf = (field: string): string[] => (field === MOMENT_COLUMN.field ? ["date", "time"] : [field]);

function readerOf({ column, unit, form }: PlannedColumn, plan: SwingPlan, context: CellContext): ColumnReader {
  if (column === MOMENT_COLUMN) return { as: "moment", read: momentOf(form, plan, context) };
  const reader = cellReader(column, { unit, form, decimal: plan.decimal, isoToo: plan.typed }, context);
  if (reader === null)
    throw new Error(`${column.field} cannot be read in ${unit}: plans are checked before they are used`);
  return reader;
}

function momentOf(form: string | null, { zone, typed }: SwingPlan, { timeZone }: CellContext): MomentReader {
  const read = momentReader(form, zone, timeZone);
  const iso = typed && form !== null ? momentReader(null, zone, timeZone) : null;
  return iso === null ? read : (text) => iso(text) ?? read(text);
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
