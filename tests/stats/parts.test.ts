import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { groupSums } from "../../src/stats/group-sums.ts";
import { pairwiseSlopes } from "../../src/stats/pairwise-slopes.ts";
import { quantileInterval } from "../../src/stats/quantile-ci.ts";
import { satterthwaite } from "../../src/stats/satterthwaite.ts";
import { senIntervals } from "../../src/stats/sen-interval.ts";
import { expectNear, WRONG_VALUES } from "./samples.ts";

describe("Satterthwaite's sum of variances", () => {
  test("two equal terms have the sum of their degrees of freedom; a term of nothing changes nothing", () => {
    expect(
      satterthwaite([
        { variance: 2, df: 5 },
        { variance: 2, df: 5 },
      ]),
    ).toEqual({ variance: 4, df: 10 });
    expect(
      satterthwaite([
        { variance: 2, df: 5 },
        { variance: 0, df: 1 },
      ]),
    ).toEqual({ variance: 2, df: 5 });
  });

  test("no variance at all has the smallest degrees of freedom", () => {
    expect(
      satterthwaite([
        { variance: 0, df: 7 },
        { variance: 0, df: 3 },
      ]),
    ).toEqual({ variance: 0, df: 3 });
    expect(
      satterthwaite([
        { variance: 0, df: 3 },
        { variance: 0, df: 7 },
      ]),
    ).toEqual({ variance: 0, df: 3 });
  });

  test("they lie between the smallest and the sum", () => {
    const term = fc.record({
      variance: fc.double({ min: 0.01, max: 100, noNaN: true }),
      df: fc.integer({ min: 1, max: 50 }),
    });
    fc.assert(
      fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), (terms) => {
        const { df } = satterthwaite(terms);
        expect(df).toBeGreaterThanOrEqual(Math.min(...terms.map((one) => one.df)) - 1e-9);
        expect(df).toBeLessThanOrEqual(terms.reduce((sum, one) => sum + one.df, 0) + 1e-9);
      }),
    );
  });
});

describe("sums of groups", () => {
  const five = () => groupSums([60, 62, 70, 74, 90], [0, 1, 0, 2, 5], [0, 0, 1, 1, 2], 3);

  test("sizes, the smallest and the largest", () => {
    const sums = five();
    expect(Array.from(sums.sizes)).toEqual([2, 2, 1]);
    expect(sums).toMatchObject({ rows: 5, groups: 3, smallest: 1, largest: 2, hasX: true, xDiffers: true });
    expect(groupSums([1, 2, 3, 4], null, [0, 0, 1, 1], 2)).toMatchObject({ smallest: 2, largest: 2, hasX: false });
  });

  test("inside groups: slope 2 leaves nothing where both rise by two a step", () => {
    // Squares of x inside groups 0.5 + 2, products 1 + 4.
    const sums = five();
    const inUnits = (sums.withinSlope * sums.ofY.scale) / sums.ofX.scale;
    expectNear(inUnits, 2, 1e-12);
    expect(sums.withinSquares).toBe(0);
  });

  test("what a slope leaves inside groups, in the rows' own squares", () => {
    const off = groupSums([60, 62, 61, 70, 74, 75], [0, 1, 2, 0, 1, 2], [0, 0, 0, 1, 1, 1], 2);
    // By hand: products 1 + 5 over squares 2 + 2.
    const slope = (off.withinSlope * off.ofY.scale) / off.ofX.scale;
    expectNear(slope, 1.5, 1e-12);
    const y = [60, 62, 61, 70, 74, 75];
    const centre = [61, 61, 61, 73, 73, 73];
    const left = y.reduce((sum, value, i) => sum + (value - centre[i]! - 1.5 * ((i % 3) - 1)) ** 2, 0);
    expectNear(off.withinSquares * off.ofY.scale ** 2, left, 1e-9);
  });

  test("x constant in each group has no slope inside, and as many rows as parameters leave nothing", () => {
    expect(groupSums([1, 2, 3, 5], [0, 0, 7, 7], [0, 0, 1, 1], 2)).toMatchObject({ withinX: 0, withinSlope: 0 });
    expect(groupSums([1, 2, 3, 5], [0, 0, 7, 7], [0, 0, 1, 1], 2).withinSquares).toBeGreaterThan(0);
    expect(groupSums([60, 63.7], null, [0, 1], 2).withinSquares).toBe(0);
    expect(groupSums([60.1, 63.7, 70.3], [0, 1.3, 0], [0, 0, 1], 2).withinSquares).toBe(0);
  });
});

describe("slopes of pairs", () => {
  test("rising and falling pairs count against each other; pairs at one x have none", () => {
    expect(pairwiseSlopes([0, 2, 2], [1, 5, 3])).toEqual({ sorted: Float64Array.from([1, 2]), s: 2 });
    expect(pairwiseSlopes([2, 0], [1, 5])).toEqual({ sorted: Float64Array.from([-2]), s: -1 });
    expect(pairwiseSlopes([1], [1])).toEqual({ sorted: new Float64Array(0), s: 0 });
  });

  test("a slope that no double holds is refused by name", () => {
    expect(() => pairwiseSlopes([0, 5e-324], [0, 1e150])).toThrow(/a slope between two points/);
  });
});

describe("wrong calls of a quantile's interval", () => {
  test.each([-0.1, 1.1, Number.NaN])("p of %s is refused", (p) => {
    expect(() => quantileInterval([1, 2], p)).toThrow(/needs p in 0\.\.1/);
  });

  test.each(WRONG_VALUES)("a value of %s is refused by its place", (wrong) => {
    expect(() => quantileInterval([1, wrong], 0.5)).toThrow(/values\[1\] must be a finite number/);
  });

  test("p of 0 and of 1 are the ends", () => {
    expect(quantileInterval([3, 1, 2], 0).lowerIndex).toBeNull();
    expect(quantileInterval([3, 1, 2], 1).upperIndex).toBeNull();
  });
});

describe("Sen's interval at its edges", () => {
  const ten = Float64Array.from({ length: 10 }, (_, i) => i + 1);

  test("holds the ranks inside the slopes and says so when it had to", () => {
    // Half the width 1.96 sqrt(v) / 2: ranks 5 minus and plus it.
    const wide = senIntervals(ten, 40, null, 0.95);
    expect(wide.rounded).toMatchObject({ lowerIndex: 1, upperIndex: 10, held: true });
    expect(wide.conservative).toBeNull();
    expect(wide.interpolated).toMatchObject({ lower: null, upper: null });
    const narrow = senIntervals(ten, 4, null, 0.95);
    expect(narrow.rounded).toMatchObject({ lowerIndex: 3, upperIndex: 8, held: false });
    expect(narrow.conservative).toMatchObject({ lowerIndex: 3, upperIndex: 8 });
    expect(narrow.interpolated!.lower).toBeCloseTo(5 - 1.959964, 5);
    expect(narrow.interpolated!.upper).toBeCloseTo(6 + 1.959964, 5);
    expect(narrow.exact).toBeNull();
  });

  test("a lowest rank of exactly 1 is still a rank", () => {
    // 1.959963984540054 sqrt(v) / 2 = 4: ranks 1 and 10.
    const edge = senIntervals(ten, (8 / 1.959963984540054) ** 2 - 1e-9, null, 0.95);
    expect(edge.rounded).toMatchObject({ lowerIndex: 1, upperIndex: 10, held: false });
    expect(edge.conservative).toMatchObject({ lowerIndex: 1, upperIndex: 10 });
    expect(edge.interpolated!.lower).toBeCloseTo(1, 6);
    expect(edge.interpolated!.upper).toBeCloseTo(10, 6);
  });

  test("a variance below nothing leaves the exact interval alone", () => {
    expect(senIntervals(ten, -1, null, 0.95)).toEqual({
      rounded: null,
      conservative: null,
      interpolated: null,
      exact: null,
    });
  });

  test("the exact one counts the tails of the discordant pairs", () => {
    // Three untied values: 0 to 3 discordant pairs with chances 1, 2, 2, 1 of 6.
    const cdf = Float64Array.from([1 / 6, 3 / 6, 5 / 6, 1]);
    const three = Float64Array.from([1, 2, 3]);
    expect(senIntervals(three, 1, cdf, 2 / 3).exact).toEqual({
      lowerIndex: 1,
      upperIndex: 3,
      lower: 1,
      upper: 3,
      exactCoverage: expect.closeTo(4 / 6, 12),
    });
    expect(senIntervals(three, 1, cdf, 0.68).exact).toBeNull();
    expect(senIntervals(three, 1, cdf, 2 / 3).conservative?.exactCoverage ?? null).not.toBeNaN();
  });
});
