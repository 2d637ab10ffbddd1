import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sdInterval } from "../../src/stats/pooled-sd.ts";
import { expectNear } from "./samples.ts";

const level = fc.double({ min: 0.01, max: 0.999, noNaN: true });
const df = fc.integer({ min: 1, max: 200 });

describe("known answers", () => {
  test("two degrees of freedom in closed form: chi-square is then twice an exponential", () => {
    // Quantile -2 ln(1 - p): sd sqrt(2 / that), at 0.975 and 0.025.
    const [lower, upper] = sdInterval(3, 2, 0.95)!;
    expectNear(lower, 3 / Math.sqrt(-Math.log(0.025)), 1e-12);
    expectNear(upper, 3 / Math.sqrt(-Math.log(0.975)), 1e-12);
  });

  test("sixteen degrees of freedom from the printed table of chi-square", () => {
    // Upper 2.5% point 28.845 and lower 6.908 (NIST/SEMATECH e-Handbook 1.3.6.7.4, from memory; three decimals).
    const [lower, upper] = sdInterval(2, 16, 0.95)!;
    expectNear(lower, 2 * Math.sqrt(16 / 28.845), 2e-5);
    expectNear(upper, 2 * Math.sqrt(16 / 6.908), 8e-5);
  });
});

describe("too little", () => {
  test("no degree of freedom has no interval, no spread has one of width 0", () => {
    expect(sdInterval(2, 0, 0.95)).toBeNull();
    expect(sdInterval(0, 0, 0.95)).toBeNull();
    expect(sdInterval(0, 5, 0.95)).toEqual([0, 0]);
  });
});

describe("laws", () => {
  test("another unit scales both limits", () => {
    fc.assert(
      fc.property(df, level, (freedom, wanted) => {
        const [lower, upper] = sdInterval(1, freedom, wanted)!;
        expect(sdInterval(8, freedom, wanted)).toEqual([lower * 8, upper * 8]);
      }),
    );
  });

  test("at 95% it holds the SD, a wider level holds the narrower, and whole or not makes no odds", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 300, noNaN: true }), level, level, (freedom, a, b) => {
        const [lower, upper] = sdInterval(1, freedom, 0.95)!;
        expect(lower).toBeLessThan(1);
        expect(upper).toBeGreaterThan(1);
        const narrow = sdInterval(1, freedom, Math.min(a, b))!;
        const wide = sdInterval(1, freedom, Math.max(a, b))!;
        expect(narrow[0]).toBeLessThanOrEqual(narrow[1]);
        expect(wide[0]).toBeLessThanOrEqual(narrow[0]);
        expect(wide[1]).toBeGreaterThanOrEqual(narrow[1]);
      }),
    );
  });

  test("more degrees of freedom tell more", () => {
    fc.assert(
      fc.property(df, (freedom) => {
        const [few, many] = [sdInterval(1, freedom, 0.95)!, sdInterval(1, freedom + 1, 0.95)!];
        expect(many[0]).toBeGreaterThan(few[0]);
        expect(many[1]).toBeLessThan(few[1]);
      }),
    );
  });
});

describe("wrong calls", () => {
  test.each([-0.1, Number.NaN, Number.POSITIVE_INFINITY])("an SD or degrees of freedom of %s are refused", (wrong) => {
    expect(() => sdInterval(wrong, 5, 0.95)).toThrow(/standard deviation is 0 or more, got/);
    expect(() => sdInterval(1, wrong, 0.95)).toThrow(/degrees of freedom are 0 or more, got/);
  });

  test.each([0, 1, Number.NaN])("a level of %s is refused, even without degrees of freedom", (wrong) => {
    expect(() => sdInterval(1, 0, wrong)).toThrow(/level above 0 and below 1/);
  });
});
