import type { Metric } from "../schema/metric.ts";
import type { Profile } from "../schema/profile.ts";
import type { Device } from "../schema/tables.ts";
import { mean } from "../stats/mean.ts";
import type { Strand } from "./group.ts";
import type { Condition, Series, SessionValue } from "./schema.ts";

type Break = Series["breaks"][number];

/** Metrics that a new game bat moves by itself. */
const MOVED_BY_A_BAT: readonly string[] = ["bat_speed", "exit_velocity"];

/** What can break a line: the devices as the trainer keeps them, and the athlete's own bats. */
export interface SetUps {
  readonly devices: readonly Device[];
  readonly gameBats: Profile["game_bat"];
}

/** Days on which a device that these swings name was put into use, or changed, between their first and last day. */
function deviceBreaks(metric: Metric, used: ReadonlySet<string>, devices: readonly Device[]): Break[] {
  if (metric.side === "own") return [];
  const kind = metric.side === "bat" ? "bat-sensor" : "ball-screen";
  return devices.flatMap(({ id, from }) =>
    from !== undefined && used.has(id) ? [{ date: from, kind, to: id } as const] : [],
  );
}

/** Days from which the athlete's game bat is another one. */
function batBreaks(metric: Metric, conditions: readonly Condition[], bats: Profile["game_bat"]): Break[] {
  const withGameBat = conditions.some((condition) => condition.implement === "game");
  if (!Array.isArray(bats) || !withGameBat || !MOVED_BY_A_BAT.includes(metric.id)) return [];
  const inOrder = [...bats].sort((a, b) => (a.from < b.from ? -1 : 1));
  return inOrder.slice(1).map(({ id, from }) => ({ date: from, kind: "game-bat", to: id }));
}

/**
 * The days on which the set-up of a series changed: a device named by its swings that devices.csv puts into use inside the
 * series, or a new game bat. Swings before and after such a day are not one line.
 *
 * @param parts the strands of the series, all of one metric; one where it is not pooled
 * @returns in order of date; empty when the set-up stayed
 */
export function breaksOf(parts: readonly Strand[], sessions: readonly SessionValue[], setUps: SetUps): Break[] {
  const { metric } = parts[0]!;
  const first = sessions[0]?.date;
  const last = sessions.at(-1)?.date;
  if (first === undefined || last === undefined) return [];
  const used = new Set(parts.flatMap((part) => [...part.devices]));
  const conditions = parts.map((part) => part.condition);
  return [...deviceBreaks(metric, used, setUps.devices), ...batBreaks(metric, conditions, setUps.gameBats)]
    .filter(({ date }) => date > first && date <= last)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

/** The stretches between breaks with their sessions' mean; one stretch when there is no break. */
export function stretchesOf(sessions: readonly SessionValue[], breaks: readonly Break[]): Series["stretches"] {
  const starts = ["", ...new Set(breaks.map((one) => one.date))];
  return starts.flatMap((start, i) => {
    const next = starts[i + 1];
    const inside = sessions.filter(({ date }) => date >= start && (next === undefined || date < next));
    const value = mean(inside.map((session) => session.mean));
    if (value === null) return [];
    const n = inside.reduce((sum, session) => sum + session.n, 0);
    return [{ from: inside[0]!.date, to: inside.at(-1)!.date, sessions: inside.length, n, mean: value }];
  });
}
