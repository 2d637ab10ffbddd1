import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lag1Inflation } from "../../src/stats/lag1-inflation.ts";
import { ols } from "../../src/stats/ols.ts";
import { sinceLine } from "../../src/stats/since-line.ts";
import { randomFrom } from "../demo/random.ts";
import { expectNear, speed, WRONG_VALUES } from "./samples.ts";

const weeks = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];

/** The same by another way: what a line in time leaves of the values on what it leaves of the contrast (Frisch, Waugh, Lovell). */
function byTwoLines(x: readonly number[], y: readonly number[], from: number) {
  const leftOf = (of: readonly number[]) => {
    const line = ols(x, of);
    if (line.kind !== "line") throw new Error("no line");
    return of.map((value, i) => value - line.meanY - line.slope * (x[i]! - line.meanX));
  };
  const left = leftOf(y);
  const contrast = leftOf(x.map((week) => (week >= from ? 1 : 0)));
  const weight = contrast.reduce((sum, one) => sum + one ** 2, 0);
  const step = contrast.reduce((sum, one, i) => sum + one * left[i]!, 0) / weight;
  const rest = left.map((one, i) => one - step * contrast[i]!);
  const variance = rest.reduce((sum, one) => sum + one ** 2, 0) / (x.length - 3);
  const { inflation, effectiveN } = lag1Inflation(rest);
  return {
    step,
    se: Math.sqrt(variance / weight) * inflation,
    df: Math.max(1, Math.min(x.length - 3, effectiveN - 3)),
  };
}

describe("since a day", () => {
  test("a step on a trend is told apart from the trend, exactly where nothing scatters", () => {
    const found = sinceLine(
      weeks,
      weeks.map((week) => 60 + 0.5 * week + (week >= 5 ? 2 : 0)),
      5,
    )!;
    expect([found.before, found.since]).toEqual([5, 5]);
    expectNear(found.step, 2);
    expect(found.se).toBeLessThan(1e-9);
  });

  test("the same as two least-squares lines, one after the other", () => {
    const values = fc.array(speed, { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(values, fc.integer({ min: 4, max: 6 }), (list, from) => {
        const found = sinceLine(weeks, list, from)!;
        const wanted = byTwoLines(weeks, list, from);
        expectNear(found.step, wanted.step);
        // Rows on such a line exactly leave rounding alone, and nothing can be said of its likeness.
        if (wanted.se < 1e-6) return;
        expectNear(found.se, wanted.se, 1e-6);
        expectNear(found.df, wanted.df, 1e-6);
        expect(found.ci95[0]).toBeLessThan(found.step);
        expectNear(found.ci95[0] + found.ci95[1], 2 * found.step, 1e-6);
      }),
    );
  });

  test("a fixed speed, a steady gain and another first day move nothing; a step added is found on top", () => {
    const values = [60, 62, 61, 63, 62, 66, 65, 67, 64, 68];
    const plain = sinceLine(weeks, values, 5)!;
    const moved = sinceLine(
      weeks.map((week) => week + 30),
      values.map((value, i) => value + 7 - 0.4 * weeks[i]! + (weeks[i]! >= 5 ? 1.5 : 0)),
      35,
    )!;
    expectNear(moved.step, plain.step + 1.5);
    expectNear(moved.se, plain.se);
  });

  test("in about 95 of 100 seasons the interval holds a step that is there", () => {
    const random = randomFrom("since a day");
    const runs = 2000;
    let held = 0;
    for (let run = 0; run < runs; run += 1) {
      const season = Array.from({ length: 16 }, (_, i) => i);
      const found = sinceLine(
        season,
        season.map((week) => 60 + 0.2 * week + (week >= 9 ? 1 : 0) + random.normal(0, 1)),
        9,
      )!;
      if (found.ci95[0] <= 1 && found.ci95[1] >= 1) held += 1;
    }
    // Widened where neighbours happen to look alike, so on the safe side; four standard errors of a count below.
    expect(held / runs).toBeGreaterThan(0.93);
    expect(held / runs).toBeLessThan(0.99);
  });
});

describe("where nothing can be said", () => {
  test("fewer than four sessions on one side, or days that tell time and contrast as one", () => {
    expect(sinceLine(weeks, weeks, 3)).toBeNull();
    expect(sinceLine(weeks, weeks, 7)).toBeNull();
    expect(sinceLine(weeks, weeks, 99)).toBeNull();
    expect(sinceLine([0, 0, 0, 0, 1, 1, 1, 1], [1, 2, 3, 4, 5, 6, 7, 9], 1)).toBeNull();
    expect(sinceLine([], [], 0)).toBeNull();
  });

  test.each(WRONG_VALUES)("a value of %s is refused", (wrong) => {
    expect(() => sinceLine(weeks, [wrong, ...weeks.slice(1)], 5)).toThrow(RangeError);
  });
});
