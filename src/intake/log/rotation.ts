import type { ResolvedBlock } from "./resolve.ts";
import type { Run } from "./run.ts";

/** A hitter leaves out a round now and then; seldom without a word where the log says who did. Chosen by hand. */
const LEFT_OUT = { unsaid: 0.02, said: 0.005 } as const;
/** Swings that the log knows nothing of: seldom, but a device left running sees them. */
const STRANGERS: Omit<Run, "block"> = { slot: null, athlete: "", round: 0, expected: null, skip: 0.99 };

/**
 * Runs of swings in the order in which a day's blocks make them: block by block, round by round, hitter by hitter, bat by
 * bat. One hitter alone is a rotation of one. A hitter with fewer rounds than the others may leave out any of them.
 *
 * @param blocks of one day in order of the day; `slot` of a run is an index into them
 * @param strangers whether there may be swings before, between and after blocks that the log knows nothing of
 */
export function rotation(blocks: readonly ResolvedBlock[], strangers: boolean): Run[] {
  const runs: Run[] = [];
  const gap = (): void => {
    if (strangers) runs.push({ ...STRANGERS, block: -1 });
  };
  for (const order of [...new Set(blocks.map((block) => block.order))].sort((one, other) => one - other)) {
    gap();
    runs.push(...ofBlock(blocks, order));
  }
  gap();
  return runs;
}

function ofBlock(blocks: readonly ResolvedBlock[], order: number): Run[] {
  const slots = blocks.flatMap((block, slot) => (block.order === order ? [{ block, slot }] : []));
  const turns = slots.sort(
    ({ block: one }, { block: other }) =>
      one.turn - other.turn || ((one.part ?? "") < (other.part ?? "") ? -1 : one.part === other.part ? 0 : 1),
  );
  const most = Math.max(...turns.map(({ block }) => block.rounds ?? 1));
  const leftOut = turns.some(({ block }) => (block.rounds ?? 1) < most) ? LEFT_OUT.said : LEFT_OUT.unsaid;
  const rounds = Array.from({ length: most }, (_, i) => i + 1);
  return rounds.flatMap((round) =>
    turns.map(({ block, slot }): Run => {
      const missing = (most - (block.rounds ?? 1)) / most;
      const skip = Math.max(leftOut, missing);
      return { slot, athlete: block.athlete, block: order, round, expected: block.reps, skip };
    }),
  );
}
