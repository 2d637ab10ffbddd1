import type { Metric } from "../schema/metric.ts";
import type { LineOf, Problem, TestResult } from "../schema/season.ts";
import type { TestWritten } from "../schema/tables.ts";
import { converter, unitsFor } from "../schema/units.ts";
import type { Names } from "./names.ts";
import { near } from "./near.ts";
import { rowFault, withSuggestion } from "./problem.ts";

/** A row of `data/tests` as it is written. */
export type WrittenTest = TestWritten & { readonly at: LineOf; readonly header: readonly string[] };

type Cell = keyof TestWritten;

/** A test's id is its metric's, with hyphens where that has underscores. */
const metricOf = (test: string): string => test.replaceAll("-", "_");

/**
 * Test results by athlete, in canonical units. A row that cannot be used is left out, with a problem at the cell that is wrong; no
 * athlete's report hangs on it.
 */
export function readTests(
  written: readonly WrittenTest[],
  metrics: readonly Metric[],
  names: Pick<Names, "find">,
): { readonly byAthlete: ReadonlyMap<string, readonly TestResult[]>; readonly problems: readonly Problem[] } {
  const byId = new Map(metrics.map((metric) => [metric.id, metric]));
  const byAthlete = new Map<string, TestResult[]>();
  const problems: Problem[] = [];
  for (const row of written) {
    const wrong = (code: string, cell: Cell, args: Problem["args"]) => {
      const index = row.header.indexOf(cell);
      problems.push(rowFault(code, { ...row.at, column: index < 0 ? null : index + 1 }, args));
    };
    const athlete = whose(row, names, wrong);
    const value = resultOf(row, byId, wrong);
    if (athlete === null || value === null) continue;
    const result: TestResult = {
      date: row.date,
      metric: metricOf(row.test),
      side: row.side ?? null,
      value,
      load: row.load === undefined ? null : `${row.load} ${row.load_unit ?? ""}`.trim(),
      protocol: row.protocol ?? null,
      at: row.at,
    };
    byAthlete.set(athlete, [...(byAthlete.get(athlete) ?? []), result]);
  }
  return { byAthlete, problems };
}

type Wrong = (code: string, cell: Cell, args: Problem["args"]) => void;

function whose(row: WrittenTest, names: Pick<Names, "find">, wrong: Wrong): string | null {
  const who = names.find(row.athlete_id);
  if (who.kind === "one") return who.id;
  if (who.kind === "ambiguous")
    wrong("ambiguous-name", "athlete_id", { value: row.athlete_id, athletes: who.ids.join(", ") });
  else wrong("unknown-athlete", "athlete_id", withSuggestion({ value: row.athlete_id }, who.suggestion));
  return null;
}

function resultOf(row: WrittenTest, metrics: ReadonlyMap<string, Metric>, wrong: Wrong): number | null {
  const metric = metrics.get(metricOf(row.test));
  if (metric === undefined) {
    const args = { key: "test", found: row.test, list: "metrics" };
    wrong("not-in-list", "test", withSuggestion(args, near(metricOf(row.test), metrics.keys())));
    return null;
  }
  const convert = converter(row.unit, metric.unit);
  if (convert === null) {
    const units = unitsFor(metric.unit);
    const args = { key: "unit", found: row.unit, expected: `one of ${units.join(", ")}` };
    wrong("wrong-value", "unit", withSuggestion(args, near(row.unit, units)));
    return null;
  }
  const value = convert(row.value);
  const [lo, hi] = metric.plausible;
  if (value >= lo && value <= hi) return value;
  wrong("out-of-range", "value", { field: metric.id, value: `${row.value} ${row.unit}`, lo, hi, unit: metric.unit });
  return null;
}
