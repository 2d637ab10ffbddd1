import { readFile } from "node:fs/promises";
import { join } from "node:path";
import decodeQR from "qr/decode.js";
import { afterEach, describe, expect, test } from "vitest";
import { build, changeLinks, links } from "../../src/build.ts";
import { readArguments } from "../../src/cli/arguments.ts";
import { linksCommand } from "../../src/cli/links.ts";
import type { Terminal } from "../../src/cli/terminal.ts";
import { bytesOf, isThere, OPTIONS, pathsOf, quiet, removeFolder, seasonFolder } from "./small-season.ts";

const made: string[] = [];
afterEach(async () => {
  for (const root of made.splice(0)) await removeFolder(root);
});
async function season(changes: Parameters<typeof seasonFolder>[0] = {}) {
  const root = await seasonFolder(changes);
  made.push(root);
  return { root, paths: pathsOf(root) };
}
const said = async (root: string, ...args: string[]) => {
  const lines: string[] = [];
  const terminal = {
    print: (line: string) => lines.push(line),
    tell: () => {},
    display: process.stderr,
  } as unknown as Terminal;
  const called = readArguments(["links", "--season", root, ...args], { here: root, home: root });
  return { exit: await linksCommand(called, terminal), lines };
};

describe("links", () => {
  test("a rotated link's old folder is gone after the next build, and the new one is there", async () => {
    const { paths } = await season();
    const { links: before } = await build(paths, OPTIONS, quiet());
    const old = before.find(({ athlete, reader }) => athlete === "ada-lund" && reader === "family")!;
    const change = { kind: "rotated", athlete: "ada-lund", recipient: "family", on: "2026-02-01" } as const;
    const changed = await changeLinks(paths, change, {}, quiet());
    const now = changed.find(({ athlete, reader }) => athlete === "ada-lund" && reader === "family")!;
    expect(now.path).not.toBe(old.path);
    expect(await isThere(join(paths.out, old.path))).toBe(true);
    const { links: built } = await build(paths, OPTIONS, quiet());
    expect(built).toEqual(changed);
    expect([await isThere(join(paths.out, old.path)), await isThere(join(paths.out, now.path))]).toEqual([false, true]);
    const others = ({ athlete, reader }: (typeof before)[number]) => athlete !== "ada-lund" || reader !== "family";
    expect(built.filter(others)).toEqual(before.filter(others));
  });

  test("a revoked link has no page, and the list says why", async () => {
    const { paths } = await season();
    await changeLinks(paths, { kind: "revoked", athlete: "ben-ridge", recipient: null, on: "2026-02-01" }, {}, quiet());
    const { links: built } = await build(paths, OPTIONS, quiet());
    for (const { path } of built.filter(({ athlete }) => athlete === "ben-ridge"))
      expect(await isThere(join(paths.out, path))).toBe(false);
    expect(await readFile(join(paths.desk, "links.csv"), "utf8")).toContain(
      "ben-ridge,family,family,,no: link-revoked",
    );
  });

  test("looking changes nothing, and gives what a build gives", async () => {
    const { paths } = await season();
    const { links: built } = await build(paths, OPTIONS, quiet());
    expect(await links(paths, {}, quiet())).toEqual(built);
  });

  test("the command prints who can open what, and notes hand-outs", async () => {
    const { root } = await season();
    const { exit, lines } = await said(root);
    expect(exit).toBe(0);
    expect(lines[0]).toMatch(/^athlete +recipient +reader/);
    expect(lines.find((line) => line.startsWith("ada-lund") && line.includes("family"))).toMatch(
      /opens +since 2026-01-02/,
    );
    expect(lines.find((line) => line.startsWith("cleo-vane"))).toContain("a guardian has to agree");
    const noted = await said(root, "--handed", "ada-lund", "--recipient", "family", "--to", "herself");
    expect(noted.lines.join("\n")).toMatch(/herself \(\d{4}-\d{2}-\d{2}\)/);
    const rotated = await said(root, "--rotate", "ada-lund");
    expect(rotated.lines.join("\n")).not.toContain("herself");
    expect(rotated.lines.at(-1)).toContain("The next build takes the old address away");
  });

  test("a sealed report asks for words that were set, which stand nowhere but beside the secret, until they are taken away", async () => {
    const { root, paths } = await season();
    const set = await said(root, "--passphrase", "ben-ridge", "--phrase", "four quiet words", "--json");
    expect(set.lines.join("\n")).not.toContain("four quiet words");
    const shown = await said(root);
    expect(shown.lines.find((line) => line.startsWith("ben-ridge"))).toContain("sealed, asks for words");
    expect(shown.lines.find((line) => line.startsWith("ada-lund"))).toContain("not sealed");
    const { links: built } = await build(paths, OPTIONS, quiet());
    const ben = built.find(({ athlete, reader }) => athlete === "ben-ridge" && reader === "family")!;
    expect(await readFile(join(paths.out, ben.path, "index.html"), "utf8")).toContain(`data-token="${ben.token}"`);
    for (const folder of [paths.out, paths.desk])
      for (const [path, body] of Object.entries(await bytesOf(folder)))
        expect(Buffer.from(body, "base64").includes("four quiet words"), path).toBe(false);
    await said(root, "--no-passphrase", "ben-ridge");
    const { links: after } = await build(paths, OPTIONS, quiet());
    const now = after.find(({ token }) => token === ben.token)!;
    expect([now.passphrase, now.key]).toEqual([null, ben.key]);
    expect(await readFile(join(paths.out, ben.path, "index.html"), "utf8")).not.toContain("data-token");
  });

  test("words are refused where they would protect nothing", async () => {
    const { root } = await season();
    await expect(said(root, "--passphrase", "ada-lund", "--phrase", "four quiet words")).rejects.toThrow("not sealed");
    await expect(said(root, "--passphrase", "ben-ridge", "--phrase", "1234")).rejects.toThrow("too short");
    await expect(said(root, "--passphrase", "ben-ridge")).rejects.toThrow("needs words");
  });

  test("options that do not go together are refused", async () => {
    const { root } = await season();
    await expect(said(root, "--rotate", "ada-lund", "--revoke", "ada-lund")).rejects.toThrow("at once");
    await expect(said(root, "--handed", "ada-lund")).rejects.toThrow("--handed needs --to");
    await expect(said(root, "--to", "her")).rejects.toThrow("go with a change");
  });
});

describe("sheets of links", () => {
  const facility = "name: Lantern Cage\nseason: { name: Winter, start: 2026-01-05, end: 2026-02-28 }";

  test("hold each live link's address as text and as a code that reads back to it", async () => {
    const { paths } = await season({
      "content/facility.md": `---\n${facility}\nsite_url: https://cage.example/reports\n---\n`,
    });
    const { links: built } = await build(paths, OPTIONS, quiet());
    const sheet = await readFile(join(paths.desk, "links", "ada-lund.html"), "utf8");
    const mine = built.filter(({ athlete }) => athlete === "ada-lund");
    const codes = [...sheet.matchAll(/viewBox="0 0 (\d+) \1"[^>]*>.*?<path d="([^"]*)"/gs)];
    expect(codes).toHaveLength(mine.length);
    for (const [i, { path }] of mine.entries()) {
      expect(sheet).toContain(`https://cage.example/reports/${path}`);
      expect(read(Number(codes[i]![1]), codes[i]![2]!)).toBe(`https://cage.example/reports/${path}`);
    }
    for (const { athlete, token } of built) if (athlete !== "ada-lund") expect(sheet).not.toContain(token);
    expect(await isThere(join(paths.desk, "links", "cleo-vane.html"))).toBe(false);
  });

  test("are not made where nobody has said where the site lies", async () => {
    const { paths } = await season();
    await build(paths, OPTIONS, quiet());
    expect(await isThere(join(paths.desk, "links"))).toBe(false);
  });
});

/** What a reader of QR codes reads from the drawn cells, each four pixels wide. */
function read(size: number, drawn: string): string {
  const scale = 4;
  const width = size * scale;
  const data = new Uint8Array(width * width * 4).fill(255);
  for (const [, x, y] of drawn.matchAll(/M(\d+) (\d+)h1v1h-1z/g)) {
    for (let dy = 0; dy < scale; dy += 1)
      for (let dx = 0; dx < scale; dx += 1)
        data.fill(
          0,
          ((Number(y) * scale + dy) * width + Number(x) * scale + dx) * 4,
          ((Number(y) * scale + dy) * width + Number(x) * scale + dx) * 4 + 3,
        );
  }
  return decodeQR({ width, height: width, data });
}
