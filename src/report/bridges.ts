import type { Metric } from "../schema/metric.ts";
import type { RepTable, Season } from "../schema/season.ts";
import { pairedOffset, type TwoSamples, twoSampleOffset } from "../stats/offset.ts";
import { conditionsOf } from "./condition.ts";
import { type Strand, strandsOf } from "./group.ts";
import { judge } from "./judge.ts";
import { type FindMeasuredBy, measuredBy } from "./measured-by.ts";
import type { SessionReps } from "./sessions.ts";

/** Swings that old and new device must each have recorded on one day. */
export const SWINGS_FOR_A_BRIDGE = 20;

/** What one line of devices.csv reads above another for one metric, from a day on which both measured. Plain JSON. */
export interface Bridge {
  readonly metric: string;
  /** Places in `Season.devices`. */
  readonly from: number;
  readonly to: number;
  /** `to` minus `from`, in the metric's unit. */
  readonly offset: number;
  readonly se: number;
  readonly df: number;
  readonly ci95: readonly [number, number];
  /** Swings that both recorded, or the swings of both together. */
  readonly n: number;
  /** `paired`: the same swings by both devices. `two-samples`: some swings by one and some by the other. */
  readonly method: "paired" | "two-samples";
  readonly date: string;
}

/** One athlete's strands with the table they come from. */
export interface Measured {
  readonly reps: RepTable;
  readonly strands: readonly Strand[];
}

/** What two lines measured on one day, all hitters and conditions side by side. */
interface Day {
  readonly date: string;
  readonly differences: number[];
  readonly cells: TwoSamples[];
}

/**
 * What tells a swing from the others of its session: the time with its seconds, else round and rep (and block); null when the
 * row has neither.
 */
function swingKey({ words, numbers }: RepTable, row: number): string | null {
  const time = words.time?.[row];
  if (time && /^\d{1,2}:\d{2}:\d{2}/.test(time)) return time;
  const cell = (field: string) => words[field]?.[row] ?? numbers[field]?.[row] ?? null;
  const rep = cell("rep");
  return rep === null ? null : JSON.stringify([cell("block"), cell("round"), rep]);
}

/** Values of one session that one line measured, by swing; swings that cannot be told apart have no key here. */
function valuesOf(session: SessionReps, line: number, reps: RepTable) {
  const values: number[] = [];
  const bySwing = new Map<string, number | null>();
  session.by.forEach((by, i) => {
    if (by.line !== line) return;
    const value = session.values[i]!;
    values.push(value);
    const key = swingKey(reps, session.rows[i]!);
    if (key !== null) bySwing.set(key, bySwing.has(key) ? null : value);
  });
  return { values, bySwing };
}

function addSession(days: Map<string, Map<string, Day>>, metric: Metric, session: SessionReps, reps: RepTable): void {
  const lines = [...new Set(session.by.flatMap(({ line }) => line ?? []))].sort((a, b) => a - b);
  if (lines.length < 2) return;
  const measured = lines.map((line) => ({ line, ...valuesOf(session, line, reps) }));
  measured.forEach((to, j) => {
    for (const from of measured.slice(0, j)) {
      const pair = JSON.stringify([metric.id, from.line, to.line]);
      const ofPair = days.get(pair) ?? new Map<string, Day>();
      days.set(pair, ofPair);
      const day = ofPair.get(session.date) ?? { date: session.date, differences: [], cells: [] };
      ofPair.set(session.date, day);
      day.cells.push({ first: from.values, second: to.values });
      for (const [key, value] of to.bySwing) {
        const other = from.bySwing.get(key);
        if (value !== null && typeof other === "number") day.differences.push(value - other);
      }
    }
  });
}

type Found = Pick<Bridge, "offset" | "se" | "df" | "ci95" | "n" | "method" | "date">;

/** The bridge of one day; null with too few swings. */
function bridgeOn({ date, differences, cells }: Day): Found | null {
  if (differences.length >= SWINGS_FOR_A_BRIDGE) {
    const paired = pairedOffset(differences);
    return paired && { ...paired, n: differences.length, method: "paired", date };
  }
  const telling = cells.filter(({ first, second }) => first.length > 1 && second.length > 1);
  const count = (side: keyof TwoSamples) => telling.reduce((sum, cell) => sum + cell[side].length, 0);
  const [old, now] = [count("first"), count("second")];
  if (Math.min(old, now) < SWINGS_FOR_A_BRIDGE) return null;
  const two = twoSampleOffset(telling);
  return two && { ...two, n: old + now, method: "two-samples", date };
}

/** Swings seen by both before swings shared out, then the day with the most swings, then the earliest. */
function better(a: Found, b: Found): Found {
  if (a.method !== b.method) return a.method === "paired" ? a : b;
  if (a.n !== b.n) return a.n > b.n ? a : b;
  return a.date <= b.date ? a : b;
}

/**
 * Every bridge between two lines of devices.csv: a day on which both measured the same metric, each 20 swings or more. Where at
 * least 20 swings stand twice, once by each device (the same second, or the same round and rep), their differences give the
 * offset; else the swings of one hitter's session in one condition are compared, those by one device with those by the other.
 * Of several days the best one counts alone, so that a bridge has one date.
 *
 * Hitters are put together: an offset belongs to the devices. With two samples the order of the swings is not looked at: twenty
 * with the old and then twenty with the new device carry the day's tiring with them, so they should alternate.
 *
 * @returns at most one for each metric and pair of lines, `from` before `to` in devices.csv
 */
export function bridgesIn(athletes: readonly Measured[]): Bridge[] {
  const days = new Map<string, Map<string, Day>>();
  for (const { reps, strands } of athletes) {
    for (const { metric, sessions } of strands) {
      for (const session of sessions) addSession(days, metric, session, reps);
    }
  }
  return [...days].flatMap(([pair, ofPair]) => {
    const found = [...ofPair.values()].flatMap((day) => bridgeOn(day) ?? []);
    if (found.length === 0) return [];
    const [metric, from, to] = JSON.parse(pair) as [string, number, number];
    return [{ metric, from, to, ...found.reduce(better) }];
  });
}

/** Are there two lines that measured the same metric on one day? Looks at what is cheap to know only. */
function mayBridge(reps: RepTable, metrics: readonly Metric[], find: FindMeasuredBy): boolean {
  return metrics.some((metric) => {
    const column = reps.numbers[metric.id];
    if (!column) return false;
    const lineOfDay = new Map<string, number>();
    return reps.date.some((date, row) => {
      if (typeof column[row] !== "number") return false;
      const { line } = find(metric, row);
      if (line === null) return false;
      const other = lineOfDay.get(date);
      lineOfDay.set(date, line);
      return other !== undefined && other !== line;
    });
  });
}

/**
 * The bridges of a whole season: one afternoon with both devices serves every athlete whom they measured.
 *
 * @returns as `bridgesIn`; empty when devices.csv changes nothing or no athlete was ever measured by two lines on one day
 */
export function seasonBridges(season: Pick<Season, "facility" | "metrics" | "devices" | "athletes">): Bridge[] {
  const { facility, metrics, devices, athletes } = season;
  const measured = athletes.flatMap(({ reps, profile }): Measured[] => {
    const find = measuredBy(reps, metrics, devices);
    if (!mayBridge(reps, metrics, find)) return [];
    const strands = strandsOf(reps, metrics, conditionsOf(reps, profile), judge(reps, metrics, facility), find);
    return [{ reps, strands }];
  });
  return bridgesIn(measured);
}
