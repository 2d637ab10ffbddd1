import { type Column, MOMENT_COLUMN } from "../schema/columns.ts";
import type { Place, Problem } from "../schema/season.ts";
import { brief } from "./brief.ts";
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
  /** A mapping says what it holds; else its own name does. */
  readonly mapped: boolean;
}

/** Rows that sum up others. */
export interface SummaryRows {
  /** Number of the field that tells, from 0; null: the first filled one. */
  readonly index: number | null;
  /** Lower case. */
  readonly words: ReadonlySet<string>;
}

/** How a file is read: made once per file from its header. */
export interface SwingPlan {
  readonly delimiter: string;
  readonly decimal: "." | ",";
  /** In the order of the file. */
  readonly columns: readonly PlannedColumn[];
  /** Field -> value where a row does not say. */
  readonly fixed: Readonly<Record<string, string>>;
  /** Zone of the export's clock; null when it is the facility's. */
  readonly zone: string | null;
  /** Cells of the row of units, in the order of the file. */
  readonly unitsRow: readonly string[] | null;
  readonly summary: SummaryRows | null;
  /** Cells are those of a workbook, whose days and times come in ISO 8601 whatever the form says. */
  readonly typed: boolean;
  /** Its rows may be paired with another device's. */
  readonly pairs: boolean;
}

/** The plan for a file in canonical columns; columns that are not ours are kept out and listed. */
export function canonicalPlan(
  header: readonly string[],
  fields: SwingFields,
  at: Place,
  dialect: Pick<SwingPlan, "delimiter" | "decimal"> = { delimiter: ",", decimal: "." },
): { plan: SwingPlan; problems: Problem[] } {
  const meant = ourNames(header, fields);
  const taken = new Set(meant);
  const free = [...fields.byHeader.keys()].filter((known) => !taken.has(known));
  const problems: Problem[] = isCanonical(header, fields) ? otherCase(header, meant, at) : [];
  const columns = header.flatMap((name, index): PlannedColumn[] => {
    const found = fields.byHeader.get(meant[index] ?? name);
    if (found) return [{ index, header: name, ...found, form: null, words: null, mapped: false }];
    const place = { ...at, column: index + 1 };
    if (name !== "")
      problems.push(remark("unknown-column", place, withSuggestion({ column: brief(name) }, near(name, free))));
    return [];
  });
  return {
    plan: { ...dialect, columns, fixed: {}, zone: null, unitsRow: null, summary: null, typed: false, pairs: true },
    problems,
  };
}

/** Whether a header is the canonical table's: it names athlete, day and a measurement as we do, case aside. */
export function isCanonical(header: readonly string[], fields: SwingFields): boolean {
  const meant = ourNames(header, fields);
  return (
    ["athlete_id", "date"].every((name) => meant.includes(name)) &&
    meant.some((name) => fields.measured.has(fields.byHeader.get(name)?.column.field ?? ""))
  );
}

/** The header with our own spelling where only the case is another one, and just one column can be meant. */
function ourNames(header: readonly string[], { byHeader }: SwingFields): string[] {
  const times = new Map<string, number>();
  for (const name of header) times.set(name.toLowerCase(), (times.get(name.toLowerCase()) ?? 0) + 1);
  const ours = new Map<string, string[]>();
  for (const name of byHeader.keys()) ours.set(name.toLowerCase(), [...(ours.get(name.toLowerCase()) ?? []), name]);
  return header.map((name) => {
    const [only, ...others] = ours.get(name.toLowerCase()) ?? [];
    const clear = only !== undefined && others.length === 0 && times.get(name.toLowerCase()) === 1;
    return clear && !byHeader.has(name) ? only : name;
  });
}

/** One note a header, however many of its names are in another case. */
function otherCase(header: readonly string[], meant: readonly string[], at: Place): Problem[] {
  const first = header.findIndex((name, index) => name !== meant[index]);
  if (first === -1) return [];
  const count = header.filter((name, index) => name !== meant[index]).length;
  const args = { column: brief(header[first] ?? ""), meant: meant[first] ?? "", columns: count };
  return [remark("other-case", { ...at, column: first + 1 }, args)];
}

/** More columns than any export has. */
export const MOST_COLUMNS = 1000;

/**
 * What keeps a whole file from being read by its plan.
 *
 * @param mapped a mapping's file may name no athlete: one lane's device does not know who swings, the session log does
 */
export function planFaults(
  plan: SwingPlan,
  header: readonly string[],
  fields: SwingFields,
  at: Place,
  mapped: boolean,
): Problem[] {
  const mark = wrongDelimiter(header, [...fields.byHeader.keys()]);
  if (mark !== null) return [fault("wrong-delimiter", at, { delimiter: mark })];
  if (header.length > MOST_COLUMNS)
    return [fault("too-many-columns", at, { columns: header.length, most: MOST_COLUMNS })];
  const held = new Map<string, string>();
  const problems: Problem[] = [];
  for (const { column, header: name, index } of plan.columns) {
    for (const field of column === MOMENT_COLUMN ? ["date", "time"] : [column.field]) {
      const other = held.get(field);
      if (other !== undefined)
        problems.push(fault("repeated-column", { ...at, column: index + 1 }, { column: name, other }));
      held.set(field, name);
    }
  }
  const unread = header.filter((name) => !plan.columns.some((planned) => planned.header === name));
  for (const column of mapped ? ["date"] : ["athlete_id", "date"]) {
    if (held.has(column) || plan.fixed[column] !== undefined) continue;
    problems.push(fault("missing-column", at, withSuggestion({ column }, near(column, unread))));
  }
  if (![...held.keys()].some((field) => fields.measured.has(field))) problems.push(fault("no-measured-column", at));
  return problems;
}
