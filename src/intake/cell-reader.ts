import { DateTime } from "luxon";
import type { Column } from "../schema/columns.ts";
import type { SetAsideReason } from "../schema/reasons.ts";
import { converter } from "../schema/units.ts";
import { calendarDay, isoDay } from "./calendar-day.ts";
import type { Known } from "./known.ts";
import { looseForm } from "./loose-form.ts";
import { clockForm, clockOf, isClock, plainSpaces } from "./moments.ts";
import type { Names } from "./names.ts";
import { plainNumber } from "./plain-number.ts";

/** Stands for a number cell, or a day, that cannot be read. */
export const UNREADABLE = Number.POSITIVE_INFINITY;
/** Stands for a number outside the column's plausible range. */
export const OUTSIDE = Number.NEGATIVE_INFINITY;
/** Stand for a name that fits nobody, or several. */
export const NOBODY = -1;
export const SEVERAL = -2;

/** A word cell that is not one of ours. */
export interface Refused {
  readonly reason: SetAsideReason;
}

/** Reads one trimmed, filled cell. Made once per column and file. */
export type CellReader =
  | { readonly as: "athlete"; read(text: string): number }
  | { readonly as: "day"; read(text: string): number }
  | { readonly as: "number"; read(text: string): number }
  | { readonly as: "words"; read(text: string): string | Refused };

export interface CellOptions {
  /** Unit as written; null for the canonical one. */
  readonly unit: string | null;
  /** Date or time form in Luxon tokens; null for ISO 8601. */
  readonly form: string | null;
  readonly decimal: "." | ",";
  /** Days and times in ISO 8601 are read whatever `form` says. */
  readonly isoToo?: boolean;
}

export interface CellContext {
  readonly known: Known;
  readonly names: Names;
  /** Athlete's id -> index that stands for the athlete in the columns. */
  readonly index: ReadonlyMap<string, number>;
  /** The facility's time zone, if it names one. */
  readonly timeZone: string | null;
}

export const CANONICAL_CELL: CellOptions = { unit: null, form: null, decimal: "." };

/** @returns null when `options.unit` cannot be turned into the column's unit, and for day and clock in one: see `moments.ts` */
export function cellReader(column: Column, options: CellOptions, context: CellContext): CellReader | null {
  const { is } = column;
  switch (is.kind) {
    case "athlete":
      return { as: "athlete", read: remembered((text) => athlete(text, context)) };
    case "date":
      return { as: "day", read: remembered((text) => day(text, options) ?? UNREADABLE) };
    case "time":
      return { as: "words", read: time(options) };
    case "date-time":
      return null;
    case "number":
      return number(is.unit, is.plausible, options);
    case "count":
      return { as: "number", read: count };
    case "axis":
      return { as: "words", read: remembered(axis) };
    case "implement":
      return { as: "words", read: remembered(listed(context.known.implements)) };
    case "ball":
      return { as: "words", read: remembered(listed(context.known.balls)) };
    case "words":
      return { as: "words", read: remembered(listed(is.open ? context.known.environments : new Set(is.words))) };
    case "id":
    case "text":
      return { as: "words", read: remembered((text) => text) };
  }
}

/** So many different texts of a column are kept; a column that has more gains nothing from being remembered. */
const REMEMBERED = 20_000;

/**
 * The same few texts come back on every row: they are read once, and equal words are one string in memory.
 */
function remembered<T>(read: (text: string) => T): (text: string) => T {
  const memory = new Map<string, T>();
  let textBefore: string | null = null;
  let valueBefore: T;
  return (text) => {
    // Most often it is the text of the row above: comparing two is cheaper than looking one up.
    if (textBefore === text) return valueBefore;
    let value = memory.get(text);
    if (value === undefined) {
      value = read(text);
      if (memory.size < REMEMBERED) memory.set(text, value);
    }
    textBefore = text;
    valueBefore = value;
    return value;
  };
}

function athlete(text: string, { names, index }: CellContext): number {
  const whom = names.find(text);
  if (whom.kind === "ambiguous") return SEVERAL;
  return whom.kind === "one" ? (index.get(whom.id) ?? NOBODY) : NOBODY;
}

const inEnglish = { zone: "utc", locale: "en-US" } as const;

function day(text: string, { form, isoToo }: CellOptions): number | null {
  const iso = form === null || isoToo === true ? calendarDay(text) : null;
  if (iso !== null || form === null) return iso;
  const read = DateTime.fromFormat(plainSpaces(text), looseForm(form), inEnglish);
  return read.isValid ? calendarDay(isoDay(read.toMillis())) : null;
}

const NOT_A_TIME: Refused = { reason: "unreadable-date" };

/** A clock time is part of when a swing was, so one that cannot be read is an unreadable date. */
function time({ form, isoToo }: CellOptions): (text: string) => string | Refused {
  if (form === null) return (text) => (isClock(text) ? text : NOT_A_TIME);
  const written = clockForm(form);
  const loose = looseForm(form);
  return remembered((text) => {
    if (isoToo === true && isClock(text)) return text;
    const read = DateTime.fromFormat(plainSpaces(text), loose, inEnglish);
    return read.isValid ? clockOf(read, written) : NOT_A_TIME;
  });
}

const NUMBERS = { ".": /^[-+]?(?:\d+\.?\d*|\.\d+)$/, ",": /^[-+]?(?:\d+,?\d*|,\d+)$/ } as const;

function number(unit: string, [lo, hi]: readonly [number, number], options: CellOptions): CellReader | null {
  const convert = converter(options.unit ?? unit, unit);
  if (convert === null) return null;
  const form = NUMBERS[options.decimal];
  const comma = options.decimal === ",";
  const mark = options.decimal.charCodeAt(0);
  const read = (text: string): number => {
    const plain = plainNumber(text, mark);
    if (plain === null && !form.test(text)) return UNREADABLE;
    const value = convert(plain ?? Number(comma ? text.replace(",", ".") : text));
    return value >= lo && value <= hi ? value : OUTSIDE;
  };
  return { as: "number", read };
}

/** No text holds this: a count has no decimal mark. */
const NO_MARK = -1;
/** Rounds and reps go on without end in nobody's season. */
export const MOST = 100_000;

function count(text: string): number {
  const plain = plainNumber(text, NO_MARK);
  if (plain === null && !/^[-+]?\d+(?:\.0*)?$/.test(text)) return UNREADABLE;
  const value = plain ?? Number(text);
  return value >= 0 && value <= MOST ? value : OUTSIDE;
}

const NOT_AN_AXIS: Refused = { reason: "unreadable-number" };
const NO_SUCH_AXIS: Refused = { reason: "out-of-range" };

/** A clock as the pitcher sees it (`12:45`), or degrees. */
function axis(text: string): string | Refused {
  const clock = /^(\d{1,2}):(\d{2})$/.exec(text);
  if (clock) return Number(clock[1]) <= 12 && Number(clock[2]) < 60 ? text : NO_SUCH_AXIS;
  if (!NUMBERS["."].test(text)) return NOT_AN_AXIS;
  return Number(text) >= 0 && Number(text) <= 360 ? text : NO_SUCH_AXIS;
}

const NOT_LISTED: Refused = { reason: "unknown-id" };

/** With no list to go by, every word stands. */
function listed(list: ReadonlySet<string> | null): (text: string) => string | Refused {
  return (text) => (list === null || list.has(text) ? text : NOT_LISTED);
}
