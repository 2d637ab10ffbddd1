import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pairedOffset, twoSampleOffset } from "../../src/stats/offset.ts";
import { satterthwaite } from "../../src/stats/satterthwaite.ts";
import { welch } from "../../src/stats/welch.ts";
import { expectNear, speed, WRONG_VALUES } from "./samples.ts";

// Hours of extra sleep under two drugs: Student (1908), Biometrika 6:1-25, in the order of R's data set `sleep`.
const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
const differences = second.map((value, i) => value - first[i]!);

describe("swings that both devices recorded", () => {
  test("Student's sleep data agree with SciPy 1.17.1, ttest_rel(second, first).confidence_interval(0.95)", () => {
    const result = pairedOffset(differences)!;
    expect(result.offset).toBeCloseTo(1.58, 14);
    expect(result.df).toBe(9);
    expect(result.offset / result.se).toBeCloseTo(4.062127683382037, 12);
    expect(result.ci95[0]).toBeCloseTo(0.7001142367230175, 11);
    expect(result.ci95[1]).toBeCloseTo(2.459885763276983, 11);
  });

  test("worked by hand: differences 2, 3, 4 give 3 and an error of 1 over the root of 3, t with 2 degrees of freedom", () => {
    const result = pairedOffset([2, 3, 4])!;
    expect([result.offset, result.df]).toEqual([3, 2]);
    expect(result.se).toBeCloseTo(1 / Math.sqrt(3), 14);
    // t(0.975, 2) = 4.302652..., from its closed form 2 (p - 1/2) sqrt(2 / (1 - 4 (p - 1/2)^2)) with p = 0.975.
    const t = 2 * 0.475 * Math.sqrt(2 / (1 - 4 * 0.475 ** 2));
    expect(result.ci95[1] - 3).toBeCloseTo(t / Math.sqrt(3), 11);
  });

  test("one difference says nothing of its error; equal ones have none", () => {
    expect(pairedOffset([2])).toBeNull();
    expect(pairedOffset([2, 2, 2])).toEqual({ offset: 2, se: 0, df: 2, ci95: [2, 2] });
  });
});

describe("swings that either device recorded", () => {
  test("one hitter in one condition gives Welch's interval", () => {
    const expected = welch(first, second)!;
    const result = twoSampleOffset([{ first, second }])!;
    expectNear(result.offset, expected.difference, 1e-12);
    expectNear(result.se, expected.se, 1e-12);
    expectNear(result.df, expected.df, 1e-10);
    expectNear(result.ci95[0], expected.interval![0], 1e-11);
  });

  test("worked by hand: two hitters, weights 2 x 2 / 4 = 1 and 3 x 3 / 6 = 1.5", () => {
    const result = twoSampleOffset([
      { first: [60, 62], second: [63, 65] },
      { first: [80, 81, 82], second: [81, 82, 83] },
    ])!;
    // Differences 3 and 1; variances of the means 2/2 + 2/2 and 1/3 + 1/3.
    expect(result.offset).toBeCloseTo((1 * 3 + 1.5 * 1) / 2.5, 14);
    const [a, b] = [0.4 ** 2, 0.6 ** 2];
    const variance = a * 2 + (b * 2) / 3;
    expect(result.se).toBeCloseTo(Math.sqrt(variance), 14);
    expect(result.df).toBeCloseTo(variance ** 2 / (2 * (a * 1) ** 2 + 2 * ((b / 3) ** 2 / 2)), 11);
  });

  test("hitters who differ are no difference between devices, however they share the devices out", () => {
    const slow = { first: [50, 51, 52], second: [50, 51, 52, 50, 51, 52, 50, 51, 52] };
    const fast = { first: [70, 71, 72, 70, 71, 72, 70, 71, 72], second: [70, 71, 72] };
    expect(twoSampleOffset([slow, fast])!.offset).toBeCloseTo(0, 12);
  });

  test("a hitter with one swing on a side is left out, and nothing is left of that one alone", () => {
    expect(twoSampleOffset([{ first: [60], second: [61, 62] }])).toBeNull();
    expect(
      twoSampleOffset([
        { first, second },
        { first: [60], second: [99] },
      ]),
    ).toEqual(twoSampleOffset([{ first, second }]));
  });
});

test("a device that reads c more moves the offset by c and leaves its error alone", () => {
  const list = fc.array(speed, { minLength: 2, maxLength: 20 });
  fc.assert(
    fc.property(list, list, speed, (a, b, c) => {
      const plain = twoSampleOffset([{ first: a, second: b }])!;
      const moved = twoSampleOffset([{ first: a, second: b.map((value) => value + c) }])!;
      expectNear(moved.offset, plain.offset + c);
      expectNear(moved.se, plain.se);
      const paired = pairedOffset(a)!;
      expectNear(pairedOffset(a.map((value) => value + c))!.offset, paired.offset + c);
      expectNear(pairedOffset(a.map((value) => value + c))!.se, paired.se);
    }),
  );
});

test.each(WRONG_VALUES)("a reading of %s is refused", (wrong) => {
  expect(() => pairedOffset([1, wrong])).toThrow(RangeError);
  expect(() => twoSampleOffset([{ first: [1, wrong], second: [1, 2] }])).toThrow(RangeError);
});

test("degrees of freedom of a sum lie between the smallest and all together", () => {
  const term = fc.record({ variance: fc.double({ min: 0, max: 9, noNaN: true }), df: fc.integer({ min: 1, max: 50 }) });
  fc.assert(
    fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), (terms) => {
      const { df } = satterthwaite(terms);
      expect(df).toBeGreaterThanOrEqual(Math.min(...terms.map((one) => one.df)) * (1 - 1e-9));
      expect(df).toBeLessThanOrEqual(terms.reduce((sum, one) => sum + one.df, 0) * (1 + 1e-9));
    }),
  );
});
