import type { Reader } from "../schema/reasons.ts";
import { ALLOWED } from "./allow.ts";
import { healthWord } from "./held.ts";
import { covers } from "./publication.ts";
import { AthleteReport, type Series } from "./schema.ts";

const fieldsFor = (reader: Reader): readonly string[] =>
  Object.keys(ALLOWED).filter((field) => ALLOWED[field]?.includes(reader));

type Word = AthleteReport["publication"][Reader];

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

/** What other readers and recipients agreed to is theirs. */
const UNSAID = { publish: false, why: "no-consent" } as const;
const NOBODYS = { family: UNSAID, club: UNSAID };
const NOBODY: AthleteReport["recipients"][number] = {
  id: "",
  reader: "family",
  publication: UNSAID,
  film: false,
  kept: [],
  keptCount: 0,
};

/** May a reader be shown where the athlete stands among others? Somebody whose age is not known may be a child. */
function mayCompare(consent: Word, { age, minor }: AthleteReport["athlete"]): boolean {
  if (!consent.publish) return true;
  if (consent.covers !== null) return covers(consent, "peers");
  return !minor || (age !== null && age >= PEERS_FROM_AGE);
}

/** Growth without others, and without body mass where that may not be shown. */
function growthFor(
  growth: AthleteReport["hitting"]["growth"],
  mass: boolean,
  compare: boolean,
): AthleteReport["hitting"]["growth"] {
  return growth && { ...growth, massLb: mass ? growth.massLb : null, peers: compare ? growth.peers : [] };
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

/** A short text, or nothing where it tells of somebody's health. */
const unlessHealth = <T extends string | null>(text: T): T | null => (text === null || healthWord(text) ? null : text);

/** What was seen at the start; of a text that tells of health only its name stays. */
function assessmentFor(assessment: AthleteReport["assessment"]): AthleteReport["assessment"] {
  return (
    assessment && {
      ...assessment,
      body: unlessHealth(assessment.body) ?? "",
      priorities: assessment.priorities.map((one) => ({ ...one, text: unlessHealth(one.text) ?? one.id })),
    }
  );
}

/**
 * The report as one reader may see it: fields off the reader's list are emptied; notes and messages for others, and those that stay on the desk, are left
 * out, as is every text that tells of somebody's health; what the word about this recipient does not cover is left out, a minor's body mass always, and what
 * stands beside others where the word lists nothing and the athlete is under fourteen. Series and recipients keep their places, so JSON pointers into the
 * full report stay true; of other recipients nothing but the place is left.
 *
 * @param recipient id; without it the word about this kind of reader counts
 * @throws {z.ZodError} a field that must not be empty is missing on the reader's list
 */
export function forReader(report: AthleteReport, reader: Reader, recipient: string | null = null): AthleteReport {
  const seen = AthleteReport.parse(keep(report, "", fieldsFor(reader)));
  const own = report.recipients.find(({ id }) => id === recipient);
  const word = own?.publication ?? report.publication[reader];
  const compare = mayCompare(word, seen.athlete);
  const { minor, masses, away } = seen.athlete;
  const mass = !minor && (!word.publish || covers(word, "body-mass"));
  const film = !word.publish || covers(word, "video");
  const shown = <T extends { readonly readers: readonly Reader[]; readonly held: string | null }>(list: readonly T[]) =>
    list.filter(({ readers, held }) => readers.includes(reader) && held === null);
  return {
    ...seen,
    publication: { ...NOBODYS, [reader]: word },
    recipients: seen.recipients.map((one) => (one.id === recipient ? one : NOBODY)),
    athlete: {
      ...seen.athlete,
      masses: mass ? masses : [],
      away: away.map((one) => ({ ...one, say: unlessHealth(one.say) })),
    },
    hitting: { ...seen.hitting, growth: growthFor(seen.hitting.growth, mass, compare) },
    series: seen.series.map((series) => peersFor(series, compare)),
    goals: seen.goals.map((goal) => ({ ...goal, why: unlessHealth(goal.why) })),
    assessment: assessmentFor(seen.assessment),
    notes: shown(seen.notes).map((note) => ({ ...note, images: film ? note.images : {} })),
    closings: shown(seen.closings),
  };
}
