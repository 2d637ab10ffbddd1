import { tQuantile } from "./distributions.ts";
import { requireFinite } from "./sample.ts";

/** Lower and upper limit in the unit of the estimate, lower <= upper. */
export type Interval = readonly [lower: number, upper: number];

/**
 * @param level coverage of an interval, e.g. 0.95
 * @throws {RangeError} it is not above 0 and below 1
 */
export function checkLevel(level: number): void {
  if (!(level > 0 && level < 1)) throw new RangeError(`an interval needs a level above 0 and below 1, got ${level}`);
}

/**
 * Two-sided t interval: estimate -+ t((1 + level) / 2, df) x standard error.
 *
 * @param estimate in any unit
 * @param se       its standard error in the same unit, or null where there is none
 * @param df       degrees of freedom, or null where there are none
 * @param level    coverage, above 0 and below 1
 * @returns the limits; null when `se` or `df` is null or `df` is 0: no interval exists
 * @throws {RangeError} the level is not above 0 and below 1, or a limit is too large for a double
 */
export function tInterval(estimate: number, se: number | null, df: number | null, level: number): Interval | null {
  checkLevel(level);
  if (se === null || df === null || df === 0) return null;
  const half = tQuantile((1 + level) / 2, df) * se;
  return [requireFinite(estimate - half, "a lower limit"), requireFinite(estimate + half, "an upper limit")];
}
