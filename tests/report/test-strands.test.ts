import { describe, expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import type { Metric } from "../../src/schema/metric.ts";
import { BUILT_IN_METRICS } from "../../src/schema/metric.ts";
import type { TestResult } from "../../src/schema/season.ts";
import { input, weekLater } from "./season.ts";

const JUMP: Metric = { id: "broad_jump", unit: "in", better: "higher", plausible: [20, 140], decimals: 1, side: "own" };
const result = (week: number, value: number, more: Partial<TestResult> = {}): TestResult => ({
  date: weekLater(week),
  metric: "broad_jump",
  side: null,
  value,
  load: null,
  protocol: null,
  at: { file: "data/tests/a.csv", line: week + 2 },
  ...more,
});
const made = (tests: TestResult[], purpose?: "test") =>
  reportFor(
    input([], {
      season: { metrics: [...BUILT_IN_METRICS, JUMP] },
      athlete: {
        tests,
        profile: {
          name: "Invented One",
          measures: [{ metric: "broad_jump", condition: {}, ...(purpose ? { purpose } : {}) }],
        },
      },
    }),
  ).report;

describe("tests that are no swings", () => {
  test("join the measures, the attempts of a day as one session, and stand in no ledger", () => {
    const report = made([result(0, 70), result(0, 72), result(1, 74)], "test");
    expect(report.series).toMatchObject([
      {
        metric: "broad_jump",
        measure: 0,
        condition: { purpose: "test" },
        sessions: [
          { n: 2, mean: 71 },
          { n: 1, mean: 74 },
        ],
      },
    ]);
    expect(report.ledger).toMatchObject({ read: 0, counted: 0 });
    expect(report.measuresWithSwings).toBe(1);
  });

  test("sides, loads and protocols never meet", () => {
    const report = made([
      result(0, 70, { load: "10 kg" }),
      result(0, 60, { load: "20 kg" }),
      result(0, 50, { protocol: "hands on hips" }),
      result(0, 55, { side: "left" }),
      result(1, 71, { load: "10 kg" }),
    ]);
    const measured = report.series.filter(({ measure }) => measure === 0);
    expect(measured.map(({ n }) => n).sort()).toEqual([1, 1, 1, 2]);
    expect(measured.find(({ condition }) => condition.load === "10 kg")?.sessions.map(({ mean }) => mean)).toEqual([
      70, 71,
    ]);
  });

  test("of another season and of an unknown metric are no series", () => {
    expect(made([result(40, 70), result(0, 70, { metric: "grip" })]).series).toEqual([]);
  });
});
