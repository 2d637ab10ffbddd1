import type { Drill } from "../schema/pages.ts";
import type { AthleteSeason } from "../schema/season.ts";
import type { AthleteReport, Series } from "./schema.ts";
import { unmeasuredBlocks, workingRows } from "./work.ts";

type Priority = NonNullable<AthleteReport["assessment"]>["priorities"][number];

/**
 * Each priority of the assessment as a strand through the season: what was done for it (swings and days of its drills, measured or only logged), what
 * moved (the measures of its metrics, in their own order, whatever their verdict), and what is next (items of the program with its drills).
 */
export function prioritiesOf(
  athlete: AthleteSeason,
  drills: readonly Drill[],
  period: { readonly start: string; readonly end: string },
  series: readonly Series[],
): Priority[] {
  const { reps, log, assessment, plan } = athlete;
  const rows = workingRows(reps, period);
  const logged = unmeasuredBlocks(log, reps).filter(({ date }) => date >= period.start && date <= period.end);
  const items = plan?.front.items ?? [];
  return (assessment?.front.priorities ?? []).map(({ id, text, measures = [], drills: own = [] }) => ({
    id,
    text,
    did: own.map((drill) => {
      const swung = rows.filter((row) => reps.words.drill?.[row] === drill);
      const blocks = logged.filter(({ context }) => context.drill === drill);
      const known = drills.find((one) => one.id === drill);
      return {
        drill,
        label: known?.label ?? drill,
        swings: swung.length,
        logged: blocks.reduce((sum, { swings }) => sum + (swings ?? 0), 0),
        days: new Set([...swung.map((row) => reps.date[row]!), ...blocks.map(({ date }) => date)]).size,
      };
    }),
    moved: series.flatMap((one, index) => (one.measure !== null && measures.includes(one.metric) ? [index] : [])),
    next: items.flatMap(({ drill }, index) => (own.includes(drill) ? [index] : [])),
  }));
}
