import { beforeAll, describe, expect, test } from "vitest";
import type { Judgement } from "../../src/build/judge.ts";
import type { AthleteReport } from "../../src/report/schema.ts";
import { generateDemo } from "./generate.ts";
import { judged } from "./judged.ts";
import { demo } from "./season.ts";
import { FALSE_ROWS, SCREEN_FILES, SENSOR_FILES } from "./two-devices.ts";

let calm: Judgement;
let disturbed: Judgement;
let tablet: Judgement;

beforeAll(async () => {
  calm = await judged(generateDemo("calm"));
  disturbed = await judged(demo);
  tablet = await judged(generateDemo("hub"));
});

const reportOf = ({ told }: Judgement, id: string): AthleteReport =>
  told.find(({ athlete }) => athlete.id === id)!.report;

/** A report without what says in how many rows a swing was told, and where those stand. */
function apartFromRows({ ledger: _, flags: _places, ...rest }: AthleteReport) {
  return rest;
}

describe("months in which a sensor and a screen wrote a file each", () => {
  test("hold bat columns alone and ball columns alone", () => {
    for (const path of SENSOR_FILES) expect(demo.get(path)!.split("\n")[0]).not.toMatch(/exit|launch|spray/);
    for (const path of SCREEN_FILES) expect(demo.get(path)!.split("\n")[0]).not.toMatch(/bat|drill|environment/);
  });

  test("give every athlete the report that rows in our own columns would have given", () => {
    for (const { athlete } of tablet.told) {
      expect(apartFromRows(reportOf(calm, athlete.id)), athlete.id).toEqual(
        apartFromRows(reportOf(tablet, athlete.id)),
      );
    }
  });

  test.each(["calm", "disturbed"])("every day was told and every ball found its swing, %s", (name) => {
    const { pairings } = (name === "calm" ? calm : disturbed).season;
    expect(pairings.length).toBeGreaterThan(60);
    expect(new Set(pairings.map(({ outcome }) => outcome))).toEqual(new Set(["paired"]));
    const balls = SCREEN_FILES.reduce((sum, path) => sum + demo.get(path)!.trimEnd().split("\n").length - 1, 0);
    expect(pairings.reduce((sum, { pairs }) => sum + pairs.length, 0)).toBe(balls);
  });

  test("what the sensor took for swings stays single, and moves no series", () => {
    const alone = disturbed.told.flatMap(({ athlete }) => athlete.reps.words.pairing ?? []);
    expect(alone.filter((one) => one === "no-swing")).toHaveLength(2 * FALSE_ROWS.waggles);
    expect(alone.filter((one) => one === "ball-not-recorded")).toHaveLength(2 * FALSE_ROWS.practice);
    for (const { athlete } of tablet.told)
      expect(reportOf(disturbed, athlete.id).series, athlete.id).toEqual(reportOf(tablet, athlete.id).series);
  });

  test("the ledgers differ by the rows of balls and of what was no swing", () => {
    const balls = disturbed.season.pairings.reduce((sum, { pairs }) => sum + pairs.length, 0);
    const rows = ({ ledger }: Judgement) => ledger.total.read;
    expect(rows(calm) - rows(tablet)).toBe(balls);
    expect(rows(disturbed) - rows(calm)).toBe(2 * (FALSE_ROWS.waggles + FALSE_ROWS.practice));
  });
});
