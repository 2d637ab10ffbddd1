import { describe, expect, test } from "vitest";
import { placed, seasonOf } from "./season-of.ts";

const BATS = "data/implements.csv";
const bats = async (text: string) => {
  const season = await seasonOf({ [BATS]: text });
  return {
    rows: season.implements,
    found: season.problems.map((p) => [placed(p).replace(`${BATS}:`, ""), p.level, p.args]),
  };
};

describe("a small table", () => {
  test("reads cells in their kinds; a blank one is absent", async () => {
    const { rows, found } = await bats(
      "\ufeffid,length_in,weight_oz,label,from\r\ngame-33,33,30.0,,2025-10-06\r\n\r\nstub,,12,Short one,\r\n",
    );
    expect(rows).toEqual([
      { id: "game-33", length_in: 33, weight_oz: 30, from: "2025-10-06" },
      { id: "stub", weight_oz: 12, label: "Short one" },
    ]);
    expect(found).toEqual([]);
  });

  test("a bad row is set aside with its field's number; the others stand", async () => {
    const { rows, found } = await bats(
      'id,length_in,from\ngame-33,"33,5",2025-02-29\nBat 1,33,\n,33,\nok,33,\nshort,33\n',
    );
    expect(rows.map(({ id }) => id)).toEqual(["ok"]);
    expect(found).toEqual([
      [
        "2:2 wrong-value",
        "row",
        { key: "length_in", found: "33,5", expected: "not a number (write it with a point, as 61.5)" },
      ],
      ["2:3 wrong-value", "row", { key: "from", found: "2025-02-29", expected: "a date is written yyyy-mm-dd" }],
      [
        "3:1 wrong-value",
        "row",
        { key: "id", found: "Bat 1", expected: "an id is lower-case letters, digits and hyphens" },
      ],
      ["4:1 missing-key", "row", { key: "id", in: "implements.csv" }],
      ["6:- unreadable-row", "row", { fields: 2, expected: 3 }],
    ]);
  });

  test("an unknown column is an error with a suggestion, and the rest is read", async () => {
    const { rows, found } = await bats("id,lenght_in\ngame-33,33\n");
    expect(rows).toEqual([{ id: "game-33" }]);
    expect(found).toEqual([["1:2 unknown-column", "error", { column: "lenght_in", suggestion: "length_in" }]]);
  });

  test("without a required column there is no table", async () => {
    const { rows, found } = await bats("idd,length_in\ngame-33,33\n");
    expect(rows).toEqual([]);
    expect(found).toEqual([
      ["1:- missing-column", "error", { column: "id", suggestion: "idd" }],
      ["1:1 unknown-column", "error", { column: "idd", suggestion: "id" }],
    ]);
  });

  test("the same column twice, and another mark between columns, are told", async () => {
    expect((await bats("id,label,label\na,b,c\n")).found).toEqual([
      ["1:3 repeated-column", "error", { column: "label", other: "label" }],
    ]);
    expect((await bats("id;label\na;b\n")).found).toEqual([["1:- wrong-delimiter", "error", { delimiter: ";" }]]);
  });

  test("an empty one is remarked on", async () => {
    expect((await bats("")).found).toEqual([["-:- empty-file", "note", {}]]);
  });

  test("a closed word comes with the nearest one", async () => {
    const season = await seasonOf({ "data/balls.csv": "id,flight\nfoam,limitd\n" });
    expect(season.problems[0]?.args).toEqual({
      key: "flight",
      found: "limitd",
      expected: "one of full, limited, none",
      suggestion: "limited",
    });
  });
});

describe("all the tables", () => {
  test("feeds, devices and blocks from sub-folders are read", async () => {
    const season = await seasonOf({
      "data/feeds.csv": "id,pitch_speed_mph,pitch_speed_at,spin_axis\nslow,45,release,12:30\n",
      "data/devices.csv": "id,kind,site\nknob-1,bat,barn\n",
      "data/blocks/2025/oct.csv": "date,athlete_id,block,measured,start\n2025-10-06,ana-l,A,both,17:05\n",
    });
    expect(season.problems).toEqual([]);
    expect(season.feeds).toEqual([{ id: "slow", pitch_speed_mph: 45, pitch_speed_at: "release", spin_axis: "12:30" }]);
    expect(season.devices).toEqual([{ id: "knob-1", kind: "bat", site: "barn" }]);
    expect(season.blocks).toEqual([
      { date: "2025-10-06", athlete_id: "ana-l", block: "A", measured: "both", start: "17:05" },
    ]);
  });

  test("a test's value that is no number is named at its cell, and one that no metric stands for at its own", async () => {
    const header = "athlete_id,date,test,value,unit\n";
    const season = await seasonOf({
      "data/tests/b.csv": `${header}ana-l,2025-10-07,sprint,fast,s\nana-l,2025-10-07,sprint,3.2,s\n`,
    });
    expect(season.problems.map((p) => [placed(p), p.level, p.args])).toEqual([
      [
        "data/tests/b.csv:2:4 wrong-value",
        "row",
        { key: "value", found: "fast", expected: "not a number (write it with a point, as 61.5)" },
      ],
      ["data/tests/b.csv:3:3 not-in-list", "row", { key: "test", found: "sprint", list: "metrics" }],
    ]);
  });

  test("a correction with a word that is no action is named at its cell", async () => {
    const season = await seasonOf({
      "data/corrections.csv": "by,on,reason,action,file,line\ncoach-k,2025-10-07,wrong bat,sett,a.csv,2\n",
    });
    expect(season.problems.map((p) => [placed(p), p.level, p.args])).toEqual([
      [
        "data/corrections.csv:2:4 wrong-value",
        "row",
        { key: "action", found: "sett", expected: "one of set, reassign, void", suggestion: "set" },
      ],
    ]);
  });
});
