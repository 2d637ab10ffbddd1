import { expect, test } from "vitest";
import { SEASON_END } from "./calendar.ts";
import { generateDemo } from "./generate.ts";
import { judged } from "./judged.ts";

const { told, problems } = await judged(generateDemo());
const goals = told.flatMap(({ report }) => report.goals.map((goal) => ({ id: report.athlete.id, ...goal })));

test("the demo has goals of every kind, and one of nearly every status", () => {
  expect(new Set(goals.map(({ kind }) => kind))).toEqual(new Set(["target", "window", "at-least", "zone"]));
  expect(new Set(goals.flatMap(({ status }) => status ?? []))).toEqual(
    new Set(["met-clear", "met-unsure", "behind", "cannot-tell", "too-few"]),
  );
  expect(problems.filter(({ code }) => code === "repeated-goal")).toEqual([]);
});

test("Thaddeus has one zone for each side, in the words of both languages", () => {
  const zones = goals.filter(({ kind }) => kind === "zone");
  expect(zones.map(({ id, condition }) => [id, condition.side])).toEqual([
    ["thaddeus-marchbane", "right"],
    ["thaddeus-marchbane", "left"],
  ]);
  for (const { zone, baseline, current } of zones) {
    expect(Object.keys(zone?.label ?? {})).toEqual(["en", "es"]);
    for (const share of [baseline, current]) expect(share).toBeGreaterThan(0.1);
    for (const share of [baseline, current]) expect(share).toBeLessThan(0.9);
  }
});

test("Corwin's goal was set anew when he had passed it", () => {
  const versions = goals.filter(({ id, kind }) => id === "corwin-tallowby" && kind === "target");
  expect(versions.map(({ set, replacedOn, status }) => [set, replacedOn, status])).toEqual([
    ["2025-10-08", "2026-01-05", null],
    ["2026-01-05", null, "met-unsure"],
  ]);
  const series = told
    .find(({ athlete }) => athlete.id === "corwin-tallowby")
    ?.report.series.find(({ metric, measure, condition }) => {
      return metric === "bat_speed" && measure !== null && condition.environment === "machine";
    });
  const before = series?.sessions.filter(({ date }) => date >= "2025-12-08" && date < "2026-01-01") ?? [];
  expect(before.length).toBeGreaterThan(3);
  const december = before.reduce((sum, { mean }) => sum + mean, 0) / before.length;
  expect(december).toBeGreaterThan(versions[0]?.target ?? Number.POSITIVE_INFINITY);
});

test("Anselm's day lies after the season, and his chance is told", () => {
  const ahead = goals.filter(({ by }) => by > SEASON_END);
  expect(ahead.map(({ id, metric }) => [id, metric])).toEqual([["anselm-drovik", "bat_speed"]]);
  expect(ahead[0]?.probabilityByDate).toBeGreaterThan(0.1);
  expect(ahead[0]?.probabilityByDate).toBeLessThan(0.9);
  expect(goals.filter(({ probabilityByDate }) => probabilityByDate !== null)).toHaveLength(1);
});
