import { LARGEST_VALUE } from "./sample.ts";

/**
 * A figure computed from rows given by their numbers, counted from 0; a row drawn several times is there several times. Null where it
 * does not exist for these rows, as a slope through a single x. The list is reused for the next resample: not to be kept.
 */
export type Statistic = (rows: Int32Array) => number | null;

/**
 * @returns the figure for these rows; null where it does not exist
 * @throws {RangeError} the statistic gave NaN, an infinite figure or one above 1e150 in size
 */
export function figureOf(statistic: Statistic, rows: Int32Array): number | null {
  const figure = statistic(rows);
  if (figure !== null && !(Math.abs(figure) <= LARGEST_VALUE)) {
    throw new RangeError(`a statistic must be a finite number of ordinary size or null, got ${figure}`);
  }
  return figure;
}

/** Row numbers 0 to n - 1, each once, without the one at `left` where it is given. */
export function rowsWithout(n: number, left = n): Int32Array {
  return Int32Array.from({ length: left < n ? n - 1 : n }, (_, i) => (i < left ? i : i + 1));
}
