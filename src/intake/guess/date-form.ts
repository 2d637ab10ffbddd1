import { DateTime } from "luxon";

/** How the days of a column are written, as far as the values tell. */
export interface DateGuess {
  /** Share of the values that at least one form reads, 0 to 1. */
  readonly share: number;
  /** Luxon forms that are left, one for each order of day, month and year; null stands for ISO 8601. */
  readonly forms: readonly (string | null)[];
  /** A value that only the first form reads, if there was another to rule out. */
  readonly proof: string | null;
}

type Order = "ymd" | "dmy" | "mdy";

/** Forms of each order, the stricter first: two digits where all values have them. */
function numericForms(mark: string): Record<Order, string[]> {
  const both = (order: (d: string, m: string, y: string) => string) =>
    ["yyyy", "yy"].flatMap((y) => [order("dd", "MM", y), order("d", "M", y)]);
  return {
    ymd: both((d, m, y) => [y, m, d].join(mark)),
    dmy: both((d, m, y) => [d, m, y].join(mark)),
    mdy: both((d, m, y) => [m, d, y].join(mark)),
  };
}

const NAMED: Readonly<Record<string, readonly string[]>> = {
  named: [
    "d MMM yyyy",
    "d-MMM-yyyy",
    "d-MMM-yy",
    "d MMM yy",
    "d MMMM yyyy",
    "MMM d, yyyy",
    "MMM d yyyy",
    "MMMM d, yyyy",
  ],
  compact: ["yyyyMMdd"],
};

const reads = (text: string, form: string): boolean =>
  DateTime.fromFormat(text, form, { zone: "utc", locale: "en-US" }).isValid;
const isIso = (text: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(text) && DateTime.fromISO(text).isValid;

/** The first form of an order that reads most values, and which values it reads. */
function bestOf(forms: readonly string[], values: readonly string[]): { form: string; read: boolean[]; n: number } {
  let best = { form: forms[0] ?? "", read: [] as boolean[], n: 0 };
  for (const form of forms) {
    const read = values.map((text) => reads(text, form));
    const n = read.filter(Boolean).length;
    if (n > best.n) best = { form, read, n };
  }
  return best;
}

/** Less of the column than this and it is no column of days. */
const ENOUGH = 0.8;

/**
 * How days are written. Whether day or month comes first is decided by a value that cannot be read the other way round,
 * and by nothing else: without one both forms are left.
 *
 * @param values distinct filled cells
 * @example dateForms(["06/10/2025", "13/10/2025"]).forms // => ["dd/MM/yyyy"]
 * @example dateForms(["06/10/2025"]).forms // => ["dd/MM/yyyy", "MM/dd/yyyy"]
 */
export function dateForms(values: readonly string[]): DateGuess {
  const none: DateGuess = { share: 0, forms: [], proof: null };
  if (values.length === 0) return none;
  const iso = values.filter(isIso).length / values.length;
  if (iso >= ENOUGH) return { share: iso, forms: [null], proof: null };
  const mark = /^\d{1,4}([./\- ])\d{1,2}\1\d{1,4}$/;
  const found = values.map((text) => mark.exec(text)?.[1]).find((text) => text !== undefined);
  const orders: readonly (readonly string[])[] =
    found === undefined ? Object.values(NAMED) : Object.values(numericForms(found));
  const all = orders.map((forms) => bestOf(forms, values));
  const able = all.filter(({ n }) => n / values.length >= ENOUGH);
  if (able.length === 0) return none;
  const share = Math.max(...able.map(({ n }) => n)) / values.length;
  const onlyIn = (one: boolean[], other: boolean[]) => one.findIndex((read, i) => read && other[i] !== true);
  const ruledOut = (one: (typeof able)[number]) =>
    able.some((other) => onlyIn(other.read, one.read) !== -1 && onlyIn(one.read, other.read) === -1);
  const left = able.filter((one) => !ruledOut(one));
  const [only, ...more] = left;
  const others = all.filter((one) => one !== only);
  const proves = (i: number) => only?.read[i] === true && others.every(({ read }) => read[i] !== true);
  const proof = more.length > 0 || others.length === 0 ? undefined : values.find((_, i) => proves(i));
  return { share, forms: left.map(({ form }) => form), proof: proof ?? null };
}
