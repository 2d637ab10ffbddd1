import { chiSquareQuantile } from "./distributions.ts";
import { checkLevel, type Interval } from "./interval.ts";

/**
 * Interval of a standard deviation, by chi-square.
 *
 * @param sd    estimate, 0 or more, in any unit
 * @param df    its degrees of freedom, 0 or more, whole or not
 * @param level coverage, above 0 and below 1
 * @returns limits in the unit of `sd`; null with no degree of freedom
 * @throws {RangeError} an SD below 0 or not finite, degrees of freedom below 0, a level outside 0 to 1
 * @see Hopkins (2000), Sports Med 30:1-15, for the typical error; textbook
 * @example sdInterval(2, 16, 0.95) // => [1.4895..., 3.0438...]
 */
export function sdInterval(sd: number, df: number, level: number): Interval | null {
  checkLevel(level);
  if (!(sd >= 0 && Number.isFinite(sd))) throw new RangeError(`a standard deviation is 0 or more, got ${sd}`);
  if (!(df >= 0 && Number.isFinite(df))) throw new RangeError(`degrees of freedom are 0 or more, got ${df}`);
  if (df === 0) return null;
  const tail = (1 - level) / 2;
  return [sd * Math.sqrt(df / chiSquareQuantile(1 - tail, df)), sd * Math.sqrt(df / chiSquareQuantile(tail, df))];
}
