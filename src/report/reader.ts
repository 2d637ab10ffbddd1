import type { Reader } from "../schema/reasons.ts";
import { CLUB_FIELDS } from "./club.allow.ts";
import { FAMILY_FIELDS } from "./family.allow.ts";
import { AthleteReport } from "./schema.ts";

const FIELDS: Readonly<Record<Reader, readonly string[]>> = { family: FAMILY_FIELDS, club: CLUB_FIELDS };

/** A list becomes empty, everything else null. */
const emptied = (value: unknown) => (Array.isArray(value) ? [] : null);

/** Keeps the allowed fields of a plain object and empties the others; `path` is where it stands in the report. */
function keep(value: object, path: string, allowed: readonly string[]): object {
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => {
      const here = path === "" ? key : `${path}.${key}`;
      if (allowed.includes(here)) return [key, inner];
      const partly = allowed.some((field) => field.startsWith(`${here}.`));
      return [key, partly && inner !== null && typeof inner === "object" ? keep(inner, here, allowed) : emptied(inner)];
    }),
  );
}

/**
 * The report as one reader may see it: fields off the reader's list are emptied, notes and messages for others are left out,
 * a minor's body mass is left out. Series keep their places, so JSON pointers into the full report stay true.
 *
 * @throws {z.ZodError} a field that must not be empty is missing on the reader's list
 */
export function forReader(report: AthleteReport, reader: Reader): AthleteReport {
  const seen = AthleteReport.parse(keep(report, "", FIELDS[reader]));
  return {
    ...seen,
    athlete: { ...seen.athlete, masses: seen.athlete.minor ? [] : seen.athlete.masses },
    notes: seen.notes.filter((note) => note.readers.includes(reader)),
    closings: seen.closings.filter((closing) => closing.readers.includes(reader)),
  };
}
