import { columnNames, Mapping } from "../schema/mapping.ts";
import type { Place, Problem } from "../schema/season.ts";
import type { CellContext } from "./cell-reader.ts";
import { checked } from "./checked.ts";
import { decode } from "./decode.ts";
import { columnOf, mappingFaults } from "./mapping-faults.ts";
import { tooLong } from "./page.ts";
import { fault, wholeFile } from "./problem.ts";
import type { SeasonFiles } from "./season-files.ts";
import type { SwingFields } from "./swing-fields.ts";
import type { PlannedColumn, SummaryRows, SwingPlan } from "./swing-plan.ts";
import { readYaml } from "./yaml-text.ts";

type Path = readonly string[];

/** A mapping that can be used, and how a file is read by it. */
export interface ReadMapping {
  readonly file: string;
  readonly mapping: Mapping;
  /** Names of its columns, in its order; see `columnNames`. */
  readonly names: readonly string[];
  /** The same for every header that holds these names, in whatever order. */
  readonly signature: string;
  /**
   * How a file with this header is read.
   *
   * @param names of the file's columns: those of the mapping, in the file's own order
   */
  plan(names: readonly string[]): SwingPlan;
}

/** The same for headers that hold the same names, in whatever order. */
export const signatureOf = (names: readonly string[]): string => JSON.stringify([...names].sort());

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
    const own = readsSame(read.mapping);
    const same = mappings.find((other) => readsSame(other) === own);
    if (same === undefined) mappings.push(read.mapping);
    else problems.push(fault("same-header", wholeFile(file), { other: same.file }));
  }
  return { mappings, problems };
}

/** Two mappings of which only one could ever be used have this in common: header, delimiter and row of units. */
function readsSame({ signature, mapping, names, plan }: ReadMapping): string {
  return JSON.stringify([signature, mapping.delimiter ?? ",", plan([...names].sort()).unitsRow]);
}

function readMapping(
  file: string,
  bytes: Uint8Array,
  fields: SwingFields,
  context: CellContext,
): { mapping: ReadMapping | null; problems: Problem[] } {
  const long = tooLong(file, bytes);
  if (long !== null) return { mapping: null, problems: [long] };
  const text = decode(bytes);
  if (text === null) return { mapping: null, problems: [fault("not-utf-8", wholeFile(file))] };
  const yaml = readYaml(file, text, 1);
  if ("faults" in yaml) {
    return { mapping: null, problems: yaml.faults.map(({ at, detail }) => fault("unreadable-json", at, { detail })) };
  }
  const { value, problems } = checked(file, Mapping, yaml, null);
  if (value === null) return { mapping: null, problems };
  const unusable = hiddenColumn(yaml.data);
  if (unusable !== null) {
    const expected = "another name: rename the column in the export";
    const place = yaml.at(["columns", unusable], "key");
    return { mapping: null, problems: [fault("wrong-value", place, { key: "columns", found: unusable, expected })] };
  }
  return usableMapping(file, value, fields, context, (path, what) => yaml.at(path, what));
}

/** A name that JSON may hold and JavaScript objects cannot carry: it would be lost without a word. */
function hiddenColumn(data: unknown): string | null {
  const columns = typeof data === "object" && data !== null ? (data as { columns?: unknown }).columns : null;
  return typeof columns === "object" && columns !== null && Object.hasOwn(columns, "__proto__") ? "__proto__" : null;
}

/**
 * Holds a mapping against what the season knows.
 *
 * @param at place of a key or value of the mapping, for messages
 * @returns the mapping as files are read by it, or null with every fault
 */
export function usableMapping(
  file: string,
  mapping: Mapping,
  fields: SwingFields,
  context: CellContext,
  at: (path: Path, what: "key" | "value") => Place = () => wholeFile(file),
): { mapping: ReadMapping | null; problems: Problem[] } {
  const faults = mappingFaults(mapping, fields, context, at);
  if (faults.length > 0) return { mapping: null, problems: faults };
  const names = columnNames(mapping.header);
  const plan = (header: readonly string[]): SwingPlan => planOf(mapping, names, header, fields);
  return { mapping: { file, mapping, names, signature: signatureOf(names), plan }, problems: [] };
}

function planOf(mapping: Mapping, names: readonly string[], header: readonly string[], fields: SwingFields): SwingPlan {
  const columns = Object.entries(mapping.columns).flatMap(([name, how]): PlannedColumn[] => {
    const column = columnOf(how.field, fields);
    const index = header.indexOf(name.trim());
    if (!column || index === -1) return [];
    return [
      {
        index,
        header: name.trim(),
        column,
        unit: how.unit ?? null,
        form: how.form ?? null,
        words: how.words ?? null,
        mapped: true,
      },
    ];
  });
  return {
    delimiter: mapping.delimiter ?? ",",
    decimal: mapping.decimal ?? ".",
    columns: columns.sort((one, other) => one.index - other.index),
    fixed: mapping.fixed ?? {},
    zone: mapping.zone ?? null,
    unitsRow: mapping.units_row === undefined ? null : inOrderOf(header, names, mapping.units_row),
    summary: mapping.summary_rows === undefined ? null : summaryOf(mapping.summary_rows, header),
    typed: false,
    pairs: mapping.pairs ?? true,
  };
}

const inOrderOf = (header: readonly string[], names: readonly string[], cells: readonly string[]): string[] =>
  header.map((name) => (cells[names.indexOf(name)] ?? "").trim());

const summaryOf = (
  { column, words }: NonNullable<Mapping["summary_rows"]>,
  header: readonly string[],
): SummaryRows => ({
  index: column === undefined ? null : header.indexOf(column.trim()),
  words: new Set(words.map((word) => word.trim().toLowerCase())),
});
