import { describe, expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import { input, type Rep, weekLater } from "./season.ts";

const season = (
  days: number,
  device: (week: number) => string,
  side: "device_bat" | "device_ball" = "device_bat",
): Rep[] =>
  Array.from({ length: days }, (_, week) => ({
    date: weekLater(week),
    implement: "game",
    bat_speed: device(week) === "old" ? 60 : 63,
    exit_velocity: 70,
    [side]: device(week),
  }));
const swapped = season(10, (week) => (week < 5 ? "old" : "new"));
const devices = [{ id: "old" }, { id: "new", from: weekLater(5) }];
const find = (reps: Rep[], changes: Parameters<typeof input>[1], metric: string) =>
  reportFor(input(reps, changes)).report.series.find((one) => one.metric === metric)!;

describe("a sensor that was replaced in mid-season", () => {
  const series = find(swapped, { season: { devices } }, "bat_speed");

  test("breaks the line on the day devices.csv puts the new one into use", () => {
    expect(series.breaks).toEqual([{ date: weekLater(5), kind: "bat-sensor", to: "new", bridge: null, bat: null }]);
    expect(series.stretches.map((one) => [one.sessions, one.mean])).toEqual([
      [5, 60],
      [5, 63],
    ]);
  });

  test("leaves no change, trend or block that would cross it", () => {
    expect([series.change, series.first, series.last, series.trend.sessionLine, series.trend.mannKendall]).toEqual([
      null,
      null,
      null,
      null,
      null,
    ]);
  });

  test("does not touch what the other device measured", () => {
    expect(find(swapped, { season: { devices } }, "exit_velocity").breaks).toEqual([]);
  });

  test("does not touch an athlete whose swings never name it", () => {
    expect(
      find(
        season(10, () => "old"),
        { season: { devices } },
        "bat_speed",
      ).breaks,
    ).toEqual([]);
  });

  test("does not break a line that begins with it", () => {
    expect(find(swapped.slice(5), { season: { devices } }, "bat_speed").breaks).toEqual([]);
  });
});

test("two sensors used side by side without a date are no break", () => {
  const reps = season(10, (week) => (week % 2 ? "old" : "new"));
  expect(find(reps, { season: { devices: [{ id: "old" }, { id: "new" }] } }, "bat_speed").breaks).toEqual([]);
});

describe("a new game bat", () => {
  const profile = {
    name: "Invented One",
    game_bat: [
      { id: "a", from: weekLater(0) },
      { id: "b", from: weekLater(6) },
    ],
    goals: [{ metric: "bat_speed", condition: { implement: "game" }, target: 70, by: "2026-02-20" }],
  };
  const changes = { athlete: { profile } };

  test.each(["bat_speed", "exit_velocity"])("breaks the line of %s with it", (metric) => {
    expect(find(swapped, changes, metric).breaks).toEqual([
      { date: weekLater(6), kind: "game-bat", to: "b", bridge: null, bat: null },
    ]);
  });

  test("breaks no line of another bat", () => {
    const reps = swapped.map((rep) => ({ ...rep, implement: "heavy" }));
    expect(find(reps, changes, "bat_speed").breaks).toEqual([]);
  });

  test("leaves the goal's progress open, for start and end were not measured with one set-up", () => {
    expect(reportFor(input(swapped, changes)).report.goals[0]).toMatchObject({ baseline: null, progress: null });
  });
});

test("a new game bat tells what it has more than the one before, where both are described", () => {
  const game_bat = [
    { id: "a", from: "2025-10-06" },
    { id: "b", from: weekLater(6) },
  ];
  const swings = Array.from(
    { length: 12 },
    (_, week): Rep => ({ date: weekLater(week), implement: "game", bat_speed: 60 }),
  );
  const told = (implement: object) =>
    find(
      swings,
      {
        season: {
          implements: [
            { id: "a", length_in: 32, weight_oz: 29 },
            { id: "b", ...implement },
          ],
        },
        athlete: { profile: { name: "Invented One", game_bat } },
      },
      "bat_speed",
    ).breaks[0]!.bat;
  expect(told({ length_in: 33, weight_oz: 30.5 })).toEqual({ lengthIn: 1, weightOz: 1.5 });
  expect(told({ length_in: 33 })).toEqual({ lengthIn: 1, weightOz: null });
});
