import type { Series } from "../schema.ts";
import type { Looked } from "./primary.ts";

const NO_TREND: Series["trend"] = { sessionLine: null, mixed: null, theilSen: null, ols: null, mannKendall: null };

/** The trend of a series in every way it is looked at; nulls where there is no line. */
export function trendOf(looked: Looked | null): Series["trend"] {
  if (looked === null) return NO_TREND;
  const { line, fit, mixed, sen, kendall, joined } = looked;
  const at = (week: number) => fit.meanY + fit.slope * (week - fit.meanX);
  return {
    sessionLine:
      line.sePerWeek === null || line.ci95PerWeek === null
        ? null
        : {
            perWeek: line.perWeek,
            se: line.sePerWeek,
            df: line.df,
            ci95: [...line.ci95PerWeek],
            lag1: line.lag1,
            inflation: line.inflation,
            start: at(0),
            end: at(line.spanWeeks),
          },
    mixed: mixed && {
      perWeek: mixed.slope,
      se: mixed.se,
      df: mixed.df,
      ci95: [...mixed.ci95],
      sessionSd: mixed.sessionSd,
      repSd: mixed.repSd,
    },
    theilSen: sen && { perWeek: sen.slope, ci95: sen.interval ? [...sen.interval] : [null, null] },
    ols: joined || fit.ciSlope === null ? null : { perWeek: fit.slope, ci95: [...fit.ciSlope] },
    mannKendall: kendall && { s: kendall.s, varS: kendall.varS, z: kendall.z, p: kendall.pRecommended },
  };
}
