import { type Interval, tInterval } from "./interval.ts";
import { mean } from "./mean.ts";
import { sd } from "./sd.ts";

/** How a second measurement differs from a first, in the values' unit. */
export interface Agreement {
  /** Second less first. */
  readonly meanChange: number;
  readonly sdChange: number;
  /** t interval of the mean change. */
  readonly interval: Interval | null;
  /** sdChange / sqrt 2. */
  readonly typicalError: number;
  /** meanChange -+ 1.96 sdChange: where 95 of 100 differences lie. */
  readonly limits: Interval;
}

/**
 * Limits of agreement of two trials.
 *
 * @param pairs first and second measurement of each subject
 * @param level coverage of the interval, above 0 and below 1
 * @returns null with fewer than two pairs
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size; a level outside 0 to 1
 * @see Bland & Altman (1986), Lancet i:307-310
 */
export function agreement(pairs: readonly (readonly [number, number])[], level: number): Agreement | null {
  const changes = pairs.map(([first, second]) => second - first);
  const meanChange = mean(changes);
  const sdChange = sd(changes);
  if (meanChange === null || sdChange === null) return null;
  return {
    meanChange,
    sdChange,
    interval: tInterval(meanChange, sdChange / Math.sqrt(changes.length), changes.length - 1, level),
    typicalError: sdChange / Math.SQRT2,
    limits: [meanChange - 1.96 * sdChange, meanChange + 1.96 * sdChange],
  };
}
