import { describe, expect, test } from "vitest";
import { strangeFigures } from "../../src/report/note-audit.ts";
import { lookUp, referencesIn, referencesOf } from "../../src/report/references.ts";
import { reportFor } from "../../src/report/report.ts";
import { textFindings } from "../../src/report/texts.ts";
import { input, type Rep, weekLater } from "./season.ts";

const REPS = Array.from({ length: 12 }, (_, week) =>
  ["machine", "tee"].flatMap((environment, at) =>
    [0, 1].map(
      (rep): Rep => ({
        ...{ date: weekLater(week), environment, bat_speed: 60 + 5 * at + week * 0.5 + rep + (week % 3) * 0.4 },
        ...{ exit_velocity: 70 + week + rep },
      }),
    ),
  ),
).flat();
const facility = {
  ...{ name: "Invented Cage", season: { name: "Invented winter", start: "2025-10-06", end: "2026-02-22" } },
  measures: [
    { metric: "bat_speed", condition: { environment: "machine" } },
    { metric: "bat_speed", condition: { environment: "tee" } },
  ],
};
const made = input(REPS, { season: { facility } });
const { report } = reportFor(made);
const { series } = report;
const machine = series.findIndex((one) => one.measure === 0);

describe("a reference", () => {
  test.each([
    ["bat_speed machine: start", "/first/mean", "mph", false],
    ["bat_speed machine: end", "/last/mean", "mph", false],
    ["bat-speed  Machine :change", "/change/estimate", "mph", true],
    ["bat_speed machine: swings", "/n", null, false],
    ["bat_speed machine: days", "/sessionCount", null, false],
  ])("%s leads to the season's figure", (text, at, unit, signed) => {
    expect(lookUp(text, series)).toEqual({
      ...{ text, kind: "figure", words: null, series: machine, at: [`/series/${machine}${at}`], unit, signed },
      decimals: unit === null ? 0 : 1,
    });
  });

  test("may ask for the range of a change, a chart, or the coach's own words", () => {
    const at = `/series/${machine}`;
    expect(lookUp("bat_speed machine: range", series)).toMatchObject({
      ...{ kind: "range", at: [`${at}/change/ci95/0`, `${at}/change/ci95/1`] },
    });
    expect(lookUp("bat_speed machine: chart", series)).toMatchObject({ kind: "chart", series: machine });
    expect(lookUp("as written: from 68 to 73", series)).toMatchObject({
      kind: "words",
      words: "from 68 to 73",
      at: [],
    });
  });

  test.each([
    ["bat_speed machine", "form"],
    ["bat_speed: start: end", "form"],
    [": start", "form"],
    ["bat_speed machine: middle", "part"],
    ["hip_turn: start", "metric"],
    ["bat_speed live: start", "no-series"],
    ["bat_speed: start", "several"],
    ["exit_velocity tee: chart", "no-value"],
  ])("%s leads nowhere: %s", (text, why) => {
    expect(lookUp(text, series)).toMatchObject({ text, why });
  });

  test("is found with its line, and stands in the report once", () => {
    const body = "One.\n[[bat_speed machine: start]] and [[bat_speed tee: end]]\n\n[[bat_speed machine: start]]";
    expect(referencesIn(body).map(({ line }) => line)).toEqual([2, 2, 4]);
    expect(referencesOf([body, "[[nothing]]"], series).map(({ text }) => text)).toEqual([
      "bat_speed machine: start",
      "bat_speed tee: end",
    ]);
  });

  test("that leads nowhere, and figures that are not the season's, are told with file and line", () => {
    const closing = {
      ...{ file: "content/athletes/invented-one/closing.md", front: {}, language: null, bodyLine: 4 },
      body: "Well done.\nYour bat speed went from 50 to 80 mph.\nSee [[bat_speed live: end]].",
    };
    const athlete = { ...made.athlete, closings: [closing] };
    const { lost, strange } = textFindings(athlete, series);
    expect(lost).toMatchObject([{ file: closing.file, line: 6, why: "no-series" }]);
    expect(strange).toMatchObject([{ file: closing.file, line: 5, found: "from 50 to 80", metric: "bat_speed" }]);
  });
});

describe("figures typed by hand", () => {
  const first = series[machine]!.first!.mean;
  const last = series[machine]!.last!.mean;
  const whole = (value: number) => String(Math.round(value));

  test.each([
    ["as the report has them", `Her bat speed went from ${first.toFixed(1)} to ${last.toFixed(1)} mph.`],
    ["rounded", `Bat speed ${whole(first)} to ${whole(last)}`],
    ["in kilometres", `bat speed: ${whole(first * 1.609344)} to ${whole(last * 1.609344)} km/h`],
    ["a single one", `A bat speed of ${last.toFixed(1)} mph at the end`],
    [
      "in Spanish, with a comma",
      `La velocidad del bate pasó de ${first.toFixed(1).replace(".", ",")} a ${last.toFixed(1).replace(".", ",")}`,
    ],
    ["inside a reference", "Bat speed [[as written: from 1 to 2 mph]]"],
    ["no figure of a measure", "Bat speed matters. We did 40 swings on 3 days."],
    ["of a metric that was not measured", "Her launch angle went from 3 to 9 degrees"],
  ])("are right: %s", (_, text) => {
    expect(strangeFigures(text, series)).toEqual([]);
  });

  test.each([
    ["bat speed from 68 to 79", "from 68 to 79"],
    ["a bat speed of 91.3 mph", "91.3 mph"],
    ["velocidad del bate de 40 a 44", "de 40 a 44"],
    ["exit velo 10 → 20", "10 → 20"],
  ])("are told where the season has no such figure: %s", (text, found) => {
    const [strange, ...more] = strangeFigures(`One line.\n${text}`, series);
    expect([strange?.line, strange?.found, more]).toEqual([2, found, []]);
  });
});
