import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { CODES, codeLines, codesPage, meaningOf, NOT_COUNTED } from "../../src/cli/codes.ts";
import { SPOKEN_CODES } from "../../src/cli/messages.ts";
import { NOT_COUNTED_REASONS } from "../../src/schema/reasons.ts";
import { FIXTURES, problemsOf } from "./code-fixtures.ts";

const SOURCE = join(import.meta.dirname, "..", "..", "src");
const PAGE = join(SOURCE, "cli", "CODES.md");

/** Codes that stand in the source of the stages, wherever a problem is made. */
function codesInSource(): string[] {
  const stages = ["intake", "report", "build"];
  const texts = stages.flatMap((stage) =>
    readdirSync(join(SOURCE, stage), { encoding: "utf8", recursive: true })
      .filter((name) => name.endsWith(".ts") && !name.startsWith("guess/"))
      .map((name) => readFileSync(join(SOURCE, stage, name), "utf8")),
  );
  const quoted = texts.flatMap((text) => [...text.matchAll(/"([a-z][a-z0-9-]+)"/g)].map(([, word = ""]) => word));
  const made = texts.flatMap((text) =>
    [...text.matchAll(/\b(?:fault|rowFault|remark)\(\s*"([a-z0-9-]+)"/g)].map(([, word = ""]) => word),
  );
  const known = new Set(SPOKEN_CODES);
  return [...new Set([...quoted.filter((word) => known.has(word)), ...made])].sort();
}

describe("the table of codes", () => {
  test("holds every code that has words, and no other", () => {
    expect(Object.keys(CODES).sort()).toEqual([...SPOKEN_CODES].sort());
  });

  test("holds every code that the stages give", () => {
    const codes = codesInSource();
    expect(codes.length).toBeGreaterThan(40);
    expect(codes.filter((code) => !Object.hasOwn(CODES, code))).toEqual([]);
  });

  test("names every reason why a row is not counted", () => {
    expect(Object.keys(NOT_COUNTED).sort()).toEqual([...NOT_COUNTED_REASONS].sort());
  });

  test("has meanings that differ, and examples without a hole", () => {
    const meanings = Object.values(CODES).map(({ meaning }) => meaning);
    expect(new Set(meanings).size).toBe(meanings.length);
    expect(codeLines().join("\n")).not.toMatch(/undefined|null|NaN|\[object/);
    expect(meaningOf("never-heard-of")).toBe("never heard of");
  });

  test("is the page CODES.md, word for word", () => {
    if (process.env.WINTERBOOK_UPDATE === "1") writeFileSync(PAGE, codesPage());
    expect(readFileSync(PAGE, "utf8")).toBe(codesPage());
  });
});

describe("a fixture brings up the code", () => {
  test("and every code has one", () => {
    const without = Object.keys(CODES).filter((code) => !Object.hasOwn(FIXTURES, code));
    expect(without).toEqual([]);
  });

  test.each(Object.keys(FIXTURES))("%s", async (code) => {
    const problems = await problemsOf(FIXTURES[code] ?? {});
    const found = problems.filter((problem) => problem.code === code);
    expect(problems.map((problem) => problem.code)).toContain(code);
    for (const { level } of found) expect(CODES[code]?.levels).toContain(level);
  });
});
