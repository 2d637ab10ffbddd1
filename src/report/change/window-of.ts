import type { Metric } from "../../schema/metric.ts";
import type { Goal } from "../../schema/profile.ts";
import type { Interval } from "../../stats/interval.ts";
import { conditionKey } from "../condition.ts";
import { conditionFrom } from "../match.ts";
import type { Condition } from "../schema.ts";

/**
 * Where better lies for a window metric in one condition: the athlete's own window goal there, the one set last if it was set anew, else the
 * metric's window. Null for other metrics, and where nobody named a window.
 */
export function windowOf(metric: Metric, condition: Condition, goals: readonly Goal[]): Interval | null {
  if (metric.better !== "window") return null;
  const fits = goals.filter(
    (goal) =>
      "window" in goal &&
      goal.metric === metric.id &&
      conditionKey(conditionFrom(goal.condition ?? {})) === conditionKey(withoutPurpose(condition, goal)),
  );
  const own = fits.sort((a, b) => ((a.set ?? "") < (b.set ?? "") ? -1 : 1)).at(-1);
  return own && "window" in own ? own.window : (metric.window ?? null);
}

/** A goal that names no purpose is meant for training. */
function withoutPurpose({ purpose, ...rest }: Condition, goal: Goal): Condition {
  return purpose === "training" && goal.condition?.purpose === undefined
    ? rest
    : { ...rest, ...(purpose ? { purpose } : {}) };
}
