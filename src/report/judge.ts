import type { Facility } from "../schema/facility.ts";
import type { Metric } from "../schema/metric.ts";
import type { NotCountedReason } from "../schema/reasons.ts";
import type { RepTable } from "../schema/season.ts";

/** Words that keep a readable rep out of every series, the first that fits deciding. */
const BY_SWING_TYPE: Readonly<Record<string, NotCountedReason>> = {
  practice: "practice",
  bunt: "bunt",
  check: "check",
};

/**
 * Why each readable rep does not count, or null where it does.
 *
 * A rep counts when it feeds at least one series or, as a miss or foul without a reading, the denominator of one.
 * Slaps count, in series of their own.
 *
 * A swing whose ball a second device should have seen and did not counts only where the facility says so; a waggle that the sensor took for a
 * swing never does.
 *
 * @param facility its season's first and last day, both included; reps of other days are `other-season`
 * @returns one entry per rep, in the order of the table
 */
export function judge(
  reps: RepTable,
  metrics: readonly Metric[],
  {
    season,
    ball_not_recorded: unseen,
  }: Pick<Facility, "ball_not_recorded"> & { readonly season: { readonly start: string; readonly end: string } },
): (NotCountedReason | null)[] {
  const { swing_type: swingType, result, effort, pairing } = reps.words;
  const columns = metrics.map((metric) => reps.numbers[metric.id]).filter((column) => column !== undefined);
  return reps.date.map((date, i) => {
    if (date < season.start || date > season.end) return "other-season";
    const byType = BY_SWING_TYPE[swingType?.[i] ?? ""];
    if (byType) return byType;
    if (result?.[i] === "take") return "take";
    if (effort?.[i] === "technical") return "technical";
    if (pairing?.[i] === "no-swing" || (pairing?.[i] === "ball-not-recorded" && unseen !== "count")) return "no-swing";
    const seen = columns.some((column) => column[i] !== null);
    return seen || result?.[i] ? null : "no-swing";
  });
}
