import { mean } from "./mean.ts";
import type { Sample } from "./sample.ts";
import { sumOf } from "./sum.ts";

/**
 * Lag-1 autocorrelation: how alike neighbours in the list are, about the overall mean, with the full sum of squares as
 * divisor (so a short series is pulled towards 0).
 *
 * @param values values in one unit, in time order
 * @returns a number without unit, -1 to 1; null for fewer than 2 values or when all are equal
 * @throws {RangeError} a value is NaN, infinite or above 1e150 in size
 * @see NIST StRD, univariate summary statistics (the definition of its certified autocorrelation coefficient)
 * @example lag1([1, 3, 2]) // => -0.5
 */
export function lag1(values: Sample): number | null {
  const centre = mean(values);
  const n = values.length;
  if (centre === null) return null;
  // One value is its own mean: no squares, no answer.
  const squares = sumOf(n, (i) => (values[i]! - centre) ** 2);
  if (squares === 0) return null;
  return sumOf(n - 1, (i) => (values[i]! - centre) * (values[i + 1]! - centre)) / squares;
}
