import type { Series } from "../report/schema.ts";
import { DAY_MS, dayMiddle } from "./days.ts";

type Line = NonNullable<Series["trend"]["sessionLine"]>;

/** One place along the session line: epoch milliseconds, and the line with both ends of its 95% band in the series' unit. */
export interface BandPoint {
  readonly x: number;
  readonly y: number;
  readonly low: number;
  readonly high: number;
}

const WEEK_MS = 7 * DAY_MS;

/**
 * The report's session line with its pointwise 95% band, redrawn from what the report says of it. With s the residual SD and t the
 * quantile behind the slope's interval, half of that interval is t·s/√Sxx, and the band's half-width at x is
 * t·s·√(1/n + (x − mean x)²/Sxx); so the second follows from the first and the session dates.
 *
 * @param days  ISO days of the sessions, in any order
 * @param steps pieces between the first and last session, at least 1
 * @returns points in time order; empty when the sessions do not spread over time
 * @see Draper & Smith (1998), Applied Regression Analysis, 3rd ed., section 3.1 (formula cited from memory)
 */
export function lineBand(line: Line, days: readonly string[], steps = 12): BandPoint[] {
  const times = days.map((day) => dayMiddle(day) / WEEK_MS);
  const first = Math.min(...times);
  const last = Math.max(...times);
  if (!(last > first)) return [];
  const mean = times.reduce((sum, t) => sum + (t - first), 0) / times.length + first;
  const spread = times.reduce((sum, t) => sum + (t - mean) ** 2, 0);
  const half = (line.ci95[1] - line.ci95[0]) / 2;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const share = i / steps;
    const t = first + (last - first) * share;
    const y = line.start + (line.end - line.start) * share;
    const reach = half * Math.sqrt(spread / times.length + (t - mean) ** 2);
    return { x: t * WEEK_MS, y, low: y - reach, high: y + reach };
  });
}
