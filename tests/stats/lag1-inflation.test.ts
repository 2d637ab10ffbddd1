import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lag1Inflation } from "../../src/stats/lag1-inflation.ts";
import { expectNear, numbersIn, speed, speeds, WRONG_VALUES } from "./samples.ts";

describe("known answers", () => {
  test("ten residuals worked by hand: likeness 1/10, corrected to 1/2, the error times root 3", () => {
    // Squares 10. Products of neighbours 1, -1, 1, -1, 1, -1, 1, -1, 1. Corrected (10 x 0.1 + 2) / 6.
    const found = lag1Inflation([2, 2, -2, -2, 2, 2, -2, -2, 2, 2]);
    expectNear(found.lag1, 0.1, 1e-15);
    expectNear(found.lag1Corrected, 0.5, 1e-15);
    expectNear(found.inflation, Math.sqrt(3), 1e-15);
    expectNear(found.effectiveN, 10 / 3, 1e-15);
    expectNear(found.df, 4 / 3, 1e-14);
  });

  test("no more than 0.8 is believed, and three points are left at least", () => {
    // Products 1, 1, -1, 1, 1 over 6: corrected (3 + 2) / 2 is past 0.8; 6 x 0.2 / 1.8 is below 3.
    const found = lag1Inflation([1, 1, 1, -1, -1, -1]);
    expect(found).toMatchObject({ lag1: 0.5, lag1Corrected: 0.8, effectiveN: 3, df: 1 });
    expectNear(found.inflation, 3, 1e-14);
  });

  test("neighbours that are unlike shrink no error", () => {
    // Products -1 five times over 6: corrected (-5 + 2) / 2 is below 0.
    const found = lag1Inflation([1, -1, 1, -1, 1, -1]);
    expect(found).toEqual({ lag1: -5 / 6, lag1Corrected: 0, inflation: 1, effectiveN: 6, df: 4 });
  });
});

describe("too few sessions", () => {
  test("below six the likeness is told and not used, from six on it is", () => {
    expect(lag1Inflation([1, 1, 1, -1, -1])).toEqual({
      lag1: 0.4,
      lag1Corrected: 0,
      inflation: 1,
      effectiveN: 5,
      df: 3,
    });
    expect(lag1Inflation([1, 1, 1, 1, -1, -1]).inflation).toBeGreaterThan(1);
  });

  test("none, one, two and nothing but zeros", () => {
    const alone = { lag1Corrected: 0, inflation: 1, effectiveN: 3, df: 1 };
    expect(lag1Inflation([])).toEqual({ lag1: null, ...alone });
    expect(lag1Inflation([2])).toEqual({ lag1: 0, ...alone });
    expect(lag1Inflation([2, -2])).toEqual({ lag1: -0.5, ...alone });
    expect(lag1Inflation([0, 0, 0, 0, 0, 0, 0])).toEqual({ ...alone, lag1: null, effectiveN: 7, df: 5 });
  });
});

describe("laws", () => {
  test("the order of time turned round and another unit, huge or tiny, change nothing", () => {
    fc.assert(
      fc.property(speeds, fc.constantFrom(-4, 2 ** -560, 2 ** 480), (list, factor) => {
        const found = lag1Inflation(list);
        expect(lag1Inflation(list.map((value) => value * factor))).toEqual(found);
        const turned = lag1Inflation(list.toReversed());
        expectNear(turned.lag1, found.lag1);
        expectNear(turned.inflation, found.inflation);
      }),
    );
  });

  test("an error never shrinks, points never grow, and each goes with the other", () => {
    fc.assert(
      fc.property(fc.array(speed, { minLength: 3, maxLength: 40 }), (list) => {
        const { lag1, lag1Corrected, inflation, effectiveN, df } = lag1Inflation(list);
        expect(Math.abs(lag1 ?? 0)).toBeLessThanOrEqual(1);
        expect(lag1Corrected).toBeGreaterThanOrEqual(0);
        expect(lag1Corrected).toBeLessThanOrEqual(0.8);
        expect(inflation).toBeGreaterThanOrEqual(1);
        expect(effectiveN).toBeGreaterThanOrEqual(3);
        expect(effectiveN).toBeLessThanOrEqual(list.length);
        expect(df).toBe(effectiveN - 2);
        if (effectiveN > 3) expectNear(effectiveN * inflation ** 2, list.length);
      }),
    );
  });

  test("no result is ever NaN or infinite, whatever the size of the residuals", () => {
    const any = fc.oneof(fc.double({ min: -1e150, max: 1e150, noNaN: true }), fc.constantFrom(0, 5e-324, -1e-162));
    fc.assert(
      fc.property(fc.array(any, { maxLength: 12 }), (list) => {
        const found = lag1Inflation(list);
        expect(numbersIn(found).every(Number.isFinite)).toBe(true);
        expect(Math.abs(found.lag1 ?? 0)).toBeLessThanOrEqual(1);
      }),
    );
  });

  test("residuals so small that their squares are nothing are not nothing", () => {
    // Products of 0.7 and 1.2 times the smallest double's root round up where one of the squares rounds to 0.
    const [a, b] = [0.7 * 2 ** -537, 1.2 * 2 ** -537];
    expectNear(lag1Inflation([a, b, a, b]).lag1, (3 * 0.7 * 1.2) / (2 * (0.7 ** 2 + 1.2 ** 2)), 1e-12);
  });
});

describe("wrong calls", () => {
  test.each(WRONG_VALUES)("a residual of %s is refused", (wrong) => {
    expect(() => lag1Inflation([1, wrong])).toThrow(/residuals\[1\] must be a finite number/);
  });
});
