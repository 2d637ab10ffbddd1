import type { GroupSums } from "./group-sums.ts";
import type { Profile } from "./random-intercept-profile.ts";

/** A symmetric matrix of the two coefficients: intercept at the centre, and slope. */
export interface Symmetric {
  readonly intercept: number;
  readonly cross: number;
  readonly slope: number;
}

/** A coefficient as a sum of the intercept at the centre and the slope. */
export interface Combination {
  readonly intercept: number;
  readonly slope: number;
}

/**
 * Sums over groups at a profile that both ways to degrees of freedom are made of, residual variance taken as 1. With J = 1 in a
 * group's block, V the rows' covariance, w = n / (1 + n ratio) and f = 1 / (1 + n ratio) of a group, z = (1, x mean - centre):
 *
 *     X'V^-1 J V^-1 X = sum w^2 zz'          X'V^-2 X = sum w f zz'   (plus x within groups, as in the next)
 *     X'V^-1 J V^-1 J V^-1 X = sum w^3 zz'   X'V^-1 J V^-2 X = sum w^2 f zz'   X'V^-3 X = sum w f^2 zz'
 */
export interface Moments {
  /** Inverse of X'V^-1 X, diagonal at the centre: the variances of the two coefficients. Slope 0 without x. */
  readonly variances: Combination;
  readonly byGroup: Symmetric;
  readonly byResidual: Symmetric;
  readonly byGroupTwice: Symmetric;
  readonly byBoth: Symmetric;
  readonly byResidualTwice: Symmetric;
  /** Traces of V^-1 A V^-1 B for A and B one of J and the identity. */
  readonly traceGroupTwice: number;
  readonly traceBoth: number;
  readonly traceResidualTwice: number;
}

/** @param profile of these sums */
export function momentsAt(sums: GroupSums, profile: Profile): Moments {
  const { ratio, weight, squaresX, centreX } = profile;
  const { groups, sizes, meansX, withinX, rows } = sums;
  const total = new Float64Array(15);
  let residualTwice = 0;
  for (let g = 0; g < groups; g += 1) {
    const free = 1 / (1 + sizes[g]! * ratio);
    const w = sizes[g]! * free;
    const x = meansX[g]! - centreX;
    add(total, 0, w * w, x);
    add(total, 3, w * free, x);
    add(total, 6, w * w * w, x);
    add(total, 9, w * w * free, x);
    add(total, 12, w * free * free, x);
    residualTwice += free * free;
  }
  return {
    variances: { intercept: 1 / weight, slope: sums.hasX ? 1 / squaresX : 0 },
    byGroup: symmetric(total, 0, 0),
    byResidual: symmetric(total, 3, withinX),
    byGroupTwice: symmetric(total, 6, 0),
    byBoth: symmetric(total, 9, 0),
    byResidualTwice: symmetric(total, 12, withinX),
    traceGroupTwice: total[0]!,
    traceBoth: total[3]!,
    traceResidualTwice: rows - groups + residualTwice,
  };
}

function add(total: Float64Array, at: number, weight: number, x: number): void {
  total[at]! += weight;
  total[at + 1]! += weight * x;
  total[at + 2]! += weight * x * x;
}

function symmetric(total: Float64Array, at: number, within: number): Symmetric {
  return { intercept: total[at]!, cross: total[at + 1]!, slope: total[at + 2]! + within };
}

/** Matrix times vector. */
export function times(matrix: Symmetric, vector: Combination): Combination {
  return {
    intercept: matrix.intercept * vector.intercept + matrix.cross * vector.slope,
    slope: matrix.cross * vector.intercept + matrix.slope * vector.slope,
  };
}

/** Sum of the products of the entries. */
export function dot(a: Combination, b: Combination): number {
  return a.intercept * b.intercept + a.slope * b.slope;
}

/** Entry by entry; a diagonal matrix times a vector. */
export function scaledBy(diagonal: Combination, vector: Combination): Combination {
  return { intercept: diagonal.intercept * vector.intercept, slope: diagonal.slope * vector.slope };
}

/** Trace of D A for a diagonal D. */
export function trace(diagonal: Combination, a: Symmetric): number {
  return diagonal.intercept * a.intercept + diagonal.slope * a.slope;
}

/** Trace of D A D B for a diagonal D. */
export function traceOfProduct(diagonal: Combination, a: Symmetric, b: Symmetric): number {
  const { intercept, slope } = diagonal;
  return (
    intercept * intercept * a.intercept * b.intercept +
    2 * intercept * slope * a.cross * b.cross +
    slope * slope * a.slope * b.slope
  );
}
