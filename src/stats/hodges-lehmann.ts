import { checkLevel } from "./interval.ts";
import { kthPairSum, type PairSums, pairCount } from "./kth-pair-sum.ts";
import { type PairRank, rankSumLimit, signedRankLimit } from "./pair-rank.ts";
import { checkSample, type Sample, sortedCopy } from "./sample.ts";

/** A middle by pairs and its interval from order statistics of the pairs. In the values' unit. */
export interface HodgesLehmann {
  readonly estimate: number;
  /** Null where no interval reaches the level: at 95% always with 5 values or fewer, or with 3 against 4. */
  readonly interval: PairsInterval | null;
}

/** Limits that are two of the sorted pairs; they take in the estimate. */
export interface PairsInterval {
  /** Ranks among the sorted pairs, from 1. */
  readonly lowerIndex: number;
  readonly upperIndex: number;
  readonly lower: number;
  readonly upper: number;
  /** Exact for untied values, at least this with ties; null for so many values that the ranks are the normal approximation's. */
  readonly coverage: number | null;
}

/**
 * Typical value of one sample: the median of the means of two values, each value with itself too. The interval is the one of the
 * signed-rank test, by order statistics also where values tie; it supposes a distribution that is symmetric about its middle.
 *
 * @param values any order, one unit; time grows with n log n beyond 1000 values, where the ranks are approximate
 * @param level  coverage, above 0 and below 1
 * @returns null for no values
 * @throws {RangeError} a value is NaN, infinite or above 1e150 in size; a level outside 0..1
 * @see Hodges & Lehmann (1963), Ann Math Stat 34:598-611; checked against R 4.2.2 (tests/reference/stats/robust-location.json)
 * @example hodgesLehmann([1, 2, 9])?.estimate // => 3.5: the middle of 1, 1.5, 2, 5, 5.5 and 9
 */
export function hodgesLehmann(values: Sample, level = 0.95): HodgesLehmann | null {
  checkSample(values, "values");
  checkLevel(level);
  if (values.length === 0) return null;
  const sorted = sortedCopy(values);
  const pairs = { rows: sorted, columns: sorted, once: true };
  return fromPairs(pairs, 2, signedRankLimit(values.length, (1 - level) / 2));
}

/**
 * How far the first sample lies above the second: the median of all differences x - y, with the interval of the rank-sum test.
 *
 * @param x     values of one sample, any order
 * @param y     of the other, same unit
 * @param level coverage, above 0 and below 1
 * @returns null when a sample has no values; beyond about 200 against 200 values the ranks are approximate
 * @throws {RangeError} as `hodgesLehmann`
 * @see as `hodgesLehmann`
 * @example hodgesLehmannShift([5, 9], [1, 2])?.estimate // => 5.5: the middle of 3, 4, 7 and 8
 */
export function hodgesLehmannShift(x: Sample, y: Sample, level = 0.95): HodgesLehmann | null {
  checkSample(x, "x");
  checkSample(y, "y");
  checkLevel(level);
  if (x.length === 0 || y.length === 0) return null;
  const pairs = {
    rows: sortedCopy(x),
    columns: sortedCopy(y)
      .map((value) => -value)
      .sort(),
    once: false,
  };
  return fromPairs(pairs, 1, rankSumLimit(x.length, y.length, (1 - level) / 2));
}

/** @param divisor by which a sum is divided to be what is wanted of a pair: 2 for a mean, 1 for a difference */
function fromPairs(pairs: PairSums, divisor: number, { rank, coverage }: PairRank): HodgesLehmann {
  const count = pairCount(pairs);
  // Adding 0 turns -0 into 0.
  const at = (k: number) => kthPairSum(pairs, k) / divisor + 0;
  const below = at(Math.ceil(count / 2));
  const above = count % 2 === 1 ? below : at(count / 2 + 1);
  const estimate = below === above ? below : (below + above) / 2;
  if (rank < 1) return { estimate, interval: null };
  const upperIndex = count + 1 - rank;
  return {
    estimate,
    interval: { lowerIndex: rank, upperIndex, lower: at(rank), upper: at(upperIndex), coverage },
  };
}
