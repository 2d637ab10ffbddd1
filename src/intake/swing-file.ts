import { isUtf8 } from "node:buffer";
import type { SetAsideReason } from "../schema/reasons.ts";
import type { LedgerRow, Place, Problem } from "../schema/season.ts";
import type { CellContext } from "./cell-reader.ts";
import { type CsvRecords, readHeader, readRecords } from "./csv-records.ts";
import { type ReadMapping, sameHeader } from "./mappings.ts";
import { fault, remark, rowFault, wholeFile } from "./problem.ts";
import { cellProblem } from "./row-problem.ts";
import { type RowFaults, swingColumns } from "./swing-columns.ts";
import type { SwingFields } from "./swing-fields.ts";
import { canonicalPlan, planFaults, type SwingPlan } from "./swing-plan.ts";
import type { SwingTable } from "./swing-table.ts";

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
}

/** Reads one swing file by the mapping for its header, else as canonical columns. */
export function readSwingFile(file: string, number: number, bytes: Uint8Array, setup: SwingSetup): SwingFile {
  if (!isUtf8(bytes)) {
    return unread(file, number, readRecords(asUtf8(bytes), ","), [fault("not-utf-8", wholeFile(file))]);
  }
  const mapping = setup.mappings.find(({ header, plan }) => {
    const found = readHeader(bytes, plan.delimiter);
    return found !== null && sameHeader(found, header);
  });
  const records = readRecords(bytes, mapping?.plan.delimiter ?? ",");
  const at: Place = { file, line: records.headerLine, column: null };
  const { header } = records;
  if (header === null) return unread(file, number, records, [fault("broken-header", at)]);
  if (header.length === 0) return unread(file, number, records, [remark("empty-file", wholeFile(file))]);
  const { plan, problems } = mapping ? { plan: mapping.plan, problems: [] } : canonicalPlan(header, setup.fields, at);
  const faults = planFaults(plan, header, setup.fields, at);
  if (faults.length > 0)
    return unread(file, number, records, faults[0]?.code === "wrong-delimiter" ? faults : [...problems, ...faults]);
  if (records.rows.length === 0) problems.push(remark("empty-file", wholeFile(file)));
  return readByPlan(file, number, records, plan, problems, setup);
}

/** Text of another encoding, only so that its rows can be counted. */
function asUtf8(bytes: Uint8Array): Uint8Array {
  const encoding =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? "utf-16le"
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? "utf-16be"
        : "latin1";
  return new TextEncoder().encode(new TextDecoder(encoding).decode(bytes));
}

/** A file of which no row can be read. */
function unread(file: string, number: number, { rows, lines }: CsvRecords, problems: Problem[]): SwingFile {
  const table: SwingTable = {
    file: number,
    n: rows.length,
    lines,
    kept: new Uint8Array(rows.length),
    athlete: new Int32Array(rows.length).fill(-1),
    day: new Float64Array(rows.length).fill(Number.NaN),
    numbers: new Map(),
    words: new Map(),
    fieldNumbers: new Map(),
  };
  const setAside = Array.from(lines, (line) => wholeRow(file, line, "unreadable-row", null));
  return { file, table, setAside, problems };
}

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

function readByPlan(
  file: string,
  number: number,
  records: CsvRecords,
  plan: SwingPlan,
  before: readonly Problem[],
  setup: SwingSetup,
): SwingFile {
  const { faults, ...columns } = swingColumns(records, plan, setup.fields, setup.context);
  const kept = Uint8Array.from(faults.reason, (reason) => (reason === undefined ? 1 : 0));
  const setAside: LedgerRow[] = [];
  const problems = [...before];
  for (let row = 0; row < columns.n; row++) {
    if (kept[row] === 1) continue;
    const athlete = setup.athletes[columns.athlete[row] ?? -1] ?? null;
    const failed = failedRow(file, records, row, faults, athlete, setup);
    setAside.push(failed.ledger);
    problems.push(failed.problem);
  }
  return { file, table: { ...columns, file: number, kept }, setAside, problems };
}

function failedRow(
  file: string,
  { rows, lines, header }: CsvRecords,
  row: number,
  faults: RowFaults,
  athlete: string | null,
  { fields, context }: SwingSetup,
): { ledger: LedgerRow; problem: Problem } {
  const line = lines[row] ?? 0;
  const cells = rows[row] ?? null;
  const reason = faults.reason[row] ?? "unreadable-row";
  const planned = faults.column[row];
  const blank = cells?.every((cell) => cell.trim() === "") ?? false;
  if (planned === undefined || blank) {
    const counted = { fields: cells?.length ?? 0, expected: header?.length ?? 0 };
    const args = cells === null ? { detail: "quotes" } : blank ? { detail: "blank" } : counted;
    const problem = rowFault("unreadable-row", { file, line, column: null }, args);
    return { ledger: wholeRow(file, line, "unreadable-row", athlete), problem };
  }
  const value = cells?.[planned.index] ?? "";
  const column = planned.index + 1;
  const problem = cellProblem(reason, { file, line, column }, planned, value, fields, context);
  return { ledger: { file, line, column, field: planned.header, value, reason, athlete }, problem };
}
