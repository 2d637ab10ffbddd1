import { dirname } from "node:path/posix";
import type { RowAt, RowFates } from "../row-fates.ts";
import type { SwingTable } from "../swing-table.ts";

/** Metrics by what they are read on. */
export interface Sides {
  readonly bat: ReadonlySet<string>;
  readonly ball: ReadonlySet<string>;
}

/** Rows of one day that came from one device: by one athlete, or by nobody that the device knows. In order. */
export interface Stream {
  /** Index; below 0 where the export knows no names. */
  readonly athlete: number;
  readonly day: number;
  readonly measures: { readonly speed: boolean; readonly flight: boolean };
  readonly session: string | null;
  readonly site: string | null;
  readonly lane: string | null;
  readonly rows: readonly RowAt[];
}

const wordOf = (table: SwingTable, field: string, row: number): string | null => table.words.get(field)?.[row] ?? null;

/** Rows that need the log: those with a block's number, those that do not say what was done, and those of nobody. */
function needs(table: SwingTable, row: number): boolean {
  if ((table.athlete[row] ?? -1) < 0 || wordOf(table, "block", row) !== null) return true;
  return wordOf(table, "environment", row) === null && wordOf(table, "drill", row) === null;
}

/**
 * Rows that the log may say something about, day by day and device by device. Exports of one folder that measure the same
 * side are one device's: a swing that two devices saw stands in two streams.
 *
 * @param days days of the log, epoch milliseconds; rows of nobody are there whatever their day
 */
export function streams(fates: RowFates, days: ReadonlySet<number>, sides: Sides): Stream[] {
  const found = new Map<string, Stream & { rows: RowAt[] }>();
  for (const [index, { table, file }] of fates.files.entries()) {
    const has = (side: ReadonlySet<string>): boolean => [...table.fieldNumbers.keys()].some((field) => side.has(field));
    const measures = { speed: has(sides.bat), flight: has(sides.ball) };
    for (let row = 0; row < table.n; row++) {
      if (table.kept[row] !== 1) continue;
      const athlete = table.athlete[row] ?? -1;
      const day = table.day[row] ?? Number.NaN;
      if ((athlete >= 0 && !days.has(day)) || !needs(table, row)) continue;
      const place = {
        session: wordOf(table, "session", row),
        site: wordOf(table, "site", row),
        lane: wordOf(table, "lane", row),
      };
      const key = JSON.stringify([athlete, day, dirname(file), measures, place]);
      const stream = found.get(key) ?? { athlete, day, measures, ...place, rows: [] };
      found.set(key, stream);
      stream.rows.push({ table: index, row });
    }
  }
  return [...found.values()].map((stream) => ({ ...stream, rows: inTime(stream.rows, fates) }));
}

/** By time where every row has one; else as the files have them. */
function inTime(rows: readonly RowAt[], fates: RowFates): readonly RowAt[] {
  const timed = rows.map((at) => {
    const table = fates.files[at.table]?.table;
    return { at, time: table ? wordOf(table, "time", at.row) : null };
  });
  if (timed.some(({ time }) => time === null)) return rows;
  const order = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
  return timed.sort((one, other) => order(one.time ?? "", other.time ?? "")).map(({ at }) => at);
}
