import type { Delimiter, Encoding } from "../../schema/mapping.ts";
import type { ReadMapping } from "../mappings.ts";
import { tableKind } from "../table-kind.ts";
import { workbookSources } from "../workbook/workbook.ts";
import { WorkbookFault } from "../workbook/workbook-fault.ts";
import { MOST_ROWS, textTable } from "./dialect.ts";
import { type FoundTable, findTable } from "./find-table.ts";

/** What a person may say of how a file is written. */
export interface Told {
  readonly encoding: Encoding | null;
  readonly delimiter: Delimiter | null;
  readonly sheet: string | null;
}

/** A table found in an export. A key is null where a mapping need not say it. */
export interface ExportTable {
  readonly kind: "text" | "workbook";
  readonly found: FoundTable;
  readonly delimiter: Delimiter | null;
  readonly encoding: Encoding | null;
  readonly sheet: string | null;
}

/** Why there is no table: the kind of file it is, a fault of a workbook, or nothing that looks like a header. */
export interface NoTable {
  readonly code: "not-a-table" | "no-header" | "no-sheet" | WorkbookFault["code"];
  readonly args: Readonly<Record<string, string | number>>;
}

/** Finds the table in an export, text or workbook. */
export async function exportTable(bytes: Uint8Array, told: Told): Promise<ExportTable | NoTable> {
  const kind = tableKind(bytes);
  if (kind === "workbook") return workbookTable(bytes, told.sheet);
  if (kind !== "text") return { code: "not-a-table", args: { kind } };
  const read = textTable(bytes, told);
  if (read === null) return { code: "no-header", args: {} };
  const { dialect, table } = read;
  return {
    kind,
    found: table,
    delimiter: dialect.delimiter === "," ? null : dialect.delimiter,
    encoding: dialect.proven ? null : dialect.encoding,
    sheet: null,
  };
}

async function workbookTable(bytes: Uint8Array, sheet: string | null): Promise<ExportTable | NoTable> {
  try {
    // A sheet is named to the reader by a mapping; of this one only the sheet's name is known yet.
    const naming = sheet === null ? null : ({ mapping: { sheet } } as ReadMapping);
    const sources = await workbookSources(bytes, naming === null ? [] : [naming]);
    const source = naming === null ? sources.plain : sources.by(naming);
    if (source === null) return { code: "no-sheet", args: { sheet: sheet ?? "" } };
    const rows: string[][] = [];
    for (const batch of source.batches(null, 1)) {
      for (const row of batch.rows) if (typeof row !== "string") rows.push([...row]);
      if (rows.length >= MOST_ROWS) break;
    }
    const found = findTable(evenly(rows));
    return found === null
      ? { code: "no-header", args: {} }
      : { kind: "workbook", found, delimiter: null, encoding: null, sheet };
  } catch (error) {
    if (error instanceof WorkbookFault) return { code: error.code, args: error.args };
    throw error;
  }
}

/** Rows of a sheet end with their last filled cell: blank ones are put behind it, up to the widest row. */
function evenly(rows: readonly string[][]): string[][] {
  const width = rows.reduce((most, { length }) => Math.max(most, length), 0);
  return rows.map((row) => [...row, ...new Array<string>(width - row.length).fill("")]);
}
