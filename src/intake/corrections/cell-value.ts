import type { Column } from "../../schema/columns.ts";
import type { SetAsideReason } from "../../schema/reasons.ts";
import { isoDay } from "../calendar-day.ts";
import { CANONICAL_CELL, type CellContext, type CellOptions, cellReader, OUTSIDE, UNREADABLE } from "../cell-reader.ts";
import type { SwingFields } from "../swing-fields.ts";
import type { SwingPlan } from "../swing-plan.ts";
import type { SwingTable } from "../swing-table.ts";

/** What a cell holds: a number in canonical units (a day as epoch milliseconds), words, or nothing. */
export type CellValue = number | string | null;

/** A field as a correction names it: `bat_speed`, `bat_speed_mph`, `bat_speed_kmh`. */
export interface NamedField {
  readonly column: Column;
  readonly unit: string | null;
}

/** @returns null for a name that is no field of a swing */
export function namedField(name: string, fields: SwingFields): NamedField | null {
  const plain = fields.byField.get(name);
  return plain ? { column: plain, unit: null } : (fields.byHeader.get(name) ?? null);
}

/** Reads a correction's text as a cell of the field, with all that a file's cell is held to. Blank text is a blank cell. */
export function readValue(
  text: string | undefined,
  { column, unit }: NamedField,
  context: CellContext,
  options: Partial<CellOptions> = {},
): { readonly value: CellValue } | { readonly reason: SetAsideReason } {
  if (text === undefined || text.trim() === "") return { value: null };
  const reader = cellReader(column, { ...CANONICAL_CELL, unit, ...options }, context);
  const value = reader?.read(text.trim()) ?? UNREADABLE;
  if (typeof value === "object") return { reason: value.reason };
  if (value === OUTSIDE) return { reason: "out-of-range" };
  if (value === UNREADABLE) return { reason: reader?.as === "day" ? "unreadable-date" : "unreadable-number" };
  return { value };
}

/** What stands in a cell now. */
export function cellOf(table: SwingTable, row: number, { column: { field, is } }: NamedField): CellValue {
  if (is.kind === "date") return table.day[row] ?? null;
  const number = table.numbers.get(field)?.[row];
  if (number !== undefined) return Number.isNaN(number) ? null : number;
  return table.words.get(field)?.[row] ?? null;
}

/** Writes a cell; a column that the file does not have is made. */
export function writeCell(table: SwingTable, row: number, field: string, value: CellValue, numeric: boolean): void {
  if (field === "date") table.day[row] = typeof value === "number" ? value : Number.NaN;
  else if (numeric) {
    const values = table.numbers.get(field) ?? new Float64Array(table.n).fill(Number.NaN);
    values[row] = typeof value === "number" ? value : Number.NaN;
    table.numbers.set(field, values);
  } else {
    const values = table.words.get(field) ?? new Array<string | null>(table.n).fill(null);
    values[row] = value === null ? null : String(value);
    table.words.set(field, values);
  }
}

/** Whether a column holds numbers. */
export const isNumeric = ({ is }: Column): boolean => is.kind === "number" || is.kind === "count";

const close = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one), Math.abs(other));

/** Half of the last place that is written, of one decimal at least. */
const lastPlace = (text: string): number => 0.5 * 10 ** -Math.max(1, /[.,](\d+)/.exec(text)?.[1]?.length ?? 0);

/**
 * Whether `from` is what stands in the cell: in canonical form, or as the file itself writes it (its unit, decimal mark,
 * words). A value that was converted from another unit may be written rounded.
 */
export function stands(
  value: CellValue,
  from: string | undefined,
  named: NamedField,
  context: CellContext,
  plan: SwingPlan | null,
): boolean {
  const blank = from === undefined || from.trim() === "";
  if (value === null || blank) return value === null && blank;
  const planned = plan?.columns.find(({ column }) => column.field === named.column.field);
  const same = (text: string, options: Partial<CellOptions>, rounded: boolean): boolean => {
    const read = readValue(text, named, context, options);
    if (!("value" in read)) return false;
    if (typeof read.value !== "number" || typeof value !== "number") return read.value === value;
    return close(read.value, value) || (rounded && Math.abs(read.value - value) <= lastPlace(text));
  };
  const { is } = named.column;
  const foreign = (unit: string | null | undefined): boolean =>
    is.kind === "number" && typeof unit === "string" && unit !== is.unit;
  const converted = foreign(planned?.unit) || foreign(named.unit);
  if (same(from, {}, converted)) return true;
  if (plan === null || planned === undefined) return false;
  const text = planned.words?.[from.trim()] ?? from;
  return same(text, { unit: planned.unit, form: planned.form, decimal: plan.decimal }, false);
}

/** A value as it can be shown and written again. */
export function shownValue(value: CellValue, { is }: Column): string {
  if (value === null) return "";
  if (is.kind === "date") return isoDay(Number(value));
  return typeof value === "number" ? String(Math.round(value * 1000) / 1000) : value;
}
