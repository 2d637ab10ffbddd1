import { sumOf } from "./sum.ts";

/** A variance and the degrees of freedom it was estimated with. */
export interface VarianceTerm {
  readonly variance: number;
  readonly df: number;
}

/**
 * Sum of independent variance estimates, with the degrees of freedom that Satterthwaite gives it: (sum v)^2 / sum(v^2 / df). They
 * lie between the smallest of the terms' and their sum. When every variance is 0, the smallest.
 *
 * @param terms at least one, variances 0 or more, degrees of freedom above 0
 * @see Satterthwaite (1946), Biometrics Bull 2:110-114
 */
export function satterthwaite(terms: readonly VarianceTerm[]): VarianceTerm {
  const variance = sumOf(terms.length, (i) => terms[i]!.variance);
  const smallest = terms.reduce((least, term) => Math.min(least, term.df), Number.POSITIVE_INFINITY);
  if (variance === 0) return { variance, df: smallest };
  // Shares of the variance, so that no square leaves the range of a double.
  const share = sumOf(terms.length, (i) => (terms[i]!.variance / variance) ** 2 / terms[i]!.df);
  return { variance, df: 1 / share };
}
