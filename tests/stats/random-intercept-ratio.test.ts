import { describe, expect, test } from "vitest";
import { groupSums } from "../../src/stats/group-sums.ts";
import { profileAt, remlCriterion } from "../../src/stats/random-intercept-profile.ts";
import { bestProfile } from "../../src/stats/random-intercept-ratio.ts";

const sumsOf = (y: readonly number[], group: readonly number[], x: readonly number[] | null = null) =>
  groupSums(y, x, group, Math.max(...group) + 1);

/** Sets of rows found by trying half a million at random for what each line says. */
const FOUND: readonly [what: string, y: readonly number[], group: readonly number[], boundary: boolean][] = [
  [
    "rising at 0, a dip further out, the boundary deeper",
    [0, 18, 2, 13, 12, 13, 17, 9, 19],
    [0, 1, 1, 1, 1, 1, 1, 2, 2],
    true,
  ],
  [
    "the same with more rows",
    [1, 4, 12, 10, 0, 6, 2, 3, 1, 13, 15, 5, 15, 17],
    [0, 0, 1, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 3],
    true,
  ],
  [
    "rising at 0, the dip deeper",
    [9, 14, 7, 8, 14, 6, 8, 11, 14, 5, 19, 7],
    [0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 2, 3],
    false,
  ],
  ["the same in small groups", [3, 18, 18, 6, 10, 13, 15, 8], [0, 1, 2, 3, 3, 3, 4, 4], false],
  ["a minimum before the first look", [1, 1, 3, 4, 6, 2, 7, 18, 9], [0, 1, 1, 2, 2, 2, 2, 2, 3], false],
  ["a minimum far out", [13, 13, 3, 4, 14], [0, 0, 1, 1, 2], false],
  [
    "two minima above 0, the further one deeper",
    [18, 4, 11, 1, 7, 11, 8, 8, 9, 5, 12, 0, 14, 4, 14, 8, 9, 11, 5, 11, 6, 6, 19, 0],
    [0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2, 2, 2, 2, 2, 3],
    false,
  ],
];

describe("the best of all ratios", () => {
  test.each(FOUND)("%s", (_, y, group, boundary) => {
    const sums = sumsOf(y, group);
    const best = bestProfile(sums)!;
    expect(best.ratio === 0).toBe(boundary);
    const least = remlCriterion(sums, best);
    for (let power = -8; power <= 6; power += 0.01) {
      expect(remlCriterion(sums, profileAt(sums, 10 ** power))).toBeGreaterThanOrEqual(least - 1e-11);
    }
    expect(remlCriterion(sums, profileAt(sums, 0))).toBeGreaterThanOrEqual(least);
    // Inside, the derivative by the logarithm of the ratio is nothing but rounding.
    if (!boundary) expect(Math.abs(best.score * best.ratio)).toBeLessThan(1e-9);
  });

  test("a minimum at a ratio of a million millions is still found", () => {
    const sums = sumsOf(
      [0, 1e-6, 2e-6, 50, 50 + 1e-6, 50 + 3e-6, 90, 90 + 1e-6, 90 + 2e-6],
      [0, 0, 0, 1, 1, 1, 2, 2, 2],
    );
    const { ratio, score } = bestProfile(sums)!;
    expect(ratio).toBeGreaterThan(1e14);
    expect(Math.abs(score * ratio)).toBeLessThan(1e-6);
  });

  test("groups with equal means lie on the boundary", () => {
    const sums = sumsOf([1, 3, 0, 4, 1, 3], [0, 0, 1, 1, 2, 2]);
    expect(bestProfile(sums)).toEqual(profileAt(sums, 0));
  });

  test("no residual variance, no ratio: equal rows in each group, rows on a line each, nothing but rounding", () => {
    expect(bestProfile(sumsOf([1, 1, 2, 2, 5, 5], [0, 0, 1, 1, 2, 2]))).toBeNull();
    expect(bestProfile(sumsOf([1, 2, 5, 6, 2, 3], [0, 0, 1, 1, 2, 2], [0, 1, 0, 1, 0, 1]))).toBeNull();
    expect(bestProfile(sumsOf([0.1, 0.2, 0.3, 0.1, 0.2, 0.3], [0, 0, 0, 1, 1, 1], [1, 2, 3, 1, 2, 3]))).toBeNull();
  });
});
