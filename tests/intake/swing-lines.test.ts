import { describe, expect, test } from "vitest";
import { asideOf, balance, placed, seasonOf } from "./season-of.ts";

const FILE = "data/swings/a.csv";
const HEADER = "athlete_id,date,bat_speed_mph,comment";
const read = async (text: string) => {
  const season = await seasonOf({ [FILE]: text });
  const reps = season.athletes[0]?.reps;
  return {
    season,
    lines: reps?.line,
    speeds: reps?.numbers.bat_speed,
    comments: reps?.words.comment,
    aside: season.setAside.map(asideOf),
  };
};
const row = (speed: string, comment = ""): string => `ana-l,2025-10-06,${speed},${comment}`;

describe("lines", () => {
  test("a byte order mark, CRLF, mixed line ends and a missing last one change nothing", async () => {
    const rows = [HEADER, row("61", "a"), row("62", '"b, c"'), row("x", "d")];
    const plain = await read(`${rows.join("\n")}\n`);
    expect(plain).toMatchObject({ lines: [2, 3], comments: ["a", "b, c"], aside: [`${FILE}:4:3 unreadable-number`] });
    const others = [
      rows.join("\r\n"),
      `\ufeff${rows.join("\n")}`,
      `${rows[0]}\r\n${rows.slice(1).join("\n")}\r\n`,
      rows.join("\r"),
    ];
    for (const text of others) {
      const { season } = await read(text);
      expect(season).toEqual(plain.season);
    }
  });

  test("blank lines are no rows, and lines behind them keep their numbers", async () => {
    const { lines, aside, season } = await read(`\n${HEADER}\n\n${row("61")}\n   \n\n${row("x")}\n\n`);
    expect(lines).toEqual([4]);
    expect(aside).toEqual([`${FILE}:7:3 unreadable-number`]);
    expect(season.swingFiles[0]?.rows).toBe(2);
  });

  test("a row starts on its first line, however many lines a comment takes", async () => {
    const text = [HEADER, row("61", '"late\nagain\n"'), row("62"), row("x", '"y\nz"'), row("63")].join("\n");
    const { lines, aside, comments } = await read(text);
    expect(lines).toEqual([2, 5, 8]);
    expect(aside).toEqual([`${FILE}:6:3 unreadable-number`]);
    expect(comments).toEqual(["late\nagain", null, null]);
  });

  test("CRLF inside a comment counts as one line end", async () => {
    const text = [HEADER, row("61", '"late\r\nagain"'), row("x")].join("\r\n");
    expect((await read(text)).aside).toEqual([`${FILE}:4:3 unreadable-number`]);
  });

  test("a row with too few or too many fields is set aside with both counts", async () => {
    const { aside, season } = await read(`${HEADER}\nana-l,2025-10-06,61\nana-l,2025-10-06,61,5,x\n${row("62")}\n`);
    expect(aside).toEqual([`${FILE}:2:- unreadable-row`, `${FILE}:3:- unreadable-row`]);
    expect(season.problems.map(({ args }) => args)).toEqual([
      { fields: 3, expected: 4 },
      { fields: 5, expected: 4 },
    ]);
  });

  test("a row of blank cells is a row, and nothing in it can be read", async () => {
    const { season } = await read(`${HEADER}\n,,,\n`);
    expect(season.problems.map((p) => [placed(p), p.args])).toEqual([
      [`${FILE}:2:- unreadable-row`, { detail: "blank" }],
    ]);
    expect(season.setAside).toHaveLength(1);
  });

  test("broken quoting costs the broken lines alone", async () => {
    const text = [
      HEADER,
      row("61", "ok"),
      row("62", '"33" bat"'),
      row("63", '"open'),
      row("64", '"fine, really"'),
      row("x"),
    ].join("\n");
    const { lines, aside, comments, season } = await read(text);
    expect(lines).toEqual([2, 5]);
    expect(comments).toEqual(["ok", "fine, really"]);
    expect(aside).toEqual([
      `${FILE}:3:- unreadable-row`,
      `${FILE}:4:- unreadable-row`,
      `${FILE}:6:3 unreadable-number`,
    ]);
    expect(season.problems[0]).toMatchObject({ code: "unreadable-row", args: { detail: "quotes" } });
    expect(balance(season)).toEqual({ read: 5, kept: 2, setAside: 3 });
  });

  test("a header with broken quotes makes the whole file unreadable", async () => {
    const { aside, season } = await read(`athlete_id,"date,bat_speed_mph\n${row("61")}\n${row("62")}\n`);
    expect(season.problems.map(placed)).toEqual([`${FILE}:1:- broken-header`]);
    expect(aside).toHaveLength(2);
  });
});

test("a quotation mark inside a cell that does not begin with one is text", async () => {
  const { lines, comments, aside } = await read(
    [HEADER, row("61", '33" bat'), row("62", 'a "b" c'), row("63", '"""quoted"""'), row("64", "5'10\"")].join("\r\n"),
  );
  expect(comments).toEqual(['33" bat', 'a "b" c', '"quoted"', "5'10\""]);
  expect([lines, aside]).toEqual([[2, 3, 4, 5], []]);
});
