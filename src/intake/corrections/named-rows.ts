import type { CorrectionWritten } from "../../schema/tables.ts";
import { calendarDay } from "../calendar-day.ts";
import type { Names } from "../names.ts";
import { type RowAt, type RowFates, rowOfLine } from "../row-fates.ts";
import type { SwingTable } from "../swing-table.ts";

/** Why a correction names no rows. */
export type Unnamed =
  | { readonly why: "incomplete"; readonly detail: string }
  | { readonly why: "no-rows" }
  | { readonly why: "unknown-athlete"; readonly value: string };

type Index = ReadonlyMap<string, number>;

/**
 * The rows that a correction is about, as the exports have them: before any correction. A row that an earlier or later
 * export repeats is meant by either place; the row that stands for the swing is given back.
 *
 * By file and line, or by athlete and date, with session and block as far as they are written, `first` to `last` counting
 * the rows inside: in order of time when all have one, else in order of file and line.
 */
export function namedRows(
  correction: CorrectionWritten,
  fates: RowFates,
  names: Names,
  index: Index,
): { readonly rows: readonly RowAt[] } | Unnamed {
  const { file, line, athlete_id: who, date } = correction;
  if (file !== undefined && line !== undefined) return byLine(file, line, fates);
  if (file !== undefined || line !== undefined)
    return { why: "incomplete", detail: "file and line name a row together" };
  if (who === undefined || date === undefined)
    return { why: "incomplete", detail: "a row is named by file and line, or by athlete_id and date" };
  const whom = names.find(who);
  const athlete = whom.kind === "one" ? index.get(whom.id) : undefined;
  if (athlete === undefined) return { why: "unknown-athlete", value: who };
  const all = inOrder(rowsOfDay(fates, athlete, calendarDay(date) ?? Number.NaN, correction), fates);
  const { first = 1, last = correction.first ?? all.length } = correction;
  if (correction.first === undefined && correction.last === undefined) return all.length === 0 ? none : { rows: all };
  if (first < 1 || last < first || !Number.isInteger(first) || !Number.isInteger(last))
    return { why: "incomplete", detail: "first and last are whole numbers from 1, first not after last" };
  return last > all.length ? none : { rows: all.slice(first - 1, last) };
}

const none: Unnamed = { why: "no-rows" };

/** The row that stands for the swing at a place; null where there is none. `data/` and `data/swings/` in front of a file may be left out. */
export function rowAtPlace(file: string, line: number, fates: RowFates): RowAt | null {
  const names = [file, `data/${file}`, `data/swings/${file}`];
  const table = fates.files.findIndex((one) => names.includes(one.file));
  const found = fates.files[table];
  const row = found ? rowOfLine(found.table.lines, line) : -1;
  return row === -1 ? null : fates.standing({ table, row });
}

function byLine(file: string, line: number, fates: RowFates): { readonly rows: readonly RowAt[] } | Unnamed {
  const row = rowAtPlace(file, line, fates);
  return row === null ? none : { rows: [row] };
}

const word = (table: SwingTable, field: string, row: number): string | null => table.words.get(field)?.[row] ?? null;

function rowsOfDay(fates: RowFates, athlete: number, day: number, { session, block }: CorrectionWritten): RowAt[] {
  return fates.files.flatMap(({ table, failed }, index) => {
    const rows: RowAt[] = [];
    const cells = new Set(failed.map(({ row }) => row));
    for (let row = 0; row < table.n; row++) {
      if (table.athlete[row] !== athlete || table.day[row] !== day) continue;
      if (table.kept[row] !== 1 && !cells.has(row)) continue;
      if (session !== undefined && word(table, "session", row) !== session) continue;
      if (block !== undefined && word(table, "block", row) !== block) continue;
      rows.push({ table: index, row });
    }
    return rows;
  });
}

function inOrder(rows: readonly RowAt[], fates: RowFates): readonly RowAt[] {
  const timed = rows.map((at) => {
    const table = fates.files[at.table]?.table;
    return { at, time: table ? word(table, "time", at.row) : null };
  });
  if (timed.some(({ time }) => time === null)) return rows;
  return timed
    .sort((one, other) => ((one.time ?? "") < (other.time ?? "") ? -1 : one.time === other.time ? 0 : 1))
    .map(({ at }) => at);
}
