import { checkLevel, type Interval } from "./interval.ts";
import { jeffreys, wilson } from "./proportion-ci.ts";
import { checkSample, type Sample } from "./sample.ts";

/** Where a value stands among peers. Ranks and intervals from 0 to 100. */
export interface PercentileRank {
  readonly n: number;
  readonly below: number;
  readonly equal: number;
  /** Share of peers below the value. */
  readonly strict: number;
  /** Share at or below it. */
  readonly weak: number;
  /** Half-way between: those who are equal count half. The one for a comparison with peers. */
  readonly mean: number;
  /** Of `mean`. */
  readonly wilsonMean: Interval;
  readonly jeffreysMean: Interval;
  /** Of `weak`. */
  readonly wilsonWeak: Interval;
}

/**
 * Percentile rank of a value that is not one of the peers and is taken as fixed; the intervals are for how well so many peers tell it.
 *
 * @param peers values in one unit, any order
 * @param value in the same unit
 * @param level coverage of the intervals, above 0 and below 1
 * @returns the rank; null without peers
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size; a level outside 0 to 1
 * @example percentileRank([60, 62, 64, 66], 64, 0.95)?.mean // => 62.5
 */
export function percentileRank(peers: Sample, value: number, level: number): PercentileRank | null {
  checkSample(peers, "peers");
  checkSample([value], "value");
  checkLevel(level);
  const n = peers.length;
  if (n === 0) return null;
  let below = 0;
  let equal = 0;
  for (let i = 0; i < n; i += 1) {
    if (peers[i]! < value) below += 1;
    else if (peers[i] === value) equal += 1;
  }
  const percent = ([low, high]: Interval): Interval => [100 * low, 100 * high];
  const half = below + equal / 2;
  return {
    n,
    below,
    equal,
    strict: (100 * below) / n,
    weak: (100 * (below + equal)) / n,
    mean: (100 * half) / n,
    wilsonMean: percent(wilson(half, n, level)),
    jeffreysMean: percent(jeffreys(half, n, level)),
    wilsonWeak: percent(wilson(below + equal, n, level)),
  };
}
