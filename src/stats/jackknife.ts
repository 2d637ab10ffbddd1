import { figureOf, rowsWithout, type Statistic } from "./bootstrap-statistic.ts";
import { mean } from "./mean.ts";
import { originScale } from "./origin-scale.ts";
import { sumOf } from "./sum.ts";

/**
 * Acceleration of a figure, from the figures with one row left out: how its spread changes with its size.
 *
 * @param n         rows, 1 or more
 * @param statistic as for the bootstrap
 * @returns sum d^3 / (6 (sum d^2)^1.5), d the mean of those figures minus each, no unit; null for one row, where a figure with one row
 *   left out does not exist, or where they do not differ beyond rounding
 * @throws {RangeError} the statistic gives no finite number
 * @see Efron (1987), J Am Stat Assoc 82:171-185, eq. 6.6 in its jackknife form (Efron & Tibshirani 1993, eq. 14.15, from memory)
 * @example acceleration(3, (rows) => mean(Array.from(rows, (i) => [0, 0, 3][i]!))) // => 0.0680..., 1 / (6 sqrt 6)
 */
export function acceleration(n: number, statistic: Statistic): number | null {
  if (n < 2) return null;
  const figures: number[] = [];
  for (let left = 0; left < n; left += 1) {
    const figure = figureOf(statistic, rowsWithout(n, left));
    if (figure === null) return null;
    figures.push(figure);
  }
  const { origin, scale, rounding } = originScale(figures);
  const scaled = figures.map((figure) => (figure - origin) / scale);
  if (scaled.every((figure) => Math.abs(figure) <= rounding)) return null;
  const centre = mean(scaled)!;
  const squares = sumOf(n, (i) => (centre - scaled[i]!) ** 2);
  return sumOf(n, (i) => (centre - scaled[i]!) ** 3) / (6 * squares ** 1.5);
}
