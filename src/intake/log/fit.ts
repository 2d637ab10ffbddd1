import { firstPauses, logPause } from "./gaps.ts";
import { type Fit, Lattice } from "./lattice.ts";
import { FIRST_SLIPS, type Run } from "./run.ts";

const TIMES_OVER = 6;

/**
 * Lays swings over planned runs in order: every run takes swings that follow each other, or none. Which swings belong where
 * is weighed over all ways of doing so (forward and backward sums): by how many swings a run expects, by the pauses before
 * the swings, and by what else is known. What the day's pauses are like is learned from the day itself (expectation and
 * maximisation, a fixed number of times, so that the outcome is the same everywhere).
 *
 * @param pauses   milliseconds before each swing; null where unknown; the first one is not looked at
 * @param evidence logarithm of how well swing and run go together by anything else; 0 says nothing
 * @returns null when no way of laying them is possible
 */
export function fitRuns(
  runs: readonly Run[],
  pauses: readonly (number | null)[],
  evidence: (swing: number, run: number) => number = () => 0,
): Fit | null {
  if (pauses.length === 0 || runs.length === 0) return null;
  const logs = pauses.map((ms, i) => (ms === null || i === 0 ? null : logPause(ms)));
  const known = logs.filter((log) => log !== null);
  const changes = runs.filter(({ slot }) => slot !== null).length - 1;
  const first = firstPauses(known, changes);
  const lattice = new Lattice(runs, logs, evidence);
  let now = first;
  let slips = FIRST_SLIPS;
  for (let time = 1; known.length > 0 && time < TIMES_OVER; time++) {
    const better = lattice.weigh(now, slips).learn(now, first);
    if (better === null) return null;
    now = better.pauses;
    slips = better.slips;
  }
  return lattice.weigh(now, slips).fit();
}
