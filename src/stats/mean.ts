import { checkSample, type Sample } from "./sample.ts";
import { sumOf } from "./sum.ts";

/**
 * Arithmetic mean: a compensated sum, then one correction by the mean of the deviations, so that equal values give
 * exactly that value and large values with small differences keep their digits.
 *
 * @param values any number of values in one unit, in any order
 * @returns the mean in that unit, between the smallest and the largest value; null for no values
 * @throws {RangeError} a value is NaN, infinite or above 1e150 in size
 * @see checked against the NIST StRD univariate sets (tests/reference/stats/nist-univariate.json)
 * @example mean([60, 62, 64, 70]) // => 64
 */
export function mean(values: Sample): number | null {
  checkSample(values, "values");
  const n = values.length;
  if (n === 0) return null;
  const first = sumOf(n, (i) => values[i]!) / n;
  return first + sumOf(n, (i) => values[i]! - first) / n;
}
