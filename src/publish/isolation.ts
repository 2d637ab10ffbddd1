import { decodeReferences } from "./foreign.ts";

/** What tells one athlete from another. */
export interface Identity {
  readonly id: string;
  /** Full name, and any other name pages may show. */
  readonly names: readonly string[];
  readonly tokens: readonly string[];
}

/** An athlete who is named where only others may stand. */
export interface Named {
  readonly athlete: string;
  readonly by: "id" | "name" | "token";
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

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
const wholeWord = (words: string) => new RegExp(`(?<![\\p{L}\\p{N}-])${escaped(words)}(?![\\p{L}\\p{N}-])`, "u");

interface Mark {
  readonly named: Named;
  /** Must stand in the text for the pattern to fit; looked for first, because that is much quicker. */
  readonly needle: string;
  readonly pattern: RegExp;
}

/**
 * Ids of four characters or more are looked for as whole words where they hold a hyphen or a digit; an id that may be a word
 * of the language ("mark") only as a part of an address. Names are looked for when they have two words or more.
 */
function marksOf({ id, names, tokens }: Identity): Mark[] {
  const marks: Mark[] = tokens.map((token) => ({
    named: { athlete: id, by: "token", words: token },
    needle: token,
    pattern: new RegExp(escaped(token)),
  }));
  if (id.length >= 4) {
    const pattern = /[-\d]/.test(id) ? wholeWord(id) : new RegExp(`/${escaped(id)}(?=[/."'?#])`);
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

/**
 * Makes the check that a text names nobody but its own athlete.
 *
 * @param everybody all athletes of the season, unpublished ones included
 * @returns a function from a text (HTML, SVG, CSS or JSON) and the athlete it belongs to (null: a page for everybody) to the
 *          athletes it names against the rule; empty when there are none. Two athletes of one name cannot be told apart by it.
 */
export function isolationCheck(everybody: readonly Identity[]): (text: string, owner: string | null) => Named[] {
  const marks = new Map(everybody.map((athlete) => [athlete.id, marksOf(athlete)]));
  return (text, owner) => {
    const own = new Set((marks.get(owner ?? "") ?? []).map(({ pattern }) => pattern.source));
    const read = plain(decodeReferences(text));
    // Once more without tags: a name may be broken by them.
    const texts = text.includes("<") ? [read, plain(decodeReferences(text.replace(/<[^>]*>/g, "")))] : [read];
    const named: Named[] = [];
    for (const [athlete, theirs] of marks) {
      if (athlete === owner) continue;
      const hit = theirs.find(
        ({ needle, pattern }) => !own.has(pattern.source) && texts.some((t) => t.includes(needle) && pattern.test(t)),
      );
      if (hit) named.push(hit.named);
    }
    return named;
  };
}
