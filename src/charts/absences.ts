import type { Absence } from "./chart.ts";
import { DAY_MS, dayStart } from "./days.ts";

/**
 * Tinted columns for days away, cut to the time axis and in time order; absences that lie outside are dropped.
 *
 * @param domain epoch milliseconds
 * @returns rows { x, x2 }, epoch milliseconds
 */
export function awayColumns(away: readonly Absence[], domain: readonly [number, number]): { x: number; x2: number }[] {
  return away
    .map((a) => ({ x: Math.max(domain[0], dayStart(a.from)), x2: Math.min(domain[1], dayStart(a.to) + DAY_MS) }))
    .filter((column) => column.x2 > column.x)
    .sort((a, b) => a.x - b.x || a.x2 - b.x2);
}

/**
 * One label per absence, in its middle but never off the plot; a label that would touch the one before it is left out, since
 * the same word already stands beside it.
 *
 * @param width of the label, px; @param plotWidth of the time axis, px
 * @returns rows { x, dx, text }: epoch milliseconds and a shift in px
 */
export function awayLabels(
  columns: readonly { x: number; x2: number }[],
  text: string,
  width: number,
  domain: readonly [number, number],
  plotWidth: number,
): { x: number; dx: number; text: string }[] {
  const rows: { x: number; dx: number; text: string }[] = [];
  let free = Number.NEGATIVE_INFINITY;
  const px = (t: number) => ((t - domain[0]) / (domain[1] - domain[0])) * plotWidth;
  for (const column of columns) {
    const middle = (px(column.x) + px(column.x2)) / 2;
    const shown = Math.max(width / 2, Math.min(plotWidth - width / 2, middle));
    if (shown - width / 2 < free) continue;
    free = shown + width / 2 + 4;
    rows.push({ x: (column.x + column.x2) / 2, dx: shown - middle, text });
  }
  return rows;
}
