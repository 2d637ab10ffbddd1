import { mannKendall } from "../stats/mann-kendall.ts";
import { ols } from "../stats/ols.ts";
import { olsAt } from "../stats/ols-at.ts";
import { type EstimatedShift, sessionLine } from "../stats/session-line.ts";
import { theilSen } from "../stats/theil-sen.ts";
import type { Series, SessionValue } from "./schema.ts";
import { weeksOf } from "./sessions.ts";

/**
 * Change over the span and the trend of a series, from one value per session against real dates. Session means are the
 * unit: swings of one day share the day. Fewer than three sessions, or all on one day, have no line.
 *
 * Where a line was joined over bridges, the offsets' errors stand in the intervals of the change and the session line. Theil-Sen's
 * and Mann-Kendall's own errors know nothing of them, so such a line has the first without interval and not the second.
 *
 * @param shifts the offsets that stand in the sessions' means, with their errors
 */
export function trendOf(
  sessions: readonly SessionValue[],
  smallestWorthwhile: number | null,
  shifts: readonly EstimatedShift[] = [],
): { readonly change: Series["change"]; readonly trend: Series["trend"] } {
  const weeks = weeksOf(sessions);
  const values = sessions.map((session) => session.mean);
  const line = sessionLine(weeks, values, shifts);
  const fit = ols(weeks, values);
  const sen = theilSen(weeks, values);
  const joined = shifts.length > 0;
  const kendall = joined ? null : mannKendall(values);
  const senInterval = sen.kind === "line" && !joined ? sen.interval : null;

  const trend: Series["trend"] = {
    sessionLine: null,
    mixed: null,
    theilSen:
      sen.kind === "line"
        ? { perWeek: sen.slope, ci95: [senInterval?.lower ?? null, senInterval?.upper ?? null] }
        : null,
    ols: null,
    mannKendall: kendall && { s: kendall.s, varS: kendall.varS, z: kendall.z, p: kendall.pRecommended },
  };
  if (line.kind !== "line" || fit.kind !== "line") return { change: null, trend };
  const { ci95, ci90, ci95PerWeek, sePerWeek } = line;
  if (!ci95 || !ci90 || !ci95PerWeek || sePerWeek === null) return { change: null, trend };

  const fitted = (week: number) => olsAt(fit, week).fit;
  return {
    change: {
      estimate: line.change,
      ci95: [...ci95],
      ci90: [...ci90],
      df: line.df,
      method: "session-line",
      smallestWorthwhile,
      verdict: null,
    },
    trend: {
      ...trend,
      sessionLine: {
        perWeek: line.perWeek,
        se: sePerWeek,
        df: line.df,
        ci95: [...ci95PerWeek],
        lag1: null,
        inflation: null,
        start: fitted(weeks[0]!),
        end: fitted(weeks.at(-1)!),
      },
      ols: { perWeek: line.perWeek, ci95: [...ci95PerWeek] },
    },
  };
}
