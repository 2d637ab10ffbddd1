import type { Facility } from "../schema/facility.ts";
import type { Profile } from "../schema/profile.ts";
import type { Implement } from "../schema/tables.ts";
import { block, blockIndices, earlyLateOf } from "./blocks.ts";
import { DAY_MS, dayOf } from "./calendar.ts";
import type { Judging } from "./change/judging.ts";
import { progressOf } from "./change/progress.ts";
import { reboundOf } from "./change/rebound.ts";
import { conditionKey } from "./condition.ts";
import type { ConditionOutcomes, Strand } from "./group.ts";
import { type LineContext, lineOf } from "./line.ts";
import { type Match, match, outcomesIn } from "./match.ts";
import type { MeasureOf } from "./measures.ts";
import { phasesOf } from "./phases.ts";
import type { Series } from "./schema.ts";

/** What every series of one athlete needs besides its reps. */
export interface SeriesContext extends LineContext {
  /** What a series that is a measure is judged with. */
  readonly judging: (found: Match) => Judging;
  /** Where the athlete stands among others at both ends. */
  readonly standing: (
    found: Match,
    ends: Pick<Series, "first" | "last">,
  ) => Pick<Series, "peers" | "peerLines" | "peersTooFew">;
  readonly season: Facility["season"];
  readonly implements: readonly Implement[];
  /** What became of the counted swings of every condition. */
  readonly outcomes: readonly ConditionOutcomes[];
  /** Days away, ISO dates, both included. */
  readonly away: readonly { readonly from: string; readonly to: string }[];
  /** How many values of a strand are flagged as far from the athlete's own. */
  readonly flagged: ReadonlyMap<Strand, number>;
}

const NO_STANDING = { peers: null, peerLines: [], peersTooFew: null } as const satisfies Partial<Series>;

/** One series of the report from one strand or a pool of several. */
export function seriesFrom(found: Match, measure: number | null, context: SeriesContext): Series {
  const { metric } = found.parts[0]!;
  const line = lineOf(found.parts, context);
  const { sessions, breaks, stretches, joined, broken } = line;
  const blocks = broken ? null : blockIndices(sessions, context.season);
  const judging = measure === null ? null : context.judging(found);
  const first = blocks && block(sessions, blocks.first);
  const last = blocks && block(sessions, blocks.last);
  const progress = progressOf(found, line, judging);
  const gap = progress.change?.verdict != null && judging !== null && absentInside(sessions, context.away);
  return {
    metric: metric.id,
    unit: metric.unit,
    better: metric.better,
    decimals: metric.decimals,
    measure,
    pooled: found.pooled,
    parts: found.parts.length,
    condition: found.condition,
    of: metric.side === "ball" ? outcomesIn(found, context.outcomes, context.implements) : null,
    sessions: [...sessions],
    sessionCount: sessions.length,
    first,
    last,
    n: sessions.reduce((sum, session) => sum + session.n, 0),
    spanDays: (dayOf(sessions.at(-1)!.date) - dayOf(sessions[0]!.date)) / DAY_MS,
    flagged: found.parts.reduce((sum, part) => sum + (context.flagged.get(part) ?? 0), 0),
    breaks: breaks.map((one) =>
      one.kind === "game-bat"
        ? { ...one, bat: batDifference(one.date, context.setUps.gameBats, context.implements) }
        : one,
    ),
    stretches,
    joined,
    earlyLate: blocks && !joined ? earlyLateOf(sessions, blocks) : null,
    window: judging?.window ? [...judging.window] : null,
    ...progress,
    notes: gap ? [...progress.notes, "absence-inside"] : progress.notes,
    rebound: judging && !broken ? reboundOf(first, progress.noise, judging.group) : null,
    phases: judging && !broken ? phasesOf(sessions, context.season) : [],
    ...(measure === null ? NO_STANDING : context.standing(found, { first, last })),
  };
}

/** What a game bat put to use on a day has more than the one before it, in length and mass. */
function batDifference(
  date: string,
  bats: Profile["game_bat"],
  known: readonly Implement[],
): Series["breaks"][number]["bat"] {
  if (bats === undefined || typeof bats === "string") return null;
  const inOrder = [...bats].sort((a, b) => (a.from < b.from ? -1 : 1));
  const at = inOrder.findIndex(({ from }) => from === date);
  const [before, now] = [inOrder[at - 1], inOrder[at]].map((one) => known.find(({ id }) => id === one?.id));
  if (before === undefined || now === undefined) return null;
  const less = (a: number | undefined, b: number | undefined) => (a === undefined || b === undefined ? null : a - b);
  return { lengthIn: less(now.length_in, before.length_in), weightOz: less(now.weight_oz, before.weight_oz) };
}

/** Were there days away between the first and the last session? */
const absentInside = (sessions: readonly { readonly date: string }[], away: SeriesContext["away"]): boolean =>
  away.some(({ from, to }) => from > sessions[0]!.date && to < sessions.at(-1)!.date);

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
