import betaQuantileOf from "@stdlib/stats-base-dists-beta-quantile";
import binomialCdfOf from "@stdlib/stats-base-dists-binomial-cdf";
import chiSquareQuantileOf from "@stdlib/stats-base-dists-chisquare-quantile";
import fQuantileOf from "@stdlib/stats-base-dists-f-quantile";
import normalCdfOf from "@stdlib/stats-base-dists-normal-cdf";
import normalQuantileOf from "@stdlib/stats-base-dists-normal-quantile";
import tCdfOf from "@stdlib/stats-base-dists-t-cdf";
import tQuantileOf from "@stdlib/stats-base-dists-t-quantile";

/**
 * The distributions the intervals and tests need, with wrong calls refused where the library would give NaN.
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

/**
 * Quantile of chi-square.
 *
 * @param p  probability, above 0 and below 1
 * @param df degrees of freedom, above 0
 * @throws {RangeError} p or df outside these
 */
export function chiSquareQuantile(p: number, df: number): number {
  checkProbability(p);
  checkDf(df);
  return chiSquareQuantileOf(p, df);
}

/**
 * Quantile of F.
 *
 * @param p   probability, above 0 and below 1
 * @param df1 degrees of freedom of the numerator, above 0
 * @param df2 of the denominator, above 0
 * @throws {RangeError} any of them outside these
 */
export function fQuantile(p: number, df1: number, df2: number): number {
  checkProbability(p);
  checkDf(df1);
  checkDf(df2);
  return fQuantileOf(p, df1, df2);
}

/**
 * Quantile of the beta distribution, 0 to 1.
 *
 * @param p probability, above 0 and below 1
 * @param a first shape, above 0
 * @param b second shape, above 0
 * @throws {RangeError} any of them outside these
 */
export function betaQuantile(p: number, a: number, b: number): number {
  checkProbability(p);
  if (!(a > 0 && b > 0)) throw new RangeError(`a beta distribution needs shapes above 0, got ${a} and ${b}`);
  return betaQuantileOf(p, a, b);
}

/**
 * Probability of at most `k` successes in `n` tries.
 *
 * @param k any number; below 0 the answer is 0
 * @param n whole number, 0 or more
 * @param p chance of each, 0 to 1
 * @throws {RangeError} k is NaN, n is not a whole number from 0, or p outside 0..1
 */
export function binomialCdf(k: number, n: number, p: number): number {
  if (Number.isNaN(k)) throw new RangeError("binomialCdf needs a number, got NaN");
  if (!(Number.isInteger(n) && n >= 0)) throw new RangeError(`binomialCdf needs a count of tries, got ${n}`);
  if (!(p >= 0 && p <= 1)) throw new RangeError(`binomialCdf needs a chance from 0 to 1, got ${p}`);
  return binomialCdfOf(k, n, p);
}

function checkProbability(p: number): void {
  if (!(p > 0 && p < 1)) throw new RangeError(`a quantile needs a probability above 0 and below 1, got ${p}`);
}

function checkDf(df: number): void {
  if (!(df > 0 && Number.isFinite(df))) throw new RangeError(`degrees of freedom must be above 0, got ${df}`);
}
