import { betaQuantile, normalQuantile } from "./distributions.ts";
import { checkLevel, type Interval } from "./interval.ts";

/** Beyond a thousand million tries the quantile of the beta distribution is off without a word. */
const MOST_TRIES = 1e9;

/** @throws {RangeError} not 0 <= count <= n with a whole n from 1 to MOST_TRIES; the count need not be whole */
function checkCount(count: number, n: number): void {
  if (!(Number.isInteger(n) && n >= 1 && n <= MOST_TRIES)) {
    throw new RangeError(`a share needs a whole number of tries from 1 to ${MOST_TRIES}, got ${n}`);
  }
  if (!(count >= 0 && count <= n)) throw new RangeError(`a share needs a count from 0 to ${n}, got ${count}`);
}

/**
 * Wilson's score interval of a share, without continuity correction.
 *
 * @param count successes, 0 to n, whole or not (ties counted half, a share of n)
 * @param n     tries, 1 to 1e9
 * @param level coverage, above 0 and below 1
 * @returns limits from 0 to 1, exactly 0 where nothing succeeded and exactly 1 where everything did
 * @throws {RangeError} any of them outside these
 * @see Wilson (1927), J Am Stat Assoc 22:209-212; Newcombe (1998), Stat Med 17:857-872
 * @example wilson(0, 20, 0.95) // => [0, 0.1611...]
 */
export function wilson(count: number, n: number, level: number): Interval {
  checkLevel(level);
  checkCount(count, n);
  const z = normalQuantile((1 + level) / 2);
  return [lowerLimit(count, n, z), 1 - lowerLimit(n - count, n, z)];
}

/** The smaller root of (n + z^2) p^2 - (2 count + z^2) p + count^2 / n, written without a difference that would leave a crumb. */
function lowerLimit(count: number, n: number, z: number): number {
  if (count === 0) return 0;
  const half = z * Math.sqrt((count * (n - count)) / n + (z * z) / 4);
  return (count * count) / n / (count + (z * z) / 2 + half);
}

/**
 * Jeffreys interval of a share: equal tails of Beta(count + 1/2, n - count + 1/2).
 *
 * @param count successes, 0 to n, whole or not
 * @param n     tries, 1 to 1e9
 * @param level coverage, above 0 and below 1
 * @throws {RangeError} any of them outside these
 * @see Brown, Cai & DasGupta (2001), Stat Sci 16:101-133
 */
export function jeffreys(count: number, n: number, level: number): Interval {
  checkLevel(level);
  checkCount(count, n);
  const tail = (1 - level) / 2;
  const [a, b] = [count + 0.5, n - count + 0.5];
  return [betaQuantile(tail, a, b), betaQuantile(1 - tail, a, b)];
}

/** Jeffreys interval whose lower limit is 0 where nothing succeeded and whose upper limit is 1 where everything did. */
export function jeffreysModified(count: number, n: number, level: number): Interval {
  const [low, high] = jeffreys(count, n, level);
  return [count === 0 ? 0 : low, count === n ? 1 : high];
}

/**
 * Clopper and Pearson's interval of a share: never covers less than the level, often more.
 *
 * @param count successes, a whole number from 0 to n
 * @param n     tries, 1 to 1e9
 * @param level coverage, above 0 and below 1
 * @throws {RangeError} any of them outside these
 * @see Clopper & Pearson (1934), Biometrika 26:404-413
 */
export function clopperPearson(count: number, n: number, level: number): Interval {
  checkLevel(level);
  checkCount(count, n);
  if (!Number.isInteger(count)) throw new RangeError(`an exact interval needs a whole count, got ${count}`);
  const tail = (1 - level) / 2;
  return [
    count === 0 ? 0 : betaQuantile(tail, count, n - count + 1),
    count === n ? 1 : betaQuantile(1 - tail, count + 1, n - count),
  ];
}
