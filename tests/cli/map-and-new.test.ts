import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { readArguments } from "../../src/cli/arguments.ts";
import { failureOf } from "../../src/cli/failure.ts";
import { mapCommand } from "../../src/cli/map/map.ts";
import { newCommand } from "../../src/cli/new/new.ts";
import { serial, xlsx } from "../intake/xlsx.ts";
import { bytesOf, isThere, removeFolder, seasonFolder } from "./small-season.ts";

const made: string[] = [];
async function season(changes: Parameters<typeof seasonFolder>[0] = {}): Promise<string> {
  const root = await seasonFolder(changes);
  made.push(root);
  return root;
}
afterEach(async () => {
  for (const root of made.splice(0)) await removeFolder(root);
});

/** Runs a command as `main.ts` does, with nobody at the terminal. */
async function run(...args: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const terminal = {
    print: (line: string) => void out.push(line),
    tell: (line: string) => void err.push(line),
    display: process.stderr,
    here: "/nowhere",
    home: "/nowhere",
    interactive: false,
  };
  let code: number;
  try {
    const called = readArguments(args, terminal);
    code = await (called.command === "map" ? mapCommand : newCommand)(called, terminal);
  } catch (error) {
    const failure = failureOf(error, false);
    code = failure.exit;
    err.push(...failure.lines);
  }
  return { code, out: out.map((line) => `${line}\n`).join(""), err: err.join("\n") };
}

describe("the map command", () => {
  const EXPORT = [
    "Lane report;;;",
    "Hitter;Day;Barrel m/s;Outcome",
    "Ada Lund;06.01.2026;29,5;clack",
    "Ada Lund;07.01.2026;30,5;whiff",
    "Adda Lund;07.01.2026;30,5;whiff",
  ].join("\n");
  const place = (root: string) => join(root, "data", "mappings", "lane-export.json");

  test("without a terminal prints what is open with the flag that answers it, and writes nothing", async () => {
    const root = await season({ "lane export.csv": EXPORT });
    const before = await bytesOf(root);
    const { code, out, err } = await run("map", join(root, "lane export.csv"), "--season", root);
    expect(err).toBe("");
    expect(code).toBe(2);
    expect(out).toContain('--date-form "dd.MM.yyyy"   (the day comes first)');
    expect(out).toContain('--date-form "MM.dd.yyyy"   (the month comes first)');
    expect(out).toContain('--words "Outcome:clack=…"');
    expect(await bytesOf(root)).toEqual(before);
  });

  const ANSWERS = ["--date-form", "dd.MM.yyyy", "--words", "Outcome:clack=hit", "--fixed", "environment=tee"];

  test("shows the first rows as they would be read, who is not known, and saves on yes", async () => {
    const root = await season({ "lane export.csv": EXPORT });
    const file = join(root, "lane export.csv");
    const shown = await run("map", file, "--season", root, ...ANSWERS);
    expect(shown.code).toBe(2);
    expect(shown.out).toMatch(/^ {2}athlete +ada-lund +ada-lund$/m);
    expect(shown.out).toMatch(/^ {2}date +2026-01-06 +2026-01-07$/m);
    // 29.5 m/s over the exact 0.44704 m/s of a mph.
    expect(shown.out).toMatch(/^ {2}bat speed mph +66 +68\.2$/m);
    expect(shown.out).toMatch(/line 5: no athlete is called "Adda Lund" {2}— did you mean ada-lund\?/);
    expect(await isThere(place(root))).toBe(false);
    const saved = await run("map", file, "--season", root, ...ANSWERS, "--yes");
    expect(saved.code).toBe(0);
    expect(JSON.parse(await readFile(place(root), "utf8"))).toEqual({
      label: "lane export",
      header: ["Hitter", "Day", "Barrel m/s", "Outcome"],
      delimiter: ";",
      decimal: ",",
      columns: {
        Hitter: { field: "athlete_id" },
        Day: { field: "date", form: "dd.MM.yyyy" },
        "Barrel m/s": { field: "bat_speed", unit: "m/s" },
        Outcome: { field: "result", words: { clack: "hit", whiff: "miss" } },
      },
      fixed: { environment: "tee" },
    });
  });

  test("never overwrites a mapping, nor puts a second one beside it, unless told to", async () => {
    const root = await season({ "lane export.csv": EXPORT });
    const call = (...more: string[]) =>
      run("map", join(root, "lane export.csv"), "--season", root, ...ANSWERS, "--yes", ...more);
    expect((await call()).code).toBe(0);
    const first = await readFile(place(root));
    const again = await call();
    expect([again.code, again.err]).toEqual([2, expect.stringContaining("is there already")]);
    const other = await call("--name", "other");
    expect([other.code, other.err]).toEqual([2, expect.stringContaining("reads files with this header already")]);
    expect(await readFile(place(root))).toEqual(first);
    expect((await call("--ignore", "Outcome", "--replace")).code).toBe(0);
    expect(await readFile(place(root))).not.toEqual(first);
  });

  test.each([
    [["--column", "Barrel=bat_speed"], "no column"],
    [["--column", "Barrel m/s=bat_sped"], "no field"],
    [["--column", "Barrel m/s=bat_speed:ft"], "cannot be in"],
    [["--words", "Outcme:x=hit"], "--words"],
    [["--fixed", "environment"], "--fixed"],
    [["--decimal", ";"], "--decimal"],
    [["--delimiter", "/"], "--delimiter"],
    [["--name", "…"], "needs a name"],
  ])("%j is refused with a sentence", async (flags, words) => {
    const root = await season({ "lane export.csv": EXPORT });
    const { code, err } = await run("map", join(root, "lane export.csv"), "--season", root, ...flags);
    expect(code).toBe(2);
    expect(err).toContain(words);
    expect(err).not.toMatch(/^\s+at /m);
  });

  test("reads a sheet of a workbook by name, its row of units and days included", async () => {
    const rows = [
      ["Report"],
      ["Hitter", "When", "Bat Speed", "Note"],
      ["", "", "m/s", ""],
      ["Ada Lund", serial("2026-01-06T17:05:09"), 30.1, null],
    ];
    const root = await season({ "book.xlsx": xlsx({ Cover: [["Hello"]], Lane: rows }) });
    const call = (...more: string[]) => run("map", join(root, "book.xlsx"), "--season", root, ...more);
    expect((await call()).err).toContain("--sheet");
    const { code, out } = await call("--sheet", "Lane", "--yes");
    expect(code).toBe(0);
    expect(out).toMatch(/^ {2}time +17:05:09$/m);
    expect(JSON.parse(await readFile(join(root, "data", "mappings", "book.json"), "utf8"))).toMatchObject({
      sheet: "Lane",
      units_row: ["", "", "m/s", ""],
      columns: { When: { field: "date_time" } },
    });
  });

  test("says in a few lines what is wrong with an export of which no row can be read", async () => {
    const rows = Array.from({ length: 150_000 }, (_, i) => `Guest ${i % 3},2026-01-06,60.${i % 10}`);
    const root = await season({ "guests.csv": ["Hitter,Date,Bat Speed (mph)", ...rows].join("\n") });
    const { code, out } = await run("map", join(root, "guests.csv"), "--season", root);
    expect(code).toBe(2);
    expect(out).toContain("0 of 150,000 rows would be read:");
    expect(out).toContain("150,000 set aside: a name that fits nobody");
    expect(out.split("\n").length).toBeLessThan(30);
  });

  test.each([
    ["nothing at all", ""],
    ["a picture", Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a)],
    ["numbers without a header", "1,2\n3,4\n"],
  ])("a file with %s is no export", async (_, body) => {
    const root = await season({ "x.csv": body });
    const { code, err } = await run("map", join(root, "x.csv"), "--season", root);
    expect(code).toBe(1);
    expect(err).not.toMatch(/^\s+at /m);
  });
});

describe("the new command", () => {
  test("makes a season from nothing that check can read", async () => {
    const root = await season();
    const fresh = join(root, "fresh");
    const at = ["--season", fresh];
    const missing = await run("new", "facility", ...at);
    expect([missing.code, missing.err]).toEqual([2, expect.stringContaining("--season-name")]);
    const dates = ["--season-name", "Winter", "--start", "2026-01-05", "--end", "2026-02-28"];
    expect((await run("new", "facility", ...at, "--name", "Lantern Cage", ...dates)).code).toBe(0);
    await writeFile(join(root, "roster.csv"), "name,bats,team\nAda Lund,L,reds\nBen Ridge,R,reds\n");
    const many = await run("new", "athletes", join(root, "roster.csv"), ...at);
    expect(many.code).toBe(0);
    expect(many.out).toContain("Made 2 folders");
    expect(many.out).toContain("- { id: reds, members: [ada-lund, ben-ridge] }");
    const one = await run("new", "athlete", "cy-dunn", ...at, "--name", "Cy Dunn", "--alias", "14", "--born", "2010");
    expect(one.code).toBe(0);
    const before = await bytesOf(fresh);
    expect((await run("new", "athlete", "cy-dunn", ...at, "--name", "Cy Dunn")).code).toBe(1);
    expect((await run("new", "facility", ...at, "--name", "Other", ...dates)).code).toBe(1);
    expect((await run("new", "athletes", join(root, "roster.csv"), ...at)).out).toContain("There already");
    expect(await bytesOf(fresh)).toEqual(before);
  });

  test.each([
    [["new"], "was not named"],
    [["new", "bat"], 'nothing new called "bat"'],
    [["new", "athletes"], "no roster"],
    [["new", "athlete"], "no name"],
    [["new", "athlete", "--column", "x"], "no option --column"],
  ])("%j is refused with a sentence", async (args, words) => {
    const { code, err } = await run(...args, "--season", await season());
    expect(code).toBe(2);
    expect(err).toContain(words);
  });
});
