import { normalQuantile } from "./distributions.ts";
import { atRank } from "./quantile.ts";

/**
 * Sen's interval of a slope from the sorted pairwise slopes, in the four conventions programs use. Ranks count from 1.
 * N slopes, C = z sqrt(varS), M1 = (N - C) / 2, M2 = (N + C) / 2.
 */

/** Limits that are two of the slopes. */
export interface RankInterval {
  readonly lowerIndex: number;
  readonly upperIndex: number;
  readonly lower: number;
  readonly upper: number;
  /** Chance that these ranks take in the true slope; null with ties or beyond the exact distribution. */
  readonly exactCoverage: number | null;
}

/** Rounded ranks that fell outside 1..N are held at the ends; `held` says so: such a limit does not reach the level. */
export interface RoundedInterval extends RankInterval {
  readonly held: boolean;
}

/** Limits between two slopes; a limit whose rank lies outside 1..N is null. */
export interface InterpolatedInterval {
  readonly lowerRank: number;
  readonly upperRank: number;
  readonly lower: number | null;
  readonly upper: number | null;
}

export interface SenIntervals {
  /** Ranks round(M1) and round(M2) + 1, halves to even (SciPy's theilslopes). */
  readonly rounded: RoundedInterval | null;
  /** Ranks floor(M1) and N - floor(M1) + 1; null when floor(M1) < 1. */
  readonly conservative: RankInterval | null;
  /** Straight line at ranks M1 and M2 + 1 (Gilbert 1987). */
  readonly interpolated: InterpolatedInterval | null;
  /** Largest k with P(T < k) <= (1 - level) / 2, ranks k and N - k + 1; null with ties, or when no k is that large. */
  readonly exact: RankInterval | null;
}

/**
 * @param sorted N >= 1 pairwise slopes in rising order
 * @param varS   variance of Kendall's S; below 0 (nearly everything tied) the first three conventions give null
 * @param cdf    P(T <= t) of the number of discordant pairs of untied values, t = 0..N; null with ties
 * @param level  coverage, above 0 and below 1
 * @see Sen (1968), J Am Stat Assoc 63:1379-1389; Gilbert (1987), Statistical Methods for Environmental Pollution Monitoring
 */
export function senIntervals(
  sorted: Float64Array,
  varS: number,
  cdf: Float64Array | null,
  level: number,
): SenIntervals {
  const exact = exactInterval(sorted, cdf, level);
  if (varS < 0) return { rounded: null, conservative: null, interpolated: null, exact };
  const n = sorted.length;
  const halfWidth = (normalQuantile((1 + level) / 2) * Math.sqrt(varS)) / 2;
  const lowerRank = n / 2 - halfWidth;
  const upperRank = n / 2 + halfWidth + 1;
  const low = roundHalfToEven(lowerRank);
  const high = roundHalfToEven(upperRank - 1) + 1;
  const rounded = between(sorted, cdf, Math.min(Math.max(low, 1), n), Math.min(Math.max(high, 1), n));
  const floor = Math.floor(lowerRank);
  return {
    rounded: { ...rounded, held: low < 1 || high > n },
    conservative: floor < 1 ? null : between(sorted, cdf, floor, n - floor + 1),
    interpolated: {
      lowerRank,
      upperRank,
      lower: lowerRank < 1 ? null : atRank(sorted, lowerRank),
      upper: upperRank > n ? null : atRank(sorted, upperRank),
    },
    exact,
  };
}

function exactInterval(sorted: Float64Array, cdf: Float64Array | null, level: number): RankInterval | null {
  if (cdf === null) return null;
  // 1 - level is not exact in binary; without the slack a tail that equals it could be refused.
  const tail = ((1 - level) / 2) * (1 + 1e-12);
  let k = 0;
  while (k < sorted.length && cdf[k]! <= tail) k += 1;
  return k < 1 ? null : between(sorted, cdf, k, sorted.length - k + 1);
}

function between(sorted: Float64Array, cdf: Float64Array | null, low: number, high: number): RankInterval {
  // The true slope lies between ranks low and high when low <= T < high; T and N - T have the same distribution.
  const beyond = (count: number) => (count < 0 ? 0 : (cdf?.[count] ?? 0));
  return {
    lowerIndex: low,
    upperIndex: high,
    lower: sorted[low - 1]!,
    upper: sorted[high - 1]!,
    exactCoverage: cdf === null ? null : 1 - beyond(low - 1) - beyond(sorted.length - high),
  };
}

function roundHalfToEven(value: number): number {
  const floor = Math.floor(value);
  if (value - floor !== 0.5) return Math.round(value);
  return floor % 2 === 0 ? floor : floor + 1;
}
