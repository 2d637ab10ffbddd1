import type { Metric } from "../schema/metric.ts";
import type { NotCountedReason } from "../schema/reasons.ts";
import type { RepTable } from "../schema/season.ts";
import { conditionKey } from "./condition.ts";
import { feeds } from "./gated.ts";
import type { FindMeasuredBy, MeasuredBy } from "./measured-by.ts";
import type { Condition, Series } from "./schema.ts";
import { bySession, type SessionReps } from "./sessions.ts";

/** Swings of a condition by what became of them; the denominator of its ball-flight figures. */
export type Outcomes = NonNullable<Series["of"]>;

/** One metric in one condition, rep by rep. */
export interface Strand {
  readonly metric: Metric;
  readonly condition: Condition;
  readonly sessions: readonly SessionReps[];
}

interface Bucket {
  readonly condition: Condition;
  readonly rows: number[];
}

/** Rows that count for metrics of a side, by condition, in order of first appearance. */
function buckets(
  conditions: readonly Condition[],
  judged: readonly (NotCountedReason | null)[],
  side: Metric["side"],
): Bucket[] {
  const byKey = new Map<string, Bucket>();
  conditions.forEach((condition, i) => {
    if (!feeds(side, judged[i]!)) return;
    const key = conditionKey(condition);
    const bucket = byKey.get(key);
    if (bucket) bucket.rows.push(i);
    else byKey.set(key, { condition, rows: [i] });
  });
  return [...byKey.values()];
}

/** Counts results; a swing whose result was not written down is `notKnown`, never a miss. */
function outcomes(reps: RepTable, rows: readonly number[]): Outcomes {
  const result = reps.words.result;
  const count = (word: string) => rows.filter((i) => result?.[i] === word).length;
  const hit = count("hit");
  const foul = count("foul");
  const miss = count("miss");
  return { swings: rows.length, hit, foul, miss, notKnown: rows.length - hit - foul - miss };
}

/** What became of the counted swings of one condition, whether or not anything was read on them. */
export interface ConditionOutcomes {
  readonly condition: Condition;
  readonly of: Outcomes;
}

/** Every condition of one athlete's counted swings with its outcomes: also those in which no ball flight was ever read. */
export function outcomesByCondition(
  reps: RepTable,
  conditions: readonly Condition[],
  judged: readonly (NotCountedReason | null)[],
): ConditionOutcomes[] {
  return buckets(conditions, judged, "ball").map(({ condition, rows }) => ({ condition, of: outcomes(reps, rows) }));
}

interface Gathered {
  readonly date: string;
  readonly session: string | null;
  readonly values: number[];
  readonly rows: number[];
  readonly by: MeasuredBy[];
}

function sessionsOf(reps: RepTable, rows: readonly number[], metric: Metric, find: FindMeasuredBy): SessionReps[] {
  const column = reps.numbers[metric.id];
  const byName = new Map<string, Gathered>();
  for (const row of rows) {
    const value = column?.[row];
    if (typeof value !== "number") continue;
    const date = reps.date[row]!;
    const session = reps.words.session?.[row] ?? null;
    const key = `${date} ${session ?? ""}`;
    const found = byName.get(key) ?? { date, session, values: [], rows: [], by: [] };
    byName.set(key, found);
    found.values.push(value);
    found.rows.push(row);
    found.by.push(find(metric, row));
  }
  return [...byName.values()].sort(bySession);
}

/**
 * All strands of one athlete: every metric in every condition that holds at least one value of it.
 *
 * @returns in order of the metrics, then of the condition's text
 */
export function strandsOf(
  reps: RepTable,
  metrics: readonly Metric[],
  conditions: readonly Condition[],
  judged: readonly (NotCountedReason | null)[],
  find: FindMeasuredBy,
): Strand[] {
  const ordered = (side: Metric["side"]) =>
    buckets(conditions, judged, side).sort((a, b) => (conditionKey(a.condition) < conditionKey(b.condition) ? -1 : 1));
  const [ball, others] = [ordered("ball"), ordered("bat")];
  return metrics.flatMap((metric) => {
    if (!reps.numbers[metric.id]) return [];
    return (metric.side === "ball" ? ball : others).flatMap(({ condition, rows }) => {
      const sessions = sessionsOf(reps, rows, metric, find);
      if (sessions.length === 0) return [];
      return [{ metric, condition, sessions }];
    });
  });
}
