import { binomialCdf } from "./distributions.ts";
import { checkLevel } from "./interval.ts";
import { checkSample, type Sample, sortedCopy } from "./sample.ts";

/** Interval of a quantile between two of the sorted values. Limits in the values' unit. */
export interface QuantileInterval {
  /** Ranks of the limits from 1; null on a side that has no limit. */
  readonly lowerIndex: number | null;
  readonly upperIndex: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
  /** Exact for continuous values, at least this with ties. */
  readonly coverage: number;
}

/** Smallest count that at most `chance` of the binomial lies below or at; a hair of rounding does not move it. */
function binomialQuantile(chance: number, n: number, p: number): number {
  const wanted = chance * (1 - 64 * Number.EPSILON);
  let k = 0;
  while (k < n && binomialCdf(k, n, p) < wanted) k += 1;
  return k;
}

/**
 * Distribution-free interval of a quantile from order statistics: ranks qbinom(alpha / 2) and qbinom(1 - alpha / 2) + 1.
 *
 * @param values any order
 * @param p      which quantile, above 0 and below 1
 * @param level  coverage that is wanted, above 0 and below 1
 * @returns null without values; a side is null where no order statistic reaches so far
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size; p or level outside 0 to 1
 * @see David & Nagaraja (2003), Order Statistics, section 7.1 (from memory); tests/reference/stats/quantile-ci.json
 */
export function quantileInterval(values: Sample, p: number, level: number): QuantileInterval | null {
  checkSample(values, "values");
  checkLevel(level);
  if (!(p > 0 && p < 1)) throw new RangeError(`a quantile needs a probability above 0 and below 1, got ${p}`);
  const n = values.length;
  if (n === 0) return null;
  const tail = (1 - level) / 2;
  const low = binomialQuantile(tail, n, p);
  const high = binomialQuantile(1 - tail, n, p) + 1;
  const sorted = sortedCopy(values);
  return {
    lowerIndex: low === 0 ? null : low,
    upperIndex: high > n ? null : high,
    lower: low === 0 ? null : sorted[low - 1]!,
    upper: high > n ? null : sorted[high - 1]!,
    coverage: binomialCdf(high - 1, n, p) - binomialCdf(low - 1, n, p),
  };
}
