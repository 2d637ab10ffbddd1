import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lag1 } from "../../src/stats/lag1.ts";
import { mean } from "../../src/stats/mean.ts";
import { median } from "../../src/stats/median.ts";
import { type QuantileType, quantile } from "../../src/stats/quantile.ts";
import { sd } from "../../src/stats/sd.ts";
import { sumOf } from "../../src/stats/sum.ts";
import { expectNear, reordered, speed, speeds, WRONG_VALUES } from "./samples.ts";

const TYPES: QuantileType[] = [6, 7, 8];
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe("worked by hand", () => {
  test("four bat speeds have this mean, middle and spread", () => {
    expect(mean([60, 62, 64, 70])).toBe(64);
    expect(median([70, 60, 64, 62])).toBe(63);
    // Deviations -4, -2, 0, 6: squares sum to 56, divided by 3.
    expect(sd([60, 62, 64, 70])).toBeCloseTo(Math.sqrt(56 / 3), 14);
  });

  test("the first quarter of four speeds lies at rank 1.25, 1.75 or 1.4167 by type 6, 7 or 8", () => {
    expect(quantile([70, 62, 60, 64], 0.25, 6)).toBeCloseTo(60.5, 13);
    expect(quantile([70, 62, 60, 64], 0.25, 7)).toBeCloseTo(61.5, 13);
    expect(quantile([70, 62, 60, 64], 0.25, 8)).toBeCloseTo(60 + 2 * (5 / 12), 13);
    expect(quantile([70, 62, 60, 64], 0.25)).toBe(quantile([70, 62, 60, 64], 0.25, 8));
  });

  test("neighbours of 1, 3, 2 are unlike: deviations -1, 1, 0 give -1 over 2", () => {
    expect(lag1([1, 3, 2])).toBe(-0.5);
    // Two values lie alike on either side of their mean: -d^2 / 2 d^2.
    expect(lag1([61, 65])).toBe(-0.5);
  });

  test("a sum keeps the one that plain addition loses beside a huge value", () => {
    const terms = [1, 1e100, 1, -1e100];
    expect(sumOf(4, (i) => terms[i]!)).toBe(2);
  });
});

describe("too few swings", () => {
  test("no swings have no mean, middle, quantile, spread or likeness", () => {
    expect([mean([]), median([]), quantile([], 0.5), sd([]), lag1([])]).toEqual([null, null, null, null, null]);
  });

  test("one swing has a mean, middle and quantiles, but no spread", () => {
    expect([mean([61]), median([61]), quantile([61], 0.9)]).toEqual([61, 61, 61]);
    expect([sd([61]), lag1([61])]).toEqual([null, null]);
  });

  test("equal swings have exactly their own value as mean and a spread of exactly 0", () => {
    fc.assert(
      fc.property(fc.double({ min: -200, max: 200, noNaN: true }), fc.integer({ min: 2, max: 40 }), (value, n) => {
        const equal = new Array<number>(n).fill(value);
        expect(mean(equal)! - value).toBe(0);
        expect(sd(equal)).toBe(0);
        expect(lag1(equal)).toBeNull();
        for (const type of TYPES) expect(quantile(equal, 0.3, type)).toBe(value);
      }),
    );
  });
});

describe("wrong calls", () => {
  test.each(WRONG_VALUES)("a speed of %s is refused by every function", (wrong) => {
    for (const statistic of [mean, median, sd, lag1, (values: number[]) => quantile(values, 0.5)]) {
      expect(() => statistic([60, wrong])).toThrow(RangeError);
    }
  });

  test("a share outside 0 to 1 and an unknown type are refused, even without swings", () => {
    expect(() => quantile([60], 1.01)).toThrow(RangeError);
    expect(() => quantile([], Number.NaN)).toThrow(RangeError);
    expect(() => quantile([60], 0.5, 5 as QuantileType)).toThrow(RangeError);
  });
});

describe("laws", () => {
  test("the order of the swings moves no mean, middle, quantile or spread", () => {
    fc.assert(
      fc.property(reordered(speeds), share, ([list, other], p) => {
        expectNear(mean(other), mean(list));
        expectNear(sd(other), sd(list));
        expect(median(other)).toBe(median(list));
        for (const type of TYPES) expect(quantile(other, p, type)).toBe(quantile(list, p, type));
      }),
    );
  });

  test("adding a fixed speed to every swing moves the middle by it and leaves spread and likeness alone", () => {
    fc.assert(
      fc.property(fc.array(speed, { minLength: 2, maxLength: 30 }), speed, share, (list, shift, p) => {
        const moved = list.map((value) => value + shift);
        expectNear(mean(moved), mean(list)! + shift);
        expectNear(median(moved), median(list)! + shift);
        expectNear(sd(moved), sd(list));
        expectNear(lag1(moved), lag1(list));
        for (const type of TYPES) expectNear(quantile(moved, p, type), quantile(list, p, type)! + shift);
      }),
    );
  });

  test("another unit scales them all; likeness has no unit", () => {
    fc.assert(
      fc.property(fc.array(speed, { minLength: 2, maxLength: 30 }), share, (list, p) => {
        const scaled = list.map((value) => value * -4);
        expectNear(mean(scaled), mean(list)! * -4);
        expectNear(median(scaled), median(list)! * -4);
        expectNear(sd(scaled), sd(list)! * 4);
        expectNear(lag1(scaled), lag1(list));
        // Turned round, the upper share becomes the lower one.
        for (const type of TYPES) expectNear(quantile(scaled, 1 - p, type), quantile(list, p, type)! * -4, 1e-6);
      }),
    );
  });

  test("a quantile rises with its share and stays between the slowest and the fastest swing", () => {
    fc.assert(
      fc.property(fc.array(speed, { minLength: 1, maxLength: 30 }), share, share, (list, a, b) => {
        for (const type of TYPES) {
          const low = quantile(list, Math.min(a, b), type)!;
          const high = quantile(list, Math.max(a, b), type)!;
          // Shares that differ in the last bit alone may be turned round by the last bit of the answer.
          expect(low).toBeLessThanOrEqual(high + 1e-12 * Math.max(...list.map(Math.abs)));
          expect(low).toBeGreaterThanOrEqual(Math.min(...list));
          expect(high).toBeLessThanOrEqual(Math.max(...list));
        }
        expectNear(quantile(list, 0.5), median(list));
      }),
    );
  });

  test("a mean lies between the slowest and the fastest swing, and likeness between -1 and 1", () => {
    const any = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(any, (list) => {
        expect(mean(list)).toBeGreaterThanOrEqual(Math.min(...list));
        expect(mean(list)).toBeLessThanOrEqual(Math.max(...list));
        expect(Math.abs(lag1(list) ?? 0)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test("likeness of differences so small that their squares vanish is that of larger ones", () => {
    expect(lag1([0, 3.3e-162, 0])).toBeCloseTo(lag1([0, 3.3, 0])!, 12);
    expect(lag1([0, 5e-324, 0])).not.toBeNaN();
    expect(lag1([7, 7, 7])).toBeNull();
    expect(lag1([7])).toBeNull();
  });

  test("typed arrays give the same as lists, and the swings are left as they were", () => {
    const list = [64, 60, 70, 62];
    expect(median(Float64Array.from(list))).toBe(median(list));
    expect(quantile(Float64Array.from(list), 0.9)).toBe(quantile(list, 0.9));
    expect(list).toEqual([64, 60, 70, 62]);
  });
});
