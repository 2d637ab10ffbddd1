import { columnNames, DELIMITERS, type Delimiter, HEADER_LINES } from "../schema/mapping.ts";
import type { Place, Problem } from "../schema/season.ts";
import { brief } from "./brief.ts";
import type { Batch } from "./csv-batches.ts";
import { type ReadMapping, signatureOf } from "./mappings.ts";
import { fault, remark } from "./problem.ts";
import { sameCells } from "./row-marks.ts";
import type { SwingFields } from "./swing-fields.ts";
import { canonicalPlan, isCanonical, MOST_COLUMNS, planFaults, type SwingPlan } from "./swing-plan.ts";
import type { TableSource } from "./table-source.ts";
import { writtenDecimal } from "./written-decimal.ts";

/** How a file is read; or, with `plan` null, why it is not. */
export interface WayOfReading {
  readonly source: TableSource;
  readonly plan: SwingPlan | null;
  /** Cells of the header, spaces at the ends removed; empty when the file has none. */
  readonly header: readonly string[];
  /** Line of the header, from 1; 0 when there is none, so that every record below is a row. */
  readonly headerLine: number;
  readonly problems: readonly Problem[];
}

/** The tables that a file can be taken for: as it stands, and as a mapping says (its encoding, its sheet). */
export interface Sources {
  /** Null when nothing tells how the file would be read. */
  readonly plain: TableSource | null;
  by(mapping: ReadMapping): TableSource | null;
}

/** A record of the beginning that may be the header. */
interface Spot {
  readonly names: readonly string[];
  readonly line: number;
  /** Cells of the record below. */
  readonly below: readonly string[];
  /** Whether other records stand above. */
  readonly above: boolean;
}

/**
 * Finds the header and what it is read by: a mapping that holds just its names, in whatever order; else our own names; else
 * nothing, and the mapping that it nearly fits is named. Lines above the header are skipped.
 *
 * @returns null when the file cannot be read as text by anything that is known
 */
export function wayOfReading(
  file: string,
  sources: Sources,
  mappings: readonly ReadMapping[],
  fields: SwingFields,
): WayOfReading | null {
  return (
    byMapping(file, sources, mappings, fields) ??
    (sources.plain && byOurNames(file, sources.plain, fields)) ??
    changedHeader(file, sources, mappings) ??
    (sources.plain && byFirstRecord(file, sources.plain, fields))
  );
}

function spots({ rows, lines }: Batch): Spot[] {
  return rows.flatMap((row, index): Spot[] => {
    const line = lines[index] ?? 0;
    const below = rows[index + 1];
    if (typeof row === "string" || line > HEADER_LINES) return [];
    const next = typeof below === "object" ? below : [];
    return [{ names: row.map((name) => name.trim()), line, below: next, above: index > 0 }];
  });
}

const spotsBy = (mapping: ReadMapping, sources: Sources): Spot[] =>
  spots(sources.by(mapping)?.head(delimiterOf(mapping)) ?? { rows: [], lines: [] });

const delimiterOf = ({ mapping }: ReadMapping): Delimiter => mapping.delimiter ?? ",";

/** What was above the header is no row of the table; that it was left out is said. */
const skipped = (file: string, { above, line }: Spot): Problem[] =>
  above ? [remark("lines-skipped", { file, line: 1, column: null }, { lines: line - 1 })] : [];

function byMapping(
  file: string,
  sources: Sources,
  mappings: readonly ReadMapping[],
  fields: SwingFields,
): WayOfReading | null {
  let otherUnits: WayOfReading | null = null;
  for (const mapping of mappings) {
    const source = sources.by(mapping);
    const spot = spotsBy(mapping, sources).find(({ names }) => isHeaderOf(mapping, names));
    if (source === null || spot === undefined) continue;
    const at: Place = { file, line: spot.line, column: null };
    const plan = mapping.plan(columnNames(spot.names));
    const way = { source, header: spot.names, headerLine: spot.line };
    // A row of a sheet ends with its last filled cell.
    const blanks = source.kind === "workbook" ? Math.max(0, spot.names.length - spot.below.length) : 0;
    const below = [...spot.below, ...new Array<string>(blanks).fill("")];
    if (plan.unitsRow !== null && !sameCells(below, plan.unitsRow)) {
      otherUnits ??= { ...way, plan: null, problems: [changedUnits(at, mapping, spot, plan.unitsRow)] };
      continue;
    }
    const faults = planFaults(plan, spot.names, fields, at, true);
    const typed = source.kind === "workbook";
    return {
      ...way,
      plan: faults.length > 0 ? null : { ...plan, typed },
      problems: [...skipped(file, spot), ...faults],
    };
  }
  return otherUnits;
}

const isHeaderOf = (mapping: ReadMapping, names: readonly string[]): boolean =>
  names.length === mapping.names.length && signatureOf(columnNames(names)) === mapping.signature;

function changedUnits(at: Place, { file }: ReadMapping, { names, below }: Spot, units: readonly string[]): Problem {
  const index = units.findIndex((unit, column) => unit !== (below[column] ?? "").trim());
  const place = { ...at, line: (at.line ?? 0) + 1, column: index + 1 };
  const found = brief((below[index] ?? "").trim());
  return fault("changed-units", place, {
    mapping: file,
    column: names[index] ?? "",
    expected: units[index] ?? "",
    found,
  });
}

function byOurNames(file: string, source: TableSource, fields: SwingFields): WayOfReading | null {
  for (const delimiter of source.kind === "text" ? DELIMITERS : DELIMITERS.slice(0, 1)) {
    const head = source.head(delimiter);
    const spot = spots(head).find(({ names }) => isCanonical(names, fields));
    if (spot !== undefined) return planned(file, source, spot, fields, delimiter, head);
  }
  return null;
}

/** Nothing fits: what is wrong is said of the first record, which would be the header. */
function byFirstRecord(file: string, source: TableSource, fields: SwingFields): WayOfReading {
  const head = source.head(",");
  const [first] = head.rows;
  const line = head.lines[0] ?? 1;
  const nothing = { source, plan: null, header: [], headerLine: line };
  if (first === undefined) return { ...nothing, problems: [remark("empty-file", { file, line: null, column: null })] };
  if (typeof first === "string")
    return { ...nothing, problems: [fault("broken-header", { file, line, column: null }, { detail: first })] };
  const spot = { names: first.map((name) => name.trim()), line, below: [], above: false };
  return planned(file, source, spot, fields, ",", head);
}

function planned(
  file: string,
  source: TableSource,
  spot: Spot,
  fields: SwingFields,
  delimiter: Delimiter,
  head: Batch,
): WayOfReading {
  const { names: header, line: headerLine } = spot;
  const at: Place = { file, line: headerLine, column: null };
  const way = { source, header, headerLine };
  if (header.length > MOST_COLUMNS)
    return {
      ...way,
      plan: null,
      problems: [fault("too-many-columns", at, { columns: header.length, most: MOST_COLUMNS })],
    };
  const { plan, problems } = canonicalPlan(header, fields, at, { delimiter, decimal: "." });
  const faults = planFaults(plan, header, fields, at, false);
  if (faults.length === 0) {
    const decimal = source.kind === "text" && delimiter !== "," ? writtenDecimal(head, plan) : ".";
    return { ...way, plan: { ...plan, decimal }, problems: [...skipped(file, spot), ...problems] };
  }
  return { ...way, plan: null, problems: faults[0]?.code === "wrong-delimiter" ? faults : [...problems, ...faults] };
}

/** Two headers that share so much of their names, from 0 to 1, are two states of one export. */
const NEARLY = 0.6;

/** A header that is nearly a mapping's is not read by it, and what changed is said. */
function changedHeader(file: string, sources: Sources, mappings: readonly ReadMapping[]): WayOfReading | null {
  let best: { likeness: number; mapping: ReadMapping; spot: Spot } | null = null;
  for (const mapping of mappings) {
    const own = new Set(mapping.names);
    for (const spot of spotsBy(mapping, sources)) {
      const shared = columnNames(spot.names).filter((name) => own.has(name)).length;
      const likeness = (2 * shared) / (mapping.names.length + spot.names.length);
      if (shared > 1 && likeness >= NEARLY && likeness > (best?.likeness ?? 0)) best = { likeness, mapping, spot };
    }
  }
  const source = best && sources.by(best.mapping);
  if (best === null || source === null) return null;
  const { mapping, spot } = best;
  const names = new Set(columnNames(spot.names));
  const args = {
    mapping: mapping.file,
    added: list([...names].filter((name) => !mapping.names.includes(name))),
    missing: list(mapping.names.filter((name) => !names.has(name))),
  };
  const problems = [fault("changed-header", { file, line: spot.line, column: null }, args)];
  // Its rows can still be counted when they are cut as the mapping says.
  const plan = mapping.plan(mapping.names);
  return { source: cutBy(source, plan), plan: null, header: spot.names, headerLine: spot.line, problems };
}

const cutBy = (source: TableSource, plan: SwingPlan): TableSource => ({
  ...source,
  batches: (_, line) => source.batches(plan, line),
});

const MOST_NAMED = 5;
const list = (names: readonly string[]): string => {
  const named = names.slice(0, MOST_NAMED).map((name) => brief(name === "" ? "(no name)" : name));
  return names.length > MOST_NAMED ? `${named.join(", ")} and ${names.length - MOST_NAMED} more` : named.join(", ");
};
