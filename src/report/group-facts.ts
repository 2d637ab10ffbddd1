import type { Profile } from "../schema/profile.ts";
import type { Season } from "../schema/season.ts";
import { mean } from "../stats/mean.ts";
import { ols } from "../stats/ols.ts";
import { sd } from "../stats/sd.ts";
import { blockIndices } from "./blocks.ts";
import type { Bridge } from "./bridges.ts";
import { testWindows, withinWindows } from "./change/test-days.ts";
import { conditionKey } from "./condition.ts";
import { deviceLines } from "./device-lines.ts";
import { judgeReps } from "./gated.ts";
import { strandsOf } from "./group.ts";
import { lineOf } from "./line.ts";
import { match } from "./match.ts";
import { measuredBy } from "./measured-by.ts";
import { measuresOf } from "./measures.ts";
import type { Condition, SessionValue } from "./schema.ts";
import { weeksOf } from "./sessions.ts";
import { testStrands } from "./test-strands.ts";

/** A scatter that several athletes share. */
export interface PooledScatter {
  readonly sd: number;
  readonly df: number;
  readonly athletes: number;
}

/** Spread between athletes of one kind. */
export interface Spread {
  readonly sport: string | null;
  readonly sex: string | null;
  readonly level: string | null;
  /** The error of the athletes' own values removed, 0 or more. */
  readonly sd: number;
  /** Mean of their starts. */
  readonly middle: number;
  readonly athletes: number;
}

/** What a season's athletes tell of one measure together. Plain JSON. */
export interface GroupFact {
  /** `factKey` of the measure. */
  readonly key: string;
  /** Of days of one test within the same window. */
  readonly testDays: PooledScatter | null;
  /** Of sessions about each athlete's own line. */
  readonly ownLines: PooledScatter | null;
  readonly between: readonly Spread[];
}

/** Athletes of one kind from which a spread between them may be told. */
export const ATHLETES_FOR_A_SPREAD = 10;
/** Sessions from which a scatter about one's own line is told. */
const SESSIONS_FOR_A_SCATTER = 3;

/** One text per measure; the side of a swing does not matter for noise. */
export const factKey = (metric: string, { side: _, ...condition }: Condition): string =>
  `${metric} ${conditionKey(condition)}`;

/** One athlete's sessions of one measure, on one unbroken line. */
interface Contribution {
  readonly key: string;
  readonly profile: Profile;
  readonly sessions: readonly SessionValue[];
}

type Known = Pick<Season, "facility" | "metrics" | "implements" | "devices" | "athletes">;

function contributions(season: Known, bridges: readonly Bridge[]): Contribution[] {
  const { facility, metrics, devices } = season;
  const lines = deviceLines(devices);
  return season.athletes.flatMap(({ profile, reps, tests }) => {
    const { conditions, judged } = judgeReps({ profile, reps }, season);
    const swung = strandsOf(reps, metrics, conditions, judged, measuredBy(reps, metrics, devices));
    const strands = [...swung, ...testStrands(tests, metrics, facility.season)];
    const context = { setUps: { lines, gameBats: profile.game_bat }, bridges };
    return measuresOf(facility, profile, metrics, reps).flatMap(({ metric, condition }) =>
      match(strands, metric, condition, season.implements).flatMap((found) => {
        const { sessions, broken } = lineOf(found.parts, context);
        return broken ? [] : [{ key: factKey(metric, found.condition), profile, sessions }];
      }),
    );
  });
}

const pooled = (parts: readonly { readonly squares: number; readonly df: number }[]): PooledScatter | null => {
  const some = parts.filter(({ df }) => df > 0);
  const df = some.reduce((sum, part) => sum + part.df, 0);
  if (df === 0) return null;
  const squares = some.reduce((sum, part) => sum + part.squares, 0);
  return { sd: Math.sqrt(squares / df), df, athletes: some.length };
};

function aboutOwnLine(sessions: readonly SessionValue[]): { squares: number; df: number } {
  const fit =
    sessions.length < SESSIONS_FOR_A_SCATTER
      ? null
      : ols(
          weeksOf(sessions),
          sessions.map((one) => one.mean),
        );
  if (fit === null || fit.kind !== "line" || fit.residualSd === null) return { squares: 0, df: 0 };
  return { squares: fit.residualSd ** 2 * fit.df, df: fit.df };
}

/** Spread between the athletes' starts, kind by kind, with the error of a start of so many sessions taken out. */
function spreads(
  group: readonly Contribution[],
  scatter: PooledScatter | null,
  season: Known["facility"]["season"],
): Spread[] {
  const kinds = new Map<
    string,
    { kind: Pick<Spread, "sport" | "sex" | "level">; starts: number[]; errors: number[] }
  >();
  for (const { profile, sessions } of group) {
    const first = blockIndices(sessions, season)?.first;
    const start = first && mean(first.map((i) => sessions[i]!.mean));
    if (first === undefined || start === undefined || start === null) continue;
    const kind = { sport: profile.sport ?? null, sex: profile.sex ?? null, level: profile.level ?? null };
    const key = JSON.stringify(kind);
    const found = kinds.get(key) ?? { kind, starts: [], errors: [] };
    kinds.set(key, found);
    found.starts.push(start);
    found.errors.push((scatter?.sd ?? 0) ** 2 / first.length);
  }
  return [...kinds.values()].flatMap(({ kind, starts, errors }) => {
    const between = starts.length < ATHLETES_FOR_A_SPREAD ? null : sd(starts);
    if (between === null) return [];
    const true2 = between ** 2 - (mean(errors) ?? 0);
    return [{ ...kind, sd: Math.sqrt(Math.max(0, true2)), middle: mean(starts) ?? 0, athletes: starts.length }];
  });
}

/**
 * What all athletes of a season, published or not, tell together of each measure: how much two sessions of an athlete who did not
 * change differ, and how far athletes lie apart. No name and no single value is in it.
 *
 * @returns one fact per measure and condition, in order of its key
 */
export function groupFacts(season: Known, bridges: readonly Bridge[]): GroupFact[] {
  const byKey = new Map<string, Contribution[]>();
  for (const one of contributions(season, bridges)) byKey.set(one.key, [...(byKey.get(one.key) ?? []), one]);
  return [...byKey]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, group]) => {
      const ownLines = pooled(group.map(({ sessions }) => aboutOwnLine(sessions)));
      return {
        key,
        testDays: pooled(group.map(({ sessions }) => withinWindows(testWindows(sessions, season.facility.season)))),
        ownLines,
        between: spreads(group, ownLines, season.facility.season),
      };
    });
}
