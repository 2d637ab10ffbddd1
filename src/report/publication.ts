import type { z } from "zod";
import {
  COVERED_PARTS,
  type Consent,
  type CoveredPart,
  coveredPart,
  type Profile,
  recipientsOf,
} from "../schema/profile.ts";
import type { Reader } from "../schema/reasons.ts";
import type { AthleteReport, Publication } from "./schema.ts";

/** The words about one recipient: those that name it, else those about everybody of its kind. */
function wordsAbout(consents: readonly Consent[], reader: Reader, recipient: string): readonly Consent[] {
  const own = consents.filter((consent) => consent.readers.includes(reader));
  const named = own.filter(({ recipients }) => recipients?.includes(recipient));
  return named.length > 0 ? named : own.filter(({ recipients }) => recipients === undefined);
}

/**
 * May this recipient be given the report? Adults publish on their own word, minors on a guardian's; a word that was taken back
 * or has ended does not count, nor does one that says what it covers and leaves the numbers out. A word about one recipient says nothing of the others.
 */
export function publicationFor(
  consents: readonly Consent[],
  minor: boolean,
  reader: Reader,
  asOf: string,
  recipient: string = reader,
): z.infer<typeof Publication> {
  const needed = minor ? "guardian" : "self";
  const forReader = wordsAbout(consents, reader, recipient);
  const right = forReader.filter((consent) => consent.as === needed);
  const live = right.filter(
    (consent) => consent.withdrawn === undefined && (consent.until === undefined || consent.until >= asOf),
  );
  const given = live.find(({ covers }) => covers?.some((part) => coveredPart(part) === "numbers") ?? true);
  if (given) return { publish: true, as: given.as, agreedOn: given.on, covers: given.covers ?? null };
  if (live.length > 0) return { publish: false, why: "not-covered" };
  if (right.some((consent) => consent.withdrawn !== undefined)) return { publish: false, why: "withdrawn" };
  if (right.length > 0) return { publish: false, why: "ended" };
  if (forReader.length > 0) return { publish: false, why: minor ? "needs-guardian" : "needs-own" };
  return { publish: false, why: "no-consent" };
}

/** Does a word cover a part? One that lists nothing covers everything. Blanks, capitals and underscores make no difference. */
export function covers(word: z.infer<typeof Publication>, part: CoveredPart): boolean {
  return word.publish && (word.covers === null || word.covers.some((one) => coveredPart(one) === part));
}

/**
 * What a recipient is not shown although it is on file, because an adult's word does not cover it; and whether pictures and ways to film may be shown.
 * What a minor is not shown with is a rule, and nothing to be counted.
 */
export function leftOutFor(
  { reader, publication }: Pick<AthleteReport["recipients"][number], "reader" | "publication">,
  { minor, masses }: AthleteReport["athlete"],
  series: AthleteReport["series"],
  notes: AthleteReport["notes"],
): Pick<AthleteReport["recipients"][number], "film" | "kept" | "keptCount"> {
  const onFile: Readonly<Record<CoveredPart, boolean>> = {
    peers: series.some(({ measure, peers, peerLines }) => measure !== null && (peers !== null || peerLines.length > 0)),
    "body-mass": masses.length > 0,
    video: notes.some(({ readers, images }) => readers.includes(reader) && Object.keys(images).length > 0),
  };
  const mayKeep = publication.publish && !minor;
  const kept = mayKeep ? COVERED_PARTS.filter((part) => onFile[part] && !covers(publication, part)) : [];
  return { film: covers(publication, "video"), kept, keptCount: kept.length };
}

/** Word about each recipient, and about each kind of reader: the first that lets a recipient of it have the report, else the first. */
export function publicationsOf(profile: Profile, minor: boolean, asOf: string) {
  const consents = profile.consent ?? [];
  const recipients = recipientsOf(profile).map(({ id, reader }) => ({
    id,
    reader,
    publication: publicationFor(consents, minor, reader, asOf, id),
  }));
  const ofKind = (reader: Reader) => {
    const words = recipients.filter((one) => one.reader === reader).map(({ publication }) => publication);
    return words.find(({ publish }) => publish) ?? words[0] ?? publicationFor(consents, minor, reader, asOf);
  };
  return { recipients, publication: { family: ofKind("family"), club: ofKind("club") } };
}
