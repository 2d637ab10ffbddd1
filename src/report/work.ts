import type { Facility } from "../schema/facility.ts";
import type { RepTable } from "../schema/season.ts";
import type { Block } from "../schema/tables.ts";
import { dayOf, isoDay, mondayOf, WEEK_MS } from "./calendar.ts";
import type { AthleteReport } from "./schema.ts";

type Work = AthleteReport["work"];

/**
 * Swings that the session log plans for one athlete on unmeasured blocks, by day. A row that names the athlete stands in
 * place of the group's row for the same block.
 */
export function unmeasuredByDay(
  blocks: readonly Block[],
  athlete: string,
  groups: NonNullable<Facility["groups"]>,
): Map<string, number> {
  const mine = new Set(groups.filter((group) => group.members.includes(athlete)).map((group) => group.id));
  const chosen = new Map<string, Block>();
  for (const row of blocks) {
    const own = row.athlete_id === athlete;
    if (!own && !(row.athlete_id === undefined && row.group !== undefined && mine.has(row.group))) continue;
    const key = JSON.stringify([row.date, row.session, row.block, row.part]);
    if (own || !chosen.has(key)) chosen.set(key, row);
  }
  const byDay = new Map<string, number>();
  for (const row of chosen.values()) {
    if (row.measured !== "none") continue;
    byDay.set(row.date, (byDay.get(row.date) ?? 0) + (row.rounds ?? 1) * (row.reps ?? 0));
  }
  return byDay;
}

/** Index of the reps that are work: real swings inside the season, whatever was measured on them. */
function workingRows(reps: RepTable, season: { start: string; end: string }): number[] {
  const { swing_type: swingType, result } = reps.words;
  return reps.date.flatMap((date, i) =>
    date >= season.start && date <= season.end && result?.[i] !== "take" && swingType?.[i] !== "practice" ? [i] : [],
  );
}

function environmentsIn(reps: RepTable, rows: readonly number[]): Work["weeks"][number]["byEnvironment"] {
  const counts = new Map<string | null, number>();
  for (const i of rows) {
    const environment = reps.words.environment?.[i] ?? null;
    counts.set(environment, (counts.get(environment) ?? 0) + 1);
  }
  return [...counts]
    .map(([environment, swings]) => ({ environment, swings }))
    .sort((a, b) => ((a.environment ?? "~") < (b.environment ?? "~") ? -1 : 1));
}

/** Work per week, Monday to Sunday, over the whole season; weeks without work are there with zeros. */
export function workOf(
  reps: RepTable,
  season: { readonly start: string; readonly end: string },
  unmeasured: ReadonlyMap<string, number>,
): Work {
  const rows = workingRows(reps, season);
  const byWeek = new Map<number, number[]>();
  for (const i of rows) {
    const week = mondayOf(reps.day[i]!);
    const found = byWeek.get(week);
    if (found) found.push(i);
    else byWeek.set(week, [i]);
  }
  const logged = [...unmeasured].filter(([date]) => date >= season.start && date <= season.end);
  const weeks: Work["weeks"] = [];
  for (let week = mondayOf(dayOf(season.start)); week <= dayOf(season.end); week += WEEK_MS) {
    const inWeek = byWeek.get(week) ?? [];
    const loggedDays = logged.filter(([date]) => mondayOf(dayOf(date)) === week);
    weeks.push({
      start: isoDay(week),
      days: new Set([...inWeek.map((i) => reps.date[i]!), ...loggedDays.map(([date]) => date)]).size,
      swings: inWeek.length,
      byEnvironment: environmentsIn(reps, inWeek),
      loggedUnmeasured: loggedDays.reduce((sum, [, swings]) => sum + swings, 0),
    });
  }
  return {
    weeks,
    days: weeks.reduce((sum, week) => sum + week.days, 0),
    swings: rows.length,
    loggedUnmeasured: weeks.reduce((sum, week) => sum + week.loggedUnmeasured, 0),
    busiestWeek: weeks.reduce((most, week) => Math.max(most, week.swings + week.loggedUnmeasured), 0),
  };
}
