import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type TheilSenLine, theilSen } from "../../src/stats/theil-sen.ts";
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

function line(x: readonly number[], y: readonly number[], level?: number): TheilSenLine {
  const fitted = theilSen(x, y, level);
  if (fitted.kind !== "line") throw new Error(`expected a line, got ${fitted.reason}`);
  return fitted;
}

describe("known answers", () => {
  test("three sessions worked by hand: slopes 2, 1.5 and 1, residuals 1, 1.5, 1", () => {
    const fitted = line([0, 1, 2], [1, 3, 4]);
    expect(fitted.slope).toBe(1.5);
    expect(fitted.interceptMedianResidual).toBe(1);
    expect(fitted.interceptMedians).toBe(1.5);
    expect([fitted.nSlopes, fitted.s]).toEqual([3, 3]);
  });

  test("a gap in the dates counts: the same speeds over other days have another slope", () => {
    expect(line([0, 1, 9], [60, 61, 69]).slope).toBe(1);
    expect(line([0, 1, 2], [60, 61, 69]).slope).toBe(4.5);
  });

  test("one wild session leaves the slope of the other eight", () => {
    const weeks = [0, 1, 2, 3, 4, 5, 6, 7, 8];
    const wild = weeks.map((week) => (week === 4 ? 500 : 60 + week));
    expect(line(weeks, wild).slope).toBe(1);
  });
});

describe("too few sessions", () => {
  test("no session, one session or all on one day give no line, and say so", () => {
    expect(theilSen([], [])).toEqual({ kind: "no-line", n: 0, reason: "too-few" });
    expect(theilSen([1], [60])).toEqual({ kind: "no-line", n: 1, reason: "too-few" });
    expect(theilSen([1, 1], [60, 62])).toEqual({ kind: "no-line", n: 2, reason: "same-x" });
  });

  test("up to four sessions have no 95% interval, tied or not; five have the smallest and the largest slope", () => {
    expect(line([0, 1], [60, 61]).interval).toBeNull();
    expect(line([0, 1, 2, 3], [60, 61, 65, 63]).interval).toBeNull();
    expect(line([0, 1, 2, 3], [60, 60, 60, 63]).interval).toBeNull();
    const five = line([0, 1, 2, 3, 4], [60, 61, 65, 63, 70]).interval;
    // 60 to 61 rises 1 a week, 65 to 63 falls 2, 63 to 70 rises 7: the extremes of the ten slopes.
    expect(five).toEqual({ method: "exact", lower: -2, upper: 7 });
  });

  test("four sessions do have an interval at 90%: each tail of the 24 orders holds one, 1/24 < 1/20", () => {
    expect(line([0, 1, 2, 3], [60, 61, 65, 63], 0.9).interval).toMatchObject({ method: "exact" });
  });

  test("equal speeds have slope 0 and no untied order to rank", () => {
    const flat = line([0, 1, 2, 3, 4, 5], [61, 61, 61, 61, 61, 61]);
    expect([flat.slope, flat.s, flat.varS]).toEqual([0, 0, 0]);
    expect(flat.intervals.exact).toBeNull();
  });
});

describe("which interval is recommended", () => {
  const weeks = Array.from({ length: 11 }, (_, i) => i);
  const wavy = weeks.map((week) => 60 + week + 0.25 * ((week * 7) % 5));

  test("exact up to ten untied sessions, rounded ranks from eleven on and with ties", () => {
    expect(line(weeks.slice(0, 10), wavy.slice(0, 10)).interval?.method).toBe("exact");
    expect(line(weeks, wavy).interval?.method).toBe("rounded");
    expect(line([0, 1, 2, 3, 4, 5, 5], [60, 61, 65, 63, 70, 68, 69]).interval?.method).toBe("rounded");
  });

  test("ranks that end in a half go to the even one: 15 equal slopes have the middle 7.5, 21 have 10.5", () => {
    const flat = (n: number) => line(weeks.slice(0, n), new Array<number>(n).fill(61)).intervals.rounded;
    expect(flat(6)).toMatchObject({ lowerIndex: 8, upperIndex: 9 });
    expect(flat(7)).toMatchObject({ lowerIndex: 10, upperIndex: 11 });
  });

  test("ranks that fell outside the slopes and are held at the ends give no recommended interval", () => {
    // One order of 120 would reach 98% (1/120 < 1/100), but the rounded rank is (10 - 2.326 sqrt(15.67)) / 2 = 0.4.
    const tied = line([0, 1, 2, 3, 4], [60, 61, 65, 61, 70], 0.98);
    expect(tied.intervals.rounded).toMatchObject({ held: true, lowerIndex: 1, upperIndex: 10 });
    expect(tied.interval).toBeNull();
  });

  test("nearly everything tied: no variance of S and no interval, instead of the root of a negative number", () => {
    const x = [0, 0, 0, 0, 0, 0, 0, 0, 0, 1];
    const y = [0, 0, 0, 0, 0, 0, 0, 0, 0, 1];
    const fitted = line(x, y);
    expect([fitted.slope, fitted.varS, fitted.interval]).toEqual([1, null, null]);
  });
});

describe("wrong calls", () => {
  test.each(WRONG_VALUES)("a speed or a day of %s is refused", (wrong) => {
    expect(() => theilSen([0, 1], [60, wrong])).toThrow(RangeError);
    expect(() => theilSen([0, wrong], [60, 61])).toThrow(RangeError);
  });

  test("lists of unequal length, a level of 0 and days too close to divide by are refused", () => {
    expect(() => theilSen([0, 1], [60])).toThrow(RangeError);
    expect(() => theilSen([0, 1], [60, 61], 0)).toThrow(RangeError);
    expect(() => theilSen([0, 1e-300], [0, 1e100])).toThrow(RangeError);
  });
});

describe("laws", () => {
  test("no result is ever NaN or infinite", () => {
    fc.assert(
      fc.property(points, (list) => {
        expect(numbersIn(theilSen(weeksOf(list), speedsOf(list))).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  test("the order in which sessions are listed moves nothing", () => {
    fc.assert(
      fc.property(reordered(linePoints), ([list, other]) => {
        const a = line(weeksOf(list), speedsOf(list));
        const b = line(weeksOf(other), speedsOf(other));
        expectNear(b.slope, a.slope);
        expectNear(b.s, a.s);
        expectNear(b.interval?.lower ?? null, a.interval?.lower ?? null);
        expectNear(b.interval?.upper ?? null, a.interval?.upper ?? null);
      }),
    );
  });

  test("another first day or a fixed speed added leaves slope and interval alone", () => {
    fc.assert(
      fc.property(linePoints, speed, speed, (list, later, faster) => {
        const a = line(weeksOf(list), speedsOf(list));
        const b = line(
          weeksOf(list).map((week) => week + later),
          speedsOf(list).map((value) => value + faster),
        );
        expectNear(b.slope, a.slope);
        expectNear(b.interceptMedians, a.interceptMedians + faster - a.slope * later);
        expectNear(b.interval?.lower ?? null, a.interval?.lower ?? null);
      }),
    );
  });

  test("turned round and in another unit, slope and limits turn round and scale", () => {
    fc.assert(
      fc.property(linePoints, (list) => {
        const a = line(weeksOf(list), speedsOf(list));
        const b = line(
          weeksOf(list),
          speedsOf(list).map((value) => value * -4),
        );
        expectNear(b.slope, a.slope * -4);
        expect(b.s + a.s).toBe(0);
        const { exact } = a.intervals;
        expectNear(b.intervals.exact?.lower ?? null, exact === null ? null : exact.upper * -4);
      }),
    );
  });

  test("every interval holds the slope, and where ranks are exact they cover at least the level", () => {
    fc.assert(
      fc.property(linePoints, (list) => {
        const { slope, intervals, interval } = line(weeksOf(list), speedsOf(list));
        for (const each of [
          intervals.rounded,
          intervals.conservative,
          intervals.interpolated,
          intervals.exact,
          interval,
        ]) {
          if (each === null) continue;
          expect(each.lower ?? slope).toBeLessThanOrEqual(slope + 1e-12);
          expect(each.upper ?? slope).toBeGreaterThanOrEqual(slope - 1e-12);
        }
        if (intervals.exact !== null) expect(intervals.exact.exactCoverage).toBeGreaterThanOrEqual(0.95 - 1e-12);
      }),
    );
  });
});
