import type { Column } from "../schema/columns.ts";
import type { Place, Problem } from "../schema/season.ts";
import { near } from "./near.ts";
import { fault, remark, withSuggestion } from "./problem.ts";
import type { SwingFields } from "./swing-fields.ts";
import { wrongDelimiter } from "./wrong-delimiter.ts";

/** How one column of a file is read. */
export interface PlannedColumn {
  /** Number of the field in a row, from 0. */
  readonly index: number;
  readonly header: string;
  readonly column: Column;
  readonly unit: string | null;
  readonly form: string | null;
  /** Words of the export -> ours; an empty one is a blank. */
  readonly words: Readonly<Record<string, string>> | null;
}

/** How a file is read: made once per file from its header. */
export interface SwingPlan {
  readonly delimiter: string;
  readonly decimal: "." | ",";
  /** In the order of the file. */
  readonly columns: readonly PlannedColumn[];
  /** Field -> value where a row does not say. */
  readonly fixed: Readonly<Record<string, string>>;
}

/** The plan for a file in canonical columns; columns that are not ours are kept out and listed. */
export function canonicalPlan(
  header: readonly string[],
  fields: SwingFields,
  at: Place,
): { plan: SwingPlan; problems: Problem[] } {
  const problems: Problem[] = [];
  const columns = header.flatMap((name, index): PlannedColumn[] => {
    const found = fields.byHeader.get(name);
    if (found) return [{ index, header: name, ...found, form: null, words: null }];
    const free = [...fields.byHeader.keys()].filter((known) => !header.includes(known));
    const place = { ...at, column: index + 1 };
    if (name !== "") problems.push(remark("unknown-column", place, withSuggestion({ column: name }, near(name, free))));
    return [];
  });
  return { plan: { delimiter: ",", decimal: ".", columns, fixed: {} }, problems };
}

/** What keeps a whole file from being read by its plan. */
export function planFaults(plan: SwingPlan, header: readonly string[], fields: SwingFields, at: Place): Problem[] {
  const mark = wrongDelimiter(header, [...fields.byHeader.keys()]);
  if (mark !== null) return [fault("wrong-delimiter", at, { delimiter: mark })];
  const held = new Map<string, string>();
  const problems: Problem[] = [];
  for (const { column, header: name, index } of plan.columns) {
    const other = held.get(column.field);
    if (other !== undefined)
      problems.push(fault("repeated-column", { ...at, column: index + 1 }, { column: name, other }));
    held.set(column.field, name);
  }
  const unread = header.filter((name) => !plan.columns.some((planned) => planned.header === name));
  for (const column of ["athlete_id", "date"]) {
    if (held.has(column) || plan.fixed[column] !== undefined) continue;
    problems.push(fault("missing-column", at, withSuggestion({ column }, near(column, unread))));
  }
  if (![...held.keys()].some((field) => fields.measured.has(field))) problems.push(fault("no-measured-column", at));
  return problems;
}
