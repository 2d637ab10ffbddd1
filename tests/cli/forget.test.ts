import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { build, type Holding, links } from "../../src/build.ts";
import { readArguments } from "../../src/cli/arguments.ts";
import { forgetCommand } from "../../src/cli/forget.ts";
import type { Terminal } from "../../src/cli/terminal.ts";
import { withoutRecords } from "../../src/intake/holdings.ts";
import { bytesOf, isThere, OPTIONS, pathsOf, quiet, removeFolder, SMALL, seasonFolder } from "./small-season.ts";

const made: string[] = [];
afterEach(async () => {
  for (const root of made.splice(0)) await removeFolder(root);
});
async function season(changes: Parameters<typeof seasonFolder>[0] = {}) {
  const root = await seasonFolder({
    "content/facility.md": String(SMALL["content/facility.md"]).replace(
      "measures:",
      "groups: [{ id: all, members: [ada-lund, ben-ridge, cleo-vane] }]\nmeasures:",
    ),
    "data/swings/hers.csv": "athlete_id,date,environment,bat_speed_mph\nada-lund,2026-02-10,tee,71.5\n",
    "data/corrections.csv":
      "by,on,reason,file,line,action,field,from,to\nkay,2026-02-01,typed wrong,data/swings/january.csv,80,set,bat_speed,,49\n",
    ...changes,
  });
  made.push(root);
  return { root, paths: pathsOf(root) };
}
async function forget(root: string, ...args: string[]) {
  const lines: string[] = [];
  const terminal = {
    print: (line: string) => lines.push(line),
    tell: () => {},
    display: process.stderr,
    interactive: false,
  } as unknown as Terminal;
  const called = readArguments(["forget", "--season", root, ...args], { here: root, home: root });
  return { exit: await forgetCommand(called, terminal), lines };
}
const text = (root: string, path: string) => readFile(join(root, path), "utf8");
const reportOf = async (root: string, id: string) => JSON.parse(await text(root, `_desk/reports/${id}.json`));

/** What a group's noise is leans on all of it; swings do not. */
const swingsOf = ({ ledger, series }: { ledger: unknown; series: { sessions: unknown }[] }) => ({
  ledger,
  sessions: series.map(({ sessions }) => sessions),
});

describe("forgetting an athlete", () => {
  test("takes pages, links and caches away and lists the files, and without a yes deletes none", async () => {
    const { root, paths } = await season();
    const { links: before } = await build(paths, OPTIONS, quiet());
    const hers = before.filter(({ athlete }) => athlete === "ada-lund");
    const sources = await bytesOf(join(root, "data"));
    const { exit, lines } = await forget(root, "ada-lund", "--json");
    expect(exit).toBe(0);
    const { deleted, holdings } = JSON.parse(lines.join("\n")) as { deleted: boolean; holdings: Holding[] };
    expect(deleted).toBe(false);
    const kinds = Object.fromEntries(holdings.map(({ file, kind }) => [file, kind]));
    expect(kinds).toEqual({
      "content/athletes/ada-lund/notes/2026-01-20.md": "own",
      "content/athletes/ada-lund/notes/2026-01-21.md": "own",
      "content/athletes/ada-lund/notes/hidden.png": "own",
      "content/athletes/ada-lund/notes/stance.png": "own",
      "content/athletes/ada-lund/profile.md": "own",
      "content/facility.md": "by-hand",
      "data/swings/hers.csv": "own",
      "data/swings/january.csv": "shared",
      "data/swings/more.csv": "shared",
    });
    for (const { path } of hers) expect(await isThere(join(paths.out, path))).toBe(false);
    expect(await bytesOf(join(root, "data"))).toEqual(sources);
    const again = await build(paths, OPTIONS, quiet());
    expect(again.links.filter(({ athlete }) => athlete === "ada-lund").map(({ withheld }) => withheld)).toEqual([
      "link-revoked",
      "link-revoked",
    ]);
  });

  test("on a yes deletes what is theirs, leaves the rows of others on their lines, and every swing of theirs counted as before", async () => {
    const { root, paths } = await season({ "content/facility.md": SMALL["content/facility.md"]! });
    await build(paths, OPTIONS, quiet());
    const others = await reportOf(root, "ben-ridge");
    const before = (await text(root, "data/swings/january.csv")).split("\n");
    const { lines } = await forget(root, "ada-lund", "--yes");
    expect(lines.join("\n")).toMatch(/hers\.csv +deleted whole/);
    expect(lines.join("\n")).toContain("local law");
    expect(await isThere(join(root, "content/athletes/ada-lund"))).toBe(false);
    expect(await isThere(join(root, "data/swings/hers.csv"))).toBe(false);
    const after = (await text(root, "data/swings/january.csv")).split("\n");
    expect(after).toEqual(before.map((line) => (line.startsWith("ada-lund") ? "" : line)));
    expect(swingsOf(await reportOf(root, "ben-ridge"))).toEqual(swingsOf(others));
    const everything = [await bytesOf(paths.out), await bytesOf(paths.desk), await bytesOf(join(root, "data"))];
    for (const files of everything)
      for (const [path, body] of Object.entries(files))
        expect(Buffer.from(body, "base64").toString("utf8"), path).not.toMatch(/ada-lund|Ada Lund/);
    expect(await text(root, ".winterbook/links.json")).not.toContain("ada-lund");
  });

  test("an address that was dead stays dead when the athlete comes back", async () => {
    const { root, paths } = await season();
    const { links: before } = await build(paths, OPTIONS, quiet());
    const profile = await text(root, "content/athletes/ada-lund/profile.md");
    await forget(root, "ada-lund", "--yes");
    const back = await seasonFolder({ "content/athletes/ada-lund/profile.md": profile });
    made.push(back);
    const now = await links({ ...pathsOf(back), state: paths.state }, {}, quiet());
    const old = new Set(before.filter(({ athlete }) => athlete === "ada-lund").map(({ token }) => token));
    expect(old.size).toBe(2);
    expect(now.filter(({ token }) => old.has(token))).toEqual([]);
    const rest = ({ athlete }: { athlete: string }) => athlete !== "ada-lund";
    expect(now.filter(rest).map(({ token }) => token)).toEqual(before.filter(rest).map(({ token }) => token));
  });

  test("of somebody unknown says who is known, and changes nothing", async () => {
    const { root } = await season();
    await expect(forget(root, "ada-lun", "--yes")).rejects.toThrow('no athlete "ada-lun"');
    await expect(forget(root)).rejects.toThrow("nobody is named");
  });
});

describe("a table without some records", () => {
  const without = (table: string, ...starts: number[]) =>
    Buffer.from(withoutRecords(Buffer.from(table, "latin1"), starts)).toString("latin1");

  test("keeps every other byte and every line's number, whatever ends the lines", () => {
    expect(without("a,b\nx,1\ny,2\nx,3\n", 2, 4)).toBe("a,b\n\ny,2\n\n");
    expect(without("a,b\r\nx,1\r\ny,\xe9\r\n", 2)).toBe("a,b\r\n\r\ny,\xe9\r\n");
  });

  test("takes a record with a line break in a cell as a whole", () => {
    expect(without('a,b\nx,"one\ntwo ""2"" \nthree"\ny,2\n', 2)).toBe("a,b\n\n\n\ny,2\n");
  });
});
