import { describe, expect, test } from "vitest";
import { forReader } from "../../src/report/reader.ts";
import { reportFor } from "../../src/report/report.ts";
import { randomFrom } from "../demo/random.ts";
import { input, type Rep, weekLater } from "./season.ts";

/** Twenty training days of five swings; on the tenth and after, so much is added to each metric. */
function season(bat: number, ball: number, more: Partial<Rep> = {}): Rep[] {
  const random = randomFrom("twenty days");
  return Array.from({ length: 20 }, (_, week) => ({
    week,
    day: random.normal(0, 0.3),
    other: random.normal(0, 0.3),
  })).flatMap(({ week, day, other }) =>
    Array.from({ length: 5 }, () => ({
      date: weekLater(week),
      environment: "tee",
      implement: "game",
      bat_speed: 60 + 0.05 * week + day + random.normal(0, 0.5) + (week < 9 ? 0 : bat),
      exit_velocity: 75 + other + random.normal(0, 0.5) + (week < 9 ? 0 : ball),
      ...more,
    })),
  );
}
const found = (reps: Rep[], changes: Parameters<typeof input>[1] = {}) =>
  reportFor(input(reps, changes)).report.suggestions.map((one) => [one.metric, one.date, one.otherSide]);

describe("a step that nobody wrote down", () => {
  test("in the bat's figures alone looks like a sensor", () => {
    expect(found(season(3, 0))).toEqual([["bat_speed", weekLater(9), "still"]]);
  });

  test("in the ball's alone likewise", () => {
    expect(found(season(0, 4))).toEqual([["exit_velocity", weekLater(9), "still"]]);
  });

  test("in both at once says so: a bat, or the hitter, moves both", () => {
    expect(found(season(3, 4))).toEqual([
      ["bat_speed", weekLater(9), "moved"],
      ["exit_velocity", weekLater(9), "moved"],
    ]);
  });

  test("where nothing measured the other side, cannot say", () => {
    expect(found(season(3, 0, { exit_velocity: null }))).toEqual([["bat_speed", weekLater(9), "not-measured"]]);
  });

  test("in one drill says whether the bat moved in the others too: a sensor moves all of them", () => {
    const tee = season(3, 0);
    const toss = (bat: number) => season(bat, 0).map((rep) => ({ ...rep, environment: "front-toss" }));
    const of = (reps: Rep[]) => reportFor(input(reps)).report.suggestions.map((one) => one.sameSide);
    expect(of([...tee, ...toss(3)])).toEqual([
      { searched: 1, moved: 1 },
      { searched: 1, moved: 1 },
    ]);
    expect(of([...tee, ...toss(0)])).toEqual([{ searched: 1, moved: 0 }]);
  });

  test("carries its size and the sessions on either side", () => {
    const [one] = reportFor(input(season(3, 0))).report.suggestions;
    expect(one).toMatchObject({ kind: "possible-set-up-change", previous: weekLater(8), sessions: [9, 11] });
    expect(Math.abs(one!.size - 3)).toBeLessThan(0.8);
    expect(one!.p).toBeLessThan(0.01);
  });

  test("is never assumed: the series stays one line with its change", () => {
    const { report } = reportFor(input(season(3, 0)));
    expect(report.series[0]?.breaks).toEqual([]);
    expect(report.series[0]?.change).not.toBeNull();
  });

  test("is for the desk alone, and so are flags", () => {
    const { report } = reportFor(
      input([...season(3, 0), { date: weekLater(3), environment: "tee", implement: "game", bat_speed: 99 }]),
    );
    expect([report.suggestions.length, report.flags.length]).toEqual([1, 1]);
    for (const reader of ["family", "club"] as const) {
      expect(forReader(report, reader)).toMatchObject({ suggestions: [], flags: [] });
    }
  });
});

describe("no step is suggested", () => {
  test("in a steady season", () => {
    expect(found(season(0, 0))).toEqual([]);
  });

  test("where devices.csv says what happened", () => {
    const devices = [
      { id: "old", measures: "bat_speed" },
      { id: "new", measures: "bat_speed", from: weekLater(9) },
    ];
    const reps = season(3, 0).map((rep) => ({ ...rep, device_bat: rep.date < weekLater(9) ? "old" : "new" }));
    expect(found(reps, { season: { devices } })).toEqual([]);
  });

  test("from days of three swings", () => {
    const thin = season(3, 0).filter((_, i) => i % 5 < 3);
    expect(found(thin)).toEqual([]);
  });
});
