import { localLine, tricube } from "./local-line.ts";
import { medianOfSorted } from "./median.ts";
import { checkSpan, inOrderOfX, nearestPoints } from "./nearest-points.ts";
import { checkPairs, type Sample, sortedCopy } from "./sample.ts";

/** A smoothed curve: positions in rising order, and the curve there in the unit of y. */
export interface Lowess {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** Added to n x span before it is cut to a whole number (Cleveland's program has it smaller than R's loess). */
const SPAN_SLACK = 1e-7;
/** Shares of a bandwidth, and of six median residuals, below which a point counts in full and above which not at all. */
const IN_FULL = 0.001;
const NOT_AT_ALL = 0.999;
/** Points that spread less than this part of the whole range are averaged: a slope through them would say nothing. */
const LEAST_SPREAD = 0.001;
/** Six median residuals below this part of the mean one: most points lie on the curve, and another round would only weigh rounding. */
const SETTLED = 1e-7;
/** The same as a part of the largest y: then the curve runs through most points but for rounding. (R has no such limit: there rounding decides.) */
const ROUNDING = 1e-12;

/**
 * Cleveland's LOWESS: the local line at every point, then rounds in which points far from the curve lose their weight (bisquare).
 *
 * @param x      positions, in any order
 * @param y      values at these positions, in one unit
 * @param span   part of the points that each line sees (2 points at least), above 0 and at most 1
 * @param rounds robustness rounds, a whole number of 0 or more; Cleveland advises 2 or 3
 * @returns the curve at every point, equal x included; a single point is its own curve, and no points have an empty one
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size; span or rounds out of range
 * @see Cleveland (1979), J Am Stat Assoc 74:829-836; as R's lowess with delta = 0 (tests/reference/stats/loess.json)
 * @example lowess([2, 0, 1], [64, 60, 62], 1, 3).y // => [60, 62, 64]
 */
export function lowess(x: Sample, y: Sample, span: number, rounds = 3): Lowess {
  const n = checkPairs(x, y);
  checkSpan(span);
  if (!(Number.isSafeInteger(rounds) && rounds >= 0)) throw new RangeError(`rounds are counted from 0, got ${rounds}`);
  const points = inOrderOfX(x, y);
  if (n < 2) return points;
  const count = Math.min(n, Math.max(2, Math.floor(n * span + SPAN_SLACK)));
  const largest = points.y.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  let curve = curveOf(points, count, null);
  for (let round = 0; round < rounds; round += 1) {
    const trust = bisquare(
      points.y.map((value, i) => Math.abs(value - curve[i]!)),
      ROUNDING * largest,
    );
    if (trust === null) break;
    curve = curveOf(points, count, trust);
  }
  return { x: points.x, y: curve };
}

/** @param trust weight of each point from the round before, 0 to 1; null for the first */
function curveOf({ x, y }: Lowess, count: number, trust: Float64Array | null): Float64Array {
  const curve = new Float64Array(x.length);
  for (let i = 0; i < x.length; i += 1) {
    curve[i] = i > 0 && x[i] === x[i - 1] ? curve[i - 1]! : smoothAt({ x, y }, i, count, trust);
  }
  return curve;
}

function smoothAt({ x, y }: Lowess, i: number, count: number, trust: Float64Array | null): number {
  const at = x[i]!;
  const { first, bandwidth } = nearestPoints(x, at, count);
  let end = first + count;
  // With more points at this x than the span has, all of them count.
  while (end < x.length && x[end] === at) end += 1;
  const offsets = x.subarray(first, end).map((position) => position - at);
  const weights = offsets.map((offset, j) => nearness(Math.abs(offset), bandwidth) * (trust?.[first + j] ?? 1));
  const line = localLine(offsets, y.subarray(first, end), weights);
  if (line === null) return y[i]!;
  const wide = line.spread > LEAST_SPREAD * (x[x.length - 1]! - x[0]!);
  return wide && line.value !== null ? line.value : line.mean;
}

function nearness(distance: number, bandwidth: number): number {
  if (distance <= IN_FULL * bandwidth) return 1;
  return distance <= NOT_AT_ALL * bandwidth ? tricube(distance, bandwidth) : 0;
}

/**
 * @param distances of the points from the curve
 * @param rounding  six median distances that mean nothing
 * @returns weights 1 to 0; null where the curve has settled
 */
function bisquare(distances: Float64Array, rounding: number): Float64Array | null {
  const limit = 6 * medianOfSorted(sortedCopy(distances))!;
  const average = distances.reduce((sum, distance) => sum + distance, 0) / distances.length;
  if (limit <= rounding || limit < SETTLED * average) return null;
  return distances.map((distance) => {
    if (distance <= IN_FULL * limit) return 1;
    return distance <= NOT_AT_ALL * limit ? (1 - (distance / limit) ** 2) ** 2 : 0;
  });
}
