import type { SENTENCES } from "../../schema/reasons.ts";
import type { Interval } from "../../stats/interval.ts";
import type { Series } from "../schema.ts";
import type { Verdict } from "./verdict.ts";

export type Sentence = (typeof SENTENCES)[number];
type Says = NonNullable<Series["says"]>;

/** A sentence with the numbers that it needs; those that do not exist are left out. */
export function saying(id: Sentence, args: Readonly<Record<string, number | null | undefined>>): Says {
  const known = Object.entries(args).flatMap(([name, value]) => (typeof value === "number" ? [[name, value]] : []));
  return { id, args: Object.fromEntries(known) };
}

/** What a verdict rests on, as its sentence tells it. */
export interface Told {
  readonly verdict: Verdict;
  /** The change that the verdict is about. */
  readonly ci95: Interval;
  readonly worth: number | null;
  readonly sessions: number;
  readonly needed: number | null;
  /** The line alone saw a change, and the second look did not bear it out. */
  readonly looksDiffer: boolean;
  /** Distances outside the window at either end, for a measure that has one. */
  readonly outside: { readonly start: number; readonly end: number } | null;
}

/** One sentence for each verdict and what is known with it: the same numbers always give the same sentence. */
function sentenceOf({ verdict, worth, needed, sessions, looksDiffer, outside }: Told): Sentence {
  if (verdict === "cannot-tell") {
    if (looksDiffer) return "cannot-tell-looks-differ";
    // How far outside a window is not the change that stands beside the sentence: its range would confuse.
    if (outside !== null) return "window-cannot-tell";
    if (worth === null) return "cannot-tell-unweighed";
    if (needed === null) return "cannot-tell-long";
    // By the table enough sessions, and still on the border: no number of sessions is promised.
    return needed > sessions ? "cannot-tell" : "cannot-tell-unweighed";
  }
  if (verdict === "too-few" || verdict === "not-a-measure") return "too-few";
  const plain = verdict === "improvement" || verdict === "decline";
  const id = plain && worth === null ? (`${verdict}-unweighed` as const) : verdict;
  return outside === null ? id : `window-${id}`;
}

/**
 * The sentence of a verdict and its numbers: `least` and `most` are the ends of the change as sizes, without a sign.
 */
export function sentence(told: Told): Says {
  const { ci95, worth, sessions, needed, outside } = told;
  const [near, far] = [Math.abs(ci95[0]), Math.abs(ci95[1])].sort((a, b) => a - b);
  return saying(sentenceOf(told), {
    low: ci95[0],
    high: ci95[1],
    least: near,
    most: far,
    worth,
    sessions,
    needed,
    outsideStart: outside?.start,
    outsideEnd: outside?.end,
  });
}
