import type { Run } from "./run.ts";

/** Runs that the log expects, one entry a swing, when their numbers add up to the swings that there are; else null. */
export function countedOff(runs: readonly Run[], swings: number): number[] | null {
  const order: number[] = [];
  for (const [index, { slot, expected }] of runs.entries()) {
    if (slot === null) continue;
    if (expected === null || order.length + expected > swings) return null;
    for (let i = 0; i < expected; i++) order.push(index);
  }
  return order.length === swings ? order : null;
}
