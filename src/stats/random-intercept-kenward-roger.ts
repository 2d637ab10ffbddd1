import {
  type Combination,
  dot,
  type Moments,
  scaledBy,
  times,
  trace,
  traceOfProduct,
} from "./random-intercept-moments.ts";

/** For residual variance 1; the df hold for any. */
export interface KenwardRoger {
  /** The adjusted variance of the coefficient. */
  readonly variance: number;
  readonly df: number;
}

/**
 * Kenward and Roger's variance and degrees of freedom of one coefficient, from the expected information of the two variances. For
 * one coefficient their F is t squared and its scale 1, so df = 2 v^2 / (g' C g): v the plain variance of the coefficient, g its
 * derivatives by the two variances, C the inverse information.
 *
 * @param moments     at the estimates, also on the boundary (ratio 0)
 * @param combination the coefficient; not all 0
 * @returns null when the rows hold no information that tells the two variances apart
 * @see Kenward and Roger (1997), Biometrics 53:983-997
 */
export function kenwardRoger(moments: Moments, combination: Combination): KenwardRoger | null {
  const covariance = covarianceOfVariances(moments);
  if (covariance === null) return null;
  const { variances, byGroup, byResidual, byGroupTwice, byBoth, byResidualTwice } = moments;
  const direction = scaledBy(variances, combination);
  const groupPart = times(byGroup, direction);
  const residualPart = times(byResidual, direction);
  const lost = (twice: Moments["byBoth"], a: Combination, b: Combination) =>
    dot(direction, times(twice, direction)) - dot(a, scaledBy(variances, b));
  const added =
    covariance.group * lost(byGroupTwice, groupPart, groupPart) +
    2 * covariance.both * lost(byBoth, groupPart, residualPart) +
    covariance.residual * lost(byResidualTwice, residualPart, residualPart);
  const plain = dot(combination, direction);
  const derivatives = { group: dot(direction, groupPart), residual: dot(direction, residualPart) };
  const spread =
    covariance.group * derivatives.group ** 2 +
    2 * covariance.both * derivatives.group * derivatives.residual +
    covariance.residual * derivatives.residual ** 2;
  return { variance: plain + 2 * added, df: (2 * plain ** 2) / spread };
}

/** Covariance matrix of the estimates of the two variances, for residual variance 1. */
export interface CovarianceOfVariances {
  readonly group: number;
  readonly both: number;
  readonly residual: number;
}

/**
 * Inverse of the expected information.
 *
 * @returns null when the two variances cannot be told apart: what the coefficients leave of the rows shows them in one proportion
 */
export function covarianceOfVariances(moments: Moments): CovarianceOfVariances | null {
  const { variances, byGroup, byResidual, byGroupTwice, byBoth, byResidualTwice } = moments;
  // Twice the information: traces of P A P B, with P = V^-1 less what the coefficients take up.
  const group =
    moments.traceGroupTwice - 2 * trace(variances, byGroupTwice) + traceOfProduct(variances, byGroup, byGroup);
  const both = moments.traceBoth - 2 * trace(variances, byBoth) + traceOfProduct(variances, byGroup, byResidual);
  const residual =
    moments.traceResidualTwice -
    2 * trace(variances, byResidualTwice) +
    traceOfProduct(variances, byResidual, byResidual);
  const determinant = group * residual - both * both;
  if (!(determinant > 1e-12 * group * residual)) return null;
  return {
    group: (2 * residual) / determinant,
    both: (-2 * both) / determinant,
    residual: (2 * group) / determinant,
  };
}
