import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { readArguments } from "../../src/cli/arguments.ts";
import { EXIT, Stopped } from "../../src/publish/stopped.ts";

const at = { here: "/home/me", home: "/home/me/winterbook" };
const read = (...args: string[]) => readArguments(args, at);

function refused(...args: string[]): string {
  try {
    read(...args);
  } catch (error) {
    if (error instanceof Stopped && error.exit === EXIT.usage) return error.message;
    throw error;
  }
  throw new Error(`${args.join(" ")} was taken`);
}

describe("a command line", () => {
  test("without options means the project's own season", () => {
    expect(read("build").paths).toEqual({
      content: "/home/me/winterbook/content",
      data: "/home/me/winterbook/data",
      out: "/home/me/winterbook/_site",
      desk: "/home/me/winterbook/_desk",
      state: "/home/me/winterbook/.winterbook",
      hold: "/home/me/winterbook/.winterbook",
    });
  });

  test("with a season means all of its folders, and each can be named alone", () => {
    const { paths } = read("build", "--season", "winter", "--out", "/srv/reports", "--desk=desk");
    expect(paths).toMatchObject({
      content: "/home/me/winter/content",
      data: "/home/me/winter/data",
      out: "/srv/reports",
      desk: "/home/me/desk",
      state: "/home/me/winter/.winterbook",
    });
  });

  test("with content alone keeps the secret beside that folder", () => {
    expect(read("check", "--content", "/team/content").paths.state).toBe("/team/.winterbook");
    expect(read("check", "--content", "/team/content", "--season", "/s").paths.state).toBe("/s/.winterbook");
  });

  test("may name a day, a port and JSON", () => {
    expect(read("start", "--as-of", "2026-02-28", "--port", "8080", "--json")).toMatchObject({
      asOf: "2026-02-28",
      port: 8080,
      json: true,
    });
  });

  test.each([
    [[], "no command"],
    [["bild"], 'no command "bild"'],
    [["build", "everything"], "one word too many"],
    [["build", "--sesaon", "x"], "--sesaon"],
    [["build", "--season"], "--season"],
    [["build", "--as-of", "28.02.2026"], "28.02.2026"],
    [["build", "--as-of", "2026-02-30"], "2026-02-30"],
    [["start", "--port", "eighty"], "eighty"],
    [["start", "--port", "70000"], "70000"],
  ])("%j is refused", (args, words) => {
    expect(refused(...args)).toContain(words);
  });

  test.each([
    ["the content would be replaced", ["--out", "/home/me/winterbook/content"]],
    ["the content lies in what would be replaced", ["--out", "/home/me/winterbook"]],
    ["the folder one stands in would be replaced", ["--out", "/home/me"]],
    ["everything would be replaced", ["--desk", "/"]],
    ["the data would be written into", ["--desk", "/home/me/winterbook/data/desk"]],
    ["the private desk would be published", ["--desk", "/home/me/winterbook/_site/desk"]],
    ["one folder would be both", ["--out", "/x", "--desk", "/x"]],
    ["the secret would be replaced", ["--out", "/home/me/winterbook/.winterbook"]],
  ])("%s: refused", (_, options) => {
    expect(refused("build", ...options)).toMatch(/would/);
  });

  test("folders of like names are different folders", () => {
    expect(read("build", "--out", "/home/me/winterbook/content-site", "--desk", "/home/me/..desk").paths.desk).toBe(
      "/home/me/..desk",
    );
  });
});

describe("a folder that is reached through a link", () => {
  let season = "";
  beforeEach(() => {
    season = realpathSync(mkdtempSync(join(tmpdir(), "links-")));
    for (const folder of ["content", "data", "elsewhere"]) mkdirSync(join(season, folder));
  });
  afterEach(() => rmSync(season, { recursive: true, force: true }));

  const link = (name: string, to: string) => symlinkSync(join(season, to), join(season, name));
  const build = (...options: string[]) => ["build", "--season", season, ...options];

  test.each([
    ["is there", true],
    ["the build is yet to make", false],
  ])("is where the link leads, into a site that %s", (_, there) => {
    if (there) mkdirSync(join(season, "_site"));
    link("way", "_site");
    expect(refused(...build("--desk", join(season, "way", "desk")))).toBe("--out and --desk would lie in each other");
  });

  test("is refused where it leads into the data", () => {
    link("way", "data");
    expect(refused(...build("--out", join(season, "way", "site")))).toMatch("--out and data would lie in each other");
  });

  test("may lie elsewhere", () => {
    link("way", "elsewhere");
    expect(read(...build("--out", join(season, "way", "site"))).paths.out).toBe(join(season, "way", "site"));
  });

  test("is not replaced itself, wherever it leads", () => {
    link("way", "elsewhere");
    link("nowhere", "not-there");
    expect(refused(...build("--out", join(season, "way")))).toMatch(/^--out is a link/);
    expect(refused(...build("--desk", join(season, "nowhere")))).toMatch(/^--desk is a link/);
  });

  test("is refused in words when links go round, or a file stands in the way", () => {
    link("one", "two");
    link("two", "one");
    expect(refused(...build("--out", join(season, "one", "site")))).toContain("cannot be followed");
    writeFileSync(join(season, "paper"), "");
    expect(read(...build("--out", join(season, "paper", "site"))).command).toBe("build");
  });
});
