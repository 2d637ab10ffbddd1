/** p values made honest for their number; each list keeps the order of the input. */

/** @throws {RangeError} a value is not a probability */
function checkChances(p: readonly number[]): void {
  for (const one of p) {
    if (!(one >= 0 && one <= 1)) throw new RangeError(`a p value lies between 0 and 1, got ${one}`);
  }
}

/** Places of the values from the smallest up. */
const rising = (p: readonly number[]): number[] => p.map((_, i) => i).sort((a, b) => p[a]! - p[b]!);

/**
 * Holm's adjusted p values: running maximum of (m - i + 1) p(i) from the smallest up. For a few tests each of which matters: the
 * chance of even one false alarm stays at the level.
 *
 * @param p values 0 to 1, in any order; none gives none
 * @throws {RangeError} a value is NaN or outside 0 to 1
 * @see Holm (1979), Scand J Stat 6:65-70
 * @example holm([0.01, 0.04, 0.03]) // => [0.03, 0.06, 0.06]
 */
export function holm(p: readonly number[]): number[] {
  checkChances(p);
  const adjusted = p.slice();
  let most = 0;
  rising(p).forEach((place, rank) => {
    most = Math.max(most, Math.min(1, (p.length - rank) * p[place]!));
    adjusted[place] = most;
  });
  return adjusted;
}

/**
 * Benjamini and Hochberg's adjusted p values: running minimum of m p(i) / i from the largest down. For screening many: of what is
 * called, the expected share of false alarms stays at the level.
 *
 * @param p values 0 to 1, in any order; none gives none
 * @throws {RangeError} a value is NaN or outside 0 to 1
 * @see Benjamini & Hochberg (1995), J R Stat Soc B 57:289-300
 * @example benjaminiHochberg([0.01, 0.04, 0.03]) // => [0.03, 0.04, 0.04]
 */
export function benjaminiHochberg(p: readonly number[]): number[] {
  checkChances(p);
  const adjusted = p.slice();
  let least = 1;
  const order = rising(p);
  for (let rank = order.length; rank >= 1; rank -= 1) {
    const place = order[rank - 1]!;
    least = Math.min(least, (p.length * p[place]!) / rank);
    adjusted[place] = least;
  }
  return adjusted;
}

/**
 * Bonferroni's adjusted p values: m p, at most 1.
 *
 * @param p values 0 to 1, in any order
 * @throws {RangeError} a value is NaN or outside 0 to 1
 */
export function bonferroni(p: readonly number[]): number[] {
  checkChances(p);
  return p.map((one) => Math.min(1, p.length * one));
}
