import type { Problem } from "../../schema/season.ts";
import type { Implement } from "../../schema/tables.ts";
import { cellOf, isNumeric, shownValue, writeCell } from "../corrections/cell-value.ts";
import { remark } from "../problem.ts";
import type { SwingFields } from "../swing-fields.ts";
import type { SwingTable } from "../swing-table.ts";
import type { Told } from "./log-rows.ts";

/** Two names that may mean the same thing: a bat and its role, a ball and its kind. */
export type SameName = (
  field: string,
  one: string | number,
  other: string | number,
  athlete: string,
  date: string,
) => boolean;

/**
 * Names that agree: `game` and the athlete's game bat of the day, a bat and its role, a ball and its kind.
 *
 * @param gameBat of an athlete on a day, if known
 */
export function sameNames(
  bats: readonly Pick<Implement, "id" | "role">[],
  balls: readonly { readonly id: string; readonly kind?: string | undefined }[],
  gameBat: (athlete: string, date: string) => string | null,
): SameName {
  const kinds: Readonly<Record<string, ReadonlyMap<string, string | undefined>>> = {
    implement: new Map(bats.map(({ id, role }) => [id, role])),
    ball: new Map(balls.map(({ id, kind }) => [id, kind])),
  };
  return (field, one, other, athlete, date) => {
    if (one === other) return true;
    const kind = kinds[field];
    if (kind === undefined) return false;
    if (kind.get(String(one)) === other || kind.get(String(other)) === one) return true;
    const own = field === "implement" ? gameBat(athlete, date) : null;
    return own !== null && ((one === "game" && other === own) || (other === "game" && one === own));
  };
}

/** Cells of reps against cells of the log, told once a block and field. */
export class Contradictions {
  readonly #found = new Map<string, { problem: Problem; rows: number }>();

  add(
    field: string,
    value: string,
    at: { file: string; line: number; column: number | null },
    told: Told,
    found: string,
  ): void {
    const other = `${told.at.file}:${told.at.line}`;
    const key = JSON.stringify([at.file, other, field, value]);
    const before = this.#found.get(key);
    if (before !== undefined) {
      before.rows++;
      return;
    }
    this.#found.set(key, { problem: remark("contradiction", at, { field, value, found, other }), rows: 1 });
  }

  problems(): Problem[] {
    return [...this.#found.values()].map(({ problem, rows }) => ({ ...problem, args: { ...problem.args, rows } }));
  }
}

/** A row that inherits. */
export interface Heir {
  readonly table: SwingTable;
  readonly row: number;
  readonly file: string;
  readonly athlete: string;
  readonly date: string;
}

/**
 * Fills a row's blank cells from its block. A cell that is filled stands, as a rep's own word comes before the log's;
 * where the two differ, both places are told.
 */
export function inherit(
  { table, row, file, athlete, date }: Heir,
  context: ReadonlyMap<string, Told>,
  fields: SwingFields,
  same: SameName,
  contradictions: Contradictions,
): void {
  for (const [field, told] of context) {
    const column = fields.byField.get(field);
    if (column === undefined) continue;
    const own = cellOf(table, row, { column, unit: null });
    if (own === null) writeCell(table, row, field, told.value, isNumeric(column));
    else if (!same(field, own, told.value, athlete, date)) {
      const at = { file, line: table.lines[row] ?? 0, column: table.fieldNumbers.get(field) ?? null };
      contradictions.add(field, shownValue(own, column), at, told, shownValue(told.value, column));
    }
  }
}

/** Fills what a mapping says of every row, where nothing that comes before it has spoken. */
export function fillFixed(table: SwingTable, fields: SwingFields): void {
  for (const [field, value] of table.fixed) {
    const column = fields.byField.get(field);
    if (column === undefined) continue;
    if (isNumeric(column)) {
      const values = table.numbers.get(field) ?? new Float64Array(table.n).fill(Number.NaN);
      table.numbers.set(
        field,
        values.map((own) => (Number.isNaN(own) ? Number(value) : own)),
      );
    } else {
      const values = table.words.get(field) ?? new Array<string | null>(table.n).fill(null);
      table.words.set(
        field,
        values.map((own) => own ?? String(value)),
      );
    }
  }
}
