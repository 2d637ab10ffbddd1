import type { Encoding } from "../schema/mapping.ts";
import type { SetAsideReason } from "../schema/reasons.ts";
import type { LedgerRow, Problem } from "../schema/season.ts";
import type { RowFault } from "./batch-reading.ts";
import { brief } from "./brief.ts";
import type { CellContext } from "./cell-reader.ts";
import type { CsvRow } from "./csv-batches.ts";
import { provenEncoding, toUtf8 } from "./encodings.ts";
import type { ReadMapping } from "./mappings.ts";
import { fault, remark, rowFault, wholeFile } from "./problem.ts";
import { cellProblem } from "./row-problem.ts";
import { SwingColumns } from "./swing-columns.ts";
import type { SwingFields } from "./swing-fields.ts";
import type { SwingPlan } from "./swing-plan.ts";
import type { SwingTable } from "./swing-table.ts";
import { tableKind } from "./table-kind.ts";
import { type TableSource, textSource } from "./table-source.ts";
import { type Sources, wayOfReading } from "./way-of-reading.ts";
import { workbookSources } from "./workbook/workbook.ts";
import { WorkbookFault } from "./workbook/workbook-fault.ts";

/** What every swing file of a season is read with. */
export interface SwingSetup {
  readonly fields: SwingFields;
  readonly mappings: readonly ReadMapping[];
  readonly context: CellContext;
  /** Athletes by the index that stands for them. */
  readonly athletes: readonly string[];
}

/** One swing file: every data row is either kept in the table or in `setAside`. */
export interface SwingFile {
  readonly file: string;
  readonly table: SwingTable;
  readonly setAside: readonly LedgerRow[];
  readonly problems: readonly Problem[];
  /** How its cells were read; null when the file could not be read at all. */
  readonly plan: SwingPlan | null;
  /** Rows that were set aside because of cells, with every such cell: a correction may put them right. */
  readonly failed: readonly FailedRow[];
}

/** A row that was set aside because of some of its cells. */
export interface FailedRow {
  readonly row: number;
  readonly cells: readonly {
    readonly field: string;
    /** Number of the field in the row, from 1. */
    readonly column: number;
    /** What is written there. */
    readonly text: string;
    readonly reason: SetAsideReason;
  }[];
}

/**
 * Reads one swing file, text or workbook, by the mapping for its header, else as canonical columns.
 *
 * Everything below the header that is not a blank line is a row and is counted: what cannot be read is set aside
 * `unreadable-row`, a repeated header, the row of units and sums of other rows are set aside `summary-row`. Lines above the
 * header are no rows, and neither is anything in a file that is no table at all.
 */
export async function readSwingFile(
  file: string,
  number: number,
  bytes: Uint8Array,
  setup: SwingSetup,
): Promise<SwingFile> {
  const kind = tableKind(bytes);
  const named = /\.xlsx$/i.test(file) ? "workbook" : "text";
  if (kind !== named && bytes.length > 0)
    return empty(file, number, [fault("not-a-table", wholeFile(file), { kind, named })]);
  if (kind === "text") return readTable(file, number, textSources(bytes), setup, bytes);
  try {
    return readTable(file, number, await workbookSources(bytes, setup.mappings), setup, bytes);
  } catch (error) {
    if (!(error instanceof WorkbookFault)) throw error;
    return empty(file, number, [fault(error.code, wholeFile(file), error.args)]);
  }
}

/** A text in its proven encoding; where nothing is proven, in the one that the mapping names, or in Windows-1252. */
function textSources(bytes: Uint8Array): Sources {
  const proven = provenEncoding(bytes);
  const made = new Map<Encoding, TableSource>();
  const source = (encoding: Encoding): TableSource => {
    const known = made.get(encoding) ?? textSource(toUtf8(bytes, encoding));
    made.set(encoding, known);
    return known;
  };
  return {
    plain: proven && source(proven),
    by: ({ mapping }) => source(proven ?? mapping.encoding ?? "windows-1252"),
  };
}

function readTable(file: string, number: number, sources: Sources, setup: SwingSetup, bytes: Uint8Array): SwingFile {
  const way = wayOfReading(file, sources, setup.mappings, setup.fields);
  if (way === null) {
    const source = textSource(toUtf8(bytes, "windows-1252"));
    return unread(file, number, source, source.head(",").lines[0] ?? 1, [fault("not-utf-8", wholeFile(file))]);
  }
  const { source, plan, header, headerLine, problems } = way;
  if (plan === null) return unread(file, number, source, headerLine, problems);
  return readByPlan(file, number, source, plan, { header, headerLine, problems }, setup);
}

/** A file of which no row can be read; its rows are counted. */
function unread(
  file: string,
  number: number,
  source: TableSource,
  headerLine: number,
  problems: readonly Problem[],
): SwingFile {
  const lines: number[] = [];
  for (const batch of source.batches(null, headerLine))
    for (const line of batch.lines) if (line > headerLine) lines.push(line);
  const n = lines.length;
  const table: SwingTable = {
    file: number,
    n,
    lines: Int32Array.from(lines),
    kept: new Uint8Array(n),
    athlete: new Int32Array(n).fill(-1),
    day: new Float64Array(n).fill(Number.NaN),
    numbers: new Map(),
    words: new Map(),
    fixed: new Map(),
    fieldNumbers: new Map(),
  };
  const setAside = lines.map((line) => wholeRow(file, line, "unreadable-row", null));
  return { file, table, setAside, problems, plan: null, failed: [] };
}

/** A file in which there are no rows at all. */
const empty = (file: string, number: number, problems: readonly Problem[]): SwingFile =>
  unread(file, number, textSource(new Uint8Array(0)), 0, problems);

/** Ledger entry of a row that is meant as a whole. */
export const wholeRow = (file: string, line: number, reason: SetAsideReason, athlete: string | null): LedgerRow => ({
  file,
  line,
  column: null,
  field: null,
  value: null,
  reason,
  athlete,
});

interface Begun {
  readonly header: readonly string[];
  readonly headerLine: number;
  readonly problems: readonly Problem[];
}

function readByPlan(
  file: string,
  number: number,
  source: TableSource,
  plan: SwingPlan,
  { header, headerLine, problems: before }: Begun,
  setup: SwingSetup,
): SwingFile {
  const columns = new SwingColumns(
    plan,
    { header, unitsRow: plan.unitsRow, summary: plan.summary },
    setup.fields,
    setup.context,
  );
  const problems = [...before];
  const setAside: LedgerRow[] = [];
  const failed: FailedRow[] = [];
  const faulty: number[] = [];
  for (const batch of source.batches(plan, headerLine)) {
    // Reading starts on the line of the header, which is no row.
    const from = batch.lines.findIndex((line) => line > headerLine);
    if (from === -1) continue;
    const below = from === 0 ? batch : { rows: batch.rows.slice(from), lines: batch.lines.slice(from) };
    const { faults, base, athlete } = columns.add(below);
    for (const found of faults) {
      const cells = below.rows[found.row - base] ?? [];
      const line = below.lines[found.row - base] ?? 0;
      const whose = setup.athletes[athlete(found.row)] ?? null;
      const told = failedRow(file, line, cells, header.length, found, whose, setup);
      faulty.push(found.row);
      setAside.push(told.ledger);
      problems.push(told.problem);
      if (found.cells.length > 0 && typeof cells !== "string") failed.push(withCells(found, cells));
    }
  }
  const table = columns.finish();
  const kept = new Uint8Array(table.n).fill(1);
  for (const row of faulty) kept[row] = 0;
  if (table.n === 0) problems.push(remark("empty-file", wholeFile(file)));
  if (columns.needsTimeZone) problems.push(fault("no-time-zone", wholeFile(file)));
  return { file, table: { ...table, file: number, kept }, setAside, problems, plan, failed };
}

const withCells = ({ row, cells: faults }: RowFault, cells: readonly string[]): FailedRow => ({
  row,
  cells: faults.map(({ column, reason }) => ({
    field: column.column.field,
    column: column.index + 1,
    text: cells[column.index] ?? "",
    reason,
  })),
});

function failedRow(
  file: string,
  line: number,
  cells: CsvRow,
  expected: number,
  { reason, cells: faults }: RowFault,
  athlete: string | null,
  { fields, context }: SwingSetup,
): { ledger: LedgerRow; problem: Problem } {
  const [first] = faults;
  const blank = typeof cells !== "string" && cells.every((cell) => cell.trim() === "");
  if (first === undefined || blank) {
    const args =
      typeof cells === "string" ? { detail: cells } : blank ? { detail: "blank" } : { fields: cells.length, expected };
    const why = blank ? "unreadable-row" : reason;
    const problem = rowFault(why, { file, line, column: null }, why === "summary-row" ? {} : args);
    return { ledger: wholeRow(file, line, why, athlete), problem };
  }
  const { column: planned } = first;
  const value = brief((typeof cells === "string" ? "" : cells[planned.index]) ?? "");
  const column = planned.index + 1;
  const problem = cellProblem(reason, { file, line, column }, planned, value, fields, context);
  return { ledger: { file, line, column, field: planned.header, value, reason, athlete }, problem };
}
