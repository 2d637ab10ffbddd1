import { progressOf } from "../../src/report/change/progress.ts";
import { isChange } from "../../src/report/change/verdict.ts";
import type { Strand } from "../../src/report/group.ts";
import { lineOf } from "../../src/report/line.ts";
import type { Series } from "../../src/report/schema.ts";
import type { Metric } from "../../src/schema/metric.ts";
import { type Random, randomFrom } from "../demo/random.ts";
import { weekLater } from "../report/season.ts";

/** Seasons of known truth: swings nested in sessions, put through the rules that the reports use. */
export interface Cell {
  readonly sessions: number;
  /** Correlation of one session's shift with the next one's. */
  readonly alike: number;
  /** Part of the variance of a swing that its session holds. */
  readonly share: number;
  /** Swings of a session, from and to. */
  readonly swings: readonly [number, number];
  /** True change over the season in units of the smallest that matters. */
  readonly trueChange: number;
}

export const SESSIONS = [6, 10, 20, 40] as const;
const SWINGS = [
  [8, 12],
  [4, 20],
] as const;
const SHARES = [0.3, 0.6] as const;

/** Every cell without a true change. */
export const UNCHANGED: readonly Cell[] = [0, 0.5].flatMap((alike) =>
  SESSIONS.flatMap((sessions) =>
    SHARES.flatMap((share) => SWINGS.map((swings) => ({ sessions, alike, share, swings, trueChange: 0 }))),
  ),
);

/** Cells in which something did change, for power. */
export const CHANGED: readonly Cell[] = [1, 2].flatMap((trueChange) =>
  SESSIONS.map((sessions) => ({ sessions, alike: 0, share: 0.3, swings: [8, 12] as const, trueChange })),
);

/** mph: scatter of a hitter's swings within a session, and the smallest change that matters. */
const REP_SD = 2.5;
const WORTH = 1;

const METRIC: Metric = {
  id: "bat_speed",
  unit: "mph",
  better: "higher",
  plausible: [15, 110],
  decimals: 1,
  side: "bat",
  smallestWorthwhile: WORTH,
};
const BY = { line: null, place: null };
const LINES = { setUps: { lines: [], gameBats: undefined }, bridges: [] };
const SEASON = { name: "Simulated", start: weekLater(0), end: weekLater(20) };

/** The days of a season: spread over twenty weeks, none twice. */
function days(sessions: number, random: Random): string[] {
  const span = 20 * 7;
  return Array.from({ length: sessions }, (_, i) => {
    const room = span / sessions;
    const day = Math.floor(i * room + random.uniform() * Math.min(room, 3));
    return new Date(Date.UTC(2025, 9, 6 + day)).toISOString().slice(0, 10);
  });
}

function strandOf(cell: Cell, random: Random): Strand {
  const sessionSd = Math.sqrt((cell.share / (1 - cell.share)) * REP_SD ** 2);
  let shift = random.normal(0, sessionSd);
  const sessions = days(cell.sessions, random).map((date, i) => {
    if (i > 0) shift = cell.alike * shift + random.normal(0, sessionSd * Math.sqrt(1 - cell.alike ** 2));
    const level = 60 + (cell.trueChange * WORTH * i) / (cell.sessions - 1) + shift;
    const values = Array.from({ length: random.integer(...cell.swings) }, () => random.normal(level, REP_SD));
    return { date, session: null, values, rows: values.map((_, r) => r), by: values.map(() => BY) };
  });
  return { metric: METRIC, condition: {}, sessions };
}

/** How many of a cell's seasons end in each verdict. */
export function verdicts(cell: Cell, seasons: number, seed: string): Map<string, number> {
  const counts = new Map<string, number>();
  const random = randomFrom(`${seed} ${JSON.stringify(cell)}`);
  for (let i = 0; i < seasons; i += 1) {
    const found = { condition: {}, pooled: false, parts: [strandOf(cell, random)] };
    const judging = {
      season: SEASON,
      lines: LINES,
      fact: undefined,
      group: null,
      worth: { value: WORTH, source: "configured" as const, athletes: null },
      window: null,
    };
    const verdict = progressOf(found, lineOf(found.parts, LINES), judging).change?.verdict ?? "none";
    counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
  }
  return counts;
}

/** Seasons that a verdict calls changed. */
export const changed = (counts: ReadonlyMap<string, number>): number =>
  [...counts].reduce(
    (sum, [verdict, n]) => sum + (isChange(verdict as NonNullable<Series["change"]>["verdict"]) ? n : 0),
    0,
  );
