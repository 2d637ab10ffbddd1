import type { AthleteReport, Series } from "./schema.ts";

/** What may stand behind the colon of a reference. */
export const REFERENCE_PARTS = ["start", "end", "change", "range", "swings", "days", "chart"] as const;
type Part = (typeof REFERENCE_PARTS)[number];

/** A reference of a coach's text, as its page is to show it. */
export type Reference = AthleteReport["references"][number];

/** A reference that leads nowhere, and why. */
export interface LostReference {
  readonly text: string;
  readonly why: "form" | "metric" | "part" | "no-series" | "several" | "no-value";
  /** What would have been understood. */
  readonly known: readonly string[];
}

/** `[[metric condition words: part]]`, on one line. */
const REFERENCE = /\[\[([^[\]\n]*)\]\]/g;
/** Figures that are the coach's own: shown as they stand, held against nothing. */
const AS_WRITTEN = /^\s*as written:(.*)$/i;

/** References in a text with the line on which each stands, from 1. */
export function referencesIn(body: string): { text: string; line: number }[] {
  return [...body.matchAll(REFERENCE)].map((found) => ({
    text: found[1]!.trim(),
    line: body.slice(0, found.index).split("\n").length,
  }));
}

/** The words of a reference that are shown as they stand; null for one that is looked up. */
export const asWritten = (text: string): string | null => AS_WRITTEN.exec(text)?.[1]?.trim() ?? null;

/** The text with every reference left out, each character of it replaced by a blank, so that lines and columns stay. */
export const withoutReferences = (body: string): string => body.replace(REFERENCE, (all) => " ".repeat(all.length));

const WHERE: Readonly<Record<Exclude<Part, "range" | "chart">, string>> = {
  start: "first/mean",
  end: "last/mean",
  change: "change/estimate",
  swings: "n",
  days: "sessionCount",
};

/** Looks a reference up: the series of its metric whose condition has all its words, measures of the season first. */
export function lookUp(text: string, series: readonly Series[]): Reference | LostReference {
  const own = asWritten(text);
  if (own !== null)
    return { text, kind: "words", words: own, series: null, at: [], unit: null, decimals: 0, signed: false };
  const [head = "", part = "", ...more] = text.split(":").map((piece) => piece.trim().toLowerCase());
  const [metric = "", ...wanted] = head.split(/\s+/);
  if (metric === "" || part === "" || more.length > 0) return { text, why: "form", known: [] };
  if (!isPart(part)) return { text, why: "part", known: REFERENCE_PARTS };
  const ofMetric = series.flatMap((one, index) => (one.metric === metric.replaceAll("-", "_") ? [{ one, index }] : []));
  if (ofMetric.length === 0) return { text, why: "metric", known: [...new Set(series.map((one) => one.metric))] };
  const fitting = ofMetric.filter(({ one }) => wanted.every((word) => wordsOf(one).includes(word)));
  const measures = fitting.filter(({ one }) => one.measure !== null);
  const candidates = measures.length > 0 ? measures : fitting;
  const known = ofMetric.map(({ one }) => wordsOf(one).join(" "));
  if (candidates.length === 0) return { text, why: "no-series", known };
  if (candidates.length > 1)
    return { text, why: "several", known: candidates.map(({ one }) => wordsOf(one).join(" ")) };
  return resolved(text, part, candidates[0]!.one, candidates[0]!.index);
}

function resolved(text: string, part: Part, one: Series, index: number): Reference | LostReference {
  const at = `/series/${index}`;
  const { unit, decimals } = one;
  const lost: LostReference = { text, why: "no-value", known: [] };
  if (part === "chart") {
    const drawn = one.measure !== null && one.sessions.length > 1;
    return drawn ? { text, kind: "chart", words: null, series: index, at: [at], unit, decimals, signed: false } : lost;
  }
  if (part === "range") {
    if (one.change === null) return lost;
    const ends = [`${at}/change/ci95/0`, `${at}/change/ci95/1`];
    return { text, kind: "range", words: null, series: index, at: ends, unit, decimals, signed: true };
  }
  const missing = { start: one.first, end: one.last, change: one.change, swings: one.n, days: one.sessionCount }[part];
  if (missing === null) return lost;
  const counted = part === "swings" || part === "days";
  return {
    ...{ text, kind: "figure" as const, words: null, series: index, at: [`${at}/${WHERE[part]}`] },
    ...{ unit: counted ? null : unit, decimals: counted ? 0 : decimals, signed: part === "change" },
  };
}

const isPart = (part: string): part is Part => (REFERENCE_PARTS as readonly string[]).includes(part);

/** Words by which a series is named: the values of its condition. */
function wordsOf({ condition: { pitchSpeed: _, ...words } }: Series): string[] {
  return Object.values(words).map(String);
}

/** Every reference of the texts that leads somewhere, each once. */
export function referencesOf(bodies: readonly string[], series: readonly Series[]): Reference[] {
  const found = new Map<string, Reference>();
  for (const body of bodies) {
    for (const { text } of referencesIn(body)) {
      const one = found.has(text) ? null : lookUp(text, series);
      if (one !== null && "kind" in one) found.set(text, one);
    }
  }
  return [...found.values()];
}
