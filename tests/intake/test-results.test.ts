import { describe, expect, test } from "vitest";
import { placed, seasonOf } from "./season-of.ts";

const METRICS =
  "---\nmetrics:\n  - { id: broad_jump, label: Broad jump, unit: in, better: higher, plausible: [20, 140], decimals: 1 }\n---\n";
const HEADER = "athlete_id,date,test,side,attempt,value,unit,load,load_unit,protocol";
const made = (...rows: string[]) =>
  seasonOf({ "content/metrics.md": METRICS, "data/tests/a.csv": `${[HEADER, ...rows].join("\n")}\n` });

describe("results of data/tests", () => {
  test("go to the athlete by id or alias, in the metric's unit, with side, load and protocol", async () => {
    const season = await made(
      "ana-l,2025-10-07,broad-jump,,1,70.5,in,,,",
      "A. Lindqvist,2025-10-08,broad-jump,left,1,200,cm,10,kg,hands free",
    );
    expect(season.problems).toEqual([]);
    expect(season.athletes[0]?.tests).toEqual([
      {
        date: "2025-10-07",
        metric: "broad_jump",
        side: null,
        value: 70.5,
        load: null,
        protocol: null,
        at: { file: "data/tests/a.csv", line: 2 },
      },
      expect.objectContaining({ side: "left", load: "10 kg", protocol: "hands free" }),
    ]);
    expect(season.athletes[0]?.tests[1]?.value).toBeCloseTo(78.74, 2);
  });

  test.each([
    ["somebody,2025-10-07,broad-jump,,1,70,in,,,", "data/tests/a.csv:2:1 unknown-athlete"],
    ["ana-l,2025-10-07,broad-jmp,,1,70,in,,,", "data/tests/a.csv:2:3 not-in-list"],
    ["ana-l,2025-10-07,broad-jump,,1,70,kg,,,", "data/tests/a.csv:2:7 wrong-value"],
    ["ana-l,2025-10-07,broad-jump,,1,700,in,,,", "data/tests/a.csv:2:6 out-of-range"],
  ])("%s is named at its cell and left out; the other rows stand", async (row, place) => {
    const season = await made(row, "ana-l,2025-10-08,broad-jump,,1,71,in,,,");
    expect(season.problems.map(placed)).toEqual([place]);
    expect(season.athletes[0]?.tests.map(({ value }) => value)).toEqual([71]);
  });
});
