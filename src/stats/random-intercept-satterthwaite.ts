import type { GroupSums } from "./group-sums.ts";
import {
  type Combination,
  dot,
  type Moments,
  scaledBy,
  times,
  trace,
  traceOfProduct,
} from "./random-intercept-moments.ts";
import { coefficientCount, type Profile } from "./random-intercept-profile.ts";

/** Second derivatives of the REML criterion by the ratio and the logarithm of the residual variance. */
interface Curvature {
  readonly ratio: number;
  readonly cross: number;
  readonly residual: number;
}

/**
 * Satterthwaite's degrees of freedom of one coefficient, from the observed information: 2 v^2 / (g' A g) with v the variance of the
 * coefficient, g its derivatives by the variance parameters and A the inverse information. They do not depend on how the
 * parameters are written; here they are the ratio of the variances and the logarithm of the residual variance.
 *
 * On the boundary (ratio 0) the group variance is taken as known: rows - coefficients, as if every row were independent.
 *
 * @param combination the coefficient; not all 0
 * @returns null when the criterion is flat in a direction
 * @see Satterthwaite (1946), Biometrics Bull 2:110-114; convention of lmerTest
 */
export function satterthwaiteDf(
  sums: GroupSums,
  profile: Profile,
  moments: Moments,
  combination: Combination,
): number | null {
  if (profile.ratio === 0) return sums.rows - coefficientCount(sums);
  const curvature = curvatureAt(sums, profile, moments);
  const determinant = curvature.ratio * curvature.residual - curvature.cross ** 2;
  if (!(determinant > 1e-12 * curvature.ratio * curvature.residual)) return null;
  const direction = scaledBy(moments.variances, combination);
  const variance = dot(combination, direction);
  const byRatio = dot(direction, times(moments.byGroup, direction));
  const spread =
    curvature.residual * byRatio ** 2 - 2 * curvature.cross * byRatio * variance + curvature.ratio * variance ** 2;
  return (variance ** 2 * determinant) / spread;
}

function curvatureAt(sums: GroupSums, profile: Profile, moments: Moments): Curvature {
  const { ratio, centreX, centreY, slope } = profile;
  const df = sums.rows - coefficientCount(sums);
  const residualVariance = profile.squaresLeft / df;
  let falling = 0;
  let bending = 0;
  const pull = { intercept: 0, slope: 0 };
  for (let g = 0; g < sums.groups; g += 1) {
    const w = sums.sizes[g]! / (1 + sums.sizes[g]! * ratio);
    const fromX = sums.meansX[g]! - centreX;
    const left = sums.meansY[g]! - centreY - slope * fromX;
    falling += (w * left) ** 2;
    bending += w * (w * left) ** 2;
    pull.intercept += w * w * left;
    pull.slope += w * w * left * fromX;
  }
  const { variances, byGroup, byGroupTwice, traceGroupTwice } = moments;
  const ofDeterminants =
    2 * trace(variances, byGroupTwice) - traceOfProduct(variances, byGroup, byGroup) - traceGroupTwice;
  const ofSquares = 2 * bending - 2 * dot(pull, scaledBy(variances, pull));
  return { ratio: ofDeterminants + ofSquares / residualVariance, cross: falling / residualVariance, residual: df };
}
