import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import { input, weekLater } from "./season.ts";

/**
 * `datasets::morley` as five training days of 20 swings, one a week, read as milliseconds so that no plausible range stands
 * in the way. Expected: R 4.2.2, stats::lm on the five group means with stats::qt, as in the project's reference file
 * group-trend.json, case `morley` (part `plain`), relative tolerance 1e-9.
 */
test("a season of known data gives the slope, interval and change that R gives for its day means", () => {
  const [, ...lines] = readFileSync("tests/reference/report/morley.csv", "utf8").trim().split("\n");
  const reps = lines.map((line) => {
    const [group, value] = line.split(",");
    return { date: weekLater(Number(group!.slice(1)) - 1), reaction: Number(value) };
  });
  const metric = {
    id: "reaction",
    unit: "ms",
    better: "lower",
    plausible: [0, 2000],
    decimals: 0,
    side: "own",
  } as const;
  const { report } = reportFor(input(reps, { season: { metrics: [metric] } }));
  const series = report.series[0]!;

  expect(series.sessions.map((one) => one.mean)).toEqual([909, 856, 845, 820.5, 831.5]);
  expect(series.sessions.map((one) => one.median)).toEqual([940, 845, 855, 815, 810]);
  const near = (got: number | undefined, expected: number) =>
    expect(Math.abs(got! - expected)).toBeLessThan(1e-9 * Math.abs(expected));
  near(series.trend.sessionLine?.perWeek, -19.05);
  near(series.trend.sessionLine?.se, 6.04614202060563);
  near(series.trend.sessionLine?.ci95[0], -38.2915223346969);
  near(series.trend.sessionLine?.ci95[1], 0.191522334696987);
  near(series.change?.estimate, -76.1999999999999);
  near(series.change?.ci95[0], -153.166089338788);
  near(series.change?.ci95[1], 0.76608933878795);
  expect(series.change?.df).toBe(3);
});
