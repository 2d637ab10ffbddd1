import { describe, expect, test } from "vitest";
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
