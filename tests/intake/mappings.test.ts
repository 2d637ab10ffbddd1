import { describe, expect, test } from "vitest";
import { asideOf, coded, placed, seasonOf } from "./season-of.ts";

const MAP = "data/mappings/cage.json";
const FILE = "data/swings/a.csv";
const EXPORT = {
  label: "Cage screen",
  header: ["Player", "When", "At", "Bat km/h", "Box", "Note"],
  delimiter: ";",
  decimal: ",",
  columns: {
    Player: { field: "athlete_id" },
    When: { field: "date", form: "dd/MM/yyyy" },
    At: { field: "time", form: "h:mm:ss a" },
    "Bat km/h": { field: "bat_speed", unit: "km/h", words: { "--": "" } },
    Box: { field: "side", words: { L: "left", R: "right" } },
  },
  fixed: { environment: "machine", purpose: "training" },
};
const HEADER = "Player;When;At;Bat km/h;Box;Note";
const mapped = (rows: string, mapping: object = EXPORT) =>
  seasonOf({ [MAP]: JSON.stringify(mapping, null, 1), [FILE]: `${HEADER}\n${rows}` });
const changed = (change: (copy: typeof EXPORT & Record<string, unknown>) => void): object => {
  const copy = structuredClone(EXPORT);
  change(copy);
  return copy;
};

describe("an export with a mapping", () => {
  test("is read in its own words, units, dates and marks", async () => {
    const season = await mapped("A. Lindqvist;06/10/2025;5:05:09 PM;112,65408;L;x\nana-l;06/10/2025;5:05:30 PM;--;;\n");
    expect(season.problems).toEqual([]);
    const reps = season.athletes[0]?.reps;
    expect(reps?.date).toEqual(["2025-10-06", "2025-10-06"]);
    expect(reps?.numbers.bat_speed?.[0]).toBeCloseTo(70, 12);
    expect(reps?.numbers.bat_speed?.[1]).toBe(null);
    expect(reps?.words).toEqual({
      time: ["17:05:09", "17:05:30"],
      side: ["left", null],
      environment: ["machine", "machine"],
      purpose: ["training", "training"],
    });
  });

  test("a time form without seconds claims none", async () => {
    const mapping = changed((copy) => {
      copy.columns.At.form = "h:mm a";
    });
    const season = await mapped("ana-l;06/10/2025;5:05 PM;100;L;\n", mapping);
    expect(season.athletes[0]?.reps.words.time).toEqual(["17:05"]);
  });

  test("what is not in the mapping's form is set aside at its place", async () => {
    const rows = [
      "ana-l;2025-10-06;5:05:09 PM;100;L;",
      "ana-l;31/02/2026;5:05:09 PM;100;L;",
      "ana-l;06/10/2025;17:05;100;L;",
    ];
    const more = [
      "ana-l;06/10/2025;5:05:09 PM;100.5;L;",
      "ana-l;06/10/2025;5:05:09 PM;100,5;Left;",
      "ana-l;06/10/2025;5:05:09 PM;10,5;L;",
    ];
    const season = await mapped([...rows, ...more].join("\n"));
    expect(season.setAside.map((row) => [asideOf(row), row.field, row.value])).toEqual([
      [`${FILE}:2:2 unreadable-date`, "When", "2025-10-06"],
      [`${FILE}:3:2 unreadable-date`, "When", "31/02/2026"],
      [`${FILE}:4:3 unreadable-date`, "At", "17:05"],
      [`${FILE}:5:4 unreadable-number`, "Bat km/h", "100.5"],
      [`${FILE}:6:5 unknown-id`, "Box", "Left"],
      [`${FILE}:7:4 out-of-range`, "Bat km/h", "10,5"],
    ]);
  });

  test("an unknown word is one for the mapping to explain", async () => {
    const season = await mapped("ana-l;06/10/2025;5:05:09 PM;100;both;");
    expect(coded(season, "unknown-id").map(({ args }) => args)).toEqual([
      { field: "Box", value: "both", allowed: "left or right", mapped: 1 },
    ]);
  });

  test("a fixed value fills blanks and gives way to a cell", async () => {
    const mapping = changed((copy) => {
      Object.assign(copy.columns, { Note: { field: "environment" } });
    });
    const season = await mapped("ana-l;06/10/2025;5:05:09 PM;100;L;tee\nana-l;06/10/2025;5:06:09 PM;100;L;\n", mapping);
    expect(season.athletes[0]?.reps.words.environment).toEqual(["tee", "machine"]);
  });

  test("a file of one athlete may have the athlete and the day fixed", async () => {
    const mapping = {
      label: "x",
      header: ["v"],
      columns: { v: { field: "bat_speed" } },
      fixed: { athlete_id: "ana-l", date: "2025-10-06" },
    };
    const season = await seasonOf({ [MAP]: JSON.stringify(mapping), [FILE]: "v\n61\n\n62\n" });
    expect(season.athletes[0]?.reps).toMatchObject({
      date: ["2025-10-06", "2025-10-06"],
      line: [2, 4],
      numbers: { bat_speed: [61, 62] },
    });
  });

  test("another header is not this mapping's: nothing is guessed", async () => {
    const season = await seasonOf({ [MAP]: JSON.stringify(EXPORT), [FILE]: "Who,On,Speed\na,b,c\n" });
    expect(coded(season, "missing-column").map(({ args }) => args.column)).toEqual(["athlete_id", "date"]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:- unreadable-row`]);
  });

  test.each([
    ["a renamed column", "Player;When;At;Bat km/h;box;Note", { added: "box", missing: "Box" }],
    ["a column more", "Player;When;At;Bat km/h;Box;Note;Temp", { added: "Temp", missing: "" }],
    ["a column less", "Player;When;At;Bat km/h;Box", { added: "", missing: "Note" }],
  ])("a header with %s is noticed and not read", async (_, header, changes) => {
    const row = header.replaceAll(/[^;]+/g, "1");
    const season = await seasonOf({ [MAP]: JSON.stringify(EXPORT), [FILE]: `${header}\n${row}\n${row}\n` });
    expect(season.problems.map((p) => [placed(p), p.level, p.args])).toEqual([
      [`${FILE}:1:- changed-header`, "error", { mapping: MAP, ...changes }],
    ]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:- unreadable-row`, `${FILE}:3:- unreadable-row`]);
  });

  test("the same columns in another order are the same export: names decide", async () => {
    const season = await seasonOf({
      [MAP]: JSON.stringify(EXPORT),
      [FILE]: "Bat km/h;Note;Box;At;When;Player\n112,65408;x;R;5:05:09 PM;06/10/2025;ana-l\n",
    });
    expect(season.problems).toEqual([]);
    const reps = season.athletes[0]?.reps;
    expect(reps?.numbers.bat_speed?.[0]).toBeCloseTo(70, 12);
    expect(reps?.words).toMatchObject({ time: ["17:05:09"], side: ["right"] });
  });
});

describe("a mapping with a fault reads nothing and says where", () => {
  const faults = async (mapping: object | string) => {
    const text = typeof mapping === "string" ? mapping : JSON.stringify(mapping, null, 1);
    const season = await seasonOf({ [MAP]: text });
    return season.problems.map((p) => [placed(p).replace(`${MAP}:`, ""), p.args]);
  };

  test("broken JSON", async () => {
    expect((await faults('{ "label": "x", '))[0]?.[0]).toMatch(/^1:\d+ unreadable-json$/);
  });

  test("tabs and several lines are fine", async () => {
    expect(await faults(JSON.stringify(EXPORT, null, "\t"))).toEqual([]);
  });

  test("a misspelt key", async () => {
    expect(await faults(`{\n "label": "x",\n "header": ["v"],\n "colums": {}\n}`)).toEqual([
      ["4:2 unknown-key", { key: "colums", in: "cage.json", suggestion: "columns" }],
    ]);
  });

  test("a field that is none, a unit of another kind, a form without a date", async () => {
    const mapping = `{ "label": "x", "header": ["a", "b", "c", "d"], "columns": {
 "a": { "field": "bat_sped" },
 "b": { "field": "exit_velocity", "unit": "ft" },
 "c": { "field": "side", "form": "dd/MM" },
 "e": { "field": "date" } } }`;
    const found = await faults(mapping);
    expect(found.map(([place]) => place)).toEqual([
      "2:18 wrong-value",
      "3:43 wrong-value",
      "4:34 wrong-value",
      "5:2 unknown-column",
    ]);
    expect(found[0]?.[1]).toMatchObject({ found: "bat_sped", suggestion: "bat_speed" });
    expect(found[1]?.[1]).toMatchObject({ expected: "one of mph, kmh, km/h, mps, m/s, fps" });
  });

  test("words and fixed values that our columns do not take", async () => {
    const mapping = `{ "label": "x", "header": ["a"], "columns": {
 "a": { "field": "side", "words": { "L": "lefty" } } },
 "fixed": { "environment": "machin", "plase": "home", "date": "06/10/2025" } }`;
    const found = await faults(mapping);
    expect(found.map(([place]) => place)).toEqual([
      "2:42 wrong-value",
      "3:28 wrong-value",
      "3:38 unknown-key",
      "3:63 wrong-value",
    ]);
    expect(found.map(([, args]) => (args as { suggestion?: string }).suggestion)).toEqual([
      "left",
      "machine",
      "place",
      undefined,
    ]);
  });

  test("two mappings for one header", async () => {
    const season = await seasonOf({
      [MAP]: JSON.stringify(EXPORT),
      "data/mappings/other.json": JSON.stringify(EXPORT),
    });
    expect(season.problems.map((p) => [placed(p), p.args])).toEqual([
      ["data/mappings/other.json:-:- same-header", { other: MAP }],
    ]);
  });
});
