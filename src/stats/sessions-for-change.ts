import { tQuantile } from "./distributions.ts";

/** Fewest sessions with a verdict at all. */
const FEWEST = 5;
/** More than a winter holds: beyond it the number is not worth printing. */
const MOST = 60;

/**
 * Half-width of the 95 % interval of the change over the whole span, for equally spaced sessions, in SDs of the sessions about
 * their line: t(0.975, n - 2) sqrt(12 (n - 1) / (n (n + 1))).
 *
 * @param n sessions, a whole number of 3 or more
 * @throws {RangeError} n is anything else
 * @see follows from Var(slope) = s^2 / sum((x - mean x)^2) with x = 0, 1, ..., n - 1
 * @example changeHalfWidth(6) // => 3.318...
 */
export function changeHalfWidth(n: number): number {
  if (!(Number.isInteger(n) && n >= 3)) throw new RangeError(`a change needs 3 sessions or more, got ${n}`);
  return tQuantile(0.975, n - 2) * Math.sqrt((12 * (n - 1)) / (n * (n + 1)));
}

/**
 * Sessions after which a change of a given size shows: the smallest n from 5 whose half-width is at most that size.
 *
 * @param change the change, above 0, in any unit
 * @param sd     SD of the sessions about their line, 0 or more, same unit
 * @returns a whole number from 5 to 60, or null when 60 are not enough
 * @throws {RangeError} a change that is not above 0, or an SD below 0 or not finite
 * @example sessionsForChange(2, 1) // => 13
 */
export function sessionsForChange(change: number, sd: number): number | null {
  if (!(change > 0)) throw new RangeError(`a change to look for must be above 0, got ${change}`);
  if (!(sd >= 0 && Number.isFinite(sd))) throw new RangeError(`a scatter must be 0 or more, got ${sd}`);
  for (let n = FEWEST; n <= MOST; n += 1) if (changeHalfWidth(n) * sd <= change) return n;
  return null;
}
