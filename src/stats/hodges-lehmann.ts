import { normalQuantile } from "./distributions.ts";
import { checkLevel } from "./interval.ts";
import { medianOfSorted } from "./median.ts";
import { rankSumCdf, signedRankCdf } from "./rank-null.ts";
import { checkSample, type Sample } from "./sample.ts";

/** A middle by pairs and its interval from order statistics of the pairs. In the values' unit. */
export interface HodgesLehmann {
  readonly estimate: number;
  /** Null where no interval reaches the level: always with 5 values or fewer at 95 %. */
  readonly interval: PairsInterval | null;
}

export interface PairsInterval {
  /** Ranks among the sorted pairs, from 1. */
  readonly lowerIndex: number;
  readonly upperIndex: number;
  readonly lower: number;
  readonly upper: number;
  /** Exact for continuous values; null beyond the exact distribution, where it is the level nearly. */
  readonly coverage: number | null;
}

/** Values up to which the signed-rank distribution is counted out, and pairs up to which the rank-sum one is. */
const EXACT_VALUES = 300;
const EXACT_PAIRS = 10_000;

interface Rank {
  readonly k: number;
  readonly coverage: number | null;
}

/** The smallest sum that at least `tail` of the distribution lies at or below. */
function exactRank(cdf: Float64Array, tail: number): Rank {
  const wanted = tail * (1 - 64 * Number.EPSILON);
  const k = cdf.findIndex((chance) => chance >= wanted);
  return { k, coverage: k === 0 ? null : 1 - 2 * cdf[k - 1]! };
}

const normalRank = (centre: number, sd: number, tail: number): Rank => ({
  k: Math.max(0, Math.round(centre + normalQuantile(tail) * sd)),
  coverage: null,
});

function fromPairs(pairs: Float64Array, { k, coverage }: Rank): HodgesLehmann | null {
  const sorted = pairs.sort();
  const estimate = medianOfSorted(sorted);
  if (estimate === null) return null;
  if (k < 1) return { estimate, interval: null };
  const upperIndex = sorted.length + 1 - k;
  return {
    estimate,
    interval: { lowerIndex: k, upperIndex, lower: sorted[k - 1]!, upper: sorted[upperIndex - 1]!, coverage },
  };
}

/**
 * Median of all means of two values, each value with itself too, with the interval of the signed-rank test. Ties are kept.
 *
 * @param values any order; room grows with n squared
 * @param level  coverage, above 0 and below 1
 * @returns null without values
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size; a level outside 0 to 1
 * @see Hollander & Wolfe (1973), Nonparametric Statistical Methods, 3.2-3.3
 * @example hodgesLehmann([1, 2, 9], 0.95)?.estimate // => 3.5: the middle of 1, 1.5, 2, 5, 5.5 and 9
 */
export function hodgesLehmann(values: Sample, level: number): HodgesLehmann | null {
  checkSample(values, "values");
  checkLevel(level);
  const n = values.length;
  if (n === 0) return null;
  const pairs = new Float64Array((n * (n + 1)) / 2);
  let at = 0;
  for (let i = 0; i < n; i += 1) {
    for (let j = i; j < n; j += 1) {
      pairs[at] = (values[i]! + values[j]!) / 2;
      at += 1;
    }
  }
  const tail = (1 - level) / 2;
  const rank =
    n <= EXACT_VALUES
      ? exactRank(signedRankCdf(n), tail)
      : normalRank((n * (n + 1)) / 4, Math.sqrt((n * (n + 1) * (2 * n + 1)) / 24), tail);
  return fromPairs(pairs, rank);
}

/**
 * Median of all differences x - y, with the interval of the rank-sum test: how far the first sample lies above the second.
 *
 * @param x     values of one sample, any order
 * @param y     of the other, same unit
 * @param level coverage, above 0 and below 1
 * @returns null when a sample has no values
 * @throws {RangeError} as `hodgesLehmann`
 */
export function hodgesLehmannShift(x: Sample, y: Sample, level: number): HodgesLehmann | null {
  checkSample(x, "x");
  checkSample(y, "y");
  checkLevel(level);
  const [n, m] = [x.length, y.length];
  if (n === 0 || m === 0) return null;
  const pairs = new Float64Array(n * m);
  for (let i = 0; i < n; i += 1) for (let j = 0; j < m; j += 1) pairs[i * m + j] = x[i]! - y[j]!;
  const tail = (1 - level) / 2;
  const rank =
    n * m <= EXACT_PAIRS
      ? exactRank(rankSumCdf(n, m), tail)
      : normalRank((n * m) / 2, Math.sqrt((n * m * (n + m + 1)) / 12), tail);
  return fromPairs(pairs, rank);
}
