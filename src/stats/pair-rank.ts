import { normalQuantile } from "./distributions.ts";
import { rankSumCdf, rankSumIsCounted, SIGNED_RANK_UP_TO, signedRankCdf } from "./rank-null.ts";

/** Which of the sorted pairs is the lower limit; the upper one has the same rank from the other end. */
export interface PairRank {
  /** Counted from 1; 0 where even the outermost pairs do not reach the level. */
  readonly rank: number;
  /** Chance that the two limits take in the true value; null where it was not counted out. */
  readonly coverage: number | null;
}

/** A distribution that is nearly normal and symmetric. */
export interface NearlyNormal {
  readonly centre: number;
  readonly sd: number;
  /** Fourth cumulant over the fourth power of the SD; 0 for a normal one. */
  readonly excess: number;
}

/**
 * Rank of the lower limit for the means of two of n values: the smallest k with P(T <= k) >= tail, counted out for up to 1000 values and
 * from the normal approximation beyond (within one rank there).
 *
 * @param n    number of values, 1 or more
 * @param tail chance that is left out on one side, above 0 and below 1/2
 * @example signedRankLimit(6, 0.025) // => { rank: 1, coverage: 62/64 }
 */
export function signedRankLimit(n: number, tail: number): PairRank {
  return n <= SIGNED_RANK_UP_TO ? countedRank(signedRankCdf(n), tail) : normalRank(signedRankMoments(n), tail);
}

/**
 * The same for the differences between n and m values, by the rank-sum distribution: counted out up to about 200 against 200 values.
 *
 * @example rankSumLimit(4, 4, 0.025) // => { rank: 1, coverage: 68/70 }
 */
export function rankSumLimit(n: number, m: number, tail: number): PairRank {
  return rankSumIsCounted(n, m) ? countedRank(rankSumCdf(n, m), tail) : normalRank(rankSumMoments(n, m), tail);
}

/** Of the signed-rank sum: each rank r counts or not, so the cumulants are those of r times a coin, added up. */
export function signedRankMoments(n: number): NearlyNormal {
  const squares = (n * (n + 1) * (2 * n + 1)) / 6;
  const fourthPowers = (squares * (3 * n * n + 3 * n - 1)) / 5;
  return { centre: (n * (n + 1)) / 4, sd: Math.sqrt(squares / 4), excess: -(2 * fourthPowers) / squares ** 2 };
}

/** Of the count of pairs. See Fix & Hodges (1955), Ann Math Stat 26:301-312 (from memory; the tests hold it against the counted one). */
export function rankSumMoments(n: number, m: number): NearlyNormal {
  const variance = (n * m * (n + m + 1)) / 12;
  const fourth = -(n * m * (n + m + 1) * (n * n + m * m + n * m + n + m)) / 120;
  return { centre: (n * m) / 2, sd: Math.sqrt(variance), excess: fourth / variance ** 2 };
}

/** @param cdf the lower half of a symmetric distribution */
function countedRank(cdf: Float64Array, tail: number): PairRank {
  // 1 - level is not exact in binary; without the slack a chance that equals the tail could be passed over.
  const rank = cdf.findIndex((chance) => chance >= tail * (1 - 1e-12));
  return rank === 0 ? { rank, coverage: null } : { rank, coverage: 1 - 2 * cdf[rank - 1]! };
}

/** Quantile of a sum of many parts with the first correction for their shape (Cornish & Fisher 1938), half a rank for continuity. */
export function normalRank({ centre, sd, excess }: NearlyNormal, tail: number): PairRank {
  const z = normalQuantile(tail);
  const corrected = z + ((z ** 3 - 3 * z) * excess) / 24;
  return { rank: Math.max(0, Math.ceil(centre + corrected * sd - 0.5)), coverage: null };
}
