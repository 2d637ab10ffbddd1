/**
 * Null distributions of the two rank statistics behind Hodges-Lehmann intervals, as running sums of probabilities. Counted
 * by adding one value at a time, in probabilities rather than counts, so that nothing overflows.
 */

const cumulated = (chances: Float64Array): Float64Array => {
  let sum = 0;
  return chances.map((chance) => {
    sum += chance;
    return sum;
  });
};

/**
 * P(T <= t) of Wilcoxon's signed-rank sum for t = 0 .. n (n + 1) / 2.
 *
 * @param n values, 1 or more; time and room grow with n cubed
 */
export function signedRankCdf(n: number): Float64Array {
  const top = (n * (n + 1)) / 2;
  const chances = new Float64Array(top + 1);
  chances[0] = 1;
  for (let rank = 1; rank <= n; rank += 1) {
    for (let t = top; t >= 0; t -= 1) {
      chances[t] = (chances[t]! + (t >= rank ? chances[t - rank]! : 0)) / 2;
    }
  }
  return cumulated(chances);
}

/**
 * P(U <= u) of the Mann-Whitney count for u = 0 .. n m.
 *
 * @param n values of one sample, 1 or more
 * @param m values of the other
 */
export function rankSumCdf(n: number, m: number): Float64Array {
  // Of i values in all, the largest is of the first sample with chance a / i and then beats all of the second: recursion over both sizes.
  let row = Array.from({ length: m + 1 }, () => Float64Array.of(1));
  for (let a = 1; a <= n; a += 1) {
    const next = [Float64Array.of(1)];
    for (let b = 1; b <= m; b += 1) {
      const chances = new Float64Array(a * b + 1);
      const largestIsFirst = a / (a + b);
      const without = row[b]!;
      const before = next[b - 1]!;
      for (let u = 0; u < chances.length; u += 1) {
        chances[u] = largestIsFirst * (without[u - b] ?? 0) + (1 - largestIsFirst) * (before[u] ?? 0);
      }
      next.push(chances);
    }
    row = next;
  }
  return cumulated(row[m]!);
}
