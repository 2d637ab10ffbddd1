import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lag1 } from "../../src/stats/lag1.ts";
import { pairedOffset } from "../../src/stats/offset.ts";
import { ols } from "../../src/stats/ols.ts";
import { type SessionLine, sessionLine } from "../../src/stats/session-line.ts";
import { randomFrom } from "../demo/random.ts";
import { expectNear, linePoints, speed, speedsOf, WRONG_VALUES, weeksOf } from "./samples.ts";

function line(weeks: readonly number[], values: readonly number[]): SessionLine {
  const fitted = sessionLine(weeks, values);
  if (fitted.kind !== "line") throw new Error(`expected a line, got ${fitted.reason}`);
  return fitted;
}

describe("change over a season", () => {
  test("three sessions over four weeks worked by hand: 0.75 a week, 3 in all, t with 1 degree of freedom", () => {
    const fitted = line([0, 2, 4], [1, 3, 4]);
    const seChange = 4 * (Math.sqrt(1 / 6) / Math.sqrt(8));
    expect(fitted.perWeek).toBeCloseTo(0.75, 14);
    expect(fitted.spanWeeks).toBe(4);
    expect(fitted.change).toBeCloseTo(3, 13);
    expect(fitted.ci95![0]).toBeCloseTo(3 - Math.tan(Math.PI * 0.475) * seChange, 11);
    expect(fitted.ci90![1]).toBeCloseTo(3 + Math.tan(Math.PI * 0.45) * seChange, 11);
  });

  test("six evenly spaced sessions show a change only beyond 3.3 session SDs: t(4) sqrt(12 (n-1) / (n (n+1)))", () => {
    const weeks = [0, 1, 2, 3, 4, 5];
    const values = [60, 63, 61, 64, 62, 65];
    const fitted = line(weeks, values);
    const residualSquares = values
      .map((value, i) => value - (62.5 + fitted.perWeek * (weeks[i]! - 2.5)))
      .reduce((sum, residual) => sum + residual ** 2, 0);
    const half = fitted.ci95![1] - fitted.change;
    // 2.7764451 is t(0.975) with 4 degrees of freedom, from printed tables (from memory).
    expect(half / Math.sqrt(residualSquares / 4)).toBeCloseTo(2.7764451 * Math.sqrt((12 * 5) / (6 * 7)), 6);
  });

  test("the error is the plain line's, wider by the likeness of neighbours in order of time, whatever order they come in", () => {
    const weeks = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];
    // Slow waves: neighbours are alike.
    const values = [60, 61, 63, 64, 63, 61, 60, 60, 62, 64];
    const fitted = line(weeks, values);
    const plain = ols(weeks, values);
    if (plain.kind !== "line") throw new Error("no line");
    const left = values.map((value, i) => value - plain.meanY - plain.slope * (weeks[i]! - plain.meanX));
    expect(fitted.lag1).toBeCloseTo(lag1(left)!, 12);
    expect(fitted.inflation).toBeGreaterThan(1.2);
    expect(fitted.sePerWeek).toBeCloseTo(plain.seSlope! * fitted.inflation, 12);
    const order = [7, 2, 9, 0, 5, 1, 8, 3, 6, 4];
    const mixed = line(
      order.map((i) => weeks[i]!),
      order.map((i) => values[i]!),
    );
    expectNear(mixed.lag1, fitted.lag1);
    expectNear(mixed.sePerWeek, fitted.sePerWeek);
    expectNear(mixed.df, fitted.df);
  });

  test("two sessions of one day follow each other in the order given", () => {
    const weeks = [0, 0, 1, 2, 2, 3];
    const values = [60, 64, 61, 62, 66, 63];
    const plain = ols(weeks, values);
    if (plain.kind !== "line") throw new Error("no line");
    const left = values.map((value, i) => value - plain.meanY - plain.slope * (weeks[i]! - plain.meanX));
    expect(line(weeks, values).lag1).toBeCloseTo(lag1(left)!, 12);
  });

  test("no session, one session or one day give no line; two sessions a change without interval", () => {
    expect(sessionLine([], [])).toEqual({ kind: "no-line", n: 0, reason: "too-few" });
    expect(sessionLine([1], [60])).toEqual({ kind: "no-line", n: 1, reason: "too-few" });
    expect(sessionLine([1, 1], [60, 61])).toEqual({ kind: "no-line", n: 2, reason: "same-x" });
    const two = line([0, 4], [60, 62]);
    expect([two.change, two.df]).toEqual([2, 0]);
    expect([two.sePerWeek, two.ci95PerWeek, two.ci95, two.ci90]).toEqual([null, null, null, null]);
  });

  test.each(WRONG_VALUES)("a session value or a week of %s is refused", (wrong) => {
    expect(() => sessionLine([0, 1], [60, wrong])).toThrow(RangeError);
    expect(() => sessionLine([wrong, 1], [60, 61])).toThrow(RangeError);
  });

  test("the first day chosen and a fixed speed added do not move the change", () => {
    fc.assert(
      fc.property(linePoints, speed, speed, (list, later, faster) => {
        const a = line(weeksOf(list), speedsOf(list));
        const b = line(
          weeksOf(list).map((week) => week + later),
          speedsOf(list).map((value) => value + faster),
        );
        expectNear(b.change, a.change);
        expectNear(b.ci95?.[0] ?? null, a.ci95?.[0] ?? null, 1e-6);
      }),
    );
  });

  test("both intervals hold the change, and 95% holds 90%", () => {
    fc.assert(
      fc.property(linePoints, (list) => {
        const { n, change, ci95, ci90 } = line(weeksOf(list), speedsOf(list));
        if (ci95 === null || ci90 === null) {
          expect(n).toBe(2);
          return;
        }
        expect(ci90[0]).toBeLessThanOrEqual(change);
        expect(ci90[1]).toBeGreaterThanOrEqual(change);
        expect(ci95[0]).toBeLessThanOrEqual(ci90[0]);
        expect(ci95[1]).toBeGreaterThanOrEqual(ci90[1]);
      }),
    );
  });
});

describe("a line over two devices", () => {
  const weeks = [0, 1, 2, 3];
  const values = [60, 63, 61, 64];
  const shift = { shares: [1, 1, 0, 0], se: 0.5, df: 19 };

  test("worked by hand: the first two of four weeks weigh -0.3 and -0.1 in the slope, so 0.16 of the offset's variance is added", () => {
    const plain = line(weeks, values);
    const carried = sessionLine(weeks, values, [shift]);
    if (carried.kind !== "line") throw new Error("expected a line");
    const added = 0.16 * 0.25;
    const own = plain.sePerWeek! ** 2;
    expect(carried.perWeek).toBe(plain.perWeek);
    expect(carried.sePerWeek).toBeCloseTo(Math.sqrt(own + added), 13);
    expect(carried.df).toBeCloseTo((own + added) ** 2 / (own ** 2 / 2 + added ** 2 / 19), 11);
    // The change goes over three weeks.
    const half = (carried.ci95PerWeek![1] - carried.ci95PerWeek![0]) / 2;
    expect(carried.ci95![1] - carried.change).toBeCloseTo(3 * half, 12);
  });

  test("an offset that is known exactly, or stands in every session, widens nothing", () => {
    for (const known of [
      { ...shift, se: 0 },
      { ...shift, shares: [1, 1, 1, 1] },
    ]) {
      const carried = sessionLine(weeks, values, [known]);
      if (carried.kind !== "line") throw new Error("expected a line");
      expectNear(carried.sePerWeek, line(weeks, values).sePerWeek);
    }
  });

  test("two sessions have no error that a shift could add to, and no shift leaves the line as it is", () => {
    const two = sessionLine([0, 4], [60, 62], [{ shares: [1, 0], se: 0.5, df: 19 }]);
    expect(two).toEqual(line([0, 4], [60, 62]));
    expect(sessionLine(weeks, values, [])).toEqual(line(weeks, values));
  });

  test("shares for another number of sessions are refused", () => {
    expect(() => sessionLine(weeks, values, [{ ...shift, shares: [1] }])).toThrow(RangeError);
  });

  test("95 % intervals hold the true change in about 95 of 100 seasons whose earlier half was shifted by an estimated offset", () => {
    const random = randomFrom("a line over two devices");
    const days = Array.from({ length: 16 }, (_, i) => i);
    const runs = 2000;
    let held = 0;
    for (let run = 0; run < runs; run += 1) {
      // New reads 2.5 more, of which 20 swings seen by both tell with an error of 1.5 / sqrt(20); sessions scatter by 1.
      const offset = pairedOffset(Array.from({ length: 20 }, () => random.normal(2.5, 1.5)))!;
      const read = days.map((day) => 60 + 0.2 * day + random.normal(0, 1) + (day < 8 ? 0 : 2.5));
      const joined = read.map((value, day) => value + (day < 8 ? offset.offset : 0));
      const fitted = sessionLine(days, joined, [{ ...offset, shares: days.map((day) => (day < 8 ? 1 : 0)) }]);
      if (fitted.kind !== "line") throw new Error("expected a line");
      if (fitted.ci95![0] <= 3 && fitted.ci95![1] >= 3) held += 1;
    }
    // Four standard errors of a count: sqrt(0.95 x 0.05 / 2000) = 0.5 %.
    expect(Math.abs(held / runs - 0.95)).toBeLessThan(0.02);
  });
});
