import { mean } from "./mean.ts";
import type { Sample } from "./sample.ts";
import { sumOf } from "./sum.ts";

/**
 * Sample standard deviation, divisor n - 1. Two passes: the corrected mean first, then the squared deviations, so that
 * large values with small differences keep their digits.
 *
 * @param values any number of values in one unit, in any order
 * @returns the standard deviation in that unit, 0 or more (0 when all are equal); null for fewer than 2 values
 * @throws {RangeError} a value is NaN, infinite or above 1e150 in size
 * @see checked against the NIST StRD univariate sets (tests/reference/stats/nist-univariate.json)
 * @example sd([1, 2, 3]) // => 1
 */
export function sd(values: Sample): number | null {
  const centre = mean(values);
  const n = values.length;
  if (centre === null || n < 2) return null;
  const squares = sumOf(n, (i) => (values[i]! - centre) ** 2);
  return Math.sqrt(squares / (n - 1));
}
