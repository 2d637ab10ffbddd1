import { betaQuantile, normalQuantile } from "./distributions.ts";
import { checkLevel, type Interval } from "./interval.ts";

/** @throws {RangeError} not 0 <= count <= n with a whole n of 1 or more; the count may be a half of ties */
function checkCount(count: number, n: number): void {
  if (!(Number.isInteger(n) && n >= 1)) throw new RangeError(`a share needs a whole number of tries above 0, got ${n}`);
  if (!(count >= 0 && count <= n)) throw new RangeError(`a share needs a count from 0 to ${n}, got ${count}`);
}

/**
 * Wilson's score interval of a share, without continuity correction.
 *
 * @param count successes, 0 to n; halves (ties counted half) are allowed
 * @param n     tries, 1 or more
 * @param level coverage, above 0 and below 1
 * @returns limits from 0 to 1
 * @throws {RangeError} any of them outside these
 * @see Wilson (1927), J Am Stat Assoc 22:209-212; Newcombe (1998), Stat Med 17:857-872
 * @example wilson(0, 20, 0.95) // => [0, 0.1611...]
 */
export function wilson(count: number, n: number, level: number): Interval {
  checkLevel(level);
  checkCount(count, n);
  const z = normalQuantile((1 + level) / 2);
  const middle = count + (z * z) / 2;
  const half = z * Math.sqrt((count * (n - count)) / n + (z * z) / 4);
  const scale = n + z * z;
  // At no success and at nothing else the limit is exact; the formula would leave a crumb.
  return [count === 0 ? 0 : (middle - half) / scale, count === n ? 1 : (middle + half) / scale];
}

/**
 * Jeffreys interval of a share: equal tails of Beta(count + 1/2, n - count + 1/2).
 *
 * @param count successes, 0 to n; halves are allowed
 * @param n     tries, 1 or more
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
 * @param n     tries, 1 or more
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
