import { mannKendall } from "../stats/mann-kendall.ts";
import { ols } from "../stats/ols.ts";
import { olsAt } from "../stats/ols-at.ts";
import { sessionLine } from "../stats/session-line.ts";
import { theilSen } from "../stats/theil-sen.ts";
import type { Series, SessionValue } from "./schema.ts";
import { weeksOf } from "./sessions.ts";

/**
 * Change over the span and the trend of a series, from one value per session against real dates. Session means are the
 * unit: swings of one day share the day. Fewer than three sessions, or all on one day, have no line.
 */
export function trendOf(
  sessions: readonly SessionValue[],
  smallestWorthwhile: number | null,
): { readonly change: Series["change"]; readonly trend: Series["trend"] } {
  const weeks = weeksOf(sessions);
  const values = sessions.map((session) => session.mean);
  const line = sessionLine(weeks, values);
  const fit = ols(weeks, values);
  const sen = theilSen(weeks, values);
  const kendall = mannKendall(values);

  const trend: Series["trend"] = {
    sessionLine: null,
    mixed: null,
    theilSen:
      sen.kind === "line"
        ? { perWeek: sen.slope, ci95: [sen.interval?.lower ?? null, sen.interval?.upper ?? null] }
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
