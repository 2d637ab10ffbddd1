import normalCdfOf from "@stdlib/stats-base-dists-normal-cdf";
import normalQuantileOf from "@stdlib/stats-base-dists-normal-quantile";
import tCdfOf from "@stdlib/stats-base-dists-t-cdf";
import tQuantileOf from "@stdlib/stats-base-dists-t-quantile";

/**
 * The two distributions the intervals and tests need, with wrong calls refused where the library would give NaN.
 * Tails keep their relative accuracy: ask for the lower tail of -|t| instead of 1 minus the upper one.
 */

/**
 * Quantile of Student's t.
 *
 * @param p  probability, above 0 and below 1 (the ends are infinite)
 * @param df degrees of freedom, above 0, whole or not
 * @throws {RangeError} p or df outside these
 * @example tQuantile(0.975, 1) // => 12.7062047...
 */
export function tQuantile(p: number, df: number): number {
  checkProbability(p);
  checkDf(df);
  return tQuantileOf(p, df);
}

/**
 * Probability that Student's t is at most `t`.
 *
 * @param t  any number, not NaN
 * @param df degrees of freedom, above 0
 * @throws {RangeError} t is NaN, or df is not above 0
 */
export function tCdf(t: number, df: number): number {
  if (Number.isNaN(t)) throw new RangeError("tCdf needs a number, got NaN");
  checkDf(df);
  return tCdfOf(t, df);
}

/**
 * Probability that a standard normal value is at most `z`.
 *
 * @throws {RangeError} z is NaN
 */
export function normalCdf(z: number): number {
  if (Number.isNaN(z)) throw new RangeError("normalCdf needs a number, got NaN");
  return normalCdfOf(z, 0, 1);
}

/**
 * Quantile of the standard normal distribution.
 *
 * @param p probability, above 0 and below 1
 * @throws {RangeError} p outside these
 * @example normalQuantile(0.975) // => 1.9599639...
 */
export function normalQuantile(p: number): number {
  checkProbability(p);
  return normalQuantileOf(p, 0, 1);
}

/** Chance of a t at least as far from 0, on either side; 0 to 1. Errors as tCdf. */
export function tTwoSidedP(t: number, df: number): number {
  return Math.min(1, 2 * tCdf(-Math.abs(t), df));
}

/** Chance of a standard normal value at least as far from 0, on either side; 0 to 1. Errors as normalCdf. */
export function normalTwoSidedP(z: number): number {
  return Math.min(1, 2 * normalCdf(-Math.abs(z)));
}

function checkProbability(p: number): void {
  if (!(p > 0 && p < 1)) throw new RangeError(`a quantile needs a probability above 0 and below 1, got ${p}`);
}

function checkDf(df: number): void {
  if (!(df > 0 && Number.isFinite(df))) throw new RangeError(`Student's t needs degrees of freedom above 0, got ${df}`);
}
