import { describe, expect, test } from "vitest";
import { sayProblem } from "../../src/cli/messages.ts";
import { asideOf, balance, placed, seasonOf } from "./season-of.ts";
import { type SheetCell, serial, sheetXml, workbookParts, xlsx, zip } from "./xlsx.ts";

const FILE = "data/swings/a.xlsx";
const MAP = "data/mappings/lane.json";
const LANE = {
  label: "Lane screen",
  header: ["Hitter", "Day", "Clock", "Outcome", "Barrel m/s", "Swing"],
  delimiter: ";",
  decimal: ",",
  columns: {
    Hitter: { field: "athlete_id" },
    Day: { field: "date", form: "dd.MM.yyyy" },
    Clock: { field: "time", form: "h:mm a" },
    Outcome: { field: "result", words: { struck: "hit" } },
    "Barrel m/s": { field: "bat_speed", unit: "m/s" },
    Swing: { field: "rep" },
  },
};
const HEADER: SheetCell[] = [...LANE.header];
const BODY: SheetCell[][] = [
  ["ana-l", serial("2025-10-06"), serial("17:05:09"), "struck", 31.2928, 1],
  ["A. Lindqvist", "06.10.2025", "5:06 PM", "struck", "31,2928", "2"],
  ["ana-l", serial("2025-10-06"), null, null, null, 3],
];

describe("a workbook", () => {
  test("is read by the mapping of the CSV export, typed cells and written ones alike", async () => {
    const season = await seasonOf({ [MAP]: JSON.stringify(LANE), [FILE]: xlsx({ Swings: [HEADER, ...BODY] }) });
    expect(season.problems).toEqual([]);
    const reps = season.athletes[0]?.reps;
    expect(reps?.date).toEqual(["2025-10-06", "2025-10-06", "2025-10-06"]);
    expect(reps?.words).toEqual({ time: ["17:05:09", "17:06", null], result: ["hit", "hit", null] });
    expect(reps?.numbers.bat_speed?.map((speed) => speed && Math.round(speed * 1e9) / 1e9)).toEqual([70, 70, null]);
    expect(reps?.numbers.rep).toEqual([1, 2, 3]);
    expect(reps?.line).toEqual([2, 3, 4]);
  });

  test("rows and columns of the sheet are the line and the field of every message", async () => {
    const rows: SheetCell[][] = [
      ["Exported from the lane"],
      [],
      HEADER,
      ["ana-l", serial("2025-10-06"), null, "struck", 31, 1],
      [],
      ["ana-l", "yesterday", null, "struck", 31, 2],
      ["nobody", serial("2025-10-06"), null, "struck", 31, 3],
      ["ana-l", serial("2025-10-06"), null, "struck", 31, 4, "too much"],
    ];
    const season = await seasonOf({ [MAP]: JSON.stringify(LANE), [FILE]: xlsx({ Swings: rows }) });
    expect(season.problems.map(placed)).toEqual([
      `${FILE}:1:- lines-skipped`,
      `${FILE}:6:2 unreadable-date`,
      `${FILE}:7:1 unknown-athlete`,
      `${FILE}:8:- unreadable-row`,
    ]);
    expect(season.athletes[0]?.reps.line).toEqual([4]);
    expect(balance(season)).toEqual({ read: 4, kept: 1, setAside: 3 });
  });

  test("in our own columns needs no mapping, and day and clock may share a cell with one", async () => {
    const own = [
      ["athlete_id", "date", "time", "bat_speed_mph"],
      ["ana-l", serial("2025-10-06"), serial("09:00:01"), 61.5],
    ];
    const stamped = {
      label: "x",
      header: ["who", "when", "v"],
      columns: {
        who: { field: "athlete_id" },
        when: { field: "date_time", form: "M/d/yyyy h:mm a" },
        v: { field: "bat_speed" },
      },
    };
    const rows = [
      ["who", "when", "v"],
      ["ana-l", serial("2025-10-07T08:30:15"), 62],
      ["ana-l", "10/7/2025 8:31 AM", 63],
    ];
    const season = await seasonOf({
      "data/mappings/x.json": JSON.stringify(stamped),
      "data/swings/1.xlsx": xlsx({ S: own }),
      "data/swings/2.xlsx": xlsx({ S: rows }),
    });
    expect(season.problems).toEqual([]);
    expect(season.athletes[0]?.reps.words.time).toEqual(["09:00:01", "08:30:15", "08:31"]);
    expect(season.athletes[0]?.reps.date).toEqual(["2025-10-06", "2025-10-07", "2025-10-07"]);
  });

  test("has the sheet that the mapping names, else the first", async () => {
    const book = xlsx({ Notes: [["nothing here"], ["at all"]], Swings: [HEADER, ...BODY] });
    const named = { ...LANE, sheet: "Swings" };
    const season = await seasonOf({ [MAP]: JSON.stringify(named), [FILE]: book });
    expect(season.problems).toEqual([]);
    expect(season.athletes[0]?.reps.n).toBe(3);
    const first = await seasonOf({ [MAP]: JSON.stringify(LANE), [FILE]: book });
    expect(first.problems.map(({ code }) => code)).toContain("missing-column");
    expect(first.setAside.map(asideOf)).toEqual([`${FILE}:2:- unreadable-row`]);
  });
});

describe("a workbook that is not read, and why", () => {
  const parts = workbookParts({ S: sheetXml([HEADER, ...BODY]) });
  const SHEET = "xl/worksheets/sheet1.xml";
  const damaged = (): Uint8Array => {
    const bytes = zip(parts);
    const at = Buffer.from(bytes).indexOf("sheet1.xml") + 40;
    return bytes.map((byte, index) => (index > at && index < at + 60 ? byte ^ 0x55 : byte));
  };
  const far = sheetXml([HEADER]).replace(
    "</sheetData>",
    '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row></sheetData>',
  );
  const hidden = far.replace('r="XFD1048576"', 'r="&#88;FD1048576"');
  const MB = 1024 * 1024;
  test.each<[string, Uint8Array, string, string]>([
    ["claims more than 200 MB", zip(parts, { [SHEET]: { size: 200 * MB } }), "workbook-too-large", "201"],
    [
      "hides its size in a zip64 record",
      zip(parts, { [SHEET]: { size: 0xffffffff } }),
      "workbook-too-large",
      "more than 4000",
    ],
    ["is larger than it claims", zip(parts, { [SHEET]: { size: 100 } }), "broken-workbook", "not as large"],
    ["is smaller than it claims", zip(parts, { [SHEET]: { size: 100_000 } }), "broken-workbook", "not as large"],
    [
      "would blow up",
      zip({ ...parts, [SHEET]: Buffer.alloc(50 * MB, 32) }, { [SHEET]: { size: 1000 } }),
      "broken-workbook",
      "not as large",
    ],
    ["holds macros", zip({ ...parts, "xl/vbaProject.bin": "x" }), "workbook-with-macros", ""],
    ["is cut short", zip(parts).subarray(0, 400), "broken-workbook", "its end is missing"],
    ["is damaged inside", damaged(), "broken-workbook", ""],
    ["is locked", zip(parts, { [SHEET]: { flags: 1 } }), "broken-workbook", "password"],
    ["is a zip of something else", zip({ "readme.txt": "hello" }), "broken-workbook", ""],
    ["holds a sheet that is no XML", zip({ ...parts, [SHEET]: "swings" }), "broken-workbook", ""],
    ["has a cell in the farthest corner", zip({ ...parts, [SHEET]: far }), "workbook-too-wide", "16384"],
    ["hides where its cells stand", zip({ ...parts, [SHEET]: hidden }), "workbook-too-wide", "16384"],
  ])("one that %s", async (_, book, code, detail) => {
    const season = await seasonOf({ [MAP]: JSON.stringify(LANE), [FILE]: book });
    expect(season.problems.map((p) => [placed(p), p.level])).toEqual([[`${FILE}:-:- ${code}`, "error"]]);
    expect(JSON.stringify(season.problems[0]?.args)).toContain(detail);
    const { problem } = sayProblem(season.problems[0] ?? { code: "", args: {} });
    expect(problem).not.toMatch(/undefined|Error|\n/);
    expect(season.swingFiles).toEqual([{ file: FILE, rows: 0 }]);
  });

  test("two files of one name inside cannot both be meant", async () => {
    const bytes = Buffer.from(zip({ ...parts, "xl/worksheets/sheet2.xml": "<x/>" }));
    const twice = Buffer.from(bytes.toString("latin1").replaceAll("sheet2.xml", "sheet1.xml"), "latin1");
    const season = await seasonOf({ [FILE]: new Uint8Array(twice) });
    expect(season.problems[0]).toMatchObject({
      code: "broken-workbook",
      args: { detail: "two files inside it have one name" },
    });
  });
});
