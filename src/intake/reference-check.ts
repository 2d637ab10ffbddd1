import { basename } from "node:path/posix";
import type { Metric } from "../schema/metric.ts";
import type { Problem } from "../schema/season.ts";
import type { ReferenceWritten } from "../schema/tables.ts";
import { converter, unitsFor } from "../schema/units.ts";
import type { WrittenReference } from "./data-tables.ts";
import { near } from "./near.ts";
import { rowFault, withSuggestion } from "./problem.ts";

type Column = keyof ReferenceWritten;
export type Convert = (value: number) => number;

/** Numbers that a row of each kind must hold; those of an inner list stand for each other. */
const NUMBERS: Readonly<Record<ReferenceWritten["kind"], readonly (readonly Column[])[]>> = {
  value: [["value"]],
  lms: [["l"], ["m"], ["s"]],
  "mean-sd": [["mean"], ["sd"]],
  line: [["value", "mean"]],
};
/** Columns whose number is one that the metric itself may have. */
const LEVELS = ["value", "mean", "m"] as const;

/** Problems of one row of `data/reference`, each at its cell. */
export class ReferenceCheck {
  readonly problems: Problem[] = [];
  readonly #row: WrittenReference;

  constructor(row: WrittenReference) {
    this.#row = row;
  }

  at(column: Column): Problem["at"] {
    const index = this.#row.header.indexOf(column);
    return { ...this.#row.at, column: index < 0 ? null : index + 1 };
  }

  missing(column: Column): void {
    const args = { key: column, in: basename(this.#row.at.file) };
    this.problems.push(rowFault("missing-key", this.at(column), args));
  }

  wrong(column: Column, expected: string, suggestion: string | null = null): void {
    const args = { key: column, found: this.#row[column] ?? "", expected };
    this.problems.push(rowFault("wrong-value", this.at(column), withSuggestion(args, suggestion)));
  }
}

/** What no row may lack, whatever its metric. */
function checkCells(check: ReferenceCheck, row: WrittenReference): void {
  for (const names of NUMBERS[row.kind]) {
    if (names.every((name) => row[name] === undefined)) check.missing(names[0]!);
  }
  for (const column of ["sport", "sex"] as const) if (row[column] === undefined) check.missing(column);
  if (row.kind !== "value" && row.source === undefined) check.missing("source");
  const { age_lo: low, age_hi: high, level } = row;
  if (low !== undefined && high !== undefined && low > high) check.wrong("age_hi", `not below age_lo, which is ${low}`);
  if (level === undefined && low === undefined && high === undefined) {
    check.wrong("level", "a level, or else ages in age_lo and age_hi: without either the row fits nobody");
  }
}

/** How the row's numbers become canonical; null with a problem when they cannot. */
function conversion(check: ReferenceCheck, row: WrittenReference, metric: Metric): Convert | null {
  const convert = converter(row.unit, metric.unit);
  const units = unitsFor(metric.unit);
  if (convert === null) check.wrong("unit", `one of ${units.join(", ")}`, near(row.unit, units));
  // S is a share of M, which a unit with another zero does not keep.
  else if (row.kind === "lms" && convert(0) !== 0) check.wrong("unit", `${metric.unit}, for a row of kind lms`);
  else return convert;
  return null;
}

function checkPlausible(check: ReferenceCheck, row: WrittenReference, metric: Metric, convert: Convert): void {
  const [lo, hi] = metric.plausible;
  for (const column of LEVELS) {
    const value = row[column];
    if (value === undefined || (convert(value) >= lo && convert(value) <= hi)) continue;
    const args = { field: column, value: `${value} ${row.unit}`, lo, hi, unit: metric.unit };
    check.problems.push(rowFault("out-of-range", check.at(column), args));
  }
}

/**
 * Holds a row against its metric.
 *
 * @returns how its numbers become canonical; null when anything is wrong with it
 */
export function checkReference(
  check: ReferenceCheck,
  row: WrittenReference,
  metrics: ReadonlyMap<string, Metric>,
): Convert | null {
  checkCells(check, row);
  const metric = metrics.get(row.metric);
  if (metric === undefined) {
    const args = { key: "metric", found: row.metric, list: "metrics" };
    const suggestion = near(row.metric, metrics.keys());
    check.problems.push(rowFault("not-in-list", check.at("metric"), withSuggestion(args, suggestion)));
    return null;
  }
  const convert = conversion(check, row, metric);
  if (convert !== null) checkPlausible(check, row, metric, convert);
  return check.problems.length === 0 ? convert : null;
}
