import { tTwoSidedP } from "./distributions.ts";
import { checkLevel, type Interval, tInterval } from "./interval.ts";
import { mean } from "./mean.ts";
import type { NoLine } from "./no-line.ts";
import { checkPairs, requireFinite, type Sample } from "./sample.ts";
import { sumOf } from "./sum.ts";

/**
 * A least-squares line. Slopes are in units of y per unit of x; intercepts, residual SD and fits in the unit of y.
 *
 * With 2 points (df 0) the line goes through both and says nothing about its own error: residual SD, standard errors,
 * t, p, intervals and r squared are null.
 */
export interface OlsLine {
  readonly kind: "line";
  readonly n: number;
  readonly slope: number;
  readonly intercept: number;
  /** Degrees of freedom of the residuals, n - 2. */
  readonly df: number;
  readonly residualSd: number | null;
  readonly seSlope: number | null;
  readonly seIntercept: number | null;
  /** slope / seSlope; also null when the standard error is 0 (all points exactly on the line). */
  readonly tSlope: number | null;
  /** Two-sided p of the slope against 0; null where tSlope is. */
  readonly pSlope: number | null;
  readonly level: number;
  readonly ciSlope: Interval | null;
  readonly ciIntercept: Interval | null;
  /** Share of the variance of y that the line takes up, 0 to 1; also null when all y are equal. */
  readonly rSquared: number | null;
  readonly meanX: number;
  readonly meanY: number;
  /** Sum of squared deviations of x from its mean, above 0. */
  readonly sumSquaresX: number;
}

/**
 * Ordinary least squares with one x. The pairs may stand in any order.
 *
 * @param x     positions, in one unit
 * @param y     values at these positions, in one unit
 * @param level coverage of the two t intervals, above 0 and below 1
 * @returns the line, or why there is none
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size; a level outside 0..1; x so
 *   close together that the slope is too large for a double
 * @see checked against NIST StRD Norris (certified) and R's lm (tests/reference/stats/ols.json)
 * @example ols([0, 1, 2], [1, 3, 4]) // slope 1.5, intercept 7/6, df 1
 */
export function ols(x: Sample, y: Sample, level = 0.95): OlsLine | NoLine {
  checkLevel(level);
  const n = checkPairs(x, y);
  const meanX = mean(x);
  const meanY = mean(y);
  if (n < 2 || meanX === null || meanY === null) return { kind: "no-line", n, reason: "too-few" };
  const sumSquaresX = sumOf(n, (i) => (x[i]! - meanX) ** 2);
  if (sumSquaresX === 0) return { kind: "no-line", n, reason: "same-x" };

  const products = sumOf(n, (i) => (x[i]! - meanX) * (y[i]! - meanY));
  const slope = requireFinite(products / sumSquaresX, "the slope");
  const intercept = requireFinite(meanY - slope * meanX, "the intercept");
  const df = n - 2;
  const residualSquares = sumOf(n, (i) => (y[i]! - meanY - slope * (x[i]! - meanX)) ** 2);
  const squaresY = sumOf(n, (i) => (y[i]! - meanY) ** 2);
  const residualSd = df === 0 ? null : Math.sqrt(residualSquares / df);
  const seSlope = residualSd === null ? null : residualSd / Math.sqrt(sumSquaresX);
  const seIntercept = residualSd === null ? null : residualSd * Math.sqrt(1 / n + meanX ** 2 / sumSquaresX);
  const tSlope = seSlope === null || seSlope === 0 ? null : requireFinite(slope / seSlope, "the t of the slope");
  return {
    kind: "line",
    n,
    slope,
    intercept,
    df,
    residualSd,
    seSlope,
    seIntercept,
    tSlope,
    pSlope: tSlope === null ? null : tTwoSidedP(tSlope, df),
    level,
    ciSlope: tInterval(slope, seSlope, df, level),
    ciIntercept: tInterval(intercept, seIntercept, df, level),
    rSquared: df === 0 || squaresY === 0 ? null : Math.max(0, 1 - residualSquares / squaresY),
    meanX,
    meanY,
    sumSquaresX,
  };
}
