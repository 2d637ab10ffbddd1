/**
 * Distributions of the two rank statistics behind the Hodges-Lehmann intervals when nothing sets the sides apart, for untied values.
 * Counted by additions of whole numbers in doubles: exact up to a total of 2^53, beyond that good to about 13 digits. Both are
 * symmetric, so the lower half says all.
 */

/** Up to this many values the signed-rank distribution is counted out: under half a second, and 2^n still fits a double. */
export const SIGNED_RANK_UP_TO = 1000;

/** Up to this many additions (times 4) the rank-sum distribution is counted out: 200 against 200 values, or 2 against 28,000, under a second. */
const RANK_SUM_WORK = 1.6e9;

/**
 * Chance that Wilcoxon's signed-rank sum is at most t.
 *
 * @param n number of values, 1 to SIGNED_RANK_UP_TO; exact up to 53, time grows with n cubed
 * @returns index t = 0 to the whole part of n (n + 1) / 4 gives P(T <= t)
 * @throws {RangeError} n is not a whole number in that range
 * @see Wilcoxon (1945), Biometrics Bulletin 1:80-83: rank r counts on the positive side or does not, each with chance 1/2
 * @example signedRankCdf(3) // => [1/8, 2/8, 3/8, 5/8] for sums of 0 to 3, of 6
 */
export function signedRankCdf(n: number): Float64Array {
  if (!(Number.isInteger(n) && n >= 1 && n <= SIGNED_RANK_UP_TO)) {
    throw new RangeError(`the signed-rank distribution is counted for 1 to ${SIGNED_RANK_UP_TO} values, got ${n}`);
  }
  const ways = new Float64Array(Math.floor((n * (n + 1)) / 4) + 1);
  ways[0] = 1;
  for (let rank = 1; rank <= n; rank += 1) {
    const largest = Math.min(ways.length - 1, (rank * (rank + 1)) / 2);
    for (let t = largest; t >= rank; t -= 1) ways[t] = ways[t]! + ways[t - rank]!;
  }
  return cumulated(ways, 2 ** n);
}

/**
 * @param n number of values on one side, 1 or more
 * @param m on the other
 * @returns whether `rankSumCdf` counts them out
 */
export function rankSumIsCounted(n: number, m: number): boolean {
  const few = Math.min(n, m);
  return few * (few - 1) * Math.max(n, m) ** 2 <= RANK_SUM_WORK;
}

/**
 * Chance that at most u of the n m pairs of one value of each sample have the first sample's value on top (Mann and Whitney's U).
 *
 * @param n number of values of one sample, 1 or more
 * @param m of the other; exact while n + m is at most 56, and the same with n and m exchanged
 * @returns index u = 0 to the whole part of n m / 2 gives P(U <= u)
 * @throws {RangeError} n or m is not a whole number from 1, or `rankSumIsCounted` says no
 * @see Mann & Whitney (1947), Ann Math Stat 18:50-60 (the recurrence: the largest of all values is of one sample or of the other)
 * @example rankSumCdf(2, 2) // => [1/6, 2/6, 4/6] for 0, 1 and 2 of the 4 pairs
 */
export function rankSumCdf(n: number, m: number): Float64Array {
  if (!(Number.isInteger(n) && Number.isInteger(m) && n >= 1 && m >= 1 && rankSumIsCounted(n, m))) {
    throw new RangeError(`the rank-sum distribution is counted for 1 to about 200 values each, got ${n} and ${m}`);
  }
  const few = Math.min(n, m);
  const many = Math.max(n, m);
  const half = Math.floor((n * m) / 2);
  // ways[a] belongs to a values of the smaller sample and the b of the larger that have been added so far.
  const ways = Array.from({ length: few + 1 }, () => new Float64Array(half + 1).fill(1, 0, 1));
  for (let b = 1; b <= many; b += 1) {
    for (let a = 1; a <= few; a += 1) {
      const before = ways[a - 1]!;
      const now = ways[a]!;
      const largest = Math.min(half, a * b);
      for (let u = b; u <= largest; u += 1) now[u] = now[u]! + before[u - b]!;
    }
  }
  let orders = 1;
  for (let a = 1; a <= few; a += 1) orders = (orders * (many + a)) / a;
  return cumulated(ways[few]!, orders);
}

function cumulated(ways: Float64Array, orders: number): Float64Array {
  let sum = 0;
  return ways.map((count) => {
    sum += count;
    return sum / orders;
  });
}
