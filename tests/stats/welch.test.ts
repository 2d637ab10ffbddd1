import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { welch } from "../../src/stats/welch.ts";
import { expectNear, numbersIn, reordered, speed, speeds, WRONG_VALUES } from "./samples.ts";

describe("known answers", () => {
  // Hours of extra sleep under two drugs: Student (1908), Biometrika 6:1-25, in the order of R's data set `sleep`.
  const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
  const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

  test("Student's sleep data agree with SciPy 1.17.1, ttest_ind(second, first, equal_var=False)", () => {
    const result = welch(first, second)!;
    expect(result.difference).toBeCloseTo(1.58, 14);
    expect(result.t).toBeCloseTo(1.8608134674868526, 12);
    expect(result.df).toBeCloseTo(17.776473516178488, 11);
    expect(result.p).toBeCloseTo(0.0793941401873583, 12);
    expect(result.interval![0]).toBeCloseTo(-0.20548323071171137, 11);
    expect(result.interval![1]).toBeCloseTo(3.3654832307117104, 11);
    const narrower = welch(first, second, 0.9)!.interval!;
    expect(narrower[0]).toBeCloseTo(0.10661850266839235, 11);
    expect(narrower[1]).toBeCloseTo(3.053381497331606, 11);
  });

  test("and with the digits R prints in its own example (from memory): t 1.8608, df 17.776, p 0.07939", () => {
    const result = welch(first, second)!;
    expect(result.t).toBeCloseTo(1.8608, 4);
    expect(result.df).toBeCloseTo(17.776, 3);
    expect(result.p).toBeCloseTo(0.07939, 5);
  });

  test("worked by hand: 1, 3 against 4, 6, 8 has variances 2 and 4, so 1 + 4/3 under the root", () => {
    const result = welch([1, 3], [4, 6, 8])!;
    expect(result.difference).toBe(4);
    expect(result.se).toBeCloseTo(Math.sqrt(7 / 3), 14);
    expect(result.df).toBeCloseTo((7 / 3) ** 2 / (1 + (4 / 3) ** 2 / 2), 12);
  });
});

describe("too few sessions", () => {
  test("an empty side has no difference", () => {
    expect(welch([], [60, 61])).toBeNull();
    expect(welch([60, 61], [])).toBeNull();
  });

  test("one session on a side has a difference and no interval", () => {
    const result = welch([60], [62, 63]);
    expect(result).toMatchObject({ difference: 2.5, se: null, df: null, t: null, p: null, interval: null });
  });

  test("two sides without any spread have a difference, an error of 0 and no interval", () => {
    const result = welch([60, 60], [62, 62, 62]);
    expect(result).toMatchObject({ difference: 2, se: 0, df: null, t: null, p: null, interval: null });
  });
});

describe("wrong calls", () => {
  test.each(WRONG_VALUES)("a speed of %s is refused on either side", (wrong) => {
    expect(() => welch([60, wrong], [61, 62])).toThrow(RangeError);
    expect(() => welch([60, 61], [61, wrong])).toThrow(RangeError);
  });

  test("a level of 1 is refused", () => {
    expect(() => welch([60, 61], [61, 62], 1)).toThrow(RangeError);
  });
});

describe("laws", () => {
  const side = fc.array(speed, { minLength: 2, maxLength: 20 });

  test("no result is ever NaN or infinite", () => {
    fc.assert(
      fc.property(speeds, speeds, (a, b) => {
        expect(numbersIn(welch(a, b)).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  test("the order within a side moves nothing, and swapping the sides turns the sign", () => {
    fc.assert(
      fc.property(reordered(side), side, ([a, other], b) => {
        const result = welch(a, b)!;
        expectNear(welch(other, b)!.interval?.[0] ?? null, result.interval?.[0] ?? null);
        expectNear(welch(b, a)!.difference, -result.difference);
        expectNear(welch(b, a)!.interval?.[1] ?? null, result.interval === null ? null : -result.interval[0]);
      }),
    );
  });

  test("a fixed speed added to both sides moves nothing; another unit scales difference and limits", () => {
    fc.assert(
      fc.property(side, side, speed, (a, b, faster) => {
        const result = welch(a, b)!;
        const add = (value: number) => value + faster;
        const scale = (value: number) => value * 4;
        expectNear(welch(a.map(add), b.map(add))!.interval?.[0] ?? null, result.interval?.[0] ?? null);
        const scaled = welch(a.map(scale), b.map(scale))!;
        expectNear(scaled.difference, result.difference * 4);
        expectNear(scaled.df, result.df);
        expectNear(scaled.interval?.[0] ?? null, result.interval === null ? null : result.interval[0] * 4);
      }),
    );
  });

  test("the interval holds the difference; the degrees of freedom lie between the smaller side's and both sides'", () => {
    fc.assert(
      fc.property(side, side, (a, b) => {
        const { interval, difference, df } = welch(a, b)!;
        if (interval === null || df === null) return;
        expect(interval[0]).toBeLessThanOrEqual(difference);
        expect(interval[1]).toBeGreaterThanOrEqual(difference);
        expect(df).toBeGreaterThanOrEqual(Math.min(a.length, b.length) - 1 - 1e-9);
        expect(df).toBeLessThanOrEqual(a.length + b.length - 2 + 1e-9);
      }),
    );
  });
});
