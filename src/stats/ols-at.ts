import { type Interval, tInterval } from "./interval.ts";
import type { OlsLine } from "./ols.ts";
import { checkSample, requireFinite } from "./sample.ts";

/** The line at one x, in the unit of y. Both intervals are null when the line has no degrees of freedom (2 points). */
export interface OlsPoint {
  readonly x: number;
  readonly fit: number;
  /** Standard errors of the mean line and of one new value there; null without degrees of freedom. */
  readonly seFit: number | null;
  readonly sePrediction: number | null;
  /** Where the mean line lies. */
  readonly confidence: Interval | null;
  /** Where one new value would lie. Never narrower than `confidence`. */
  readonly prediction: Interval | null;
}

/**
 * A least-squares line at a given x, inside or outside the range it was fitted on.
 *
 * @param line  from `ols`
 * @param x     in the unit of the fitted x
 * @param level coverage of both t intervals, above 0 and below 1
 * @throws {RangeError} x is NaN, infinite or above 1e150 in size, the level is outside 0..1, or a result is too large for a
 *   double
 * @see checked against R's predict.lm (tests/reference/stats/ols.json)
 */
export function olsAt(line: OlsLine, x: number, level: number = line.level): OlsPoint {
  checkSample([x], "x");
  const fromMean = x - line.meanX;
  const fit = requireFinite(line.meanY + line.slope * fromMean, "the fit");
  const leverage = 1 / line.n + fromMean ** 2 / line.sumSquaresX;
  const residualSd = line.residualSd;
  const seLine = residualSd === null ? null : residualSd * Math.sqrt(leverage);
  const seNew = residualSd === null ? null : residualSd * Math.sqrt(1 + leverage);
  return {
    x,
    fit,
    seFit: seLine,
    sePrediction: seNew,
    confidence: tInterval(fit, seLine, line.df, level),
    prediction: tInterval(fit, seNew, line.df, level),
  };
}
