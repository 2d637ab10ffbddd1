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
  const largest = Array.from(values).reduce((most, value) => Math.max(most, Math.abs(value - centre)), 0);
  // One value is its own mean: nothing deviates, no answer.
  if (largest === 0) return null;
  // As parts of the largest, so that no square falls out of the range of a double.
  const part = (i: number) => (values[i]! - centre) / largest;
  return sumOf(n - 1, (i) => part(i) * part(i + 1)) / sumOf(n, (i) => part(i) ** 2);
}
