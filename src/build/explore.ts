import { metricsOf, readContent } from "../intake/content.ts";
import { readDataTables } from "../intake/data-tables.ts";
import { type ExportTable, exportTable, type NoTable, type Told } from "../intake/guess/export-table.ts";
import { unitOf } from "../intake/guess/header-name.ts";
import type { Proposal } from "../intake/guess/proposal.ts";
import { type Answers, propose, type Table } from "../intake/guess/propose.ts";
import { DATE_TIME, type Surroundings } from "../intake/guess/surroundings.ts";
import type { Allowed } from "../intake/guess/word-sense.ts";
import { type Known, knownNames } from "../intake/known.ts";
import { namesOf } from "../intake/names.ts";
import { seasonFiles } from "../intake/season-files.ts";
import { swingFields } from "../intake/swing-fields.ts";
import type { Column } from "../schema/columns.ts";
import type { Effects } from "../schema/effects.ts";
import { columnNames, Mapping } from "../schema/mapping.ts";
import { unitsFor } from "../schema/units.ts";
import type { Paths } from "./terms.ts";

/** An export with what the season knows: ready to be asked how it is read. */
export interface Explored {
  readonly table: ExportTable;
  readonly names: readonly string[];
  /** Every field that a column may be given, `date_time` included. */
  readonly fields: readonly string[];
  /** Mappings that are there: file name -> its content. */
  readonly mappings: ReadonlyMap<string, Mapping>;
  /** Units that a field may be written in; nothing for a field without. */
  unitsOf(field: string): readonly string[];
  propose(answers: Answers): Proposal;
  /** The mapping that a proposal comes to. */
  mapping(proposal: Proposal, label: string, zone: string | null): Mapping;
}

/** Looks at an export with the season's names, lists and metrics at hand. Writes nothing. */
export async function explore(
  paths: Pick<Paths, "content" | "data">,
  bytes: Uint8Array,
  told: Told,
  effects: Pick<Effects, "disk">,
): Promise<Explored | NoTable> {
  const table = await exportTable(bytes, told);
  if ("code" in table) return table;
  const content = await readContent(await seasonFiles(paths.content, "content", effects.disk));
  const data = await seasonFiles(paths.data, "data", effects.disk);
  const tables = await readDataTables(data);
  const known = knownNames(content, tables.implements, tables.balls);
  const labels = new Map(
    [...(tables.implements ?? []), ...(tables.balls ?? [])].map(({ id, label }) => [id, label ?? null]),
  );
  const own = swingFields(metricsOf(content.metricsFile?.page?.front ?? null));
  const people = namesOf(content.folders);
  const surroundings: Surroundings = {
    columns: own.columns,
    byHeader: own.byHeader,
    measured: own.measured,
    allowed: (column) => allowedIn(column, known, labels),
    whom: (text) => people.find(text).kind,
  };
  const { found } = table;
  const names = columnNames(found.header);
  const units = names.map((_, at) => unitOf(found.unitsRow?.[at] ?? ""));
  const guessed: Table = { names, units, rows: found.rows };
  return {
    table,
    names,
    fields: [...own.columns.map(({ field }) => field), DATE_TIME],
    mappings: await mappingsIn(data),
    unitsOf: (field) => unitsOf(own.byField.get(field)),
    propose: (answers) => propose(guessed, answers, surroundings),
    mapping: (proposal, label, zone) => mappingOf(table, proposal, label, zone),
  };
}

const unitsOf = (column: Column | undefined): string[] =>
  column?.is.kind === "number" ? unitsFor(column.is.unit) : [];

function allowedIn({ is }: Column, known: Known, labels: ReadonlyMap<string, string | null>): Allowed[] | null {
  const listed = (names: Iterable<string> | null) =>
    names && [...names].map((id): Allowed => ({ id, label: labels.get(id) ?? null }));
  if (is.kind === "implement") return listed(known.implements);
  if (is.kind === "ball") return listed(known.balls);
  if (is.kind !== "words") return null;
  return listed(is.open ? (known.environments ?? is.words) : is.words);
}

/** Mappings that can be read at all; `check` says what is wrong with the others. */
async function mappingsIn(data: Awaited<ReturnType<typeof seasonFiles>>): Promise<Map<string, Mapping>> {
  const mappings = new Map<string, Mapping>();
  for (const file of data.files.filter((name) => /^data\/mappings\/[^/]+\.json$/i.test(name))) {
    const bytes = await data.read(file);
    if (!(bytes instanceof Uint8Array)) continue;
    try {
      const parsed = Mapping.safeParse(JSON.parse(new TextDecoder("utf-8").decode(bytes)));
      if (parsed.success) mappings.set(file, parsed.data);
    } catch {
      // Not JSON: it reads nothing, and may be replaced.
    }
  }
  return mappings;
}

function mappingOf(table: ExportTable, proposal: Proposal, label: string, zone: string | null): Mapping {
  const { found, delimiter, encoding, sheet } = table;
  const columns = proposal.columns.flatMap(({ name, field, unit, form, words }) => {
    if (field === null) return [];
    const how = { field, ...(unit && { unit }), ...(form && { form }), ...(words && { words }) };
    return [[name, how] as const];
  });
  return {
    label,
    header: [...found.header],
    ...(delimiter && { delimiter }),
    ...(proposal.decimal === "," && { decimal: "," }),
    ...(encoding && { encoding }),
    ...(sheet && { sheet }),
    ...(found.unitsRow && { units_row: [...found.unitsRow] }),
    ...(found.summaryWords.length > 0 && { summary_rows: { words: [...found.summaryWords] } }),
    ...(zone && { zone }),
    columns: Object.fromEntries(columns),
    ...(Object.keys(proposal.fixed).length > 0 && { fixed: { ...proposal.fixed } }),
  };
}
