import { describe, expect, test } from "vitest";
import { MEASURED_RATES } from "../../src/report/measured-rates.ts";
import { wilson } from "../../src/stats/proportion-ci.ts";
import { falseAlarms, type Rate, tooMany } from "./rates.ts";
import { CHANGED, changed, verdicts } from "./seasons.ts";

/** The long run is `npm run simulate`; this one is small enough for every change, and as strict about what it can tell. */
const SEASONS = 300;
const rates = falseAlarms(SEASONS, "short");

describe("athletes who did not change", () => {
  test.each(rates.map((rate) => [rate.name, rate] as const))("%s: not called changed too often", (_, rate) => {
    expect(tooMany(rate), `${rate.changed} of ${rate.seasons}`).toBe(false);
  });

  test("a cell that is surely above its limit is found", () => {
    const rate: Rate = { name: "", kind: "alike", changed: 45, seasons: 300, limit: 0.1 };
    expect(tooMany(rate)).toBe(true);
    expect(tooMany({ ...rate, changed: 36 })).toBe(false);
  });

  test.each(["independent", "alike", "tests"] as const)("the rate that pages print for %s is borne out", (kind) => {
    const printed = MEASURED_RATES.falseAlarm[kind];
    // The printed rate is the worst cell's: no cell here may lie surely above it, and the worst not surely far below.
    const cells = rates.filter((rate) => rate.kind === kind);
    // One interval in a thousand misses: there are many cells.
    for (const { name, changed: n, seasons } of cells) {
      expect(wilson(n, seasons, 0.999)[0], name).toBeLessThanOrEqual(printed);
    }
    const most = cells.reduce((sum, rate) => Math.max(sum, wilson(rate.changed, rate.seasons, 0.999)[1]), 0);
    expect(most).toBeGreaterThanOrEqual(printed);
  });
});

test("a true change of two of the smallest that matter is seen more often than one of one", () => {
  const forty = CHANGED.filter(({ sessions }) => sessions === 40);
  const [one, two] = forty.map((cell) => changed(verdicts(cell, SEASONS, "short")));
  expect(two!).toBeGreaterThan(one! * 2);
});
