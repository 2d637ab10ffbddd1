import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { groupMeans } from "../../src/stats/group-means.ts";
import { expectNear, numbersIn, reordered, speed, WRONG_VALUES } from "./samples.ts";

const row = fc.record({ x: fc.integer({ min: 0, max: 9 }), y: speed, name: fc.constantFrom("a", "b", "c", "d") });
type Row = { x: number; y: number; name: string };
const rows = fc.array(row, { maxLength: 25 });
const of = (list: readonly Row[]) =>
  groupMeans(
    list.map(({ x }) => x),
    list.map(({ y }) => y),
    list.map(({ name }) => name),
  );

describe("known answers", () => {
  test("three days in any order: mean, median, place and count of each, and the SD within them", () => {
    const found = groupMeans([7, 0, 7, 0, 7, 14], [63, 60, 61, 62, 68, 70], ["b", "a", "b", "a", "b", "c"]);
    expect(found.groups).toEqual([
      { name: "a", x: 0, n: 2, mean: 61, median: 61 },
      { name: "b", x: 7, n: 3, mean: 64, median: 63 },
      { name: "c", x: 14, n: 1, mean: 70, median: 70 },
    ]);
    // Squares 1 + 1 and 1 + 9 + 16, over six rows less three days.
    expectNear(found.withinSd, Math.sqrt(28 / 3), 1e-12);
  });

  test("rows of a day at several times stand at their mean time", () => {
    expect(groupMeans([1, 3], [60, 60], ["a", "a"]).groups[0]?.x).toBe(2);
  });

  test("days at one place keep the order in which they came", () => {
    expect(groupMeans([5, 5, 5], [1, 2, 3], ["z", "m", "a"]).groups.map(({ name }) => name)).toEqual(["z", "m", "a"]);
  });
});

describe("too little", () => {
  test("nothing, one row, and a row a day have no spread within", () => {
    expect(groupMeans([], [], [])).toEqual({ groups: [], withinSd: null });
    expect(groupMeans([1], [60], ["a"]).withinSd).toBeNull();
    expect(groupMeans([1, 2], [60, 70], ["a", "b"]).withinSd).toBeNull();
    expect(groupMeans([1, 1], [60, 60], ["a", "a"]).withinSd).toBe(0);
  });
});

describe("laws", () => {
  test("the order of the rows changes nothing but the order of days at one place", () => {
    fc.assert(
      fc.property(reordered(rows), ([list, other]) => {
        const byName = (all: readonly Row[]) => Object.fromEntries(of(all).groups.map((group) => [group.name, group]));
        const [one, two] = [byName(list), byName(other)];
        expect(Object.keys(two).sort()).toEqual(Object.keys(one).sort());
        for (const name of Object.keys(one)) {
          expect(two[name]?.n).toBe(one[name]?.n);
          expect(two[name]?.median).toBe(one[name]?.median);
          expectNear(two[name]!.mean, one[name]!.mean);
        }
        expectNear(of(other).withinSd, of(list).withinSd);
      }),
    );
  });

  test("every row is in one group, groups are in order of place, and a day's mean lies among its values", () => {
    fc.assert(
      fc.property(rows, (list) => {
        const { groups } = of(list);
        expect(groups.reduce((sum, { n }) => sum + n, 0)).toBe(list.length);
        groups.forEach((group, i) => {
          if (i > 0) expect(group.x).toBeGreaterThanOrEqual(groups[i - 1]!.x);
          const values = list.filter(({ name }) => name === group.name).map(({ y }) => y);
          expect(group.mean).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
          expect(group.mean).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        });
        expect(numbersIn(of(list)).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  test("a shift of one day moves its mean and nothing within; twice the unit doubles the spread", () => {
    fc.assert(
      fc.property(rows, speed, (list, shift) => {
        const moved = list.map((one) => (one.name === "a" ? { ...one, y: one.y + shift } : one));
        expectNear(of(moved).withinSd, of(list).withinSd);
        const doubled = of(list.map((one) => ({ ...one, y: 2 * one.y }))).withinSd;
        const single = of(list).withinSd;
        expectNear(doubled, single === null ? null : 2 * single);
      }),
    );
  });
});

describe("wrong calls", () => {
  test("lists of unequal length are refused", () => {
    expect(() => groupMeans([1], [1, 2], ["a", "a"])).toThrow(/need pairs/);
    expect(() => groupMeans([1, 2], [1, 2], ["a"])).toThrow(/y has 2 values and group has 1: need pairs/);
  });

  test.each(WRONG_VALUES)("a value of %s is refused", (wrong) => {
    expect(() => groupMeans([1], [wrong], ["a"])).toThrow(RangeError);
    expect(() => groupMeans([wrong], [1], ["a"])).toThrow(RangeError);
  });
});
