import { type MomentGuess, momentForm } from "./moment-form.ts";

/** What the cells of one column say, whatever order they stand in. */
export interface ColumnValues {
  readonly filled: number;
  /** Distinct filled cells, sorted; at most {@link MOST_DISTINCT}. */
  readonly distinct: readonly string[];
  /** Times each distinct cell stands there. */
  readonly counts: ReadonlyMap<string, number>;
  /** Numbers, sorted; empty when less than four fifths of the filled cells are numbers. */
  readonly numbers: readonly number[];
  readonly whole: boolean;
  readonly moment: MomentGuess | null;
}

const MOST_DISTINCT = 5000;
const ENOUGH = 0.8;

const NUMBERS = { ".": /^[-+]?(?:\d+\.?\d*|\.\d+)$/, ",": /^[-+]?(?:\d+,?\d*|,\d+)$/ } as const;

/** A number as it is written with this decimal mark; null when it is none. */
export function numberIn(text: string, decimal: "." | ","): number | null {
  // Adding nothing turns -0 into 0.
  return NUMBERS[decimal].test(text) ? Number(text.replace(",", ".")) + 0 : null;
}

/** @param cells cells of the column in any order; blank ones are left out */
export function columnValues(cells: readonly string[], decimal: "." | ","): ColumnValues {
  const counts = new Map<string, number>();
  for (const cell of cells) {
    const text = cell.trim();
    if (text !== "") counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  const all = [...counts.keys()].sort();
  const distinct = all.slice(0, MOST_DISTINCT);
  const filled = [...counts.values()].reduce((a, b) => a + b, 0);
  const numbers: number[] = [];
  for (const [text, n] of counts) {
    const value = numberIn(text, decimal);
    if (value !== null) for (let i = 0; i < n; i++) numbers.push(value);
  }
  const numeric = filled > 0 && numbers.length / filled >= ENOUGH;
  return {
    filled,
    distinct,
    counts,
    numbers: numeric ? numbers.sort((a, b) => a - b) : [],
    whole: numeric && numbers.every(Number.isInteger),
    moment: numeric && !looksCompact(distinct) ? null : momentForm(distinct),
  };
}

/** 20251006 is a number, and a day. */
const looksCompact = (distinct: readonly string[]): boolean => distinct.every((text) => /^20\d{6}$/.test(text));

/**
 * Whole numbers that start at 1, leave none out, come back, and the higher the fewer: what is left of rising and restarting
 * counts when their order is not looked at.
 */
export function countsAnew({ numbers, whole }: ColumnValues): boolean {
  if (!whole || numbers[0] !== 1) return false;
  const times = new Map<number, number>();
  for (const value of numbers) times.set(value, (times.get(value) ?? 0) + 1);
  const top = numbers.at(-1) ?? 0;
  if (top < 2 || top > 200 || times.size !== top) return false;
  const first = times.get(1) ?? 0;
  let last = first;
  for (let value = 2; value <= top; value++) {
    const n = times.get(value) ?? 0;
    if (n > last) return false;
    last = n;
  }
  return first > 1;
}
