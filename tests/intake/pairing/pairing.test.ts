import { describe, expect, test } from "vitest";
import type { RepTable, Season } from "../../../src/schema/season.ts";
import { BASE, balance, coded, seasonOf } from "../season-of.ts";
import { ballCsv, batCsv, clock, type MadeSwing, madeSwings } from "./two-exports.ts";

const BAT = "data/swings/sensor/day.csv";
const BALL = "data/swings/screen/day.csv";
const SWINGS = madeSwings(60);
const files = (more: Readonly<Record<string, string>> = {}) => ({
  [BAT]: batCsv(SWINGS, "ana-l"),
  [BALL]: ballCsv(SWINGS, "ana-l", 95.2),
  ...more,
});
const repsOf = (season: Season, athlete = "ana-l"): RepTable => season.athletes.find(({ id }) => id === athlete)!.reps;
const rowsRead = (season: Season): number =>
  season.athletes.reduce((sum, { reps }) => sum + reps.n + reps.partner.filter((one) => one !== null).length, 0) +
  season.setAside.length;
const sorted = (values: readonly (number | null)[]) => [...values].map(String).sort();

describe("two exports of one athlete's day", () => {
  test("become one rep a swing, with both sources; what one device missed stays single; no row is lost", async () => {
    const season = await seasonOf(files());
    const reps = repsOf(season);
    const both = SWINGS.filter(({ bat, exit }) => bat !== null && exit !== null);
    const told = reps.numbers.bat_speed!.flatMap((bat, i) =>
      bat !== null && reps.numbers.exit_velocity![i] != null ? [`${bat} ${reps.numbers.exit_velocity![i]}`] : [],
    );
    const truth = both.map(({ bat, exit }) => `${Number(bat!.toFixed(1))} ${Number(exit!.toFixed(1))}`);
    expect(told).toEqual(truth);
    expect(reps.partner.filter((one) => one !== null)).toHaveLength(both.length);
    expect(rowsRead(season)).toBe(balance(season).read);
    expect(reps.words.pairing!.filter((one) => one === "ball-not-recorded")).toHaveLength(
      SWINGS.filter(({ exit }) => exit === null).length,
    );
    expect(reps.words.pairing!.filter((one) => one === "bat-not-recorded")).toHaveLength(
      SWINGS.filter(({ bat }) => bat === null).length,
    );
  });

  test("are told for the desk: clocks, pairs and every row", async () => {
    const [session, ...others] = (await seasonOf(files())).pairings;
    expect(others).toEqual([]);
    expect(session).toMatchObject({ athlete: "ana-l", date: "2025-11-04", outcome: "paired", doubtful: [] });
    expect(session!.clocks!.offset).toBeCloseTo(95.2, 1);
    expect(session!.bats).toHaveLength(57);
    expect(session!.pairs.every(({ confidence, told }) => confidence > 0.9 && !told)).toBe(true);
    expect(session!.bats[0]).toMatchObject({ file: BAT, line: 2, mph: Number(SWINGS[0]!.bat!.toFixed(1)) });
  });

  test("whose order of rows is another are the same reps", async () => {
    const [header, ...rows] = ballCsv(SWINGS, "ana-l", 95.2).trimEnd().split("\n");
    const turned = await seasonOf(files({ [BALL]: [header, ...rows.reverse(), ""].join("\n") }));
    const plain = await seasonOf(files());
    expect(repsOf(turned).numbers).toEqual(
      // Single balls follow the reps of the bat in the order of their own file.
      expect.objectContaining({ bat_speed: expect.arrayContaining(repsOf(plain).numbers.bat_speed as number[]) }),
    );
    expect(sorted(repsOf(turned).numbers.exit_velocity!)).toEqual(sorted(repsOf(plain).numbers.exit_velocity!));
  });

  test("a waggle far below the swings is no swing, and a miss needs no ball", async () => {
    const lines = batCsv(SWINGS, "ana-l", "2025-11-04", ",", "result,").trimEnd().split("\n");
    const waggle = `ana-l,2025-11-04,${clock(SWINGS[30]!.at + 3.4)},,22.0`;
    const missed = `ana-l,2025-11-04,${clock(SWINGS[31]!.at + 3.1)},miss,49.9`;
    const reps = repsOf(await seasonOf(files({ [BAT]: [...lines, waggle, missed, ""].join("\n") })));
    const at = (speed: number) => reps.numbers.bat_speed!.indexOf(speed);
    expect(reps.words.pairing![at(22)]).toBe("no-swing");
    expect(reps.words.pairing![at(49.9)]).toBe(null);
  });

  test("a mapping may forbid it, and so does a log that says only speed was measured", async () => {
    const mapping = {
      label: "Screen",
      header: ["who", "day", "clock", "off", "up"],
      pairs: false,
      columns: {
        who: { field: "athlete_id" },
        day: { field: "date" },
        clock: { field: "time" },
        off: { field: "exit_velocity", unit: "mph" },
        up: { field: "launch_angle", unit: "deg" },
      },
    };
    const named = ballCsv(SWINGS, "ana-l", 95.2).replace(/^.*\n/, "who,day,clock,off,up\n");
    const forbidden = await seasonOf(files({ [BALL]: named, "data/mappings/screen.json": JSON.stringify(mapping) }));
    expect(forbidden.problems.filter(({ level }) => level === "error")).toEqual([]);
    expect([forbidden.pairings, repsOf(forbidden).n]).toEqual([[], 57 + 57]);
    const log = "date,athlete_id,block,environment,measured\n2025-11-04,ana-l,1,tee,speed\n";
    const speedOnly = await seasonOf(files({ "data/blocks/log.csv": log }));
    expect(repsOf(speedOnly).partner.every((one) => one === null)).toBe(true);
  });

  test("blocks of the log narrow the search, and the joined rep has its block's words", async () => {
    const [first, last] = [SWINGS[0]!.at, SWINGS.at(-1)!.at];
    const log = `date,athlete_id,block,environment,implement,start,end\n2025-11-04,ana-l,1,machine,game,${clock(first - 60).slice(0, 5)},${clock(last + 180).slice(0, 5)}\n`;
    const reps = repsOf(await seasonOf(files({ "data/blocks/log.csv": log })));
    const joined = reps.partner.flatMap((one, i) => (one === null ? [] : [i]));
    expect(joined.length).toBeGreaterThan(50);
    expect(new Set(joined.map((i) => reps.words.environment![i]))).toEqual(new Set(["machine"]));
  });

  test("times without seconds and clocks that tell nothing pair nothing, and that is said once a file", async () => {
    const coarse = (text: string) => text.replaceAll(/(\d\d:\d\d):\d\d(\.\d+)?/g, "$1");
    const minutes = await seasonOf({
      [BAT]: coarse(batCsv(SWINGS, "ana-l")),
      [BALL]: coarse(ballCsv(SWINGS, "ana-l", 0)),
    });
    expect(coded(minutes, "pairs-without-seconds").map(({ at, args }) => [at.file, args])).toEqual([
      [BAT, { athlete: "ana-l", date: "2025-11-04", days: 1, other: BALL }],
    ]);
    const other = await seasonOf(files({ [BALL]: ballCsv(madeSwings(60, "another day"), "ana-l", 95.2) }));
    expect(coded(other, "pairs-not-told").map(({ at }) => at.file)).toEqual([BAT]);
    expect(repsOf(other).n).toBe(57 + 57);
    expect(other.pairings[0]).toMatchObject({ outcome: "cannot-tell", clocks: null, pairs: [] });
  });
});

describe("hitters in turn before one screen that knows no names", () => {
  const PROFILE = "---\nname: Bea Morrow\n---\n";
  const mapping = {
    label: "Screen",
    header: ["day", "clock", "off", "up"],
    columns: {
      day: { field: "date" },
      clock: { field: "time" },
      off: { field: "exit_velocity", unit: "mph" },
      up: { field: "launch_angle", unit: "deg" },
    },
  };
  const all = madeSwings(80, "turns");
  const own = (hitter: number): MadeSwing[] => all.filter((_, i) => Math.floor(i / 6) % 2 === hitter);
  const screen = ballCsv(all, "", 40).replace(/^.*\n/, "day,clock,off,up\n").replaceAll(/^,/gm, "");

  test("each sensor finds its own balls, which are theirs then; balls that nobody's sensor saw stay nobody's", async () => {
    const season = await seasonOf(
      {
        "content/athletes/bea-m/profile.md": PROFILE,
        "data/mappings/screen.json": JSON.stringify(mapping),
        "data/swings/sensor-a/day.csv": batCsv(own(0), "ana-l"),
        // A clock of its own.
        "data/swings/sensor-b/day.csv": batCsv(
          own(1).map((one) => ({ ...one, at: one.at - 200 })),
          "bea-m",
        ),
        [BALL]: screen,
      },
      BASE,
    );
    for (const [hitter, id] of ["ana-l", "bea-m"].entries()) {
      const reps = repsOf(season, id);
      const truth = own(hitter).flatMap(({ bat, exit }) =>
        bat !== null && exit !== null ? [Number(exit.toFixed(1))] : [],
      );
      expect(reps.numbers.exit_velocity!.filter((one) => one !== null)).toEqual(truth);
    }
    const nobody = all.filter(({ bat, exit }) => bat === null && exit !== null).length;
    expect(season.setAside.map(({ reason }) => reason)).toEqual(
      Array.from({ length: nobody }, () => "unassigned-block"),
    );
    expect(rowsRead(season)).toBe(balance(season).read);
  });
});

describe("two hitters with names on both devices, in two lanes at once", () => {
  const [ana, bea] = [madeSwings(50, "lane a"), madeSwings(50, "lane b")];
  const lines = (text: string) => text.trimEnd().split("\n").slice(1);
  const time = (line: string) => line.split(",")[2]!;
  const screen = [...lines(ballCsv(ana, "ana-l", 20)), ...lines(ballCsv(bea, "bea-m", 20))].sort((a, b) =>
    time(a) < time(b) ? -1 : 1,
  );

  test("each sensor meets its own hitter's balls, and each session shows no other's", async () => {
    const season = await seasonOf({
      "content/athletes/bea-m/profile.md": "---\nname: Bea Morrow\n---\n",
      "data/swings/sensor-a/day.csv": batCsv(ana, "ana-l"),
      "data/swings/sensor-b/day.csv": batCsv(bea, "bea-m"),
      [BALL]: ["athlete_id,date,time,exit_velocity_mph,launch_angle_deg", ...screen, ""].join("\n"),
    });
    for (const [id, swings] of [
      ["ana-l", ana],
      ["bea-m", bea],
    ] as const) {
      const both = swings.filter(({ bat, exit }) => bat !== null && exit !== null).length;
      const session = season.pairings.find(({ athlete }) => athlete === id)!;
      expect(session.balls).toHaveLength(swings.filter(({ exit }) => exit !== null).length);
      expect(session.pairs).toHaveLength(both);
      expect(repsOf(season, id).partner.filter((one) => one !== null)).toHaveLength(both);
      for (const { a, b } of session.pairs) {
        const made = swings.find(({ at }) => Math.abs(at - session.bats[a]!.time) < 0.01)!;
        expect(Number(made.exit!.toFixed(1))).toBe(session.balls[b]!.mph);
      }
    }
    expect(rowsRead(season)).toBe(balance(season).read);
  });
});

describe("corrections", () => {
  const HEAD = "by,on,reason,file,line,action,field,from,to\n";
  const corrected = (row: string) =>
    seasonOf(files({ "data/corrections.csv": `${HEAD}Kay,2025-11-05,looked at the film,${row}\n` }));
  const ballLine = (season: Season, line: number) =>
    repsOf(season).partner.flatMap((one, i) => (repsOf(season).line[i] === line && one !== null ? [one.line] : []));

  test("break a pair: its rows stay single", async () => {
    const before = ballLine(await seasonOf(files()), 12)[0];
    const season = await corrected(`sensor/day.csv,12,set,pair,screen/day.csv:${before},`);
    expect(ballLine(season, 12)).toEqual([]);
    expect(season.corrections[0]).toMatchObject({ field: "pair", rows: [{ line: 12 }, { line: before }] });
    expect(rowsRead(season)).toBe(balance(season).read);
  });

  test("leave a row without any partner", async () => {
    expect(ballLine(await corrected("sensor/day.csv,12,set,pair,,"), 12)).toEqual([]);
  });

  test("make a pair, whatever the clocks say", async () => {
    const season = await corrected("sensor/day.csv,12,set,pair,,screen/day.csv:30");
    expect(ballLine(season, 12)).toEqual([30]);
    expect(season.pairings[0]!.pairs.filter(({ told }) => told)).toHaveLength(1);
    expect(rowsRead(season)).toBe(balance(season).read);
  });

  test("make a pair on a day whose clocks tell nothing, and say nothing of its other rows", async () => {
    const season = await seasonOf(
      files({
        [BALL]: ballCsv(madeSwings(60, "another day"), "ana-l", 95.2),
        "data/corrections.csv": `${HEAD}Kay,2025-11-05,on film,sensor/day.csv,12,set,pair,,screen/day.csv:30\n`,
      }),
    );
    const { words, partner } = repsOf(season);
    expect(partner.filter((one) => one !== null)).toHaveLength(1);
    expect(words.pairing!.filter((one) => one !== null)).toEqual(["paired"]);
    expect(season.pairings[0]).toMatchObject({ outcome: "paired", clocks: null, doubtful: [] });
  });

  test.each([
    ["a row that is not there", "sensor/day.csv,999,set,pair,,screen/day.csv:30", "correction-without-rows"],
    ["no row at all", ",,set,pair,,screen/day.csv:30", "correction-incomplete"],
    ["two rows of one device", "sensor/day.csv,12,set,pair,,sensor/day.csv:13", "wrong-value"],
    ["words instead of a place", "sensor/day.csv,12,set,pair,,the next one", "wrong-value"],
  ])("that name %s are refused", async (_, row, code) => {
    const season = await corrected(row);
    expect(coded(season, code)).toHaveLength(1);
    expect(repsOf(season).numbers).toEqual(repsOf(await seasonOf(files())).numbers);
  });
});
