import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantile } from "../../src/stats/quantile.ts";
import { quantileInterval } from "../../src/stats/quantile-ci.ts";
import { expectNear, numbersIn, reordered, speed, speeds, WRONG_VALUES } from "./samples.ts";

const share = fc.constantFrom(0, 0.1, 0.25, 1 / 3, 0.5, 0.75, 0.9, 1);
const level = fc.constantFrom(0.5, 0.8, 0.9, 0.95, 0.99);
/** No limit on either side. */
const open = { lowerIndex: null, upperIndex: null, lower: null, upper: null, coverage: 1 };

describe("the interval of a quantile of swings", () => {
  test("six swings have limits for their median, five have none", () => {
    expect(quantileInterval([3, 1, 2, 6, 5, 4], 0.5)).toEqual({
      lowerIndex: 1,
      upperIndex: 6,
      lower: 1,
      upper: 6,
      coverage: 62 / 64,
    });
    expect(quantileInterval([3, 1, 2, 5, 4], 0.5)).toEqual(open);
    expect(quantileInterval([3, 1, 2, 5, 4], 0.5, 0.9)).toMatchObject({ lowerIndex: 1, upperIndex: 5 });
  });

  test("none and one have none; two and equal ones are no exception", () => {
    expect(quantileInterval([], 0.5)).toEqual(open);
    expect(quantileInterval([61], 0.5)).toEqual(open);
    expect(quantileInterval([61, 62], 0.5)).toEqual(open);
    expect(quantileInterval([61, 62], 0.5, 0.4)).toMatchObject({ lower: 61, upper: 62, coverage: 0.5 });
    // A quarter lies at 0 of 2: that reaches the tail, so the lower side has no limit.
    expect(quantileInterval([61, 62], 0.5, 0.5)).toMatchObject({ lower: null, upper: 62, coverage: 0.75 });
    expect(quantileInterval(new Array(9).fill(61), 0.5)).toMatchObject({
      lowerIndex: 2,
      upperIndex: 8,
      lower: 61,
      upper: 61,
    });
  });

  test("a share that equals the tail is reached", () => {
    // 1 of 64 at or below 0, and 1 - 31/32 leaves 1/64 on a side: rank 0 below, and 63/64 are reached at 5 above.
    expect(quantileInterval([1, 2, 3, 4, 5, 6], 0.5, 31 / 32)).toMatchObject({
      lowerIndex: null,
      upperIndex: 6,
      coverage: 63 / 64,
    });
    expect(quantileInterval([1, 2], 0.1, 1 - 2 * 0.19)).toMatchObject({ lowerIndex: null, upperIndex: 1 });
  });

  test("the 90th of many agrees with R", () => {
    // R 4.2.2: qbinom(0.025, n, 0.9), qbinom(0.975, n, 0.9) + 1 and the pbinom between them.
    for (const [n, lower, upper, coverage] of [
      [10, 7, null, 0.9872048016],
      [1000, 881, 919, 0.9549071811148259],
      [100_000, 89_814, 90_187, 0.9506904155331437],
    ] as const) {
      const found = quantileInterval(
        Array.from({ length: n }, (_, i) => i + 1),
        0.9,
      );
      expect(found).toMatchObject({ lowerIndex: lower, upperIndex: upper, lower, upper });
      expectNear(found.coverage, coverage, 1e-11);
    }
  });

  test("the ends of the distribution are bounded on one side alone", () => {
    expect(quantileInterval([2, 1, 3], 0)).toEqual({
      lowerIndex: null,
      upperIndex: 1,
      lower: null,
      upper: 1,
      coverage: 1,
    });
    expect(quantileInterval([2, 1, 3], 1)).toEqual({
      lowerIndex: 3,
      upperIndex: null,
      lower: 3,
      upper: null,
      coverage: 1,
    });
  });

  test("order does not count, another unit carries over, and coverage keeps the level", () => {
    fc.assert(
      fc.property(reordered(speeds), speed, share, level, ([list, other], shift, p, wanted) => {
        const found = quantileInterval(list, p, wanted);
        expect(quantileInterval(other, p, wanted)).toEqual(found);
        const moved = quantileInterval(
          list.map((value) => value * 2 + shift),
          p,
          wanted,
        );
        expect(moved).toEqual({
          ...found,
          lower: found.lower === null ? null : found.lower * 2 + shift,
          upper: found.upper === null ? null : found.upper * 2 + shift,
        });
        expect(found.coverage).toBeGreaterThanOrEqual(wanted - 1e-12);
        expect(found.coverage).toBeLessThanOrEqual(1);
        expect(numbersIn(found).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  test("it takes in the median of the swings", () => {
    fc.assert(
      fc.property(speeds, level, (list, wanted) => {
        const middle = quantile(list, 0.5);
        const { lower, upper } = quantileInterval(list, 0.5, wanted);
        if (middle === null) return;
        if (lower !== null) expect(lower).toBeLessThanOrEqual(middle);
        if (upper !== null) expect(upper).toBeGreaterThanOrEqual(middle);
      }),
    );
  });

  test("wrong calls are refused", () => {
    for (const wrong of WRONG_VALUES) expect(() => quantileInterval([60, wrong], 0.5)).toThrow(RangeError);
    for (const p of [-0.01, 1.01, Number.NaN]) expect(() => quantileInterval([60], p)).toThrow(RangeError);
    for (const wrong of [0, 1, Number.NaN]) expect(() => quantileInterval([60], 0.5, wrong)).toThrow(RangeError);
  });
});
