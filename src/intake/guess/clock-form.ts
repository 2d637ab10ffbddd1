/** How the clock times of a column are written. */
export interface ClockGuess {
  /** Share of the values that `form` reads, 0 to 1. */
  readonly share: number;
  /** Luxon form; null for `hh:mm` or `hh:mm:ss` on a clock of 24 hours. */
  readonly form: string | null;
}

const CLOCK = /^(\d{1,2}):([0-5]\d)(?::([0-5]\d)(\.\d{1,3})?)?( ?)([AaPp][Mm])?$/;
const PLAIN = /^([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d{1,3})?)?$/;

/** The form of one clock time; undefined when it is none. */
function formOf(text: string): string | null | undefined {
  if (PLAIN.test(text)) return null;
  const parts = CLOCK.exec(text);
  if (!parts) return undefined;
  const [, hour = "", , seconds, fraction, gap, half] = parts;
  const most = half === undefined ? 23 : 12;
  if (Number(hour) > most || (half !== undefined && Number(hour) === 0)) return undefined;
  const tail = seconds === undefined ? "" : fraction === undefined ? ":ss" : ":ss.SSS";
  return half === undefined ? `H:mm${tail}` : `h:mm${tail}${gap}a`;
}

/**
 * How clock times are written: one form for the whole column, that of most values.
 *
 * @param values distinct filled cells; without any, `share` is 0
 * @example clockForm(["2:00:30 PM", "11:15:02 AM"]) // => { share: 1, form: "h:mm:ss a" }
 */
export function clockForm(values: readonly string[]): ClockGuess {
  const counts = new Map<string | null, number>();
  for (const text of values) {
    const form = formOf(text);
    if (form !== undefined) counts.set(form, (counts.get(form) ?? 0) + 1);
  }
  // 9:30 and 10:15 are of one kind: the form without leading zeros reads the others too.
  const loose = [...counts.keys()].find((form) => form?.startsWith("H:") === true) ?? null;
  if (loose !== null && counts.has(null)) {
    counts.set(
      loose,
      (counts.get(loose) ?? 0) + values.filter((text) => formOf(text) === null && fits(text, loose)).length,
    );
    counts.delete(null);
  }
  const ranked = [...counts].sort(([one, n], [other, m]) => m - n || ((one ?? "") < (other ?? "") ? -1 : 1));
  const [form, n] = ranked[0] ?? [null, 0];
  return { share: values.length === 0 ? 0 : n / values.length, form };
}

const fits = (text: string, form: string): boolean => text.split(":").length === form.split(":").length;
