import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { balance, Unbalanced } from "../../src/publish/balance.ts";
import { NOT_COUNTED_REASONS, SET_ASIDE_REASONS, type SetAsideReason } from "../../src/schema/reasons.ts";
import type { LedgerRow } from "../../src/schema/season.ts";

const aside = (file: string, line: number, reason: SetAsideReason, athlete: string | null): LedgerRow => ({
  file,
  line,
  column: null,
  field: null,
  value: null,
  reason,
  athlete,
});
const FILES = [
  { file: "a.csv", rows: 4 },
  { file: "b.csv", rows: 2 },
];
const ASIDE = [aside("a.csv", 5, "out-of-range", "ada"), aside("b.csv", 3, "unknown-athlete", null)];
const JUDGED = [
  { athlete: "ada", reps: { file: [0, 0], partner: [null, null] }, judged: [null, "take"] as const },
  { athlete: "ben", reps: { file: [0, 1], partner: [null, null] }, judged: [null, null] as const },
];

describe("the ledger", () => {
  test("accounts for every row in each file, for each athlete and in total", () => {
    // Counted by hand: four rows of a.csv and two of b.csv.
    expect(balance(FILES, ASIDE, JUDGED)).toEqual({
      total: { read: 6, counted: 3, notCounted: { take: 1 }, setAside: { "out-of-range": 1, "unknown-athlete": 1 } },
      files: [
        { file: "a.csv", read: 4, counted: 2, notCounted: { take: 1 }, setAside: { "out-of-range": 1 } },
        { file: "b.csv", read: 2, counted: 1, notCounted: {}, setAside: { "unknown-athlete": 1 } },
      ],
      athletes: [
        { id: "ada", read: 3, counted: 1, notCounted: { take: 1 }, setAside: { "out-of-range": 1 } },
        { id: "ben", read: 2, counted: 2, notCounted: {}, setAside: {} },
      ],
      unassigned: { read: 1, counted: 0, notCounted: {}, setAside: { "unknown-athlete": 1 } },
    });
  });

  test.each([
    ["a row got lost", () => balance([{ file: "a.csv", rows: 5 }, FILES[1]!], ASIDE, JUDGED)],
    ["a row came from nowhere", () => balance([{ file: "a.csv", rows: 3 }, FILES[1]!], ASIDE, JUDGED)],
    [
      "one file's loss is another's gain",
      () =>
        balance(
          [
            { file: "a.csv", rows: 3 },
            { file: "b.csv", rows: 3 },
          ],
          ASIDE,
          JUDGED,
        ),
    ],
    ["a row is set aside twice", () => balance(FILES, [...ASIDE, ASIDE[0]!], JUDGED)],
    ["a row of a file that nobody read", () => balance(FILES, [...ASIDE, aside("c.csv", 2, "void", null)], JUDGED)],
    ["a rep without a judgement", () => balance(FILES, ASIDE, [{ ...JUDGED[0]!, judged: [null] }, JUDGED[1]!])],
    ["a reason off the list", () => balance(FILES, [ASIDE[0]!, { ...ASIDE[1]!, reason: "take" }], JUDGED)],
  ])("stops the build when %s", (_, work) => {
    expect(work).toThrow(Unbalanced);
  });

  test("a season without rows balances", () => {
    const none = { read: 0, counted: 0, notCounted: {}, setAside: {} };
    expect(balance([], [], [])).toEqual({ total: none, files: [], athletes: [], unassigned: none });
  });

  test("athletes and rows of nobody always add up to the total", () => {
    const row = fc.record({
      file: fc.nat(3),
      athlete: fc.constantFrom("ada", "ben", "cleo", null),
      set: fc.option(fc.constantFrom(...SET_ASIDE_REASONS)),
      not: fc.option(fc.constantFrom(...NOT_COUNTED_REASONS)),
    });
    fc.assert(
      fc.property(fc.array(row), (rows) => {
        const files = [0, 1, 2, 3].map((i) => ({
          file: `${i}.csv`,
          rows: rows.filter(({ file }) => file === i).length,
        }));
        const put = rows.flatMap(({ file, athlete, set }, line) =>
          set !== null || athlete === null ? [aside(`${file}.csv`, line, set ?? "unknown-athlete", athlete)] : [],
        );
        const judged = ["ada", "ben", "cleo"].map((athlete) => {
          const own = rows.filter((one) => one.athlete === athlete && one.set === null);
          const reps = { file: own.map(({ file }) => file), partner: own.map(() => null) };
          return { athlete, reps, judged: own.map(({ not }) => not) };
        });
        const { total, athletes, unassigned } = balance(files, put, judged);
        expect(total.read).toBe(rows.length);
        expect(athletes.reduce((sum, { read }) => sum + read, unassigned.read)).toBe(total.read);
        expect(athletes.reduce((sum, { counted }) => sum + counted, 0)).toBe(total.counted);
      }),
    );
  });
});
