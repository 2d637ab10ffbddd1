import type { Reader } from "../schema/reasons.ts";
import { CLUB_FIELDS } from "./club.allow.ts";
import { FAMILY_FIELDS } from "./family.allow.ts";
import { AthleteReport, type Series } from "./schema.ts";

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

const NO_PEERS = { peers: null, peerLines: [], peersTooFew: null } satisfies Partial<Series>;

/** Whole years: the exact age on a known day would give the birthday away. */
function wholeAge<T extends { readonly age: number | null }>(end: T | null): T | null {
  return end && { ...end, age: end.age === null ? null : Math.floor(end.age) };
}

/** A series with as much of its peers as the reader may see: none unless whoever agreed agreed to that too. */
function peersFor(series: Series, mayCompare: boolean): Series {
  if (!mayCompare) return { ...series, ...NO_PEERS };
  const { peers } = series;
  return { ...series, peers: peers && { ...peers, start: wholeAge(peers.start), end: wholeAge(peers.end) } };
}

/**
 * The report as one reader may see it: fields off the reader's list are emptied, notes and messages for others are left out,
 * a minor's body mass is left out, and so are peers where the consent lists what it covers and they are not in it. Series keep their places, so JSON pointers into the full report stay true.
 *
 * @throws {z.ZodError} a field that must not be empty is missing on the reader's list
 */
export function forReader(report: AthleteReport, reader: Reader): AthleteReport {
  const seen = AthleteReport.parse(keep(report, "", FIELDS[reader]));
  const consent = report.publication[reader];
  const mayCompare = !consent.publish || consent.covers === null || consent.covers.includes("peers");
  return {
    ...seen,
    athlete: { ...seen.athlete, masses: seen.athlete.minor ? [] : seen.athlete.masses },
    series: seen.series.map((series) => peersFor(series, mayCompare)),
    notes: seen.notes.filter((note) => note.readers.includes(reader)),
    closings: seen.closings.filter((closing) => closing.readers.includes(reader)),
  };
}
