import { describe, expect, test } from "vitest";
import { testWindows, withinWindows } from "../../../src/report/change/test-days.ts";
import { endsOf, fewDaysChange, windowChange } from "../../../src/report/change/tests-change.ts";

const season = {
  name: "Invented winter",
  start: "2025-10-01",
  end: "2026-02-28",
  baseline: { from: "2025-10-01", to: "2025-10-20" },
  final: { from: "2026-02-10", to: "2026-02-28" },
};
const days = (...list: [string, number][]) => list.map(([date, mean]) => ({ date, mean }));
// t(0.975) with 40 degrees of freedom, from printed tables (from memory): 2.0211.
const T40 = 2.0211;

describe("days of a test at both ends of a season", () => {
  const four = days(["2025-10-01", 60], ["2025-10-20", 62], ["2026-02-10", 63], ["2026-02-28", 65]);

  test("are those in the two windows, both ends included", () => {
    expect(testWindows([...four, ...days(["2025-10-21", 99], ["2026-02-09", 99])], season)).toEqual({
      first: [60, 62],
      last: [63, 65],
    });
  });

  test("are those of the outer thirds where no window is named", () => {
    const { baseline: _, final: __, ...open } = season;
    // 150 days: the first third ends on 20 November, the last begins on 9 January.
    const ends = days(["2025-11-20", 60], ["2025-11-21", 99], ["2026-01-08", 99], ["2026-01-09", 65]);
    expect(testWindows(ends, open)).toEqual({ first: [60], last: [65] });
  });

  test("scatter about their own window's mean alone", () => {
    // (60 - 61)^2 + (62 - 61)^2 + (63 - 64)^2 + (65 - 64)^2 = 4 with 2 degrees of freedom.
    expect(withinWindows({ first: [60, 62], last: [63, 65] })).toEqual({ squares: 4, df: 2 });
    expect(withinWindows({ first: [60], last: [] })).toEqual({ squares: 0, df: 0 });
  });
});

describe("two test days at either end", () => {
  const windows = { first: [60, 62], last: [63, 65] };

  test("differ by the means of their windows, judged by the group's scatter where that is larger", () => {
    // Own SD sqrt(4 / 2) = 1.414; the group's is 2. Standard error 2 sqrt(1/2 + 1/2) = 2.
    const found = windowChange(windows, { sd: 2, df: 40, athletes: 20 })!;
    expect([found.method, found.estimate, found.df, found.judged]).toEqual(["test-windows", 3, 40, true]);
    expect(found.ci95[0]).toBeCloseTo(3 - T40 * 2, 3);
    expect(found.ci95[1]).toBeCloseTo(3 + T40 * 2, 3);
  });

  test("and by the athlete's own where that is larger", () => {
    const found = windowChange(windows, { sd: 1, df: 40, athletes: 20 })!;
    expect(found.ci95[1]).toBeCloseTo(3 + T40 * Math.SQRT2, 3);
  });

  test("have no verdict without a group", () => {
    const found = windowChange(windows, null)!;
    expect([found.judged, found.df]).toEqual([false, 2]);
  });

  test("are two days: one is too few", () => {
    expect(windowChange({ first: [60], last: [63, 65] }, { sd: 2, df: 40, athletes: 20 })).toBeNull();
  });
});

describe("one test day at an end", () => {
  // A typical error of 1 mph: two days differ by less than 1.96 sqrt(2) = 2.77 in 95 of 100 unchanged athletes.
  const noise = {
    typicalError: 1,
    ci95: null,
    df: null,
    athletes: null,
    mdc95: 1.96 * Math.SQRT2,
    source: "configured" as const,
  };

  test("is within or beyond noise, and never a verdict", () => {
    expect(fewDaysChange({ first: [60], last: [62.7] }, noise)).toMatchObject({ beyondNoise: false, judged: false });
    expect(fewDaysChange({ first: [60], last: [62.8] }, noise)).toMatchObject({ beyondNoise: true, p: null });
    expect(fewDaysChange({ first: [63], last: [60] }, noise)).toMatchObject({ beyondNoise: true, estimate: -3 });
  });

  test("against a mean of two is surer: 1.96 sqrt(1 + 1/2) = 2.40", () => {
    expect(fewDaysChange({ first: [60], last: [62.3, 62.3] }, noise)?.beyondNoise).toBe(false);
    expect(fewDaysChange({ first: [60], last: [62.5, 62.5] }, noise)?.beyondNoise).toBe(true);
  });

  test("says nothing where the noise is not known, or an end has none", () => {
    expect(fewDaysChange({ first: [60], last: [64] }, null)).toBeNull();
    expect(fewDaysChange({ first: [60], last: [] }, noise)).toBeNull();
  });

  test("outside the windows the first and the last day stand for the ends", () => {
    const two = days(["2025-11-05", 60], ["2025-12-05", 61], ["2026-01-05", 64]);
    expect(endsOf(two, season)).toEqual({ first: [60], last: [64] });
  });
});
