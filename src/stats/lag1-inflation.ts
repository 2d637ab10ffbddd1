import { checkSample, type Sample } from "./sample.ts";
import { sumOf } from "./sum.ts";

/** What likeness of neighbours costs a line that was fitted as if its points were independent. */
export interface Lag1Inflation {
  /** Lag-1 correlation of the residuals, -1 to 1; null when all are 0. */
  readonly lag1: number | null;
  /** Corrected for the bias of a short series about a fitted line, 0 to 0.8. */
  readonly lag1Corrected: number;
  /** Factor for the standard error of the slope, 1 or more. */
  readonly inflation: number;
  /** Independent points that would tell as much, 3 or more. */
  readonly effectiveN: number;
  /** effectiveN - 2. */
  readonly df: number;
}

/** With fewer points the correlation is anybody's guess, and none is taken. */
const FEWEST = 6;
/** Most that is believed: beyond it the factor grows without bound. */
const MOST = 0.8;

/**
 * Inflation of a slope's standard error for lag-1 correlation r of the residuals: sqrt((1 + r) / (1 - r)), with n (1 - r) / (1 + r)
 * effective points. r is corrected to first order for the bias that fitting a line brings, (n r + 2) / (n - 4), and held between 0 and
 * 0.8; below six points it is taken as 0.
 *
 * @param residuals of a least-squares line, in order of time; any number of them
 * @throws {RangeError} a residual is NaN, infinite or above 1e150 in size
 * @see a convention of this project, tests/reference/stats/group-trend.json; the factor for a mean or slope under a first-order
 *   autoregression is in Bayley & Hammersley (1946), J R Stat Soc Suppl 8:184-197 (from memory)
 * @example lag1Inflation([1, -1, 1, -1]).inflation // => 1: fewer than six points
 */
export function lag1Inflation(residuals: Sample): Lag1Inflation {
  checkSample(residuals, "residuals");
  const n = residuals.length;
  const lag1 = likeness(residuals);
  const lag1Corrected = lag1 === null || n < FEWEST ? 0 : Math.min(MOST, Math.max(0, (n * lag1 + 2) / (n - 4)));
  const effectiveN = Math.max(3, (n * (1 - lag1Corrected)) / (1 + lag1Corrected));
  return {
    lag1,
    lag1Corrected,
    inflation: Math.sqrt((1 + lag1Corrected) / (1 - lag1Corrected)),
    effectiveN,
    df: effectiveN - 2,
  };
}

/** Lag-1 correlation about 0; null when all are 0. */
function likeness(residuals: Sample): number | null {
  const largest = Array.from(residuals).reduce((most, one) => Math.max(most, Math.abs(one)), 0);
  if (largest === 0) return null;
  // A power of two changes no digit, and tiny residuals keep theirs when squared.
  const scale = 2 ** Math.floor(Math.log2(largest));
  const scaled = Float64Array.from(residuals, (one) => one / scale);
  const squares = sumOf(scaled.length, (i) => scaled[i]! ** 2);
  return sumOf(scaled.length - 1, (i) => scaled[i]! * scaled[i + 1]!) / squares;
}
