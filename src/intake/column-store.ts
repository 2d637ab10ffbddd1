import type { SwingTable } from "./swing-table.ts";

type Filled = Pick<SwingTable, "n" | "lines" | "athlete" | "day" | "numbers" | "words">;

/** Columns of equal length that grow batch by batch. */
export interface ColumnStore {
  readonly athlete: Int32Array;
  readonly day: Float64Array;
  /** The column of a field, made where it is not there yet: blank as far as nothing was written. */
  numbers(field: string): Float64Array;
  words(field: string): (string | null)[];
  /**
   * Makes room for rows. Columns asked for before must be asked for again: they may have moved.
   *
   * @param lines on which the new rows start
   * @returns number of the first new row
   */
  open(lines: readonly number[]): number;
  /** The columns, cut to their length. */
  close(): Filled;
}

const FIRST = 4096;

/** An empty store. */
export function columnStore(): ColumnStore {
  let n = 0;
  let room = 0;
  let lines = new Int32Array(0);
  let athlete = new Int32Array(0);
  let day = new Float64Array(0);
  const numbers = new Map<string, Float64Array>();
  const words = new Map<string, (string | null)[]>();
  const grow = (needed: number): void => {
    room = Math.max(needed, FIRST, Math.ceil(room * 1.5));
    lines = moved(new Int32Array(room), lines);
    athlete = moved(new Int32Array(room), athlete);
    day = moved(new Float64Array(room), day);
    for (const [field, values] of numbers) numbers.set(field, moved(new Float64Array(room).fill(Number.NaN), values));
  };
  return {
    get athlete() {
      return athlete;
    },
    get day() {
      return day;
    },
    numbers(field) {
      const values = numbers.get(field) ?? new Float64Array(room).fill(Number.NaN);
      numbers.set(field, values);
      return values;
    },
    words(field) {
      const values = words.get(field) ?? [];
      while (values.length < n) values.push(null);
      words.set(field, values);
      return values;
    },
    open(added) {
      const base = n;
      n += added.length;
      if (n > room) grow(n);
      lines.set(added, base);
      return base;
    },
    close() {
      for (const values of words.values()) while (values.length < n) values.push(null);
      const cut = new Map([...numbers].map(([field, values]) => [field, values.subarray(0, n)]));
      return {
        n,
        lines: lines.subarray(0, n),
        athlete: athlete.subarray(0, n),
        day: day.subarray(0, n),
        numbers: cut,
        words,
      };
    },
  };
}

function moved<A extends Int32Array | Float64Array>(room: A, values: A): A {
  room.set(values);
  return room;
}
