import { basename } from "node:path/posix";
import type { Metric } from "../schema/metric.ts";
import type { Problem, Reference } from "../schema/season.ts";
import type { WrittenReference } from "./data-tables.ts";
import type { Known } from "./known.ts";
import { near } from "./near.ts";
import { remark, withSuggestion } from "./problem.ts";
import { type Convert, checkReference, ReferenceCheck } from "./reference-check.ts";

/** The numbers of its kind in canonical units; null where one is not written. */
function numbersOf(row: WrittenReference, convert: Convert) {
  const { kind, l, m, s, mean, sd } = row;
  if (kind === "lms") {
    return l === undefined || m === undefined || s === undefined ? null : { kind, l, m: convert(m), s };
  }
  if (kind === "mean-sd") {
    return mean === undefined || sd === undefined ? null : { kind, mean: convert(mean), sd: convert(sd) - convert(0) };
  }
  const value = row.value ?? (kind === "line" ? mean : undefined);
  return value === undefined ? null : { kind, value: convert(value) };
}

/** Null where something is not written that every row needs. */
function referenceOf(row: WrittenReference, convert: Convert): Reference | null {
  const { sport, sex, at } = row;
  const numbers = numbersOf(row, convert);
  if (numbers === null || sport === undefined || sex === undefined) return null;
  return {
    metric: row.metric,
    pointOnBat: row.point_on_bat ?? null,
    environment: row.environment ?? null,
    implement: row.implement ?? null,
    sport,
    sex,
    level: row.level ?? null,
    ages: [row.age_lo ?? null, row.age_hi ?? null],
    n: row.kind === "value" ? 1 : (row.n ?? null),
    source: row.source ?? basename(at.file, ".csv"),
    year: row.year ?? null,
    at,
    ...numbers,
  };
}

/** Environments and bats that nobody has described: the row stands, but meets no swing. One note a name, where it stands first. */
function unlisted(rows: readonly WrittenReference[], known: Known): Problem[] {
  const lists = { environment: "environments", implement: "implements" } as const;
  return Object.entries(lists).flatMap(([key, list]) => {
    const column = key as keyof typeof lists;
    const names = known[list];
    if (names === null) return [];
    const told = new Set(names);
    return rows.flatMap((row) => {
      const found = row[column];
      if (found === undefined || told.has(found)) return [];
      told.add(found);
      const args = withSuggestion({ key: column, found, list }, near(found, names));
      return [remark("not-in-list", new ReferenceCheck(row).at(column), args)];
    });
  });
}

/**
 * Reference rows in canonical units. A row that cannot be used is left out, with a problem for each cell that is wrong; no athlete's report
 * hangs on it.
 *
 * @returns in the order given
 */
export function readReference(
  written: readonly WrittenReference[],
  metrics: readonly Metric[],
  known: Known,
): { readonly rows: readonly Reference[]; readonly problems: readonly Problem[] } {
  const byId = new Map(metrics.map((metric) => [metric.id, metric]));
  const problems: Problem[] = [];
  const rows = written.flatMap((row) => {
    // While metrics.md cannot be used, nothing is said against a metric: the page's own problems come first.
    if (known.metrics === null && !byId.has(row.metric)) return [];
    const check = new ReferenceCheck(row);
    const convert = checkReference(check, row, byId);
    for (const problem of check.problems) problems.push(problem);
    return (convert && referenceOf(row, convert)) ?? [];
  });
  return { rows, problems: [...problems, ...unlisted(written, known)] };
}
