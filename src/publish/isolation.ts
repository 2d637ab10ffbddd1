import { literally, wholeWords } from "../schema/text.ts";
import { decodeReferences } from "./foreign.ts";

/** What tells one athlete from another. */
export interface Identity {
  readonly id: string;
  /** Full name, and any other name pages may show. Looked for on pages of others. */
  readonly names: readonly string[];
  readonly tokens: readonly string[];
  /** Day of birth; looked for on every page, the athlete's own too. */
  readonly born?: string | null;
  /** Further names of the athlete's own: not looked for, but nobody else is named by a part of them. */
  readonly otherNames?: readonly string[];
  /** The id is a word of the season too (a drill's, a bat's): it is looked for only in addresses. */
  readonly idIsWord?: boolean;
}

/** An athlete who is named where only others may stand. */
export interface Named {
  readonly athlete: string;
  readonly by: "id" | "name" | "token" | "birth-date";
  readonly words: string;
}

/** One form for all ways to write the same words: one kind of apostrophe, hyphen and space, no capitals. */
function plain(text: string): string {
  return text
    .normalize("NFC")
    .replace(/[\u2018\u2019\u02bc]/g, "'")
    .replace(/[\u2010\u2011\u2013]/g, "-")
    .replace(/[\s\u00a0]+/g, " ")
    .toLowerCase();
}

const wholeWord = (words: string) => wholeWords([words], "gu");

/**
 * Words as they may stand on a page: tags and the signs of Markdown may lie between any two letters. Not as whole words:
 * without tags a heading runs into what follows it, and a name inside is a whole word by itself.
 */
const throughMarkup = (words: string) => new RegExp([...words].map(literally).join("(?:<[^>]*>|[*_`~\\\\])*"), "gu");

interface Mark {
  readonly named: Named;
  /** Must stand in the text for the pattern to fit; looked for first, because that is much quicker. */
  readonly needle: string;
  readonly pattern: RegExp;
}

/** Ways in which a day is written in full: with the year in four figures, in words and in figures. */
function waysToWrite(day: string): string[] {
  const at = new Date(`${day}T00:00:00Z`);
  const inFigures = { day: "numeric", month: "numeric", year: "numeric", timeZone: "UTC" } as const;
  const inWords = { ...inFigures, month: "long" } as const;
  const locales = ["en-US", "en-GB", "es", "de"];
  return [
    ...new Set([day, ...[inFigures, inWords].flatMap((form) => locales.map((l) => at.toLocaleDateString(l, form)))]),
  ];
}

/**
 * Ids of four characters or more are looked for as whole words where they hold a hyphen or a digit; an id that may be a word
 * of the language ("mark") or of the season ("front-toss") only as a part of an address. Names are looked for when they have
 * two words or more.
 */
function marksOf({ id, names, tokens, born = null, idIsWord }: Identity): Mark[] {
  const marks: Mark[] = tokens.map((token) => ({
    named: { athlete: id, by: "token", words: token },
    needle: token.toLowerCase(),
    pattern: new RegExp(literally(token.toLowerCase()), "g"),
  }));
  for (const written of born === null ? [] : waysToWrite(born)) {
    const needle = plain(written);
    marks.push({ named: { athlete: id, by: "birth-date", words: written }, needle, pattern: wholeWord(needle) });
  }
  if (id.length >= 4) {
    const inAddress = () => new RegExp(`/${literally(id)}(?=[/."'?#])`, "g");
    const pattern = /[-\d]/.test(id) && !idIsWord ? wholeWord(id) : inAddress();
    marks.push({ named: { athlete: id, by: "id", words: id }, needle: id, pattern });
  }
  for (const name of names) {
    if (/\S\s+\S/.test(name)) {
      const needle = plain(name).trim();
      marks.push({ named: { athlete: id, by: "name", words: name }, needle, pattern: wholeWord(needle) });
    }
  }
  return marks;
}

type Span = readonly [from: number, to: number];

const spansOf = (text: string, pattern: RegExp): Span[] =>
  [...text.matchAll(pattern)].map((match) => [match.index, match.index + match[0].length]);

/** Words that may stand on a page whoever else is called by a part of them. */
const freeWords = (words: readonly string[]): RegExp[] =>
  words
    .map((one) => plain(one).trim())
    .filter((one) => one !== "")
    .map(throughMarkup);

/**
 * Makes the check that a text names nobody but its own athlete, and nobody's day of birth. What lies inside the owner's own name or id is the owner's:
 * "Ann Lee" inside "Mary Ann Lee" names nobody else on Mary Ann's page, and "Ann Lee" alone does.
 *
 * @param everybody   all athletes of the season, unpublished ones included
 * @param publicNames names that stand on every page by the trainer's own choice: the facility's and those of its staff
 * @returns a function from a text (HTML, SVG, CSS or JSON) and the athlete it belongs to (null: a page for everybody) to the
 *          athletes it names against the rule; empty when there are none. Two athletes of one name cannot be told apart by it.
 */
export function isolationCheck(
  everybody: readonly Identity[],
  publicNames: readonly string[] = [],
): (text: string, owner: string | null) => Named[] {
  const marks = new Map(everybody.map((athlete) => [athlete.id, marksOf(athlete)]));
  const ofAll = freeWords(publicNames);
  const own = new Map(
    everybody.map(({ id, names, otherNames = [] }) => [id, freeWords([id, ...names, ...otherNames])]),
  );
  return (text, owner) => {
    const free = [...ofAll, ...(own.get(owner ?? "") ?? [])];
    const read = plain(decodeReferences(text));
    // Once more without tags: a name may be broken by them.
    const texts = text.includes("<") ? [read, plain(decodeReferences(text.replace(/<[^>]*>/g, "")))] : [read];
    const isStray = (t: string, { needle, pattern }: Mark): boolean => {
      const hits = t.includes(needle) ? spansOf(t, pattern) : [];
      if (hits.length === 0) return false;
      const spans = free.flatMap((words) => spansOf(t, words));
      return hits.some(([from, to]) => !spans.some(([start, end]) => start <= from && to <= end));
    };
    const named: Named[] = [];
    for (const [athlete, theirs] of marks) {
      const looked = athlete === owner ? theirs.filter(({ named }) => named.by === "birth-date") : theirs;
      const hit = looked.find((mark) => texts.some((t) => isStray(t, mark)));
      if (hit) named.push(hit.named);
    }
    return named;
  };
}
