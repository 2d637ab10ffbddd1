import { type Interval, tInterval } from "./interval.ts";
import { lag1Inflation } from "./lag1-inflation.ts";
import { olsMultiple } from "./ols-multiple.ts";
import { checkPairs, type Sample } from "./sample.ts";

/** Sessions that must lie on either side of the day. */
const SESSIONS_PER_SIDE = 4;

/** Level and slope besides the contrast. */
const OTHER_PARAMETERS = 2;

/** What values have been since a day, beside a trend that runs through the whole season. */
export interface SinceLine {
  /** Sessions before the day, and from it on. */
  readonly before: number;
  readonly since: number;
  /** Since less before with the trend taken out, in the unit of the values. */
  readonly step: number;
  /** Likeness of neighbouring sessions allowed for, like the degrees of freedom. */
  readonly se: number;
  readonly df: number;
  readonly ci95: Interval;
}

/**
 * Contrast of a phase: least squares of session values on time and on 0 before and 1 from a day that was fixed beforehand. The
 * standard error is widened and the degrees of freedom are lessened for the lag-1 correlation of the residuals (`lag1Inflation`, which
 * was made for a straight line; here one parameter more is taken off). It describes; one athlete without others held back tells no cause.
 *
 * @param weeks  rising times of the sessions, weeks
 * @param values one value a session, in one unit
 * @param from   the day, in weeks; sessions at or after it are "since"
 * @returns null with fewer than four sessions on either side, or when time and contrast are one thing
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size
 * @example sinceLine([0, 1, 2, 3, 4, 5, 6, 7], [1, 2, 3, 4, 8, 9, 10, 11], 4)?.step // => 3: a unit a week, and 3 more since week 4
 */
export function sinceLine(weeks: Sample, values: Sample, from: number): SinceLine | null {
  const n = checkPairs(weeks, values);
  const isSince = Array.from(weeks, (week) => (week >= from ? 1 : 0));
  const since = isSince.filter((one) => one === 1).length;
  if (Math.min(since, n - since) < SESSIONS_PER_SIDE) return null;
  const fit = olsMultiple([weeks, isSince], values);
  if (fit.kind !== "fit" || fit.standardErrors === null) return null;
  const [level, slope, step] = fit.coefficients as [number, number, number];
  const left = isSince.map((one, i) => values[i]! - level - slope * weeks[i]! - step * one);
  const { inflation, effectiveN } = lag1Inflation(left);
  const se = fit.standardErrors[2]! * inflation;
  const df = Math.max(1, Math.min(fit.df, effectiveN - OTHER_PARAMETERS - 1));
  const ci95 = tInterval(step, se, df, 0.95);
  return ci95 && { before: n - since, since, step, se, df, ci95 };
}
