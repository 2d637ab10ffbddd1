import type { SetAsideReason } from "../schema/reasons.ts";
import type { LedgerRow, Problem } from "../schema/season.ts";
import { rowFault } from "./problem.ts";
import { type SwingFile, wholeRow } from "./swing-file.ts";

/** One row of one swing file. */
export interface RowAt {
  readonly table: number;
  readonly row: number;
}

interface Aside {
  readonly ledger: LedgerRow;
  /** Null where something said once stands for many rows. */
  readonly problem: Problem | null;
}

/** What becomes of the rows of the season's swing files while stage after stage looks at them. */
export class RowFates {
  readonly files: readonly SwingFile[];
  readonly #athletes: readonly string[];
  readonly #aside: Map<number, Aside>[];
  readonly #asRead: readonly ReadonlyMap<number, Aside>[];
  readonly #problems: Problem[] = [];
  /** Rows of the bat -> the ball's row that is one swing with it. */
  readonly #partners = new Map<string, RowAt>();
  /** Rows that say nothing new, or something old -> the row that stands for them. */
  readonly #standsFor = new Map<string, RowAt>();

  constructor(files: readonly SwingFile[], athletes: readonly string[]) {
    this.files = files;
    this.#athletes = athletes;
    this.#aside = files.map((file) => this.#read(file));
    this.#asRead = this.#aside.map((rows) => new Map(rows));
  }

  /** What reading left aside; problems of single rows are kept with their rows, so that both can go again. */
  #read({ file, table, setAside, problems }: SwingFile): Map<number, Aside> {
    const ofLine = new Map<number, Problem>();
    for (const problem of problems) {
      const { line } = problem.at;
      if (problem.level === "row" && line !== null && problem.at.file === file && !ofLine.has(line))
        ofLine.set(line, problem);
      else this.#problems.push(problem);
    }
    const aside = new Map<number, Aside>();
    for (const ledger of setAside) {
      const problem = ofLine.get(ledger.line) ?? null;
      ofLine.delete(ledger.line);
      aside.set(rowOfLine(table.lines, ledger.line), { ledger, problem });
    }
    for (const problem of ofLine.values()) this.#problems.push(problem);
    return aside;
  }

  athleteOf({ table, row }: RowAt): string | null {
    return this.#athletes[this.files[table]?.table.athlete[row] ?? -1] ?? null;
  }

  placeOf({ table, row }: RowAt): { file: string; line: number } {
    const found = this.files[table];
    return { file: found?.file ?? "", line: found?.table.lines[row] ?? 0 };
  }

  reasonOf({ table, row }: RowAt): LedgerRow["reason"] | null {
    return this.#aside[table]?.get(row)?.ledger.reason ?? null;
  }

  /** Sets a row aside, whatever it was before. `code` null: something said once stands for many rows. */
  putAside(at: RowAt, reason: SetAsideReason, args: Problem["args"] = {}, code: string | null = reason): void {
    const found = this.files[at.table];
    if (found === undefined) return;
    found.table.kept[at.row] = 0;
    const { file, line } = this.placeOf(at);
    const problem = code === null ? null : rowFault(code, { file, line, column: null }, args);
    this.#aside[at.table]?.set(at.row, { ledger: wholeRow(file, line, reason, this.athleteOf(at)), problem });
  }

  /** Back to what reading made of the row: set aside again because of its cells, whatever was said of it since. */
  asRead({ table, row }: RowAt): void {
    const was = this.#asRead[table]?.get(row);
    if (was !== undefined) this.#aside[table]?.set(row, was);
  }

  /** The row is read after all. */
  takeBack({ table, row }: RowAt): void {
    const found = this.files[table];
    if (found === undefined) return;
    found.table.kept[row] = 1;
    this.#aside[table]?.delete(row);
  }

  say(problem: Problem): void {
    this.#problems.push(problem);
  }

  /** The row is one swing with another, which stands for both. */
  joinTo(at: RowAt, into: RowAt): void {
    const found = this.files[at.table];
    if (found === undefined) return;
    found.table.kept[at.row] = 0;
    this.#aside[at.table]?.delete(at.row);
    this.#partners.set(`${into.table}:${into.row}`, at);
  }

  /** The other device's row of the same swing. */
  partnerOf({ table, row }: RowAt): RowAt | null {
    return this.#partners.get(`${table}:${row}`) ?? null;
  }

  /** Notes that `at` tells of a swing for which `by` stands. */
  standFor(at: RowAt, by: RowAt): void {
    this.#standsFor.set(`${at.table}:${at.row}`, by);
  }

  /** The row that stands for the swing of this one; itself, unless it is repeated or revised elsewhere. */
  standing(at: RowAt): RowAt {
    let now = at;
    for (let next = this.#standsFor.get(`${now.table}:${now.row}`); next !== undefined; ) {
      now = next;
      next = this.#standsFor.get(`${now.table}:${now.row}`);
    }
    return now;
  }

  /** In order of file and line. */
  setAside(): LedgerRow[] {
    return this.#aside.flatMap((rows) =>
      [...rows].sort(([one], [other]) => one - other).map(([, { ledger }]) => ledger),
    );
  }

  problems(): Problem[] {
    const ofRows = this.#aside.flatMap((rows) => [...rows.values()].flatMap(({ problem }) => problem ?? []));
    return [...this.#problems, ...ofRows];
  }
}

/** Index of the row that starts on this line; lines rise. @returns -1 when no row starts there */
export function rowOfLine(lines: Int32Array, line: number): number {
  let lo = 0;
  let hi = lines.length - 1;
  while (lo <= hi) {
    const middle = (lo + hi) >> 1;
    const here = lines[middle] ?? 0;
    if (here === line) return middle;
    if (here < line) lo = middle + 1;
    else hi = middle - 1;
  }
  return -1;
}
