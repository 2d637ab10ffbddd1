import type { Sample } from "./sample.ts";

/** The points nearest to a place: `count` of them in a row from `first`, and how far off the farthest is. */
export interface NearestPoints {
  readonly first: number;
  readonly count: number;
  readonly bandwidth: number;
}

/**
 * @param sorted n >= 1 positions in rising order
 * @param at     the place
 * @param count  how many, 1 to n
 * @returns of two points equally far off, the one before the place
 * @example nearestPoints([0, 1, 5], 2, 2) // => { first: 0, count: 2, bandwidth: 2 }
 */
export function nearestPoints(sorted: Sample, at: number, count: number): NearestPoints {
  let first = 0;
  let last = sorted.length - count;
  while (first < last) {
    const middle = Math.floor((first + last) / 2);
    if (at - sorted[middle]! > sorted[middle + count]! - at) first = middle + 1;
    else last = middle;
  }
  const bandwidth = Math.max(Math.abs(at - sorted[first]!), Math.abs(sorted[first + count - 1]! - at));
  return { first, count, bandwidth };
}

/**
 * Points in rising order of x, those at one x in the order they came in.
 *
 * @param x positions
 * @param y as many values
 */
export function inOrderOfX(x: Sample, y: Sample): { x: Float64Array; y: Float64Array } {
  const order = Array.from({ length: x.length }, (_, i) => i).sort((a, b) => x[a]! - x[b]!);
  return { x: Float64Array.from(order, (i) => x[i]!), y: Float64Array.from(order, (i) => y[i]!) };
}

/**
 * @param span part of the points that a local line sees
 * @throws {RangeError} it is not above 0 and at most 1
 */
export function checkSpan(span: number): void {
  if (!(span > 0 && span <= 1)) throw new RangeError(`a span lies above 0 and at most at 1, got ${span}`);
}
