import type { Reason } from "../../build.ts";

type Args = Reason["args"];

const SPOKEN: Readonly<Record<string, string>> = {
  athlete_id: "athlete",
  date_time: "date and time",
  implement: "bat",
  rep: "swing number",
  side: "hitter's side",
  pitcher_side: "pitcher's side",
  hit_spin: "spin off the bat",
  spin: "spin of the pitch",
};

/** A field's name as it is spoken. */
export function fieldWords(field: string | number | null | undefined): string {
  const name = String(field ?? "");
  return (Object.hasOwn(SPOKEN, name) ? SPOKEN[name] : undefined) ?? name.replaceAll("_", " ");
}

/** Why a column is taken for a field, in words that follow each other after a comma. */
const WORDS: Readonly<Record<Reason["code"], (args: Args) => string>> = {
  told: () => "you said so",
  "own-column": () => "this is our own name for it",
  "header-words": () => "the name says so",
  "header-kind": ({ word }) => `"${word}" does not say which one`,
  "values-only": () => "the name says nothing, the cells look like it",
  "no-words": () => "its name and its cells say nothing that we know",
  "other-column": ({ field }) => `another column is the ${fieldWords(field)}`,
  "not-one-swing": ({ word }) => `"${word}" is not about a single swing`,
  "perhaps-several": ({ word }) => `"${word}" may be about more than one swing`,
  "cannot-be": ({ field }) => `the name says ${fieldWords(field)}, and the cells cannot be that`,
  empty: () => "no cell is filled",
  "unit-written": ({ unit }) => `${unit} is written there`,
  "unit-only": ({ unit }) => `always ${unit}`,
  "unit-fits": ({ unit }) => `no unit is written, the numbers fit ${unit} alone`,
  "unit-doubt": ({ unit }) => `${unit} is written there, and the numbers speak for another unit`,
  "unit-open": () => "no unit is written, and the numbers do not tell",
  "names-known": ({ known, all }) => `${known} of ${all} names are athletes of yours`,
  "names-unknown": ({ all }) => `none of ${all} names is an athlete of yours`,
  "moment-proved": ({ form, proof }) => `written ${form}: "${proof}" can be nothing else`,
  "moment-iso": () => "written as we write it",
  "moment-form": ({ form }) => `written ${form}`,
  "order-open": ({ example }) => `"${example}" may begin with the day or with the month`,
  "form-open": ({ example }) => `it is not clear how "${example}" is written`,
  "words-known": () => "every word in it is known",
  "words-open": ({ words }) => `not known: ${words}`,
  "counts-anew": ({ top }) => `it counts from 1 up to ${top}, again and again`,
  numbers: ({ lo, hi }) => `${lo === hi ? `always ${lo}` : `numbers from ${lo} to ${hi}`}, and no word that we know`,
};

/** Reasons as one line; nothing for none. */
export const reasonLine = (reasons: readonly Reason[]): string =>
  reasons.map(({ code, args }) => WORDS[code](args)).join(", ");
