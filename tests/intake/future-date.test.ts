import { expect, test } from "vitest";
import { seasonOf } from "./season-of.ts";

/** The small season ends on 22 February 2026. */
const datedOn = (date: string) =>
  seasonOf({ "data/swings/a.csv": `athlete_id,date,bat_speed_mph\nana-l,${date},61\n` });

test("a day within a year after the season is another season's, and readable", async () => {
  const season = await datedOn("2027-02-23");
  expect(season.setAside).toEqual([]);
});

test("a day later than that is a mistyped year, set aside", async () => {
  const season = await datedOn("2027-02-24");
  expect(season.setAside.map(({ line, reason, athlete }) => [line, reason, athlete])).toEqual([
    [2, "future-date", "ana-l"],
  ]);
});
