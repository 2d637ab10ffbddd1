import { expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import type { LoggedBlock } from "../../src/schema/season.ts";
import { input } from "./season.ts";

const facility = {
  name: "Invented Cage",
  season: { name: "Invented winter", start: "2025-10-08", end: "2025-10-26" },
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

const block = (date: string, swings: number, over: Partial<LoggedBlock> = {}): LoggedBlock => ({
  ...{ date, session: null, block: "1", part: null, context: {}, rounds: 1, reps: swings, swings },
  ...{ measured: null, assigned: {}, from: [] },
  ...over,
});
const loggedOn = (day: string, log: readonly LoggedBlock[], own: Parameters<typeof input>[0] = reps) => {
  const { work } = reportFor(input(own, { season: { facility }, athlete: { log } })).report;
  return work.weeks.find(({ start }) => start === day);
};

test("blocks of the session log that nobody measured are work", () => {
  const log = [block("2025-10-14", 5, { measured: "none" }), block("2025-10-15", 20, { measured: "none" })];
  expect(loggedOn("2025-10-13", log)).toMatchObject({ days: 2, swings: 0, loggedUnmeasured: 25 });
});

test("a block that no rep was given to is work that was not measured, whatever the log hoped for", () => {
  const log = [block("2025-10-15", 20), block("2025-10-15", 10, { block: "2", measured: "speed" })];
  expect(loggedOn("2025-10-13", log)).toMatchObject({ loggedUnmeasured: 30 });
});

test("a block with reps is not counted twice", () => {
  const own = [{ date: "2025-10-15", environment: "tee", result: "hit", bat_speed: 60, assigned: "count" }];
  const log = [block("2025-10-15", 1, { assigned: { count: 1 } }), block("2025-10-15", 7, { block: "2" })];
  expect(loggedOn("2025-10-13", log, own)).toMatchObject({ swings: 1, loggedUnmeasured: 7 });
});

test("reps that tell their own environment may be any block's, so that only blocks without a device add to them", () => {
  const log = [block("2025-10-12", 20), block("2025-10-12", 6, { block: "2", measured: "none" })];
  expect(loggedOn("2025-10-06", log)).toMatchObject({ swings: 2, loggedUnmeasured: 6 });
});
