import type { Facility } from "../schema/facility.ts";
import type { Implement } from "../schema/tables.ts";
import { block, blockIndices } from "./blocks.ts";
import { breaksOf, type SetUps, stretchesOf } from "./breaks.ts";
import { DAY_MS, dayOf } from "./calendar.ts";
import { conditionKey } from "./condition.ts";
import type { Strand } from "./group.ts";
import { type Match, match } from "./match.ts";
import type { MeasureOf } from "./measures.ts";
import { pool } from "./pool.ts";
import type { Series } from "./schema.ts";
import { sessionValue } from "./sessions.ts";
import { trendOf } from "./trend.ts";

/** What every series of one athlete needs besides its reps. */
export interface SeriesContext {
  readonly season: Facility["season"];
  readonly implements: readonly Implement[];
  readonly setUps: SetUps;
}

/** One series of the report from one strand or a pool of several. */
export function seriesFrom(found: Match, measure: number | null, { season, setUps }: SeriesContext): Series {
  const { metric } = found.parts[0]!;
  const pooled = pool(found.parts);
  const sessions = pooled.sessions.map((reps, i) => sessionValue(reps, pooled.centers[i]));
  const breaks = breaksOf(found.parts, sessions, setUps);
  const blocks = breaks.length > 0 ? null : blockIndices(sessions, season);
  const { change, trend } = trendOf(breaks.length > 0 ? [] : sessions, metric.smallestWorthwhile ?? null);
  return {
    metric: metric.id,
    unit: metric.unit,
    better: metric.better,
    decimals: metric.decimals,
    measure,
    pooled: found.pooled,
    parts: found.parts.length,
    condition: found.condition,
    of: pooled.of,
    sessions,
    sessionCount: sessions.length,
    first: blocks && block(sessions, blocks.first),
    last: blocks && block(sessions, blocks.last),
    n: sessions.reduce((sum, session) => sum + session.n, 0),
    spanDays: (dayOf(sessions.at(-1)!.date) - dayOf(sessions[0]!.date)) / DAY_MS,
    breaks,
    stretches: stretchesOf(sessions, breaks),
    change,
    trend,
    peers: null,
  };
}

/**
 * All series of one athlete: those of the measures first, in the facility's order, then every other condition on its own.
 * A measure that nothing was recorded for has no series.
 */
export function allSeries(
  strands: readonly Strand[],
  measures: readonly MeasureOf[],
  context: SeriesContext,
): Series[] {
  const exact = new Set<string>();
  const judged = measures.flatMap(({ metric, condition }, index) =>
    match(strands, metric, condition, context.implements).map((found) => {
      if (!found.pooled) exact.add(`${metric} ${conditionKey(found.condition)}`);
      return seriesFrom(found, index, context);
    }),
  );
  const others = strands
    .filter((strand) => !exact.has(`${strand.metric.id} ${conditionKey(strand.condition)}`))
    .map((strand) => seriesFrom({ condition: strand.condition, pooled: false, parts: [strand] }, null, context));
  return [...judged, ...others];
}
