import type { SetAsideReason } from "../schema/reasons.ts";
import type { CsvRow } from "./csv-batches.ts";
import { isSummary, type RowMarks } from "./row-marks.ts";
import type { PlannedColumn } from "./swing-plan.ts";

/** One cell that cannot stand. */
export interface CellFault {
  readonly column: PlannedColumn;
  readonly reason: SetAsideReason;
}

/** A row that cannot stand: because of itself, or because of some of its cells, of which the first is told. */
export interface RowFault {
  /** Number of the row in the file, from 0. */
  readonly row: number;
  readonly reason: SetAsideReason;
  readonly cells: readonly CellFault[];
}

/** One batch while its cells are read. */
export class Reading {
  readonly rows: readonly CsvRow[];
  readonly #faults = new Map<number, { reason: SetAsideReason; cells: CellFault[] }>();
  /** 1 where a row has no cells in their places: nothing in it can be read. */
  readonly closed: Uint8Array;

  constructor(rows: readonly CsvRow[], width: number, marks: RowMarks) {
    this.rows = rows;
    this.closed = new Uint8Array(rows.length);
    for (const [row, cells] of rows.entries()) {
      if (typeof cells !== "string" && isSummary(cells, marks)) this.#close(row, "summary-row");
      else if (typeof cells === "string" || cells.length !== width) this.#close(row, "unreadable-row");
    }
  }

  #close(row: number, reason: SetAsideReason): void {
    this.closed[row] = 1;
    this.#faults.set(row, { reason, cells: [] });
  }

  fail(row: number, reason: SetAsideReason, column: PlannedColumn): void {
    const known = this.#faults.get(row);
    if (known === undefined) this.#faults.set(row, { reason, cells: [{ column, reason }] });
    else known.cells.push({ column, reason });
  }

  /** Calls back with every cell of a column as text, blanks and translated words settled. */
  each({ index, words }: PlannedColumn, take: (row: number, text: string) => void): void {
    const { rows, closed } = this;
    for (let row = 0; row < rows.length; row++)
      if (closed[row] !== 1) take(row, settled(rows[row]?.[index] ?? "", words));
  }

  /** The same for rows of the wrong width: what stands in such a place may be what it seems. */
  eachOfBroken({ index, words }: PlannedColumn, take: (row: number, text: string) => void): void {
    for (const [row, { reason, cells }] of this.#faults) {
      const written = this.rows[row];
      if (reason === "unreadable-row" && cells.length === 0 && typeof written === "object")
        take(row, settled(written[index] ?? "", words));
    }
  }

  faults(base: number): RowFault[] {
    return [...this.#faults]
      .sort(([one], [other]) => one - other)
      .map(([row, { reason, cells }]) => ({ row: base + row, reason, cells }));
  }
}

const SPACE = 32;
const DELETE = 127;

/** The same as `trim`, which costs more than a look at both ends where there is nothing to take off. */
function trimmed(cell: string): string {
  const last = cell.charCodeAt(cell.length - 1);
  const first = cell.charCodeAt(0);
  return first > SPACE && first < DELETE && last > SPACE && last < DELETE ? cell : cell.trim();
}

function settled(cell: string, words: PlannedColumn["words"]): string {
  const text = trimmed(cell);
  return words === null || !Object.hasOwn(words, text) ? text : (words[text] ?? "").trim();
}
