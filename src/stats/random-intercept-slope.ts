import type { Interval } from "./interval.ts";
import { limits, residualSd, slopeOf } from "./random-intercept-effect.ts";
import { fitRandomIntercept, type NoModel } from "./random-intercept-fit.ts";
import { kenwardRoger } from "./random-intercept-kenward-roger.ts";
import { momentsAt } from "./random-intercept-moments.ts";
import { checkSample, requireFinite, type Sample } from "./sample.ts";

/** Change per unit of time from sessions of reps, by Kenward and Roger. */
export interface RandomInterceptSlope {
  readonly kind: "line";
  /** Sessions with at least one rep. */
  readonly sessions: number;
  readonly reps: number;
  /** Unit of the values per unit of time. */
  readonly slope: number;
  readonly se: number;
  /**
   * Kenward and Roger's, but at most sessions - 2: with unequal numbers of reps theirs can lie a little above what a line through
   * the sessions themselves has.
   */
  readonly df: number;
  readonly ci95: Interval;
  /** SD of the sessions' own parts about the line; 0 when the sessions differ no more than their reps let expect. */
  readonly sessionSd: number;
  readonly repSd: number;
}

/**
 * The random-intercept slope where all reps of a session share one time: what `randomIntercept` gives by Kenward and Roger with
 * the time as x and the session as group, its degrees of freedom capped, and nothing else: fit for many calls.
 *
 * @param times one per session, in one unit, in any order
 * @param reps  the values of each session in one unit; a session without any is left out
 * @returns the slope, or why there is none: with one rep in each session or none that differ within one, the line through the
 *   sessions' values (`sessionLine`) says all there is
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size; times so close together that the slope
 *   is too large for a double
 * @example randomInterceptSlope([0, 1, 2], [[60, 62], [63, 61], [64, 66]]) // slope 2 and 1 df
 */
export function randomInterceptSlope(times: Sample, reps: readonly Sample[]): RandomInterceptSlope | NoModel {
  const { y, x, groupOf, groups } = flattened(times, reps);
  const fit = fitRandomIntercept(y, x, groupOf, groups);
  if (fit.kind === "no-model") return fit;
  const { sums, profile } = fit;
  const { combination, estimate, unit } = slopeOf(sums, profile);
  const adjusted = kenwardRoger(momentsAt(sums, profile), combination);
  if (adjusted === null) return { kind: "no-model", reason: "too-few" };
  const rest = residualSd(sums, profile);
  const df = Math.min(adjusted.df, groups - 2);
  const se = requireFinite(rest * unit * Math.sqrt(adjusted.variance), "the standard error of the slope");
  const ci95 = limits(estimate, se, df, 0.95);
  if (ci95 === null) return { kind: "no-model", reason: "too-few" };
  return {
    kind: "line",
    sessions: groups,
    reps: sums.rows,
    slope: estimate,
    se,
    df,
    ci95,
    sessionSd: sums.ofY.scale * rest * Math.sqrt(profile.ratio),
    repSd: sums.ofY.scale * rest,
  };
}

function flattened(times: Sample, reps: readonly Sample[]) {
  if (times.length !== reps.length)
    throw new RangeError(`${times.length} times for ${reps.length} sessions: need pairs`);
  checkSample(times, "times");
  const rows = reps.reduce((sum, values) => sum + values.length, 0);
  const y = new Float64Array(rows);
  const x = new Float64Array(rows);
  const groupOf = new Int32Array(rows);
  let groups = 0;
  let row = 0;
  for (let session = 0; session < reps.length; session += 1) {
    const values = reps[session]!;
    checkSample(values, `reps[${session}]`);
    for (let i = 0; i < values.length; i += 1, row += 1) {
      y[row] = values[i]!;
      x[row] = times[session]!;
      groupOf[row] = groups;
    }
    if (values.length > 0) groups += 1;
  }
  return { y, x, groupOf, groups };
}
