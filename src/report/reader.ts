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

/** What a start would come back by leans on the middle of others too. */
const NO_PEERS = { peers: null, peerLines: [], peersTooFew: null, rebound: null } satisfies Partial<Series>;

/** Years below which nobody is set beside others unless whoever agreed wrote down that they may be. */
const PEERS_FROM_AGE = 14;

/** May a reader be shown where the athlete stands among others? Somebody whose age is not known may be a child. */
function mayCompare({ publication, athlete: { age, minor } }: AthleteReport, reader: Reader): boolean {
  const consent = publication[reader];
  if (!consent.publish) return true;
  if (consent.covers !== null) return consent.covers.includes("peers");
  return !minor || (age !== null && age >= PEERS_FROM_AGE);
}

/** Growth without others, and a minor's without body mass. */
function growthFor(
  growth: AthleteReport["hitting"]["growth"],
  minor: boolean,
  compare: boolean,
): AthleteReport["hitting"]["growth"] {
  return growth && { ...growth, massLb: minor ? null : growth.massLb, peers: compare ? growth.peers : [] };
}

/** Whole years: the exact age on a known day would give the birthday away. */
function wholeAge<T extends { readonly age: number | null }>(end: T | null): T | null {
  return end && { ...end, age: end.age === null ? null : Math.floor(end.age) };
}

/** A series with as much of its peers as the reader may see: none unless whoever agreed agreed to that too. */
function peersFor(series: Series, compare: boolean): Series {
  if (!compare) return { ...series, ...NO_PEERS };
  const { peers } = series;
  return { ...series, peers: peers && { ...peers, start: wholeAge(peers.start), end: wholeAge(peers.end) } };
}

/**
 * The report as one reader may see it: fields off the reader's list are emptied, notes and messages for others are left out,
 * a minor's body mass is left out, and so is everything that stands beside others where the consent lists what it covers and they are not in it, or
 * lists nothing and the athlete is under fourteen. Series keep their places, so JSON pointers into the full report stay true.
 *
 * @throws {z.ZodError} a field that must not be empty is missing on the reader's list
 */
export function forReader(report: AthleteReport, reader: Reader): AthleteReport {
  const seen = AthleteReport.parse(keep(report, "", FIELDS[reader]));
  const compare = mayCompare(report, reader);
  const { minor, masses } = seen.athlete;
  return {
    ...seen,
    athlete: { ...seen.athlete, masses: minor ? [] : masses },
    hitting: { ...seen.hitting, growth: growthFor(seen.hitting.growth, minor, compare) },
    series: seen.series.map((series) => peersFor(series, compare)),
    notes: seen.notes.filter((note) => note.readers.includes(reader)),
    closings: seen.closings.filter((closing) => closing.readers.includes(reader)),
  };
}
