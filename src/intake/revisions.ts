import { rowKey, swingKey, type Telling, tellings } from "./row-identity.ts";
import type { SwingTable } from "./swing-table.ts";

/** An earlier row of a swing that a later export tells otherwise. */
export interface Revision {
  readonly table: number;
  readonly row: number;
  readonly by: { readonly table: number; readonly row: number };
}

interface Candidate {
  readonly table: number;
  readonly row: number;
  readonly telling: Telling;
}

/**
 * Finds rows that a later export of the same kind replaces.
 *
 * "Later" is the order of the files' names inside one folder; a folder holds the exports of one device. Two rows are the
 * same swing when they have the same time to the second, or the same rep number in the same round or block, for the same
 * athlete and day, share at least one measured value and name no two devices. A rep number alone may count two sessions
 * from 1, so there the later file must also hold every swing that the earlier one numbers on that day, and at least half
 * of them unchanged. A key that stands twice in one file tells no swing, and revises nothing.
 *
 * @param folders  of each table's file; tables in the order of their files' names; rows that are not kept are left alone
 * @param measured fields that are measurements
 */
export function revisions(
  tables: readonly SwingTable[],
  folders: readonly string[],
  measured: ReadonlySet<string>,
): Revision[] {
  const byFolder = new Map<string, number[]>();
  for (const [index, folder] of folders.entries()) byFolder.set(folder, [...(byFolder.get(folder) ?? []), index]);
  return [...byFolder.values()].flatMap((members) => (members.length < 2 ? [] : ofFolder(tables, members, measured)));
}

function ofFolder(
  tables: readonly SwingTable[],
  members: readonly number[],
  measured: ReadonlySet<string>,
): Revision[] {
  const days = daysSeenTwice(tables, members);
  const standing = new Map<string, Candidate>();
  const found: Revision[] = [];
  for (const index of members) {
    const table = tables[index];
    if (table === undefined) continue;
    const own = keyedRows(table, index, days);
    const grown = grownDays(table, own, tables, standing);
    for (const [key, row] of own) {
      const before = standing.get(key);
      standing.set(key, row);
      const earlier = before && tables[before.table];
      if (before === undefined || earlier === undefined) continue;
      if (rowKey(earlier, before.row) === rowKey(table, row.row)) standing.set(key, before);
      else if (row.telling === "number" && !grown.has(dayKey(table, row.row, before.table))) continue;
      else if (sameMaking(earlier, before.row, table, row.row, measured))
        found.push({ table: before.table, row: before.row, by: { table: index, row: row.row } });
    }
  }
  return found;
}

const dayOf = (table: SwingTable, row: number): string => `${table.athlete[row]} ${table.day[row]}`;
const dayKey = (table: SwingTable, row: number, other: number): string => `${dayOf(table, row)} ${other}`;

/** Athletes' days that stand in more than one file: only there can anything be revised. */
function daysSeenTwice(tables: readonly SwingTable[], members: readonly number[]): ReadonlySet<string> {
  const first = new Map<string, number>();
  const twice = new Set<string>();
  for (const index of members) {
    const table = tables[index];
    if (table === undefined) continue;
    let last = "";
    for (let row = 0; row < table.n; row++) {
      if (table.kept[row] !== 1) continue;
      const day = dayOf(table, row);
      if (day === last) continue;
      last = day;
      const other = first.get(day);
      if (other === undefined) first.set(day, index);
      else if (other !== index) twice.add(day);
    }
  }
  return twice;
}

/** Rows that tell their swing, by its key; keys that stand twice with different cells are left out. */
function keyedRows(table: SwingTable, index: number, days: ReadonlySet<string>): Map<string, Candidate> {
  const telling = tellings(table);
  const rows = new Map<string, Candidate>();
  const unclear = new Set<string>();
  for (let row = 0; row < table.n; row++) {
    if (table.kept[row] !== 1 || !days.has(dayOf(table, row))) continue;
    const how = telling(row);
    if (how === null) continue;
    const key = swingKey(table, row, how);
    const other = rows.get(key);
    if (other === undefined) rows.set(key, { table: index, row, telling: how });
    else if (rowKey(table, other.row) !== rowKey(table, row)) unclear.add(key);
  }
  for (const key of unclear) rows.delete(key);
  return rows;
}

/** Athlete's days of an earlier file whose numbered swings all stand here again, at least half of them unchanged. */
function grownDays(
  table: SwingTable,
  own: ReadonlyMap<string, Candidate>,
  tables: readonly SwingTable[],
  standing: ReadonlyMap<string, Candidate>,
): Set<string> {
  const tally = new Map<string, { total: number; here: number; same: number }>();
  for (const [key, before] of standing) {
    const earlier = tables[before.table];
    if (before.telling !== "number" || earlier === undefined) continue;
    const day = dayKey(earlier, before.row, before.table);
    const count = tally.get(day) ?? { total: 0, here: 0, same: 0 };
    tally.set(day, count);
    count.total++;
    const again = own.get(key);
    if (again === undefined) continue;
    count.here++;
    if (rowKey(earlier, before.row) === rowKey(table, again.row)) count.same++;
  }
  const grown = [...tally].filter(([, { total, here, same }]) => here === total && same * 2 >= total);
  return new Set(grown.map(([day]) => day));
}

/** Whether both rows measure something in common, in the same lane and by devices that are not two. */
function sameMaking(
  one: SwingTable,
  oneRow: number,
  other: SwingTable,
  otherRow: number,
  measured: ReadonlySet<string>,
): boolean {
  const apart = ["device_bat", "device_ball", "lane", "site"].some((field) => {
    const left = one.words.get(field)?.[oneRow] ?? null;
    const right = other.words.get(field)?.[otherRow] ?? null;
    return left !== null && right !== null && left !== right;
  });
  const holds = (table: SwingTable, row: number, field: string): boolean =>
    !Number.isNaN(table.numbers.get(field)?.[row] ?? Number.NaN);
  return !apart && [...measured].some((field) => holds(one, oneRow, field) && holds(other, otherRow, field));
}
