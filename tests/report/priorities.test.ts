import { expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import { input, type Rep, weekLater } from "./season.ts";

const swing = (week: number, drill: string, more: Partial<Rep> = {}): Rep =>
  ({ date: weekLater(week), environment: "tee", drill, bat_speed: 60 + week, ...more }) as Rep;
const facility = {
  ...{ name: "Invented Cage", season: { name: "Invented winter", start: "2025-10-06", end: "2026-02-22" } },
  measures: [
    { metric: "exit_velocity", condition: {} },
    { metric: "bat_speed", condition: { environment: "tee" } },
  ],
};
const page = { file: "", body: "", bodyLine: 1 };
const block = { session: null, part: null, rounds: 1, reps: 12, swings: 12, from: [] };

test("a priority's strand tells what was done for it, what moved, and what is next", () => {
  const reps = [
    ...[0, 1, 2, 3, 4, 5].flatMap((week) => [swing(week, "turns"), swing(week, "turns")]),
    swing(2, "turns", { result: "take" }),
    swing(3, "plane"),
    swing(40, "turns"),
  ];
  const assessment = {
    ...page,
    front: {
      date: "2025-10-06",
      priorities: [
        { id: "a", text: "Turn first", measures: ["bat_speed"], drills: ["turns", "mirror", "never"] },
        { id: "b", text: "Nothing named" },
      ],
    },
  };
  const item = { purpose: "again", sets: 2, reps: 6 };
  const plan = {
    ...page,
    front: {
      items: [
        { ...item, drill: "plane" },
        { ...item, drill: "mirror" },
      ],
    },
  };
  const log = [
    { ...block, date: weekLater(1), block: "9", context: { drill: "mirror" }, measured: "none" as const, assigned: {} },
    { ...block, date: weekLater(6), block: "9", context: { drill: "mirror" }, measured: "none" as const, assigned: {} },
  ];
  const drills = [{ id: "turns", label: { en: "Turns", es: "Giros" } }];
  const made = input(reps, { season: { facility, drills }, athlete: { assessment, plan, log } });
  const { assessment: told, series } = reportFor(made).report;
  const [first, second] = told!.priorities;
  expect(first!.did).toEqual([
    { drill: "turns", label: { en: "Turns", es: "Giros" }, swings: 12, logged: 0, days: 6 },
    { drill: "mirror", label: "mirror", swings: 0, logged: 24, days: 2 },
    { drill: "never", label: "never", swings: 0, logged: 0, days: 0 },
  ]);
  expect(first!.moved.map((index) => series[index]!.metric)).toEqual(["bat_speed"]);
  expect(first!.next).toEqual([1]);
  expect(second).toEqual({ id: "b", text: "Nothing named", did: [], moved: [], next: [] });
});
