import type { AthleteReport, GoalReport, Series } from "../../report/schema.ts";
import { ENVIRONMENTS } from "../../schema/columns.ts";
import { plainFigure, type Reading } from "../reading.ts";
import { plainName } from "./names.tsx";

/** A series with the JSON pointer that leads to it. */
export interface Placed {
  readonly series: Series;
  readonly at: string;
  readonly index: number;
}

/** Sessions from which a page prints the change of a line: with fewer its range is so wide that it tells a reader nothing. */
const SESSIONS_FOR_A_LINE = 5;

/** The series as a page speaks of it: few days have a change only where tests are held against their noise. */
function spokenOf(series: Series): Series {
  const byTests = series.change?.method === "test-windows" || series.change?.method === "two-tests";
  if (series.sessionCount >= SESSIONS_FOR_A_LINE || byTests) return series;
  return { ...series, change: null, trend: { ...series.trend, sessionLine: null } };
}

const placed = (report: AthleteReport): Placed[] =>
  report.series.map((series, index) => ({ series: spokenOf(series), at: `/series/${index}`, index }));

/** The season's measures in the facility's order; several series of one measure keep the report's order. */
export function measuresOf(report: AthleteReport): Placed[] {
  return placed(report)
    .filter(({ series }) => series.measure !== null && series.sessions.length > 0)
    .sort((a, b) => (a.series.measure ?? 0) - (b.series.measure ?? 0) || a.index - b.index);
}

/** Everything else that has values. */
export function othersOf(report: AthleteReport): Placed[] {
  return placed(report).filter(({ series }) => series.measure === null && series.sessions.length > 0);
}

/** Id of the chart of a series. */
export const trendId = (index: number): string => `trend-${index}`;

/** Id of the chart of a drill's aim. */
export const aimId = (index: number): string => `aim-${index}`;

/** Id of the chart that puts a series beside peers. */
export const peersId = (index: number): string => `peers-${index}`;

/** The sentence that stands for a picture of peers. */
export function peersAlt(reading: Reading, series: Series, at: string): string {
  const { words } = reading;
  const style = { unit: series.unit, decimals: series.decimals };
  const figure = (pointer: string) => plainFigure(reading, `${at}/peers/${pointer}`, style);
  const common = {
    metric: plainName(words, "metric", series.metric),
    middle: figure("bands/p50"),
    low: figure("bands/p10"),
    high: figure("bands/p90"),
  };
  const { start, end } = series.peers ?? { start: null, end: null };
  if (start === null || end === null) return words.text("peers.alt", common);
  return words.text("peers.altEnds", { ...common, start: figure("start/value"), end: figure("end/value") });
}

/** Sessions are training days unless the trainer named several of one day. */
export function sessionWord(series: Series): "count.days" | "count.sessions" {
  return series.sessions.some(({ session }) => session !== null) ? "count.sessions" : "count.days";
}

/** The same as a word for sentences that speak of days or sessions in general; of several series, sessions if any has them. */
export function sessionsOrDays(...series: readonly Series[]): "sessions" | "days" {
  return series.some((one) => sessionWord(one) === "count.sessions") ? "sessions" : "days";
}

/** Does an interval hold zero? A reading of the figures, not a verdict on them. */
export function takesInZero([low, high]: readonly [number, number]): boolean {
  return low <= 0 && high >= 0;
}

/** Measures of one metric in several settings, where each has a start and an end: what a hitter carries from one to the next. */
export function sideBySide(report: AthleteReport): Placed[][] {
  const byMetric = new Map<string, Placed[]>();
  for (const placed of measuresOf(report)) {
    const { first, last, metric } = placed.series;
    if (first !== null && last !== null) byMetric.set(metric, [...(byMetric.get(metric) ?? []), placed]);
  }
  return [...byMetric.values()].filter((rows) => rows.length > 1);
}

/** Id of the chart that puts a metric's settings side by side. */
export const compareId = (metric: string): string => `compare-${metric.replaceAll("_", "-")}`;

/** Charts that fit on the club's one page. */
const CLUB_CHARTS = 3;

/** How near to a game a series is; the closed list of environments runs from dry swings to games. */
const nearness = ({ series }: Placed): number =>
  (ENVIRONMENTS as readonly (string | undefined)[]).indexOf(series.condition.environment);

/** Measures to draw for a club: each metric once, in the setting nearest to a game; then others while there is room. */
export function clubCharts(report: AthleteReport): Placed[] {
  const drawable = measuresOf(report).filter(({ series }) => series.sessions.length > 1);
  const nearest = new Map<string, Placed>();
  for (const placed of drawable) {
    const known = nearest.get(placed.series.metric);
    if (known === undefined || nearness(placed) > nearness(known)) nearest.set(placed.series.metric, placed);
  }
  const first = [...nearest.values()];
  return [...first, ...drawable.filter((placed) => !first.includes(placed))].slice(0, CLUB_CHARTS);
}

const sameCondition = (a: object, b: object): boolean => {
  const key = (condition: object) => JSON.stringify(Object.entries(condition).sort(([x], [y]) => (x < y ? -1 : 1)));
  return key(a) === key(b);
};

/** Is the goal about just this series? */
export function isGoalOf(goal: GoalReport, series: Series): boolean {
  return goal.metric === series.metric && sameCondition(goal.condition, series.condition);
}

/** The series that a goal is about, where the report has it. */
export function seriesOfGoal(report: AthleteReport, goal: GoalReport): Placed | null {
  return placed(report).find(({ series }) => isGoalOf(goal, series)) ?? null;
}
