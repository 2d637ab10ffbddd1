import type { Metric } from "../schema/metric.ts";
import type { Profile } from "../schema/profile.ts";
import { mean } from "../stats/mean.ts";
import { type Break, deviceBreaks, type Use } from "./device-breaks.ts";
import type { DeviceLine } from "./device-lines.ts";
import type { Strand } from "./group.ts";
import type { MeasuredBy } from "./measured-by.ts";
import { pool, repsIn } from "./pool.ts";
import type { Condition, Series } from "./schema.ts";
import type { SessionReps } from "./sessions.ts";

/** Metrics that a new game bat moves by itself. */
const MOVED_BY_A_BAT: readonly string[] = ["bat_speed", "exit_velocity"];

/** What can break a line: the devices as the trainer keeps them, and the athlete's own bats. */
export interface SetUps {
  readonly lines: readonly DeviceLine[];
  readonly gameBats: Profile["game_bat"];
}

/** Days from which the athlete's game bat is another one. */
function batBreaks(metric: Metric, conditions: readonly Condition[], bats: Profile["game_bat"]): Break[] {
  const withGameBat = conditions.some((condition) => condition.implement === "game");
  if (!Array.isArray(bats) || !withGameBat || !MOVED_BY_A_BAT.includes(metric.id)) return [];
  const inOrder = [...bats].sort((a, b) => (a.from < b.from ? -1 : 1));
  return inOrder.slice(1).map(({ id, from }) => ({ date: from, kind: "game-bat", to: id, line: null }));
}

/** What measured the parts of a series, day by day, in order of date. */
export function usesOf(parts: readonly Strand[]): Use[] {
  const uses = new Map<string, Use & { n: number }>();
  for (const { date, by } of parts.flatMap((part) => part.sessions)) {
    // Swings of like circumstances share one object.
    const counts = new Map<MeasuredBy, number>();
    for (const one of by) counts.set(one, (counts.get(one) ?? 0) + 1);
    for (const [{ line, place }, n] of counts) {
      const key = `${date} ${line} ${place}`;
      const found = uses.get(key);
      if (found) found.n += n;
      else uses.set(key, { date, line, place, n });
    }
  }
  return [...uses.values()].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

/**
 * The days on which the set-up of a series changed: a change in devices.csv that touches its swings, or a new game bat. Swings
 * before and after such a day are not one line.
 *
 * @param parts the strands of the series, all of one metric; one where it is not pooled
 * @param uses  of these parts
 * @returns in order of date, after the first session and up to the last; empty when the set-up stayed
 */
export function breaksOf(parts: readonly Strand[], uses: readonly Use[], { lines, gameBats }: SetUps): Break[] {
  const { metric } = parts[0]!;
  const first = uses[0]?.date;
  const last = uses.at(-1)?.date;
  if (first === undefined || last === undefined) return [];
  const bats = batBreaks(
    metric,
    parts.map((part) => part.condition),
    gameBats,
  ).filter(({ date }) => date > first && date <= last);
  return [...deviceBreaks(metric, uses, lines), ...bats].sort((a, b) =>
    a.date < b.date ? -1 : a.date > b.date ? 1 : 0,
  );
}

/**
 * Number of breaks before a value. A break falls on its date; on that day a value that another known device measured still
 * belongs before it.
 */
function breaksBefore(date: string, by: MeasuredBy, breaks: readonly Break[]): number {
  return breaks.filter(
    (one) => date > one.date || (date === one.date && (one.line === null || by.line === null || by.line === one.line)),
  ).length;
}

/** A session by the stretch its values belong to; only the day of a break may fall apart. */
function cutAt(breaks: readonly Break[], session: SessionReps): Map<number, SessionReps> {
  const { date, by } = session;
  if (breaks.every((one) => one.date !== date)) return new Map([[breaksBefore(date, by[0]!, breaks), session]]);
  const stretches = by.map((one) => breaksBefore(date, one, breaks));
  return new Map(
    [...new Set(stretches)].map((stretch) => {
      const inside = <T>(list: readonly T[]) => list.filter((_, i) => stretches[i] === stretch);
      return [
        stretch,
        { ...session, values: inside(session.values), rows: inside(session.rows), by: inside(session.by) },
      ];
    }),
  );
}

/**
 * The stretches between breaks with their sessions' mean, as measured; one stretch when there is no break. On the day of a break
 * that both devices measured, each rep belongs to its own device's stretch, so that the day counts in both.
 */
export function stretchesOf(parts: readonly Strand[], breaks: readonly Break[]): Series["stretches"] {
  const weights = parts.map(repsIn);
  const cut = parts.map((part) => part.sessions.map((session) => cutAt(breaks, session)));
  return Array.from({ length: breaks.length + 1 }, (_, stretch) => stretch).flatMap((stretch) => {
    const inside = parts.map((part, p) => ({
      ...part,
      sessions: cut[p]!.flatMap((session) => session.get(stretch) ?? []),
    }));
    const { sessions, centers } = pool(inside, weights);
    const value = mean(centers);
    if (value === null) return [];
    const n = sessions.reduce((sum, session) => sum + session.values.length, 0);
    return [{ from: sessions[0]!.date, to: sessions.at(-1)!.date, sessions: sessions.length, n, mean: value }];
  });
}
