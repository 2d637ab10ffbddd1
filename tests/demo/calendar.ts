/** Days of the demo season. Dates are ISO text; arithmetic runs in UTC, so no time zone can move a day. */
export const SEASON_START = "2025-10-06";
export const SEASON_END = "2026-02-22";
const DAY_MS = 86_400_000;

/** The cage is closed from the first to the second date, both included. */
const CLOSED: readonly (readonly [string, string])[] = [
  ["2025-11-27", "2025-11-28"],
  ["2025-12-24", "2026-01-01"],
];

/** Days from `from` to `date`; negative when `date` is earlier. */
export function daysBetween(from: string, date: string): number {
  return Math.round((Date.parse(date) - Date.parse(from)) / DAY_MS);
}

export function addDays(date: string, days: number): string {
  return new Date(Date.parse(date) + days * DAY_MS).toISOString().slice(0, 10);
}

/** 1 is Monday, 7 is Sunday. */
export function weekday(date: string): number {
  return ((new Date(date).getUTCDay() + 6) % 7) + 1;
}

/** Every open day of the season that falls on one of these weekdays, in order. */
export function openDays(weekdays: readonly number[]): string[] {
  const days: string[] = [];
  for (let date = SEASON_START; date <= SEASON_END; date = addDays(date, 1)) {
    const closed = CLOSED.some(([from, to]) => date >= from && date <= to);
    if (!closed && weekdays.includes(weekday(date))) days.push(date);
  }
  return days;
}

/** How much of the season has passed on this date: 0 on the first day, 1 on the last. */
export function seasonShare(date: string): number {
  return daysBetween(SEASON_START, date) / daysBetween(SEASON_START, SEASON_END);
}

/** Seconds after midnight as `HH:MM:SS`. */
export function clock(seconds: number): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}
