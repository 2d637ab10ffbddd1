import { describe, expect, test } from "vitest";
import { splitFrontMatter } from "../../src/intake/front-matter.ts";
import { BASE, coded, placed, seasonOf } from "./season-of.ts";

const PROFILE = "content/athletes/ana-l/profile.md";
const FACILITY = "content/facility.md";
const profile = (...lines: string[]): string => ["---", "name: Ana Lindqvist", ...lines, "---", ""].join("\n");
const error = (season: Awaited<ReturnType<typeof seasonOf>>): string[] =>
  season.problems.filter(({ level }) => level === "error").map(placed);

describe("cutting a page", () => {
  test("the body starts on the line after the second fence", () => {
    expect(splitFrontMatter("---\na: 1\n---\nHello\n")).toEqual({
      kind: "found",
      yaml: "a: 1",
      yamlLine: 2,
      body: "Hello\n",
      bodyLine: 4,
    });
  });

  test("a line of dashes further down is the coach's own", () => {
    expect(splitFrontMatter("Hello\n---\na: 1\n---\n")).toMatchObject({ kind: "none" });
    expect(splitFrontMatter("---\na: 1\n---\nx\n---\ny\n")).toMatchObject({ kind: "found", body: "x\n---\ny\n" });
  });

  test("an opening fence needs a closing one", async () => {
    expect(splitFrontMatter("---\na: 1\n")).toEqual({ kind: "unclosed" });
    const season = await seasonOf({ [PROFILE]: "---\nname: Ana\n" });
    expect(error(season)).toEqual([`${PROFILE}:1:1 unclosed-front-matter`]);
  });
});

describe("reading a page", () => {
  test("a byte order mark and CRLF line ends change nothing", async () => {
    const text = profile("born: 2009-05-14", "bats: left");
    const plain = await seasonOf({ [PROFILE]: text });
    const windows = await seasonOf({ [PROFILE]: `\ufeff${text.replaceAll("\n", "\r\n")}` });
    expect(windows).toEqual(plain);
    expect(plain.athletes[0]?.profile).toEqual({ name: "Ana Lindqvist", born: "2009-05-14", bats: "left" });
  });

  test("places are the same under CRLF", async () => {
    const season = await seasonOf({ [PROFILE]: profile("bats: left", "sex: femal").replaceAll("\n", "\r\n") });
    expect(error(season)).toEqual([`${PROFILE}:4:6 wrong-value`]);
  });

  test("a misspelt key is named at the key, with the key that was meant", async () => {
    const season = await seasonOf({ [PROFILE]: profile("bats: left", "recipiants: []") });
    expect(error(season)).toEqual([`${PROFILE}:4:1 unknown-key`]);
    expect(coded(season, "unknown-key")[0]).toMatchObject({
      args: { key: "recipiants", in: "profile.md", suggestion: "recipients" },
      athlete: "ana-l",
    });
  });

  test("a key that is like nothing gets no suggestion", async () => {
    const season = await seasonOf({ [PROFILE]: profile("shoe: 44") });
    expect(coded(season, "unknown-key")[0]?.args).toEqual({ key: "shoe", in: "profile.md" });
  });

  test("a misspelt required key is not reported as missing too", async () => {
    const season = await seasonOf({ [PROFILE]: "---\nnmae: Ana\n---\n" });
    expect(error(season)).toEqual([`${PROFILE}:2:1 unknown-key`]);
  });

  test("a missing key is named where the front matter starts", async () => {
    const season = await seasonOf({ [PROFILE]: "---\nbats: left\n---\n" });
    expect(error(season)).toEqual([`${PROFILE}:1:1 missing-key`]);
    expect(coded(season, "missing-key")[0]?.args).toEqual({ key: "name", in: "profile.md" });
  });

  test("all problems of a file come in one pass", async () => {
    const season = await seasonOf({
      [PROFILE]: "---\nbats: lefty\nborn: 2009-13-01\nshoe: 44\nlanguage: english\n---\n",
    });
    expect(error(season)).toEqual([
      `${PROFILE}:1:1 missing-key`,
      `${PROFILE}:2:7 wrong-value`,
      `${PROFILE}:3:7 wrong-value`,
      `${PROFILE}:4:1 unknown-key`,
      `${PROFILE}:5:11 wrong-value`,
    ]);
  });

  test("a closed word comes with its list and the nearest word", async () => {
    const season = await seasonOf({ [PROFILE]: profile("bats: lefty", "sex: femal") });
    expect(coded(season, "wrong-value").map(({ args }) => args)).toEqual([
      { key: "bats", found: "lefty", expected: "one of left, right, switch", suggestion: "left" },
      { key: "sex", found: "femal", expected: "one of female, male", suggestion: "female" },
    ]);
  });

  test("a key left blank is nothing, and said so", async () => {
    const season = await seasonOf({ [PROFILE]: profile("level:") });
    expect(coded(season, "wrong-value")[0]?.args).toEqual({ key: "level", found: "nothing", expected: "text" });
  });

  test("a number where a name is meant is not bent into text", async () => {
    const season = await seasonOf({ [PROFILE]: profile("aliases: [Ana, 14]") });
    expect(error(season)).toEqual([`${PROFILE}:3:16 wrong-value`]);
    expect(coded(season, "wrong-value")[0]?.args).toEqual({ key: "aliases[1]", found: "14", expected: "text" });
  });

  test("YAML that cannot be read is named at its place", async () => {
    const season = await seasonOf({ [PROFILE]: profile("goals: [") });
    expect(error(season)[0]).toMatch(/^content\/athletes\/ana-l\/profile.md:\d:\d+ unreadable-yaml$/);
    const twice = await seasonOf({ [PROFILE]: profile("bats: left", "bats: right") });
    expect(error(twice)).toEqual([`${PROFILE}:4:1 unreadable-yaml`]);
  });

  test("aliases that would grow without end are refused", async () => {
    const bomb = ["a: &a [x, x, x, x, x, x]", "b: &b [*a, *a, *a, *a, *a, *a]", "c: [*b, *b, *b, *b, *b, *b]"];
    const season = await seasonOf({ [PROFILE]: profile(...bomb) });
    expect(coded(season, "unreadable-yaml")).toHaveLength(1);
  });

  test("a page without front matter is refused where keys are needed, and read where none is", async () => {
    const season = await seasonOf({
      [PROFILE]: "Just words\n",
      "content/athletes/ben-k/profile.md": "---\nname: Ben\n---\n",
      "content/athletes/ben-k/closing.md": "Well done.\n",
    });
    expect(error(season)).toEqual([`${PROFILE}:1:1 no-front-matter`]);
    expect(season.athletes[0]?.closings).toEqual([
      { file: "content/athletes/ben-k/closing.md", front: {}, body: "Well done.\n", bodyLine: 1, language: null },
    ]);
  });

  test("a page that is not UTF-8 is refused", async () => {
    const season = await seasonOf({ [PROFILE]: Buffer.from("---\nname: Mu\xf1oz\n---\n", "latin1") });
    expect(error(season)).toEqual([`${PROFILE}:-:- not-utf-8`]);
  });
});

describe("values that may take several shapes", () => {
  const goal = (text: string) =>
    seasonOf({ [PROFILE]: profile("goals:", `  - { metric: bat_speed, by: 2026-02-20, ${text} }`) });

  test("a goal with a wrong target is measured against goals with a target", async () => {
    const season = await goal("target: fast");
    expect(error(season)).toEqual([`${PROFILE}:4:50 wrong-value`]);
    expect(coded(season, "wrong-value")[0]?.args).toEqual({
      key: "goals[0].target",
      found: "fast",
      expected: "a number",
    });
  });

  test("a window without its share misses the share alone", async () => {
    const season = await goal("window: [4, 11]");
    expect(coded(season, "missing-key").map(({ args }) => args.key)).toEqual(["goals[0].share"]);
    expect(error(season)).toEqual([`${PROFILE}:4:5 missing-key`]);
  });

  test("a window upside down says which way it goes", async () => {
    const season = await goal("window: [11, 4], share: 0.5");
    expect(coded(season, "wrong-value")[0]?.args).toEqual({
      key: "goals[0].window",
      found: "[11, 4]",
      expected: "the first number must be below the second",
    });
  });

  test("a misspelt key inside a goal gets its suggestion", async () => {
    const season = await goal("targt: 72");
    expect(error(season)).toEqual([`${PROFILE}:4:42 unknown-key`]);
    expect(coded(season, "unknown-key")[0]?.args).toEqual({
      key: "goals[0].targt",
      in: "profile.md",
      suggestion: "target",
    });
  });

  const goals = (...lines: string[]) =>
    seasonOf({
      "content/metrics.md": "---\nzones: [{ id: lines, label: Lines, launch_angle: [8, 20] }]\n---\n",
      [PROFILE]: profile("goals:", ...lines.map((line) => `  - { by: 2026-02-20, ${line} }`)),
    });

  test("a goal names a zone in place of a metric", async () => {
    const season = await goals("zone: lines, share: 0.4, set: 2025-10-06, condition: { environment: tee }");
    expect(season.problems).toEqual([]);
    expect(season.athletes[0]?.profile.goals).toEqual([
      { zone: "lines", share: 0.4, by: "2026-02-20", set: "2025-10-06", condition: { environment: "tee" } },
    ]);
  });

  test("a zone without its share misses the share; with a metric too, the metric is too much", async () => {
    const without = await goals("zone: lines");
    expect(coded(without, "missing-key").map(({ args }) => args.key)).toEqual(["goals[0].share"]);
    const both = await goals("zone: lines, share: 0.4, metric: launch_angle");
    expect(coded(both, "unknown-key").map(({ args }) => args.key)).toEqual(["goals[0].metric"]);
  });

  test("two goals that ask for the same are told apart by the day they were set; without it both places are named", async () => {
    const target = (value: number, set: string) => `metric: bat_speed, target: ${value}${set}`;
    expect((await goals(target(62, ", set: 2025-10-06"), target(64, ", set: 2025-12-01"))).problems).toEqual([]);
    expect((await goals(target(62, ""), target(64, ", set: 2025-12-01"))).problems).toEqual([]);
    expect((await goals(target(62, ""), "metric: bat_speed, at_least: 64, share: 0.5")).problems).toEqual([]);
    const same = await goals(
      target(62, ", set: 2025-10-06"),
      "zone: lines, share: 0.4",
      target(64, ", set: 2025-10-06"),
    );
    expect(same.problems).toEqual([
      {
        code: "repeated-goal",
        level: "note",
        at: { file: PROFILE, line: 6, column: 5 },
        args: { set: "2025-10-06", other: `${PROFILE}:4` },
        athlete: null,
      },
    ]);
    expect(same.leftOut).toEqual([]);
    const undated = await goals("zone: lines, share: 0.4", "zone: lines, share: 0.5");
    expect(undated.problems.map(({ code, args }) => [code, args.set])).toEqual([["repeated-goal", ""]]);
  });

  test("a height needs inches or centimetres", async () => {
    const season = await seasonOf({ [PROFILE]: profile("heights: [{ date: 2025-10-06, in: tall }]") });
    expect(coded(season, "wrong-value")[0]?.args).toEqual({
      key: "heights[0].in",
      found: "tall",
      expected: "a number",
    });
  });

  test("a gate's parts are one word or several, and anything else names both", async () => {
    const season = await seasonOf({ [PROFILE]: profile("gates: [{ applies: { environment: 3 }, at_least: 60 }]") });
    expect(coded(season, "wrong-value")[0]?.args).toEqual({
      key: "gates[0].applies.environment",
      found: "3",
      expected: "text, or a list",
    });
  });
});

describe("what a faulty file costs", () => {
  test("an athlete whose profile cannot be used is left out, everybody else stands", async () => {
    const season = await seasonOf({
      [PROFILE]: profile("bats: lefty"),
      "content/athletes/ben-k/profile.md": "---\nname: Ben\n---\n",
    });
    expect(season.leftOut).toEqual(["ana-l"]);
    expect(season.athletes.map(({ id }) => id)).toEqual(["ben-k"]);
  });

  test("a note that cannot be used keeps its athlete from being published without it", async () => {
    const season = await seasonOf({
      "content/athletes/ana-l/notes/one.md": "---\ndate: 2025-11-31\nauthor: coach-k\nkind: words\n---\n",
    });
    expect(season.leftOut).toEqual(["ana-l"]);
    expect(error(season)).toEqual(["content/athletes/ana-l/notes/one.md:2:7 wrong-value"]);
  });

  test("without a usable facility.md there is no season, and every other problem is named too", async () => {
    const files = { [FACILITY]: "---\nname: Barn\nseson: {}\n---\n", [PROFILE]: profile("bats: lefty") };
    await expect(seasonOf(files)).rejects.toMatchObject({
      name: "SeasonUnreadable",
      problems: [
        { code: "wrong-value", athlete: "ana-l" },
        {
          code: "unknown-key",
          args: { key: "seson", in: "facility.md", suggestion: "season" },
          athlete: null,
          at: { line: 3, column: 1 },
        },
      ],
    });
    await expect(seasonOf({ [FACILITY]: null })).rejects.toMatchObject({
      problems: [{ code: "missing-file", args: { file: FACILITY } }],
    });
  });

  test("a season that ends before it starts is no season", async () => {
    const text = String(BASE[FACILITY]).replace("end: 2026-02-22", "end: 2025-02-22");
    await expect(seasonOf({ [FACILITY]: text })).rejects.toMatchObject({
      problems: [
        { code: "wrong-value", args: { key: "season.end", found: "2025-02-22" }, at: { line: 3, column: 49 } },
      ],
    });
  });

  test("a facility without measures works, and is told so", async () => {
    const season = await seasonOf({
      [FACILITY]: String(BASE[FACILITY]).replace("measures: [{ metric: bat_speed }]\n", ""),
    });
    expect(season.problems.map(placed)).toEqual([`${FACILITY}:1:1 no-measures`]);
  });
});
