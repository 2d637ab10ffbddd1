import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { AthleteReport } from "../report/schema.ts";
import type { Reader } from "../schema/reasons.ts";
import type { AssetNames } from "./assets.ts";
import { type FigureStyle, formatDay, formatFigure, type UnitSystem } from "./figures.ts";
import { readNumber, readText } from "./pointer.ts";
import type { Variant } from "./variants.ts";
import type { Words } from "./words.ts";

/** What every component needs to show a figure: the JSON it stands in, the language and the units. */
export interface Reading {
  /** JSON that pointers are read against. */
  readonly source: unknown;
  readonly words: Words;
  readonly units: UnitSystem;
}

/** What the pages of one athlete need beyond that. */
export interface AthletePage {
  readonly reader: Reader;
  /** Place of this page's recipient among the report's. */
  readonly recipient: number;
  readonly report: AthleteReport;
  /** Finished SVG by chart id. */
  readonly charts: ReadonlyMap<string, string>;
  readonly assets: AssetNames;
  readonly variant: Variant;
  /** Name of the PDF beside the page; null where there is none. */
  readonly pdf: string | null;
  /** Language in which the facility's staff write. */
  readonly writtenIn: string;
  /** Every way in which this link's report is shown. */
  readonly variants: readonly Variant[];
  /** Way from the page to a picture by its path in the season folder. */
  readonly images: ReadonlyMap<string, string>;
}

export const ReadingContext = createContext<Reading | null>(null);
export const AthleteContext = createContext<AthletePage | null>(null);

/** @throws outside a page */
export function useReading(): Reading {
  const reading = useContext(ReadingContext);
  if (!reading) throw new Error("a figure or sentence stands outside a page");
  return reading;
}

/** @throws outside an athlete's page */
export function useAthlete(): AthletePage {
  const page = useContext(AthleteContext);
  if (!page) throw new Error("this component belongs on an athlete's page");
  return page;
}

/** A figure of the report as plain text with its unit (or without, `bare`), for a text alternative. */
export function plainFigure(reading: Reading, at: string, style: FigureStyle, bare = false): string {
  const { text, unit } = formatFigure(readNumber(reading.source, at), style, reading.words.language, reading.units);
  return unit === null || bare ? text : `${text}${unitText(reading.words, unit)}`;
}

/** A day of the report as plain text. */
export function plainDay(reading: Reading, at: string): string {
  return formatDay(readText(reading.source, at), "long", reading.words.language);
}

/** A unit with the space that belongs before it; units the catalogue does not know stand as the trainer wrote them. */
export function unitText(words: Words, unit: string): string {
  if (unit === "deg") return words.text("unit.deg");
  const key = `unit.${unit}`;
  return `\u00a0${words.has(key) ? words.text(key) : unit}`;
}
