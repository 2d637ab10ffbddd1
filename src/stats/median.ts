import { checkSample, type Sample, sortedCopy } from "./sample.ts";

/**
 * Middle value; with an even count the middle of the two central values.
 *
 * @param values any number of values in one unit, in any order
 * @returns the median in that unit; null for no values
 * @throws {RangeError} a value is NaN, infinite or above 1e150 in size
 * @example median([70, 60, 64, 62]) // => 63
 */
export function median(values: Sample): number | null {
  checkSample(values, "values");
  return medianOfSorted(sortedCopy(values));
}

/**
 * As `median`, for values that are in rising order already.
 *
 * @returns the median; null for no values
 */
export function medianOfSorted(sorted: Sample): number | null {
  const n = sorted.length;
  if (n === 0) return null;
  const below = sorted[Math.floor((n - 1) / 2)]!;
  const above = sorted[Math.floor(n / 2)]!;
  return below === above ? below : (below + above) / 2;
}
