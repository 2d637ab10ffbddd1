import type { Problem } from "../../schema/season.ts";
import type { Laid } from "./lay.ts";
import { expectedSwings, type ResolvedBlock } from "./resolve.ts";

/** What a block is called in a sentence: `block 3`, with its bat and its hitter where that is what is in doubt. */
function called(block: ResolvedBlock, among: readonly ResolvedBlock[], nameless: boolean): string {
  const part = block.part !== null && among.some((other) => other.part !== block.part) ? ` part ${block.part}` : "";
  return `block ${block.label}${part}${nameless ? ` of ${block.athlete}` : ""}`;
}

/**
 * Why a row has no block, as the arguments of its sentence: what the block expects and how many swings look like its own, and
 * which blocks the row may belong to.
 */
export function unassignedArgs(
  laid: Exclude<Laid, { slot: number }>,
  blocks: readonly ResolvedBlock[],
  found: readonly number[],
  nameless: boolean,
): Problem["args"] {
  const possible = laid.slots.flatMap((slot) => blocks[slot] ?? []);
  const short = laid.slots.filter((slot) => {
    const expected = blocks[slot] ? expectedSwings(blocks[slot]) : null;
    return expected !== null && expected !== found[slot];
  });
  const [slot] = short;
  const block = slot === undefined ? undefined : blocks[slot];
  const names = possible.map((one) => called(one, blocks, nameless)).slice(0, 3);
  const args: Record<string, string | number> = { detail: laid.why };
  if (names.length > (laid.why === "outside" ? 0 : 1)) args.blocks = names.join(" or ");
  if (block === undefined || slot === undefined) return args;
  args.block = called(block, blocks, nameless);
  args.expected = expectedSwings(block) ?? 0;
  args.found = found[slot] ?? 0;
  return args;
}
