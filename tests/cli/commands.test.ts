import { type ChildProcess, spawn } from "node:child_process";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { bytesOf, isThere, removeFolder, seasonFolder } from "./small-season.ts";

const MAIN = join(import.meta.dirname, "..", "..", "src", "cli", "main.ts");
const PROJECT = join(import.meta.dirname, "..", "..");
// Each test starts whole processes, one of them several in turn.
vi.setConfig({ testTimeout: 180_000 });

const made: string[] = [];
const running: ChildProcess[] = [];

async function season(changes: Parameters<typeof seasonFolder>[0] = {}): Promise<string> {
  const root = await seasonFolder(changes);
  made.push(root);
  return root;
}
afterEach(async () => {
  for (const child of running.splice(0)) if (child.exitCode === null) child.kill("SIGKILL");
  for (const root of made.splice(0)) await removeFolder(root);
});

function started(...args: string[]): {
  child: ChildProcess;
  out: () => string;
  err: () => string;
  ended: Promise<number | null>;
} {
  const { INIT_CWD: _, npm_lifecycle_event: __, WINTERBOOK_DEBUG: ___, ...env } = process.env;
  const child = spawn(process.execPath, ["--import", "tsx", MAIN, ...args], { cwd: PROJECT, env });
  running.push(child);
  let out = "";
  let err = "";
  child.stdout.on("data", (text) => {
    out += text;
  });
  child.stderr.on("data", (text) => {
    err += text;
  });
  const ended = new Promise<number | null>((done) => child.on("close", (code) => done(code)));
  return { child, out: () => out, err: () => err, ended };
}

async function run(...args: string[]) {
  const { out, err, ended } = started(...args);
  const code = await ended;
  return { code, out: out(), err: err() };
}

/** Looks until something holds, for at most a minute. */
async function until(holds: () => boolean | Promise<boolean>): Promise<void> {
  for (let i = 0; i < 2400; i++) {
    if (await holds()) return;
    await new Promise((done) => setTimeout(done, 25));
  }
  throw new Error("waited for a minute");
}

describe("npm run build", () => {
  test("prints a short table, and rows set aside are no failure", async () => {
    const root = await season();
    const { code, out, err } = await run("build", "--season", root);
    expect(err).toBe("");
    expect(code).toBe(0);
    expect(out).toMatch(/^athletes +3$/m);
    expect(out).toMatch(/^published +2$/m);
    expect(out).toMatch(/^rows read +219$/m);
    expect(out).toMatch(/^counted +216$/m);
    expect(out).toMatch(/^set aside +3$/m);
    expect(out).toContain("cleo-vane is on the desk and not published: a guardian has to agree");
  });

  test("leaves out an athlete whose files cannot be used, publishes the others, and names who is missing last", async () => {
    const root = await season({ "content/athletes/ben-ridge/profile.md": "---\nname: Ben Ridge\nborm: 2014\n---\n" });
    const { code, out, err } = await run("build", "--season", root);
    expect(code).toBe(1);
    expect(err).toContain("content/athletes/ben-ridge/profile.md:3:1");
    expect(err).toContain("did you mean born?");
    expect(out.trimEnd().split("\n").at(-1)).toBe("Not published until their files are put right: ben-ridge");
    expect(out).toMatch(/^published +1$/m);
  });

  test("killed half-way leaves the previous site whole, and the next build goes on", async () => {
    const root = await season();
    await run("build", "--season", root);
    const before = [await bytesOf(join(root, "_site")), await bytesOf(join(root, "_desk"))];
    const { child, ended } = started("build", "--season", root, "--as-of", "2026-02-20");
    await until(() => isThere(join(root, ".winterbook", "lock")));
    child.kill("SIGKILL");
    await ended;
    expect([await bytesOf(join(root, "_site")), await bytesOf(join(root, "_desk"))]).toEqual(before);
    const { code } = await run("build", "--season", root, "--as-of", "2026-02-20");
    expect(code).toBe(0);
    expect(JSON.parse(await readFile(join(root, "_desk", "reports", "ada-lund.json"), "utf8")).asOf).toBe("2026-02-20");
    expect(await isThere(join(root, ".winterbook", "lock"))).toBe(false);
  });

  test("speaks JSON and nothing else when asked to", async () => {
    const { code, out } = await run("build", "--season", await season(), "--json");
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ missing: [], ledger: { total: { read: 219, counted: 216 } } });
  });
});

test("a file that cannot be used is named last, by build and by check", async () => {
  const root = await season({ "data/swings/photo.csv": Buffer.from("\x89PNG\r\n\x1a\n", "latin1") });
  for (const command of ["build", "check"]) {
    const { code, out } = await run(command, "--season", root);
    expect(code).toBe(1);
    expect(out.trimEnd().split("\n").at(-1)).toBe(
      "Missing, or used only in part, until put right: data/swings/photo.csv",
    );
  }
});

test("npm run build without a facility says so in JSON too, as check does", async () => {
  const root = await season({ "content/facility.md": null });
  const [built, checked] = [
    await run("build", "--season", root, "--json"),
    await run("check", "--season", root, "--json"),
  ];
  expect([built.code, checked.code]).toEqual([1, 1]);
  expect(JSON.parse(built.out)).toEqual(JSON.parse(checked.out));
  expect(JSON.parse(built.out).problems[0]).toMatchObject({
    code: "missing-file",
    args: { file: "content/facility.md" },
  });
  expect(built.err).toContain("Nothing was published");
});

describe("npm run check", () => {
  test("on a misspelt key fails, suggests the right one, and writes nothing", async () => {
    const root = await season({
      "content/facility.md": "---\nnane: Lantern Cage\nseason: { name: W, start: 2026-01-05, end: 2026-02-28 }\n---\n",
    });
    const before = await bytesOf(root);
    const { code, out } = await run("check", "--season", root);
    expect(code).toBe(1);
    expect(out).toMatch(/^ +content\/facility\.md:2:1 {2}facility\.md has no key "nane" {2}— did you mean name\?$/m);
    expect(await bytesOf(root)).toEqual(before);
  });

  test("prints rows set aside by file and cause, every line when asked, and does not fail for them", async () => {
    const root = await season();
    const line = 'data/swings/more.csv:76:4  bat_speed_mph is "67,3", not a number  — write 67.3';
    const grouped = await run("check", "--season", root);
    expect(grouped.code).toBe(0);
    expect(grouped.out).toContain("data/swings/more.csv: 75 rows read, 72 counted, 3 set aside\n");
    expect(grouped.out).toContain(
      `  1 row set aside: a number that cannot be read  [unreadable-number]\n    ${line}\n`,
    );
    expect(grouped.out).toMatch(/^no errors, 3 rows set aside, /m);
    const all = await run("check", "--season", root, "--all");
    expect(all.out.split("\n")).toContain(line);
  });

  test("speaks JSON: every problem, the groups, and what became of the rows", async () => {
    const { out } = await run("check", "--season", await season(), "--json");
    const { problems, groups, ledger } = JSON.parse(out);
    expect(problems).toContainEqual(expect.objectContaining({ code: "unreadable-number", remedy: "write 67.3" }));
    expect(groups).toContainEqual(expect.objectContaining({ code: "unreadable-number", count: 1 }));
    expect(ledger.total).toMatchObject({ read: 219, counted: 216 });
  });
});

test("npm run map without a terminal asks in flags, and with them saves what the next export is read by", async () => {
  const text = "Hitter,Day,Bat Speed (mph)\nAda Lund,06/01/2026,66.1\n";
  const root = await season({ "lane.csv": text, "data/swings/lane.csv": text });
  const asked = await run("map", join(root, "lane.csv"), "--season", root);
  expect([asked.code, asked.err]).toEqual([2, ""]);
  expect(asked.out).toContain('--date-form "dd/MM/yyyy"   (the day comes first)');
  const saved = await run("map", join(root, "lane.csv"), "--season", root, "--date-form", "dd/MM/yyyy", "--yes");
  expect(saved.code).toBe(0);
  const checked = await run("check", "--season", root);
  expect(checked.out).toContain("2 swing files");
});

test("npm run new makes a season from nothing that check can read", async () => {
  const fresh = join(await season(), "fresh");
  const dates = ["--season-name", "Winter", "--start", "2026-01-05", "--end", "2026-02-28"];
  expect((await run("new", "facility", "--season", fresh, "--name", "Lantern Cage", ...dates)).code).toBe(0);
  expect((await run("new", "athlete", "cy-dunn", "--season", fresh, "--name", "Cy Dunn")).code).toBe(0);
  const checked = await run("check", "--season", fresh);
  expect([checked.code, checked.out]).toEqual([0, expect.stringContaining("no errors")]);
});

describe("a wrong call", () => {
  test("shows the usage, with exit status 2 and no stack", async () => {
    const { code, err } = await run("build", "--sesaon", "x");
    expect(code).toBe(2);
    expect(err).toContain("--sesaon");
    expect(err).toContain("Usage:");
    expect(err).not.toMatch(/^\s+at /m);
  });

  test("of a season that is not there says what is missing, without a stack", async () => {
    const { code, err } = await run("build", "--season", join(await season(), "nowhere"));
    expect(code).toBe(1);
    expect(err).toContain("content/facility.md is missing");
    expect(err).not.toMatch(/^\s+at /m);
  });
});

test("npm start serves a preview of its own and builds again after a change", async () => {
  const root = await season();
  const { child, out, ended } = started("start", "--season", root, "--as-of", "2026-02-20");
  await until(() => out().includes("Preview at"));
  const link = /^Ada Lund +family +(http:\/\/127\.0\.0\.1:\d+\/r\/\S+)$/m.exec(out())?.[1] ?? "";
  const page = async () => (await fetch(link)).text();
  expect(await page()).toContain("The tee felt easy.");
  const note = join(root, "content", "athletes", "ada-lund", "notes", "2026-01-20.md");
  await writeFile(note, (await readFile(note, "utf8")).replace("easy", "like home"));
  await until(() => out().includes("Built again"));
  expect(await page()).toContain("The tee felt like home.");
  expect(await isThere(join(root, "_site"))).toBe(false);
  expect(await isThere(join(root, "_desk"))).toBe(false);
  child.kill("SIGINT");
  expect(await ended).toBe(0);
});
