/**
 * Sum of `n` terms that keeps what plain addition loses (the low-order part of each step is carried along).
 *
 * @param n    number of terms, 0 or more
 * @param term gives the term at index 0..n-1; finite
 * @returns the sum in the unit of the terms; 0 for n = 0
 * @see Neumaier (1974), Z. angew. Math. Mech. 54:39-51 (improved Kahan-Babuska sum)
 */
export function sumOf(n: number, term: (index: number) => number): number {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < n; i += 1) {
    const next = term(i);
    const total = sum + next;
    lost += Math.abs(sum) >= Math.abs(next) ? sum - total + next : next - total + sum;
    sum = total;
  }
  return sum + lost;
}
