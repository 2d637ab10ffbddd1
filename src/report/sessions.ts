import { median } from "../stats/median.ts";
import { quantile } from "../stats/quantile.ts";
import { sd } from "../stats/sd.ts";
import { dayOf, WEEK_MS } from "./calendar.ts";
import type { MeasuredBy } from "./measured-by.ts";
import type { SessionValue } from "./schema.ts";

/** The reps of one session in one series: its day, its name if it has one, and the values in their order. */
export interface SessionReps {
  readonly date: string;
  readonly session: string | null;
  readonly values: readonly number[];
  /** Row of each value in the athlete's table. */
  readonly rows: readonly number[];
  /** What measured each value. */
  readonly by: readonly MeasuredBy[];
}

/** In order of day, then of the session's name; unnamed first. */
export function bySession(a: SessionReps, b: SessionReps): number {
  if (a.date !== b.date) return a.date < b.date ? -1 : 1;
  const left = a.session ?? "";
  const right = b.session ?? "";
  return left < right ? -1 : left > right ? 1 : 0;
}

/** Weeks of each session from the first one's day. */
export function weeksOf(sessions: readonly { readonly date: string }[]): number[] {
  const first = sessions[0] ? dayOf(sessions[0].date) : 0;
  return sessions.map((session) => (dayOf(session.date) - first) / WEEK_MS);
}

/**
 * A session's figures from its reps.
 *
 * @param center value to stand as the session's mean: a pool's own
 * @param shift  what was added to the values, as the session's mean has it
 * @throws {RangeError} no reps: a session exists by its reps
 */
export function sessionValue(reps: SessionReps, center: number, shift: number): SessionValue {
  const { values } = reps;
  const middle = median(values);
  const p90 = quantile(values, 0.9);
  if (middle === null || p90 === null) throw new RangeError(`session of ${reps.date} holds no reps`);
  return {
    date: reps.date,
    session: reps.session,
    n: values.length,
    mean: center,
    shift,
    sd: sd(values),
    median: middle,
    p90,
    max: values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY),
  };
}
