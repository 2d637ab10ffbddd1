import { CM_PER_INCH, GRAMS_PER_OUNCE, KG_PER_POUND, KMH_PER_MPH, METRES_PER_FOOT } from "../schema/units.ts";

/** Units the facility shows. The report is always in canonical (imperial) units. */
export type UnitSystem = "imperial" | "metric";

export interface FigureStyle {
  /** Canonical unit of the value, or null for a bare number. */
  readonly unit: string | null;
  readonly decimals: number;
  /** Changes carry their sign: +2.1, −0.4. */
  readonly signed?: boolean;
  /** A share of 0 to 1 shown as a percentage. */
  readonly share?: boolean;
  /** A share of 0 to 1 shown as so many of this number: 0.33 of ten is 3. */
  readonly per?: number;
  /** A percentile: shown whole, at least 1 and at most 99, because nobody can know that all of a hundred were below. */
  readonly percentile?: boolean;
  /** Smaller values than this, but for zero itself, are shown as "<" and this: a p of 0.00002 is not 0.000. */
  readonly least?: number;
}

interface Conversion {
  readonly unit: string;
  readonly factor: number;
  /** Added to the decimals of the canonical unit, so that a coarser unit keeps about the same resolution. */
  readonly decimals: number;
}

const METRIC: Readonly<Record<string, Conversion>> = {
  mph: { unit: "km/h", factor: KMH_PER_MPH, decimals: 0 },
  ft: { unit: "m", factor: METRES_PER_FOOT, decimals: 1 },
  in: { unit: "cm", factor: CM_PER_INCH, decimals: 0 },
  oz: { unit: "g", factor: GRAMS_PER_OUNCE, decimals: -1 },
  lb: { unit: "kg", factor: KG_PER_POUND, decimals: 0 },
};

const SAME = (unit: string): Conversion => ({ unit, factor: 1, decimals: 0 });

/** Unit in which a reader sees a canonical one, with the factor from one to the other. */
export function shownUnit(unit: string, system: UnitSystem): Conversion {
  return (system === "metric" ? METRIC[unit] : undefined) ?? SAME(unit);
}

/** BCP 47 tag for numbers and dates of a language of ours. */
export function localeOf(language: string): string {
  return { en: "en-US", es: "es-US" }[language] ?? language;
}

const formatters = new Map<string, Intl.NumberFormat>();

function formatter(locale: string, decimals: number, signed: boolean, share: boolean): Intl.NumberFormat {
  const key = `${locale}/${decimals}/${signed}/${share}`;
  const known = formatters.get(key);
  if (known) return known;
  const made = new Intl.NumberFormat(locale, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    // "negative" rather than "auto": a value that rounds to nothing must not read −0.0.
    signDisplay: signed ? "exceptZero" : "negative",
    ...(share ? { style: "percent" as const } : {}),
  });
  formatters.set(key, made);
  return made;
}

/**
 * The one place where a number becomes text.
 *
 * @param value in the canonical unit of `style.unit`
 * @returns digits in the reader's unit with a true minus sign, and the unit in which they are (null for a bare number)
 * @throws {RangeError} when the value is not finite
 * @example formatFigure(2.13, { unit: "mph", decimals: 1, signed: true }, "en", "imperial") // => { text: "+2.1", unit: "mph" }
 */
export function formatFigure(
  value: number,
  style: FigureStyle,
  language: string,
  system: UnitSystem,
): { text: string; unit: string | null } {
  if (!Number.isFinite(value)) throw new RangeError(`a page cannot show ${value}`);
  const shown = style.unit === null ? null : shownUnit(style.unit, system);
  const decimals = Math.max(0, style.decimals + (shown?.decimals ?? 0));
  const number = formatter(localeOf(language), decimals, style.signed ?? false, style.share ?? false);
  const tiny = style.least !== undefined && value > 0 && value < style.least;
  const scaled = style.percentile === true ? inHundred(value) : value * (shown?.factor ?? 1) * (style.per ?? 1);
  const text = number.format(tiny ? (style.least ?? 0) : scaled).replaceAll("-", "−");
  return {
    text: tiny ? `<${text}` : text,
    unit: shown?.unit ?? null,
  };
}

const inHundred = (percentile: number): number => Math.max(1, Math.min(99, percentile));

export type DayStyle = "long" | "short" | "month";

const DAY_OPTIONS: Readonly<Record<DayStyle, Intl.DateTimeFormatOptions>> = {
  long: { year: "numeric", month: "long", day: "numeric" },
  short: { month: "short", day: "numeric" },
  month: { year: "numeric", month: "long" },
};

/**
 * A calendar day in words. A day has no time zone, so it is read and shown in UTC.
 *
 * @param isoDay `yyyy-mm-dd`
 * @throws {RangeError} when it is no such day
 */
export function formatDay(isoDay: string, style: DayStyle, language: string): string {
  const day = new Date(`${isoDay}T00:00:00Z`);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(isoDay) || Number.isNaN(day.getTime())) {
    throw new RangeError(`"${isoDay}" is not a day written yyyy-mm-dd`);
  }
  return dayFormatter(style, language).format(day);
}

const dayFormatters = new Map<string, Intl.DateTimeFormat>();

/** Made once: making one takes longer than a thousand days to write. */
function dayFormatter(style: DayStyle, language: string): Intl.DateTimeFormat {
  const key = `${language}/${style}`;
  const known = dayFormatters.get(key);
  if (known) return known;
  const made = new Intl.DateTimeFormat(localeOf(language), { ...DAY_OPTIONS[style], timeZone: "UTC" });
  dayFormatters.set(key, made);
  return made;
}
