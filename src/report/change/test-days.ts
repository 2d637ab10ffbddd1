import type { Facility } from "../../schema/facility.ts";
import { mean } from "../../stats/mean.ts";
import { sumOf } from "../../stats/sum.ts";
import { DAY_MS, dayOf, isoDay } from "../calendar.ts";

/** A test day's value. */
interface Dated {
  readonly date: string;
  readonly mean: number;
}

/** The days of a test at either end of a season. */
export interface TestWindows {
  readonly first: readonly number[];
  readonly last: readonly number[];
}

/** First and last third of the season's days, for facilities that name no windows. */
function thirds({ start, end }: Facility["season"]) {
  const third = Math.floor((dayOf(end) - dayOf(start)) / DAY_MS / 3) * DAY_MS;
  return {
    baseline: { from: start, to: isoDay(dayOf(start) + third) },
    final: { from: isoDay(dayOf(end) - third), to: end },
  };
}

/** Values of a test in the season's baseline and final windows; fixed before any value is looked at. */
export function testWindows(days: readonly Dated[], season: Facility["season"]): TestWindows {
  const named = season.baseline && season.final ? { baseline: season.baseline, final: season.final } : thirds(season);
  const within = ({ from, to }: { from: string; to: string }) =>
    days.filter(({ date }) => date >= from && date <= to).map((day) => day.mean);
  return { first: within(named.baseline), last: within(named.final) };
}

/** Squares about each window's own mean, and their degrees of freedom. */
export function withinWindows(windows: TestWindows): { readonly squares: number; readonly df: number } {
  const parts = [windows.first, windows.last].filter((values) => values.length > 0);
  const squares = sumOf(parts.length, (p) => {
    const values = parts[p]!;
    const center = mean(values) ?? 0;
    return sumOf(values.length, (i) => (values[i]! - center) ** 2);
  });
  return { squares, df: parts.reduce((sum, values) => sum + values.length - 1, 0) };
}
