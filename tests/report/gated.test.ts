import { describe, expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import type { Profile } from "../../src/schema/profile.ts";
import { input, type Rep, weekLater } from "./season.ts";

/** Two machine swings a week: one over 66 whose ball is hit hard, one under whose ball is not. */
const reps: Rep[] = Array.from({ length: 12 }, (_, week) => [
  { date: weekLater(week), environment: "machine", implement: "b-33", bat_speed: 70, exit_velocity: 90, result: "hit" },
  { date: weekLater(week), environment: "machine", implement: "b-33", bat_speed: 60, exit_velocity: 70, result: "hit" },
]).flat();
const MARK = { applies: { environment: "machine" }, at_least: 66 };
const profileWith = (gates: Profile["gates"]): Profile => ({
  name: "Invented One",
  game_bat: "b-33",
  gates,
  measures: [
    { metric: "bat_speed", condition: { environment: "machine" } },
    { metric: "exit_velocity", condition: { environment: "machine" } },
  ],
});
const made = (list: readonly Rep[], gates: Profile["gates"]) =>
  reportFor(input(list, { athlete: { profile: profileWith(gates) } }));
const seriesOf = ({ report }: ReturnType<typeof made>, metric: string) =>
  report.series.find((series) => series.metric === metric)!;

describe("a bat-speed mark", () => {
  const gated = made(reps, [MARK]);

  test("keeps the ball's flight out and leaves the bat's speed in", () => {
    expect(seriesOf(gated, "exit_velocity")).toMatchObject({ n: 12, of: { swings: 12, hit: 12 } });
    expect(seriesOf(gated, "exit_velocity").sessions.every(({ mean }) => mean === 90)).toBe(true);
    expect(seriesOf(gated, "bat_speed")).toMatchObject({ n: 24 });
    expect(seriesOf(gated, "bat_speed").sessions.every(({ mean }) => mean === 65)).toBe(true);
  });

  test("is accounted for in the ledger and in a report of its own", () => {
    expect(gated.report.ledger).toMatchObject({ counted: 12, notCounted: { "under-mark": 12 } });
    expect(gated.report.gate).toMatchObject({ judged: 24, passed: 12, underMark: 12, noSpeed: 0 });
    expect(gated.report.gate?.marks).toEqual([
      {
        applies: { environment: ["machine"] },
        from: null,
        atLeast: 66,
        share: null,
        days: null,
        best: null,
        judged: 24,
        passed: 12,
      },
    ]);
  });

  test("shows the ungated figure beside the gated one, and how both move with the mark", () => {
    const [effect] = gated.report.gate!.effects;
    expect(effect).toMatchObject({ metric: "exit_velocity", gated: { n: 12, last: 90 }, ungated: { n: 24, last: 80 } });
    expect(effect?.moves.map(({ by, n }) => [by, n])).toEqual([-3, -2, -1, 0, 1, 2, 3].map((by) => [by, 12]));
    const near = made(
      reps.map((rep) => (rep.bat_speed === 60 ? { ...rep, bat_speed: 64.5 } : rep)),
      [MARK],
    );
    expect(near.report.gate?.effects[0]?.moves.map(({ n }) => n)).toEqual([24, 24, 12, 12, 12, 12, 12]);
  });

  test("does not touch other environments, slaps and what it does not apply to", () => {
    const others: Rep[] = [
      { date: weekLater(1), environment: "tee", bat_speed: 50, exit_velocity: 60, result: "hit" },
      {
        date: weekLater(1),
        environment: "machine",
        swing_type: "slap",
        bat_speed: 40,
        exit_velocity: 50,
        result: "hit",
      },
    ];
    expect(made([...reps, ...others], [MARK]).report.ledger.counted).toBe(14);
  });
});

describe("a swing that cannot be judged", () => {
  const rep = (more: Rep | object): Rep => ({ date: weekLater(1), environment: "machine", ...more });

  test("has a ball and no bat speed: it is neither passed nor failed", () => {
    const found = made([...reps, rep({ exit_velocity: 88, result: "hit" }), rep({ result: "miss" })], [MARK]);
    expect(found.report.gate).toMatchObject({ judged: 26, passed: 12, noSpeed: 2 });
    expect(found.report.ledger.notCounted).toEqual({ "under-mark": 12, "no-speed-to-judge": 2 });
    expect(seriesOf(found, "exit_velocity").of).toMatchObject({ swings: 12, miss: 0 });
  });

  test("of a sensor that reads another thing alone is no ball, and stays", () => {
    const found = made([...reps, rep({ attack_angle: 8 })], [MARK]);
    expect(found.report.ledger.counted).toBe(13);
  });
});

describe("several marks", () => {
  test("the latest by date stands, each from its day on", () => {
    const later = { applies: { environment: "machine" }, at_least: 75, from: weekLater(6) };
    const found = made(reps, [later, MARK]);
    expect(found.report.gate?.marks.map(({ judged, passed }) => [judged, passed])).toEqual([
      [12, 0],
      [12, 6],
    ]);
    expect(found.report.ledger.notCounted).toEqual({ "under-mark": 18 });
  });

  test("a bat is named by its id, its role or as the game bat", () => {
    for (const implement of ["game", "b-33"]) {
      const found = made(reps, [{ applies: { implement: ["other", implement] }, at_least: 66 }]);
      expect(found.report.gate?.passed, implement).toBe(12);
    }
    expect(made(reps, [{ applies: { implement: "other" }, at_least: 66 }]).report.gate).toMatchObject({
      judged: 0,
      passed: 0,
    });
  });

  test("no mark, no report of one", () => {
    expect(made(reps, undefined).report.gate).toBeNull();
    expect(made(reps, []).report.ledger.counted).toBe(24);
  });
});

describe("a share of the recent best", () => {
  test("lets the first day through and judges the days after by it", () => {
    const day = (week: number, speeds: readonly number[]): Rep[] =>
      speeds.map((speed) => ({
        date: weekLater(week),
        environment: "machine",
        implement: "b-33",
        bat_speed: speed,
        exit_velocity: 80,
        result: "hit",
      }));
    const found = made(
      [...day(0, [70, 70, 70, 70, 70, 40]), ...day(1, [64, 62])],
      [{ applies: { environment: "machine" }, share_of_recent_best: 0.9, days: 28 }],
    );
    // 63 is nine tenths of 70.
    expect(found.judged).toEqual([null, null, null, null, null, null, null, "under-mark"]);
  });
});
