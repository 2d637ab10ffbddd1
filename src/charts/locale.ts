/** Number and time words in the shape that d3's formats, and so a Vega View, take. */
export interface DrawingLocale {
  readonly number: {
    decimal: string;
    thousands: string;
    grouping: number[];
    currency: [string, string];
    minus: string;
  };
  readonly time: {
    dateTime: string;
    date: string;
    time: string;
    periods: [string, string];
    days: string[];
    shortDays: string[];
    months: string[];
    shortMonths: string[];
  };
}

const known = new Map<string, DrawingLocale>();

/**
 * Locale of one chart's ticks, taken from the runtime's own tables.
 *
 * @param language BCP 47, e.g. "en", "es-MX"
 * @throws {RangeError} not a language tag
 */
export function drawingLocale(language: string): DrawingLocale {
  const found = known.get(language);
  if (found) return found;
  const made = { number: numberLocale(language), time: timeLocale(language) };
  known.set(language, made);
  return made;
}

function numberLocale(language: string): DrawingLocale["number"] {
  const parts = new Intl.NumberFormat(language, { useGrouping: true }).formatToParts(1234567.5);
  const part = (type: string, otherwise: string) => parts.find((p) => p.type === type)?.value ?? otherwise;
  return {
    decimal: part("decimal", "."),
    thousands: part("group", ","),
    grouping: [3],
    currency: ["", ""],
    minus: "−",
  };
}

function timeLocale(language: string): DrawingLocale["time"] {
  const name = (ms: number, options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(language, { ...options, timeZone: "UTC" }).format(ms).replace(/\.$/, "");
  const month = (width: "long" | "short") =>
    Array.from({ length: 12 }, (_, i) => name(Date.UTC(2026, i, 15), { month: width }));
  // 4 January 2026 is a Sunday, where d3 starts its weeks.
  const day = (width: "long" | "short") =>
    Array.from({ length: 7 }, (_, i) => name(Date.UTC(2026, 0, 4 + i), { weekday: width }));
  return {
    dateTime: "%x, %X",
    date: "%Y-%m-%d",
    time: "%H:%M:%S",
    periods: ["AM", "PM"],
    days: day("long"),
    shortDays: day("short"),
    months: month("long"),
    shortMonths: month("short"),
  };
}
