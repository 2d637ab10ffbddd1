import { type Goal, goalKey } from "../schema/profile.ts";
import { zoneMetric } from "./zones.ts";

/** A goal, and the day on which it was set anew; null for a goal that stands. */
export interface Version {
  readonly goal: Goal;
  readonly replacedOn: string | null;
}

/** What a goal looks at: a metric of the season, or the derived one of a zone. */
export const metricOf = (goal: Goal): string => ("zone" in goal ? zoneMetric(goal.zone) : goal.metric);

const setOn = ({ set }: Goal): string => set ?? "";

/**
 * Goals by what they are versions of, in order of first appearance; versions in order of the day they were set, one without a day
 * before all others. Two of one day, or of none, contradict each other and both stand.
 *
 * @returns lists of at least one
 */
export function goalVersions(goals: readonly Goal[]): Version[][] {
  const byKey = new Map<string, Goal[]>();
  for (const goal of goals) byKey.set(goalKey(goal), [...(byKey.get(goalKey(goal)) ?? []), goal]);
  return [...byKey.values()].map((list) => {
    const inOrder = [...list].sort((a, b) => (setOn(a) < setOn(b) ? -1 : setOn(a) > setOn(b) ? 1 : 0));
    return inOrder.map((goal) => ({
      goal,
      replacedOn: inOrder.find((other) => setOn(other) > setOn(goal))?.set ?? null,
    }));
  });
}
