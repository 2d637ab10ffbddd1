import { DateTime, FixedOffsetZone } from "luxon";
import { calendarDay, isoDay } from "./calendar-day.ts";
import { looseForm } from "./loose-form.ts";

/** A day and a clock time on the facility's own clock. */
export interface Moment {
  /** Midnight of the day in UTC, epoch milliseconds. */
  readonly day: number;
  /** `hh:mm`, `hh:mm:ss` or `hh:mm:ss.sss`, as fine as it was written. */
  readonly time: string;
}

/** Reads a cell that holds day and clock; null when it cannot be read or cannot be. */
export type MomentReader = (text: string) => Moment | null;

/** The form of `ClockTime` in the schema, without a schema call per row. */
const CLOCK = /^(?:[01]\d|2[0-3]):[0-5]\d(?::[0-5]\d(?:\.\d{1,3})?)?$/;
export const isClock = (text: string): boolean => CLOCK.test(text);

/** Newer programs write "5:05 PM" with a narrow no-break space. */
export const plainSpaces = (text: string): string => text.replace(/[\u00a0\u202f\u2009]/g, " ");

/** How fine a clock time is to be written that was read by a Luxon form. */
export function clockForm(form: string): "HH:mm" | "HH:mm:ss" {
  return /[sSF]|tt|TT|[uXx]/.test(withoutLiterals(form)) ? "HH:mm:ss" : "HH:mm";
}

const withoutLiterals = (form: string): string => form.replaceAll(/'[^']*'/g, "");

/** The clock of a moment, with milliseconds only where there are some. */
export const clockOf = (moment: DateTime, form: "HH:mm" | "HH:mm:ss"): string =>
  moment.toFormat(form === "HH:mm:ss" && moment.millisecond !== 0 ? "HH:mm:ss.SSS" : form);

/** An offset was written, and nothing says what the facility's own clock shows then. */
export class NoTimeZone extends Error {}

/** ISO 8601 as exports write it: `T` or a space between day and clock, seconds and offset optional. */
const ISO = /^(\d{4}-\d\d-\d\d)[T ](\d\d:\d\d(?::\d\d(?:[.,]\d+)?)?) ?(Z|[+-]\d\d(?::?\d\d)?)?$/i;

/**
 * Reader of cells that hold day and clock.
 *
 * @param form Luxon tokens, or null for ISO 8601
 * @param zone of the export's clock; null when it is the facility's. An offset in the cell goes before it
 * @param own  the facility's zone; null when it names none. The reader throws {@link NoTimeZone} where it would be needed
 */
export function momentReader(form: string | null, zone: string | null, own: string | null): MomentReader {
  const shift = clockShift(zone, own);
  if (form === null) return isoReader(shift, own);
  const written = clockForm(form);
  const offset = /Z|z/.test(withoutLiterals(form));
  const parser = DateTime.buildFormatParser(looseForm(form), { locale: "en-US" });
  return (text) => {
    const zoned = offset ? { setZone: true } : { zone: "utc" };
    const read = DateTime.fromFormatParser(plainSpaces(text), parser, { locale: "en-US", ...zoned });
    if (!read.isValid) return null;
    if (offset) return ownClock(read.toMillis(), own, written);
    const moment = { day: calendarDay(isoDay(read.toMillis())) ?? Number.NaN, time: clockOf(read, written) };
    return shift === null ? moment : shift(moment);
  };
}

function isoReader(shift: ((moment: Moment) => Moment | null) | null, own: string | null): MomentReader {
  return (text) => {
    const [, date = "", clock = "", offset] = ISO.exec(plainSpaces(text)) ?? [];
    const day = calendarDay(date);
    // Devices write microseconds; we keep milliseconds.
    const time = clock.replace(",", ".").replace(/(\.\d{3})\d+$/, "$1");
    if (day === null || !isClock(time)) return null;
    if (offset === undefined) return shift === null ? { day, time } : shift({ day, time });
    const zone = FixedOffsetZone.parseSpecifier(`UTC${offset.toUpperCase() === "Z" ? "+0" : offset}`);
    return ownClock(day + clockMs(time) - zone.offset(0) * 60_000, own, time.length > 5 ? "HH:mm:ss" : "HH:mm");
  };
}

/** A point of time as the facility's clock shows it, its changes for summer time included. */
function ownClock(ms: number, own: string | null, written: "HH:mm" | "HH:mm:ss"): Moment {
  if (own === null) throw new NoTimeZone();
  const here = DateTime.fromMillis(ms, { zone: own });
  return { day: calendarDay(here.toFormat("yyyy-MM-dd")) ?? Number.NaN, time: clockOf(here, written) };
}

const MS = [3_600_000, 60_000, 1000];
const clockMs = (time: string): number =>
  time.split(":").reduce((sum, part, index) => sum + Math.round(Number(part) * (MS[index] ?? 0)), 0);

/**
 * Turns what a clock in `zone` shows into what a clock in `own` shows; null when they show the same.
 *
 * The hour that comes twice in autumn is taken the first time it comes; an hour that spring leaves out is no time at all,
 * and gives null.
 */
export function clockShift(zone: string | null, own: string | null): ((moment: Moment) => Moment | null) | null {
  if (zone === null || zone === own) return null;
  return ({ day, time }) => {
    const local = day + clockMs(time);
    const there = firstOf(DateTime.fromMillis(local, { zone: "utc" }).setZone(zone, { keepLocalTime: true }));
    if (there.toMillis() + there.offset * 60_000 !== local) return null;
    return ownClock(there.toMillis(), own, time.length > 5 ? "HH:mm:ss" : "HH:mm");
  };
}

function firstOf(moment: DateTime): DateTime {
  const [first = moment] = moment.getPossibleOffsets().sort((one, other) => one.toMillis() - other.toMillis());
  return first;
}
