import type { NoLine } from "./no-line.ts";
import { originScale } from "./origin-scale.ts";
import { type Look, lookAt, type Rounding, turns } from "./quantile-look.ts";
import { checkPairs, requireFinite, type Sample } from "./sample.ts";
import { bestTilt, type Points } from "./tilt.ts";

/** A regression quantile: about the share tau of the points lies below the line. */
export interface QuantileLine {
  readonly kind: "line";
  readonly n: number;
  readonly tau: number;
  readonly slope: number;
  readonly intercept: number;
  /** Sum of tau times the distances of points above the line and 1 - tau times those of points below: no line has less. */
  readonly objective: number;
  /** Points on the line, at least 2 (equal points count each); at most tau n points lie below it, at most (1 - tau) n above. */
  readonly onLine: number;
  /** False when other lines have the same objective: then only the objective is determined. */
  readonly unique: boolean;
}

/**
 * Regression quantile with one x: the line that minimises Koenker and Bassett's objective. Exact: the line goes through two of the
 * points, and is found by turning it about the points it goes through until no turn lowers the objective. Where several lines are
 * best, which of them comes back depends on the points and not on their order.
 *
 * @param x   positions in one unit, in any order
 * @param y   values at these positions in one unit
 * @param tau share of points below, above 0 and below 1
 * @returns the line, or why there is none
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size; tau outside 0..1; a slope, intercept or
 *   objective too large for a double
 * @see Koenker and Bassett (1978), Econometrica 46:33-50; checked against R's quantreg (tests/reference/stats/quantile-regression.json)
 * @example quantileLine([0, 1, 2, 3, 4], [1, 2, 3, 9, 5], 0.5) // slope 1, intercept 1
 */
export function quantileLine(x: Sample, y: Sample, tau: number): QuantileLine | NoLine {
  if (!(tau > 0 && tau < 1)) throw new RangeError(`a regression quantile needs tau above 0 and below 1, got ${tau}`);
  const n = checkPairs(x, y);
  if (n < 2) return { kind: "no-line", n, reason: "too-few" };
  const sorted = sortedPoints(x, y);
  if (sorted.x[0] === sorted.x[n - 1]) return { kind: "no-line", n, reason: "same-x" };

  const [ofX, ofY] = [originScale(sorted.x), originScale(sorted.y)];
  const points = {
    x: sorted.x.map((value) => (value - ofX.origin) / ofX.scale),
    y: sorted.y.map((value) => (value - ofY.origin) / ofY.scale),
  };
  const rounding = { x: ofX.rounding, y: ofY.rounding };
  const look = bestLook(points, tau, rounding);
  const { through } = look.line;
  const slope = requireFinite((look.line.slope / ofX.scale) * ofY.scale, "the slope");
  return {
    kind: "line",
    n,
    tau,
    slope,
    intercept: requireFinite(sorted.y[through]! - slope * sorted.x[through]!, "the intercept"),
    objective: requireFinite(look.objective * ofY.scale, "the objective"),
    onLine: look.on.length,
    unique: [...turns(points, look, tau)].every(({ up, down }) => up > 0 && down > 0),
  };
}

/** By x and then y, so that the order of the rows decides nothing. */
function sortedPoints(x: Sample, y: Sample): Points {
  const order = Array.from({ length: x.length }, (_, i) => i).sort((a, b) => x[a]! - x[b]! || y[a]! - y[b]!);
  return { x: Float64Array.from(order, (i) => x[i]!), y: Float64Array.from(order, (i) => y[i]!) };
}

/** Every step lowers the objective, and there are only so many lines through two points, so it ends. */
function bestLook(points: Points, tau: number, rounding: Rounding): Look {
  let look = lookAt(points, bestTilt(points, 0, tau), tau, rounding);
  for (;;) {
    const lower = turnedDown(points, look, tau, rounding);
    if (lower === null) return look;
    look = lower;
  }
}

/** The best line about the first point from which a turn lowers the objective; null when there is none. */
function turnedDown(points: Points, look: Look, tau: number, rounding: Rounding): Look | null {
  for (const { about, up, down } of turns(points, look, tau)) {
    if (up >= 0 && down >= 0) continue;
    const turned = lookAt(points, bestTilt(points, about, tau), tau, rounding);
    if (turned.objective < look.objective) return turned;
  }
  return null;
}
