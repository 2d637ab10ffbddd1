import type { Profile } from "../../schema/profile.ts";
import type { AssignedBy, LineOf, LoggedBlock, Problem } from "../../schema/season.ts";
import type { Block } from "../../schema/tables.ts";
import type { RowFates } from "../row-fates.ts";
import { type AssignSetup, assignBlocks } from "./assign.ts";
import { type LogSetup, logRows } from "./log-rows.ts";
import { presence } from "./presence.ts";
import { expectedSwings, type ResolvedBlock, resolveLog } from "./resolve.ts";

export interface SessionLogSetup extends LogSetup, Omit<AssignSetup, "fields" | "athletes"> {
  /** By athlete's id; an athlete whose profile cannot be used has none. */
  readonly profiles: ReadonlyMap<string, Pick<Profile, "away">>;
}

/**
 * The session log: who did which block, which row belongs to which block, what the row inherits. Rows of no athlete get
 * theirs here, or are set aside.
 *
 * @returns each athlete's blocks, in order of day and log
 */
export function sessionLog(
  written: readonly (Block & { readonly at: LineOf })[],
  fates: RowFates,
  setup: SessionLogSetup,
): { log: ReadonlyMap<string, LoggedBlock[]>; problems: Problem[] } {
  const { rows, problems } = logRows(written, setup);
  const tables = fates.files.map(({ table }) => table);
  const there = presence(tables, setup.athletes, rows, setup.profiles);
  const { blocks, problems: ofLog } = resolveLog(rows, there, setup.drills);
  const { assigned, problems: ofRows } = assignBlocks(fates, blocks, setup);
  const log = new Map<string, LoggedBlock[]>();
  for (const [index, block] of blocks.entries())
    log.set(block.athlete, [...(log.get(block.athlete) ?? []), logged(block, assigned[index] ?? {})]);
  return { log, problems: [...problems, ...ofLog, ...ofRows] };
}

function logged(block: ResolvedBlock, assigned: Readonly<Partial<Record<AssignedBy, number>>>): LoggedBlock {
  const { date, session, label, part, context, rounds, reps, measured, from } = block;
  const told = Object.fromEntries([...context].map(([field, { value }]) => [field, value]));
  return {
    date,
    session,
    block: label,
    part,
    context: told,
    rounds,
    reps,
    swings: expectedSwings(block),
    measured,
    assigned,
    from,
  };
}
