import type { RepTable } from "../schema/season.ts";
import { madSd } from "../stats/mad.ts";
import { median } from "../stats/median.ts";
import type { Strand } from "./group.ts";
import type { AthleteReport } from "./schema.ts";

/** Swings that a condition must hold before any of them is called unusual. */
export const SWINGS_TO_FLAG = 20;
/** Distance from the middle, in SDs as the MAD sees them, from which a value is flagged. */
export const FAR_SD = 6;

/**
 * Values of a strand from which a value of its own would be far off: the median and six SDs (by the median absolute deviation)
 * to either side. The SD is never taken to be less than one step of the metric's last decimal, so that a device that rounds
 * does not turn a quiet hitter's swings into odd ones.
 *
 * Six SDs are meant for misreads, not for bad swings: of normal values about 2 in a billion lie beyond, and of 20 swings, where
 * the MAD itself is unsure, about 2 in 10,000; of values with heavy tails (Student's t with 3 degrees of freedom) 7 to 9 in 1,000
 * (tests/report/flags.test.ts).
 *
 * @returns null with fewer than 20 values
 */
export function usualRange(values: readonly number[], decimals: number): readonly [number, number] | null {
  const middle = median(values);
  const spread = madSd(values);
  if (values.length < SWINGS_TO_FLAG || middle === null || spread === null) return null;
  const far = FAR_SD * Math.max(spread, 10 ** -decimals);
  return [middle - far, middle + far];
}

type Flag = AthleteReport["flags"][number];

/** The flags of one strand, in the order of its sessions. */
export function flagsOf(
  { metric, condition, sessions }: Strand,
  reps: RepTable,
  fileNames: readonly string[] | undefined,
): Flag[] {
  const range = usualRange(
    sessions.flatMap((session) => session.values),
    metric.decimals,
  );
  if (range === null) return [];
  const [low, high] = range;
  return sessions.flatMap(({ date, values, rows }) =>
    values.flatMap((value, i) => {
      if (value >= low && value <= high) return [];
      const row = rows[i]!;
      return [
        {
          metric: metric.id,
          unit: metric.unit,
          decimals: metric.decimals,
          condition,
          date,
          file: fileNames?.[reps.file[row]!] ?? null,
          line: reps.line[row]!,
          value,
          low,
          high,
          reason: "far-from-own-swings" as const,
        },
      ];
    }),
  );
}
