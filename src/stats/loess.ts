import { localLine, nearestDistance, tricube } from "./local-line.ts";
import { median } from "./median.ts";
import { checkPairs, checkSample, type Sample } from "./sample.ts";

/** Nearest points of a span; a hair of rounding does not lose one. */
function neighbours(n: number, span: number): number {
  if (!(span > 0 && span <= 1)) throw new RangeError(`a span lies above 0 and at most at 1, got ${span}`);
  return Math.min(n, Math.max(2, Math.floor(n * span + 1e-5)));
}

/** Local line at one place. Points at the bandwidth or beyond do not count; where all the nearest lie at one x, they count alike. */
function smoothAt(x: Sample, y: Sample, at: number, q: number, more: Sample | null): number | null {
  const bandwidth = nearestDistance(x, at, q);
  const weights = Float64Array.from(x, (one, i) => {
    const distance = Math.abs(one - at);
    const near = bandwidth === 0 ? (distance === 0 ? 1 : 0) : tricube(distance, bandwidth);
    return near * (more === null ? 1 : more[i]!);
  });
  return weights.every((weight) => weight === 0) ? null : localLine(x, y, weights, at);
}

/**
 * Local linear smoothing (loess, degree 1, tricube weights) computed exactly at each place, without robustness rounds.
 *
 * @param x    positions, any order
 * @param y    values there
 * @param at   places to read the curve at, in the unit of x
 * @param span share of the points that each local line sees, above 0 and at most 1
 * @returns a value of y for each place; null with fewer than two points
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size; a span outside its range
 * @see Cleveland (1979), J Am Stat Assoc 74:829-836; R's loess with surface = "direct"
 */
export function loess(x: Sample, y: Sample, at: Sample, span: number): number[] | null {
  const n = checkPairs(x, y);
  checkSample(at, "at");
  const q = neighbours(n, span);
  if (n < 2) return null;
  return Array.from(at, (place) => smoothAt(x, y, place, q, null) ?? Number(nearestMean(x, y, place)));
}

/** Mean of the points nearest to a place: what is left where no point lies within the bandwidth. */
function nearestMean(x: Sample, y: Sample, at: number): number {
  const least = nearestDistance(x, at, 1);
  const near = Array.from(y, (value, i) => (Math.abs(x[i]! - at) === least ? [value] : [])).flat();
  return near.reduce((sum, value) => sum + value, 0) / near.length;
}

/** A smoothed curve: positions in rising order and the curve there. */
export interface Lowess {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** Residuals below this part of their mean size are rounding: another round would only amplify it. */
const SETTLED = 1e-7;

/** Bisquare weights from six median residuals; null where the curve has settled. */
function bisquare(residuals: readonly number[]): number[] | null {
  const sizes = residuals.map(Math.abs);
  const six = 6 * median(sizes)!;
  const average = sizes.reduce((sum, size) => sum + size, 0) / sizes.length;
  if (six < SETTLED * average || six === 0) return null;
  return sizes.map((size) => {
    if (size <= 0.001 * six) return 1;
    return size <= 0.999 * six ? (1 - (size / six) ** 2) ** 2 : 0;
  });
}

/**
 * Cleveland's LOWESS at every point, with rounds of bisquare weights that take odd points out.
 *
 * @param rounds robustness rounds, a whole number of 0 or more
 * @returns null with fewer than two points
 * @throws {RangeError} as `loess`, and for rounds that are no such number
 * @see Cleveland (1979), J Am Stat Assoc 74:829-836; R's lowess with delta = 0
 */
export function lowess(x: Sample, y: Sample, span: number, rounds: number): Lowess | null {
  const n = checkPairs(x, y);
  const q = neighbours(n, span);
  if (!(Number.isInteger(rounds) && rounds >= 0)) throw new RangeError(`rounds are 0, 1, 2 ..., got ${rounds}`);
  if (n < 2) return null;
  const order = Array.from({ length: n }, (_, i) => i).sort((a, b) => x[a]! - x[b]! || a - b);
  const xs = order.map((i) => x[i]!);
  const ys = order.map((i) => y[i]!);
  let robust: number[] | null = null;
  let curve = xs.map((at, i) => smoothAt(xs, ys, at, q, null) ?? ys[i]!);
  for (let round = 0; round < rounds; round += 1) {
    robust = bisquare(ys.map((value, i) => value - curve[i]!));
    if (robust === null) break;
    const weights = robust;
    curve = xs.map((at, i) => smoothAt(xs, ys, at, q, weights) ?? ys[i]!);
  }
  return { x: xs, y: curve };
}
