import { describe, expect, test } from "vitest";
import { asideOf, balance, coded, placed, seasonOf } from "../season-of.ts";
import { LOG_HEADER, logLine, PROFILES } from "./cage.ts";

const FILE = "data/swings/ana.csv";
const LOG = "data/blocks/log.csv";
type Cells = Readonly<Record<string, string | number>>;
const log = (...rows: readonly Cells[]): string =>
  [LOG_HEADER, ...rows.map((row) => logLine({ date: "2025-10-06", ...row })), ""].join("\n");
const ANA = { athlete_id: "ana-l" };
/** "Low tee first, six, then ten from the front, then three rounds of five off the machine." */
const DAY: readonly Cells[] = [
  { ...ANA, block: 1, environment: "tee", drill: "low-tee", implement: "game", rounds: 1, reps: 6 },
  { ...ANA, block: 2, environment: "front-toss", implement: "game", rounds: 1, reps: 10 },
  { ...ANA, block: 3, environment: "machine", implement: "wood", rounds: 3, reps: 5 },
];
const swings = (columns: string, rows: readonly string[]): string =>
  [
    `athlete_id,date,${columns},bat_speed_mph`,
    ...rows.map((row, i) => `ana-l,2025-10-06,${row}${60 + (i % 5)}`),
    "",
  ].join("\n");
/** Swings without any context: only their speeds. */
const bare = (count: number): string =>
  swings(
    "comment",
    Array.from({ length: count }, () => ","),
  );
/** Swings with times: runs of so many, ten seconds apart, with pauses of so many seconds before each run. */
const timed = (runs: readonly number[], pauses: readonly number[], from = 17 * 3600): string => {
  let second = from;
  const rows = runs.flatMap((count, run) => {
    second += pauses[run] ?? 0;
    return Array.from({ length: count }, (_, i) => {
      if (i > 0) second += 9 + ((second + i) % 3);
      return `${new Date(second * 1000).toISOString().slice(11, 19)},`;
    });
  });
  return swings("time", rows);
};
const seasonWith = (table: string, rows: readonly Cells[], more: Record<string, string> = {}) =>
  seasonOf({ ...PROFILES, [FILE]: table, [LOG]: log(...rows), ...more });
type Season = Awaited<ReturnType<typeof seasonOf>>;
const words = (season: Season, field: string, id = "ana-l") =>
  season.athletes.find((one) => one.id === id)?.reps.words[field];
const numbers = (season: Season, field: string, id = "ana-l") =>
  season.athletes.find((one) => one.id === id)?.reps.numbers[field];
const times = (count: number, value: unknown) => Array.from({ length: count }, () => value);
const bal = (season: Season): void => {
  const { read, kept, setAside } = balance(season);
  expect(kept + setAside).toBe(read);
};

describe("reps that say nothing of themselves, by counting in order", () => {
  test("6, then 10, then 5 x 3 find their blocks, rounds and numbers when the day went to plan", async () => {
    const season = await seasonWith(bare(31), DAY);
    expect(season.problems).toEqual([]);
    expect(words(season, "block")).toEqual([...times(6, "1"), ...times(10, "2"), ...times(15, "3")]);
    expect(words(season, "environment")).toEqual([
      ...times(6, "tee"),
      ...times(10, "front-toss"),
      ...times(15, "machine"),
    ]);
    expect(words(season, "assigned")).toEqual(times(31, "count"));
    expect(numbers(season, "round")?.slice(16)).toEqual([1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 3, 3, 3, 3, 3]);
    expect(numbers(season, "rep")?.slice(14, 18)).toEqual([9, 10, 1, 2]);
    expect(season.athletes[0]?.log.map(({ block, swings: planned, assigned }) => [block, planned, assigned])).toEqual([
      ["1", 6, { count: 6 }],
      ["2", 10, { count: 10 }],
      ["3", 15, { count: 15 }],
    ]);
  });

  test("bats alternate inside a round by their parts", async () => {
    const part = { ...ANA, block: 1, environment: "tee", rounds: 2, reps: 3 };
    const season = await seasonWith(bare(12), [
      { ...part, part: "a", implement: "game" },
      { ...part, part: "b", implement: "wood" },
    ]);
    const round = [...times(3, "game"), ...times(3, "wood")];
    expect(words(season, "implement")).toEqual([...round, ...round]);
    expect(numbers(season, "rep")).toEqual([1, 2, 3, 1, 2, 3, 1, 2, 3, 1, 2, 3]);
  });

  test("one swing short without any times: what is in doubt at the edges is set aside, not the day", async () => {
    const season = await seasonWith(bare(30), DAY);
    bal(season);
    const lines = season.setAside.map(({ line }) => line);
    expect(season.setAside.every(({ reason, athlete }) => reason === "unassigned-block" && athlete === "ana-l")).toBe(
      true,
    );
    expect(lines.length).toBeLessThanOrEqual(4);
    for (const line of lines) expect([7, 8, 16, 17]).toContain(line);
    const [first] = coded(season, "unassigned-block");
    expect(first?.args).toMatchObject({ detail: "between", blocks: "block 1 or block 2" });
    const told = coded(season, "unassigned-block").map(
      ({ args }) => `${args.block} expects ${args.expected}, ${args.found} found`,
    );
    expect(told).toContain("block 2 expects 10, 9 found");
  });

  test("far too many swings are not the log's: none is guessed", async () => {
    const season = await seasonWith(bare(80), DAY);
    bal(season);
    expect(balance(season).kept).toBe(0);
  });

  test("a day without a log stays as it is, and so does one whose log has nothing measured", async () => {
    const other = await seasonWith(bare(4), [{ ...ANA, date: "2025-10-07", block: 1, environment: "tee", reps: 4 }]);
    expect([words(other, "environment"), other.setAside]).toEqual([undefined, []]);
    const dry = await seasonWith(bare(4), [{ ...ANA, block: "u1", environment: "dry", reps: 4, measured: "none" }]);
    expect([words(dry, "environment"), dry.setAside]).toEqual([undefined, []]);
  });
});

describe("pauses", () => {
  const PAUSES = [0, 240, 260, 80, 75];

  test("tell blocks apart where a swing is missing, and the block says how many it has", async () => {
    const season = await seasonWith(timed([6, 9, 5, 5, 5], PAUSES), DAY);
    expect(season.setAside).toEqual([]);
    expect(words(season, "block")).toEqual([...times(6, "1"), ...times(9, "2"), ...times(15, "3")]);
    expect(words(season, "assigned")).toEqual(times(30, "time"));
    expect(coded(season, "block-count").map(({ at, args }) => [at.line, args])).toEqual([
      [3, { block: "block 2", athlete: "ana-l", date: "2025-10-06", expected: 10, found: 9 }],
    ]);
  });

  test("are believed before a total that fits only by chance", async () => {
    const season = await seasonWith(timed([6, 9, 5, 6, 5], PAUSES), DAY);
    expect(words(season, "block")).toEqual([...times(6, "1"), ...times(9, "2"), ...times(16, "3")]);
    expect(numbers(season, "round")?.slice(15)).toEqual([...times(5, 1), ...times(6, 2), ...times(5, 3)]);
  });

  test("make rounds, checked against the log's", async () => {
    const season = await seasonWith(timed([5, 4, 5], [0, 80, 75]), [{ ...DAY[2] }]);
    expect(numbers(season, "round")).toEqual([...times(5, 1), ...times(4, 2), ...times(5, 3)]);
    expect(numbers(season, "rep")).toEqual([1, 2, 3, 4, 5, 1, 2, 3, 4, 1, 2, 3, 4, 5]);
  });

  test("set swings apart that no block knows of", async () => {
    const season = await seasonWith(timed([8, 6, 10, 5, 5, 5], [0, 400, ...PAUSES.slice(1)]), DAY);
    bal(season);
    expect(season.setAside.map(({ line }) => line)).toEqual([2, 3, 4, 5, 6, 7, 8, 9]);
    expect(coded(season, "unassigned-block")[0]?.args).toMatchObject({ detail: "outside" });
  });

  test("a block that nobody swung is left empty", async () => {
    const season = await seasonWith(timed([6, 5, 5, 5], [0, 260, 80, 75]), DAY);
    expect(words(season, "block")).toEqual([...times(6, "1"), ...times(15, "3")]);
    expect(season.athletes[0]?.log[1]?.assigned).toEqual({});
  });
});

describe("by the time of day", () => {
  const at = (rows: readonly Cells[]) =>
    rows.map((row, i) => ({ ...row, start: ["17:00", "17:10", "17:25"][i] ?? "" }));

  test("swings belong to the block that was going on", async () => {
    const season = await seasonWith(timed([4, 7, 13], [0, 600, 900]), at(DAY));
    expect(season.setAside).toEqual([]);
    expect(words(season, "block")).toEqual([...times(4, "1"), ...times(7, "2"), ...times(13, "3")]);
    expect(words(season, "assigned")).toEqual(times(24, "time"));
  });

  test("times to the minute are enough", async () => {
    const minutes = ["17:01", "17:01", "17:02", "17:12", "17:13", "17:13", "17:27", "17:28"].map((time) => `${time},`);
    const season = await seasonWith(swings("time", minutes), at(DAY));
    expect(words(season, "block")).toEqual([...times(3, "1"), ...times(3, "2"), ...times(2, "3")]);
  });
});

describe("by the number of the block", () => {
  test("the number is believed whatever the count", async () => {
    const rows = [...times(4, "2,"), ...times(3, "1,")] as string[];
    const season = await seasonWith(swings("block", rows), DAY);
    expect(words(season, "environment")).toEqual([...times(4, "front-toss"), ...times(3, "tee")]);
    expect(words(season, "assigned")).toEqual(times(7, "number"));
  });

  test("a number that the log of the day does not have is set aside, unless the rep tells its own context", async () => {
    const season = await seasonWith(swings("block,environment", ["7,,", "7,tee,", "1,,"]), DAY);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:- unassigned-block`]);
    expect(coded(season, "unassigned-block")[0]?.args).toEqual({ detail: "no-block", block: "block 7" });
    expect(words(season, "environment")).toEqual(["tee", "tee"]);
  });

  test("a rep that tells its own bat finds its part", async () => {
    const part = { ...ANA, block: 1, rounds: 2, reps: 3 };
    const rows = ["1,game,", "1,wood,", "1,wood,", "1,game,"];
    const parts = [
      { ...part, part: "a", implement: "game", environment: "tee" },
      { ...part, part: "b", implement: "wood", environment: "tee" },
    ];
    const season = await seasonWith(swings("block,implement", rows), parts);
    expect(words(season, "implement")).toEqual(["game", "wood", "wood", "game"]);
    expect(coded(season, "contradiction")).toEqual([]);
  });
});

describe("what a rep inherits", () => {
  const FEEDS = {
    "data/feeds.csv": [
      "id,kind,pitch_type,pitcher_side,pitch_speed_mph,pitch_speed_at,pitch_distance_ft,spin_rpm,spin_axis,ball,from,to",
      "wheel,machine,fastball,right,60,set,50,1800,12:30,,,2025-10-31",
      "wheel,machine,fastball,right,66,set,50,1900,12:30,dimple,2025-11-01,",
      "",
    ].join("\n"),
  };

  test("a feed's preset that holds on the day fills the pitch", async () => {
    const rows = [{ ...ANA, block: 1, environment: "machine", feed: "wheel", reps: 2 }];
    const season = await seasonWith(bare(2), rows, FEEDS);
    expect(season.problems).toEqual([]);
    expect(numbers(season, "pitch_speed")).toEqual([60, 60]);
    expect(numbers(season, "spin")).toEqual([1800, 1800]);
    expect([words(season, "pitch_speed_at"), words(season, "spin_axis")]).toEqual([
      ["set", "set"],
      ["12:30", "12:30"],
    ]);
    const unknown = await seasonWith(bare(2), [{ ...rows[0], feed: "weel" }], FEEDS);
    expect(coded(unknown, "not-in-list")[0]?.args).toEqual({
      key: "feed",
      found: "weel",
      list: "feeds",
      suggestion: "wheel",
    });
    const gone = {
      "data/feeds.csv": FEEDS["data/feeds.csv"].replace(/^wheel,.*66.*$/m, "").replaceAll("2025-10-31", "2025-09-30"),
    };
    expect(coded(await seasonWith(bare(2), rows, gone), "feed-not-valid").map(placed)).toEqual([
      `${LOG}:2:- feed-not-valid`,
    ]);
  });

  test("a rep's own word comes before the log's, and both places are told once", async () => {
    const season = await seasonWith(swings("block,environment", times(3, "3,tee,") as string[]), DAY);
    expect(words(season, "environment")).toEqual(["tee", "tee", "tee"]);
    expect(words(season, "implement")).toEqual(["wood", "wood", "wood"]);
    expect(coded(season, "contradiction").map((problem) => [placed(problem), problem.level, problem.args])).toEqual([
      [
        `${FILE}:2:4 contradiction`,
        "note",
        { field: "environment", value: "tee", found: "machine", other: `${LOG}:4`, rows: 3 },
      ],
    ]);
  });

  test("the log comes before a mapping's fixed value, which comes before the profile", async () => {
    const mapping = {
      label: "Sensor",
      header: ["Who", "Day", "Speed", "Place"],
      columns: {
        Who: { field: "athlete_id" },
        Day: { field: "date" },
        Speed: { field: "bat_speed" },
        Place: { field: "place" },
      },
      fixed: { environment: "dry", side: "right", place: "facility" },
    };
    const season = await seasonOf({
      ...PROFILES,
      "data/mappings/one.json": JSON.stringify(mapping),
      [FILE]: "Who,Day,Speed,Place\nben-k,2025-10-06,60,home\nben-k,2025-10-07,61,\n",
      [LOG]: log({ athlete_id: "ben-k", block: 1, environment: "tee", reps: 1 }),
    });
    expect(words(season, "environment", "ben-k")).toEqual(["tee", "dry"]);
    expect(words(season, "side", "ben-k")).toEqual(["right", "right"]);
    expect(words(season, "place", "ben-k")).toEqual(["home", "facility"]);
  });

  test("the profile tells the side of a rep that has a block, and of no other", async () => {
    const ben = (day: string) => `ben-k,${day},60`;
    const table = ["athlete_id,date,bat_speed_mph", ben("2025-10-06"), ben("2025-10-07"), ""].join("\n");
    const season = await seasonWith(table, [{ athlete_id: "ben-k", block: 1, environment: "tee", reps: 1 }]);
    expect(words(season, "side", "ben-k")).toEqual(["left", null]);
  });

  test("a drill tells its environment; where the row says otherwise both are told", async () => {
    const drills = { "content/drills.md": "---\ndrills: [{ id: low-tee, label: Low tee, environment: tee }]\n---\n" };
    const row = { ...ANA, block: 1, drill: "low-tee", reps: 2 };
    expect(words(await seasonWith(bare(2), [row], drills), "environment")).toEqual(["tee", "tee"]);
    const other = await seasonWith(bare(2), [{ ...row, environment: "machine" }], drills);
    expect(words(other, "environment")).toEqual(["machine", "machine"]);
    expect(coded(other, "contradiction")[0]?.args).toMatchObject({
      value: "machine",
      found: "tee",
      other: "the drill low-tee",
    });
  });

  test("a word that no swing may have is given to none", async () => {
    const season = await seasonWith(bare(1), [{ ...ANA, block: 1, environment: "tee", feed: "hot", reps: 1 }], {
      "data/feeds.csv": "id,pitch_speed_mph\nhot,160\n",
    });
    expect(numbers(season, "pitch_speed")).toBe(undefined);
    expect(coded(season, "log-value")[0]?.args).toEqual({ key: "hot: pitch_speed_mph", found: 160 });
  });
});

describe("whose block it is", () => {
  const three = [
    "athlete_id,date,bat_speed_mph",
    ...["ana-l", "ben-k", "cal-m"].flatMap((id) => times(4, `${id},2025-10-06,60`)),
    "",
  ].join("\n");

  test("a day for three hitters that went to plan takes one line", async () => {
    const season = await seasonWith(three, [{ group: "evening", environment: "tee", reps: 4 }]);
    expect(season.problems).toEqual([]);
    for (const id of ["ana-l", "ben-k", "cal-m"]) expect(words(season, "environment", id)).toEqual(times(4, "tee"));
  });

  test("an athlete's row overrides the cells that it fills and inherits the rest", async () => {
    const season = await seasonWith(three.replace("cal-m,2025-10-06,60\n", ""), [
      { group: "evening", block: 1, environment: "tee", implement: "game", reps: 4 },
      { athlete_id: "cal-m", block: 1, implement: "wood", reps: 3 },
    ]);
    expect(season.problems).toEqual([]);
    expect(words(season, "implement", "ana-l")).toEqual(times(4, "game"));
    expect(words(season, "implement", "cal-m")).toEqual(times(3, "wood"));
    expect(words(season, "environment", "cal-m")).toEqual(times(3, "tee"));
    expect(season.athletes.find(({ id }) => id === "cal-m")?.log[0]?.from.map(({ line }) => line)).toEqual([3, 2]);
  });

  test("a group's row is nobody's who was not there", async () => {
    const two = three.replaceAll("cal-m,2025-10-06,60\n", "");
    const season = await seasonWith(two, [{ group: "evening", block: 1, environment: "tee", reps: 4 }]);
    expect(season.athletes.map(({ id, log: own }) => [id, own.length])).toEqual([
      ["ana-l", 1],
      ["ben-k", 1],
      ["cal-m", 0],
    ]);
    const none = await seasonWith(bare(0), [
      { group: "evening", block: 1, environment: "dry", reps: 4, measured: "none" },
    ]);
    expect(none.athletes.map(({ log: own }) => own.length)).toEqual([1, 1, 1]);
  });

  test("a row of nobody, of an unknown group, and a second row for the same block are told", async () => {
    const season = await seasonWith(bare(4), [
      { environment: "tee", reps: 4 },
      { group: "evenings", environment: "tee", reps: 4 },
      { ...ANA, athlete_id: "ana-1", environment: "tee", reps: 4 },
      { ...ANA, block: 1, environment: "tee", reps: 4 },
      { ...ANA, block: 1, environment: "dry", reps: 4 },
    ]);
    expect(season.problems.filter(({ at }) => at.file === LOG).map(placed)).toEqual([
      `${LOG}:2:- missing-key`,
      `${LOG}:3:- not-in-list`,
      `${LOG}:4:- unknown-athlete`,
      `${LOG}:6:- repeated-block`,
    ]);
    expect(words(season, "environment")).toEqual(times(4, "tee"));
  });
});

describe("two devices", () => {
  test("each lays its own rows over the log, and a block that measured speed is none of the radar's", async () => {
    const radar = ["athlete_id,date,exit_velocity_mph", ...times(10, "ana-l,2025-10-06,80"), ""].join("\n");
    const rows = DAY.slice(0, 2).map((row, i) => ({ ...row, measured: i === 0 ? "speed" : "both" }));
    const season = await seasonOf({
      ...PROFILES,
      "data/swings/knob/a.csv": bare(16),
      "data/swings/radar/a.csv": radar,
      [LOG]: log(...rows),
    });
    expect(season.setAside).toEqual([]);
    expect(words(season, "block")).toEqual([...times(6, "1"), ...times(10, "2"), ...times(10, "2")]);
  });
});

test("by the log's own clock: a stray swing takes nobody else's place, even where times are whole minutes", async () => {
  const blocks = [
    { ...ANA, block: 1, environment: "tee", start: "17:00", end: "17:10" },
    { ...ANA, block: 2, environment: "front-toss", start: "17:11", end: "17:20" },
  ];
  const at = ["17:01", "17:03", "17:05", "17:12", "17:15", "17:40"];
  const season = await seasonWith(
    swings(
      "time",
      at.map((time) => `${time}:00,`),
    ),
    blocks,
  );
  expect(words(season, "block")).toEqual(["1", "1", "1", "2", "2"]);
  expect(season.setAside.map(({ line, reason }) => [line, reason])).toEqual([[7, "unassigned-block"]]);
  bal(season);
});
