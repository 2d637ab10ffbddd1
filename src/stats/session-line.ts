import { type Interval, tInterval } from "./interval.ts";
import type { NoLine } from "./no-line.ts";
import { ols } from "./ols.ts";
import type { Sample } from "./sample.ts";

/**
 * Change over a season from one value per session. The unit of analysis is the session: repetitions of one day share
 * the day, so they are summarised before they come here.
 */
export interface SessionLine {
  readonly kind: "line";
  /** Sessions. */
  readonly n: number;
  /** Slope, units of the value per week. */
  readonly perWeek: number;
  /** Its standard error; null with 2 sessions. */
  readonly sePerWeek: number | null;
  /** n - 2. */
  readonly df: number;
  readonly ci95PerWeek: Interval | null;
  /** Weeks from the first to the last session, above 0. */
  readonly spanWeeks: number;
  /** perWeek x spanWeeks, in the unit of the value. */
  readonly change: number;
  readonly ci95: Interval | null;
  readonly ci90: Interval | null;
}

/**
 * Least-squares line through session values against real time, read as the change over the span. The standard error is
 * the plain one: likeness of neighbouring sessions (lag-1) is not allowed for.
 *
 * @param weeks  time of each session in weeks from any fixed day, in any order
 * @param values one value per session, in one unit
 * @returns the line; `no-line` with fewer than 2 sessions or all at one time. Intervals are null with 2 sessions
 * @throws {RangeError} unequal lengths; NaN, an infinite value or one above 1e150 in size
 * @example sessionLine([0, 1, 2], [60, 62, 61]).change // => 1: 0.5 per week over 2 weeks
 */
export function sessionLine(weeks: Sample, values: Sample): SessionLine | NoLine {
  const line = ols(weeks, values, 0.95);
  if (line.kind === "no-line") return line;
  const [first, last] = extent(weeks);
  const spanWeeks = last - first;
  const change = line.slope * spanWeeks;
  const seChange = line.seSlope === null ? null : line.seSlope * spanWeeks;
  return {
    kind: "line",
    n: line.n,
    perWeek: line.slope,
    sePerWeek: line.seSlope,
    df: line.df,
    ci95PerWeek: line.ciSlope,
    spanWeeks,
    change,
    ci95: tInterval(change, seChange, line.df, 0.95),
    ci90: tInterval(change, seChange, line.df, 0.9),
  };
}

/** Smallest and largest of at least one value. */
function extent(values: Sample): [number, number] {
  let low = values[0]!;
  let high = low;
  for (let i = 1; i < values.length; i += 1) {
    low = Math.min(low, values[i]!);
    high = Math.max(high, values[i]!);
  }
  return [low, high];
}
