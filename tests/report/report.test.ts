import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import { AthleteReport } from "../../src/report/schema.ts";
import { input, type Rep, weekLater } from "./season.ts";

const rising: Rep[] = [0, 1, 2, 3].flatMap((week) => [
  { date: weekLater(week), bat_speed: 60 + week },
  { date: weekLater(week), bat_speed: 62 + week },
]);

describe("a season of one metric", () => {
  const { report, judged } = reportFor(input(rising));
  const series = report.series[0]!;

  test("rows without any context make one series whose condition is empty", () => {
    expect(report.series.map((one) => [one.metric, one.condition, one.pooled, one.measure])).toEqual([
      ["bat_speed", {}, false, 0],
    ]);
    expect(judged).toEqual(rising.map(() => null));
  });

  test("a training day is one session whose figures come from its swings", () => {
    expect(series.sessions[0]).toEqual({
      date: "2025-10-06",
      session: null,
      n: 2,
      mean: 61,
      sd: Math.SQRT2,
      median: 61,
      p90: 62,
      max: 62,
      shift: 0,
    });
  });

  test("a hitter who gains exactly one mph a week gains three over three weeks, without any doubt", () => {
    expect(series.trend.sessionLine).toMatchObject({ perWeek: 1, se: 0, df: 2, start: 61, end: 64 });
    expect(series.change).toMatchObject({ estimate: 3, ci95: [3, 3], method: "session-line", verdict: "too-few" });
    expect(series.trend.theilSen?.perWeek).toBe(1);
    expect(series.trend.mannKendall).toMatchObject({ s: 6 });
    expect(series.spanDays).toBe(21);
  });

  test("four sessions are too few for a first and a last block", () => {
    expect([series.first, series.last]).toEqual([null, null]);
  });

  test("the report passes its own schema", () => {
    expect(() => AthleteReport.parse(report)).not.toThrow();
  });
});

test("two sessions have values and no change", () => {
  const { report } = reportFor(input(rising.slice(0, 4)));
  expect(report.series[0]?.sessions).toHaveLength(2);
  expect(report.series[0]?.change).toBeNull();
  expect(report.series[0]?.trend.sessionLine).toBeNull();
});

test("an athlete without a readable rep still has a report, with no series", () => {
  const { report } = reportFor(
    input([], {
      athlete: { profile: { name: "Invented One", goals: [{ metric: "bat_speed", target: 70, by: "2026-02-20" }] } },
    }),
  );
  expect(report.series).toEqual([]);
  expect(report.goals).toMatchObject([{ target: 70, baseline: null, current: null, progress: null }]);
  expect(() => AthleteReport.parse(report)).not.toThrow();
});

test("a named session splits a day", () => {
  const reps = ["morning", "evening"].map((session, i) => ({ date: "2025-10-06", session, bat_speed: 60 + i }));
  const { report } = reportFor(input(reps));
  expect(report.series[0]?.sessions.map((one) => [one.session, one.mean])).toEqual([
    ["evening", 61],
    ["morning", 60],
  ]);
});

test("the order in which reps stand in the files moves no figure", () => {
  const rep = fc.record({
    date: fc.integer({ min: 0, max: 19 }).map(weekLater),
    environment: fc.constantFrom("tee", "machine"),
    bat_speed: fc.integer({ min: 400, max: 800 }).map((tenths) => tenths / 10),
  });
  fc.assert(
    fc.property(fc.array(rep, { minLength: 1, maxLength: 40 }), (reps) => {
      const forward = reportFor(input(reps)).report;
      const backward = reportFor(input(reps.toReversed())).report;
      const round = (report: AthleteReport) =>
        JSON.parse(JSON.stringify(report.series), (_, value) =>
          typeof value === "number" ? Number(value.toPrecision(9)) + 0 : value,
        );
      expect(round(backward)).toEqual(round(forward));
    }),
  );
});

test("no input of readable reps makes a number that is not finite", () => {
  const reps = fc.array(
    fc.record({
      date: fc.integer({ min: -10, max: 30 }).map(weekLater),
      exit_velocity: fc.option(fc.double({ min: 10, max: 130, noNaN: true })),
      bat_speed: fc.option(fc.double({ min: 15, max: 110, noNaN: true })),
      result: fc.constantFrom("hit", "foul", "miss", "take", null),
      swing_type: fc.constantFrom("full", "slap", "bunt", "practice", "check", null),
      environment: fc.constantFrom("tee", "machine", null),
      pitch_speed: fc.option(fc.double({ min: 5, max: 115, noNaN: true })),
    }),
    { maxLength: 60 },
  );
  fc.assert(
    fc.property(reps, (list) => {
      const { report, judged } = reportFor(input(list));
      expect(() => AthleteReport.parse(report)).not.toThrow();
      const notCounted = Object.values(report.ledger.notCounted).reduce((sum, n) => sum + n, 0);
      expect(report.ledger.counted + notCounted).toBe(list.length);
      expect(judged).toHaveLength(list.length);
    }),
  );
});
