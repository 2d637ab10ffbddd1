import { normalQuantile, normalTwoSidedP } from "./distributions.ts";
import { kendallZ, mannKendall } from "./mann-kendall.ts";
import { mean } from "./mean.ts";
import { medianOfSorted } from "./median.ts";
import { pairwiseSlopes } from "./pairwise-slopes.ts";
import { type Sample, sortedCopy } from "./sample.ts";
import { sumOf } from "./sum.ts";

/** Residuals are rounded to this many decimals before ranking, so that equal ones tie whatever the last digits. */
const RESIDUAL_DECIMALS = 10;

/** Mann-Kendall with the variance of S multiplied by `factor`. */
export interface CorrectedTest {
  readonly factor: number;
  /** Null, as `z` and `p`, when the factor is below 0: strong alternation, where the correction breaks down. */
  readonly varS: number | null;
  readonly z: number | null;
  readonly p: number | null;
}

/** Mann-Kendall for a series whose neighbours are alike. */
export interface HamedRao {
  /** Two-sided level at which a lag counts as correlated. */
  readonly alphaLags: number;
  /** Theil-Sen slope per step of the list (1..n as x), units of the values. */
  readonly senSlope: number;
  /** Lags 1..n-1 whose rank autocorrelation is beyond the limit, rising. */
  readonly significantLags: readonly number[];
  /** The autocorrelations at these lags. */
  readonly rankAutocorrelation: readonly number[];
  /** With the signed sum, as in the paper. */
  readonly signed: CorrectedTest;
  /** With the absolute value of the sum: the variance never shrinks. */
  readonly absolute: CorrectedTest;
}

/**
 * Hamed and Rao's variance correction: take out the Sen slope, rank the residuals, keep the autocorrelations that are
 * significant, and widen the variance of S by them.
 *
 * @param values    in time order
 * @param alphaLags two-sided level for keeping a lag, above 0 and below 1
 * @returns null for fewer than 3 values or when all residuals are equal: there is no autocorrelation to correct for
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size; alphaLags outside 0..1
 * @see Hamed & Rao (1998), J Hydrol 204:182-196, doi:10.1016/S0022-1694(97)00125-X
 */
export function hamedRao(values: Sample, alphaLags = 0.05): HamedRao | null {
  if (!(alphaLags > 0 && alphaLags < 1))
    throw new RangeError(`alphaLags must be above 0 and below 1, got ${alphaLags}`);
  const plain = mannKendall(values);
  const n = values.length;
  if (plain === null) return null;
  const steps = Float64Array.from({ length: n }, (_, i) => i + 1);
  const senSlope = medianOfSorted(pairwiseSlopes(steps, values).sorted)!;
  const scale = 10 ** RESIDUAL_DECIMALS;
  const residuals = steps.map((step, i) => Math.round((values[i]! - senSlope * step) * scale) / scale);
  const correlations = autocorrelations(midRanks(residuals));
  // Two values lie on their own slope: nothing is left, and nothing below divides by n - 2.
  if (correlations === null) return null;

  const limit = normalQuantile(1 - alphaLags / 2) / Math.sqrt(n);
  const kept = correlations.filter(({ r }) => Math.abs(r) > limit);
  const sum = sumOf(kept.length, (i) => {
    const { lag, r } = kept[i]!;
    return (n - lag) * (n - lag - 1) * (n - lag - 2) * r;
  });
  const corrected = (total: number) => withFactor(plain.s, plain.varS, 1 + (2 / (n * (n - 1) * (n - 2))) * total);
  return {
    alphaLags,
    senSlope,
    significantLags: kept.map(({ lag }) => lag),
    rankAutocorrelation: kept.map(({ r }) => r),
    signed: corrected(sum),
    absolute: corrected(Math.abs(sum)),
  };
}

function withFactor(s: number, plainVarS: number, factor: number): CorrectedTest {
  if (factor < 0) return { factor, varS: null, z: null, p: null };
  const varS = plainVarS * factor;
  const z = kendallZ(s, varS);
  return { factor, varS, z, p: normalTwoSidedP(z) };
}

/** Rank of each value, counted from 1; equal values share the mean of their ranks. */
function midRanks(values: Float64Array): Float64Array {
  const sorted = sortedCopy(values);
  return values.map((value) => (sorted.indexOf(value) + sorted.lastIndexOf(value)) / 2 + 1);
}

/** Autocorrelation at lags 1..n-1 about the overall mean, full sum of squares as divisor; null when all are equal. */
function autocorrelations(values: Float64Array): { lag: number; r: number }[] | null {
  const n = values.length;
  const centre = mean(values)!;
  const squares = sumOf(n, (i) => (values[i]! - centre) ** 2);
  if (squares === 0) return null;
  return Array.from({ length: n - 1 }, (_, index) => {
    const lag = index + 1;
    const products = sumOf(n - lag, (i) => (values[i]! - centre) * (values[i + lag]! - centre));
    return { lag, r: products / squares };
  });
}
