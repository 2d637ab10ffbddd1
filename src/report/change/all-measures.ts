import { holm } from "../../stats/multiplicity.ts";
import type { Series } from "../schema.ts";
import { isChange } from "./verdict.ts";

/** Below it, a change is beyond chance. */
const LEVEL = 0.05;

/**
 * The series with what their verdicts are worth when all of an athlete's measures are counted: one in twenty measures "changes" by
 * chance alone. Holm's correction over every measure that was tested; the verdicts themselves stay, and `holds` says whether they would
 * stand (Holm 1979, Scand J Stat 6:65-70).
 */
export function allMeasuresCounted(series: readonly Series[]): Series[] {
  const tested = series.flatMap(({ change }) => (change !== null && change.p !== null ? [change] : []));
  const adjusted = holm(tested.map(({ p }) => p!));
  const byChange = new Map(tested.map((change, i) => [change, adjusted[i]!]));
  return series.map((one) => {
    const pHolm = one.change === null ? undefined : byChange.get(one.change);
    if (one.change === null || pHolm === undefined) return one;
    const holds = isChange(one.change.verdict) ? pHolm < LEVEL : null;
    return { ...one, change: { ...one.change, pHolm, holds } };
  });
}
