import { describe, expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import type { Facility } from "../../src/schema/facility.ts";
import { BUILT_IN_METRICS } from "../../src/schema/metric.ts";
import type { Profile } from "../../src/schema/profile.ts";
import type { Device } from "../../src/schema/tables.ts";
import { welch } from "../../src/stats/welch.ts";
import { input, type Rep, weekLater } from "./season.ts";

const facility: Facility = {
  name: "Invented Cage",
  season: { name: "Invented winter", start: "2025-10-06", end: "2026-02-22" },
  measures: [{ metric: "bat_speed", condition: { environment: "tee" } }],
};
/** Worth 1.5 mph and a window for the attack angle, as a trainer would set them. */
const metrics = BUILT_IN_METRICS.map((metric) =>
  metric.id === "bat_speed" ? { ...metric, smallestWorthwhile: 1.5 } : metric,
);
const here = [60, 61, 60, 62, 61, 63, 62, 64, 63, 64, 63.5, 64.5];
const day = (week: number, mph: number, more: Partial<Rep> = {}): Rep =>
  ({ date: weekLater(week), environment: "tee", device_bat: "knob-1", bat_speed: mph, ...more }) as Rep;
const atHome = (speeds: readonly number[], more: Partial<Rep> = {}, from = 12): Rep[] =>
  speeds.map((mph, i) => day(from + i, mph, { place: "home", ...more }));
const asked = (
  elsewhere: readonly Rep[],
  changes: { season?: object; profile?: Partial<Profile>; here?: readonly Rep[] } = {},
) => {
  const reps = [...(changes.here ?? here.map((mph, week) => day(week, mph))), ...elsewhere];
  const season = { facility, metrics, ...changes.season };
  return reportFor(input(reps, { season, athlete: { profile: { name: "Invented One", ...changes.profile } } })).report;
};

describe("did it hold elsewhere?", () => {
  test("swings at home are a series of their own and never part of the measure here", () => {
    const report = asked(atHome([40, 40, 40]));
    expect(report.series.map(({ measure, condition, n }) => [measure, condition.place ?? null, n])).toEqual([
      [0, null, 12],
      [null, "home", 3],
    ]);
    const pooled = asked(atHome([40, 40, 40], { ball: "soft" }), {
      here: here.flatMap((mph, week) => ["soft", "hide"].map((ball) => day(week, mph, { ball }))),
    });
    expect(pooled.series[0]).toMatchObject({ measure: 0, pooled: true, n: 24 });
  });

  test("a measure that was only swung elsewhere is looked at there", () => {
    const report = asked([], { here: here.map((mph, week) => day(week, mph, { place: "club" })) });
    expect(report.series[0]).toMatchObject({ measure: 0, n: 12 });
  });

  test("the difference is that of Welch between the days there and the last block here", () => {
    const there = [63.8, 64.2, 63.6, 64.4];
    const report = asked(atHome(there));
    const [checkIn] = report.checkIns;
    const found = welch(here.slice(-4), there)!;
    expect(report.series[0]!.last!.sessions).toBe(4);
    expect(checkIn).toMatchObject({ place: "home", series: 1, here: 0, worth: 1.5, answer: "held", why: null });
    expect(checkIn!.there).toMatchObject({ sessions: 4, n: 4 });
    expect(checkIn!.difference!.estimate).toBeCloseTo(found.difference, 12);
    expect(checkIn!.difference!.ci95[0]).toBeCloseTo(found.interval![0], 12);
    expect(checkIn!.difference!.df).toBeCloseTo(found.df!, 12);
  });

  test("it did not hold where the whole range lies below, and nothing is said where the range takes in both", () => {
    expect(asked(atHome([58, 58.5, 57.8, 58.2])).checkIns[0]).toMatchObject({ answer: "lower", why: null });
    expect(asked(atHome([59, 66, 61, 67])).checkIns[0]).toMatchObject({ answer: "cannot-tell", why: null });
  });

  test("a small loss for certain still held when it is smaller than what matters", () => {
    const steady = Array.from({ length: 12 }, (_, week) => day(week, 60 + (week % 2) * 0.02));
    const report = asked(atHome([59.5, 59.52, 59.5, 59.51]), { here: steady });
    expect(report.checkIns[0]!.difference!.ci95[1]).toBeLessThan(0);
    expect(report.checkIns[0]!.answer).toBe("held");
  });

  test.each([
    ["too-few-there", atHome([64, 64])],
    ["too-few-there", atHome([64, 64, 64, 64], {}, 0)],
    ["not-here", atHome([64, 64, 64], { environment: "live" })],
    ["not-here", atHome([64, 64, 64], { ball: "soft" })],
    ["other-device", atHome([64, 64, 64], { device_bat: "another" })],
    ["device-unknown", atHome([64, 64, 64], { device_bat: null })],
  ] as const)("no answer, %s", (why, reps) => {
    expect(asked(reps).checkIns[0]).toMatchObject({ difference: null, answer: null, why });
  });

  test("no answer where the set-up here changed, where here are few days, or where another game bat was swung", () => {
    const devices: Device[] = [
      { id: "knob-1", at: { file: "data/devices.csv", line: 2 }, measures: "bat_speed" },
      {
        id: "knob-1",
        at: { file: "data/devices.csv", line: 3 },
        measures: "bat_speed",
        from: weekLater(6),
        firmware: "2",
      },
    ] as unknown as Device[];
    expect(asked(atHome([64, 64, 64]), { season: { devices } }).checkIns[0]).toMatchObject({ why: "set-up-changed" });
    const few = here.slice(0, 5).map((mph, week) => day(week, mph));
    expect(asked(atHome([64, 64, 64]), { here: few }).checkIns[0]).toMatchObject({ why: "too-few-here" });
    const game = { implement: "game" };
    const bats = {
      profile: {
        game_bat: [
          { id: "a", from: weekLater(0) },
          { id: "b", from: weekLater(12) },
        ],
      },
      here: here.map((mph, week) => day(week, mph, game)),
    };
    expect(asked(atHome([64, 64, 64], game), bats).checkIns[0]).toMatchObject({ why: "other-bat" });
  });

  test("without a smallest difference that matters, holding is not claimed", () => {
    expect(asked(atHome([64, 63.8, 64.2]), { season: { metrics: BUILT_IN_METRICS } }).checkIns[0]).toMatchObject({
      answer: null,
      why: "no-yardstick",
    });
  });

  test("tests and metrics that are no measure are not asked about", () => {
    expect(asked(atHome([64, 64, 64], { purpose: "test" })).checkIns).toEqual([]);
    expect(asked(atHome([64, 64, 64], { attack_angle: 5, bat_speed: null })).checkIns).toEqual([]);
  });
});
