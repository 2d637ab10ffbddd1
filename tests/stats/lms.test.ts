import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lmsAtPercentile, lmsPercentile, lmsValue, lmsZ } from "../../src/stats/lms.ts";
import { expectNear } from "./samples.ts";

const power = fc.oneof(fc.double({ min: -3, max: 3, noNaN: true }), fc.constantFrom(0, 1, -1, 1e-9, -1e-9, 1e-200));
const middle = fc.double({ min: 0.5, max: 200, noNaN: true });
const spread = fc.double({ min: 0.01, max: 0.4, noNaN: true });
const lms = fc.record({ l: power, m: middle, s: spread });
const z = fc.double({ min: -3, max: 3, noNaN: true });

describe("known answers", () => {
  test("a power of 1 is the normal distribution with SD M S", () => {
    expect(lmsZ(10, { l: 1, m: 8, s: 0.125 })).toBeCloseTo(2, 12);
    expect(lmsValue(2, { l: 1, m: 8, s: 0.125 })).toBeCloseTo(10, 12);
  });

  test("a power of 0 is the normal distribution of logarithms", () => {
    expect(lmsZ(8 * Math.exp(0.25), { l: 0, m: 8, s: 0.125 })).toBeCloseTo(2, 12);
    expect(lmsValue(2, { l: 0, m: 8, s: 0.125 })).toBeCloseTo(8 * Math.exp(0.25), 12);
  });

  test("a power of -1: (1 - M / x) / S", () => {
    expect(lmsZ(10, { l: -1, m: 8, s: 0.1 })).toBeCloseTo(2, 12);
    expect(lmsValue(2, { l: -1, m: 8, s: 0.1 })).toBeCloseTo(10, 12);
  });

  test("M is the median, 97.725 of a hundred are below two", () => {
    const at = { l: -1.6, m: 12.7, s: 0.11 };
    expect(lmsPercentile(12.7, at)).toBe(50);
    expectNear(lmsAtPercentile(50, at), 12.7, 1e-12);
    // Upper tail of the normal distribution at 2: 0.0227501 (any printed table).
    expect(lmsPercentile(lmsValue(2, at)!, at)).toBeCloseTo(97.72499, 4);
  });
});

describe("laws", () => {
  test("there and back again", () => {
    fc.assert(
      fc.property(lms, z, (at, score) => {
        const value = lmsValue(score, at);
        if (value === null || !(value > 0 && Number.isFinite(value))) return;
        // Near the end of the distribution the value tells the score apart no longer.
        fc.pre(1 + at.l * at.s * score > 0.05);
        expectNear(lmsZ(value, at), score, 1e-7);
      }),
    );
  });

  test("a larger value never has a smaller score, and another unit changes no score", () => {
    fc.assert(
      fc.property(lms, middle, middle, (at, a, b) => {
        expect(lmsZ(Math.min(a, b), at)).toBeLessThanOrEqual(lmsZ(Math.max(a, b), at));
        expect(lmsZ(4 * a, { ...at, m: 4 * at.m })).toBe(lmsZ(a, at));
      }),
    );
  });

  test("powers near 0 go over into 0 without a step, down to the smallest", () => {
    for (const tiny of [1e-8, -1e-8, 1e-99, -1e-99, 1e-101, 5e-324]) {
      expectNear(lmsZ(11, { l: tiny, m: 10, s: 0.1 }), lmsZ(11, { l: 0, m: 10, s: 0.1 }), 1e-8);
      expectNear(lmsValue(1, { l: tiny, m: 10, s: 0.1 }), lmsValue(1, { l: 0, m: 10, s: 0.1 }), 1e-8);
    }
  });

  test("where 1 + L S z is not above 0 nobody is that far out", () => {
    expect(lmsValue(-10, { l: 1, m: 8, s: 0.1 })).toBeNull();
    expect(lmsValue(-11, { l: 1, m: 8, s: 0.1 })).toBeNull();
    expect(lmsValue(10, { l: -2, m: 8, s: 0.1 })).toBeNull();
    expect(lmsValue(-9.9, { l: 1, m: 8, s: 0.1 })).toBeCloseTo(0.08, 10);
  });
});

describe("wrong calls", () => {
  test.each([Number.NaN, Number.POSITIVE_INFINITY])("L of %s is refused", (l) => {
    expect(() => lmsZ(1, { l, m: 1, s: 0.1 })).toThrow(/L must be a finite number/);
    expect(() => lmsValue(1, { l, m: 1, s: 0.1 })).toThrow(/L must be a finite number/);
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("M, S or a value of %s is refused", (wrong) => {
    expect(() => lmsZ(1, { l: 1, m: wrong, s: 0.1 })).toThrow(/M must be above 0/);
    expect(() => lmsZ(1, { l: 1, m: 1, s: wrong })).toThrow(/S must be above 0/);
    expect(() => lmsZ(wrong, { l: 1, m: 1, s: 0.1 })).toThrow(/a value must be above 0/);
    expect(() => lmsValue(1, { l: 1, m: wrong, s: 0.1 })).toThrow(/M must be above 0/);
  });

  test("scores and percentiles that are none are refused", () => {
    for (const wrong of [Number.NaN, Number.NEGATIVE_INFINITY])
      expect(() => lmsValue(wrong, { l: 1, m: 1, s: 0.1 })).toThrow(/z score must be a finite number/);
    for (const wrong of [0, 100, -1, 101])
      expect(() => lmsAtPercentile(wrong, { l: 1, m: 1, s: 0.1 })).toThrow(RangeError);
  });
});
