import { plainSpaces } from "../moments.ts";
import { clockForm } from "./clock-form.ts";
import { dateForms } from "./date-form.ts";

/** What a column says of when: a day, a clock time, or both in one cell. */
export interface MomentGuess {
  readonly is: "date" | "time" | "date_time";
  /** Luxon forms that are left; null stands for ISO 8601. More than one: day and month may be either way round. */
  readonly forms: readonly (string | null)[];
  /** A value that rules the other order out. */
  readonly proof: string | null;
}

const ENOUGH = 0.8;
const ISO_BOTH = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}([.,]\d+)?)?(Z|[+-]\d{2}(:?\d{2})?)?$/;
/** A day, one mark, a clock time. */
const BOTH = /^(.*\d)(, |,| |T)(\d{1,2}:\d{2}.*)$/;
const MARKS: Readonly<Record<string, string>> = { T: "'T'" };

const distinct = (values: readonly string[]) => [...new Set(values)].sort();

/**
 * Null when the values are no days and no times.
 *
 * @param written distinct filled cells
 */
export function momentForm(written: readonly string[]): MomentGuess | null {
  if (written.length === 0) return null;
  const values = written.map(plainSpaces);
  const share = (n: number) => n / values.length;
  if (share(values.filter((text) => ISO_BOTH.test(text)).length) >= ENOUGH)
    return { is: "date_time", forms: [null], proof: null };
  const clock = clockForm(values);
  if (clock.share >= ENOUGH) return { is: "time", forms: [clock.form], proof: null };
  const cut = values.map((text) => BOTH.exec(text)).filter((parts) => parts !== null);
  if (share(cut.length) >= ENOUGH) {
    const days = dateForms(distinct(cut.map((parts) => parts[1] ?? "")));
    const hours = clockForm(distinct(cut.map((parts) => parts[3] ?? "")));
    const [mark = " "] = distinct(cut.map((parts) => parts[2] ?? ""));
    if (days.share < ENOUGH || hours.share < ENOUGH) return null;
    const whole = (day: string | null) =>
      `${day ?? "yyyy-MM-dd"}${MARKS[mark] ?? mark}${hours.form ?? secondsOf(cut.map((parts) => parts[3] ?? ""))}`;
    return { is: "date_time", forms: days.forms.map(whole), proof: days.proof };
  }
  const days = dateForms(values);
  return days.share >= ENOUGH ? { is: "date", forms: days.forms, proof: days.proof } : null;
}

/** Luxon wants to know how many parts a plain clock time has. */
function secondsOf(times: readonly string[]): string {
  const [longest = ""] = [...times].sort((one, other) => other.length - one.length);
  return longest.includes(".") ? "HH:mm:ss.SSS" : longest.length > 5 ? "HH:mm:ss" : "HH:mm";
}
