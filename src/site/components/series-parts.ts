import type { AthleteReport, Series } from "../../report/schema.ts";

/** A series with the JSON pointer that leads to it. */
export interface Placed {
  readonly series: Series;
  readonly at: string;
  readonly index: number;
}

const placed = (report: AthleteReport): Placed[] =>
  report.series.map((series, index) => ({ series, at: `/series/${index}`, index }));

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

/** Sessions are training days unless the trainer named several of one day. */
export function sessionWord(series: Series): "count.days" | "count.sessions" {
  return series.sessions.some(({ session }) => session !== null) ? "count.sessions" : "count.days";
}

/** Does an interval hold zero? A reading of the figures, not a verdict on them. */
export function takesInZero([low, high]: readonly [number, number]): boolean {
  return low <= 0 && high >= 0;
}
