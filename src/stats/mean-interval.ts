import { type Interval, tInterval } from "./interval.ts";
import { mean } from "./mean.ts";
import type { Sample } from "./sample.ts";
import { sd } from "./sd.ts";

/** A mean with its t interval. In the values' unit. */
export interface MeanInterval {
  readonly estimate: number;
  /** Null for one value. */
  readonly ci95: Interval | null;
  readonly df: number;
  readonly n: number;
}

/**
 * Mean of independent values with Student's 95 % interval.
 *
 * @returns null for no values
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size
 * @see Student (1908), Biometrika 6:1-25
 * @example meanInterval([1, 2, 3]) // => estimate 2, ci95 [-0.484..., 4.484...], df 2
 */
export function meanInterval(values: Sample): MeanInterval | null {
  const estimate = mean(values);
  if (estimate === null) return null;
  const n = values.length;
  const spread = sd(values);
  return {
    estimate,
    ci95: spread === null ? null : tInterval(estimate, spread / Math.sqrt(n), n - 1, 0.95),
    df: n - 1,
    n,
  };
}
