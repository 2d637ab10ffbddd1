import { isoDay } from "./calendar-day.ts";
import type { SwingTable } from "./swing-table.ts";

const words32 = new Uint32Array(2);
const float64 = new Float64Array(words32.buffer);

const mixed = (hash: number): number => {
  const once = Math.imul(hash ^ (hash >>> 16), 0x45d9f3b);
  return once ^ (once >>> 15);
};

function textHash(text: string, seed: number): number {
  let hash = seed ^ 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return mixed(hash);
}

function numberHash(value: number, seed: number): number {
  float64[0] = value === 0 ? 0 : value;
  return mixed(Math.imul((words32[0] ?? 0) ^ seed, 0x01000193) ^ (words32[1] ?? 0));
}

/**
 * A number per row that is the same for rows whose recognised cells are the same, whatever order the columns stand in
 * and whichever blank columns stand beside them. Different rows may meet by chance; {@link rowKey} tells for certain.
 */
export function rowHashes(table: SwingTable): Int32Array {
  const hashes = new Int32Array(table.n);
  const add = (row: number, hash: number): void => {
    hashes[row] = ((hashes[row] ?? 0) + hash) | 0;
  };
  for (let row = 0; row < table.n; row++) {
    add(row, numberHash(table.athlete[row] ?? 0, 1));
    add(row, numberHash(table.day[row] ?? 0, 2));
  }
  for (const [field, values] of table.numbers) {
    const seed = textHash(field, 3);
    for (let row = 0; row < table.n; row++) {
      const value = values[row] ?? Number.NaN;
      if (!Number.isNaN(value)) add(row, numberHash(value, seed));
    }
  }
  for (const [field, values] of table.words) {
    const seed = textHash(field, 4);
    for (let row = 0; row < table.n; row++) {
      const value = values[row] ?? null;
      if (value !== null) add(row, textHash(value, seed));
    }
  }
  return hashes;
}

/** Text that two rows share when, and only when, all their recognised cells are the same. */
export function rowKey(table: SwingTable, row: number): string {
  const cells: string[] = [];
  for (const [field, values] of table.numbers) {
    const value = values[row] ?? Number.NaN;
    if (!Number.isNaN(value)) cells.push(JSON.stringify([field, value === 0 ? 0 : value]));
  }
  for (const [field, values] of table.words) {
    const value = values[row] ?? null;
    if (value !== null) cells.push(JSON.stringify([field, value]));
  }
  return `${table.athlete[row]} ${isoDay(table.day[row] ?? 0)} ${cells.sort().join("")}`;
}

/** How a row tells which swing of its athlete and day it is. */
export type Telling = "time" | "number";

/**
 * What each row of a file tells about which swing it is: a time with seconds, or a rep number with its round or block, or
 * nothing (null). Seconds that are zero throughout the file are no seconds.
 */
export function tellings(table: SwingTable): (row: number) => Telling | null {
  const times = table.words.get("time");
  const reps = table.numbers.get("rep");
  const rounds = table.numbers.get("round");
  const blocks = table.words.get("block");
  const timed = times?.some((time) => time !== null && /:\d\d:(?!00(?:\.0+)?$)/.test(time)) ?? false;
  return (row) => {
    if (timed && /:\d\d:\d\d/.test(times?.[row] ?? "")) return "time";
    const numbered = reps !== undefined && !Number.isNaN(reps[row]);
    const inside = (rounds !== undefined && !Number.isNaN(rounds[row])) || (blocks?.[row] ?? null) !== null;
    return numbered && inside ? "number" : null;
  };
}

/** Text that two rows share when they claim to be the same swing: by its time, else by session, block, round and rep. */
export function swingKey(table: SwingTable, row: number, telling: Telling): string {
  const who = `${table.athlete[row]} ${table.day[row]}`;
  if (telling === "time") return `${who} ${table.words.get("time")?.[row]}`;
  const word = (field: string): string | null => table.words.get(field)?.[row] ?? null;
  const number = (field: string): number | undefined => table.numbers.get(field)?.[row];
  return `${who} ${JSON.stringify([word("session"), word("block"), number("round"), number("rep")])}`;
}
