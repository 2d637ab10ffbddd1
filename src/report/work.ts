import type { LoggedBlock, RepTable } from "../schema/season.ts";
import { dayOf, isoDay, mondayOf, WEEK_MS } from "./calendar.ts";
import type { AthleteReport } from "./schema.ts";

type Work = AthleteReport["work"];

/**
 * Blocks of one athlete's session log that nobody measured: those that say so, and those that no rep was given to, on a day on which
 * every rep has its block. (Reps that tell their own environment may be any block's.)
 */
export function unmeasuredBlocks(log: readonly LoggedBlock[], reps: RepTable): LoggedBlock[] {
  const { assigned } = reps.words;
  const free = new Set(reps.date.filter((_, i) => (assigned?.[i] ?? null) === null));
  return log.filter(({ date, measured, assigned: given }) => {
    const empty = Object.keys(given).length === 0;
    return measured === "none" || (empty && !free.has(date));
  });
}

/** Swings of the blocks that nobody measured, by day. */
export function unmeasuredByDay(log: readonly LoggedBlock[], reps: RepTable): Map<string, number> {
  const byDay = new Map<string, number>();
  for (const { date, swings } of unmeasuredBlocks(log, reps)) byDay.set(date, (byDay.get(date) ?? 0) + (swings ?? 0));
  return byDay;
}

/** Index of the reps that are work: real swings inside the season, whatever was measured on them. */
export function workingRows(reps: RepTable, season: { start: string; end: string }): number[] {
  const { swing_type: swingType, result, pairing } = reps.words;
  return reps.date.flatMap((date, i) => {
    const swung = result?.[i] !== "take" && swingType?.[i] !== "practice" && pairing?.[i] !== "no-swing";
    return date >= season.start && date <= season.end && swung ? [i] : [];
  });
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
