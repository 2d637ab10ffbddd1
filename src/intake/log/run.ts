import type { Change } from "./gaps.ts";

/** Swings that the log expects in a row: one hitter, one round, one bat. */
export interface Run {
  /** Index of what its swings belong to: hitter, block and bat; null for swings that the log knows nothing of. */
  readonly slot: number | null;
  readonly athlete: string;
  /** Position of the block in the day. */
  readonly block: number;
  readonly round: number;
  /** Swings; null when the log does not say. */
  readonly expected: number | null;
  /** How likely it is that the run did not take place. */
  readonly skip: number;
}

/** The largest thing that changes between two runs. */
export function changeBetween(one: Run, other: Run): Change {
  if (one.slot === null || other.slot === null || one.block !== other.block) return "block";
  if (one.round !== other.round) return "round";
  return one.athlete === other.athlete ? "part" : "turn";
}

/** How often a device misses a swing, and how many rows too many it makes in a run. */
export interface Slips {
  /** Share of the swings. */
  readonly missed: number;
  /** Rows a run, as a waggle that is taken for a swing. */
  readonly extra: number;
}

/** Slips before the day itself has shown any. Chosen by hand, as much as of 60 swings and of 12 runs. */
export const FIRST_SLIPS: Slips = { missed: 0.04, extra: 0.12 };
const PRIOR = { swings: 60, runs: 12 } as const;

/** Slips as the day shows them. */
export function betterSlips(short: number, swings: number, over: number, runs: number): Slips {
  return {
    missed: (short + FIRST_SLIPS.missed * PRIOR.swings) / (swings + PRIOR.swings),
    extra: (over + FIRST_SLIPS.extra * PRIOR.runs) / (runs + PRIOR.runs),
  };
}

/** A hitter may stop early, or go on. Chosen by hand. */
const OTHERWISE = 0.03;
/** The most swings in a row that a log need not announce. */
export const MOST_IN_A_ROW = 80;

/**
 * Logarithm of the probability of finding 1, 2, … rows in a run that took place: missed swings are binomial, extra rows Poisson.
 *
 * @returns entry c - 1 for c rows
 */
export function logCounts(expected: number | null, slips: Slips): Float64Array {
  if (expected === null) return new Float64Array(MOST_IN_A_ROW).fill(-Math.log(MOST_IN_A_ROW));
  const most = expected * 2 + 6;
  const early = (c: number): number => (c < expected ? 1 / expected : 0.5 ** (c - expected) / expected);
  return Float64Array.from({ length: most }, (_, i) =>
    Math.log((1 - OTHERWISE) * found(i + 1, expected, slips) + OTHERWISE * early(i + 1)),
  );
}

function found(c: number, expected: number, { missed: share, extra: rate }: Slips): number {
  let sum = 0;
  for (let missed = Math.max(0, expected - c); missed <= expected; missed++) {
    const extra = c - (expected - missed);
    const seen = logChoose(expected, missed) + missed * Math.log(share) + (expected - missed) * Math.log(1 - share);
    sum += Math.exp(seen + extra * Math.log(rate) - rate - logFactorial(extra));
  }
  return sum;
}

const logChoose = (n: number, k: number): number => logFactorial(n) - logFactorial(k) - logFactorial(n - k);

function logFactorial(n: number): number {
  let sum = 0;
  for (let i = 2; i <= n; i++) sum += Math.log(i);
  return sum;
}
