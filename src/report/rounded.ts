/** Significant digits of every number in a report: far finer than any device, far coarser than the last bits of a sum. */
const DIGITS = 10;

/**
 * A report with its numbers at ten significant digits: files and pages hold no digits that are an accident of the order of adding, and
 * machines whose last bits differ write the same bytes.
 */
export function rounded<T>(value: T): T {
  if (typeof value === "number") return (Number.isInteger(value) ? value : Number(value.toPrecision(DIGITS))) as T;
  if (Array.isArray(value)) return value.map(rounded) as T;
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)])) as T;
}
