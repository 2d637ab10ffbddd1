import { describe, expect, test } from "vitest";
import { drawSvg } from "../../src/charts/draw.ts";
import { stacks } from "../../src/charts/week-stacks.ts";
import { weeksChart } from "../../src/charts/weeks.ts";
import { day, PERIOD, WEEKS_WORDS, weeks } from "./examples.ts";

const two = [
  {
    start: day(0),
    days: 2,
    swings: 50,
    byEnvironment: [
      { environment: "machine", swings: 30 },
      { environment: "tee", swings: 20 },
    ],
    loggedUnmeasured: 15,
  },
  { start: day(7), days: 1, swings: 40, byEnvironment: [{ environment: "tee", swings: 40 }], loggedUnmeasured: 0 },
];
const made = (parts: typeof two) =>
  weeksChart("weeks-0", { weeks: parts, period: PERIOD, away: [] }, WEEKS_WORDS, "en");

describe("the columns of work per week", () => {
  test("stack the environment with most swings first, work that was not measured last", () => {
    const data = made(two).data;
    const heights = (name: string) => data[name]?.map((row) => [row.y, row.y2]);
    expect(heights("columns0")).toEqual([
      [0, 20],
      [0, 40],
    ]);
    expect(heights("columns1")).toEqual([[20, 50]]);
    expect(heights("columns4")).toEqual([[50, 65]]);
  });

  test("lie inside their own week", () => {
    const row = made(two).data.columns0![1]!;
    expect(Number(row.x)).toBeGreaterThan(Date.parse(day(7)));
    expect(Number(row.x2)).toBeLessThan(Date.parse(day(14)));
  });

  test("reach the axis' top at most, and never go without zero", () => {
    const chart = made(two);
    expect(chart.signals.yDomain).toEqual([0, 80]);
    expect(chart.signals.yTicks).toEqual([0, 20, 40, 60, 80]);
  });

  test("are named once each, in the order of the stack", () => {
    expect(made(two).data.keyWords?.map((row) => row.text)).toEqual(["Tee", "Machine", "logged, not measured"]);
  });

  test("no swing is lost or counted twice, whatever the number of environments", () => {
    for (const names of [
      ["tee"],
      ["tee", "live", "dry", "machine"],
      ["tee", "live", "dry", "machine", "overhand", "front-toss"],
    ]) {
      const season = weeks(20, names, true);
      const drawn = stacks(season)
        .flatMap((stack) => stack.swings)
        .reduce((a, b) => a + b, 0);
      expect(drawn).toBe(season.reduce((sum, week) => sum + week.swings + week.loggedUnmeasured, 0));
      expect(stacks(season).length).toBeLessThanOrEqual(5);
    }
  });

  test("four environments keep their names; of five the least two are taken together", () => {
    const kinds = (names: readonly string[]) => stacks(weeks(20, names, false)).map((stack) => stack.name.kind);
    expect(kinds(["tee", "live", "dry", "machine"])).toEqual(Array(4).fill("environment"));
    expect(kinds(["tee", "live", "dry", "machine", "overhand"])).toEqual([
      "environment",
      "environment",
      "environment",
      "others",
    ]);
  });

  test("work without a written environment is shown as such", () => {
    const week = {
      start: day(0),
      days: 1,
      swings: 9,
      byEnvironment: [{ environment: null, swings: 9 }],
      loggedUnmeasured: 0,
    };
    const chart = weeksChart("weeks-0", { weeks: [week], period: PERIOD, away: [] }, WEEKS_WORDS, "en");
    expect(chart.data.keyWords?.[0]?.text).toBe("not noted");
  });

  test("a season without work draws an axis and no column", async () => {
    const chart = made([]);
    expect(chart.data.keyWords).toEqual([]);
    expect(await drawSvg(chart)).not.toContain("var(--mark)");
  });
});
