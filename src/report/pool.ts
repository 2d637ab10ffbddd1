import { mean } from "../stats/mean.ts";
import type { Strand } from "./group.ts";
import { bySession, type SessionReps } from "./sessions.ts";

/** A strand whose session values may come from several conditions. */
export interface Pooled {
  readonly sessions: readonly SessionReps[];
  /** Value that stands for each session: the mean of its parts' means, each weighted as over the whole season. */
  readonly centers: readonly number[];
}

/** Reps in all sessions of a strand. */
export const repsIn = (strand: Strand) => strand.sessions.reduce((sum, session) => sum + session.values.length, 0);
const nameOf = (session: SessionReps) => `${session.date} ${session.session ?? ""}`;

/** One session's reps from its parts. */
function together(parts: readonly SessionReps[]): SessionReps {
  const first = parts[0]!;
  if (parts.length === 1) return first;
  return {
    ...first,
    values: parts.flatMap((part) => part.values),
    rows: parts.flatMap((part) => part.rows),
    by: parts.flatMap((part) => part.by),
  };
}

/**
 * Several strands of one metric as one. A session's value is the mean of its parts' means with weights fixed from all
 * sessions (each part's share of all reps), so that a day with more swings of one part does not move the value by itself.
 * A part that is missing on a day leaves that day's weights to the others.
 *
 * @param parts   at least one strand, all of one metric
 * @param weights what each part weighs; its number of reps unless `parts` are cut from larger ones
 */
export function pool(parts: readonly Strand[], weights: readonly number[] = parts.map(repsIn)): Pooled {
  const byName = new Map<string, { reps: SessionReps[]; weights: number[] }>();
  parts.forEach((part, p) => {
    for (const session of part.sessions) {
      const found = byName.get(nameOf(session)) ?? { reps: [], weights: [] };
      found.reps.push(session);
      found.weights.push(weights[p]!);
      byName.set(nameOf(session), found);
    }
  });
  const days = [...byName.values()].sort((a, b) => bySession(a.reps[0]!, b.reps[0]!));
  return {
    sessions: days.map(({ reps }) => together(reps)),
    centers: days.map(({ reps, weights: w }) => {
      const total = w.reduce((sum, weight) => sum + weight, 0);
      return reps.reduce((sum, part, i) => sum + (mean(part.values) ?? 0) * (w[i]! / total), 0);
    }),
  };
}
