import { describe, expect, test } from "vitest";
import {
  betaQuantile,
  binomialCdf,
  chiSquareQuantile,
  fQuantile,
  normalCdf,
  normalQuantile,
  normalTwoSidedP,
  tCdf,
  tQuantile,
  tTwoSidedP,
} from "../../src/stats/distributions.ts";
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

describe("against R 4.2.2 (qchisq, qf, qbeta, pbinom)", () => {
  const near = (got: number, wanted: number) => expect(Math.abs(got / wanted - 1)).toBeLessThan(1e-11);

  test("chi-square", () => {
    near(chiSquareQuantile(0.025, 16), 6.907664353497003);
    near(chiSquareQuantile(0.975, 16), 28.845350723404756);
    near(chiSquareQuantile(0.025, 1), 0.0009820691171752562);
  });

  test("F", () => {
    near(fQuantile(0.025, 3, 7), 0.06837889693756014);
    near(fQuantile(0.975, 3, 7), 5.889819167203254);
    near(fQuantile(0.5, 10, 1.5), 1.537801195217929);
  });

  test("beta", () => {
    near(betaQuantile(0.025, 0.5, 10.5), 4.789043315758193e-5);
    near(betaQuantile(0.975, 0.5, 10.5), 0.2171962675092105);
    near(betaQuantile(0.5, 80.5, 20.5), 0.798995418137285);
  });

  test("binomial, and a count below none", () => {
    near(binomialCdf(0, 10, 0.3), 0.0282475249);
    near(binomialCdf(3, 10, 0.3), 0.6496107184);
    near(binomialCdf(12, 40, 0.25), 0.8208657576539584);
    expect([binomialCdf(10, 10, 0.3), binomialCdf(-1, 10, 0.3), binomialCdf(0, 0, 1)]).toEqual([1, 0, 1]);
  });

  test("two-sided normal: 5 % at 1.96, and never above 1", () => {
    near(normalTwoSidedP(1.959963984540054), 0.05);
    expect(normalTwoSidedP(0)).toBe(1);
    expect(tTwoSidedP(0, 3)).toBe(1);
  });
});

describe("wrong calls", () => {
  test("say what was wrong", () => {
    expect(() => tQuantile(1, 5)).toThrow(/above 0 and below 1, got 1/);
    expect(() => tQuantile(0.5, 0)).toThrow(/degrees of freedom must be above 0, got 0/);
    expect(() => tCdf(Number.NaN, 5)).toThrow(/tCdf needs a number/);
    expect(() => normalCdf(Number.NaN)).toThrow(/normalCdf needs a number/);
    expect(() => chiSquareQuantile(0, 5)).toThrow(/above 0 and below 1, got 0/);
    expect(() => chiSquareQuantile(0.5, 0)).toThrow(/degrees of freedom/);
    expect(() => fQuantile(1, 5, 5)).toThrow(/above 0 and below 1/);
    expect(() => fQuantile(0.5, 0, 5)).toThrow(/degrees of freedom/);
    expect(() => fQuantile(0.5, 5, -1)).toThrow(/degrees of freedom/);
    expect(() => betaQuantile(1, 1, 1)).toThrow(/above 0 and below 1/);
    expect(() => betaQuantile(0.5, 0, 1)).toThrow(/shapes above 0, got 0 and 1/);
    expect(() => betaQuantile(0.5, 1, 0)).toThrow(/shapes above 0, got 1 and 0/);
    expect(() => binomialCdf(Number.NaN, 5, 0.5)).toThrow(/binomialCdf needs a number/);
    expect(() => binomialCdf(1, 2.5, 0.5)).toThrow(/count of tries, got 2.5/);
    expect(() => binomialCdf(1, -1, 0.5)).toThrow(/count of tries, got -1/);
    expect(() => binomialCdf(1, 5, -0.1)).toThrow(/chance from 0 to 1, got -0.1/);
    expect(() => binomialCdf(1, 5, 1.1)).toThrow(/chance from 0 to 1, got 1.1/);
    expect(binomialCdf(5, 5, 0)).toBe(1);
  });

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

  test("a limit that leaves the range of a double is refused by its side", () => {
    expect(() => tInterval(-1e308, 1e308, 5, 0.95)).toThrow(/a lower limit is too large/);
    expect(() => tInterval(1.7e308, 1e307, 5, 0.95)).toThrow(/an upper limit is too large/);
    expect(() => tInterval(1, 1, 5, 0)).toThrow(/level above 0 and below 1, got 0/);
  });

  test("without a standard error or degrees of freedom there is no interval", () => {
    expect(tInterval(1, null, 5, 0.95)).toBeNull();
    expect(tInterval(1, 1, null, 0.95)).toBeNull();
    expect(tInterval(1, 1, 0, 0.95)).toBeNull();
  });
});
