import { tCdf } from "./distributions.ts";
import type { OlsLine } from "./ols.ts";
import { olsAt } from "./ols-at.ts";

/** Chances that a line reaches a target at one point, if its trend holds. */
export interface TargetProbability {
  readonly fit: number;
  readonly df: number;
  readonly seMean: number;
  readonly sePrediction: number;
  /** That the mean there is at the target or past it. */
  readonly probMeanReaches: number;
  /** That one new value there is. */
  readonly probNewValueReaches: number;
}

/**
 * Chance of being at a target or past it at `at`, by the t distribution of the line's own error (flat prior). A statement about one point, not
 * about ever touching the target.
 *
 * @param line   a least-squares line
 * @param at     in the unit of x, also beyond the data
 * @param target in the unit of y
 * @param better whether past the target is above or below it
 * @returns null where the line's error is not known (two points) or 0 (all points on the line): nothing is left to chance
 * @throws {RangeError} `at` or `target` is NaN, infinite or above 1e150 in size
 * @see checked against R's predict.lm and pt (tests/reference/stats/target-probability.json)
 */
export function targetProbability(
  line: OlsLine,
  at: number,
  target: number,
  better: "higher" | "lower",
): TargetProbability | null {
  if (!(Math.abs(target) <= 1e150)) throw new RangeError(`a target must be a finite number, got ${target}`);
  const { fit, seFit, sePrediction } = olsAt(line, at);
  // Both errors are unknown, or 0, together.
  if (!seFit || !sePrediction) return null;
  const above = better === "higher" ? fit - target : target - fit;
  return {
    fit,
    df: line.df,
    seMean: seFit,
    sePrediction,
    probMeanReaches: tCdf(above / seFit, line.df),
    probNewValueReaches: tCdf(above / sePrediction, line.df),
  };
}
