import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { realEffects } from "../../src/cli/effects.ts";
import { sayProblem } from "../../src/cli/messages.ts";
import { readSeason } from "../../src/intake/season.ts";
import type { Season } from "../../src/schema/season.ts";
import { type Entry, memoryEffects } from "./memory-disk.ts";
import { asideOf, BASE, balance, placed, seasonOf } from "./season-of.ts";

const FILE = "data/swings/a.csv";
const HEADER = "athlete_id,date,bat_speed_mph,comment";
const row = (speed: string, comment = ""): string => `ana-l,2025-10-06,${speed},${comment}`;
const of = (entry: Entry, file = FILE) => seasonOf({ [file]: entry });
const told = (season: Season) => season.problems.map((p) => [placed(p), p.level]);
const speeds = (season: Season) => season.athletes[0]?.reps.numbers.bat_speed;

/** Every problem has words and a remedy; every row is accounted for; no message shows more than a line of what was found. */
function expectSound(season: Season): void {
  const { read, kept, setAside } = balance(season);
  expect(read).toBe(kept + setAside);
  for (const problem of season.problems) {
    const { problem: words, remedy } = sayProblem(problem);
    expect(words.length).toBeLessThan(600);
    expect(remedy).not.toBe("look at this place in the file");
  }
  for (const { value } of season.setAside) expect((value ?? "").length).toBeLessThan(300);
}

describe("cells that are no cells", () => {
  test.each([
    ["in one line", "x".repeat(1 << 20)],
    ["of many lines", `"${"x\n".repeat(1 << 19)}"`],
  ])("a cell of 1 MB %s costs its row alone", async (_, cell) => {
    const season = await of([HEADER, row("61"), row("62", cell), row("63"), ""].join("\n"));
    expect(speeds(season)).toEqual([61, 63]);
    expect(season.problems.map((p) => [placed(p), p.args])).toEqual([
      [`${FILE}:3:- unreadable-row`, { detail: "long" }],
    ]);
    expect(season.athletes[0]?.reps.line).toEqual([2, 4 + cell.split("\n").length - 1]);
    expectSound(season);
  });

  test("a long text where a number belongs is quoted in short", async () => {
    const season = await of(`${HEADER}\n${row("9".repeat(100_000))}\n`);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:3 out-of-range`]);
    expectSound(season);
  });

  test("NUL bytes cost the row they stand in, as a power cut leaves them at the end", async () => {
    const season = await of([HEADER, row("61"), row("62", "a\0b"), row("63"), "\0".repeat(40)].join("\n"));
    expect(speeds(season)).toEqual([61, 63]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:3:- unreadable-row`, `${FILE}:5:- unreadable-row`]);
    expect(season.problems[0]?.args).toEqual({ detail: "nul" });
    expectSound(season);
  });

  test("what looks like a formula is text, and is kept as it is", async () => {
    const cells = ["=1+1", "+1", "-1", "@x", '=HYPERLINK("x")'];
    const quoted = cells.map((cell) => `"${cell.replaceAll('"', '""')}"`);
    const season = await of([HEADER, ...quoted.map((cell) => row("61", cell))].join("\n"));
    expect(season.athletes[0]?.reps.words.comment).toEqual(cells);
    const speed = await of(`${HEADER}\n${row("=60+1")}\n`);
    expect(speed.setAside.map(asideOf)).toEqual([`${FILE}:2:3 unreadable-number`]);
    expectSound(speed);
  });
});

describe("headers that are no headers", () => {
  test("10 000 columns are named once, and the rows below are counted", async () => {
    const header = Array.from({ length: 10_000 }, (_, index) => `c${index}`).join(",");
    const cells = ",".repeat(9999);
    const season = await of(`${HEADER},${header}\n${row("61")},${cells}\n${row("62")},${cells}\n`);
    expect(told(season)).toEqual([[`${FILE}:1:- too-many-columns`, "error"]]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:- unreadable-row`, `${FILE}:3:- unreadable-row`]);
    expectSound(season);
  });

  test("a first line without end is no header", async () => {
    const season = await of("x".repeat(3 << 20));
    expect(season.problems.map((p) => [placed(p), p.args])).toEqual([
      [`${FILE}:1:- broken-header`, { detail: "long" }],
    ]);
    expectSound(season);
  });

  test.each(["__proto__", "constructor", "toString", "hasOwnProperty"])(
    "a column called %s is one nobody knows",
    async (name) => {
      const season = await of(`${HEADER},${name}\n${row("61")},x\n`);
      expect(season.problems.map((p) => [placed(p), p.args.column])).toEqual([[`${FILE}:1:5 unknown-column`, name]]);
      expect(speeds(season)).toEqual([61]);
      expect(({} as Record<string, unknown>).x).toBe(undefined);
      expectSound(season);
    },
  );

  test("a mapping cannot read a column called __proto__, and says so", async () => {
    const mapping = `{ "label": "x", "header": ["constructor", "__proto__", "day", "v"], "columns": {
 "constructor": { "field": "athlete_id" }, "day": { "field": "date" }, "v": { "field": "bat_speed" }#
} }`;
    const data = "constructor,__proto__,day,v\nana-l,x,2025-10-06,61\n";
    const files = (text: string) => ({ "data/mappings/x.json": text, [FILE]: data });
    const sound = await seasonOf(files(mapping.replace("#", "")));
    expect([sound.problems, speeds(sound)]).toEqual([[], [61]]);
    const lost = await seasonOf(files(mapping.replace("#", ', "__proto__": { "field": "side" }')));
    expect(lost.problems[0]).toMatchObject({ code: "wrong-value", at: { line: 2 }, args: { found: "__proto__" } });
    expectSound(lost);
  });
});

describe("quotation marks without end", () => {
  test("an unclosed one costs its own line, wherever it stands", async () => {
    const rows = Array.from({ length: 5000 }, (_, index) => row(String(60 + (index % 10)), "fine"));
    for (const at of [0, 2500, 4999]) {
      const lines = rows.map((line, index) => (index === at ? row("61", '"open') : line));
      const season = await of([HEADER, ...lines, ""].join("\n"));
      expect(season.setAside.map(asideOf)).toEqual([`${FILE}:${at + 2}:- unreadable-row`]);
      expect(season.athletes[0]?.reps.n).toBe(4999);
      expectSound(season);
    }
  });

  test("one on every line is read in little more time than none", async () => {
    const lines = (comment: string) => Array.from({ length: 20_000 }, () => row("61", comment));
    const timed = async (comment: string, kept: number): Promise<number> => {
      const start = performance.now();
      const season = await of([HEADER, ...lines(comment)].join("\n"));
      expect(season.athletes[0]?.reps.n).toBe(kept);
      return performance.now() - start;
    };
    const sound = await timed("33 inches", 20_000);
    // A break may cost a new start of the parser; it must not cost a reading of the rest of the file.
    const most = 20 * sound + 1000;
    expect(await timed('33" bat', 20_000)).toBeLessThan(most);
    expect(await timed('"33" bat"', 0)).toBeLessThan(most);
  }, 60_000);
});

describe("files that are something else", () => {
  const PNG = Buffer.from("89504e470d0a1a0a0000000d49484452000000010000000108060000001f15c489", "hex");
  const noise = Uint8Array.from({ length: 5000 }, (_, index) => (index * 7919 + ((index * index) % 251)) % 256);
  test.each([
    ["a picture called CSV", FILE, PNG, "picture"],
    ["a workbook called CSV", FILE, Buffer.from("504b030414000000", "hex"), "workbook"],
    ["a CSV called workbook", "data/swings/a.xlsx", `${HEADER}\n${row("61")}\n`, "text"],
    ["an old workbook", "data/swings/a.xlsx", Buffer.from("d0cf11e0a1b11ae10000", "hex"), "old-workbook"],
    ["a PDF", FILE, "%PDF-1.7 …", "pdf"],
    ["a packed archive", FILE, Buffer.from("1f8b0800000000", "hex"), "archive"],
    ["bytes of any kind", FILE, noise, "binary"],
  ])("%s holds no rows, and what it is is said", async (_, file, entry, kind) => {
    const season = await of(entry, file);
    expect(season.problems.map((p) => [placed(p), p.level, p.args.kind])).toEqual([
      [`${file}:-:- not-a-table`, "error", kind],
    ]);
    expect(season.swingFiles).toEqual([{ file, rows: 0 }]);
    expectSound(season);
  });

  test("an empty file and a bare header hold no rows", async () => {
    for (const text of ["", "\n\n\n", `${HEADER}\n`, "\ufeff"]) {
      const season = await of(text);
      expect(season.problems.map((p) => [p.code, p.level])).toEqual([["empty-file", "note"]]);
      expectSound(season);
    }
  });

  test("a link is named and not followed", async () => {
    const folder = mkdtempSync(join(tmpdir(), "winterbook-link-"));
    try {
      for (const [name, text] of Object.entries(BASE)) {
        mkdirSync(join(folder, name, ".."), { recursive: true });
        writeFileSync(join(folder, name), String(text));
      }
      mkdirSync(join(folder, "data/swings"), { recursive: true });
      writeFileSync(join(folder, "elsewhere.csv"), `${HEADER}\n${row("61")}\n`);
      symlinkSync(join(folder, "elsewhere.csv"), join(folder, FILE));
      const effects = realEffects(() => {}, process.stderr);
      const season = await readSeason({ content: join(folder, "content"), data: join(folder, "data") }, effects, null);
      expect(told(season)).toEqual([[`${FILE}:-:- not-a-plain-file`, "error"]]);
      expect(season.swingFiles).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

describe("a file that is still written", () => {
  const growing = async (text: string, looks: readonly { size: number; changed: number }[]): Promise<Season> => {
    const entries = new Map<string, Entry>();
    for (const [name, entry] of Object.entries({ ...BASE, [FILE]: text })) entries.set(`/season/${name}`, entry);
    const effects = memoryEffects(entries);
    let look = 0;
    const disk = { ...effects.disk, look: async () => looks[look++] ?? null };
    return readSeason({ content: "/season/content", data: "/season/data" }, { ...effects, disk }, null);
  };
  const text = `${HEADER}\n${row("61")}\n${row("62")}\nana-l,2025-1`;

  test("is read as far as its last whole line, and said to be growing", async () => {
    for (const after of [
      { size: 200, changed: 5 },
      { size: 90, changed: 6 },
    ]) {
      const season = await growing(text, [{ size: 90, changed: 5 }, after]);
      expect(told(season)).toEqual([[`${FILE}:-:- still-growing`, "note"]]);
      expect(speeds(season)).toEqual([61, 62]);
      expectSound(season);
    }
  });

  test("one that stands still is read to its end", async () => {
    const still = { size: 90, changed: 5 };
    const season = await growing(text, [still, still]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:4:- unreadable-row`]);
    expectSound(season);
  });
});
