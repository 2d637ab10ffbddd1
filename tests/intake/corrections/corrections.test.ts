import { describe, expect, test } from "vitest";
import { asideOf, balance, coded, placed, seasonOf } from "../season-of.ts";

const A = "data/swings/a.csv";
const FILE = "data/corrections.csv";
const HEAD = "by,on,reason,file,line,athlete_id,date,session,block,first,last,action,field,from,to";
type Cells = Readonly<Record<string, string | number>>;
const corrections = (...rows: readonly Cells[]): string =>
  [
    HEAD,
    ...rows.map((row) =>
      HEAD.split(",")
        .map((name) => row[name] ?? DEFAULTS[name] ?? "")
        .join(","),
    ),
    "",
  ].join("\n");
const DEFAULTS: Cells = { by: "kay", on: "2025-10-20", reason: "seen on film" };
const BEN = { "content/athletes/ben-k/profile.md": "---\nname: Ben Kovar\naliases: [BK]\n---\n" };
const SWINGS = [
  "athlete_id,date,time,block,rep,implement,bat_speed_mph",
  "ana-l,2025-10-06,17:05:09,1,1,game,61",
  "ana-l,2025-10-06,17:05:20,1,2,game,615",
  "ana-l,2025-10-06,17:05:31,1,3,game,62",
  "ana-l,2025-10-06,17:09:01,2,1,game,63",
  "ben-k,2025-10-06,17:12:01,1,1,game,70",
  "",
].join("\n");
const corrected = (...rows: readonly Cells[]) => seasonOf({ ...BEN, [A]: SWINGS, [FILE]: corrections(...rows) });
type Season = Awaited<ReturnType<typeof seasonOf>>;
const speeds = (season: Season, id = "ana-l") => season.athletes.find((one) => one.id === id)?.reps.numbers.bat_speed;
const refused = (season: Season) =>
  season.problems.filter(({ at }) => at.file === FILE).map((problem) => [placed(problem), problem.args]);

describe("a correction that sets a cell", () => {
  test("changes what stands there, and is listed with who, when and why", async () => {
    const season = await corrected({ action: "set", file: A, line: 2, field: "bat_speed", from: 61, to: 64.5 });
    expect(speeds(season)).toEqual([64.5, 62, 63]);
    expect(refused(season)).toEqual([]);
    expect(season.corrections).toEqual([
      {
        at: { file: FILE, line: 2 },
        ...{
          by: "kay",
          on: "2025-10-20",
          reason: "seen on film",
          action: "set",
          field: "bat_speed",
          from: "61",
          to: "64.5",
        },
        rows: [{ file: A, line: 2, athlete: "ana-l", now: "ana-l" }],
        overruledBy: null,
      },
    ]);
  });

  test("is refused, with both values, when something else stands there", async () => {
    const season = await corrected({ action: "set", file: A, line: 2, field: "bat_speed_mph", from: 60, to: 64.5 });
    expect(speeds(season)).toEqual([61, 62, 63]);
    expect(season.corrections).toEqual([]);
    expect(refused(season)).toEqual([
      [`${FILE}:2:- correction-mismatch`, { field: "bat_speed", from: "60", stands: "61", other: `${A}:2` }],
    ]);
  });

  test("puts right the very cell for which a row was set aside, and the row is read", async () => {
    const season = await corrected({ action: "set", file: "a.csv", line: 3, field: "bat_speed", from: 615, to: 61.5 });
    expect(speeds(season)).toEqual([61, 61.5, 62, 63]);
    expect(season.setAside).toEqual([]);
    expect(coded(season, "out-of-range")).toEqual([]);
    expect(balance(season)).toEqual({ read: 5, kept: 5, setAside: 0 });
  });

  test("names rows by athlete and date, block and their order in it, the unreadable one counted too", async () => {
    const row = {
      action: "set",
      athlete_id: "Ana Lindqvist",
      date: "2025-10-06",
      block: 1,
      field: "implement",
      from: "game",
    };
    const season = await corrected({ ...row, first: 3, last: 3, to: "wood" });
    expect(season.athletes[0]?.reps.words.implement).toEqual(["game", "wood", "game"]);
    const all = await corrected({ ...row, to: "wood" });
    expect(all.athletes[0]?.reps.words.implement).toEqual(["wood", "wood", "game"]);
    expect(all.setAside.map(asideOf)).toEqual([`${A}:3:7 out-of-range`]);
  });

  test("is one thing: where one row of several does not match, none is changed", async () => {
    const row = { action: "set", athlete_id: "ana-l", date: "2025-10-06", field: "bat_speed", from: 61, to: 50 };
    const season = await corrected(row);
    expect(speeds(season)).toEqual([61, 62, 63]);
    expect(coded(season, "correction-mismatch")).toHaveLength(1);
  });

  test("holds its own value to what a file's cell is held to", async () => {
    const row = { action: "set", file: A, line: 2, field: "bat_speed", from: 61 };
    const season = await corrected({ ...row, to: 161 }, { ...row, to: "fast" }, { ...row, field: "bat_sped", to: 62 });
    expect(speeds(season)).toEqual([61, 62, 63]);
    expect(refused(season)).toEqual([
      [`${FILE}:2:- wrong-value`, { key: "to", found: "161", expected: "15 to 110 mph" }],
      [`${FILE}:3:- wrong-value`, { key: "to", found: "fast", expected: "15 to 110 mph" }],
      [`${FILE}:4:- wrong-value`, expect.objectContaining({ key: "field", suggestion: "bat_speed" })],
    ]);
  });

  test("may speak in another unit, and in the words of the file itself", async () => {
    const season = await corrected({
      action: "set",
      file: A,
      line: 2,
      field: "bat_speed_kmh",
      from: 98.17,
      to: 112.65408,
    });
    expect(speeds(season)?.[0]).toBeCloseTo(70, 10);
    const mapping = {
      label: "Cage screen",
      header: ["Who", "Day", "km/h"],
      delimiter: ";",
      decimal: ",",
      columns: { Who: { field: "athlete_id" }, Day: { field: "date" }, "km/h": { field: "bat_speed", unit: "km/h" } },
      fixed: { environment: "tee" },
    };
    const mapped = await seasonOf({
      "data/mappings/cage.json": JSON.stringify(mapping),
      [A]: "Who;Day;km/h\nana-l;2025-10-06;112,65408\n",
      [FILE]: corrections(
        { action: "set", file: A, line: 2, field: "bat_speed", from: '"112,65408"', to: 71 },
        { action: "set", file: A, line: 2, field: "environment", from: "tee", to: "machine" },
      ),
    });
    expect(refused(mapped)).toEqual([]);
    expect(speeds(mapped)).toEqual([71]);
    expect(mapped.athletes[0]?.reps.words.environment).toEqual(["machine"]);
  });
});

describe("a correction that takes rows out or moves them", () => {
  test("a void row is set aside as void, with the reason", async () => {
    const season = await corrected({ action: "void", file: A, line: 4, reason: "waggle" });
    expect(season.setAside.map(asideOf)).toEqual([`${A}:3:7 out-of-range`, `${A}:4:- void`]);
    expect(coded(season, "void")[0]?.args).toEqual({ other: `${FILE}:2`, reason: "waggle" });
    expect(balance(season)).toEqual({ read: 5, kept: 3, setAside: 2 });
  });

  test("a void row that could not be read before is still not read when another cell of it is put right", async () => {
    const season = await corrected(
      { action: "void", file: A, line: 3, reason: "waggle" },
      { action: "set", file: A, line: 3, on: "2025-11-22", field: "side", to: "left" },
    );
    expect(season.setAside.map(({ line, reason }) => [line, reason])).toEqual([[3, "out-of-range"]]);
    expect(balance(season)).toMatchObject({ read: 5, kept: 4, setAside: 1 });
  });

  test("a run that was another's moves to its athlete, and the correction tells both", async () => {
    const row = {
      action: "reassign",
      athlete_id: "ana-l",
      date: "2025-10-06",
      block: 1,
      first: 1,
      last: 1,
      from: "Ana Lindqvist",
    };
    const season = await corrected({ ...row, to: "BK" });
    expect([speeds(season), speeds(season, "ben-k")]).toEqual([
      [62, 63],
      [61, 70],
    ]);
    expect(season.corrections[0]?.rows).toEqual([{ file: A, line: 2, athlete: "ana-l", now: "ben-k" }]);
    const wrong = await corrected({ ...row, from: "ben-k", to: "BK" });
    expect(refused(wrong)).toEqual([
      [`${FILE}:2:- correction-mismatch`, { field: "athlete_id", from: "ben-k", stands: "ana-l", other: `${A}:2` }],
    ]);
  });

  test("a name that nobody has is put right by naming whose row it is", async () => {
    const season = await seasonOf({
      [A]: "athlete_id,date,bat_speed_mph\nAnnie,2025-10-06,61\n",
      [FILE]: corrections({ action: "reassign", file: A, line: 2, from: "Annie", to: "ana-l" }),
    });
    expect(season.setAside).toEqual([]);
    expect(speeds(season)).toEqual([61]);
    expect(season.corrections[0]?.rows[0]).toMatchObject({ athlete: null, now: "ana-l" });
  });
});

describe("two corrections that contradict each other", () => {
  const set = { action: "set", file: A, line: 2, field: "bat_speed", from: 61 };

  test("the later day is followed, then the later line, and it is said", async () => {
    const day = await corrected({ ...set, on: "2025-10-22", to: 65 }, { ...set, on: "2025-10-21", to: 66 });
    expect(speeds(day)?.[0]).toBe(65);
    expect(refused(day)).toEqual([[`${FILE}:3:- correction-overruled`, { other: `${FILE}:2` }]]);
    const line = await corrected({ ...set, to: 65 }, { ...set, to: 66 });
    expect(speeds(line)?.[0]).toBe(66);
    expect(line.corrections.map(({ overruledBy }) => overruledBy)).toEqual([{ file: FILE, line: 3 }, null]);
  });

  test("one that goes on from the other contradicts nothing", async () => {
    const season = await corrected({ ...set, to: 65 }, { ...set, from: 65, to: 66 });
    expect(speeds(season)?.[0]).toBe(66);
    expect(refused(season)).toEqual([]);
  });

  test("a void row comes back only where a later correction names its line", async () => {
    const drop = { action: "void", file: A, line: 2 };
    const back = await corrected(drop, { ...set, to: 65 });
    expect(speeds(back)).toEqual([65, 62, 63]);
    expect(coded(back, "correction-overruled")).toHaveLength(1);
    const run = {
      action: "set",
      athlete_id: "ana-l",
      date: "2025-10-06",
      field: "implement",
      from: "game",
      to: "wood",
    };
    const out = await corrected(drop, run);
    expect(speeds(out)).toEqual([62, 63]);
  });
});

test("a correction that names nothing, or not enough, says so", async () => {
  const season = await corrected(
    { action: "void", file: A, line: 99 },
    { action: "void", file: A },
    { action: "void", athlete_id: "ana-l" },
    { action: "void", athlete_id: "anna-l", date: "2025-10-06" },
    { action: "set", file: A, line: 2, field: "athlete_id", from: "ana-l", to: "ben-k" },
    { action: "set", file: A, line: 2, from: 61, to: 62 },
    { action: "reassign", file: A, line: 2, from: "ana-l" },
    { action: "void", athlete_id: "ana-l", date: "2025-10-06", first: 4, last: 9 },
    { action: "void", athlete_id: "ana-l", date: "2025-10-06", first: 3, last: 2 },
  );
  expect(refused(season).map(([where]) => where)).toEqual([
    `${FILE}:2:- correction-without-rows`,
    `${FILE}:3:- correction-incomplete`,
    `${FILE}:4:- correction-incomplete`,
    `${FILE}:5:- unknown-athlete`,
    `${FILE}:6:- correction-incomplete`,
    `${FILE}:7:- correction-incomplete`,
    `${FILE}:8:- correction-incomplete`,
    `${FILE}:9:- correction-without-rows`,
    `${FILE}:10:- correction-incomplete`,
  ]);
  expect(season.corrections).toEqual([]);
  expect(speeds(season)).toEqual([61, 62, 63]);
});

describe("corrections and exports that grow", () => {
  const grown = `${SWINGS.trimEnd()}\nana-l,2025-10-07,17:00:01,1,1,game,66\n`;

  test("a corrected row stays corrected when a later export repeats it uncorrected", async () => {
    const row = { action: "set", line: 2, field: "bat_speed", from: 61, to: 64 };
    for (const file of [A, "data/swings/b.csv"]) {
      const season = await seasonOf({
        ...BEN,
        [A]: SWINGS,
        "data/swings/b.csv": grown,
        [FILE]: corrections({ ...row, file }),
      });
      expect(speeds(season)).toEqual([64, 62, 63, 66]);
    }
  });

  test("a row that two exports tell under two names is one swing once it has been moved", async () => {
    const mended = SWINGS.replace("ana-l,2025-10-06,17:05:09", "ben-k,2025-10-06,17:05:09");
    const season = await seasonOf({
      ...BEN,
      [A]: SWINGS,
      "data/swings/b.csv": mended,
      [FILE]: corrections({ action: "reassign", file: A, line: 2, from: "ana-l", to: "ben-k" }),
    });
    expect(speeds(season, "ben-k")).toEqual([61, 70]);
  });
});
