import { Facility } from "../../schema/facility.ts";
import { frontMatterPage } from "./front-matter-page.ts";
import type { FieldFault, Written } from "./profile-fields.ts";

/** What may stand in a facility besides its name and season, and how it is written. */
const OPEN: readonly (readonly [key: string, line: string])[] = [
  ["time_zone", "time_zone: America/Chicago"],
  ["contact", "contact: where families reach you"],
  ["units", "units: imperial   # imperial, metric"],
  ["measures", "measures: [{ metric: bat_speed, condition: { environment: tee } }]   # at most eight"],
  ["staff", "staff: [{ id: coach-k, name: Name of the coach, role: hitting coach }]"],
  ["groups", "groups: [{ id: juniors, members: [an-athletes-id] }]"],
  ["sites", "sites: [{ id: barn, altitude_ft: 940, indoor: true }]"],
];

/** How each key is written, for whoever wrote it otherwise. */
const FORMS: Readonly<Record<string, string>> = {
  name: "write what families know it by",
  "season.name": "write it as Winter 2026",
  "season.start": "write the first day as 2025-10-06",
  "season.end": "write the last day as 2026-02-22",
  time_zone: "write it like America/Chicago",
  units: "write imperial or metric",
};

/** `facility.md` from text; without one when something is missing or wrong. */
export function facilityPage(written: Written): { page: string | null; faults: FieldFault[] } {
  const text = (key: string) => written[key]?.trim() || undefined;
  const facility = {
    name: text("name"),
    season: { name: text("season-name"), start: text("start"), end: text("end") },
    contact: text("contact"),
    units: text("units"),
    time_zone: text("time-zone"),
  };
  const parsed = Facility.safeParse(Object.fromEntries(Object.entries(facility).filter(([, value]) => value)));
  if (!parsed.success) {
    const fields = new Map(parsed.error.issues.map(({ path, message }) => [path.join("."), message]));
    const faults = [...fields].map(([field, message]): FieldFault => {
      const key =
        { "season.name": "season-name", "season.start": "start", "season.end": "end", time_zone: "time-zone" }[field] ??
        field;
      const given = text(key);
      const problem =
        given === undefined ? `${key} is missing` : message.includes("season's end") ? message : `${key} is "${given}"`;
      return { field: key, problem, remedy: FORMS[field] ?? "write it otherwise" };
    });
    return { page: null, faults };
  }
  const open = OPEN.filter(([key]) => (parsed.data as Record<string, unknown>)[key] === undefined);
  return {
    page: frontMatterPage(
      parsed.data,
      open.map(([, line]) => line),
    ),
    faults: [],
  };
}
