import type { Metric } from "../schema/metric.ts";
import type { TestResult } from "../schema/season.ts";
import { conditionKey } from "./condition.ts";
import type { Strand } from "./group.ts";
import type { Condition } from "./schema.ts";

/** Nobody says in `data/tests` which line of devices.csv measured. */
const BY_HAND = { line: null, place: null } as const;

/**
 * Results of `data/tests` as strands: each metric in each side, load and protocol by itself, the attempts of a day as its session. They
 * are no swings, so they stand in no ledger and have no row.
 *
 * @param season first and last day, both included
 */
export function testStrands(
  results: readonly TestResult[],
  metrics: readonly Metric[],
  season: { readonly start: string; readonly end: string },
): Strand[] {
  const strands = new Map<string, { metric: Metric; condition: Condition; days: Map<string, number[]> }>();
  for (const { date, metric: id, side, value, load, protocol } of results) {
    const metric = metrics.find((one) => one.id === id);
    if (metric === undefined || date < season.start || date > season.end) continue;
    const condition: Condition = {
      purpose: "test",
      ...(side === null ? {} : { side }),
      ...(load === null ? {} : { load }),
      ...(protocol === null ? {} : { protocol }),
    };
    const key = `${id} ${conditionKey(condition)}`;
    const strand = strands.get(key) ?? { metric, condition, days: new Map() };
    strand.days.set(date, [...(strand.days.get(date) ?? []), value]);
    strands.set(key, strand);
  }
  return [...strands.values()].map(({ metric, condition, days }) => ({
    metric,
    condition,
    sessions: [...days]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([date, values]) => ({ date, session: null, values, rows: [], by: values.map(() => BY_HAND) })),
  }));
}
