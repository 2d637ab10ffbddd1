import { expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import { input } from "./season.ts";

const facility = {
  name: "Invented Cage",
  season: { name: "Invented winter", start: "2025-10-08", end: "2025-10-26" },
  groups: [{ id: "evening", members: ["invented-one"] }],
};
const reps = [
  { date: "2025-10-08", environment: "tee", result: "hit", bat_speed: 60 },
  { date: "2025-10-12", environment: "machine", result: "hit", bat_speed: 60 },
  { date: "2025-10-13", environment: "machine", result: "take", bat_speed: null },
  { date: "2025-10-30", environment: "tee", result: "hit", bat_speed: 60 },
];

test("work is told per week from Monday, the empty weeks too; takes and other seasons are no work", () => {
  const { work } = reportFor(input(reps, { season: { facility } })).report;
  expect(work.weeks.map((week) => [week.start, week.days, week.swings])).toEqual([
    ["2025-10-06", 2, 2],
    ["2025-10-13", 0, 0],
    ["2025-10-20", 0, 0],
  ]);
  expect(work.weeks[0]?.byEnvironment).toEqual([
    { environment: "machine", swings: 1 },
    { environment: "tee", swings: 1 },
  ]);
  expect([work.swings, work.days, work.busiestWeek]).toEqual([2, 2, 2]);
});

test("unmeasured blocks of the session log are work; an athlete's own row stands in place of the group's", () => {
  const blocks = [
    { date: "2025-10-14", group: "evening", block: "1", rounds: 3, reps: 5, measured: "none" as const },
    { date: "2025-10-14", athlete_id: "invented-one", block: "1", rounds: 1, reps: 5, measured: "none" as const },
    { date: "2025-10-15", group: "evening", block: "1", rounds: 2, reps: 10, measured: "none" as const },
    { date: "2025-10-15", group: "evening", block: "2", rounds: 2, reps: 10, measured: "speed" as const },
    { date: "2025-10-15", group: "morning", block: "3", rounds: 2, reps: 10, measured: "none" as const },
  ];
  const { work } = reportFor(input(reps, { season: { facility, blocks } })).report;
  expect(work.weeks[1]).toMatchObject({ days: 2, swings: 0, loggedUnmeasured: 25 });
  expect(work.loggedUnmeasured).toBe(25);
});
