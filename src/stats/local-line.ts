import type { Sample } from "./sample.ts";

/** Tricube weight of a point at a distance, 1 at none and 0 from the bandwidth on. */
export const tricube = (distance: number, bandwidth: number): number =>
  distance >= bandwidth ? 0 : (1 - (distance / bandwidth) ** 3) ** 3;

/** Distance to the q-th nearest point, from 1. */
export function nearestDistance(x: Sample, at: number, q: number): number {
  return Float64Array.from(x, (one) => Math.abs(one - at)).sort()[q - 1]!;
}

/**
 * Weighted least-squares line around a point, read there. Where the weighted points do not spread in x, their weighted mean.
 *
 * @param weights 0 or more, not all 0
 */
export function localLine(x: Sample, y: Sample, weights: Sample, at: number): number {
  const n = x.length;
  let sum = 0;
  let meanX = 0;
  let meanY = 0;
  for (let i = 0; i < n; i += 1) {
    sum += weights[i]!;
    meanX += weights[i]! * x[i]!;
    meanY += weights[i]! * y[i]!;
  }
  meanX /= sum;
  meanY /= sum;
  let squares = 0;
  let products = 0;
  for (let i = 0; i < n; i += 1) {
    squares += weights[i]! * (x[i]! - meanX) ** 2;
    products += weights[i]! * (x[i]! - meanX) * (y[i]! - meanY);
  }
  return squares === 0 ? meanY : meanY + (products / squares) * (at - meanX);
}
