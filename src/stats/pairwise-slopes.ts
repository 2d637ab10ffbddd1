import { requireFinite, type Sample } from "./sample.ts";

/** All slopes between two points, and Kendall's S of the same pairs. */
export interface PairwiseSlopes {
  /** Rising order, units of y per unit of x; pairs at one x are left out. */
  readonly sorted: Float64Array;
  /** Concordant minus discordant pairs; a pair tied in x or in y counts 0. */
  readonly s: number;
}

/**
 * @param x positions, in any order, checked by the caller
 * @param y as many values
 * @returns no slopes for fewer than 2 points or all at one x
 * @throws {RangeError} a slope is too large for a double
 */
export function pairwiseSlopes(x: Sample, y: Sample): PairwiseSlopes {
  const slopes: number[] = [];
  let s = 0;
  for (let i = 0; i < x.length; i += 1) {
    for (let j = i + 1; j < x.length; j += 1) {
      const step = x[j]! - x[i]!;
      if (step === 0) continue;
      const rise = y[j]! - y[i]!;
      slopes.push(requireFinite(rise / step, "a slope between two points"));
      s += Math.sign(rise) * Math.sign(step);
    }
  }
  return { sorted: Float64Array.from(slopes).sort(), s };
}
