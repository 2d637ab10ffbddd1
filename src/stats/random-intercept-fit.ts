import { type GroupSums, groupSums } from "./group-sums.ts";
import { covarianceOfVariances } from "./random-intercept-kenward-roger.ts";
import { momentsAt } from "./random-intercept-moments.ts";
import { coefficientCount, type Profile, profileAt } from "./random-intercept-profile.ts";
import { bestProfile } from "./random-intercept-ratio.ts";
import type { Sample } from "./sample.ts";

/**
 * Why the two variances and the coefficients cannot be estimated.
 *
 * - `too-few`: fewer than two groups (three with an x that is constant in each), or only one row more than coefficients
 * - `same-x`: an x that is the same in every row
 * - `no-repeats`: one row in each group, so the group's own part cannot be told from the row's;
 *   or two in some, but the slope takes up their difference
 * - `no-spread`: rows of a group do not differ beyond what the slope explains, so the residual variance is estimated at 0
 */
export interface NoModel {
  readonly kind: "no-model";
  readonly reason: "too-few" | "same-x" | "no-repeats" | "no-spread";
}

/** Sums of the rows and the profile with the smallest criterion. */
export interface Fit {
  readonly kind: "fit";
  readonly sums: GroupSums;
  readonly profile: Profile;
}

/** Arguments as `groupSums`: checked, and every group with at least one row. */
export function fitRandomIntercept(
  y: Sample,
  x: Sample | null,
  groupOf: ArrayLike<number>,
  groups: number,
): Fit | NoModel {
  if (groups < 2) return { kind: "no-model", reason: "too-few" };
  const sums = groupSums(y, x, groupOf, groups);
  const reason = refusal(sums);
  if (reason !== null) return { kind: "no-model", reason };
  const profile = bestProfile(sums);
  return profile === null ? { kind: "no-model", reason: "no-spread" } : { kind: "fit", sums, profile };
}

function refusal(sums: GroupSums): NoModel["reason"] | null {
  const { rows, groups, hasX, xDiffers, withinX } = sums;
  const coefficients = coefficientCount(sums);
  if (hasX && !xDiffers) return "same-x";
  if (rows === groups) return rows <= coefficients ? "too-few" : "no-repeats";
  // Groups must show something that the coefficients leave, and the rows one more thing to tell the two variances apart.
  const levels = groups + (withinX > 0 ? 1 : 0);
  if (levels <= coefficients || rows < coefficients + 2) return "too-few";
  // A group with two rows is no repetition yet when the slope takes up their difference.
  const repeated = rows > levels || covarianceOfVariances(momentsAt(sums, profileAt(sums, 0))) !== null;
  return repeated ? null : "no-repeats";
}
