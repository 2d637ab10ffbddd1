import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { CODES } from "../../src/cli/codes.ts";
import { SPOKEN_CODES, sayProblem, WITHHELD } from "../../src/cli/messages.ts";
import { problemCounts, problemLine, problemLines } from "../../src/cli/problems.ts";
import { SET_ASIDE_REASONS } from "../../src/schema/reasons.ts";
import type { Problem } from "../../src/schema/season.ts";

const SOURCE = join(import.meta.dirname, "..", "..", "src");

/** Codes as they stand in the source of the stages that find problems. */
function codesIn(folder: string): string[] {
  const all = readdirSync(join(SOURCE, folder), { encoding: "utf8", recursive: true });
  // What guessing at an export's columns says to the person at the terminal is no problem of a file.
  const files = all.filter((name) => name.endsWith(".ts") && !name.startsWith("guess/"));
  return files.flatMap((name) => {
    const text = readFileSync(join(SOURCE, folder, name), "utf8");
    const calls = text.matchAll(/\b(?:fault|rowFault|remark)\(\s*"([a-z0-9-]+)"|\bcode: "([a-z0-9-]+)"/g);
    return [...calls].map((match) => match[1] ?? match[2] ?? "");
  });
}

describe("every problem has words", () => {
  const codes = [...new Set([...codesIn("intake"), ...SET_ASIDE_REASONS, "names-other-athlete"])].sort();

  test("and the list of codes was really read", () => {
    expect(codes.length).toBeGreaterThan(35);
  });

  test.each(codes)("%s", (code) => {
    expect(SPOKEN_CODES).toContain(code);
    const { problem, remedy } = sayProblem({ code, args: {} });
    expect(problem).not.toBe("");
    expect(remedy).not.toBe("");
  });

  test("and a code nobody has thought of is still shown with what it carries", () => {
    expect(sayProblem({ code: "new-trouble", args: { key: "goals", found: "" } })).toEqual({
      problem: 'new trouble, key "goals", found nothing',
      remedy: "look at this place in the file",
    });
    expect(sayProblem({ code: "constructor", args: {} }).problem).toBe("constructor");
  });

  test.each(codes)("and no hole where an argument was left out: %s", (code) => {
    const args: Problem["args"] = CODES[code]?.args ?? {};
    const { suggestion: _, ...general } = args;
    for (const some of [args, general]) {
      const { problem, remedy } = sayProblem({ code, args: some });
      expect(`${problem} ${remedy}`).not.toMatch(/undefined|null|NaN|\[object/);
    }
  });
});

test("every reason for not publishing has words", () => {
  const text = readFileSync(join(SOURCE, "report", "schema.ts"), "utf8");
  const [, list = ""] = /why: z\.enum\(\[([^\]]+)\]/.exec(text) ?? [];
  const reasons = [...list.matchAll(/"([^"]+)"/g)].map(([, reason]) => reason);
  expect(reasons.length).toBeGreaterThan(3);
  for (const reason of [...reasons, "link-ended", "names-other-athlete"])
    expect(WITHHELD).toHaveProperty([reason ?? ""]);
});

const problem = (over: Partial<Problem> & { at: Problem["at"] }): Problem => ({
  code: "unreadable-number",
  level: "row",
  args: { field: "bat_speed_mph", value: "61,5", suggestion: "61.5" },
  athlete: null,
  ...over,
});

describe("a printed problem", () => {
  test("says where, what and what to do", () => {
    expect(problemLine(problem({ at: { file: "data/swings/autumn.csv", line: 14, column: 9 } }))).toBe(
      'data/swings/autumn.csv:14:9  bat_speed_mph is "61,5", not a number  — write 61.5',
    );
  });

  test("of a misspelt key suggests the right one", () => {
    const args = { key: "borm", in: "profile.md", suggestion: "born" };
    expect(sayProblem({ code: "unknown-key", args })).toEqual({
      problem: 'profile.md has no key "borm"',
      remedy: "did you mean born?",
    });
  });

  const remedy = (code: string, args: Problem["args"]) => sayProblem({ code, args }).remedy;

  test("of a misspelt column of ours says how the header is to be written, not the other way round", () => {
    expect(remedy("missing-column", { column: "athlete_id", suggestion: "athlet_id" })).toBe(
      "is it the one called athlet_id? then write athlete_id in the header",
    );
  });

  test("of a word says which words there are, where it could be listed, or what the mapping may say", () => {
    const side = { field: "side", value: "both", allowed: "left or right" };
    expect(remedy("unknown-id", side)).toBe("write left or right");
    expect(remedy("unknown-id", { field: "ball", value: "foam", list: "balls" })).toBe("add it to data/balls.csv");
    expect(remedy("unknown-id", { field: "Hand", value: "B", allowed: "left or right", mapped: 1 })).toBe(
      'write under words in the mapping what "B" stands for (left or right)',
    );
  });

  test("of a missing file says what that file needs", () => {
    expect(remedy("missing-file", { file: "content/facility.md" })).toContain("a name and a season");
    expect(remedy("missing-file", { file: "content/athletes/ana-l/profile.md" })).toContain("only a name");
  });

  test("of one row is in the singular", () => {
    const said = (rows: number) => sayProblem({ code: "rows-of-left-out", args: { athlete: "amy", rows } }).problem;
    expect(said(1)).toContain("1 row belongs to amy");
    expect(said(2)).toContain("2 rows belong to amy");
  });

  test("stands with the others of its file, in the order of lines", () => {
    const at = (file: string, line: number | null) => problem({ at: { file, line, column: null } });
    const lines = problemLines([at("b.csv", 10), at("a.csv", 9), at("b.csv", null), at("b.csv", 2)]);
    expect(lines.map((line) => line.split("  ")[0])).toEqual(["a.csv:9", "", "b.csv", "b.csv:2", "b.csv:10"]);
  });

  test("is counted by its kind", () => {
    const at = { file: "a.csv", line: 1, column: null };
    expect(problemCounts([problem({ at }), problem({ at, level: "error" }), problem({ at, level: "error" })])).toBe(
      "2 errors, 1 row set aside, no notes",
    );
  });
});
