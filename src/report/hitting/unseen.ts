import { mean } from "../../stats/mean.ts";
import { feeds } from "../gated.ts";
import type { HittingReport } from "../hitting-schema.ts";
import { dailyMeans, grouped, type Hitting, whereKey, whereOf } from "./swings.ts";

/** Reasons under which a swing whose ball was not seen may stand and still be a full training swing. */
const UNSEEN = "ball-not-recorded";

/**
 * Days with two devices: how many swings met their ball, how many balls were not recorded, and what bat speed is with and without those. A single
 * row of the sensor may be a swing whose ball the screen missed, or a practice swing; the two answers say how much hangs on it.
 */
export function unseenReport(hitting: Hitting): HittingReport["unseen"] {
  const { conditions, judged, season, athlete } = hitting;
  const { pairing, swing_type: type } = athlete.reps.words;
  if (pairing === undefined) return [];
  const counted = season.facility.ball_not_recorded === "count";
  const training = conditions.flatMap(({ purpose, swing }, i) => {
    const full = swing === undefined && ["full", null].includes(type?.[i] ?? null);
    const open = feeds("bat", judged[i]!) || (judged[i] === "no-swing" && pairing[i] === UNSEEN);
    return full && open && (purpose === undefined || purpose === "training") ? [i] : [];
  });
  return [...grouped(training, (row) => whereKey(conditions[row]!))]
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .flatMap(([, rows]) => {
      const unseen = rows.filter((row) => pairing[row] === UNSEEN);
      const paired = rows.filter((row) => pairing[row] === "paired");
      if (unseen.length === 0) return [];
      const speedOf = (some: readonly number[]) =>
        mean([...dailyMeans(hitting, "bat_speed", some).values()].map((day) => day.mean));
      return [
        {
          ...whereOf(conditions[rows[0]!]!),
          counted,
          paired: paired.length,
          unseen: unseen.length,
          without: speedOf(rows.filter((row) => pairing[row] !== UNSEEN)),
          with: speedOf(rows),
        },
      ];
    });
}
