import type { Season } from "../schema/season.ts";

/**
 * The day a season stands for when nobody names one: its last measured day, and never a day outside it.
 * Without a measured day inside the season it is the season's end.
 *
 * @returns `yyyy-mm-dd`
 */
export function asOfFor({ facility, athletes }: Pick<Season, "facility" | "athletes">): string {
  const { start, end } = facility.season;
  let last: string | null = null;
  for (const { reps } of athletes) {
    for (const day of reps.date) if (day >= start && day <= end && (last === null || day > last)) last = day;
  }
  return last ?? end;
}
