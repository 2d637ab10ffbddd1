import type { GroupSums } from "./group-sums.ts";
import { checkLevel } from "./interval.ts";
import {
  type FixedEffect,
  fixedEffect,
  interceptOf,
  residualSd,
  slopeOf,
  type Wanted,
} from "./random-intercept-effect.ts";
import { fitRandomIntercept, type NoModel } from "./random-intercept-fit.ts";
import { momentsAt } from "./random-intercept-moments.ts";
import { type Profile, remlCriterion } from "./random-intercept-profile.ts";
import { checkPairs, checkSample, type Sample } from "./sample.ts";

export type { NoModel } from "./random-intercept-fit.ts";
export { type RandomInterceptSlope, randomInterceptSlope } from "./random-intercept-slope.ts";

/** What a group is called. 1 and "1" are two groups. */
export type GroupName = string | number;

/** A fitted model y = intercept + slope x + group's own part + rest. SDs and modes are in the unit of y. */
export interface RandomIntercept {
  readonly kind: "model";
  readonly rows: number;
  /** Names in order of first appearance. */
  readonly groups: readonly GroupName[];
  readonly intercept: FixedEffect;
  /** Null without x. */
  readonly slope: FixedEffect | null;
  /** SD of the groups' own parts; 0 on the boundary. */
  readonly groupSd: number;
  readonly residualSd: number;
  /** -2 restricted log-likelihood with every constant, log det(X'X) not taken away: lme4's REMLcrit. */
  readonly criterion: number;
  /** Is the group SD estimated at 0? */
  readonly boundary: boolean;
  /** Each group's own part as predicted (conditional mode), in the order of `groups`. */
  readonly modes: readonly number[];
}

/**
 * Random-intercept linear mixed model by REML: rows of a group share a part of their own. Rows may stand in any order, groups may
 * differ in size, x may vary within groups or be constant in each.
 *
 * @param y     values in one unit
 * @param x     one covariate in one unit, or null for the intercept alone
 * @param group the name of each row's group
 * @param level coverage of the intervals, above 0 and below 1
 * @returns the model, or why there is none
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size; a level outside 0..1; x so close
 *   together that a coefficient is too large for a double
 * @see Patterson and Thompson (1971), Biometrika 58:545-554; checked against R's lme4, lmerTest and pbkrtest
 *   (tests/reference/stats/lmm-random-intercept.json)
 * @example randomIntercept([61, 62, 64, 65, 63, 64], null, ["a", "a", "b", "b", "c", "c"]) // intercept 63.17, 2 df
 */
export function randomIntercept(
  y: Sample,
  x: Sample | null,
  group: ArrayLike<GroupName>,
  level = 0.95,
): RandomIntercept | NoModel {
  checkLevel(level);
  checkSample(y, "y");
  if (x !== null) checkPairs(x, y);
  if (group.length !== y.length) {
    throw new RangeError(`y has ${y.length} values and group has ${group.length}: need pairs`);
  }
  const { groups, groupOf } = numbered(group);
  const fit = fitRandomIntercept(y, x, groupOf, groups.length);
  if (fit.kind === "no-model") return fit;
  const { sums, profile } = fit;
  const moments = momentsAt(sums, profile);
  const rest = residualSd(sums, profile);
  const effect = (wanted: Wanted) => fixedEffect(sums, profile, moments, wanted, level);
  return {
    kind: "model",
    rows: sums.rows,
    groups,
    intercept: effect(interceptOf(sums, profile)),
    slope: sums.hasX ? effect(slopeOf(sums, profile)) : null,
    groupSd: sums.ofY.scale * rest * Math.sqrt(profile.ratio),
    residualSd: sums.ofY.scale * rest,
    criterion: remlCriterion(sums, profile),
    boundary: profile.ratio === 0,
    modes: modes(sums, profile),
  };
}

/** Groups numbered in order of first appearance. */
function numbered(names: ArrayLike<GroupName>): { groups: GroupName[]; groupOf: Int32Array } {
  const numberOf = new Map<GroupName, number>();
  const groupOf = new Int32Array(names.length);
  for (let i = 0; i < groupOf.length; i += 1) {
    const known = numberOf.get(names[i]!) ?? numberOf.size;
    numberOf.set(names[i]!, known);
    groupOf[i] = known;
  }
  return { groups: [...numberOf.keys()], groupOf };
}

function modes({ sizes, meansX, meansY, ofY }: GroupSums, profile: Profile): number[] {
  const { ratio, centreX, centreY } = profile;
  return Array.from(sizes, (size, g) => {
    const left = meansY[g]! - centreY - profile.slope * (meansX[g]! - centreX);
    return ((ofY.scale * size * ratio) / (1 + size * ratio)) * left;
  });
}
