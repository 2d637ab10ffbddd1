/**
 * The distribution of Kendall's S when the order of the values says nothing, for untied values.
 */

/** Up to this many values the exact distribution is worked out (it costs about n to the fourth power). */
export const EXACT_UP_TO = 100;

/** Distributions worked out before: a season asks for the same few lengths hundreds of times. Nobody writes into them. */
const worked = new Map<number, Float64Array>();

/**
 * Chance of at most t discordant pairs among all n(n-1)/2 when every order of n untied values is equally likely.
 *
 * @param n number of values, 1 to EXACT_UP_TO
 * @returns index t = 0..n(n-1)/2 gives P(T <= t); the last is 1
 * @throws {RangeError} n is not a whole number in that range
 * @see Kendall (1938), Biometrika 30:81-93 (the recurrence: the n-th value adds 0 to n-1 discordant pairs, each 1/n)
 * @example discordantCdf(3) // => [1/6, 3/6, 5/6, 1]
 */
export function discordantCdf(n: number): Float64Array {
  const known = worked.get(n);
  if (known) return known;
  if (!(Number.isInteger(n) && n >= 1 && n <= EXACT_UP_TO)) {
    throw new RangeError(`the exact distribution is for 1 to ${EXACT_UP_TO} values, got ${n}`);
  }
  let chance = Float64Array.of(1);
  for (let size = 2; size <= n; size += 1) chance = withOneMore(chance, size);
  const cdf = new Float64Array(chance.length);
  let sum = 0;
  for (let t = 0; t < chance.length; t += 1) {
    sum += chance[t]!;
    cdf[t] = Math.min(1, sum);
  }
  cdf[chance.length - 1] = 1;
  worked.set(n, cdf);
  return cdf;
}

/** P(T = t) for `size` values from that for one fewer; sums of positive terms only, so the tails keep their digits. */
function withOneMore(before: Float64Array, size: number): Float64Array<ArrayBuffer> {
  const pairs = (size * (size - 1)) / 2;
  const chance = new Float64Array(pairs + 1);
  for (let t = 0; t <= pairs - t; t += 1) {
    let sum = 0;
    for (let added = 0; added < size && added <= t; added += 1) sum += before[t - added] ?? 0;
    chance[t] = sum / size;
    chance[pairs - t] = sum / size;
  }
  return chance;
}

/**
 * Variance of S under no trend, ties allowed for.
 *
 * @param n      number of values, 0 or more
 * @param groups sizes of the tied groups of y, and where x may tie, those of x as a separate list: each is subtracted on
 *               its own, as SciPy's theilslopes does (Kendall's full formula has two further terms when both tie)
 * @returns (n(n-1)(2n+5) - sum t(t-1)(2t+5)) / 18; below 0 only with most of x and most of y tied
 * @see Kendall (1975), Rank Correlation Methods, 4th ed.
 */
export function varianceOfS(n: number, ...groups: readonly (readonly number[])[]): number {
  const term = (size: number) => size * (size - 1) * (2 * size + 5);
  const tied = groups.flat().reduce((sum, size) => sum + term(size), 0);
  return (term(n) - tied) / 18;
}
