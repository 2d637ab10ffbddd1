import { binomialCdf } from "./distributions.ts";
import { checkLevel } from "./interval.ts";
import { checkSample, type Sample, sortedCopy } from "./sample.ts";

/** Interval of a quantile between two of the sorted values. Limits in the values' unit. */
export interface QuantileInterval {
  /** Ranks of the limits, from 1; null on a side that has no limit, and so is the limit. */
  readonly lowerIndex: number | null;
  readonly upperIndex: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
  /** Chance to take in the true quantile, never below the level: exact for untied values, at least this with ties. */
  readonly coverage: number;
}

/**
 * Interval of a quantile that supposes nothing of the distribution. How many of n values lie below the true quantile is binomial, so
 * the limits are order statistics: with the smallest counts that the shares (1 - level) / 2 and (1 + level) / 2 of the binomial lie at
 * or below, the lower limit has the first one as its rank and the upper limit the second one plus 1.
 *
 * @param values any order, one unit
 * @param p      which quantile, 0 to 1 inclusive
 * @param level  coverage that is wanted, above 0 and below 1
 * @returns a side without a limit where no value lies far enough out: with few values both, with none always
 * @throws {RangeError} a value is NaN, infinite or above 1e150 in size; p outside 0..1; a level outside 0..1
 * @see David & Nagaraja (2003), Order Statistics, section 7.1 (from memory); checked against R 4.2.2 (tests/reference/stats/quantile-ci.json)
 * @example quantileInterval([3, 1, 2, 6, 5, 4], 0.5) // ranks 1 and 6: from 1 to 6, coverage 62/64
 */
export function quantileInterval(values: Sample, p: number, level = 0.95): QuantileInterval {
  checkSample(values, "values");
  checkLevel(level);
  if (!(p >= 0 && p <= 1)) throw new RangeError(`quantileInterval needs p in 0..1, got ${p}`);
  const n = values.length;
  const tail = (1 - level) / 2;
  const low = binomialQuantile(tail, n, p);
  const high = binomialQuantile(1 - tail, n, p) + 1;
  const sorted = sortedCopy(values);
  return {
    lowerIndex: low === 0 ? null : low,
    upperIndex: high > n ? null : high,
    lower: sorted[low - 1] ?? null,
    upper: sorted[high - 1] ?? null,
    coverage: binomialCdf(high - 1, n, p) - binomialCdf(low - 1, n, p),
  };
}

/** Smallest count with at least `chance` at or below it, found by halving. */
function binomialQuantile(chance: number, n: number, p: number): number {
  // 1 - level is not exact in binary; without the slack a share that equals the chance could be passed over.
  const wanted = chance * (1 - 1e-12);
  let low = 0;
  let high = n;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (binomialCdf(middle, n, p) >= wanted) high = middle;
    else low = middle + 1;
  }
  return low;
}
