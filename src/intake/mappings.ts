import { Mapping } from "../schema/mapping.ts";
import type { Place, Problem } from "../schema/season.ts";
import { unitsFor } from "../schema/units.ts";
import { CANONICAL_CELL, type CellContext, cellReader, OUTSIDE, UNREADABLE } from "./cell-reader.ts";
import { checked } from "./checked.ts";
import { decode } from "./decode.ts";
import { near } from "./near.ts";
import { fault, wholeFile, withSuggestion } from "./problem.ts";
import { dotted } from "./schema-issues.ts";
import type { SeasonFiles } from "./season-files.ts";
import type { SwingFields } from "./swing-fields.ts";
import type { PlannedColumn, SwingPlan } from "./swing-plan.ts";
import { readYaml } from "./yaml-text.ts";

type Path = readonly string[];

/** A mapping that can be used: the header it stands for, and how such a file is read. */
export interface ReadMapping {
  readonly file: string;
  readonly header: readonly string[];
  readonly plan: SwingPlan;
}

/** Reads `data/mappings/*.json`. A mapping with a fault is left out and reads nothing. */
export async function readMappings(
  files: SeasonFiles,
  fields: SwingFields,
  context: CellContext,
): Promise<{ mappings: ReadMapping[]; problems: Problem[] }> {
  const mappings: ReadMapping[] = [];
  const problems: Problem[] = [];
  for (const file of files.files.filter((name) => /^data\/mappings\/[^/]+\.json$/i.test(name))) {
    const bytes = await files.read(file);
    const read =
      bytes instanceof Uint8Array ? readMapping(file, bytes, fields, context) : { mapping: null, problems: [bytes] };
    problems.push(...read.problems);
    if (read.mapping === null) continue;
    const { header, plan } = read.mapping;
    const same = mappings.find((other) => sameHeader(other.header, header) && other.plan.delimiter === plan.delimiter);
    if (same === undefined) mappings.push(read.mapping);
    else problems.push(fault("same-header", wholeFile(file), { other: same.file }));
  }
  return { mappings, problems };
}

/** Name by name, spaces at the ends aside. */
export function sameHeader(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((name, index) => name.trim() === other[index]?.trim());
}

function readMapping(
  file: string,
  bytes: Uint8Array,
  fields: SwingFields,
  context: CellContext,
): { mapping: ReadMapping | null; problems: Problem[] } {
  const text = decode(bytes);
  if (text === null) return { mapping: null, problems: [fault("not-utf-8", wholeFile(file))] };
  const yaml = readYaml(file, text, 1);
  if ("faults" in yaml) {
    return { mapping: null, problems: yaml.faults.map(({ at, detail }) => fault("unreadable-json", at, { detail })) };
  }
  const { value, problems } = checked(file, Mapping, yaml, null);
  if (value === null) return { mapping: null, problems };
  const faults = mappingFaults(value, fields, context, (path, what) => yaml.at(path, what));
  if (faults.length > 0) return { mapping: null, problems: faults };
  const header = value.header.map((name) => name.trim());
  return { mapping: { file, header, plan: planOf(value, header, fields) }, problems: [] };
}

function planOf(mapping: Mapping, header: readonly string[], fields: SwingFields): SwingPlan {
  const columns = Object.entries(mapping.columns).flatMap(([name, how]): PlannedColumn[] => {
    const column = fields.byField.get(how.field);
    const index = header.indexOf(name.trim());
    if (!column || index === -1) return [];
    return [
      { index, header: name.trim(), column, unit: how.unit ?? null, form: how.form ?? null, words: how.words ?? null },
    ];
  });
  return {
    delimiter: mapping.delimiter ?? ",",
    decimal: mapping.decimal ?? ".",
    columns: columns.sort((one, other) => one.index - other.index),
    fixed: mapping.fixed ?? {},
  };
}

/** What a mapping says that no file could be read by. */
function mappingFaults(
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
  const header = mapping.header.map((name) => name.trim());
  for (const [name, how] of Object.entries(mapping.columns)) {
    const path = ["columns", name];
    const column = fields.byField.get(how.field);
    if (!header.includes(name.trim())) {
      problems.push(fault("unknown-column", at(path, "key"), withSuggestion({ column: name }, near(name, header))));
    }
    if (!column) {
      wrong([...path, "field"], how.field, "a field of the swing table, without unit", fields.byField.keys());
      continue;
    }
    const units = column.is.kind === "number" ? unitsFor(column.is.unit) : [];
    const timed = column.is.kind === "date" || column.is.kind === "time";
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
