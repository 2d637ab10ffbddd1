import { bracketedRoot } from "./bracketed-root.ts";
import type { GroupSums } from "./group-sums.ts";
import { type Profile, profileAt, remlCriterion } from "./random-intercept-profile.ts";

/**
 * The criterion bends over about a decade of the ratio: look twice in each. Against looks ten times as close at 60,000 made-up small and
 * very unequal sets of groups, many with two minima, no better minimum was ever missed.
 */
const STEP = Math.sqrt(10);

/** A derivative at ratio 0 that is nothing but rounding, in shares of the number of rows, counts as 0: the boundary. */
const FLAT = 1e-12;

/** So far out, in units of 1 / (rows of the smallest group), a criterion that still falls is taken to fall for ever. */
const FAR = 1e40;
/** The same where rows are so few that far out only rounding is left of the derivative. */
const FAR_WITHOUT_REPETITION = 1e6;

/**
 * The ratio of the variances (group / residual) with the smallest REML criterion: 0, or the best of all minima above it. The sign
 * of the derivative is looked at from 0 until it can only stay positive; every change from falling to rising is a minimum and is
 * followed to the last digit.
 *
 * @param sums of a model in which the two variances can be told apart
 * @returns the best profile; null when the criterion falls for ever, because the residual variance is estimated at 0
 */
export function bestProfile(sums: GroupSums): Profile | null {
  const start = profileAt(sums, 0);
  const onlyRounding = start.squaresLeft <= sums.rows * sums.ofY.rounding ** 2;
  if (onlyRounding || (sums.withinSquares === 0 && hasRepetition(sums))) return null;
  const boundary = start.score >= -FLAT * sums.rows;
  let best = boundary ? start : null;
  let from = boundary ? { ...start, score: 0 } : start;
  const far = (sums.withinSquares > 0 ? FAR : FAR_WITHOUT_REPETITION) / sums.smallest;
  for (let ratio = 0.01 / sums.largest; ; ratio *= ratio < 100 / sums.smallest ? STEP : 100) {
    const to = profileAt(sums, ratio);
    if (from.score < 0 && to.score >= 0) best = better(sums, best, minimumBetween(sums, from, to));
    if (to.score >= 0 && ratio >= 100 / sums.smallest) return best;
    if (ratio > far) return best !== null && better(sums, best, to) === best ? best : null;
    from = to;
  }
}

/** Are there more rows than a free level for every group and the slope inside groups use up? */
function hasRepetition(sums: GroupSums): boolean {
  return sums.rows > sums.groups + (sums.withinX > 0 ? 1 : 0);
}

/** Works on log(1 + rows x ratio / groups), which is at ease at 0 and far out. */
function minimumBetween(sums: GroupSums, from: Profile, to: Profile): Profile {
  const size = sums.rows / sums.groups;
  const end = ({ ratio, score }: Profile) => ({ at: Math.log1p(size * ratio), value: score * (1 + size * ratio) });
  const profileOf = (at: number) => profileAt(sums, Math.expm1(at) / size);
  return profileOf(bracketedRoot((at) => end(profileOf(at)).value, end(from), end(to)));
}

function better(sums: GroupSums, one: Profile | null, other: Profile): Profile {
  return one === null || remlCriterion(sums, other) < remlCriterion(sums, one) ? other : one;
}
