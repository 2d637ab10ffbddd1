import { tQuantile, tTwoSidedP } from "./distributions.ts";
import type { GroupSums } from "./group-sums.ts";
import { type Interval, tInterval } from "./interval.ts";
import { kenwardRoger } from "./random-intercept-kenward-roger.ts";
import { type Combination, dot, type Moments, scaledBy } from "./random-intercept-moments.ts";
import { coefficientCount, type Profile } from "./random-intercept-profile.ts";
import { satterthwaiteDf } from "./random-intercept-satterthwaite.ts";
import { requireFinite } from "./sample.ts";

/** A coefficient's error by one method. */
export interface EffectInference {
  readonly se: number;
  /** Null where the rows hold no information about the error's own error; everything below is null then. */
  readonly df: number | null;
  readonly t: number | null;
  /** Two-sided p against 0. */
  readonly p: number | null;
  /** Also null where df is so near 0 that its limits are infinite. */
  readonly interval: Interval | null;
}

/** A coefficient in the units of the rows. */
export interface FixedEffect {
  readonly estimate: number;
  /** Plain standard error, as if the variances were known. */
  readonly se: number;
  readonly satterthwaite: EffectInference;
  /** With the adjusted standard error: the one to report. */
  readonly kenwardRoger: EffectInference;
}

/** A coefficient as a combination of those at the centre, with what turns scaled values into the rows' own unit. */
export interface Wanted {
  readonly combination: Combination;
  readonly estimate: number;
  readonly unit: number;
}

/** @throws {RangeError} the slope is too large for a double */
export function slopeOf(sums: GroupSums, profile: Profile): Wanted {
  const unit = sums.ofY.scale / sums.ofX.scale;
  const estimate = requireFinite(profile.slope * unit, "the slope");
  return { combination: { intercept: 0, slope: 1 }, estimate, unit };
}

/**
 * At x = 0, wherever the centre lies.
 *
 * @throws {RangeError} the intercept is too large for a double
 */
export function interceptOf({ ofX, ofY }: GroupSums, profile: Profile): Wanted {
  const toZero = -(profile.centreX + ofX.origin / ofX.scale);
  const scaled = profile.centreY + profile.slope * toZero;
  const estimate = requireFinite(ofY.origin + ofY.scale * scaled, "the intercept");
  return { combination: { intercept: 1, slope: toZero }, estimate, unit: ofY.scale };
}

/**
 * @param wanted a coefficient of this fit
 * @param level  coverage of the intervals
 * @throws {RangeError} a standard error or a limit is too large for a double
 */
export function fixedEffect(
  sums: GroupSums,
  profile: Profile,
  moments: Moments,
  { combination, estimate, unit }: Wanted,
  level: number,
): FixedEffect {
  const sd = residualSd(sums, profile) * unit;
  const plain = dot(combination, scaledBy(moments.variances, combination));
  const adjusted = kenwardRoger(moments, combination);
  const se = requireFinite(sd * Math.sqrt(plain), "a standard error");
  const adjustedSe = adjusted === null ? se : requireFinite(sd * Math.sqrt(adjusted.variance), "a standard error");
  return {
    estimate,
    se,
    satterthwaite: inference(estimate, se, satterthwaiteDf(sums, profile, moments, combination), level),
    kenwardRoger: inference(estimate, adjustedSe, adjusted?.df ?? null, level),
  };
}

/** Residual SD of the scaled rows. */
export function residualSd(sums: GroupSums, profile: Profile): number {
  return Math.sqrt(profile.squaresLeft / (sums.rows - coefficientCount(sums)));
}

function inference(estimate: number, se: number, df: number | null, level: number): EffectInference {
  if (df === null || se === 0) return { se, df, t: null, p: null, interval: null };
  const t = requireFinite(estimate / se, "a t");
  return { se, df, t, p: tTwoSidedP(t, df), interval: limits(estimate, se, df, level) };
}

/**
 * The t interval; null where the degrees of freedom are so near 0 that its limits are infinite.
 *
 * @param df above 0
 */
export function limits(estimate: number, se: number, df: number, level: number): Interval | null {
  return Number.isFinite(tQuantile((1 + level) / 2, df) * se) ? tInterval(estimate, se, df, level) : null;
}
