import { describe, expect, test } from "vitest";
import { asideOf, balance, coded, placed, seasonOf } from "./season-of.ts";

const A = "data/swings/a.csv";
const B = "data/swings/b.csv";
const C = "data/swings/c.csv";
const table = (columns: string, ...rows: string[]): string =>
  [`athlete_id,date,${columns},bat_speed_mph`, ...rows.map((row) => `ana-l,2025-10-06,${row}`), ""].join("\n");
const aside = async (files: Record<string, string>) => {
  const season = await seasonOf(files);
  expect(balance(season).read).toBe(balance(season).kept + balance(season).setAside);
  return season.setAside.map(asideOf);
};
const PLAIN = (...speeds: number[]): string => table("environment", ...speeds.map((speed) => `tee,${speed}`));

describe("inside one file", () => {
  test("two equal swings may be two swings", async () => {
    expect(await aside({ [A]: PLAIN(61, 61, 61) })).toEqual([]);
  });

  test("a time with seconds tells one swing from another", async () => {
    const season = await seasonOf({ [A]: table("time", "17:05:09,61", "17:05:20,61", "17:05:09,61") });
    expect(season.setAside.map(asideOf)).toEqual([`${A}:4:- duplicate`]);
    expect(season.setAside[0]?.athlete).toBe("ana-l");
    expect(coded(season, "duplicate").map((p) => [placed(p), p.level, p.args])).toEqual([
      [`${A}:4:- duplicate`, "row", { other: `${A}:2` }],
    ]);
    expect(season.athletes[0]?.reps.line).toEqual([2, 3]);
  });

  test("a time to the minute does not, nor do seconds that are always zero", async () => {
    expect(await aside({ [A]: table("time", "17:05,61", "17:05,61") })).toEqual([]);
    expect(await aside({ [A]: table("time", "17:05:00,61", "17:05:00,61") })).toEqual([]);
    expect(await aside({ [A]: table("time", "17:05:00,61", "17:05:00,61", "17:06:01,60") })).toEqual([
      `${A}:3:- duplicate`,
    ]);
  });

  test("a rep number with its round or block does", async () => {
    expect(await aside({ [A]: table("round,rep", "1,1,61", "1,2,61", "1,1,61", "2,1,61") })).toEqual([
      `${A}:4:- duplicate`,
    ]);
    expect(await aside({ [A]: table("block,rep", "A,1,61", "A,1,61", "B,1,61") })).toEqual([`${A}:3:- duplicate`]);
  });

  test("a rep number alone does as long as no other swing of the day has it", async () => {
    expect(await aside({ [A]: table("rep", "1,61", "2,62", "2,62") })).toEqual([`${A}:4:- duplicate`]);
    expect(await aside({ [A]: table("rep", "1,61", "2,62", "2,62", "1,63") })).toEqual([]);
  });

  test("one cell that differs makes another swing", async () => {
    expect(await aside({ [A]: table("time,side", "17:05:09,left,61", "17:05:09,right,61", "17:05:09,,61") })).toEqual(
      [],
    );
  });
});

describe("across files", () => {
  test("the same file under another name is a repeat as a whole, said once", async () => {
    const season = await seasonOf({ [A]: PLAIN(61, 61), [B]: PLAIN(61, 61) });
    expect(season.setAside.map((row) => [asideOf(row), row.athlete])).toEqual([
      [`${B}:2:- duplicate`, "ana-l"],
      [`${B}:3:- duplicate`, "ana-l"],
    ]);
    expect(season.problems.map((p) => [placed(p), p.level, p.args])).toEqual([
      [`${B}:-:- repeated-file`, "row", { other: A, rows: 2 }],
    ]);
    expect(season.swingFiles.map(({ rows }) => rows)).toEqual([2, 2]);
  });

  test("a row that tells its swing is a repeat wherever it stands, whatever the order of columns", async () => {
    const other =
      "bat_speed_mph,time,date,athlete_id,side\n61,17:05:09,2025-10-06,ana-l,\n64,18:00:01,2025-10-06,ana-l,\n";
    expect(await aside({ [A]: table("time", "17:05:09,61", "17:05:20,62"), [B]: other })).toEqual([
      `${B}:2:- duplicate`,
    ]);
  });

  test("equal swings of two files are two swings when the files only happen to share them", async () => {
    expect(await aside({ [A]: PLAIN(61, 62), [B]: PLAIN(61, 63) })).toEqual([]);
  });

  test("an export that grows repeats what it held before, as often as it held it", async () => {
    expect(await aside({ [A]: PLAIN(61, 61, 62), [B]: PLAIN(61, 61, 62, 61, 70) })).toEqual([
      `${B}:2:- duplicate`,
      `${B}:3:- duplicate`,
      `${B}:4:- duplicate`,
    ]);
    const grown = { [A]: PLAIN(61, 62), [B]: PLAIN(61, 62, 63), [C]: PLAIN(61, 62, 63, 64) };
    const season = await seasonOf(grown);
    expect(season.athletes[0]?.reps.numbers.bat_speed).toEqual([61, 62, 63, 64]);
  });

  test("one lost swing, and it is not the same export grown", async () => {
    expect(await aside({ [A]: PLAIN(61, 61, 62), [B]: PLAIN(61, 62, 70) })).toEqual([]);
  });

  test("a rep number alone tells nothing across files: every file counts from 1", async () => {
    expect(await aside({ [A]: table("rep", "1,61", "2,62"), [B]: table("rep", "1,61", "2,66") })).toEqual([]);
    expect(await aside({ [A]: table("rep", "1,61", "2,62"), [B]: table("rep", "1,61", "2,62", "3,63") })).toHaveLength(
      2,
    );
  });

  test("days and athletes are looked at one by one", async () => {
    const second = PLAIN(61, 62).replaceAll("2025-10-06", "2025-10-07");
    expect(await aside({ [A]: PLAIN(61, 62), [B]: second })).toEqual([]);
    const both = `${PLAIN(61, 62)}${second.split("\n").slice(1).join("\n")}`;
    expect(await aside({ [A]: PLAIN(61, 62), [B]: both })).toEqual([`${B}:2:- duplicate`, `${B}:3:- duplicate`]);
  });

  test("a row that was set aside for another reason repeats nothing", async () => {
    expect(await aside({ [A]: PLAIN(61, 999), [B]: PLAIN(61, 999, 62) })).toEqual([
      `${A}:3:4 out-of-range`,
      `${B}:2:- duplicate`,
      `${B}:3:4 out-of-range`,
    ]);
  });
});
