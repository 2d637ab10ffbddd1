import { expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import type { Goal } from "../../src/schema/profile.ts";
import { input, weekLater } from "./season.ts";

const swings = Array.from({ length: 9 }, (_, week) =>
  [-2, 2].map((off) => ({
    date: weekLater(week),
    environment: "machine",
    bat_speed: 64 + week + off,
    attack_angle: week + off,
  })),
).flat();
const goal = (one: Goal) =>
  reportFor(input(swings, { athlete: { profile: { name: "Invented One", goals: [one] } } })).report.goals[0]!;

test("progress toward a target is the part of the way from the first block to it", () => {
  // First block: weeks 0-2, mean 65. Last block: weeks 6-8, mean 71. Of the 10 mph to 75, 6 are done.
  const found = goal({ metric: "bat_speed", condition: { environment: "machine" }, target: 75, by: "2026-02-20" });
  expect(found).toMatchObject({ kind: "target", baseline: 65, current: 71, progress: 0.6, status: null });
  expect(found.baselineN).toEqual({ sessions: 3, n: 6 });
});

test("a goal passed has progress above one", () => {
  expect(goal({ metric: "bat_speed", target: 68, by: "2026-02-20" }).progress).toBe(2);
});

test("a hitter who fell back has progress below zero", () => {
  // Lower is better: from 65 the goal of 60 lies below, and the hitter went up to 71.
  const slower = swings.map(({ bat_speed, ...rep }) => ({ ...rep, swing_time: bat_speed / 400 }));
  const profile = { name: "Invented One", goals: [{ metric: "swing_time", target: 60 / 400, by: "2026-02-20" }] };
  expect(reportFor(input(slower, { athlete: { profile } })).report.goals[0]?.progress).toBeCloseTo(-1.2, 12);
});

test("a goal that the hitter stood on or beyond from the start has no progress to tell", () => {
  expect(goal({ metric: "bat_speed", target: 65, by: "2026-02-20" }).progress).toBeNull();
  expect(goal({ metric: "bat_speed", target: 62, by: "2026-02-20" })).toMatchObject({
    baseline: 65,
    current: 71,
    progress: null,
  });
});

test("a window goal looks at the share of swings inside it, both ends included", () => {
  // Attack angles of the last block: 4 8, 5 9, 6 10. In 4 to 8: both, one, one.
  const found = goal({ metric: "attack_angle", window: [4, 8], share: 0.8, by: "2026-02-20" });
  expect(found.current).toBeCloseTo((1 + 0.5 + 0.5) / 3, 12);
  expect(found).toMatchObject({ kind: "window", window: [4, 8], share: 0.8, target: null });
});

test("an at-least goal looks at the share of swings at the value or over it", () => {
  const found = goal({ metric: "bat_speed", at_least: 72, share: 0.5, by: "2026-02-20" });
  expect([found.kind, found.baseline, found.current]).toEqual(["at-least", 0, 0.5]);
});

test("a goal for a condition that was never measured is shown without figures", () => {
  expect(goal({ metric: "bat_speed", condition: { environment: "live" }, target: 70, by: "2026-02-20" })).toMatchObject(
    {
      condition: { environment: "live" },
      baseline: null,
      current: null,
    },
  );
});
