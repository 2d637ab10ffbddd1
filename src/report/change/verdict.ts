import type { VERDICTS } from "../../schema/reasons.ts";
import type { Interval } from "../../stats/interval.ts";

export type Verdict = (typeof VERDICTS)[number];

/** A change with its intervals, turned so that above 0 is better. */
export interface Turned {
  readonly estimate: number;
  readonly ci95: Interval;
  readonly ci90: Interval;
}

/** A change the other way round. */
export const mirrored = ({ estimate, ci95, ci90 }: Turned): Turned => ({
  estimate: -estimate,
  ci95: [-ci95[1], -ci95[0]],
  ci90: [-ci90[1], -ci90[0]],
});

/** Improvement, or null where the interval does not lie above 0. */
function improvement({ estimate, ci95 }: Turned, worth: number | null): 3 | 2 | 1 | null {
  if (!(ci95[0] > 0)) return null;
  if (worth === null) return 2;
  if (ci95[0] > worth) return 3;
  return estimate > worth ? 2 : 1;
}

const IMPROVED = { 3: "clear-improvement", 2: "improvement", 1: "small-improvement" } as const;
const DECLINED = { 3: "clear-decline", 2: "decline", 1: "small-decline" } as const;

/**
 * The verdict by where the interval lies against 0 and the smallest change that matters; rows are tried from the top, and what
 * is left over cannot be told.
 *
 * | interval                              | verdict             |
 * | whole 95 % above `worth`              | clear-improvement   |
 * | 95 % above 0, estimate above `worth`  | improvement         |
 * | 95 % above 0, estimate not above it   | small-improvement   |
 * | the mirror images                     | decline             |
 * | whole 90 % within -worth..worth       | same                |
 *
 * "Same" is a statement of its own (two one-sided tests at 5 %, hence the 90 % interval), never the absence of a difference.
 * Without a smallest change that matters there is neither "clear" nor "small" nor "same".
 *
 * @param change in the metric's unit, turned so that above 0 is better
 * @param worth  smallest change that matters, above 0; null where nobody knows it
 */
export function verdictOf(change: Turned, worth: number | null): Verdict {
  const up = improvement(change, worth);
  if (up !== null) return IMPROVED[up];
  const down = improvement(mirrored(change), worth);
  if (down !== null) return DECLINED[down];
  const [low, high] = change.ci90;
  return worth !== null && low >= -worth && high <= worth ? "same" : "cannot-tell";
}

const CHANGES: readonly Verdict[] = [...Object.values(IMPROVED), ...Object.values(DECLINED)];

/** Does a verdict say that something changed? */
export const isChange = (verdict: Verdict | null): boolean => verdict !== null && CHANGES.includes(verdict);
