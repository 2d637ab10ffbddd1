import { describe, expect, test } from "vitest";
import { groupedLines } from "../../src/cli/group-lines.ts";
import { MOST_EXAMPLES, problemGroups } from "../../src/cli/problem-groups.ts";
import type { Problem } from "../../src/schema/season.ts";

const FILE = "data/swings/lane.csv";
const row = (line: number, value: string, file = FILE): Problem => ({
  code: "unknown-athlete",
  level: "row",
  at: { file, line, column: 1 },
  args: { field: "athlete_id", value },
  athlete: null,
});
const note: Problem = {
  code: "no-measures",
  level: "note",
  at: { file: FILE, line: null, column: null },
  args: {},
  athlete: null,
};
const counts = { read: 500, counted: 87, notCounted: { take: 1 }, setAside: { "unknown-athlete": 412 } } as const;

describe("problems by file and cause", () => {
  const many = [
    ...Array.from({ length: 400 }, (_, i) => row(i + 20, "Bo F")),
    row(2, "Cy"),
    row(3, "Di"),
    row(4, "Ed"),
  ];

  test("are counted together, with the first of each wording and how often it comes", () => {
    const [group, ...others] = problemGroups([...many, row(900, "Bo F")]);
    expect(others).toEqual([]);
    expect(group).toMatchObject({ file: FILE, code: "unknown-athlete", level: "row", count: 404 });
    expect(group?.examples.map(({ line, times }) => [line, times])).toEqual([
      [2, 1],
      [3, 1],
      [4, 1],
    ]);
    expect(group?.examples).toHaveLength(MOST_EXAMPLES);
  });

  test("stand apart for another file, and errors come before rows and notes", () => {
    const error: Problem = { ...row(9, "x"), code: "broken-header", level: "error" };
    const groups = problemGroups([note, row(1, "a"), row(1, "a", "a.csv"), error]);
    expect(groups.map(({ file, level }) => [file, level])).toEqual([
      ["a.csv", "row"],
      [FILE, "error"],
      [FILE, "row"],
      [FILE, "note"],
    ]);
  });

  test("a copy of a whole file counts with all of its rows", () => {
    const copy: Problem = { ...note, code: "repeated-file", level: "row", args: { other: "a.csv", rows: 412 } };
    expect(problemGroups([copy])[0]?.count).toBe(412);
  });

  test("print a heading with what became of the rows, the cause, and what to do", () => {
    const lines = groupedLines(problemGroups([...many.slice(0, 2), ...many.slice(-3)]), {
      files: [
        { file: FILE, ...counts },
        { file: "data/swings/whole.csv", read: 3, counted: 3, notCounted: {}, setAside: {} },
      ],
    });
    const remedy = "add the name as an alias in a profile, or make a folder for the athlete";
    expect(lines).toEqual([
      `${FILE}: 500 rows read, 87 counted, 1 not counted, 412 set aside`,
      "  5 rows set aside: a name that fits nobody  [unknown-athlete]",
      `    ${FILE}:2:1  no athlete is called "Cy"  — ${remedy}`,
      `    ${FILE}:3:1  no athlete is called "Di"  — ${remedy}`,
      `    ${FILE}:4:1  no athlete is called "Ed"  — ${remedy}`,
      "    … and 2 more; `npm run check -- --all` prints each",
      "  1 row not counted: a pitch that was let go by  [take]",
      "",
      "1 swing file has nothing to report: every row is counted.",
      "",
    ]);
  });

  test("none print nothing", () => {
    expect(groupedLines(problemGroups([]), null)).toEqual([]);
  });
});
