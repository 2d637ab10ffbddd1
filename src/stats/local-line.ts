import { requireFinite, type Sample } from "./sample.ts";

/** A line through weighted points, read at one place. */
export interface LocalLine {
  /** Weighted mean of y. */
  readonly mean: number;
  /** Weighted SD of x, in the unit of the offsets; 0 where all points with a weight stand at one x. */
  readonly spread: number;
  /** Offset of these points' weighted mean. */
  readonly centre: number;
  /** The least-squares line at offset 0; null where the spread is 0. */
  readonly value: number | null;
}

/** Tricube weight at a distance from 0 up to the bandwidth, both in one unit. */
export function tricube(distance: number, bandwidth: number): number {
  return (1 - (distance / bandwidth) ** 3) ** 3;
}

/**
 * @param offsets x of each point as its way from the place of reading, in any unit; finite where there is a weight
 * @param y       as many values
 * @param weights as many, 0 or more; points without weight are not looked at
 * @returns null where no point has a weight
 * @throws {RangeError} the line there is too large for a double
 */
export function localLine(offsets: Sample, y: Sample, weights: Sample): LocalLine | null {
  const heaviest = indexOfLargest(weights);
  if (heaviest < 0) return null;
  // Seen from the heaviest point and in units of the farthest one: equal values give exactly that value, no square leaves the range of a
  // double, and a point that hardly counts is not lost beside one that does.
  const originX = offsets[heaviest]!;
  const originY = y[heaviest]!;
  let [sum, sumX, sumY, reach] = [0, 0, 0, 0];
  for (let i = 0; i < weights.length; i += 1) {
    const weight = weights[i]!;
    if (weight === 0) continue;
    sum += weight;
    sumX += weight * (offsets[i]! - originX);
    sumY += weight * (y[i]! - originY);
    reach = Math.max(reach, Math.abs(offsets[i]! - originX));
  }
  const mean = originY + sumY / sum;
  if (reach === 0) return { mean, spread: 0, centre: originX, value: null };
  const middle = sumX / sum / reach;
  let [squares, products] = [0, 0];
  for (let i = 0; i < weights.length; i += 1) {
    const weight = weights[i]!;
    if (weight === 0) continue;
    const step = (offsets[i]! - originX) / reach - middle;
    squares += weight * step * step;
    products += weight * step * (y[i]! - originY);
  }
  const value = originY + (sumY / sum - (products / squares) * (originX / reach + middle));
  return {
    mean,
    spread: Math.sqrt(squares / sum) * reach,
    centre: originX + middle * reach,
    value: requireFinite(value, "a local line"),
  };
}

/** First place of the largest weight; -1 where none is above 0. */
function indexOfLargest(weights: Sample): number {
  let [largest, at] = [0, -1];
  for (let i = 0; i < weights.length; i += 1) {
    if (weights[i]! > largest) [largest, at] = [weights[i]!, i];
  }
  return at;
}
