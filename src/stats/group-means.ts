import { mean } from "./mean.ts";
import { median } from "./median.ts";
import { checkPairs, type Sample } from "./sample.ts";
import { sumOf } from "./sum.ts";

/** Repetitions of one group (a training day) as one value. */
export interface GroupMean {
  readonly name: string;
  /** Mean position of its rows. */
  readonly x: number;
  readonly n: number;
  readonly mean: number;
  readonly median: number;
}

/** Groups in order of x, of equal x in order of first appearance; the SD within groups, null where none has two values. */
export interface GroupMeans {
  readonly groups: readonly GroupMean[];
  readonly withinSd: number | null;
}

/**
 * One value per group, which is what a trend is fitted to: repetitions of one day are not independent.
 *
 * @param x     position of each row, the same throughout a group or averaged over it
 * @param y     values in one unit
 * @param group name of each row's group, any order
 * @returns no groups for no rows
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size
 */
export function groupMeans(x: Sample, y: Sample, group: readonly string[]): GroupMeans {
  const n = checkPairs(x, y);
  if (group.length !== n) throw new RangeError(`y has ${n} values and group has ${group.length}: need pairs`);
  const rows = new Map<string, number[]>();
  group.forEach((name, i) => {
    const list = rows.get(name);
    if (list) list.push(i);
    else rows.set(name, [i]);
  });
  const named = [...rows].map(([name, list]) => ({
    name,
    xs: list.map((i) => x[i]!),
    ys: list.map((i) => y[i]!),
  }));
  const groups = named
    .map(({ name, xs, ys }) => ({ name, x: mean(xs)!, n: ys.length, mean: mean(ys)!, median: median(ys)! }))
    .sort((a, b) => a.x - b.x);
  const squares = named.reduce((sum, { ys }) => {
    const centre = mean(ys)!;
    return sum + sumOf(ys.length, (i) => (ys[i]! - centre) ** 2);
  }, 0);
  const df = n - groups.length;
  return { groups, withinSd: df === 0 ? null : Math.sqrt(squares / df) };
}
