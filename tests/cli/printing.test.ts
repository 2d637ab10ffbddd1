import { describe, expect, test } from "vitest";
import { failureOf } from "../../src/cli/failure.ts";
import { progressLines } from "../../src/cli/progress.ts";
import { buildSummary } from "../../src/cli/summary.ts";
import { tableLines } from "../../src/cli/table.ts";
import { Unbalanced } from "../../src/publish/balance.ts";
import { EXIT, Stopped } from "../../src/publish/stopped.ts";

describe("the table of a build", () => {
  const none = { read: 0, counted: 0, notCounted: {}, setAside: {} };
  const built = {
    asOf: "2026-02-21",
    athletes: [
      { id: "ada-lund", name: "Ada Lund", withheld: { family: null, club: "no-consent" } },
      { id: "ben-ridge", name: "Ben Ridge", withheld: { family: "needs-guardian", club: "needs-guardian" } },
    ],
    missing: ["cleo-vane"],
    ledger: {
      total: { read: 14_248, counted: 13_231, notCounted: { take: 157, bunt: 29 }, setAside: { duplicate: 831 } },
      files: [],
      athletes: [],
      unassigned: none,
    },
    problems: [],
    links: [
      {
        athlete: "ada-lund",
        recipient: "family",
        reader: "family" as const,
        label: null,
        token: "a",
        path: "r/a/",
        withheld: null,
        since: null,
        handed: [],
        ...{ rotation: 0, until: null, sealed: false, key: null, passphrase: null },
      },
    ],
    pages: 3,
  };

  test("says what was read, what became of it, who is published, and last who is missing", () => {
    expect(buildSummary(built, 1.234)).toEqual([
      "athletes              2",
      "published             1",
      "rows read        14,248",
      "counted          13,231",
      "not counted         186",
      "  take              157",
      "  bunt               29",
      "set aside           831",
      "  duplicate         831",
      "pages                 3",
      "as of        2026-02-21",
      "seconds             1.2",
      "ben-ridge is on the desk and not published: a guardian has to agree",
      "Not published until their files are put right: cleo-vane",
    ]);
  });

  test("ends with the table when nobody is missing", () => {
    expect(buildSummary({ ...built, missing: [], athletes: [] }, 0).at(-1)).toBe("seconds             0.0");
  });

  test("of nothing has no lines", () => {
    expect(tableLines([])).toEqual([]);
  });
});

describe("what is said of a failure", () => {
  test("that was foreseen: what, what to do, and its own exit status", () => {
    const said = failureOf(new Stopped(EXIT.input, "the secret is damaged", "put it back"), false);
    expect(said).toEqual({ exit: 1, lines: ["the secret is damaged  — put it back"] });
  });

  test("of usage: the usage", () => {
    const { exit, lines } = failureOf(new Stopped(EXIT.usage, "no command was named", "see the usage below"), false);
    expect(exit).toBe(2);
    expect(lines.join("\n")).toContain("--season DIR");
  });

  test("of the disk: no word of a fault of the program", () => {
    const full = Object.assign(new Error("ENOSPC: no space left on device"), {
      code: "ENOSPC",
      path: "/s/_site/index.html",
    });
    const { exit, lines } = failureOf(full, false);
    expect(exit).toBe(3);
    expect(lines).toEqual([
      "no space is left for /s/_site/index.html  — nothing was published; set that right and try again",
    ]);
  });

  test.each([new Unbalanced("a.csv", 4, 3), new TypeError("x is not a function")])(
    "of the program: says so (%s)",
    (error) => {
      const { exit, lines } = failureOf(error, false);
      expect(exit).toBe(3);
      expect(lines[0]).toBe(`This is a fault of Winterbook, not of your files: ${error.message}`);
      expect(lines.join("\n")).not.toMatch(/^\s+at /m);
      expect(failureOf(error, true).lines.join("\n")).toMatch(/^\s+at /m);
    },
  );

  test("that is no error at all", () => {
    expect(failureOf("odd", true).exit).toBe(3);
  });
});

describe("progress away from a terminal", () => {
  test("is four lines for a long stage and none for a short one", () => {
    let now = 0;
    const lines: string[] = [];
    const { progress } = progressLines(
      (line) => lines.push(line),
      () => now,
    );
    for (let i = 0; i <= 100; i++) {
      now += 1;
      progress("files", i, 100);
    }
    expect(lines).toEqual([]);
    for (let i = 0; i <= 100; i++) {
      now += 100;
      progress("reports", i, 100);
    }
    expect(lines).toEqual([
      "reports: 25 of 100\n",
      "reports: 50 of 100\n",
      "reports: 75 of 100\n",
      "reports: 100 of 100\n",
    ]);
  });
});
