import { checkSample, type Sample, sortedCopy } from "./sample.ts";

/** Hyndman and Fan's number of the definition. */
export type QuantileType = 6 | 7 | 8;

/** The m of each definition: the wanted rank is n p + m, counted from 1. */
const OFFSET: Record<QuantileType, (p: number) => number> = {
  6: (p) => p,
  7: (p) => 1 - p,
  8: (p) => (p + 1) / 3,
};

/**
 * Sample quantile: the straight line between the two neighbouring order statistics at rank n p + m, ranks beyond the
 * ends held at the ends. Type 8 is the default because it is about median-unbiased whatever the distribution; type 7 is
 * what spreadsheets and most programs give, type 6 is (n + 1) p.
 *
 * @param values any number of values in one unit, in any order
 * @param p      wanted share of the sample, 0 to 1 inclusive
 * @param type   6, 7 or 8
 * @returns a value in the unit of `values`, between the smallest and the largest; null for no values
 * @throws {RangeError} p is not in 0..1, the type is not one of the three, or a value is NaN, infinite or above 1e150
 * @see Hyndman & Fan (1996), Am Stat 50:361-365, doi:10.1080/00031305.1996.10473566
 * @example quantile([60, 62, 64, 70], 0.5) // => 63
 */
export function quantile(values: Sample, p: number, type: QuantileType = 8): number | null {
  checkSample(values, "values");
  if (!(p >= 0 && p <= 1)) throw new RangeError(`quantile needs p in 0..1, got ${p}`);
  const offset = OFFSET[type];
  if (offset === undefined) throw new RangeError(`quantile knows the types 6, 7 and 8, got ${String(type)}`);
  if (values.length === 0) return null;
  return atRank(sortedCopy(values), values.length * p + offset(p));
}

/**
 * Value at a rank that need not be whole.
 *
 * @param sorted n >= 1 values in rising order
 * @param rank   counted from 1; below 1 gives the smallest, above n the largest value
 */
export function atRank(sorted: Sample, rank: number): number {
  const held = Math.min(Math.max(rank, 1), sorted.length);
  const below = sorted[Math.floor(held) - 1]!;
  const above = sorted[Math.ceil(held) - 1]!;
  // The last digit of the step may overshoot; a quantile must not leave its two neighbours.
  return Math.min(above, below + (held - Math.floor(held)) * (above - below));
}
