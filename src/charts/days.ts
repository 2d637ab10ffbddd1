import type { Span } from "./chart.ts";

/** One day, ms. */
export const DAY_MS = 86_400_000;

/**
 * Midnight UTC that starts an ISO day, epoch milliseconds.
 *
 * @throws {RangeError} not an ISO day
 * @example dayStart("1970-01-02") // => 86400000
 */
export function dayStart(day: string): number {
  const ms = Date.parse(`${day}T00:00:00Z`);
  if (Number.isNaN(ms)) throw new RangeError(`a chart needs ISO days, got "${day}"`);
  return ms;
}

/** Noon of an ISO day: where a session's dot stands, so that a dot lies inside its day's column. Epoch milliseconds. */
export function dayMiddle(day: string): number {
  return dayStart(day) + DAY_MS / 2;
}

/** Start of the first and end of the last day of a span widened to hold `days` too. Epoch milliseconds, start < end. */
export function timeDomain(span: Span, days: readonly string[]): [number, number] {
  const starts = [span.start, span.end, ...days].map(dayStart);
  return [Math.min(...starts), Math.max(...starts) + DAY_MS];
}

/** What a time axis needs of the calendar: where months begin, and where each named month's part of the axis has its middle. */
export interface Months {
  readonly borders: readonly number[];
  readonly middles: readonly number[];
}

/**
 * Months of a stretch of time, UTC. A month whose part is too narrow for its name is left unnamed, and in long stretches only every
 * second, third … month is named.
 *
 * @param domain epoch milliseconds, start < end
 * @param width  of the axis, px
 * @param need   px that one name takes, air included
 */
export function months(domain: readonly [number, number], width: number, need: number): Months {
  const [start, end] = domain;
  const pxPerMs = width / (end - start);
  const every = Math.max(1, Math.ceil(need / (30.4 * DAY_MS * pxPerMs)));
  const first = new Date(start);
  const borders: number[] = [];
  const middles: number[] = [];
  for (let i = 0; ; i += 1) {
    const from = Math.max(start, Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + i, 1));
    if (from >= end) break;
    const to = Math.min(end, Date.UTC(first.getUTCFullYear(), first.getUTCMonth() + i + 1, 1));
    if (from > start) borders.push(from);
    if (i % every === 0 && (to - from) * pxPerMs * every >= need) middles.push((from + to) / 2);
  }
  return { borders, middles };
}
