import { tTwoSidedP } from "./distributions.ts";
import { checkLevel, type Interval, tInterval } from "./interval.ts";
import { mean } from "./mean.ts";
import type { Sample } from "./sample.ts";
import { sd } from "./sd.ts";

/** A difference of two means in the unit of the values. */
export interface WelchDifference {
  /** Mean of the second sample minus mean of the first. */
  readonly difference: number;
  /** Null when one sample has a single value: its spread is unknown. */
  readonly se: number | null;
  /** Welch-Satterthwaite degrees of freedom, seldom whole; null where `se` is null or 0. */
  readonly df: number | null;
  readonly t: number | null;
  /** Two-sided p of the difference against 0; null where `df` is. */
  readonly p: number | null;
  readonly level: number;
  readonly interval: Interval | null;
}

/**
 * Difference of two independent means without assuming equal spread.
 *
 * @param first  values of the earlier or reference group, any order
 * @param second values of the later or compared group, same unit
 * @param level  coverage of the interval, above 0 and below 1
 * @returns the difference; null when one sample has no values
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size; a level outside 0..1
 * @see Welch (1947), Biometrika 34:28-35; Satterthwaite (1946), Biometrics Bull 2:110-114
 */
export function welch(first: Sample, second: Sample, level = 0.95): WelchDifference | null {
  checkLevel(level);
  const meanFirst = mean(first);
  const meanSecond = mean(second);
  if (meanFirst === null || meanSecond === null) return null;
  const difference = meanSecond - meanFirst;
  const sdFirst = sd(first);
  const sdSecond = sd(second);
  const unknown = { difference, df: null, t: null, p: null, level, interval: null };
  if (sdFirst === null || sdSecond === null) return { ...unknown, se: null };
  const seFirst = sdFirst / Math.sqrt(first.length);
  const seSecond = sdSecond / Math.sqrt(second.length);
  const se = Math.hypot(seFirst, seSecond);
  // Neither sample varies: the degrees of freedom are 0 / 0.
  if (se === 0) return { ...unknown, se: 0 };
  // Shares of the variance, so that no fourth power leaves the range of a double.
  const shareFirst = (seFirst / se) ** 2;
  const shareSecond = (seSecond / se) ** 2;
  const df = 1 / (shareFirst ** 2 / (first.length - 1) + shareSecond ** 2 / (second.length - 1));
  const t = difference / se;
  return { difference, se, df, t, p: tTwoSidedP(t, df), level, interval: tInterval(difference, se, df, level) };
}
