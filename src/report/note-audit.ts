import { KMH_PER_MPH } from "../schema/units.ts";
import { withoutReferences } from "./references.ts";
import type { Series } from "./schema.ts";

/** How people write a metric, in the languages of the pages; the longer form first. */
const NAMES: readonly (readonly [string, RegExp])[] = [
  ["bat_speed", /\b(?:bat|swing) speed|velocidad del bate/gi],
  ["exit_velocity", /\bexit (?:velocity|velo|speed)|velocidad de salida/gi],
  ["attack_angle", /\battack angle|ángulo de ataque/gi],
  ["launch_angle", /\blaunch angle|ángulo de salida/gi],
];
/** Two figures of a way, or one figure, within so many characters behind a metric's name and in the same sentence. */
const NEAR = 60;
const WAY =
  /(?:from\s+|de\s+)?(-?\d+(?:[.,]\d+)?)\s*(?:mph|km\/h|°)?\s*(?:to|up to|->|→|–|a|hasta)\s+(-?\d+(?:[.,]\d+)?)/i;
const ONE = /(-?\d+(?:[.,]\d+)?)\s*(mph|km\/h|°|degrees|grados)/i;

/** Figures of a text that look like a known measure and are none of the season's. */
export interface StrangeFigure {
  /** Line of the text, from 1. */
  readonly line: number;
  /** As written. */
  readonly found: string;
  readonly metric: string;
  /** The season's own figures of that metric: start and end of each measure. */
  readonly known: readonly string[];
}

const numberOf = (text: string): number => Number(text.replace(",", "."));
/** Half of the last place that is written. */
const tolerance = (text: string): number => 0.5 * 10 ** -(/[.,](\d+)/.exec(text)?.[1]?.length ?? 0) + 1e-9;

/**
 * Holds hand-typed figures of a coach's text against the season: a way ("from 68 to 73") against start and end of a series, a single one against everything
 * that was reported of one. In the report's unit or, for speeds, in km/h. Text inside references is not looked at.
 */
export function strangeFigures(body: string, series: readonly Series[]): StrangeFigure[] {
  const text = withoutReferences(body);
  return NAMES.flatMap(([metric, name]) => {
    const own = series.filter((one) => one.metric === metric && one.sessions.length > 0);
    if (own.length === 0) return [];
    return [...text.matchAll(name)].flatMap((match): StrangeFigure[] => {
      const from = match.index + match[0].length;
      const behind = /^[^.!?\n]*(?:[.]\d[^.!?\n]*)*/.exec(text.slice(from, from + NEAR))?.[0] ?? "";
      const found = strangeIn(behind, own);
      if (found === null) return [];
      const known = own
        .filter(({ measure, first, last }) => measure !== null && first !== null && last !== null)
        .map(({ first, last, decimals }) => `${first!.mean.toFixed(decimals)} to ${last!.mean.toFixed(decimals)}`);
      return [{ line: text.slice(0, match.index).split("\n").length, found, metric, known: [...new Set(known)] }];
    });
  });
}

/** The first figures behind a metric's name that no series bears out; null where all are borne out, or there are none. */
function strangeIn(text: string, series: readonly Series[]): string | null {
  const way = WAY.exec(text);
  if (way !== null) {
    const [whole, start = "", end = ""] = way;
    const fits = series.some(({ first, last, sessions }) => {
      const starts = [first?.mean, sessions[0]?.mean];
      const ends = [last?.mean, sessions.at(-1)?.mean];
      return [1, KMH_PER_MPH].some((factor) => hits(start, starts, factor) && hits(end, ends, factor));
    });
    return fits ? null : whole.trim();
  }
  const one = ONE.exec(text);
  if (one === null) return null;
  const [whole, figure = ""] = one;
  const fits = series.some(({ first, last, change, sessions }) => {
    const all = [
      first?.mean,
      last?.mean,
      change?.estimate,
      ...sessions.flatMap(({ mean, max, p90 }) => [mean, max, p90]),
    ];
    return [1, KMH_PER_MPH].some((factor) => hits(figure, all, factor));
  });
  return fits ? null : whole.trim();
}

const hits = (text: string, values: readonly (number | null | undefined)[], factor: number): boolean =>
  values.some((value) => value != null && Math.abs(value * factor - numberOf(text)) <= tolerance(text));
