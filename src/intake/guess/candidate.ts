import type { Allowed } from "./word-sense.ts";

export type Certainty = "sure" | "likely" | "unsure";

/** Why a column is taken for a field, or for none. `code` never changes its name; words are made at the command line. */
export interface Reason {
  readonly code:
    | "told"
    | "own-column"
    | "header-words"
    | "header-kind"
    | "values-only"
    | "no-words"
    | "other-column"
    | "not-one-swing"
    | "perhaps-several"
    | "cannot-be"
    | "empty"
    | "unit-written"
    | "unit-only"
    | "unit-fits"
    | "unit-doubt"
    | "unit-open"
    | "names-known"
    | "names-unknown"
    | "moment-proved"
    | "moment-iso"
    | "moment-form"
    | "order-open"
    | "form-open"
    | "words-known"
    | "words-open"
    | "counts-anew"
    | "numbers";
  readonly args: Readonly<Record<string, string | number>>;
}

/** One field that a column may hold. */
export interface Candidate {
  readonly field: string;
  /** 0 to 2; only for choosing between candidates. */
  readonly points: number;
  readonly certainty: Certainty;
  readonly reasons: readonly Reason[];
  /** A key of `UNITS`, or an own metric's unit; null where the field has none. */
  readonly unit: string | null;
  /** Units to ask about, with the middle of the numbers in canonical units. */
  readonly askUnits: readonly { readonly unit: string; readonly middle: number }[];
  /** Luxon forms that are left; null stands for ISO 8601, and is the only entry where the field is neither day nor time. */
  readonly forms: readonly (string | null)[];
  /** Words of the export -> ours, in order of code points; null when every word is ours already. */
  readonly words: Readonly<Record<string, string>> | null;
  /** Words nobody can translate, and what they may mean. */
  readonly askWords: { readonly words: readonly string[]; readonly allowed: readonly Allowed[] } | null;
}
