import type { Facility } from "../../schema/facility.ts";
import { tTwoSidedP } from "../../stats/distributions.ts";
import { type Interval, tInterval } from "../../stats/interval.ts";
import { mean } from "../../stats/mean.ts";
import type { PooledScatter } from "../group-facts.ts";
import type { Series } from "../schema.ts";
import { type TestWindows, testWindows, withinWindows } from "./test-days.ts";

/** Test days at either end from which a change is judged. */
const DAYS_FOR_A_VERDICT = 2;

/** A difference between the two ends of a season, from few days at each. */
export interface WindowChange {
  readonly method: "test-windows" | "two-tests";
  readonly estimate: number;
  readonly ci95: Interval;
  readonly ci90: Interval;
  readonly df: number;
  readonly p: number | null;
  /** Whether the noise of the group stands behind it; without, no verdict. */
  readonly judged: boolean;
  /** One day at an end: more than two tests without a change would show? */
  readonly beyondNoise: boolean | null;
}

function difference({ first, last }: TestWindows, sd: number, df: number) {
  const estimate = (mean(last) ?? 0) - (mean(first) ?? 0);
  const se = sd * Math.sqrt(1 / first.length + 1 / last.length);
  const ci95 = tInterval(estimate, se, df, 0.95);
  const ci90 = tInterval(estimate, se, df, 0.9);
  if (ci95 === null || ci90 === null) return null;
  return { estimate, ci95, ci90, df, p: se === 0 ? null : tTwoSidedP(estimate / se, df) };
}

/**
 * Two test days or more in both windows: the difference of the windows' means, judged by the larger of the athlete's own
 * day-to-day SD and the group's, with the group's degrees of freedom. An athlete whose days scatter more than everybody's is not called
 * changed for it; one whose few days happen to agree is not trusted more than the test deserves. Without a group there is the
 * athlete's own SD and no verdict.
 *
 * @returns null when a window holds fewer than two days
 */
export function windowChange(windows: TestWindows, group: PooledScatter | null): WindowChange | null {
  if (Math.min(windows.first.length, windows.last.length) < DAYS_FOR_A_VERDICT) return null;
  const { squares, df } = withinWindows(windows);
  const own = Math.sqrt(squares / df);
  const found = group === null ? difference(windows, own, df) : difference(windows, Math.max(own, group.sd), group.df);
  return found && { method: "test-windows", ...found, judged: group !== null, beyondNoise: null };
}

/** Degrees of freedom of a figure that the trainer set: taken as known. */
const KNOWN_DF = 1e6;

/**
 * One day at an end: the difference against what two measurements of an unchanged athlete differ by. Never a verdict.
 *
 * @returns null when an end has no day, or when the noise is not known
 */
export function fewDaysChange(windows: TestWindows, noise: Series["noise"]): WindowChange | null {
  if (noise === null || Math.min(windows.first.length, windows.last.length) < 1) return null;
  const { typicalError, mdc95, df } = noise;
  const found = difference(windows, typicalError, df ?? KNOWN_DF);
  if (found === null) return null;
  // MDC95 is for one day against one; a mean of several days is surer.
  const most = (mdc95 / Math.SQRT2) * Math.sqrt(1 / windows.first.length + 1 / windows.last.length);
  const beyondNoise = Math.abs(found.estimate) > most;
  return { method: "two-tests", ...found, p: null, judged: false, beyondNoise };
}

/** The days of a test at both ends: the season's windows where both hold one, else the first and the last of all days. */
export function endsOf(
  days: readonly { readonly date: string; readonly mean: number }[],
  season: Facility["season"],
): TestWindows {
  const windows = testWindows(days, season);
  if (windows.first.length > 0 && windows.last.length > 0) return windows;
  const values = days.map((day) => day.mean);
  return { first: values.slice(0, 1), last: values.slice(-1) };
}
