import type { AthleteReport } from "../report/schema.ts";
import type { Facility } from "../schema/facility.ts";

/** What pages that belong to no athlete say of the facility, in the form in which a report says it. */
export function facilityOf({ name, season, contact, notice, units, cautions }: Facility): AthleteReport["facility"] {
  return {
    name,
    season: season.name,
    contact: contact ?? null,
    notice: notice ?? null,
    units: units ?? "imperial",
    cautions: cautions ?? [],
  };
}
