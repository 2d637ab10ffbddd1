import { describe, expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import { inZone, type Zone } from "../../src/report/zones.ts";
import type { Goal, Profile } from "../../src/schema/profile.ts";
import { input, type Rep, table, weekLater } from "./season.ts";

const liners: Zone = { id: "liners", label: "Line drives", exit_velocity: [80, 100], launch_angle: [8, 20] };
const pulled: Zone = { id: "pulled", label: "Pulled", spray: [-45, -15] };
const hit = (exit_velocity: number | null, launch_angle: number | null, more: Partial<Rep> = {}): Rep =>
  ({ date: weekLater(0), exit_velocity, launch_angle, ...more }) as Rep;

describe("a ball in a zone", () => {
  test("has every reading in its range, both ends included", () => {
    const balls = [hit(80, 8), hit(100, 20), hit(79.9, 8), hit(90, 20.1), hit(90, 15)];
    expect(inZone(liners, table(balls), undefined)).toEqual([1, 1, 0, 0, 1]);
  });

  test("is not judged without a reading that the zone needs", () => {
    expect(inZone(liners, table([hit(90, null), hit(null, 10), hit(90, 10)]), undefined)).toEqual([null, null, 1]);
  });

  test("is pulled to left field by a right-handed hitter and to right field by a left-handed one", () => {
    const balls = [
      { date: weekLater(0), spray_angle: -30, side: "right" },
      { date: weekLater(0), spray_angle: -30, side: "left" },
      { date: weekLater(0), spray_angle: 30, side: "left" },
    ];
    expect(inZone(pulled, table(balls), "switch")).toEqual([1, 0, 1]);
  });

  test("takes the hitter's side where the swing names none, and is not judged for a switch hitter", () => {
    const ball = [{ date: weekLater(0), spray_angle: 30, exit_velocity: 90 }];
    expect(inZone(pulled, table(ball), "left")).toEqual([1]);
    expect(inZone(pulled, table(ball), "right")).toEqual([0]);
    expect(inZone(pulled, table(ball), "switch")).toEqual([null]);
    expect(inZone(pulled, table(ball), undefined)).toEqual([null]);
  });
});

describe("what a zone leaves open", () => {
  test("a blank side is the hitter's own, unless other swings were made from the other side", () => {
    const ball = (side: string | null) => ({ date: weekLater(0), spray_angle: 30, side });
    expect(inZone(pulled, table([ball(null), ball("left")]), "left")).toEqual([1, 1]);
    expect(inZone(pulled, table([ball(null), ball("right")]), "left")).toEqual([null, 0]);
  });

  test("the side does not matter to a zone that does not ask for spray", () => {
    expect(inZone(liners, table([hit(90, 10, { spray_angle: null })]), "switch")).toEqual([1]);
  });

  test("a column that was never read puts no ball in a zone that asks for it, nor out of it", () => {
    expect(inZone(pulled, table([hit(90, 10)]), "right")).toEqual([null]);
  });

  test("a zone that asks for nothing holds nothing", () => {
    expect(inZone({ id: "all", label: "All" }, table([hit(90, 10)]), "right")).toEqual([null]);
  });
});

describe("a goal of balls in a zone", () => {
  // Nine sessions of four balls; one more in the zone every three sessions.
  const reps = Array.from({ length: 9 }, (_, week) =>
    Array.from({ length: 4 }, (__, i) =>
      hit(i <= Math.floor(week / 3) ? 90 : 60, 12, { date: weekLater(week), environment: "tee" }),
    ),
  ).flat();
  const goals: Goal[] = [{ zone: "liners", condition: { environment: "tee" }, share: 0.5, by: "2026-02-20" }];
  const report = (list: readonly Rep[]) =>
    reportFor(
      input(list, { season: { zones: [liners, pulled] }, athlete: { profile: { name: "Invented One", goals } } }),
    ).report;

  test("is told as a share of the balls that were read, with its zone", () => {
    const [goal] = report(reps).goals;
    expect(goal).toMatchObject({
      metric: "zone",
      unit: "share",
      kind: "zone",
      zone: { id: "liners", exitVelocity: [80, 100], launchAngle: [8, 20], spray: null },
      baseline: 0.25,
      current: 0.75,
      progress: 2,
      status: "met-clear",
    });
  });

  test("adds nothing to the series", () => {
    expect(report(reps).series.filter(({ metric }) => metric.startsWith("zone"))).toEqual([]);
  });

  test("without a single ball read has no figures", () => {
    const [goal] = report(reps.map((rep) => ({ ...rep, launch_angle: null }))).goals;
    expect(goal).toMatchObject({ kind: "zone", baseline: null, current: null, status: "too-few" });
  });

  test("looks at one side of a switch hitter at a time", () => {
    const sides = reps.flatMap((rep) => [
      { ...rep, side: "right" },
      { ...rep, side: "left", exit_velocity: 60 },
    ]);
    expect(report(sides).goals.map(({ condition, current }) => [condition.side, current])).toEqual([
      ["left", 0],
      ["right", 0.75],
    ]);
  });

  test("leaves tests and swings that do not count out", () => {
    const more = reps.flatMap((rep) => [rep, { ...rep, exit_velocity: 60, effort: "technical" }]);
    expect(report(more).goals[0]).toMatchObject({ baseline: 0.25, current: 0.75, currentN: { sessions: 3, n: 12 } });
  });

  test("keeps its versions beside it", () => {
    const first: Goal = { ...goals[0]!, set: "2025-10-06" } as Goal;
    const second: Goal = { ...goals[0]!, share: 0.8, set: "2025-12-01" } as Goal;
    const athlete = { profile: { name: "Invented One", goals: [second, first] } };
    const told = reportFor(input(reps, { season: { zones: [liners] }, athlete })).report.goals;
    expect(told.map(({ share, replacedOn, status }) => [share, replacedOn, status === null])).toEqual([
      [0.5, "2025-12-01", true],
      [0.8, null, false],
    ]);
  });
});

describe("a new set-up in the middle of a zone's season", () => {
  const season = (more: (week: number) => Partial<Rep>) =>
    Array.from({ length: 9 }, (_, week) =>
      hit(90, 12, { date: weekLater(week), implement: "game", spray_angle: -20, side: "right", ...more(week) }),
    );
  const told = (
    reps: readonly Rep[],
    zone: Zone,
    devices: Parameters<typeof input>[1] = {},
    profile: Partial<Profile> = {},
  ) => {
    const goals: Goal[] = [{ zone: zone.id, share: 0.5, by: "2026-02-20" }];
    return reportFor(
      input(reps, {
        season: { zones: [zone], ...devices.season },
        athlete: { profile: { name: "Invented One", ...profile, goals } },
      }),
    ).report.goals[0]!;
  };
  const screens = season((week) => ({ device_ball: week < 5 ? "old" : "new" }));
  const measures = "exit_velocity launch_angle spray_angle";
  const devices = [
    { id: "old", measures },
    { id: "new", measures, from: weekLater(5) },
  ];

  test("a new screen breaks it: there is no start and end to compare", () => {
    expect(told(screens, liners)).toMatchObject({ baseline: 1, current: 1 });
    expect(told(screens, liners, { season: { devices } })).toMatchObject({
      baseline: null,
      current: null,
      status: "too-few",
      probabilityByDate: null,
    });
  });

  test("a new bat sensor does not", () => {
    const sensors = season((week) => ({ device_bat: week < 5 ? "old" : "new", bat_speed: 60 }));
    const lines = devices.map((line) => ({ ...line, measures: "bat_speed" }));
    expect(told(sensors, liners, { season: { devices: lines } }).current).toBe(1);
  });

  test("a second screen that reads one of the zone's readings breaks it too", () => {
    const lanes = season(() => ({ lane: "a" }));
    const lines = [
      { id: "radar", measures: "exit_velocity", lane: "a" },
      { id: "camera", measures: "launch_angle spray_angle", lane: "a" },
      { id: "camera-2", measures: "launch_angle spray_angle", lane: "a", from: weekLater(5) },
    ];
    expect(told(lanes, liners, { season: { devices: lines } }).current).toBeNull();
    const speedAlone: Zone = { id: "hard", label: "Hard", exit_velocity: [80, 100] };
    expect(told(lanes, speedAlone, { season: { devices: lines } }).current).toBe(1);
  });

  test("a new game bat breaks a zone that asks for exit velocity, and no other", () => {
    const game_bat = [
      { id: "bat-a", from: weekLater(0) },
      { id: "bat-b", from: weekLater(5) },
    ];
    const named = season((week) => ({ implement: week < 5 ? "bat-a" : "bat-b" }));
    expect(told(named, liners, {}, { game_bat }).current).toBeNull();
    expect(told(named, pulled, {}, { game_bat }).current).toBe(1);
  });
});
