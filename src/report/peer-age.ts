import type { Profile } from "../schema/profile.ts";
import type { Reference } from "../schema/season.ts";
import { dayOf, wholeYears } from "./calendar.ts";

/** Birthday in a year, in epoch milliseconds; of 29 February, 1 March where there is none. */
const birthday = (born: string, year: number): number =>
  Date.UTC(year, Number(born.slice(5, 7)) - 1, Number(born.slice(8, 10)));

/**
 * Age in the middle of a span of days, in years and their fraction: whole years to the last birthday, then the part of the way to the next.
 *
 * @param born null is returned unless it is a full date: a year alone leaves a year open
 * @param from first ISO day, `to` the last
 * @example ageBetween("2009-05-14", "2025-11-13", "2025-11-13") // => 16.50...
 */
export function ageBetween(born: Profile["born"], from: string, to: string): number | null {
  if (typeof born !== "string") return null;
  const middle = (dayOf(from) + dayOf(to)) / 2;
  const day = new Date(middle).toISOString().slice(0, 10);
  const year = Number(born.slice(0, 4)) + wholeYears(born, day);
  const last = birthday(born, year);
  const next = birthday(born, year + 1);
  return wholeYears(born, day) + (middle - last) / (next - last);
}

/** Does a row say anything of ages? */
export const hasAges = ({ ages: [low, high] }: Reference): boolean => low !== null || high !== null;

/** Is it a row for one age, or for one of whole years? */
export const isSingleAge = ({ ages: [low, high] }: Reference): boolean => low !== null && low === high;

/**
 * Do a row's ages hold an athlete's? A blank end is open. A whole number as the upper end stands for that year of life, as people
 * write it: 13 to 14 holds until the 15th birthday.
 */
export function holdsAge({ ages: [low, high] }: Reference, age: number): boolean {
  const end = high === null ? Number.POSITIVE_INFINITY : Number.isInteger(high) ? high + 1 : high;
  return age >= (low ?? 0) && (age < end || age === high);
}

/** The one age that stands for a row: in the middle of its ends, null where one is open. */
export const middleAge = ({ ages: [low, high] }: Reference): number | null =>
  low === null || high === null ? null : (low + high) / 2;

/** Youngest and oldest age that rows name; null where one of them leaves it open. */
export function agesOf(rows: readonly Reference[]): [number | null, number | null] {
  let [low, high] = rows[0]?.ages ?? [null, null];
  for (const { ages } of rows) {
    low = low === null || ages[0] === null ? null : Math.min(low, ages[0]);
    high = high === null || ages[1] === null ? null : Math.max(high, ages[1]);
  }
  return [low, high];
}
