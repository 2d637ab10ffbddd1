import { IntlMessageFormat } from "intl-messageformat";
import type { ComponentChild } from "preact";
import { CATALOGUES, type Catalogue } from "./catalogues.ts";
import { localeOf } from "./figures.ts";
import { desk } from "./messages/desk.ts";
import type { Pages } from "./messages/en.ts";

export type MessageKey = keyof Pages | keyof typeof desk;
type Values = Readonly<Record<string, string | number>>;
type RichValues = Readonly<Record<string, ComponentChild>>;

/** Sentences of one language. */
export interface Words {
  /** Language of the sentences, for `lang` and for number and date forms. */
  readonly language: string;
  has(key: string): key is MessageKey;
  /** A sentence as plain text, for attributes and titles. */
  text(key: MessageKey, values?: Values): string;
  /** A sentence whose gaps are filled with components. A number value only chooses a plural; it is never printed. */
  rich(key: MessageKey, values: RichValues): ComponentChild[];
}

function makeWords(language: string, pages: Catalogue): Words {
  const catalogue: Readonly<Record<MessageKey, string>> = { ...desk, ...pages };
  const formats = new Map<MessageKey, IntlMessageFormat>();
  const format = (key: MessageKey): IntlMessageFormat => {
    const known = formats.get(key);
    if (known) return known;
    // Tags are ours alone, and we use none: "<" in a sentence is a "<".
    const made = new IntlMessageFormat(catalogue[key], localeOf(language), undefined, { ignoreTag: true });
    formats.set(key, made);
    return made;
  };
  return {
    language,
    has: (key): key is MessageKey => Object.hasOwn(catalogue, key),
    text: (key, values = {}) => String(format(key).format({ ...values })),
    rich: (key, values) => {
      const made = format(key).format<ComponentChild>({ ...values } as Record<string, never>);
      return Array.isArray(made) ? made : [made];
    },
  };
}

const made = new Map<string, Words>();

/** Sentences in the language asked for; in English where that language has no catalogue (`language` of the answer says so). */
export function wordsFor(language: string): Words {
  const code = CATALOGUES.has(language) ? language : "en";
  const known = made.get(code);
  if (known) return known;
  const words = makeWords(code, CATALOGUES.get(code)!);
  made.set(code, words);
  return words;
}

/** Text that the trainer gave in one or several languages: the reader's, else English, else the first; with its language if known. */
export function localText(
  text: string | Readonly<Record<string, string>>,
  language: string,
): { text: string; language: string | null } {
  if (typeof text === "string") return { text, language: null };
  for (const code of [language, "en", ...Object.keys(text).sort()]) {
    const found = text[code];
    if (found !== undefined) return { text: found, language: code };
  }
  return { text: "", language: null };
}
