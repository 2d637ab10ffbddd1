import type { Goal } from "../schema/profile.ts";
import { mean } from "../stats/mean.ts";
import { blockIndices } from "./blocks.ts";
import type { Strand } from "./group.ts";
import { lineOf } from "./line.ts";
import { type Match, match } from "./match.ts";
import type { GoalReport } from "./schema.ts";
import type { SeriesContext } from "./series.ts";

/** A goal with all its forms side by side: what does not apply is null. */
type Aim = Pick<GoalReport, "kind" | "target" | "window" | "atLeast" | "share">;

function aimOf(goal: Goal): Aim {
  const none = { target: null, window: null, atLeast: null, share: null };
  if ("target" in goal) return { ...none, kind: "target", target: goal.target };
  if ("window" in goal) return { ...none, kind: "window", window: [...goal.window], share: goal.share };
  return { ...none, kind: "at-least", atLeast: goal.at_least, share: goal.share };
}

/** What the goal looks at in one session: the mean, or the share of swings that are where they should be. */
function sessionFigure(aim: Aim, values: readonly number[], center: number): number {
  if (aim.kind === "target") return center;
  const inside = values.filter((value) =>
    aim.window ? value >= aim.window[0] && value <= aim.window[1] : value >= (aim.atLeast ?? Number.POSITIVE_INFINITY),
  );
  return inside.length / values.length;
}

/**
 * Part of the way from start to goal: 0 at the start, 1 at the goal, below 0 for a step back. Null when start or end is not
 * known, and when the start already was at the goal or past it: there was no way to go.
 */
function progressOf(
  baseline: number | null,
  current: number | null,
  wanted: number | null,
  better: GoalReport["better"],
): number | null {
  if (baseline === null || current === null || wanted === null) return null;
  const toGo = wanted - baseline;
  const thereAlready = better === "higher" ? toGo <= 0 : better === "lower" ? toGo >= 0 : toGo === 0;
  return thereAlready ? null : (current - baseline) / toGo;
}

const noBlock = { sessions: 0, n: 0 };

function goalIn(goal: Goal, found: Match, context: SeriesContext): GoalReport {
  const { metric } = found.parts[0]!;
  const aim = aimOf(goal);
  const { pooled, sessions, broken } = lineOf(found.parts, context);
  const figures = pooled.sessions.map((reps, i) => sessionFigure(aim, reps.values, pooled.centers[i]!));
  const blocks = broken ? null : blockIndices(sessions, context.season);
  const over = (indices: readonly number[] | undefined) => (indices ? mean(indices.map((i) => figures[i]!)) : null);
  const size = (indices: readonly number[] | undefined) =>
    indices
      ? { sessions: indices.length, n: indices.reduce((sum, i) => sum + pooled.sessions[i]!.values.length, 0) }
      : noBlock;
  const baseline = over(blocks?.first);
  const current = over(blocks?.last);
  const wanted = aim.target ?? aim.share;
  return {
    metric: metric.id,
    unit: metric.unit,
    decimals: metric.decimals,
    better: metric.better,
    condition: found.condition,
    ...aim,
    by: goal.by,
    set: goal.set ?? null,
    why: goal.why ?? null,
    baseline,
    current,
    progress: progressOf(baseline, current, wanted, aim.kind === "target" ? metric.better : "higher"),
    ci95: null,
    status: null,
    probabilityByDate: null,
    baselineN: size(blocks?.first),
    currentN: size(blocks?.last),
  };
}

/**
 * Each goal with where the athlete started and stands, from the same two blocks as the series of its condition. A goal that
 * lies in several conditions that never meet (a switch hitter's sides) is told once for each; a goal that nothing was
 * measured for is told with nulls.
 */
export function goalsOf(
  goals: readonly Goal[],
  strands: readonly Strand[],
  metrics: ReadonlyMap<string, Strand["metric"]>,
  context: SeriesContext,
): GoalReport[] {
  return goals.flatMap((goal) => {
    const found = match(strands, goal.metric, goal.condition ?? {}, context.implements);
    if (found.length > 0) return found.map((one) => goalIn(goal, one, context));
    const metric = metrics.get(goal.metric);
    return metric ? [unmeasured(goal, metric, context)] : [];
  });
}

function unmeasured(goal: Goal, metric: Strand["metric"], context: SeriesContext): GoalReport {
  const empty: Match = {
    condition: Object.fromEntries(Object.entries(goal.condition ?? {}).filter(([, value]) => value !== undefined)),
    pooled: false,
    parts: [{ metric, condition: {}, sessions: [] }],
  };
  return goalIn(goal, empty, context);
}
