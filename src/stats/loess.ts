import { localLine, tricube } from "./local-line.ts";
import { checkSpan, inOrderOfX, nearestPoints } from "./nearest-points.ts";
import { checkPairs, checkSample, type Sample } from "./sample.ts";

/** Added to n x span before it is cut to a whole number: 0.3 x 10 must be 3 points (as in R's loess). */
const SPAN_SLACK = 1e-5;

/**
 * Local linear smoothing (loess of degree 1): at each place a least-squares line through the nearest points, with tricube weights that
 * fall to 0 at the farthest of them; worked out at the place itself, not between grid points, and without robustness rounds.
 *
 * @param x    positions, in any order
 * @param y    values at these positions, in one unit
 * @param at   places to read the curve at, in the unit of x, in any order
 * @param span part of the points that each line sees, above 0 and at most 1
 * @returns a value in the unit of y for each place; null where the points do not settle one: fewer than 2 in the span, none nearer than the
 *   farthest, or all of those at one x that is not the place
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size; a span out of its range
 * @see Cleveland & Devlin (1988), J Am Stat Assoc 83:596-610; as R's loess with surface = "direct" (tests/reference/stats/loess.json)
 * @example loess([0, 1, 2, 3], [60, 61, 62, 63], [1.5], 1) // => [61.5]: a straight line stays one
 */
export function loess(x: Sample, y: Sample, at: Sample, span: number): (number | null)[] {
  const n = checkPairs(x, y);
  checkSample(at, "at");
  checkSpan(span);
  const count = Math.min(n, Math.floor(n * span + SPAN_SLACK));
  const points = inOrderOfX(x, y);
  return Array.from(at, (place) => (count < 2 ? null : smoothAt(points.x, points.y, place, count)));
}

function smoothAt(x: Float64Array, y: Float64Array, at: number, count: number): number | null {
  const { first, bandwidth } = nearestPoints(x, at, count);
  const offsets = x.subarray(first, first + count).map((position) => position - at);
  const weights = offsets.map((offset) => (Math.abs(offset) < bandwidth ? tricube(Math.abs(offset), bandwidth) : 0));
  const line = localLine(offsets, y.subarray(first, first + count), weights);
  if (line === null) return null;
  // Every line through the mean of points that all stand at the place passes there, whatever its slope.
  return line.value ?? (line.centre === 0 ? line.mean : null);
}
