import { expect, test } from "vitest";
import { judge } from "../../src/report/judge.ts";
import { BUILT_IN_METRICS } from "../../src/schema/metric.ts";
import { type Rep, table } from "./season.ts";

const season = { start: "2025-10-06", end: "2026-02-22" };
const reason = (rep: Partial<Rep>) =>
  judge(table([{ date: "2025-11-03", bat_speed: 61, ...rep } as Rep]), BUILT_IN_METRICS, { season })[0];

test.each<[string, Partial<Rep>, string | null]>([
  ["a full swing counts", { swing_type: "full" }, null],
  ["a swing of no stated kind counts", {}, null],
  ["a slap counts", { swing_type: "slap" }, null],
  ["a waggle that the sensor took for a swing does not", { pairing: "no-swing" }, "no-swing"],
  ["a swing whose ball nobody saw does not, unless the facility says so", { pairing: "ball-not-recorded" }, "no-swing"],
  ["a swing joined with its ball counts", { pairing: "paired" }, null],
  ["a bunt does not", { swing_type: "bunt" }, "bunt"],
  ["a check swing does not", { swing_type: "check" }, "check"],
  ["a practice swing does not", { swing_type: "practice" }, "practice"],
  ["a take is no swing to count", { result: "take" }, "take"],
  ["a technical swing does not", { effort: "technical" }, "technical"],
  ["the day before the season does not", { date: "2025-10-05" }, "other-season"],
  ["the first day of the season counts", { date: "2025-10-06" }, null],
  ["the last day of the season counts", { date: "2026-02-22" }, null],
  ["the day after it does not", { date: "2026-02-23" }, "other-season"],
  ["a miss without any reading counts, as part of the denominator", { bat_speed: null, result: "miss" }, null],
  ["a row with neither reading nor result is no swing", { bat_speed: null }, "no-swing"],
])("%s", (_, rep, expected) => {
  expect(reason(rep)).toBe(expected);
});

test("where the facility counts swings whose ball was not seen, they count; waggles still do not", () => {
  const reps = table([
    { date: "2025-11-03", bat_speed: 61, pairing: "ball-not-recorded" },
    { date: "2025-11-03", bat_speed: 25, pairing: "no-swing" },
  ] as Rep[]);
  expect(judge(reps, BUILT_IN_METRICS, { season, ball_not_recorded: "count" })).toEqual([null, "no-swing"]);
});
