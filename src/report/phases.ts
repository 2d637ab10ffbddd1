import type { Facility } from "../schema/facility.ts";
import { sinceLine } from "../stats/since-line.ts";
import { dayOf, WEEK_MS } from "./calendar.ts";
import type { Series, SessionValue } from "./schema.ts";
import { weeksOf } from "./sessions.ts";

/**
 * What a measure has been since each of the season's phases began, beside its own trend: every phase but the first that has enough
 * sessions before and since. Phases are fixed in the facility's file, not found in the values.
 *
 * @param sessions on one unbroken line
 */
export function phasesOf(sessions: readonly SessionValue[], season: Facility["season"]): Series["phases"] {
  const first = sessions[0];
  if (first === undefined) return [];
  const weeks = weeksOf(sessions);
  const values = sessions.map(({ mean }) => mean);
  return (season.phases ?? []).flatMap(({ from }, phase) => {
    const found = sinceLine(weeks, values, (dayOf(from) - dayOf(first.date)) / WEEK_MS);
    if (found === null) return [];
    const { step, ci95, df, before, since } = found;
    return [{ phase, estimate: step, ci95: [...ci95], df, before, since }];
  });
}
