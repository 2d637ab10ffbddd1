import type { Sample } from "./sample.ts";

/**
 * All sums of a value of one list and a value of another, without writing them down: 100,000 values have five thousand million pairs.
 */
export interface PairSums {
  /** In rising order, 1 value or more. */
  readonly rows: Sample;
  /** In rising order, 1 value or more. */
  readonly columns: Sample;
  /** True: rows and columns are one list, and each pair of places counts once (each value with itself too). */
  readonly once: boolean;
}

/** How the sums lie about a value. */
interface Look {
  readonly atMost: number;
  /** Largest sum that is at most the value; -Infinity where there is none. */
  readonly below: number;
  /** Smallest sum above it; Infinity where there is none. */
  readonly above: number;
}

/** @returns how many sums there are */
export function pairCount({ rows, columns, once }: PairSums): number {
  return once ? (rows.length * (rows.length + 1)) / 2 : rows.length * columns.length;
}

/**
 * The k-th smallest of the sums, to the last bit: the range is halved, and each end is moved on to a sum that occurs.
 *
 * @param k rank from 1 to `pairCount`
 * @throws {RangeError} k is not a whole number in that range
 * @example kthPairSum({ rows: [1, 2], columns: [10, 20], once: false }, 3) // => 21 of 11, 12, 21 and 22
 */
export function kthPairSum(pairs: PairSums, k: number): number {
  if (!(Number.isInteger(k) && k >= 1 && k <= pairCount(pairs))) {
    throw new RangeError(`a rank among ${pairCount(pairs)} pairs is wanted, got ${k}`);
  }
  const { rows, columns } = pairs;
  let low = rows[0]! + columns[0]!;
  let high = rows[rows.length - 1]! + columns[columns.length - 1]!;
  while (low < high) {
    const middle = low + (high - low) / 2;
    const look = lookAt(pairs, middle < high ? middle : low);
    if (look.atMost >= k) high = look.below;
    else low = look.above;
  }
  return low;
}

/** One walk along the stairs between the sums up to a value and those above it: down the rows, back along the columns. */
function lookAt({ rows, columns, once }: PairSums, value: number): Look {
  let [atMost, below, above] = [0, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let end = columns.length;
  for (let i = 0; i < rows.length; i += 1) {
    const row = rows[i]!;
    const first = once ? i : 0;
    while (end > 0 && row + columns[end - 1]! > value) end -= 1;
    if (end > first) {
      atMost += end - first;
      below = Math.max(below, row + columns[end - 1]!);
    }
    const next = Math.max(end, first);
    if (next < columns.length) above = Math.min(above, row + columns[next]!);
  }
  return { atMost, below, above };
}
