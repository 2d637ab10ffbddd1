import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { meanInterval } from "../../src/stats/mean-interval.ts";
import { speed, WRONG_VALUES } from "./samples.ts";

describe("mean with its interval", () => {
  test("no value has none, one value no interval", () => {
    expect(meanInterval([])).toBeNull();
    expect(meanInterval([61.5])).toEqual({ estimate: 61.5, ci95: null, df: 0, n: 1 });
  });

  test("three values worked by hand: 2, and t(2) of 4.302653 times 1 over the root of 3", () => {
    const { estimate, ci95, df, n } = meanInterval([1, 2, 3])!;
    expect([estimate, df, n]).toEqual([2, 2, 3]);
    // The 0.975 quantile of t with 2 degrees of freedom in closed form: 0.95 sqrt(2 / (1 - 0.95^2)).
    const half = (0.95 * Math.sqrt(2 / (1 - 0.95 ** 2))) / Math.sqrt(3);
    expect(ci95![0]).toBeCloseTo(2 - half, 9);
    expect(ci95![1]).toBeCloseTo(2 + half, 9);
  });

  test("equal values have an interval of no width", () => {
    expect(meanInterval([62, 62, 62, 62])).toEqual({ estimate: 62, ci95: [62, 62], df: 3, n: 4 });
  });

  test.each(WRONG_VALUES)("a value of %s is refused", (wrong) => {
    expect(() => meanInterval([60, wrong])).toThrow(RangeError);
  });

  test("the interval lies evenly around the mean, and turning the signs turns it round", () => {
    fc.assert(
      fc.property(fc.array(speed, { minLength: 2, maxLength: 20 }), (values) => {
        const { estimate, ci95 } = meanInterval(values)!;
        expect(ci95![1] - estimate).toBeCloseTo(estimate - ci95![0], 9);
        const turned = meanInterval(values.map((value) => -value))!;
        expect(turned.ci95![0]).toBeCloseTo(-ci95![1], 9);
      }),
    );
  });
});
