/** A calendar day in milliseconds; counted in UTC, each has the same length. */
export const MS_PER_DAY = 86_400_000;

const ISO_DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

/**
 * A calendar day written `yyyy-mm-dd` (ISO 8601, proleptic Gregorian calendar).
 *
 * @returns epoch milliseconds of that day's midnight in UTC, or null when it is written otherwise or is no real day
 * @example calendarDay("2024-02-29") // => 1709164800000
 */
export function calendarDay(text: string): number | null {
  const parts = ISO_DAY.exec(text);
  if (!parts) return null;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  const ms = Date.UTC(year, month - 1, day);
  // Date.UTC rolls 30 February over into March, and takes years below 100 for 19xx.
  return new Date(ms).toISOString().slice(0, 10) === text ? ms : null;
}

/** `yyyy-mm-dd` of a midnight in UTC. */
export const isoDay = (ms: number): string => new Date(ms).toISOString().slice(0, 10);
