import { describe, expect, test } from "vitest";
import { phasesOf } from "../../src/report/phases.ts";
import { sinceLine } from "../../src/stats/since-line.ts";

const WEEK_MS = 7 * 86_400_000;
const day = (week: number) => new Date(Date.UTC(2025, 9, 6) + week * WEEK_MS).toISOString().slice(0, 10);
const values = [60, 62, 61, 63, 62, 66, 65, 67, 64, 68];
const sessions = values.map((mean, week) => ({
  date: day(week),
  session: null,
  n: 8,
  mean,
  sd: 1,
  median: mean,
  p90: mean,
  max: mean,
  shift: 0,
}));
const season = {
  name: "Winter",
  start: day(0),
  end: day(12),
  phases: [
    { id: "look", from: day(0), to: day(4) },
    { id: "build", from: day(5), to: day(7) },
    { id: "play", from: day(8), to: day(12) },
  ],
};

describe("a measure since each phase", () => {
  test("is what the contrast of its first day says, with the place of the phase; phases with few days on a side are left out", () => {
    const { step, ci95, df } = sinceLine(
      values.map((_, week) => week),
      values,
      5,
    )!;
    expect(phasesOf(sessions, season)).toEqual([{ phase: 1, estimate: step, ci95, df, before: 5, since: 5 }]);
  });

  test("needs phases and sessions", () => {
    expect(phasesOf(sessions, { ...season, phases: undefined })).toEqual([]);
    expect(phasesOf([], season)).toEqual([]);
  });
});
