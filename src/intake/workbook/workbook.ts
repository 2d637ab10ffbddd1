import { readSheet } from "read-excel-file/node";
import { HEADER_LINES } from "../../schema/mapping.ts";
import type { Batch } from "../csv-batches.ts";
import type { ReadMapping } from "../mappings.ts";
import type { TableSource } from "../table-source.ts";
import type { Sources } from "../way-of-reading.ts";
import { type TypedCell, writtenCell } from "./typed-cell.ts";
import { unpackedWorkbook } from "./unpacked.ts";
import { WorkbookFault } from "./workbook-fault.ts";

type Rows = readonly (readonly TypedCell[])[];

/**
 * The sheets of a workbook that are asked for: the first, and those that mappings name. A line is a row of the sheet, a
 * column its column, from 1.
 *
 * @throws {WorkbookFault} when the workbook cannot be read
 */
export async function workbookSources(bytes: Uint8Array, mappings: readonly ReadMapping[]): Promise<Sources> {
  const workbook = unpackedWorkbook(bytes);
  const plain = await sheetOf(workbook, 1);
  const named = new Map<string, TableSource | null>();
  for (const { mapping } of mappings)
    if (mapping.sheet !== undefined && !named.has(mapping.sheet))
      named.set(mapping.sheet, await sheetOf(workbook, mapping.sheet));
  return {
    plain,
    by: ({ mapping }) => (mapping.sheet === undefined ? plain : (named.get(mapping.sheet) ?? null)),
  };
}

/** @returns null when there is no such sheet */
async function sheetOf(workbook: Buffer, sheet: number | string): Promise<TableSource | null> {
  try {
    // The package's type of a cell names the constructor of dates where it means dates.
    return sheetSource((await readSheet(workbook, sheet)) as unknown as Rows);
  } catch (error) {
    if (error instanceof Error && error.name === "SheetNotFoundError") return null;
    throw new WorkbookFault("broken-workbook", { detail: error instanceof Error ? error.message : String(error) });
  }
}

const lastFilled = (row: readonly TypedCell[]): number => row.findLastIndex((cell) => cell !== null && cell !== "") + 1;

const PART = 4096;

/** A sheet as a table: rows without a filled cell are left out, blank cells behind the header's last are no cells. */
export function sheetSource(rows: Rows): TableSource {
  return {
    kind: "workbook",
    head: () => batchOf(rows, 0, HEADER_LINES + 1, 0, "."),
    *batches(plan, line) {
      const width = lastFilled(rows[line - 1] ?? []);
      for (let from = Math.max(0, line - 1); from < rows.length; from += PART)
        yield batchOf(rows, from, from + PART, width, plan?.decimal ?? ".");
    },
  };
}

function batchOf(rows: Rows, from: number, to: number, width: number, decimal: "." | ","): Batch {
  const cells: string[][] = [];
  const lines: number[] = [];
  for (let index = from; index < Math.min(to, rows.length); index++) {
    const row = rows[index] ?? [];
    const filled = lastFilled(row);
    if (filled === 0) continue;
    cells.push(
      Array.from({ length: Math.max(width, filled) }, (_, column) => writtenCell(row[column] ?? null, decimal)),
    );
    lines.push(index + 1);
  }
  return { rows: cells, lines };
}
