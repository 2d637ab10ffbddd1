import type { ConditionWritten } from "../schema/condition.ts";
import type { Facility, Measure } from "../schema/facility.ts";
import type { Metric } from "../schema/metric.ts";
import type { Profile } from "../schema/profile.ts";
import type { RepTable } from "../schema/season.ts";

/** Most measures a season is judged by. */
export const MOST_MEASURES = 8;

/** One thing an athlete is judged by, its purpose folded into the condition. */
export interface MeasureOf {
  readonly metric: string;
  readonly condition: ConditionWritten;
}

const folded = ({ metric, condition, purpose }: Measure): MeasureOf => ({
  metric,
  condition: { ...condition, ...(purpose ? { purpose } : {}) },
});

/**
 * The measures of one athlete, in their order: the athlete's own list, else the facility's, else the first measured columns
 * in the order of the canonical header, each over everything.
 */
export function measuresOf(
  facility: Facility,
  profile: Profile,
  metrics: readonly Metric[],
  reps: RepTable,
): readonly MeasureOf[] {
  const configured = profile.measures ?? facility.measures;
  if (configured && configured.length > 0) return configured.map(folded);
  return metrics
    .filter((metric) => reps.numbers[metric.id]?.some((value) => value !== null))
    .slice(0, MOST_MEASURES)
    .map((metric) => ({ metric: metric.id, condition: {} }));
}
