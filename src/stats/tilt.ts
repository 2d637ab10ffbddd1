/** Points as one list of x and one of y. */
export interface Points {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** A straight line that goes through one of the points exactly. */
export interface Line {
  readonly slope: number;
  /** Index of the point. */
  readonly through: number;
}

/** Sums of distances that cancel leave this share of the distances as rounding. */
export const ROUNDING_SHARE = 1e-12;

/**
 * The best of all lines through one point: the one with the smallest sum of tau times the distances of points above the line and
 * 1 - tau times those of points below. Turning the line, each other point is crossed at one slope, and the sum is straight between
 * these slopes and bends at each by the point's distance in x: the best slope is a weighted quantile of them.
 *
 * @param points  at least one with another x than that of `through`
 * @param through index of the point to turn about
 * @param tau     above 0 and below 1
 * @returns the smallest of the best slopes; always that of a line through a second point
 * @see Bloomfield and Steiger (1983), Least Absolute Deviations (for tau = 1/2)
 */
export function bestTilt({ x, y }: Points, through: number, tau: number): Line {
  const [atX, atY] = [x[through]!, y[through]!];
  const crossings: { slope: number; distance: number }[] = [];
  // How fast the sum falls when the line turns up from straight down: the bends have to take that up.
  let falling = 0;
  for (let i = 0; i < x.length; i += 1) {
    const distance = x[i]! - atX;
    if (distance === 0) continue;
    crossings.push({ slope: (y[i]! - atY) / distance, distance: Math.abs(distance) });
    falling += distance > 0 ? tau * distance : (tau - 1) * distance;
  }
  crossings.sort((a, b) => a.slope - b.slope);
  const rounding = ROUNDING_SHARE * falling;
  const best = crossings.find(({ distance }) => {
    falling -= distance;
    return falling <= rounding;
  });
  return { slope: best!.slope, through };
}
