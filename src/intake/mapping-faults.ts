import { type Column, MOMENT_COLUMN } from "../schema/columns.ts";
import { columnNames, type Mapping } from "../schema/mapping.ts";
import type { Place, Problem } from "../schema/season.ts";
import { unitsFor } from "../schema/units.ts";
import { CANONICAL_CELL, type CellContext, cellReader, OUTSIDE, UNREADABLE } from "./cell-reader.ts";
import { near } from "./near.ts";
import { fault, withSuggestion } from "./problem.ts";
import { dotted } from "./schema-issues.ts";
import type { SwingFields } from "./swing-fields.ts";

type Path = readonly string[];

/** The field that a mapping names; day and clock in one are no field of the table. */
export const columnOf = (field: string, fields: SwingFields): Column | undefined =>
  field === MOMENT_COLUMN.field ? MOMENT_COLUMN : fields.byField.get(field);

/** What a mapping says that no file could be read by. */
export function mappingFaults(
  mapping: Mapping,
  fields: SwingFields,
  context: CellContext,
  at: (path: Path, what: "key" | "value") => Place,
): Problem[] {
  const problems: Problem[] = [];
  const wrong = (path: Path, found: string, expected: string, allowed: Iterable<string> = []): void => {
    const args = withSuggestion({ key: dotted(path), found, expected }, near(found, allowed));
    problems.push(fault("wrong-value", at(path, "value"), args));
  };
  const value = (path: Path, field: string, text: string): void => {
    const allowed = refusal(field, text, fields, context);
    if (allowed !== null)
      wrong(path, text, allowed.length > 0 ? `one of ${allowed.join(", ")}` : "a value of this column", allowed);
  };
  const header = columnNames(mapping.header);
  problems.push(...shapeFaults(mapping, header, context, at));
  for (const [name, how] of Object.entries(mapping.columns)) {
    const path = ["columns", name];
    const column = columnOf(how.field, fields);
    if (!header.includes(name.trim())) {
      problems.push(fault("unknown-column", at(path, "key"), withSuggestion({ column: name }, near(name, header))));
    }
    if (!column) {
      const allowed = [...fields.byField.keys(), MOMENT_COLUMN.field];
      wrong([...path, "field"], how.field, "a field of the swing table, without unit, or date_time", allowed);
      continue;
    }
    const units = column.is.kind === "number" ? unitsFor(column.is.unit) : [];
    const timed = ["date", "time", "date-time"].includes(column.is.kind);
    if (how.unit !== undefined && !units.includes(how.unit)) {
      wrong(
        [...path, "unit"],
        how.unit,
        units.length > 0 ? `one of ${units.join(", ")}` : "no unit: this field has none",
        units,
      );
    }
    if (how.form !== undefined && !timed) wrong([...path, "form"], how.form, "no form: only a date or a time has one");
    // Days, times and numbers are translated before they are read in the export's own form: nothing to hold them against.
    const ours = !timed && column.is.kind !== "number" && column.is.kind !== "athlete";
    for (const [word, meant] of ours ? Object.entries(how.words ?? {}) : [])
      value([...path, "words", word], how.field, meant);
  }
  for (const [field, text] of Object.entries(mapping.fixed ?? {})) {
    if (fields.byField.has(field)) value(["fixed", field], field, text);
    else {
      const args = withSuggestion({ key: `fixed.${field}`, in: "fixed" }, near(field, fields.byField.keys()));
      problems.push(fault("unknown-key", at(["fixed", field], "key"), args));
    }
  }
  return problems;
}

/** What stands beside the columns of a mapping: row of units, sums, zone. */
function shapeFaults(
  { header: written, units_row: units, summary_rows: sums, zone }: Mapping,
  header: readonly string[],
  { timeZone }: CellContext,
  at: (path: Path, what: "key" | "value") => Place,
): Problem[] {
  const problems: Problem[] = [];
  if (units !== undefined && units.length !== written.length) {
    const expected = `a cell for each of the ${written.length} names of the header`;
    problems.push(
      fault("wrong-value", at(["units_row"], "value"), { key: "units_row", found: units.length, expected }),
    );
  }
  if (sums?.column !== undefined && !header.includes(sums.column.trim())) {
    const args = withSuggestion({ column: sums.column }, near(sums.column, header));
    problems.push(fault("unknown-column", at(["summary_rows", "column"], "value"), args));
  }
  if (zone !== undefined && timeZone === null) problems.push(fault("no-time-zone", at(["zone"], "value")));
  return problems;
}

/** Null when `text` can stand in `field`; else the words that could, as far as there is a list. */
function refusal(field: string, text: string, fields: SwingFields, context: CellContext): string[] | null {
  const column = fields.byField.get(field);
  const reader = column && cellReader(column, CANONICAL_CELL, context);
  if (!column || !reader || text.trim() === "") return null;
  const read = reader.read(text.trim());
  const refused =
    typeof read === "object" ||
    read === UNREADABLE ||
    read === OUTSIDE ||
    (reader.as === "athlete" && Number(read) < 0);
  return refused ? allowedWords(column.is.kind, field, fields, context) : null;
}

/** The words that a column takes; nothing when there is no list. */
export function allowedWords(kind: string, field: string, fields: SwingFields, { known }: CellContext): string[] {
  const column = fields.byField.get(field);
  if (kind === "implement") return [...(known.implements ?? [])];
  if (kind === "ball") return [...(known.balls ?? [])];
  if (column?.is.kind !== "words") return [];
  return column.is.open ? [...(known.environments ?? [])] : [...column.is.words];
}
