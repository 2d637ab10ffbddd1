import { describe, expect, test } from "vitest";
import type { Mapping } from "../../src/schema/mapping.ts";
import type { Entry } from "./memory-disk.ts";
import { asideOf, BASE, balance, placed, seasonOf } from "./season-of.ts";

const FILE = "data/swings/a.csv";
const MAP = "data/mappings/lane.json";
const LANE: Mapping = {
  label: "Lane",
  header: ["Hitter", "Day", "Speed", "Side"],
  columns: {
    Hitter: { field: "athlete_id" },
    Day: { field: "date", form: "d/M/yyyy" },
    Speed: { field: "bat_speed", unit: "km/h" },
    Side: { field: "side", words: { L: "left", R: "right" } },
  },
};
const HEADER = LANE.header.join(",");
const ROW = "ana-l,6/10/2025,112.65408,L";
const lane = (text: Entry, change: Partial<Mapping> = {}, more: Record<string, Entry> = {}) =>
  seasonOf({ [MAP]: JSON.stringify({ ...LANE, ...change }), [FILE]: text, ...more });
const told = (season: Awaited<ReturnType<typeof seasonOf>>) => season.problems.map((p) => [placed(p), p.level, p.args]);

describe("around the table", () => {
  test("lines above the header are skipped and said, and are no rows", async () => {
    const season = await lane(['Report of "Lane 2"', "from,1/9/2025", "", HEADER, ROW, ROW].join("\n"));
    expect(told(season)).toEqual([[`${FILE}:1:- lines-skipped`, "note", { lines: 3 }]]);
    expect(season.athletes[0]?.reps.line).toEqual([5, 6]);
    expect(season.swingFiles[0]?.rows).toBe(2);
  });

  test("so they are above our own columns", async () => {
    const season = await seasonOf({ [FILE]: 'x\n"y\nz"\nathlete_id,date,bat_speed_mph\nana-l,2025-10-06,61\n' });
    expect(told(season)).toEqual([[`${FILE}:1:- lines-skipped`, "note", { lines: 3 }]]);
    expect(season.athletes[0]?.reps.line).toEqual([5]);
  });

  test("the header is looked for in fifty lines", async () => {
    const at = (line: number) => lane(`${"note\n".repeat(line - 1)}${HEADER}\n${ROW}\n`);
    expect((await at(50)).athletes[0]?.reps.line).toEqual([51]);
    expect((await at(51)).athletes[0]?.reps.n).toBe(0);
  });

  test("repeated headers, the row of units and sums are rows, and no swings", async () => {
    const units = ",,km/h,";
    const rows = [HEADER, units, ROW, "Mean,,112.7", ROW, HEADER, units, ROW, "TOTAL,3,,", ",,,total"];
    const change = { units_row: ["", "", "km/h", ""], summary_rows: { words: ["Mean", "Total"] } };
    const season = await lane(rows.join("\n"), change);
    expect(season.athletes[0]?.reps.line).toEqual([3, 5, 8]);
    expect(season.setAside.map(asideOf)).toEqual([2, 4, 6, 7, 9, 10].map((line) => `${FILE}:${line}:- summary-row`));
    expect(balance(season)).toEqual({ read: 9, kept: 3, setAside: 6 });
  });

  test("a sum is told by the column that the mapping names alone", async () => {
    const season = await lane([HEADER, "ana-l,6/10/2025,100,L", "Mean,6/10/2025,100,L", "x,Mean,100,L"].join("\n"), {
      summary_rows: { column: "Day", words: ["mean"] },
    });
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:3:1 unknown-athlete`, `${FILE}:4:- summary-row`]);
  });

  test("a device that was switched to other units is noticed, and not read", async () => {
    const season = await lane([HEADER, ",,mph,", ROW].join("\n"), { units_row: ["", "", "km/h", ""] });
    const args = { mapping: MAP, column: "Speed", expected: "km/h", found: "mph" };
    expect(told(season)).toEqual([[`${FILE}:2:3 changed-units`, "error", args]]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:- unreadable-row`, `${FILE}:3:- unreadable-row`]);
  });

  test("two mappings may share a header when their units tell them apart", async () => {
    const mph = {
      ...LANE,
      units_row: ["", "", "mph", ""],
      columns: { ...LANE.columns, Speed: { field: "bat_speed", unit: "mph" } },
    };
    const text = [HEADER, ",,mph,", "ana-l,6/10/2025,70,L"].join("\n");
    const season = await lane(
      text,
      { units_row: ["", "", "km/h", ""] },
      { "data/mappings/mph.json": JSON.stringify(mph) },
    );
    expect(season.problems.map(placed)).toEqual([`${FILE}:2:- summary-row`]);
    expect(season.athletes[0]?.reps.numbers.bat_speed).toEqual([70]);
  });

  test("two columns of one name are told apart by their place", async () => {
    const mapping = {
      label: "x",
      header: ["Who", "Day", "Speed", "Speed"],
      columns: {
        Who: { field: "athlete_id" },
        Day: { field: "date" },
        Speed: { field: "bat_speed" },
        "Speed #2": { field: "exit_velocity" },
      },
    };
    const season = await seasonOf({
      [MAP]: JSON.stringify(mapping),
      [FILE]: "Who,Day,Speed,Speed\nana-l,2025-10-06,61,88\n",
    });
    expect(season.problems).toEqual([]);
    expect(season.athletes[0]?.reps.numbers).toEqual({ bat_speed: [61], exit_velocity: [88] });
  });

  test("what a mapping says of units, sums and zones is held against its header and the facility", async () => {
    const text = `{ "label": "x", "header": ["a", "b"], "columns": { "a": { "field": "date" } },
 "units_row": ["x"],
 "summary_rows": { "column": "c", "words": ["sum"] },
 "zone": "America/Denver" }`;
    const season = await seasonOf({ [MAP]: text });
    expect(season.problems.map(placed)).toEqual([
      `${MAP}:2:15 wrong-value`,
      `${MAP}:3:30 unknown-column`,
      `${MAP}:4:10 no-time-zone`,
    ]);
  });
});

describe("encodings", () => {
  const text = `Hitter,Day,Speed,S\u00edde\n${ROW}\n`;
  const change: Partial<Mapping> = {
    header: ["Hitter", "Day", "Speed", "S\u00edde"],
    columns: { ...LANE.columns, "S\u00edde": { field: "comment" } },
  };
  delete (change.columns as Record<string, unknown>).Side;

  test("Windows-1252 is read when a mapping's header fits just so", async () => {
    const euro = Buffer.concat([
      Buffer.from(text.replace(",L", ","), "latin1").subarray(0, -1),
      Buffer.from([0x80, 0x92, 0xe9, 10]),
    ]);
    const season = await lane(new Uint8Array(euro), change);
    expect(season.problems).toEqual([]);
    // 0x80 is the euro sign, 0x92 the closing quotation mark, 0xE9 e with acute (WHATWG index-windows-1252).
    expect(season.athletes[0]?.reps.words.comment).toEqual(["\u20ac\u2019\u00e9"]);
  });

  test("UTF-8 and UTF-16 are told by the file, whatever the mapping says", async () => {
    const little = Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(text, "utf16le")]);
    for (const bytes of [Buffer.from(text), Buffer.from(`\ufeff${text}`), little]) {
      const season = await lane(new Uint8Array(bytes), { ...change, encoding: "windows-1252" });
      expect(season.problems).toEqual([]);
      expect(season.athletes[0]?.reps.words.comment).toEqual(["L"]);
    }
  });
});

describe("clocks", () => {
  const facility = (zone: string) => ({
    "content/facility.md": String(BASE["content/facility.md"]).replace("name: Barn", `time_zone: ${zone}\nname: Barn`),
  });
  const read = async (stamps: readonly string[], how: { form?: string; zone?: string }, own: string | null) => {
    const { zone, form } = how;
    const mapping = {
      label: "x",
      header: ["who", "at", "v"],
      columns: {
        who: { field: "athlete_id" },
        at: { field: "date_time", ...(form && { form }) },
        v: { field: "bat_speed" },
      },
      ...(zone && { zone }),
    };
    const rows = stamps.map((stamp, index) => `ana-l,"${stamp}",${61 + index}`);
    const files = { [MAP]: JSON.stringify(mapping), [FILE]: ["who,at,v", ...rows].join("\n") };
    const season = await seasonOf({ ...files, ...(own && facility(own)) });
    const reps = season.athletes[0]?.reps;
    return { season, at: reps?.date.map((date, index) => `${date} ${reps.words.time?.[index]}`) };
  };

  test("day and clock in one cell, 12 hours or 24, with a form or in ISO 8601", async () => {
    const twelve = ["10/6/2025 12:05:09 AM", "10/6/2025 12:05:09 pm", "10/6/2025 5:05:09\u202fPM"];
    expect((await read(twelve, { form: "M/d/yyyy h:mm:ss a" }, null)).at).toEqual([
      "2025-10-06 00:05:09",
      "2025-10-06 12:05:09",
      "2025-10-06 17:05:09",
    ]);
    expect((await read(["06.10.2025 17:05"], { form: "dd.MM.yyyy HH:mm" }, null)).at).toEqual(["2025-10-06 17:05"]);
    const iso = ["2025-10-06T17:05:09.123456", "2025-10-06 17:05"];
    expect((await read(iso, {}, null)).at).toEqual(["2025-10-06 17:05:09.123", "2025-10-06 17:05"]);
  });

  test("what is no time is set aside at its place", async () => {
    const { season } = await read(["2025-02-30T17:05", "2025-10-06T24:05", "yesterday", "2025-10-06"], {}, null);
    expect(season.setAside.map(asideOf)).toEqual([2, 3, 4, 5].map((line) => `${FILE}:${line}:2 unreadable-date`));
  });

  // Source: the IANA time zone database; America/Chicago leaves summer time on 2025-11-02 at 2:00, enters it on 2026-03-08
  // at 2:00, and America/Denver does so an hour later in absolute time (from memory).
  test("an offset is turned into the facility's own clock, its changes for summer time included", async () => {
    const stamps = [
      "2025-11-02T06:30:00Z",
      "2025-11-02T07:30:00Z",
      "2026-03-08T01:59:59-06:00",
      "2026-03-08T09:00:00+01:00",
    ];
    expect((await read(stamps, {}, "America/Chicago")).at).toEqual([
      "2025-11-02 01:30:00",
      "2025-11-02 01:30:00",
      "2026-03-08 01:59:59",
      "2026-03-08 03:00:00",
    ]);
    const late = await read(["2025-10-06T02:10:00Z"], {}, "America/Chicago");
    expect(late.at).toEqual(["2025-10-05 21:10:00"]);
    const form = { form: "yyyy-MM-dd HH:mm:ss ZZ" };
    expect((await read(["2025-10-06 02:10:00 +00:00"], form, "America/Chicago")).at).toEqual(["2025-10-05 21:10:00"]);
  });

  test("an offset without a zone of the facility's cannot be placed, and that is said once", async () => {
    const { season } = await read(["2025-10-06T02:10:00Z", "2025-10-06T02:11:00Z", "2025-10-06T02:12:00"], {}, null);
    expect(season.problems.map((p) => [placed(p), p.level])).toEqual([
      [`${FILE}:-:- no-time-zone`, "error"],
      [`${FILE}:2:2 unreadable-date`, "row"],
      [`${FILE}:3:2 unreadable-date`, "row"],
    ]);
    expect(season.athletes[0]?.reps.n).toBe(1);
  });

  test("an export on another zone's clock is moved to ours, and an hour that spring leaves out is no time", async () => {
    const stamps = ["2025-10-06T22:30", "2026-03-08T02:30", "2026-03-08T03:30", "2025-11-02T01:30"];
    const { season, at } = await read(stamps, { zone: "America/Denver" }, "America/Chicago");
    // The hour that comes twice is taken the first time it comes: 1:30 in summer time, 7:30 UTC, which is 1:30 here again.
    expect(at).toEqual(["2025-10-06 23:30", "2026-03-08 04:30", "2025-11-02 01:30"]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:3:2 unreadable-date`]);
  });

  test("day and clock in columns of their own move together", async () => {
    const mapping = {
      label: "x",
      header: ["who", "day", "clock", "v"],
      columns: {
        who: { field: "athlete_id" },
        day: { field: "date" },
        clock: { field: "time" },
        v: { field: "bat_speed" },
      },
      zone: "UTC",
    };
    const text = "who,day,clock,v\nana-l,2025-10-06,02:10:00,61\nana-l,2025-10-06,,62\n";
    const season = await seasonOf({ [MAP]: JSON.stringify(mapping), [FILE]: text, ...facility("America/Chicago") });
    expect(season.problems).toEqual([]);
    expect(season.athletes[0]?.reps.date).toEqual(["2025-10-05", "2025-10-06"]);
    expect(season.athletes[0]?.reps.words.time).toEqual(["21:10:00", null]);
  });
});
