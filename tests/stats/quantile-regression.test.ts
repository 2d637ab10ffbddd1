import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type QuantileLine, quantileLine } from "../../src/stats/quantile-regression.ts";
import {
  expectNear,
  linePoints,
  numbersIn,
  points,
  reordered,
  speed,
  speedsOf,
  WRONG_VALUES,
  weeksOf,
} from "./samples.ts";

function line(x: readonly number[], y: readonly number[], tau: number): QuantileLine {
  const fitted = quantileLine(x, y, tau);
  if (fitted.kind !== "line") throw new Error(`expected a line, got ${fitted.reason}`);
  return fitted;
}

/** Koenker and Bassett's sum, straight from its definition. */
function objective(x: readonly number[], y: readonly number[], tau: number, slope: number, intercept: number): number {
  return x.reduce((sum, at, i) => {
    const above = y[i]! - intercept - slope * at;
    return sum + above * (above > 0 ? tau : tau - 1);
  }, 0);
}

/** The smallest sum of all lines through two of the points. One of them is always best. */
function leastObjective(x: readonly number[], y: readonly number[], tau: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < x.length; i += 1) {
    for (let j = 0; j < i; j += 1) {
      if (x[i] === x[j]) continue;
      const slope = (y[i]! - y[j]!) / (x[i]! - x[j]!);
      least = Math.min(least, objective(x, y, tau, slope, y[i]! - slope * x[i]!));
    }
  }
  return least;
}

const tau = fc.constantFrom(0.03, 0.1, 0.25, 0.5, 0.75, 0.9, 0.97);
/** Few weeks and few speeds: ties, equal points and several points on a line are the rule. */
const tied = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 4 })), { maxLength: 14 })
  .filter((list) => new Set(list.map(([week]) => week)).size >= 2);

describe("known answers", () => {
  test("one wild session of five leaves the median line through the other four", () => {
    expect(line([0, 1, 2, 3, 4], [1, 2, 3, 9, 5], 0.5)).toEqual({
      kind: "line",
      n: 5,
      tau: 0.5,
      slope: 1,
      intercept: 1,
      objective: 2.5,
      onLine: 4,
      unique: true,
    });
  });

  test("high and low quantiles run through the upper and the lower edge", () => {
    const x = [0, 0, 1, 1, 2, 2];
    const y = [0, 10, 1, 13, 2, 16];
    expect(line(x, y, 0.9)).toMatchObject({ slope: 3, intercept: 10, onLine: 3, unique: true });
    expect(line(x, y, 0.1)).toMatchObject({ slope: 1, intercept: 0, onLine: 3, unique: true });
    // Below lie distances 10, 12 and 14, each with 1 - tau.
    expect(line(x, y, 0.9).objective).toBeCloseTo(3.6, 12);
    expect(line(x, y, 0.1).objective).toBeCloseTo(3.6, 12);
  });

  test("two points, and points that all lie on one line, leave nothing", () => {
    expect(line([0, 4], [60, 62], 0.3)).toMatchObject({
      slope: 0.5,
      intercept: 60,
      objective: 0,
      onLine: 2,
      unique: true,
    });
    expect(line([0, 1, 2, 2, 7], [61.3, 61.3, 61.3, 61.3, 61.3], 0.8)).toMatchObject({
      slope: 0,
      intercept: 61.3,
      objective: 0,
      onLine: 5,
      unique: true,
    });
  });

  test("points on a line but for their rounding all count as on it", () => {
    const x = [2021.1, 2021.2, 2021.3, 2021.4, 2021.7];
    const fitted = line(
      x,
      x.map((at) => 0.1 + 0.3 * at),
      0.5,
    );
    expect([fitted.onLine, fitted.objective]).toEqual([5, 0]);
    expect(fitted.slope).toBeCloseTo(0.3, 9);
  });

  test("several best lines are owned up to, and one of them given", () => {
    // Any line between the two pairs is as good.
    const fitted = line([0, 0, 1, 1], [0, 1, 0, 1], 0.5);
    expect([fitted.unique, fitted.objective]).toEqual([false, 1]);
    expect(line([0, 0, 1, 1], [0, 1, 0, 1], 0.4).unique).toBe(true);
  });

  test("a year of values in a few milliseconds: 400 points, and 400 that are all the same height", () => {
    const x = Array.from({ length: 400 }, (_, i) => 10 + ((i * 37) % 400) / 50);
    // Time of the processor: a busy machine does not stretch it.
    const started = process.cpuUsage();
    for (const level of [0.03, 0.5, 0.97]) {
      line(
        x,
        x.map((at, i) => 50 + 2 * at + ((i * 61) % 97) / 10),
        level,
      );
      line(
        x,
        x.map(() => 60),
        level,
      );
    }
    expect(process.cpuUsage(started).user / 1000).toBeLessThan(1000);
  });
});

describe("no line, and why", () => {
  test("no point, one point, or all at one week", () => {
    expect(quantileLine([], [], 0.5)).toEqual({ kind: "no-line", n: 0, reason: "too-few" });
    expect(quantileLine([1], [60], 0.5)).toEqual({ kind: "no-line", n: 1, reason: "too-few" });
    expect(quantileLine([1, 1, 1], [60, 61, 65], 0.5)).toEqual({ kind: "no-line", n: 3, reason: "same-x" });
  });
});

describe("wrong calls", () => {
  test.each(WRONG_VALUES)("a speed or a week of %s is refused", (wrong) => {
    expect(() => quantileLine([0, 1, 2], [60, wrong, 62], 0.5)).toThrow(RangeError);
    expect(() => quantileLine([0, 1, wrong], [60, 61, 62], 0.5)).toThrow(RangeError);
  });

  test("a share of 0, 1 or NaN and lists of unequal length are refused", () => {
    for (const wrong of [0, 1, -0.5, 1.5, Number.NaN]) {
      expect(() => quantileLine([0, 1], [60, 61], wrong)).toThrow(/tau above 0 and below 1/);
    }
    expect(() => quantileLine([0, 1], [60], 0.5)).toThrow(/need pairs/);
  });

  test("a slope beyond the range of a double is refused", () => {
    expect(() => quantileLine([0, 1e-200], [0, 1e150], 0.5)).toThrow(/the slope is too large/);
  });
});

describe("laws", () => {
  test.each([
    ["ordinary points", linePoints],
    ["ties everywhere", tied],
  ])("no line through two points has a smaller sum: %s", (_, lists) => {
    fc.assert(
      fc.property(lists, tau, (list, level) => {
        const [x, y] = [weeksOf(list), speedsOf(list)];
        const fitted = line(x, y, level);
        expectNear(fitted.objective, leastObjective(x, y, level), 1e-9);
        expectNear(objective(x, y, level, fitted.slope, fitted.intercept), fitted.objective, 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  test("at most the share tau lies below, at most the rest above, and the line touches two points", () => {
    fc.assert(
      fc.property(tied, tau, (list, level) => {
        const fitted = line(weeksOf(list), speedsOf(list), level);
        const above = list.map(([week, value]) => value - fitted.intercept - fitted.slope * week);
        const count = (side: number) => above.filter((one) => one * side > 1e-9).length;
        expect(count(-1)).toBeLessThanOrEqual(level * list.length + 1e-9);
        expect(count(1)).toBeLessThanOrEqual((1 - level) * list.length + 1e-9);
        expect(fitted.onLine).toBe(list.length - count(1) - count(-1));
        expect(new Set(list.filter((_, i) => Math.abs(above[i]!) <= 1e-9).map(([week]) => week)).size).toBeGreaterThan(
          1,
        );
      }),
      { numRuns: 300 },
    );
  });

  test("a line that is called the only best one is: every line a little off it is worse", () => {
    fc.assert(
      fc.property(tied, tau, (list, level) => {
        const [x, y] = [weeksOf(list), speedsOf(list)];
        const fitted = line(x, y, level);
        const around = Array.from({ length: 720 }, (_, i) => {
          const angle = (i * Math.PI) / 360;
          const [slope, intercept] = [fitted.slope + 1e-4 * Math.cos(angle), fitted.intercept + 1e-4 * Math.sin(angle)];
          return objective(x, y, level, slope, intercept);
        });
        const least = Math.min(...around);
        expect(least).toBeGreaterThanOrEqual(fitted.objective - 1e-10);
        if (fitted.unique) expect(least).toBeGreaterThan(fitted.objective + 1e-9);
      }),
    );
  });

  test("the order of the points moves nothing at all", () => {
    fc.assert(
      fc.property(reordered(tied), tau, ([list, other], level) => {
        expect(line(weeksOf(other), speedsOf(other), level)).toEqual(line(weeksOf(list), speedsOf(list), level));
      }),
    );
  });

  test("upside down, the share below becomes the share above; other units and first weeks follow", () => {
    fc.assert(
      fc.property(linePoints, speed, speed, tau, (list, later, faster, level) => {
        const a = line(weeksOf(list), speedsOf(list), level);
        const [x, y] = [
          weeksOf(list).map((week) => 2 * week + later),
          speedsOf(list).map((value) => -4 * (value + faster)),
        ];
        const b = line(x, y, 1 - level);
        expectNear(b.objective, 4 * a.objective);
        expect(b.unique).toBe(a.unique);
        if (!a.unique) return;
        expectNear(b.slope, -2 * a.slope);
        expectNear(b.intercept + b.slope * (20 + later), -4 * (a.intercept + a.slope * 10 + faster));
        expect(b.onLine).toBe(a.onLine);
      }),
    );
  });

  test("a line added to the points is added to the answer", () => {
    fc.assert(
      fc.property(linePoints, tau, (list, level) => {
        const a = line(weeksOf(list), speedsOf(list), level);
        const b = line(
          weeksOf(list),
          list.map(([week, value]) => value + 3 * week - 7),
          level,
        );
        expectNear(b.objective, a.objective);
        if (a.unique) expectNear(b.slope, a.slope + 3);
      }),
    );
  });

  test("no result is ever NaN or infinite, whatever the size of the values", () => {
    const any = fc.oneof(speed, fc.constantFrom(0, 1e150, -1e150, 1e-300, 5e-324, 61.3));
    fc.assert(
      fc.property(fc.oneof(points, fc.array(fc.tuple(any, any), { maxLength: 12 })), tau, (list, level) => {
        try {
          expect(numbersIn(quantileLine(weeksOf(list), speedsOf(list), level)).every(Number.isFinite)).toBe(true);
        } catch (error) {
          if (!(error instanceof RangeError)) throw error;
          expect(error.message).toMatch(/too large for a double$/);
        }
      }),
      { numRuns: 500 },
    );
  });
});
