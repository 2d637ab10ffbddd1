import { describe, expect, test } from "vitest";
import { placed, seasonOf } from "./season-of.ts";

const FILE = "data/reference/league.csv";
const HEADER =
  "metric,unit,point_on_bat,environment,implement,sport,sex,level,age_lo,age_hi,kind,value,l,m,s,mean,sd,n,source,year";

/** What comes of some rows, each given by the cells that are filled. */
async function rowsOf(...rows: readonly Readonly<Record<string, string>>[]) {
  const usual = { metric: "bat_speed", unit: "mph", sport: "baseball", sex: "male", level: "college", kind: "value" };
  const columns = HEADER.split(",");
  const lines = rows.map((row) => columns.map((column) => ({ ...usual, ...row })[column] ?? "").join(","));
  const season = await seasonOf({ [FILE]: `${[HEADER, ...lines].join("\n")}\n` });
  const found = season.problems.map((p) => [placed(p).replace(`${FILE}:`, ""), p.level, p.args]);
  return { reference: season.reference, found };
}

describe("a reference row", () => {
  test("is read in the metric's unit, a spread as a difference, with its place", async () => {
    const { reference, found } = await rowsOf(
      { value: "100", unit: "kmh", point_on_bat: "tip", environment: "tee", implement: "game", age_lo: "16.5" },
      { kind: "lms", l: "-0.4", m: "160.9344", s: "0.08", unit: "kmh", source: "Table A", n: "200", year: "2019" },
      { kind: "mean-sd", mean: "30", sd: "2", unit: "m/s", source: "Paper B" },
      { kind: "line", mean: "70", source: "Paper C" },
      { kind: "line", value: "71", source: "Paper D", sport: "softball", sex: "female" },
    );
    expect(found).toEqual([]);
    const at = (line: number) => ({ file: FILE, line });
    const nothing = { metric: "bat_speed", pointOnBat: null, environment: null, implement: null, ages: [null, null] };
    const who = { sport: "baseball", sex: "male", level: "college", year: null, n: null };
    expect(reference).toEqual([
      {
        ...{ ...nothing, ...who, pointOnBat: "tip", environment: "tee", implement: "game", ages: [16.5, null] },
        ...{ kind: "value", value: 62.137119224, n: 1, source: "league", at: at(2) },
      },
      {
        ...{ ...nothing, ...who, kind: "lms", l: -0.4, m: 100, s: 0.08 },
        ...{ n: 200, source: "Table A", year: 2019, at: at(3) },
      },
      {
        ...{
          ...nothing,
          ...who,
          kind: "mean-sd",
          mean: expect.closeTo(30 / 0.44704, 8),
          sd: expect.closeTo(2 / 0.44704, 8),
        },
        ...{ source: "Paper B", at: at(4) },
      },
      { ...nothing, ...who, kind: "line", value: 70, source: "Paper C", at: at(5) },
      { ...nothing, ...who, kind: "line", value: 71, source: "Paper D", sport: "softball", sex: "female", at: at(6) },
    ]);
  });

  test("that lacks a number of its kind is left out, with the cell that is blank", async () => {
    const { reference, found } = await rowsOf(
      { mean: "60" },
      { kind: "lms", m: "60", source: "A" },
      { kind: "mean-sd", mean: "60", source: "A" },
      { kind: "line", source: "A" },
      { value: "61" },
    );
    expect(reference.map(({ at }) => at.line)).toEqual([6]);
    const missing = (place: string, key: string) => [`${place} missing-key`, "row", { key, in: "league.csv" }];
    expect(found).toEqual([
      missing("2:12", "value"),
      missing("3:13", "l"),
      missing("3:15", "s"),
      missing("4:17", "sd"),
      missing("5:12", "value"),
    ]);
  });

  test("of a metric or unit that is not known is left out, and the nearest is named", async () => {
    const { reference, found } = await rowsOf(
      { metric: "bat_sped", value: "61" },
      { unit: "mh", value: "61" },
      { unit: "deg", value: "61" },
    );
    expect(reference).toEqual([]);
    const units = "one of mph, kmh, km/h, mps, m/s, fps";
    expect(found).toEqual([
      ["2:1 not-in-list", "row", { key: "metric", found: "bat_sped", list: "metrics", suggestion: "bat_speed" }],
      ["3:2 wrong-value", "row", { key: "unit", found: "mh", expected: units, suggestion: "mph" }],
      ["4:2 wrong-value", "row", { key: "unit", found: "deg", expected: units }],
    ]);
  });

  test("that nobody could be held against, or that nobody could look up, is left out", async () => {
    const { reference, found } = await rowsOf(
      { value: "61", sport: "", sex: "" },
      { value: "61", level: "" },
      { kind: "mean-sd", mean: "60", sd: "4" },
      { value: "61", age_lo: "16", age_hi: "14" },
    );
    expect(reference).toEqual([]);
    expect(found.map(([place, level]) => [place, level])).toEqual([
      ["2:6 missing-key", "row"],
      ["2:7 missing-key", "row"],
      ["3:8 wrong-value", "row"],
      ["4:19 missing-key", "row"],
      ["5:10 wrong-value", "row"],
    ]);
    expect(found[4]?.[2]).toEqual({ key: "age_hi", found: 14, expected: "not below age_lo, which is 16" });
  });

  test("with a number that cannot be is left out", async () => {
    const { reference, found } = await rowsOf(
      { value: "615" },
      { kind: "lms", l: "1", m: "400", s: "0.1", source: "A" },
      { kind: "mean-sd", mean: "60", sd: "0", source: "A" },
      { kind: "lms", l: "1", m: "60", s: "-0.1", source: "A" },
      { value: "61", n: "1.5" },
      { value: "61", year: "20244" },
      { value: "61", sex: "men" },
      { value: "61,5" },
    );
    expect(reference).toEqual([]);
    expect(found.map(([place, level]) => `${place} ${level}`)).toEqual([
      "2:12 out-of-range row",
      "3:14 out-of-range row",
      "4:17 wrong-value row",
      "5:15 wrong-value row",
      "6:18 wrong-value row",
      "7:20 wrong-value row",
      "8:7 wrong-value row",
      "9:- unreadable-row row",
    ]);
    expect(found[0]?.[2]).toEqual({ field: "value", value: "615 mph", lo: 15, hi: 110, unit: "mph" });
  });

  test("of an environment or a bat that nobody described stands, and is remarked on once", async () => {
    const { reference, found } = await rowsOf({ value: "61", environment: "tea" }, { value: "62", environment: "tea" });
    expect(reference).toHaveLength(2);
    expect(found).toEqual([
      ["2:4 not-in-list", "note", { key: "environment", found: "tea", list: "environments", suggestion: "tee" }],
    ]);
  });
});

describe("reference files", () => {
  test("are read from every csv of the folder, in order; a file's name stands for a source", async () => {
    const head = "metric,unit,sport,sex,level,kind,value\n";
    const season = await seasonOf({
      "data/reference/b.csv": `${head}bat_speed,mph,baseball,male,college,value,70\n`,
      "data/reference/2024/a.csv": `${head}bat_speed,mph,baseball,male,college,value,71\n`,
    });
    expect(season.problems).toEqual([]);
    expect(season.reference.map(({ source, at }) => [source, at.file])).toEqual([
      ["a", "data/reference/2024/a.csv"],
      ["b", "data/reference/b.csv"],
    ]);
  });

  test("of a trainer's own metric are in its unit", async () => {
    const season = await seasonOf({
      "content/metrics.md":
        "---\nmetrics:\n  - { id: grip, label: Grip, unit: N, better: higher, plausible: [0, 900], decimals: 0 }\n---\n",
      "data/reference/a.csv": "metric,unit,sport,sex,level,kind,value\ngrip,N,baseball,male,college,value,420\n",
    });
    expect(season.problems).toEqual([]);
    expect(season.reference[0]).toMatchObject({ metric: "grip", value: 420 });
  });

  test("with an L, M, S in degrees of another zero are refused: S is a share of M", async () => {
    const season = await seasonOf({
      "content/metrics.md":
        "---\nmetrics:\n  - { id: skin, label: Skin, unit: degF, better: window, plausible: [0, 120], decimals: 1 }\n---\n",
      "data/reference/a.csv":
        "metric,unit,sport,sex,level,kind,l,m,s,mean,sd,source\nskin,degC,baseball,male,college,lms,1,30,0.1,,,A\nskin,degC,baseball,male,college,mean-sd,,,,30,1,A\n",
    });
    expect(season.problems.map(placed)).toEqual(["data/reference/a.csv:2:2 wrong-value"]);
    expect(season.reference[0]).toMatchObject({ mean: 86, sd: expect.closeTo(1.8, 8) });
  });
});

describe("settings of metrics that every season knows", () => {
  const metrics = (...entries: readonly string[]) => ({
    "content/metrics.md": `---\nmetrics:\n${entries.map((entry) => `  - ${entry}\n`).join("")}---\n`,
  });

  test("are merged, and leave the rest of the metric as it is", async () => {
    const season = await seasonOf(
      metrics(
        "{ id: attack_angle, window: [6, 14] }",
        "{ id: bat_speed, typical_error: 0.9, smallest_worthwhile: 1.5 }",
        "{ id: grip, label: Grip, unit: N, better: higher, plausible: [0, 900], decimals: 0, typical_error: 12 }",
      ),
    );
    expect(season.problems).toEqual([]);
    const of = (id: string) => season.metrics.filter((metric) => metric.id === id);
    expect(of("attack_angle")).toEqual([
      expect.objectContaining({ unit: "deg", better: "window", plausible: [-45, 60], side: "bat", window: [6, 14] }),
    ]);
    expect(of("bat_speed")).toEqual([
      expect.objectContaining({ unit: "mph", side: "bat", typicalError: 0.9, smallestWorthwhile: 1.5 }),
    ]);
    expect(of("grip")).toEqual([expect.objectContaining({ side: "own", typicalError: 12 })]);
    expect(season.metrics[0]?.id).toBe("bat_speed");
    expect(season.metrics.at(-1)?.id).toBe("grip");
  });

  test("do not make a built-in metric another one", async () => {
    const whole = "label: Speed, unit: kmh, better: higher, plausible: [0, 200], decimals: 1";
    const redefined = await seasonOf(metrics(`{ id: bat_speed, ${whole} }`));
    expect(redefined.problems.map((p) => [placed(p), p.args])).toEqual([
      ["content/metrics.md:3:11 repeated-id", { key: "metrics[0].id", found: "bat_speed" }],
    ]);
    const partly = await seasonOf(metrics("{ id: bat_speed, unit: kmh, typical_error: 2 }"));
    expect(partly.problems.map(placed)).toEqual(["content/metrics.md:3:22 unknown-key"]);
    const twice = await seasonOf(metrics("{ id: bat_speed, window: [1, 2] }", "{ id: bat_speed, window: [1, 3] }"));
    expect(twice.problems.map(placed)).toEqual(["content/metrics.md:4:11 repeated-id"]);
  });

  test("are checked, and an own metric that is not finished is told what it lacks", async () => {
    const found = async (entry: string) =>
      (await seasonOf(metrics(entry))).problems.map(({ code, args }) => [code, args.key, args.suggestion]);
    expect(await found("{ id: bat_speed, window: [9, 2] }")).toEqual([["wrong-value", "metrics[0].window", undefined]]);
    expect(await found("{ id: bat_speed, typical_eror: 1 }")).toEqual([
      ["unknown-key", "metrics[0].typical_eror", "typical_error"],
    ]);
    expect(await found("{ id: bat_speed, typical_error: -1 }")).toEqual([
      ["wrong-value", "metrics[0].typical_error", undefined],
    ]);
    expect((await found("{ id: grip, label: Grip }")).map(([code, key]) => [code, key])).toEqual([
      ["missing-key", "metrics[0].unit"],
      ["missing-key", "metrics[0].better"],
      ["missing-key", "metrics[0].plausible"],
      ["missing-key", "metrics[0].decimals"],
    ]);
    expect(await found("7")).toEqual([["wrong-value", "metrics[0]", undefined]]);
  });
});
