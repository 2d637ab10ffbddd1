import type { EstimatedShift } from "../stats/session-line.ts";
import { breaksOf, type SetUps, stretchesOf, usesOf } from "./breaks.ts";
import type { Bridge } from "./bridges.ts";
import type { Break, Use } from "./device-breaks.ts";
import type { Strand } from "./group.ts";
import type { MeasuredBy } from "./measured-by.ts";
import { type Pooled, pool, repsIn } from "./pool.ts";
import type { Series, SessionValue } from "./schema.ts";
import { sessionValue } from "./sessions.ts";

/** What a line is drawn with besides its reps. */
export interface LineContext {
  readonly setUps: SetUps;
  readonly bridges: readonly Bridge[];
}

/** The sessions of a series as one line, broken or joined. */
export interface Line {
  readonly pooled: Pooled;
  readonly sessions: readonly SessionValue[];
  readonly breaks: Series["breaks"];
  readonly stretches: Series["stretches"];
  /** There are breaks, and every one is bridged: the values are what the last device would have read. */
  readonly joined: boolean;
  /** No change may be told across it: there are breaks that are not all bridged. */
  readonly broken: boolean;
  /** The offsets that stand in the sessions' means; none unless joined. */
  readonly shifts: readonly EstimatedShift[];
}

/** A bridge on the way from a line to the last one, walked along (1) or against its direction (-1). */
interface Crossing {
  readonly bridge: Bridge;
  readonly sign: 1 | -1;
}

/** The bridges of each line to `last`, by the fewest of them; lines that do not reach it have no entry. */
function waysTo(last: number, bridges: readonly Bridge[]): Map<number, readonly Crossing[]> {
  const ways = new Map<number, readonly Crossing[]>([[last, []]]);
  const queue = [last];
  for (const here of queue) {
    for (const bridge of bridges) {
      const next = bridge.to === here ? bridge.from : bridge.from === here ? bridge.to : here;
      if (ways.has(next)) continue;
      ways.set(next, [{ bridge, sign: bridge.to === here ? 1 : -1 }, ...ways.get(here)!]);
      queue.push(next);
    }
  }
  return ways;
}

/** The parts with another number in place of each value. */
const withValues = (parts: readonly Strand[], value: (by: MeasuredBy, value: number) => number): Strand[] =>
  parts.map((part) => ({
    ...part,
    sessions: part.sessions.map((session) => ({
      ...session,
      values: session.values.map((one, i) => value(session.by[i]!, one)),
    })),
  }));

/** The bridge of a break: from the line that measured most of the stretch before it. Null where there is none. */
function bridgeOf(at: Break, before: Break | undefined, uses: readonly Use[], bridges: readonly Bridge[]) {
  const counts = new Map<number, number>();
  for (const { line, date, n } of uses) {
    if (line === null || line === at.line || date > at.date || date < (before?.date ?? "")) continue;
    counts.set(line, (counts.get(line) ?? 0) + n);
  }
  const [old] = [...counts].sort(([, a], [, b]) => b - a)[0] ?? [];
  const found = bridges.find(({ from, to }) => (from === old && to === at.line) || (from === at.line && to === old));
  if (found === undefined) return null;
  const { offset, ci95, n, method, date } = found;
  const along = found.to === at.line;
  const turned: [number, number] = along ? [...ci95] : [-ci95[1], -ci95[0]];
  return { offset: along ? offset : -offset, ci95: turned, n, method, date };
}

/** What stands for each value: the value itself, or something that is made of it. */
export interface ReadAs {
  readonly value: (value: number) => number;
  /** Its slope there: what it moves by when the value moves by one. */
  readonly slope: (value: number) => number;
}

const AS_MEASURED: ReadAs = { value: (value) => value, slope: () => 1 };

/** The sessions as measured. */
function measured(parts: readonly Strand[], read: ReadAs) {
  const pooled = pool(withValues(parts, (_, value) => read.value(value)));
  return { pooled, sessions: pooled.sessions.map((reps, i) => sessionValue(reps, pooled.centers[i]!, 0)) };
}

/** The sessions with something added to each value. */
function shifted(
  parts: readonly Strand[],
  shift: (by: MeasuredBy) => number,
  weights: readonly number[],
  read: ReadAs,
) {
  const pooled = pool(
    withValues(parts, (by, value) => read.value(value + shift(by))),
    weights,
  );
  const shifts = pool(withValues(parts, shift), weights).centers;
  const sessions = pooled.sessions.map((reps, i) => sessionValue(reps, pooled.centers[i]!, shifts[i]!));
  return { pooled, sessions };
}

/**
 * The line of a series with its breaks, joined where bridges allow it: each rep is read as the last device would have read it, by
 * its own device, and each offset comes along with its error and its share in every session. It is joined only when every
 * line of devices.csv that measured the series reaches the last one over bridges; a new game bat cannot be bridged.
 *
 * Offsets are taken to be independent of each other and of the scatter of the sessions.
 *
 * @param parts the strands of the series, all of one metric, at least one
 * @param read  what stands for each value, after it was shifted; without it the value itself
 */
export function lineOf(parts: readonly Strand[], { setUps, bridges }: LineContext, read = AS_MEASURED): Line {
  const weights = parts.map(repsIn);
  const uses = usesOf(parts);
  const breaks = breaksOf(parts, uses, setUps);
  const ofMetric = bridges.filter((bridge) => bridge.metric === parts[0]!.metric.id);
  const told = {
    breaks: breaks.map((one, i) => {
      const { date, kind, to } = one;
      return {
        date,
        kind,
        to,
        bridge: one.line === null ? null : bridgeOf(one, breaks[i - 1], uses, ofMetric),
        bat: null,
      };
    }),
    stretches: stretchesOf(parts, breaks),
  };
  const last = breaks.at(-1)?.line ?? null;
  const ways = last === null ? new Map<number, readonly Crossing[]>() : waysTo(last, ofMetric);
  const joined =
    last !== null &&
    breaks.every(({ kind }) => kind !== "game-bat") &&
    uses.every(({ line }) => line !== null && ways.has(line));
  if (!joined) {
    return { ...measured(parts, read), ...told, joined, broken: breaks.length > 0, shifts: [] };
  }
  const way = (by: MeasuredBy) => ways.get(by.line!) ?? [];
  const shift = (by: MeasuredBy) => way(by).reduce((sum, { bridge, sign }) => sum + sign * bridge.offset, 0);
  const crossed = ofMetric.filter((bridge) => uses.some((use) => way(use).some((one) => one.bridge === bridge)));
  const shifts = crossed.map((bridge) => ({
    shares: pool(
      withValues(parts, (by, value) => {
        const sign = way(by).find((one) => one.bridge === bridge)?.sign ?? 0;
        return sign * read.slope(value + shift(by));
      }),
      weights,
    ).centers,
    se: bridge.se,
    df: bridge.df,
  }));
  return { ...shifted(parts, shift, weights, read), ...told, joined, broken: false, shifts };
}
