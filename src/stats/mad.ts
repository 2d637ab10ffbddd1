import { median } from "./median.ts";
import type { Sample } from "./sample.ts";

/** The third quartile of the standard normal distribution: a MAD divided by it estimates the SD of normal values. */
export const NORMAL_QUARTILE = 0.6744897501960817;

/**
 * Median absolute deviation from the median, without any scaling: a measure of spread that half of the values cannot move.
 *
 * @param values any number of values in one unit, in any order
 * @returns the deviation in that unit, 0 or more (0 when more than half are equal); null for no values
 * @throws {RangeError} a value is NaN, infinite or above 1e150 in size
 * @see checked against R 4.2.2 (tests/stats/mad.test.ts)
 * @example mad([1, 2, 3, 10]) // => 1: deviations from 2.5 are 1.5, 0.5, 0.5 and 7.5
 */
export function mad(values: Sample): number | null {
  const middle = median(values);
  return middle === null ? null : median(Array.from(values, (value) => Math.abs(value - middle)));
}

/**
 * Standard deviation of normal values as the MAD sees it: MAD / 0.6744898. (R's `mad` rounds the factor to 1.4826.)
 * Arguments, answers and errors as {@link mad}.
 */
export function madSd(values: Sample): number | null {
  const deviation = mad(values);
  return deviation === null ? null : deviation / NORMAL_QUARTILE;
}
