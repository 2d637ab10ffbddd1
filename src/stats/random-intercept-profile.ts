import type { GroupSums } from "./group-sums.ts";

/**
 * The model at one ratio of the variances (group / residual), everything else at its best for that ratio. Scaled as `GroupSums`.
 * With V = I + ratio J in a group of n rows (J all ones), its inverse is I - ratio / (1 + n ratio) J, so a group counts through its
 * means with the weight n / (1 + n ratio).
 */
export interface Profile {
  readonly ratio: number;
  /** Sum of the groups' weights: the information about the intercept at `centreX`. */
  readonly weight: number;
  /** Weighted means of the groups' means. The intercept at centreX is centreY, uncorrelated with the slope. */
  readonly centreX: number;
  readonly centreY: number;
  readonly slope: number;
  /** Weighted squares of x about centreX, the information about the slope; 0 without x. */
  readonly squaresX: number;
  /** Weighted squares left: (rows - coefficients) times the residual variance. */
  readonly squaresLeft: number;
  /** Derivative of the REML criterion by the ratio. */
  readonly score: number;
}

/** Intercept, and slope where there is an x. */
export function coefficientCount(sums: GroupSums): number {
  return sums.hasX ? 2 : 1;
}

/**
 * @param sums  with at least one group; when it has an x, one that differs between rows
 * @param ratio 0 or more
 * @returns the profile; `score` is only meaningful when squaresLeft is above 0
 */
export function profileAt(sums: GroupSums, ratio: number): Profile {
  const { groups, sizes, meansX, meansY, withinX, withinSlope, withinSquares } = sums;
  let weight = 0;
  let sumX = 0;
  let sumY = 0;
  for (let g = 0; g < groups; g += 1) {
    const w = sizes[g]! / (1 + sizes[g]! * ratio);
    weight += w;
    sumX += w * meansX[g]!;
    sumY += w * meansY[g]!;
  }
  const centreX = sumX / weight;
  const centreY = sumY / weight;

  let squaresX = withinX;
  let products = withinX * withinSlope;
  for (let g = 0; g < groups; g += 1) {
    const w = sizes[g]! / (1 + sizes[g]! * ratio);
    const fromX = meansX[g]! - centreX;
    squaresX += w * fromX * fromX;
    products += w * fromX * (meansY[g]! - centreY);
  }
  const slope = sums.hasX ? products / squaresX : 0;

  let squaresLeft = withinSquares + withinX * (slope - withinSlope) ** 2;
  let falling = 0;
  let weightSquares = 0;
  let weightSquaresX = 0;
  for (let g = 0; g < groups; g += 1) {
    const w = sizes[g]! / (1 + sizes[g]! * ratio);
    const fromX = meansX[g]! - centreX;
    const left = meansY[g]! - centreY - slope * fromX;
    squaresLeft += w * left * left;
    falling += w * w * left * left;
    weightSquares += w * w;
    weightSquaresX += w * w * fromX * fromX;
  }
  const ofDeterminants = weight - weightSquares / weight - (sums.hasX ? weightSquaresX / squaresX : 0);
  const score = ofDeterminants - ((sums.rows - coefficientCount(sums)) * falling) / squaresLeft;
  return { ratio, weight, centreX, centreY, slope, squaresX, squaresLeft, score };
}

/**
 * REML criterion at a profile: -2 restricted log-likelihood with every constant, in the units of the rows. log det(X'X) is not
 * taken away, as in lme4's REMLcrit.
 */
export function remlCriterion(sums: GroupSums, profile: Profile): number {
  const { weight, squaresX, squaresLeft, ratio } = profile;
  const df = sums.rows - coefficientCount(sums);
  let logs = Math.log(weight);
  for (let g = 0; g < sums.groups; g += 1) logs += Math.log1p(sums.sizes[g]! * ratio);
  if (sums.hasX) logs += Math.log(squaresX) + 2 * Math.log(sums.ofX.scale);
  return df * (Math.log((2 * Math.PI * squaresLeft) / df) + 2 * Math.log(sums.ofY.scale) + 1) + logs;
}
