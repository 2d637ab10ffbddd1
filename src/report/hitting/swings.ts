import type { AthleteSeason } from "../../schema/season.ts";
import { wilson } from "../../stats/proportion-ci.ts";
import { type SessionLine, sessionLine } from "../../stats/session-line.ts";
import { dayOf, WEEK_MS } from "../calendar.ts";
import { elsewhere } from "../condition.ts";
import { feeds, type Judged } from "../gated.ts";
import type { ReportInput } from "../input.ts";
import type { Condition } from "../schema.ts";

/** What every part of the hitting report is made from. */
export interface Hitting extends Pick<Judged, "conditions" | "judged"> {
  readonly season: ReportInput["season"];
  readonly athlete: Pick<AthleteSeason, "profile" | "reps" | "log">;
}

/** Full swings made here that count for what the bat did, or for what the ball did; tests and fittings are not training. */
export function rowsFor(side: "bat" | "ball", { conditions, judged }: Hitting): number[] {
  return conditions.flatMap((condition, i) => {
    const training = condition.purpose === undefined || condition.purpose === "training";
    const mine = condition.swing === undefined && elsewhere(condition) === null;
    return feeds(side, judged[i]!) && mine && training ? [i] : [];
  });
}

/** Rows by a key, in order of first appearance; rows without one are left out. */
export function grouped(rows: readonly number[], key: (row: number) => string | null): Map<string, number[]> {
  const groups = new Map<string, number[]>();
  for (const row of rows) {
    const name = key(row);
    if (name === null) continue;
    const list = groups.get(name);
    if (list) list.push(row);
    else groups.set(name, [row]);
  }
  return groups;
}

/** Environment, bat and side of a row, as keys of the report have them. */
export interface Where {
  readonly environment: string | null;
  readonly implement: string | null;
  readonly side: string | null;
}

export const whereOf = ({ environment, implement, side }: Condition): Where => ({
  environment: environment ?? null,
  implement: implement ?? null,
  side: side ?? null,
});

export const whereKey = (condition: Condition): string => JSON.stringify(Object.values(whereOf(condition)));

/** A field of some rows where it was read. */
export function valuesOf({ athlete }: Hitting, field: string, rows: readonly number[]): number[] {
  const column = athlete.reps.numbers[field];
  return rows.flatMap((row) => {
    const value = column?.[row];
    return typeof value === "number" ? [value] : [];
  });
}

/** Mean of a field by day, over the rows where it was read. */
export function dailyMeans(
  hitting: Hitting,
  field: string,
  rows: readonly number[],
): Map<string, { mean: number; n: number }> {
  const { date } = hitting.athlete.reps;
  const days = new Map<string, { mean: number; n: number }>();
  for (const [day, ofDay] of grouped(rows, (row) => date[row]!)) {
    const values = valuesOf(hitting, field, ofDay);
    if (values.length === 0) continue;
    days.set(day, { mean: values.reduce((sum, value) => sum + value, 0) / values.length, n: values.length });
  }
  return days;
}

export const daysIn = ({ athlete }: Hitting, rows: readonly number[]): number =>
  new Set(rows.map((row) => athlete.reps.date[row]!)).size;

/** One number a day. */
export interface DayValue {
  readonly date: string;
  readonly value: number;
}

/** Days from which a line is drawn through them; with fewer it tells nothing. */
const DAYS_FOR_A_LINE = 5;

/** The line through days, or null with fewer than five or all on one day. */
export function lineThrough(days: readonly DayValue[]): (SessionLine & { start: number; end: number }) | null {
  if (days.length < DAYS_FOR_A_LINE) return null;
  const weeks = days.map(({ date }) => dayOf(date) / WEEK_MS);
  const line = sessionLine(
    weeks,
    days.map(({ value }) => value),
  );
  if (line.kind !== "line") return null;
  const [first, last] = [Math.min(...weeks), Math.max(...weeks)];
  const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
  const at = (week: number) => mean(days.map(({ value }) => value)) + line.perWeek * (week - mean(weeks));
  return { ...line, start: at(first), end: at(last) };
}

/** What a line says of the season. */
export function movedOf(line: SessionLine | null) {
  return line === null
    ? null
    : { estimate: line.change, ci95: line.ci95 && ([...line.ci95] as [number, number]), df: line.df };
}

/** A share of swings with Wilson's interval; null of none. */
export function shareOf(count: number, of: number) {
  if (of === 0) return null;
  const [low, high] = wilson(count, of, 0.95);
  return { count, of, share: count / of, ci95: [low, high] as [number, number] };
}
