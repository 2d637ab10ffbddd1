import { describe, expect, test } from "vitest";
import { asideOf, balance, coded, seasonOf } from "./season-of.ts";

const A = "data/swings/a.csv";
const B = "data/swings/b.csv";
const C = "data/swings/c.csv";
const table = (columns: string, ...rows: string[]): string =>
  [`athlete_id,date,${columns},bat_speed_mph`, ...rows.map((row) => `ana-l,2025-10-06,${row}`), ""].join("\n");
const outcome = async (files: Record<string, string>) => {
  const season = await seasonOf(files);
  expect(balance(season).read).toBe(balance(season).kept + balance(season).setAside);
  return { season, aside: season.setAside.map(asideOf), speeds: season.athletes[0]?.reps.numbers.bat_speed };
};

describe("a repeated row whose values changed", () => {
  test("is revised by the later export of the same folder", async () => {
    const { season, aside, speeds } = await outcome({
      [A]: table("time", "17:05:09,61", "17:05:20,62"),
      [B]: table("time", "17:05:09,61", "17:05:20,62.5", "17:05:31,63"),
    });
    expect(aside).toEqual([`${A}:3:- revised`, `${B}:2:- duplicate`]);
    expect(speeds).toEqual([61, 62.5, 63]);
    expect(coded(season, "revised")[0]?.args).toEqual({
      other: `${B}:3`,
      field: "bat_speed_mph",
      from: "62",
      to: "62.5",
    });
  });

  test("the last word counts, even when it is the first one again", async () => {
    const one = (speed: number) => table("time", `17:05:09,${speed}`, "17:06:10,70");
    const back = await outcome({ [A]: one(61), [B]: one(62), [C]: `${one(61)}ana-l,2025-10-07,17:00:03,66\n` });
    expect(back.aside).toEqual([`${A}:2:- revised`, `${B}:2:- revised`, `${B}:3:- duplicate`, `${C}:3:- duplicate`]);
    expect(back.speeds).toEqual([70, 61, 66]);
  });

  test("another folder is another device, which sees the same swing in its own way", async () => {
    const { aside } = await outcome({
      "data/swings/knob/a.csv": table("time", "17:05:09,61"),
      "data/swings/radar/a.csv": table("time", "17:05:09,62"),
    });
    expect(aside).toEqual([]);
  });

  test("so is another measurement, another lane, another sensor", async () => {
    const flight = "athlete_id,date,time,exit_velocity_mph\nana-l,2025-10-06,17:05:09,80\n";
    expect((await outcome({ [A]: table("time", "17:05:09,61"), [B]: flight })).aside).toEqual([]);
    const lanes = { [A]: table("time,lane", "17:05:09,a,61"), [B]: table("time,lane", "17:05:09,b,62") };
    expect((await outcome(lanes)).aside).toEqual([]);
  });

  test("numbered swings are revised by an export that holds the whole day again, mostly unchanged", async () => {
    const day = (...speeds: number[]) => table("block,rep", ...speeds.map((speed, i) => `1,${i + 1},${speed}`));
    const grown = await outcome({ [A]: day(61, 62, 63), [B]: day(61, 62.5, 63, 64) });
    expect(grown.aside).toEqual([`${A}:3:- revised`, `${B}:2:- duplicate`, `${B}:4:- duplicate`]);
    expect(grown.speeds).toEqual([61, 63, 62.5, 64]);
  });

  test("two sessions that both count from 1 revise nothing", async () => {
    const day = (...speeds: number[]) => table("block,rep", ...speeds.map((speed, i) => `1,${i + 1},${speed}`));
    expect((await outcome({ [A]: day(61, 62, 63), [B]: day(71, 72, 73, 74) })).aside).toEqual([]);
    expect((await outcome({ [A]: day(61, 62, 63), [B]: day(61, 72) })).aside).toEqual([`${B}:2:- duplicate`]);
  });

  test("inside one file nothing is revised: two rows of one second are two rows", async () => {
    expect((await outcome({ [A]: table("time", "17:05:09,61", "17:05:09,62") })).aside).toEqual([]);
    const unclear = { [A]: table("time", "17:05:09,61", "17:05:09,62"), [B]: table("time", "17:05:09,63") };
    expect((await outcome(unclear)).aside).toEqual([]);
  });

  test("swings that do not tell which they are stay under the rule of whole days", async () => {
    const plain = (...speeds: number[]) => table("environment", ...speeds.map((speed) => `tee,${speed}`));
    expect((await outcome({ [A]: plain(61, 62), [B]: plain(61, 63, 64) })).aside).toEqual([]);
  });
});

test("an export that repeats everything, grown by a day, adds that day only", async () => {
  const first = table("time", "17:05:09,61", "17:05:20,62", "17:05:31,63");
  const { speeds, aside } = await outcome({ [A]: first, [B]: `${first}ana-l,2025-10-07,17:00:03,66\n` });
  expect(speeds).toEqual([61, 62, 63, 66]);
  expect(aside).toEqual([`${B}:2:- duplicate`, `${B}:3:- duplicate`, `${B}:4:- duplicate`]);
});
