import { expect, test } from "vitest";
import { balance, coded, seasonOf } from "../season-of.ts";
import { exported, LOG_HEADER, logLine, MAPPING, type Planned, PROFILES, seeded, sightings } from "./cage.ts";

const FILE = "data/swings/ana.csv";
const HEAD = "by,on,reason,file,line,athlete_id,date,block,first,last,action,field,from,to";
const correction = (...rows: readonly string[]): string =>
  [HEAD, ...rows.map((row) => `kay,2025-10-20,seen on film,${row}`), ""].join("\n");
const block = (label: number, environment: string, reps: number): string =>
  logLine({ date: "2025-10-06", athlete_id: "ana-l", block: label, environment, implement: "game", reps });
const seasonWith = (rows: number, corrections: string) =>
  seasonOf({
    ...PROFILES,
    [FILE]: ["athlete_id,date,bat_speed_mph", ...Array.from({ length: rows }, () => "ana-l,2025-10-06,60"), ""].join(
      "\n",
    ),
    "data/blocks/log.csv": [LOG_HEADER, block(1, "tee", 6), block(2, "machine", 10), ""].join("\n"),
    "data/corrections.csv": corrections,
  });

test("a row that nobody could place is given its block by a correction", async () => {
  const open = await seasonWith(15, correction());
  const lines = open.setAside.map(({ line }) => line);
  expect(lines.length).toBeGreaterThan(0);
  const placed = await seasonWith(15, correction(...lines.map((line) => `ana.csv,${line},,,,,,set,block,,1`)));
  expect(placed.setAside.filter(({ line }) => lines.includes(line))).toEqual([]);
  const reps = placed.athletes[0]?.reps;
  for (const line of lines) {
    const at = reps?.line.indexOf(line) ?? -1;
    expect([reps?.words.environment?.[at], reps?.words.assigned?.[at]]).toEqual(["tee", "number"]);
  }
});

test("a waggle that is taken out first lets the day be counted off", async () => {
  const season = await seasonWith(17, correction("ana.csv,4,,,,,,void,,,"));
  expect(season.setAside.map(({ line, reason }) => [line, reason])).toEqual([[4, "void"]]);
  expect(season.athletes[0]?.reps.words.environment?.filter((word) => word === "tee")).toHaveLength(6);
});

test("a correction may name a block that only the log gives its rows: it comes before the log's own word", async () => {
  const season = await seasonWith(
    16,
    correction(",,ana-l,2025-10-06,2,1,3,set,implement,game,wood", ",,ana-l,2025-10-06,7,,,void,,,"),
  );
  const reps = season.athletes[0]?.reps;
  expect(reps?.words.implement?.slice(5, 10)).toEqual(["game", "wood", "wood", "wood", "game"]);
  expect(coded(season, "correction-without-rows").map(({ at }) => at.line)).toEqual([3]);
  const gone = await seasonWith(16, correction(",,ana-l,2025-10-06,2,,,void,,,"));
  expect(balance(gone)).toEqual({ read: 16, kept: 6, setAside: 10 });
});

const PLAN: readonly Planned[] = [{ block: "1", rounds: 6, reps: 5 }];
const rows = (over: readonly Record<string, string | number>[]): string =>
  [
    LOG_HEADER,
    ...["game", "wood"].map((implement, i) =>
      logLine({
        date: "2025-10-06",
        group: "evening",
        block: 1,
        part: "ab"[i] ?? "",
        environment: "tee",
        implement,
        rounds: 6,
        reps: 5,
      }),
    ),
    ...over.map((cells) => logLine({ date: "2025-10-06", block: 1, ...cells })),
    "",
  ].join("\n");
const lane = (without: (round: number, athlete: string) => boolean, log: string, seed = 3) => {
  const seen = sightings(PLAN, { missed: 0, waggle: 0, leftOut: 0, without }, seeded(seed));
  const files = {
    ...PROFILES,
    "data/mappings/lane.json": JSON.stringify(MAPPING),
    "data/swings/lane.csv": exported(seen, "2025-10-06"),
    "data/blocks/log.csv": log,
  };
  return seasonOf(files).then((season) => ({ season, seen }));
};

test("a hitter who was not there is said with a row of no rounds, and the others rotate alone", async () => {
  const { season, seen } = await lane((_, athlete) => athlete === "ben-k", rows([{ athlete_id: "ben-k", rounds: 0 }]));
  expect(season.setAside).toEqual([]);
  for (const { id, reps } of season.athletes)
    expect(reps.line.map((line) => seen[line - 2]?.athlete)).toEqual(
      Array.from({ length: id === "ben-k" ? 0 : 60 }, () => id),
    );
});

test("who left out a round that anybody could have left out is not guessed; the other rounds stand", async () => {
  const { season, seen } = await lane((round, athlete) => round === 2 && athlete === "ben-k", rows([]));
  expect(new Set(season.setAside.map(({ line }) => seen[line - 2]?.round))).toEqual(new Set([2]));
});

test("a hitter's own row that says how many rounds there were lets more be told, and nothing wrong", async () => {
  const kept = { said: 0, unsaid: 0 };
  for (const seed of [1, 2, 3, 4, 5, 6]) {
    const without = (round: number, athlete: string): boolean => round === 2 && athlete === "ben-k";
    kept.unsaid += balance((await lane(without, rows([]), seed)).season).kept;
    const { season, seen } = await lane(without, rows([{ athlete_id: "ben-k", rounds: 5 }]), seed);
    kept.said += balance(season).kept;
    for (const { id, reps } of season.athletes) for (const line of reps.line) expect(seen[line - 2]?.athlete).toBe(id);
  }
  expect(kept.said).toBeGreaterThan(kept.unsaid);
});

test("rows under no name on a day without a log are nobody's", async () => {
  const { season } = await lane(() => false, LOG_HEADER);
  expect(balance(season).kept).toBe(0);
  expect(season.setAside.every(({ reason, athlete }) => reason === "unassigned-block" && athlete === null)).toBe(true);
  expect(coded(season, "unassigned-block")[0]?.args).toEqual({ detail: "no-log" });
});
