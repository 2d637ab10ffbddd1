import type { AssignedBy } from "../../schema/season.ts";
import { countedOff } from "./by-count.ts";
import { clockMs, fitsWindow, pausesOf, windowsOf } from "./by-time.ts";
import { fitRuns } from "./fit.ts";
import type { Fit } from "./lattice.ts";
import { expectedSwings, type ResolvedBlock } from "./resolve.ts";
import { rotation } from "./rotation.ts";
import { SURE_ROUND } from "./rounds.ts";
import type { Run } from "./run.ts";

/** A swing that looks for its block. */
export interface Swing {
  /** Clock time; null where the row has none. */
  readonly time: string | null;
  /** Whether what the row says of itself (round, bat, environment …) goes with a block. */
  agrees(block: ResolvedBlock, round: number): boolean;
}

/** Where a swing belongs, or why nobody can say. */
export type Laid =
  | { readonly slot: number; readonly round: number | null; readonly by: AssignedBy }
  | {
      readonly why: "between" | "outside" | "count";
      /** The blocks it may belong to, the likeliest first. */
      readonly slots: readonly number[];
    };

export interface Layout {
  readonly laid: readonly Laid[];
  /** Swings that look most like each block's, doubtful ones included. */
  readonly found: readonly number[];
}

/** A block is told from its neighbours when nineteen ways of twenty agree; a hitter from the others when 49 of 50 do. */
const SURE = { block: 0.95, hitter: 0.98 } as const;
const COSTS = 4e8;

/**
 * Lays one day's swings, in order, over the blocks that they may belong to.
 *
 * Where the swings are as many as the log expects and the pauses do not speak against it, they are counted off. Else blocks are told apart
 * by their numbers of swings, by pauses and by times together; swings about which that leaves doubt are not laid.
 *
 * @param numbered the rows carry the number of the block: it is certain, and only round and bat are to be found
 */
export function layOut(swings: readonly Swing[], blocks: readonly ResolvedBlock[], numbered: boolean): Layout {
  const runs = rotation(blocks, !numbered);
  const pauses = pausesOf(swings.map(({ time }) => time));
  const windows = windowsOf(blocks);
  const timed = windows !== null && swings.some(({ time }) => time !== null);
  const by: AssignedBy = numbered ? "number" : timed ? "time" : "count";
  const evidence = (i: number, j: number): number => evidenceOf(swings[i], runs[j], blocks, windows);
  const fit = swings.length * runs.length ** 2 > COSTS ? null : fitRuns(runs, pauses, evidence);
  const counted = countedOff(runs, swings.length);
  const most = fit && likeliest(fit, runs);
  const silent = pauses.every((pause) => pause === null) && !timed;
  if (counted !== null && (silent || most === null || sameSlots(counted, most, runs))) {
    const agree = counted.every((run, i) => evidence(i, run) === 0);
    if (agree || most !== null) return countedLayout(counted, runs, blocks, by, fit);
  }
  if (fit === null || most === null) {
    const slots = blocks.map((_, slot) => slot);
    return { laid: swings.map(() => ({ why: "count", slots })), found: blocks.map(() => 0) };
  }
  const told: AssignedBy = by === "count" && !silent ? "time" : by;
  const laid = weighed(fit, runs, blocks, told, numbered || certain(swings, blocks));
  return doubted(numbered ? laid : inWindow(laid, swings, blocks, windows), blocks, most, runs, numbered);
}

/**
 * What the log's own clock settles: where every block of one hitter has its start and end written down, a swing whose time lies in
 * the window of one block alone, and which does not say otherwise itself, belongs there, whatever counts and pauses of the rest of
 * the day look like.
 */
function inWindow(
  laid: readonly Laid[],
  swings: readonly Swing[],
  blocks: readonly ResolvedBlock[],
  windows: ReturnType<typeof windowsOf>,
): Laid[] {
  const written = blocks.every(
    ({ start, end, athlete }) => start !== null && end !== null && athlete === blocks[0]?.athlete,
  );
  if (windows === null || !written) return [...laid];
  return laid.map((one, i) => {
    const swing = swings[i];
    if (swing?.time == null) return one;
    const now = clockMs(swing.time);
    const slots = blocks.flatMap((_, slot) => (fitsWindow(now, windows[slot]!) === 0 ? [slot] : []));
    const slot = slots[0];
    const block = slot === undefined ? undefined : blocks[slot];
    if (slot === undefined || block === undefined || slots.length > 1 || !swing.agrees(block, 1)) return one;
    return "slot" in one && one.slot === slot ? one : { slot, by: "time", round: null };
  });
}

/** The log knows one block only, and no more swings are there than it expects. */
function certain(swings: readonly Swing[], blocks: readonly ResolvedBlock[]): boolean {
  const [block] = blocks;
  if (blocks.length !== 1 || block === undefined) return false;
  const expected = expectedSwings(block);
  return expected === null || swings.length <= expected;
}

const AGAINST = Math.log(1e-3);

function evidenceOf(
  swing: Swing | undefined,
  run: Run | undefined,
  blocks: readonly ResolvedBlock[],
  windows: ReturnType<typeof windowsOf>,
): number {
  const slot = run?.slot ?? null;
  const block = slot === null ? undefined : blocks[slot];
  if (swing === undefined || run === undefined || slot === null || block === undefined) return 0;
  const window = windows?.[slot];
  const inTime = window && swing.time !== null ? fitsWindow(clockMs(swing.time), window) : 0;
  return inTime + (swing.agrees(block, run.round) ? 0 : AGAINST);
}

/** The likeliest run of every swing. */
function likeliest({ swings, runs: m, probability }: Fit, runs: readonly Run[]): number[] {
  return Array.from({ length: swings }, (_, i) => {
    let best = 0;
    for (let j = 1; j < runs.length; j++)
      if ((probability[i * m + j] ?? 0) > (probability[i * m + best] ?? 0)) best = j;
    return best;
  });
}

const sameSlots = (one: readonly number[], other: readonly number[], runs: readonly Run[]): boolean =>
  one.every((run, i) => runs[run]?.slot === runs[other[i] ?? -1]?.slot);

function countedLayout(
  counted: readonly number[],
  runs: readonly Run[],
  blocks: readonly ResolvedBlock[],
  by: AssignedBy,
  fit: Fit | null,
): Layout {
  const laid = counted.map((run, i): Laid => {
    const slot = runs[run]?.slot ?? 0;
    const round = blocks[slot]?.rounds === null ? null : (runs[run]?.round ?? null);
    // Pauses may show rounds of other lengths than the log's, inside a block of the right length.
    const sure = fit === null || roundOf(fit, runs, i, slot)?.round === runs[run]?.round;
    return { slot, round: sure ? round : null, by };
  });
  return { laid, found: blocks.map((_, slot) => laid.filter((one) => "slot" in one && one.slot === slot).length) };
}

/** The likeliest round of a swing inside its slot, and how likely it is there. */
function roundOf(
  { runs: m, probability }: Fit,
  runs: readonly Run[],
  i: number,
  slot: number,
): { round: number; share: number } | null {
  let best: { round: number; share: number } | null = null;
  let all = 0;
  for (const [j, run] of runs.entries()) {
    if (run.slot !== slot) continue;
    const share = probability[i * m + j] ?? 0;
    all += share;
    if (best === null || share > best.share) best = { round: run.round, share };
  }
  return best === null || all === 0 ? null : { round: best.round, share: best.share / all };
}

function weighed(
  fit: Fit,
  runs: readonly Run[],
  blocks: readonly ResolvedBlock[],
  by: AssignedBy,
  inside: boolean,
): Laid[] {
  const sure = blocks.some(({ athlete }) => athlete !== blocks[0]?.athlete) ? SURE.hitter : SURE.block;
  return Array.from({ length: fit.swings }, (_, i): Laid => {
    const shares = blocks.map(() => 0);
    for (const [j, { slot }] of runs.entries())
      if (slot !== null) shares[slot] = (shares[slot] ?? 0) + (fit.probability[i * fit.runs + j] ?? 0);
    const known = shares.reduce((sum, share) => sum + share, 0);
    const order = shares.map((_share, slot) => slot).sort((one, other) => (shares[other] ?? 0) - (shares[one] ?? 0));
    const slot = order[0] ?? 0;
    const likely = (shares[slot] ?? 0) / (inside && known > 0 ? known : 1);
    if (likely < sure) {
      const possible = order.filter((one) => (shares[one] ?? 0) > 0.05);
      if (1 - known > (shares[order[1] ?? -1] ?? 0)) return { why: "outside", slots: possible };
      return { why: "between", slots: possible.length > 1 ? possible : order.slice(0, 2) };
    }
    const round = roundOf(fit, runs, i, slot);
    const rounds = blocks[slot]?.rounds ?? null;
    return { slot, by, round: rounds !== null && round !== null && round.share >= SURE_ROUND ? round.round : null };
  });
}

/** Many more swings than a block expects are not the block's: the log is about something else. */
function doubted(
  laid: readonly Laid[],
  blocks: readonly ResolvedBlock[],
  most: readonly number[],
  runs: readonly Run[],
  numbered: boolean,
): Layout {
  const found = blocks.map((_, slot) => most.filter((run) => runs[run]?.slot === slot).length);
  const too = blocks.map((block, slot) => {
    const expected = expectedSwings(block);
    return !numbered && expected !== null && (found[slot] ?? 0) > expected * 1.5 + 3;
  });
  return {
    found,
    laid: laid.map((one) => ("slot" in one && too[one.slot] ? { why: "count", slots: [one.slot] } : one)),
  };
}
