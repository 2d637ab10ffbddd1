import type { Facility } from "../schema/facility.ts";
import { mean } from "../stats/mean.ts";
import { welch } from "../stats/welch.ts";
import type { Series } from "./schema.ts";

/** Sessions that either end of a season must hold before the two are compared. */
export const SESSIONS_PER_BLOCK = 3;

/** What a block is made of: sessions in order of day. */
interface Dated {
  readonly date: string;
  readonly n: number;
  readonly mean: number;
}

/** Indices of the sessions of the first and of the last block, or null when the season is too short to have both. */
export interface BlockIndices {
  readonly first: readonly number[];
  readonly last: readonly number[];
}

/**
 * Chooses the two ends of a season before any value is looked at: the facility's baseline and final windows where both hold
 * at least three sessions, else the first and the last third of the sessions with at least three in each.
 */
export function blockIndices(
  sessions: readonly { readonly date: string }[],
  season: Facility["season"],
): BlockIndices | null {
  const indices = sessions.map((_, i) => i);
  const within = (window: { from: string; to: string } | undefined) =>
    window ? indices.filter((i) => sessions[i]!.date >= window.from && sessions[i]!.date <= window.to) : [];
  const first = within(season.baseline);
  const last = within(season.final);
  if (Math.min(first.length, last.length) >= SESSIONS_PER_BLOCK) return { first, last };
  const third = Math.floor(sessions.length / 3);
  if (third < SESSIONS_PER_BLOCK) return null;
  return { first: indices.slice(0, third), last: indices.slice(-third) };
}

/** A block's dates, size and mean of session means. */
export function block(sessions: readonly Dated[], indices: readonly number[]): NonNullable<Series["first"]> {
  const chosen = indices.map((i) => sessions[i]!);
  const value = mean(chosen.map((session) => session.mean));
  if (value === null) throw new RangeError("a block needs at least one session");
  return {
    from: chosen[0]!.date,
    to: chosen.at(-1)!.date,
    sessions: chosen.length,
    n: chosen.reduce((sum, session) => sum + session.n, 0),
    mean: value,
  };
}

/**
 * Early against late, for the reader: last block less first block with Welch's interval on session means. Null where neither block
 * varies: no interval exists.
 */
export function earlyLateOf(sessions: readonly Dated[], { first, last }: BlockIndices): Series["earlyLate"] {
  const means = (indices: readonly number[]) => indices.map((i) => sessions[i]!.mean);
  const found = welch(means(first), means(last));
  if (found === null || found.interval === null || found.df === null) return null;
  return { estimate: found.difference, ci95: [...found.interval], df: found.df };
}
