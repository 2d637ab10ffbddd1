import { tTwoSidedP } from "../../stats/distributions.ts";
import { type Interval, tInterval } from "../../stats/interval.ts";
import { lag1Inflation } from "../../stats/lag1-inflation.ts";
import { mannKendall } from "../../stats/mann-kendall.ts";
import { mean } from "../../stats/mean.ts";
import { type OlsLine, ols } from "../../stats/ols.ts";
import { type RandomInterceptSlope, randomInterceptSlope } from "../../stats/random-intercept.ts";
import { type EstimatedShift, type SessionLine, sessionLine } from "../../stats/session-line.ts";
import { theilSen } from "../../stats/theil-sen.ts";
import type { Look } from "./second-look.ts";

/** One value per session against real time, and the reps behind it where they may be used one by one. */
export interface SessionValues {
  readonly weeks: readonly number[];
  /** In order of day. */
  readonly means: readonly number[];
  /** Reps of each session; null where a session's value is not their plain mean. */
  readonly reps: readonly (readonly number[])[] | null;
  readonly shifts: readonly EstimatedShift[];
}

/** The change over the span by the rule that fits the counts. */
export interface Primary {
  readonly method: "session-line" | "mixed";
  readonly estimate: number;
  readonly ci95: Interval;
  readonly ci90: Interval;
  readonly df: number;
  /** Two-sided; null where the sessions lie exactly on a line. */
  readonly p: number | null;
}

/** Everything that is computed of one line of sessions. */
export interface Looked {
  readonly line: SessionLine;
  readonly fit: OlsLine;
  readonly mixed: RandomInterceptSlope | null;
  readonly primary: Primary;
  readonly sen: Look | null;
  /** Values stand on estimated shifts. */
  readonly joined: boolean;
  readonly kendall: ReturnType<typeof mannKendall>;
}

/** Counts beyond this ratio, or sessions of one or two reps, do not weigh alike. */
const UNLIKE_COUNTS = 3;
const TINY_SESSION = 2;

function unlike(reps: readonly (readonly number[])[]): boolean {
  const counts = reps.map((values) => values.length);
  const least = Math.min(...counts);
  const most = Math.max(...counts);
  // Equal counts weigh alike however small they are: the line through the means is then the model's own.
  return most > UNLIKE_COUNTS * least || (least <= TINY_SESSION && most > least);
}

const changeOf = (perWeek: number, se: number, df: number, spanWeeks: number) => {
  const estimate = perWeek * spanWeeks;
  const ci95 = tInterval(estimate, se * spanWeeks, df, 0.95);
  const ci90 = tInterval(estimate, se * spanWeeks, df, 0.9);
  if (ci95 === null || ci90 === null) return null;
  return { estimate, ci95, ci90, df, p: se === 0 ? null : tTwoSidedP(perWeek / se, df) };
};

/** The mixed model's change, widened for the likeness of neighbouring sessions like the plain line. */
function mixedChange(mixed: RandomInterceptSlope, { weeks, means }: SessionValues, line: SessionLine) {
  const center = mean(weeks) ?? 0;
  const left = means.map((value, i) => value - mixed.slope * (weeks[i]! - center));
  const level = mean(left) ?? 0;
  const { inflation, df } = lag1Inflation(left.map((value) => value - level));
  return changeOf(mixed.slope, mixed.se * inflation, Math.min(mixed.df, line.n - 2, df), line.spanWeeks);
}

/**
 * Looks at one line of sessions in every way that the report shows.
 *
 * The primary change is the line through session means. Where sessions hold very unlike numbers of reps (more than 3 to 1, or one
 * or two in some), it is the random-intercept model, which weighs them by what they are worth; not where a session's value is not
 * the plain mean of its reps, or stands on an estimated shift.
 *
 * Where a line was joined over bridges, Sen's interval, Mann-Kendall's p and the plain least-squares interval know nothing of the
 * offsets' errors: they are not given.
 *
 * @returns null with fewer than three sessions or all on one day
 */
export function lookAt(values: SessionValues): Looked | null {
  const { weeks, means, reps, shifts } = values;
  const line = sessionLine(weeks, means, shifts);
  const fit = ols(weeks, means);
  if (line.kind !== "line" || fit.kind !== "line" || line.sePerWeek === null) return null;
  const plain = changeOf(line.perWeek, line.sePerWeek, line.df, line.spanWeeks);
  if (plain === null) return null;
  const joined = shifts.length > 0;
  const model = reps === null || joined ? null : randomInterceptSlope(weeks, reps);
  const mixed = model !== null && model.kind === "line" ? model : null;
  const weighed = mixed !== null && reps !== null && unlike(reps) ? mixedChange(mixed, values, line) : null;
  const sen = theilSen(weeks, means);
  const interval = sen.kind === "line" && !joined ? sen.interval : null;
  return {
    line,
    fit,
    mixed,
    primary: weighed === null ? { method: "session-line", ...plain } : { method: "mixed", ...weighed },
    sen: sen.kind === "line" ? { slope: sen.slope, interval: interval && [interval.lower, interval.upper] } : null,
    joined,
    kendall: joined ? null : mannKendall(means),
  };
}
