import { type Identity, isolationCheck, type Named } from "../publish/isolation.ts";
import { displayName } from "../report/person.ts";
import { forReader } from "../report/reader.ts";
import type { AthleteReport } from "../report/schema.ts";
import { ENVIRONMENTS } from "../schema/columns.ts";
import type { Facility } from "../schema/facility.ts";
import type { Reader } from "../schema/reasons.ts";
import type { AthleteSeason, Place, Problem, Season } from "../schema/season.ts";
import type { Withheld } from "./terms.ts";

/** Reason why a page is held back although somebody agreed to it, and code of the problem that says so. */
export const NAMES_ANOTHER = "names-other-athlete";

/** The same where a day of birth would be shown, the athlete's own included. */
export const SHOWS_BIRTH_DATE = "shows-birth-date";

const FACILITY_FILE = "content/facility.md";

/** Code of the problem that a text for everybody's page names an athlete. */
export const FACILITY_NAMES = "facility-names-athlete";

type Check = (text: string, owner: string | null) => Named[];

/** Words that the season's files give to things other than athletes: a page may hold them, whoever has such an id. */
function wordsOfSeason({ facility, ...lists }: Season): Set<string> {
  const { metrics, zones, drills, implements: bats, balls, feeds, devices } = lists;
  const { sites = [], staff = [], groups = [], tests = [], season } = facility;
  const things = [
    metrics,
    zones,
    drills,
    bats,
    balls,
    feeds,
    devices,
    sites,
    staff,
    groups,
    tests,
    season.phases ?? [],
  ];
  const kinds = [
    ...drills.map(({ environment }) => environment),
    ...bats.map(({ role }) => role),
    ...[...balls, ...feeds, ...devices].map(({ kind }) => kind),
  ];
  const given = kinds.filter((kind) => kind !== undefined);
  return new Set([...ENVIRONMENTS, ...things.flatMap((list) => list.map(({ id }) => id)), ...given]);
}

/**
 * The season's check that nobody stands in another's page. Of athletes left out only the id is known; the facility and its
 * staff may be named everywhere.
 *
 * @param tokensOf an athlete's tokens, once there are links
 */
export function seasonCheck(season: Season, tokensOf: (id: string) => readonly string[] = () => []): Check {
  const words = wordsOfSeason(season);
  const { athletes, leftOut, facility } = season;
  const full = new Set(athletes.map(({ profile }) => profile.name.toLowerCase()));
  const known = athletes.map(({ id, profile: { name, born, aliases = [] } }) => ({
    id,
    names: [name],
    born: typeof born === "string" ? born : null,
    // Swings under another's name may be an athlete's own; the name is not.
    otherNames: [displayName(name, true), ...aliases.filter((alias) => !full.has(alias.toLowerCase()))],
  }));
  const unknown = leftOut.map((id) => ({ id, names: [] }));
  const everybody = [...known, ...unknown].map(
    (one): Identity => ({ ...one, tokens: tokensOf(one.id), idIsWord: words.has(one.id) }),
  );
  return isolationCheck(everybody, [facility.name, ...(facility.staff ?? []).map(({ name }) => name)]);
}

/** Every text in a piece of plain JSON, names of keys included, one below the other. */
function wordsOf(value: unknown): string {
  if (typeof value === "string") return value;
  if (Array.isArray(value)) return value.map(wordsOf).join("\n|\n");
  if (typeof value !== "object" || value === null) return "";
  return Object.entries(value)
    .map(([key, inner]) => `${key}\n${wordsOf(inner)}`)
    .join("\n|\n");
}

/** Looks twice: as it is written, and without the signs of Markdown that may stand inside a name. */
function namedIn(value: unknown, owner: string | null, names: Check): Named | undefined {
  const words = wordsOf(value);
  return names(`${words}\n\n${words.replace(/[*_`~\\]/g, "")}`, owner)[0];
}

/**
 * The facility as pages may show it. A text of its own that names an athlete would stand on everybody's page: it is left out,
 * and said. Its name is the trainer's own choice and stays; a season's name gives way to its days.
 */
export function withoutNames(facility: Facility, names: Check): { facility: Facility; problems: Problem[] } {
  const problems: Problem[] = [];
  const isFree = (key: string, value: unknown): boolean => {
    const named = namedIn(value, null, names);
    if (!named) return true;
    problems.push({
      code: FACILITY_NAMES,
      level: "error",
      at: { file: FACILITY_FILE, line: null, column: null },
      args: { key, other: named.athlete, words: named.words },
      athlete: null,
    });
    return false;
  };
  const { season, contact, notice, cautions } = facility;
  const free: Facility = {
    ...facility,
    season: isFree("season", season.name) ? season : { ...season, name: `${season.start} – ${season.end}` },
    contact: isFree("contact", contact) ? contact : undefined,
    notice: isFree("notice", notice) ? notice : undefined,
    cautions: cautions?.filter((caution) => isFree("cautions", caution)),
  };
  return { facility: free, problems };
}

/** Files whose texts may stand on the page of any athlete, with what they say. */
function sharedTexts(season: Season): [file: string, value: unknown][] {
  return [
    [FACILITY_FILE, season.facility],
    ["content/drills.md", season.drills],
    ["content/metrics.md", [season.metrics, season.zones]],
    ["data/implements.csv", season.implements],
    ["data/balls.csv", season.balls],
    ["data/feeds.csv", season.feeds],
    ["data/devices.csv", season.devices],
  ];
}

/**
 * Where the trainer wrote the name: the first line of the athlete's own pages that holds it, else a file whose texts stand on
 * many pages, else the profile.
 */
function placeOf(athlete: AthleteSeason, season: Season, names: Check): Place {
  const pages = [...athlete.notes, ...athlete.closings, athlete.assessment, athlete.plan].filter(
    (page) => page !== null,
  );
  for (const { file, front, body, bodyLine } of pages) {
    const line = body.split("\n").findIndex((text) => namedIn(text, athlete.id, names));
    if (line >= 0) return { file, line: bodyLine + line, column: null };
    if (namedIn([front, body], athlete.id, names)) return { file, line: null, column: null };
  }
  const profile = `content/athletes/${athlete.id}/profile.md`;
  // Of the profile only what a page may show: a guardian or a link's holder may have any name.
  const { aliases: _, consent: __, recipients: ___, ...shown } = athlete.profile;
  const texts: [string, unknown][] = [[profile, shown], ...sharedTexts(season)];
  const [file] = texts.find(([, value]) => namedIn(value, athlete.id, names)) ?? [profile];
  return { file, line: null, column: null };
}

/** A recipient and whether it may be given the report. */
export interface Receiving {
  readonly recipient: string;
  readonly reader: Reader;
  /** Null when it may, else the reason why not. */
  readonly withheld: string | null;
}

/**
 * Whether each recipient may be given the report: somebody has to agree, it must name nobody else's child, and nobody's day of birth.
 *
 * @param season the season with the facility as pages show it, see {@link withoutNames}
 * @param names  the season's check, see {@link seasonCheck}
 */
export function withheldFrom(
  athlete: AthleteSeason,
  report: AthleteReport,
  season: Season,
  names: Check,
): { receiving: readonly Receiving[]; problems: Problem[] } {
  const problems = new Map<string, Problem>();
  const receiving = report.recipients.map(({ id, reader, publication }): Receiving => {
    const own = { recipient: id, reader };
    if (!publication.publish) return { ...own, withheld: publication.why };
    const named = namedIn(forReader(report, reader, id), athlete.id, names);
    if (!named) return { ...own, withheld: null };
    const code = named.by === "birth-date" ? SHOWS_BIRTH_DATE : NAMES_ANOTHER;
    // Once for each kind of reader: what one club may not see, the next one may not either.
    const once = `${code} ${reader}`;
    if (!problems.has(once)) {
      problems.set(once, {
        code,
        level: "error",
        at: placeOf(athlete, season, names),
        args: { reader, other: named.athlete, words: named.words },
        athlete: athlete.id,
      });
    }
    return { ...own, withheld: code };
  });
  return { receiving, problems: [...problems.values()] };
}

/** For each kind of reader null when one of its recipients is given the report, else why the first is not. */
export function withheldByReader(report: AthleteReport, receiving: readonly Receiving[]): Withheld {
  const of = (reader: Reader): string | null => {
    const own = receiving.filter((one) => one.reader === reader).map(({ withheld }) => withheld);
    if (own.length > 0) return own.includes(null) ? null : (own[0] ?? null);
    const word = report.publication[reader];
    return word.publish ? null : word.why;
  };
  return { family: of("family"), club: of("club") };
}
