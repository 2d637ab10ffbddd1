import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hodgesLehmann, hodgesLehmannShift } from "../../src/stats/hodges-lehmann.ts";
import { kthPairSum, pairCount } from "../../src/stats/kth-pair-sum.ts";
import { expectNear, numbersIn, reordered, speed, speeds, WRONG_VALUES } from "./samples.ts";

const byNumber = (a: number, b: number) => a - b;
const awkward = fc.oneof(
  speed,
  fc.double({ min: -1e150, max: 1e150, noNaN: true }),
  fc.constantFrom(0, 5e-324, -5e-324, 1e150, -1e150, 0.1, 0.30000000000000004),
);

describe("one of all sums of two values", () => {
  test("is the one that sorting all of them gives", () => {
    fc.assert(
      fc.property(
        fc.array(awkward, { minLength: 1, maxLength: 9 }),
        fc.array(awkward, { minLength: 1, maxLength: 9 }),
        (rows, columns) => {
          rows.sort(byNumber);
          columns.sort(byNumber);
          const all = rows.flatMap((row) => columns.map((column) => row + column)).sort(byNumber);
          const pairs = { rows, columns, once: false };
          expect(pairCount(pairs)).toBe(all.length);
          expect(all.map((_, i) => kthPairSum(pairs, i + 1) + 0)).toEqual(all.map((sum) => sum + 0));
          const halves = rows.flatMap((row, i) => rows.slice(i).map((other) => row + other)).sort(byNumber);
          const once = { rows, columns: rows, once: true };
          expect(pairCount(once)).toBe(halves.length);
          expect(halves.map((_, i) => kthPairSum(once, i + 1) + 0)).toEqual(halves.map((sum) => sum + 0));
        },
      ),
    );
  });

  test("only a rank that is there is answered", () => {
    const pairs = { rows: [1, 2], columns: [10, 20], once: false };
    expect([1, 2, 3, 4].map((k) => kthPairSum(pairs, k))).toEqual([11, 12, 21, 22]);
    for (const k of [0, 5, 1.5, Number.NaN]) expect(() => kthPairSum(pairs, k)).toThrow(RangeError);
    expect(() => kthPairSum({ rows: [1, 2], columns: [1, 2], once: true }, 4)).toThrow(RangeError);
  });
});

describe("the typical swing of one sample", () => {
  test("is the middle of all means of two", () => {
    expect(hodgesLehmann([1, 2, 9])).toEqual({ estimate: 3.5, interval: null });
    expect(hodgesLehmann([2, 1])).toEqual({ estimate: 1.5, interval: null });
    expect(hodgesLehmann([61.3])).toEqual({ estimate: 61.3, interval: null });
    expect(hodgesLehmann([])).toBeNull();
    expect(hodgesLehmann([61.3, 61.3])).toEqual({ estimate: 61.3, interval: null });
  });

  test("six swings have the whole range as their interval, at 95% by default", () => {
    const six = [6, 1, 3, 2, 5, 40];
    const interval = { lowerIndex: 1, upperIndex: 21, lower: 1, upper: 40, coverage: 0.96875 };
    expect(hodgesLehmann(six)).toEqual({ estimate: 4, interval });
    expect(hodgesLehmann(six, 0.95)).toEqual(hodgesLehmann(six));
    expect(hodgesLehmann(six, 0.99)).toEqual({ estimate: 4, interval: null });
    // Each sum from 0 to 3 has ways 1, 1, 1, 2 of 64: 5 reach the tail of 3.2.
    expect(hodgesLehmann(six, 0.9)?.interval).toMatchObject({ lowerIndex: 3, upperIndex: 19, coverage: 1 - 6 / 64 });
  });

  test("ties keep the ranks, and all equal swings give that one", () => {
    expect(hodgesLehmann(new Array(8).fill(61.5))).toEqual({
      estimate: 61.5,
      interval: { lowerIndex: 4, upperIndex: 33, lower: 61.5, upper: 61.5, coverage: 0.9609375 },
    });
    expect(Object.is(hodgesLehmann([-1, 1])?.estimate, 0)).toBe(true);
    expect(Object.is(hodgesLehmann([-0])?.estimate, 0)).toBe(true);
  });

  test("order does not count; adding and scaling carry over", () => {
    fc.assert(
      fc.property(reordered(speeds), speed, ([list, other], shift) => {
        const found = hodgesLehmann(list);
        expect(hodgesLehmann(other)).toEqual(found);
        if (found === null) return;
        const moved = hodgesLehmann(list.map((value) => value * 4 + shift));
        expect(moved?.estimate).toBe(found.estimate * 4 + shift);
        const mirrored = hodgesLehmann(list.map((value) => -value));
        expect(mirrored?.estimate).toBe(-found.estimate + 0);
        if (found.interval === null) return;
        expect(found.interval.lower).toBeLessThanOrEqual(found.estimate);
        expect(found.interval.upper).toBeGreaterThanOrEqual(found.estimate);
        expect(moved?.interval?.lower).toBe(found.interval.lower * 4 + shift);
        expect(moved?.interval?.upper).toBe(found.interval.upper * 4 + shift);
        expect(mirrored?.interval?.lower).toBe(-found.interval.upper + 0);
      }),
    );
  });

  test("more swings than are counted out still have an interval, of unknown coverage, about the same middle", () => {
    const many = Array.from({ length: 1001 }, (_, i) => (i * 389) % 1001);
    expect(hodgesLehmann(many)).toMatchObject({ estimate: 500, interval: { lowerIndex: 232821, coverage: null } });
  });

  test("wrong calls are refused and any other has an answer without NaN", () => {
    for (const wrong of WRONG_VALUES) expect(() => hodgesLehmann([60, wrong])).toThrow(RangeError);
    for (const level of [0, 1, Number.NaN]) expect(() => hodgesLehmann([60], level)).toThrow(RangeError);
    fc.assert(
      fc.property(
        fc.array(awkward, { maxLength: 12 }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        (list, level) => {
          expect(numbersIn(hodgesLehmann(list, level)).every(Number.isFinite)).toBe(true);
        },
      ),
    );
  });
});

describe("how far one sample lies above another", () => {
  test("is the middle of all differences", () => {
    expect(hodgesLehmannShift([5, 9], [1, 2])).toEqual({ estimate: 5.5, interval: null });
    expect(hodgesLehmannShift([5], [2])).toEqual({ estimate: 3, interval: null });
    expect(hodgesLehmannShift([], [1])).toBeNull();
    expect(hodgesLehmannShift([1], [])).toBeNull();
    expect(Object.is(hodgesLehmannShift([1], [1])?.estimate, 0)).toBe(true);
  });

  test("four against four have the whole range as their interval, at 95% by default", () => {
    const interval = { lowerIndex: 1, upperIndex: 16, lower: 6, upper: 12, coverage: 68 / 70 };
    expect(hodgesLehmannShift([13, 11, 10, 12], [1, 2, 4, 3])).toEqual({ estimate: 9, interval });
    expect(hodgesLehmannShift([13, 11, 10, 12], [1, 2, 4, 3], 0.99)?.interval).toBeNull();
  });

  test("order does not count; exchanging the samples turns the sign; adding to one adds", () => {
    fc.assert(
      fc.property(reordered(speeds), speeds, speed, ([x, other], y, shift) => {
        const found = hodgesLehmannShift(x, y);
        expect(hodgesLehmannShift(other, y)).toEqual(found);
        if (found === null) return;
        const back = hodgesLehmannShift(y, x);
        expect(back?.estimate).toBe(-found.estimate + 0);
        const moved = hodgesLehmannShift(
          x.map((value) => value * 2 + shift),
          y.map((value) => value * 2),
        );
        expect(moved?.estimate).toBe(found.estimate * 2 + shift);
        if (found.interval === null) return;
        expect(found.interval.lower).toBeLessThanOrEqual(found.estimate);
        expect(found.interval.upper).toBeGreaterThanOrEqual(found.estimate);
        expect(back?.interval?.upper).toBe(-found.interval.lower + 0);
        expect(moved?.interval?.upper).toBe(found.interval.upper * 2 + shift);
      }),
    );
  });

  test("wrong calls are refused and any other has an answer without NaN", () => {
    for (const wrong of WRONG_VALUES) {
      expect(() => hodgesLehmannShift([60, wrong], [1])).toThrow(RangeError);
      expect(() => hodgesLehmannShift([60], [wrong])).toThrow(RangeError);
    }
    for (const level of [0, 1, Number.NaN]) expect(() => hodgesLehmannShift([60], [60], level)).toThrow(RangeError);
    fc.assert(
      fc.property(fc.array(awkward, { maxLength: 8 }), fc.array(awkward, { maxLength: 8 }), (x, y) => {
        expect(numbersIn(hodgesLehmannShift(x, y, 0.8)).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  test("201 against 201 come from the normal approximation and agree with what was put in", () => {
    const list = Array.from({ length: 201 }, (_, i) => (i * 100) % 201);
    const found = hodgesLehmannShift(
      list.map((value) => value + 7),
      list,
    );
    expect(found).toMatchObject({ estimate: 7, interval: { lowerIndex: 17918, upperIndex: 22484, coverage: null } });
    expectNear(found!.interval!.lower + found!.interval!.upper, 14);
  });
});
