/** Milliseconds in a day. Days here are calendar days counted in UTC, so each has the same length. */
export const DAY_MS = 86_400_000;
export const WEEK_MS = 7 * DAY_MS;

/** Midnight UTC of an ISO day, in epoch milliseconds. */
export function dayOf(isoDay: string): number {
  const ms = Date.parse(`${isoDay}T00:00:00Z`);
  if (Number.isNaN(ms)) throw new RangeError(`not a day: ${isoDay}`);
  return ms;
}

/** ISO day of an epoch time. */
export function isoDay(ms: number): string {
  return new Date(ms).toISOString().slice(0, 10);
}

/** The Monday on or before a day (ISO 8601 weeks start on Monday). */
export function mondayOf(ms: number): number {
  const weekday = (new Date(ms).getUTCDay() + 6) % 7;
  return ms - weekday * DAY_MS;
}

/** Whole years between two ISO days, as birthdays count them. */
export function wholeYears(from: string, to: string): number {
  const years = Number(to.slice(0, 4)) - Number(from.slice(0, 4));
  return to.slice(5) < from.slice(5) ? years - 1 : years;
}
