import type { Facility } from "../schema/facility.ts";
import type { AthleteReport } from "./schema.ts";

/** What a report, and pages that belong to no athlete, say of the facility. */
export function facilityOf(facility: Facility): AthleteReport["facility"] {
  const { name, season, contact, notice, units, cautions } = facility;
  return {
    name,
    season: season.name,
    contact: contact ?? null,
    notice: notice ?? null,
    units: units ?? "imperial",
    cautions: cautions ?? [],
    phases: (season.phases ?? []).map(({ id, label, from, to }) => ({ id, label: label ?? null, from, to })),
  };
}
