import { MS_PER_DAY } from "./calendar-day.ts";
import { rowHashes, rowKey, tellings } from "./row-identity.ts";
import type { SwingTable } from "./swing-table.ts";

/** A row that says nothing new, and the row that said it first. */
export interface Repeat {
  readonly table: number;
  readonly row: number;
  readonly of: { readonly table: number; readonly row: number };
}

/** Rows of one athlete and day in one file that might be repeats; `total` counts all of them, the plain ones too. */
interface DayGroup {
  readonly table: number;
  total: number;
  readonly rows: Map<string, { readonly row: number; readonly tells: boolean }[]>;
}

/**
 * Finds reps that stand in the files more than once.
 *
 * Equal cells alone prove nothing: two swings may measure the same. So
 * - inside a file, a row repeats an equal one before it only when it tells which swing it is (see {@link tellers});
 * - across files, the k-th such row of a file repeats the k-th of an earlier file when it tells which swing it is by more than a
 *   lone rep number, or when the later file holds all rows of the earlier one for that athlete and day (an export that grows).
 *
 * @param tables in the order of their files' names; rows that are not kept are left alone
 */
export function repeats(tables: readonly SwingTable[]): Repeat[] {
  const hashes = tables.map(rowHashes);
  const often = hashesSeenTwice(tables, hashes);
  const earlier = new Map<number, DayGroup[]>();
  return tables.flatMap((table, index) => {
    const found: Repeat[] = [];
    const groups = dayGroups(table, index, hashes[index] ?? new Int32Array(0), often, found);
    for (const [day, group] of groups) {
      const before = earlier.get(day) ?? [];
      found.push(...acrossFiles(group, before));
      earlier.set(day, [...before, group]);
    }
    return found;
  });
}

function hashesSeenTwice(tables: readonly SwingTable[], hashes: readonly Int32Array[]): ReadonlySet<number> {
  const once = new Set<number>();
  const twice = new Set<number>();
  for (const [index, table] of tables.entries()) {
    for (let row = 0; row < table.n; row++) {
      if (table.kept[row] !== 1) continue;
      const hash = hashes[index]?.[row] ?? 0;
      if (once.has(hash)) twice.add(hash);
      else once.add(hash);
    }
  }
  return twice;
}

/** More days than four-digit years have, so that no athlete's days reach into another's. */
const DAYS = 10_000_000;

/** One number per athlete and day. */
const dayOf = (table: SwingTable, row: number): number =>
  ((table.athlete[row] ?? 0) + 0.5) * DAYS + (table.day[row] ?? 0) / MS_PER_DAY;

/** Groups a file's rows by athlete and day; repeats inside the file go to `found` and count no further. */
function dayGroups(
  table: SwingTable,
  index: number,
  hashes: Int32Array,
  often: ReadonlySet<number>,
  found: Repeat[],
): Map<number, DayGroup> {
  const tells = tellers(table, hashes);
  const groups = new Map<number, DayGroup>();
  for (let row = 0; row < table.n; row++) {
    if (table.kept[row] !== 1) continue;
    const day = dayOf(table, row);
    let group = groups.get(day);
    if (group === undefined) {
      group = { table: index, total: 0, rows: new Map() };
      groups.set(day, group);
    }
    const seen = often.has(hashes[row] ?? 0) ? sameRows(group, rowKey(table, row)) : null;
    const [first] = seen ?? [];
    if (first !== undefined && tells.inFile(row)) {
      found.push({ table: index, row, of: { table: index, row: first.row } });
      continue;
    }
    group.total++;
    seen?.push({ row, tells: tells.anywhere(row) });
  }
  return groups;
}

function sameRows(group: DayGroup, key: string): { row: number; tells: boolean }[] {
  const rows = group.rows.get(key) ?? [];
  group.rows.set(key, rows);
  return rows;
}

/**
 * Whether a row tells which swing of its athlete and day it is: by a time with seconds, by a rep number with round or
 * block, and inside its own file by a rep number alone, as long as no other swing of the day there has the same one.
 */
function tellers(
  table: SwingTable,
  hashes: Int32Array,
): { inFile(row: number): boolean; anywhere(row: number): boolean } {
  const reps = table.numbers.get("rep");
  const shared = reps === undefined ? new Set<number>() : sharedReps(table, reps, hashes);
  const hasRep = (row: number): boolean => reps !== undefined && !Number.isNaN(reps[row]);
  const telling = tellings(table);
  const anywhere = (row: number): boolean => telling(row) !== null;
  return { anywhere, inFile: (row) => anywhere(row) || (hasRep(row) && !shared.has(dayOf(table, row))) };
}

/** Athlete's days on which two different rows of the file have the same rep number. */
function sharedReps(table: SwingTable, reps: Float64Array, hashes: Int32Array): Set<number> {
  const first = new Map<number, Map<number, number>>();
  const shared = new Set<number>();
  for (let row = 0; row < table.n; row++) {
    if (table.kept[row] !== 1 || Number.isNaN(reps[row])) continue;
    const day = dayOf(table, row);
    const hash = hashes[row] ?? 0;
    const rep = reps[row] ?? Number.NaN;
    const ofDay = first.get(day) ?? new Map<number, number>();
    const other = ofDay.get(rep);
    if (other === undefined) first.set(day, ofDay.set(rep, hash));
    else if (other !== hash) shared.add(day);
  }
  return shared;
}

function acrossFiles(group: DayGroup, before: readonly DayGroup[]): Repeat[] {
  if (before.length === 0 || group.rows.size === 0) return [];
  const grownFrom = before.filter((other) => holdsAll(group, other));
  const found: Repeat[] = [];
  for (const [key, rows] of group.rows) {
    for (const [k, { row, tells }] of rows.entries()) {
      const source = (tells ? before : grownFrom).find((other) => other.rows.get(key)?.[k] !== undefined);
      const of = source?.rows.get(key)?.[k];
      if (source !== undefined && of !== undefined)
        found.push({ table: group.table, row, of: { table: source.table, row: of.row } });
    }
  }
  return found;
}

/** Whether every row of `part`, as often as it stands there, stands in `whole` too. */
function holdsAll(whole: DayGroup, part: DayGroup): boolean {
  let held = 0;
  for (const [key, rows] of part.rows) {
    if ((whole.rows.get(key)?.length ?? 0) < rows.length) return false;
    held += rows.length;
  }
  return held === part.total;
}
