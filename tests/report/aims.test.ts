import { describe, expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import type { Drill } from "../../src/schema/pages.ts";
import { input, type Rep, weekLater } from "./season.ts";

const drills: Drill[] = [
  {
    id: "low-tee",
    label: "Low tee",
    aims: [
      { metric: "launch_angle", window: [5, 25] },
      { metric: "exit_velocity", at_least: 80 },
      { metric: "launch_angle", zone: "liners" },
    ],
  },
  { id: "free", label: "Free" },
];
const zones = [{ id: "liners", label: "Liners", exit_velocity: [80, 130], launch_angle: [5, 25] }] as const;
const rep = (week: number, launch: number | null, exit: number | null, more: Partial<Rep> = {}): Rep =>
  ({
    ...{ date: weekLater(week), drill: "low-tee", environment: "tee", bat_speed: 65 },
    ...{ launch_angle: launch, exit_velocity: exit, ...more },
  }) as Rep;
const aimsOf = (reps: readonly Rep[]) =>
  reportFor(input(reps, { season: { drills, zones: zones as never } })).report.aims;

describe("reps inside a drill's aim", () => {
  test("are counted among those that were read, ends of a window included, by aim and day", () => {
    const reps = [rep(0, 5, 80), rep(0, 25, 79.9), rep(0, 25.1, 90), rep(0, null, 85), rep(1, 10, null)];
    const [window, least, zone] = aimsOf(reps);
    expect(window!.days.map(({ inside, of }) => [inside, of])).toEqual([
      [2, 3],
      [1, 1],
    ]);
    expect(window!.all).toMatchObject({ count: 3, of: 4, share: 0.75 });
    expect(least!.all).toMatchObject({ count: 3, of: 4 });
    expect(zone).toMatchObject({ metric: null, zone: "Liners" });
    expect(zone!.all).toMatchObject({ count: 1, of: 3 });
    expect(window).toMatchObject({ first: null, last: null, change: null, dayCount: 2 });
  });

  test("are of that drill alone: no other drill's, no tests, no slaps, none from elsewhere or from another season", () => {
    const other: Partial<Rep>[] = [
      { drill: "free" },
      { purpose: "test" },
      { swing_type: "slap" },
      { place: "home" },
      { date: "2026-07-01" },
    ];
    expect(aimsOf(other.map((more) => rep(0, 10, 90, more)))).toEqual([]);
    expect(aimsOf([rep(0, 10, 90), ...other.map((more) => rep(0, 10, 90, more))])[0]!.all.of).toBe(1);
  });

  test("of first and last days are set beside each other, with the change between the days' shares", () => {
    const reps = Array.from({ length: 9 }, (_, week) =>
      Array.from({ length: 4 }, (_unused, i) =>
        rep(week, i < 1 + Math.floor(week / 3) || (week % 3 === 0 && i === 3) ? 10 : 40, 90),
      ),
    ).flat();
    const [{ days, first, last, change }] = aimsOf(reps) as [ReturnType<typeof aimsOf>[number]];
    expect([first!.days, last!.days, first!.of, last!.of]).toEqual([3, 3, 12, 12]);
    const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
    const shares = days.map(({ share }) => share);
    expect(change!.estimate).toBeCloseTo(mean(shares.slice(-3)) - mean(shares.slice(0, 3)), 12);
    expect(first!.share).toBeCloseTo(first!.count / first!.of, 12);
    expect(change!.ci95[0]).toBeLessThan(change!.estimate);
  });
});
