import type { ResolvedBlock } from "./resolve.ts";

const MINUTE = 60_000;
/** Clocks of people and devices differ by as much without anybody being wrong. */
const SLACK = MINUTE;
const LEAST = -12;

/** Milliseconds of the day of a clock time `hh:mm`, `hh:mm:ss` or `hh:mm:ss.sss`. */
export function clockMs(time: string): number {
  const [hours = 0, minutes = 0, seconds = 0] = time.split(":").map(Number);
  return (hours * 3600 + minutes * 60 + seconds) * 1000;
}

/** From when to when a block lasted, in milliseconds of the day; the end is not included. */
export interface Window {
  readonly from: number;
  readonly to: number;
}

/**
 * When each block was, if the log says so for every one: from its start to its end, which is the next block's start where it
 * is not written. An end `hh:mm` includes that minute.
 *
 * @returns null when a block has no start
 */
export function windowsOf(blocks: readonly ResolvedBlock[]): Window[] | null {
  const starts = blocks.map(({ start }) => (start === null ? null : clockMs(start)));
  if (starts.length === 0 || starts.some((start) => start === null)) return null;
  const known = starts.map((start) => start ?? 0);
  return blocks.map(({ end, order }, i) => {
    const from = known[i] ?? 0;
    const next = Math.min(...known.filter((start, j) => blocks[j]?.order !== order && start > from), 24 * 60 * MINUTE);
    if (end === null) return { from, to: next };
    return { from, to: Math.min(next, clockMs(end) + (end.length === 5 ? MINUTE : 0)) };
  });
}

/** Logarithm of how well a time goes with a window: 0 inside, less with every minute outside. */
export function fitsWindow(time: number, { from, to }: Window): number {
  const off = Math.max(0, from - time, time - to);
  if (off === 0) return 0;
  return Math.max(LEAST, -1 - (3 * Math.max(0, off - SLACK)) / MINUTE - off / MINUTE);
}

/** Pauses before each swing in milliseconds; null where a time is missing, or where times have no seconds. */
export function pausesOf(times: readonly (string | null)[]): (number | null)[] {
  const seconds = times.some((time) => time !== null && /:\d\d:(?!00(?:\.0+)?$)/.test(time));
  const ms = times.map((time) => (seconds && time !== null ? clockMs(time) : null));
  return ms.map((now, i) => {
    const before = ms[i - 1] ?? null;
    return now === null || before === null ? null : now - before;
  });
}
