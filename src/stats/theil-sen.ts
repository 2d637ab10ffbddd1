import { checkLevel } from "./interval.ts";
import { discordantCdf, EXACT_UP_TO, varianceOfS } from "./kendall-null.ts";
import { median, medianOfSorted } from "./median.ts";
import type { NoLine } from "./no-line.ts";
import { pairwiseSlopes } from "./pairwise-slopes.ts";
import { checkPairs, type Sample } from "./sample.ts";
import { type SenIntervals, senIntervals } from "./sen-interval.ts";
import { tieGroups } from "./ties.ts";

/** Up to this many untied points the exact interval is the recommended one; beyond, the rounded ranks are as good. */
export const EXACT_RECOMMENDED_UP_TO = 10;

/** The interval to show, and the convention it comes from. */
export interface SenInterval {
  readonly method: "exact" | "rounded";
  readonly lower: number;
  readonly upper: number;
}

/** A robust line. Slopes in units of y per unit of x, intercepts in the unit of y. */
export interface TheilSenLine {
  readonly kind: "line";
  readonly n: number;
  /** Median of all slopes between two points. */
  readonly slope: number;
  /** Median of y - slope x: the usual choice. */
  readonly interceptMedianResidual: number;
  /** Median of y minus slope x median of x: SciPy's default; the two differ. */
  readonly interceptMedians: number;
  /** Pairs with different x. */
  readonly nSlopes: number;
  /** Kendall's S of x and y. */
  readonly s: number;
  /** Variance of S under no trend; null when nearly everything is tied, where the formula gives less than 0. */
  readonly varS: number | null;
  readonly level: number;
  readonly intervals: SenIntervals;
  /** Null where no interval reaches the level: always with 4 points or fewer at 95%. */
  readonly interval: SenInterval | null;
}

/**
 * Theil-Sen line over real x (gaps count), with Sen's interval of the slope. The pairs may stand in any order.
 *
 * @param x     positions, in one unit
 * @param y     values at these positions, in one unit
 * @param level coverage of the interval, above 0 and below 1
 * @returns the line, or why there is none
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size; a level outside 0..1; x so
 *   close together that a slope is too large for a double
 * @see Theil (1950), Proc K Ned Akad Wet 53:386-392; Sen (1968), J Am Stat Assoc 63:1379-1389
 * @example theilSen([0, 1, 2], [1, 3, 4]) // slope 1.5: the middle one of 2, 1.5 and 1
 */
export function theilSen(x: Sample, y: Sample, level = 0.95): TheilSenLine | NoLine {
  checkLevel(level);
  const n = checkPairs(x, y);
  if (n < 2) return { kind: "no-line", n, reason: "too-few" };
  const { sorted, s } = pairwiseSlopes(x, y);
  const slope = medianOfSorted(sorted);
  if (slope === null) return { kind: "no-line", n, reason: "same-x" };

  const tiesX = tieGroups(x);
  const tiesY = tieGroups(y);
  const untied = tiesX.length === 0 && tiesY.length === 0;
  const varS = varianceOfS(n, tiesX, tiesY);
  const intervals = senIntervals(sorted, varS, untied && n <= EXACT_UP_TO ? discordantCdf(n) : null, level);
  const residuals = Float64Array.from({ length: n }, (_, i) => y[i]! - slope * x[i]!);
  return {
    kind: "line",
    n,
    slope,
    interceptMedianResidual: median(residuals)!,
    interceptMedians: median(y)! - slope * median(x)!,
    nSlopes: sorted.length,
    s,
    varS: varS < 0 ? null : varS,
    level,
    intervals,
    interval: recommended(n, untied, intervals, level),
  };
}

function recommended(n: number, untied: boolean, intervals: SenIntervals, level: number): SenInterval | null {
  if (untied && n <= EXACT_RECOMMENDED_UP_TO) {
    const exact = intervals.exact;
    return exact === null ? null : { method: "exact", lower: exact.lower, upper: exact.upper };
  }
  const rounded = intervals.rounded;
  // Ties remove orders and never add any, so what n untied values cannot reach, n tied ones cannot either.
  if (rounded === null || rounded.held || tooFewOrders(n, level)) return null;
  return { method: "rounded", lower: rounded.lower, upper: rounded.upper };
}

/** Even the rarest of the n! orders is more frequent than the tail that the level leaves. */
function tooFewOrders(n: number, level: number): boolean {
  return n <= EXACT_UP_TO && discordantCdf(n)[0]! > ((1 - level) / 2) * (1 + 1e-12);
}
