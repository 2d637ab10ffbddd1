import { describe, expect, test } from "vitest";
import { normalCdf, normalQuantile, tCdf, tQuantile, tTwoSidedP } from "../../src/stats/distributions.ts";
import { tInterval } from "../../src/stats/interval.ts";

const PROBABILITIES = [0.005, 0.025, 0.3, 0.5, 0.8, 0.975, 0.9995];

describe("Student's t against its closed forms", () => {
  test.each(PROBABILITIES)("with 1 degree of freedom the %s quantile is a tangent (Cauchy)", (p) => {
    const wanted = Math.tan(Math.PI * (p - 0.5));
    expect(Math.abs(tQuantile(p, 1) - wanted)).toBeLessThanOrEqual(1e-12 * Math.abs(wanted));
  });

  test.each(PROBABILITIES)("with 2 degrees of freedom the %s quantile is a root", (p) => {
    const wanted = (2 * p - 1) * Math.sqrt(2 / (4 * p * (1 - p)));
    expect(Math.abs(tQuantile(p, 2) - wanted)).toBeLessThanOrEqual(1e-12 * Math.abs(wanted));
  });

  test("the far tail keeps its digits: p of NIST Norris from R 4.2.2 (tests/reference/stats/ols.json)", () => {
    expect(tTwoSidedP(2331.60578589044, 34) / 4.65404085247356e-90).toBeCloseTo(1, 11);
  });

  test("distribution and quantile undo each other at fractional degrees of freedom", () => {
    for (const df of [1.5, 7.3, 17.776, 240]) {
      for (const p of PROBABILITIES) expect(tCdf(tQuantile(p, df), df)).toBeCloseTo(p, 12);
    }
  });
});

describe("the normal distribution", () => {
  test("the usual quantile and a far tail, worked out to 30 digits with mpmath (sqrt 2 erfinv 0.95, ncdf -9)", () => {
    expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 14);
    expect(normalCdf(-9) / 1.12858840595384e-19).toBeCloseTo(1, 12);
  });
});

describe("wrong calls", () => {
  test("a probability of 0 or 1, no degrees of freedom and NaN are refused", () => {
    expect(() => tQuantile(1, 5)).toThrow(RangeError);
    expect(() => tQuantile(0.5, 0)).toThrow(RangeError);
    expect(() => tQuantile(Number.NaN, 5)).toThrow(RangeError);
    expect(() => tCdf(Number.NaN, 5)).toThrow(RangeError);
    expect(() => tCdf(1, Number.POSITIVE_INFINITY)).toThrow(RangeError);
    expect(() => normalQuantile(0)).toThrow(RangeError);
    expect(() => normalCdf(Number.NaN)).toThrow(RangeError);
    expect(() => tInterval(1, 1, 5, 1)).toThrow(RangeError);
  });

  test("without a standard error or degrees of freedom there is no interval", () => {
    expect(tInterval(1, null, 5, 0.95)).toBeNull();
    expect(tInterval(1, 1, null, 0.95)).toBeNull();
    expect(tInterval(1, 1, 0, 0.95)).toBeNull();
  });
});
