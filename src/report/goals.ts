import type { Metric } from "../schema/metric.ts";
import type { Goal } from "../schema/profile.ts";
import { blockIndices } from "./blocks.ts";
import { aimOf, directionOf, readFor, wantedBy } from "./goal-aim.ts";
import { goalFigures } from "./goal-figures.ts";
import { chanceByDate, goalStatus, neighbourInflation } from "./goal-status.ts";
import { goalVersions, metricOf, type Version } from "./goal-versions.ts";
import type { Strand } from "./group.ts";
import { type Line, lineOf } from "./line.ts";
import { conditionFrom, type Match, match } from "./match.ts";
import type { GoalReport } from "./schema.ts";
import type { SeriesContext } from "./series.ts";
import { zoneLine } from "./zone-line.ts";
import type { Zone } from "./zones.ts";

/** What goals are held against besides the athlete's swings. */
export interface GoalContext extends SeriesContext {
  readonly metrics: ReadonlyMap<string, Metric>;
  readonly zones: readonly Zone[];
  readonly asOf: string;
}

/** Sessions and swings of a block. */
function sizeOf(indices: readonly number[] | undefined, sessions: Line["sessions"]): GoalReport["currentN"] {
  return { sessions: indices?.length ?? 0, n: (indices ?? []).reduce((sum, i) => sum + sessions[i]!.n, 0) };
}

function goalIn(
  { goal, replacedOn }: Version,
  found: Match,
  strands: readonly Strand[],
  context: GoalContext,
): GoalReport {
  const { metric } = found.parts[0]!;
  const aim = aimOf(goal, context.zones);
  const line = aim.zone
    ? zoneLine(aim.zone, found.parts, strands, context)
    : lineOf(found.parts, context, readFor(aim));
  const { sessions, broken, joined, shifts } = line;
  const blocks = broken ? null : blockIndices(sessions, context.season);
  const figures = sessions.map((session) => session.mean);
  const wanted = wantedBy(aim);
  const dates = sessions.map(({ date }) => date);
  const inflation = neighbourInflation(dates, figures);
  const told = goalFigures({ figures, shares: aim.kind !== "target", shifts, inflation }, blocks, wanted, (baseline) =>
    directionOf(aim, metric.better, baseline),
  );
  const course = {
    dates,
    figures,
    current: told.current,
    interval: told.currentCi95,
    wanted,
    better: directionOf(aim, metric.better, told.baseline),
    by: goal.by,
    asOf: context.asOf,
    broken,
    joined,
  };
  const stands = replacedOn === null;
  return {
    metric: aim.zone ? "zone" : metric.id,
    unit: metric.unit,
    decimals: metric.decimals,
    better: metric.better,
    condition: found.condition,
    ...aim,
    by: goal.by,
    set: goal.set ?? null,
    why: goal.why ?? null,
    ...told,
    status: stands ? goalStatus(course) : null,
    probabilityByDate: stands ? chanceByDate(course) : null,
    replacedOn,
    baselineN: sizeOf(blocks?.first, sessions),
    currentN: sizeOf(blocks?.last, sessions),
  };
}

/** A goal that nothing was measured for, or nothing where it applies. */
const unmeasured = (goal: Goal, metric: Metric): Match => ({
  condition: conditionFrom(goal.condition ?? {}),
  pooled: false,
  parts: [{ metric, condition: {}, sessions: [] }],
});

/** A goal that names no purpose is meant for training, where there is any. */
function trainingIn(goal: Goal, found: readonly Match[]): readonly Match[] {
  const training = found.filter(({ condition }) => condition.purpose !== "test");
  return goal.condition?.purpose === undefined && training.length > 0 ? training : found;
}

/**
 * Each goal with where the athlete started and stands, from the same two blocks as the series of its condition. A goal that
 * lies in several conditions that never meet (a switch hitter's sides) is told once for each; a goal that nothing was
 * measured for is told with nulls. A goal that was set anew stands beside its later version, without a status.
 *
 * @param goals   as the profile has them, in any order
 * @param strands of the metrics, and of the zones that goals name
 * @returns in order of first appearance, versions of one goal together; a metric or zone that nobody declared is left out
 */
export function goalsOf(goals: readonly Goal[], strands: readonly Strand[], context: GoalContext): GoalReport[] {
  return goalVersions(goals).flatMap((versions) => {
    const { goal } = versions[0]!;
    const metric = context.metrics.get(metricOf(goal));
    const found = trainingIn(goal, match(strands, metricOf(goal), goal.condition ?? {}, context.implements));
    const places = found.length > 0 ? found : metric ? [unmeasured(goal, metric)] : [];
    return places.flatMap((place) => versions.map((version) => goalIn(version, place, strands, context)));
  });
}
