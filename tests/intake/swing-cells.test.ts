import { describe, expect, test } from "vitest";
import { asideOf, BASE, balance, coded, placed, seasonOf } from "./season-of.ts";

const FILE = "data/swings/a.csv";
const read = (csv: string, others: Record<string, string> = {}) => seasonOf({ [FILE]: csv, ...others });
/** One row under a header of athlete, date and the column in question. */
const cell = async (header: string, value: string, others: Record<string, string> = {}) => {
  const speed = header.startsWith("bat_speed") ? "" : ",bat_speed_mph";
  const season = await read(
    `athlete_id,date,${header}${speed}\nana-l,2025-10-06,${value}${speed && ",61.5"}\n`,
    others,
  );
  const reps = season.athletes[0]?.reps;
  const field = header.replace(/_(mph|kmh|mps|ft|m|deg|rad|s|ms|rpm|in|cm)$/, "");
  return {
    value: reps?.numbers[field]?.[0] ?? reps?.words[field]?.[0] ?? null,
    n: reps?.n,
    aside: season.setAside.map(asideOf),
    rows: season.setAside,
    problems: season.problems,
  };
};

describe("cells", () => {
  test("a row becomes a rep in typed columns", async () => {
    const season = await read(
      "date,athlete_id,environment,round,bat_speed_mph,comment\n2025-10-06, ana-l ,tee,2,61.5, late \n",
    );
    expect(season.athletes[0]?.reps).toEqual({
      n: 1,
      date: ["2025-10-06"],
      day: [Date.UTC(2025, 9, 6)],
      file: [0],
      line: [2],
      partner: [null],
      numbers: { round: [2], bat_speed: [61.5] },
      words: { environment: ["tee"], comment: ["late"] },
    });
    expect(season.swingFiles).toEqual([{ file: FILE, rows: 1 }]);
  });

  test("a blank cell is absent, never 0", async () => {
    const season = await read(
      "athlete_id,date,side,exit_velocity_mph,bat_speed_mph\nana-l,2025-10-06,, ,61\nana-l,2025-10-06,left,0.0,61\n",
    );
    const reps = season.athletes[0]?.reps;
    expect(reps?.numbers.exit_velocity).toEqual([null]);
    expect(reps?.words.side).toEqual([null]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:3:4 out-of-range`]);
  });

  test("0 is a value where 0 can be", async () => {
    expect((await cell("launch_angle_deg", "0")).value).toBe(0);
    expect((await cell("launch_angle_deg", "")).value).toBe(null);
  });

  test.each(["61,5", "fast", "61.5 mph", "1e2", "0x3d", "Infinity", "NaN", "--61", "61.5.1", "1 000"])(
    "%s is no bat speed",
    async (text) => {
      const { aside, rows } = await cell("bat_speed_mph", `"${text}"`);
      expect(aside).toEqual([`${FILE}:2:3 unreadable-number`]);
      expect(rows[0]).toMatchObject({ field: "bat_speed_mph", value: text, athlete: "ana-l" });
    },
  );

  test("a decimal comma is set aside and shown with a point", async () => {
    const { problems } = await cell("bat_speed_mph", '"61,5"');
    expect(problems).toEqual([
      {
        code: "unreadable-number",
        level: "row",
        at: { file: FILE, line: 2, column: 3 },
        args: { field: "bat_speed_mph", value: "61,5", suggestion: "61.5" },
        athlete: null,
      },
    ]);
  });

  test.each([
    ["bat_speed_mph", "14.9", "15", "110", "110.1"],
    ["attack_angle_deg", "-45.1", "-45", "60", "60.1"],
    ["swing_time_s", "0.079", "0.08", "0.5", "0.501"],
    ["exit_velocity_mph", "9.9", "10", "130", "130.1"],
    ["launch_angle_deg", "-90.1", "-90", "90", "90.1"],
    ["spray_angle_deg", "-180.1", "-180", "180", "180.1"],
    ["distance_ft", "-1", "0", "550", "551"],
    ["hit_spin_rpm", "-1", "0", "8000", "8001"],
  ])("%s is plausible with both ends of its range", async (header, under, lo, hi, over) => {
    for (const text of [lo, hi]) expect(await cell(header, text)).toMatchObject({ value: Number(text), aside: [] });
    for (const text of [under, over]) expect((await cell(header, text)).aside).toEqual([`${FILE}:2:3 out-of-range`]);
  });

  test("what is out of range says what would be in it", async () => {
    const { problems } = await cell("bat_speed_mph", "615");
    expect(problems[0]?.args).toEqual({ field: "bat_speed_mph", value: "615", lo: 15, hi: 110, unit: "mph" });
  });

  test.each(["13/02/26", "2025-02-29", "2025-13-01", "2025-1-5", "06.10.2025", "", "2025-10-06T17:00", "20251006"])(
    "%s is no day",
    async (text) => {
      const season = await read(`athlete_id,date,bat_speed_mph\nana-l,${text},61\n`);
      expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:2 unreadable-date`]);
      expect(season.setAside[0]).toMatchObject({ field: "date", value: text, athlete: "ana-l" });
    },
  );

  test("29 February is a day in leap years only (ISO 8601)", async () => {
    const season = await read("athlete_id,date,bat_speed_mph\nana-l,2024-02-29,61\nana-l,2025-02-29,61\n");
    expect(season.athletes[0]?.reps.date).toEqual(["2024-02-29"]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:3:2 unreadable-date`]);
  });

  test("a day outside the season stays: the report judges it", async () => {
    const season = await read("athlete_id,date,bat_speed_mph\nana-l,2019-07-01,61\n");
    expect(season.athletes[0]?.reps.date).toEqual(["2019-07-01"]);
  });

  test.each([
    ["17:05", true],
    ["17:05:09", true],
    ["17:05:09.250", true],
    ["00:00", true],
    ["23:59:59", true],
    ["24:00", false],
    ["7:05", false],
    ["5 pm", false],
    ["17:05:60", false],
  ])("time %s", async (text, good) => {
    const { value, aside } = await cell("time", text);
    expect(good ? value : aside).toEqual(good ? text : [`${FILE}:2:3 unreadable-date`]);
  });

  test.each([
    ["12", 12],
    ["0", 0],
    ["3.0", 3],
  ])("rep %s is a count", async (text, count) => expect((await cell("rep", text)).value).toBe(count));

  test.each([
    ["1.5", "unreadable-number"],
    ["two", "unreadable-number"],
    ["-1", "out-of-range"],
  ])("rep %s is none", async (text, reason) =>
    expect((await cell("rep", text)).aside).toEqual([`${FILE}:2:3 ${reason}`]),
  );

  test.each([
    ["12:45", null],
    ["180", null],
    ["up", "unreadable-number"],
    ["13:00", "out-of-range"],
    ["361", "out-of-range"],
  ])("spin axis %s", async (text, reason) => {
    const { value, aside } = await cell("spin_axis", text);
    if (reason === null) expect(value).toBe(text);
    else expect(aside).toEqual([`${FILE}:2:3 ${reason}`]);
  });

  test.each([
    ["side", "Left", "left"],
    ["result", "fowl", "foul"],
    ["swing_type", "chck", "check"],
    ["environment", "front toss", "front-toss"],
    ["pitch_speed_at", "relase", "release"],
    ["effort", "hard", undefined],
  ])("%s is a closed word: %s", async (header, text, suggestion) => {
    const { aside, problems } = await cell(header, text);
    expect(aside).toEqual([`${FILE}:2:3 unknown-id`]);
    expect(problems[0]?.args.suggestion).toBe(suggestion);
  });

  test("a word that is none of a closed list is told which there are, one of an open list where to add it", async () => {
    expect((await cell("side", "both")).problems[0]?.args).toEqual({
      field: "side",
      value: "both",
      allowed: "left or right",
    });
    expect((await cell("environment", "pool")).problems[0]?.args).toMatchObject({ list: "environments" });
    const balls = { "data/balls.csv": "id,kind\nbb,baseball\n" };
    expect((await cell("ball", "foam", balls)).problems[0]?.args).toEqual({
      field: "ball",
      value: "foam",
      list: "balls",
    });
  });

  test("drills.md may declare an environment", async () => {
    const drills = "---\ndrills: [{ id: pad, label: Pad, environment: padded-wall }]\n---\n";
    expect((await cell("environment", "padded-wall")).aside).toHaveLength(1);
    expect((await cell("environment", "padded-wall", { "content/drills.md": drills })).value).toBe("padded-wall");
  });

  test("bats and balls are ids of their lists or roles; without a list every name stands", async () => {
    const bats = {
      "data/implements.csv": "id,role\nbb-33,game\nstub,one-hand\n",
      "data/balls.csv": "id,kind\nbb,baseball\n",
    };
    for (const name of ["bb-33", "game", "overload", "one-hand"])
      expect((await cell("implement", name, bats)).value).toBe(name);
    for (const name of ["bb", "game", "baseball"]) expect((await cell("ball", name, bats)).value).toBe(name);
    expect((await cell("implement", "bb-34", bats)).problems[0]).toMatchObject({
      code: "unknown-id",
      args: { field: "implement", value: "bb-34", suggestion: "bb-33" },
    });
    expect((await cell("ball", "sb", bats)).aside).toEqual([`${FILE}:2:3 unknown-id`]);
    expect((await cell("implement", "bb-34")).value).toBe("bb-34");
  });

  test("a drill that no library explains is remarked on once, and the rows stay", async () => {
    const drills = "---\ndrills: [{ id: low-tee, label: Low tee }]\n---\n";
    const csv = "athlete_id,date,drill,bat_speed_mph\nana-l,2025-10-06,low-te,61\nana-l,2025-10-06,low-te,62\n";
    const season = await read(csv, { "content/drills.md": drills });
    expect(season.athletes[0]?.reps.n).toBe(2);
    expect(season.problems.map((p) => [placed(p), p.level, p.args])).toEqual([
      [`${FILE}:2:3 not-in-list`, "note", { key: "drill", found: "low-te", list: "drills", suggestion: "low-tee" }],
    ]);
  });

  test("the first fault in the order of the columns decides, and the row counts once", async () => {
    const season = await read(
      "bat_speed_mph,date,athlete_id\nfast,06/10/2025,nobody\n61,06/10/2025,nobody\n61,2025-10-06,nobody\n",
    );
    expect(season.setAside.map(asideOf)).toEqual([
      `${FILE}:2:1 unreadable-number`,
      `${FILE}:3:2 unreadable-date`,
      `${FILE}:4:3 unknown-athlete`,
    ]);
  });

  test("whose row it was is known whatever else is wrong with it", async () => {
    const season = await read(
      "bat_speed_mph,date,athlete_id\nfast,2025-10-06,ana-l\n61,2025-10-06,ana-l,x\n61,2025-10-06\n",
    );
    expect(season.setAside.map(({ reason, athlete }) => [reason, athlete])).toEqual([
      ["unreadable-number", "ana-l"],
      ["unreadable-row", "ana-l"],
      ["unreadable-row", null],
    ]);
  });
});

describe("units", () => {
  // Exact: NIST Special Publication 811 (2008), appendix B.8, after the international yard and pound agreement of 1959:
  // 1 mi/h = 0.44704 m/s, 1 ft = 0.3048 m, 1 in = 2.54 cm. Values from memory of that table; each is exact by definition.
  test.each([
    ["bat_speed_mps", "31.2928", 70],
    ["exit_velocity_mps", "44.704", 100],
    ["bat_speed_kmh", "112.65408", 70],
    ["pitch_speed_kmh", "80.4672", 50],
    ["distance_m", "121.92", 400],
    ["pitch_distance_m", "18.4404", 60.5],
    ["ball_height_cm", "76.2", 30],
    ["swing_time_ms", "150", 0.15],
    ["attack_angle_rad", "0.1745329251994330", 10],
  ])("%s %s", async (header, text, canonical) => {
    const { value } = await cell(header, text);
    // Relative rounding of one multiplication and one division in binary floating point.
    expect(Math.abs(Number(value) - canonical)).toBeLessThan(1e-12 * canonical);
  });

  test("the range is that of the canonical unit", async () => {
    expect((await cell("bat_speed_kmh", "120")).aside).toEqual([]);
    expect((await cell("bat_speed_kmh", "178")).aside).toEqual([`${FILE}:2:3 out-of-range`]);
  });

  test("metrics.md adds a column, in its unit or another of the same kind", async () => {
    const metrics =
      "---\nmetrics: [{ id: hand_speed, label: Hand speed, unit: mph, better: higher, plausible: [5, 40], decimals: 1 }]\n---\n";
    const files = { "content/metrics.md": metrics };
    expect((await cell("hand_speed_mph", "22", files)).value).toBe(22);
    expect((await cell("hand_speed_kmh", "16.09344", files)).value).toBeCloseTo(10, 12);
    expect((await cell("hand_speed_mph", "41", files)).aside).toEqual([`${FILE}:2:3 out-of-range`]);
    expect((await read("athlete_id,date,hand_speed_mph\nana-l,2025-10-06,22\n", files)).athletes[0]?.reps.n).toBe(1);
  });
});

describe("athletes", () => {
  const who = async (text: string, others: Record<string, string> = {}) => {
    const season = await read(`athlete_id,date,bat_speed_mph\n${text},2025-10-06,61\n`, others);
    return season.setAside[0]?.reason ?? season.athletes.find(({ reps }) => reps.n === 1)?.id;
  };

  test.each(["ana-l", "ANA-L", "Ana Lindqvist", " a. lindqvist "])("%s is Ana", async (text) =>
    expect(await who(text)).toBe("ana-l"),
  );

  test("spaces and the width of letters tell nobody apart", async () => {
    expect(await who("Ana  Lindqvist")).toBe("ana-l");
    expect(await who("\uff21na\u00a0Lindqvist")).toBe("ana-l");
  });

  test.each(["ana", "Lindqvist", ""])("'%s' is nobody", async (text) => {
    expect(await who(text)).toBe("unknown-athlete");
  });

  test("an accent is the same letter whether it is one sign or two", async () => {
    const files = { "content/athletes/zoe-k/profile.md": "---\nname: Zo\u00eb K\n---\n" };
    expect(await who("zoe\u0308 k", files)).toBe("zoe-k");
    expect(await who("ZO\u00cb K", files)).toBe("zoe-k");
    expect(await who("Zoe K", files)).toBe("unknown-athlete");
  });

  test("a name of two athletes is nobody's, and shown before any row has it", async () => {
    const files = { "content/athletes/ana-b/profile.md": "---\nname: Ana B\naliases: [A. Lindqvist]\n---\n" };
    expect(await who("A. Lindqvist", files)).toBe("ambiguous-name");
    const season = await read("athlete_id,date,bat_speed_mph\nA. Lindqvist,2025-10-06,61\n", files);
    expect(coded(season, "shared-name").map((p) => [placed(p), p.args])).toEqual([
      ["content/athletes/ana-l/profile.md:3:11 shared-name", { name: "A. Lindqvist", athletes: "ana-b, ana-l" }],
    ]);
    expect(coded(season, "ambiguous-name")[0]?.args).toMatchObject({ athletes: "ana-b, ana-l" });
  });

  test("a slip in a name gets the id that was meant", async () => {
    const season = await read("athlete_id,date,bat_speed_mph\nAna Lindquist,2025-10-06,61\n");
    expect(coded(season, "unknown-athlete")[0]?.args).toEqual({
      field: "athlete_id",
      value: "Ana Lindquist",
      suggestion: "ana-l",
    });
  });

  test("rows of an athlete who is left out are accounted for, by id, and said once", async () => {
    const files = { "content/athletes/ben-k/profile.md": "---\nname: Ben\naliases: ['14']\nbats: lefty\n---\n" };
    const season = await read(
      "athlete_id,date,bat_speed_mph\n14,2025-10-06,61\nben-k,2025-10-06,62\nana-l,2025-10-06,63\n",
      files,
    );
    expect(season.setAside.map((row) => [asideOf(row), row.athlete])).toEqual([
      [`${FILE}:2:- unknown-athlete`, "ben-k"],
      [`${FILE}:3:- unknown-athlete`, "ben-k"],
    ]);
    expect(coded(season, "rows-of-left-out").map(({ args }) => args)).toEqual([{ athlete: "ben-k", rows: 2 }]);
    expect(coded(season, "unknown-athlete")).toEqual([]);
    expect(balance(season)).toEqual({ read: 3, kept: 1, setAside: 2 });
  });
});

describe("headers", () => {
  const header = async (line: string) => {
    const season = await read(`${line}\n${line.replaceAll(/[^,;\t]+/g, "1")}\n`);
    return { found: season.problems.map((p) => [placed(p).replace(`${FILE}:`, ""), p.level, p.args]), season };
  };

  test("an unknown column is kept out and listed", async () => {
    const season = await read("athlete_id,date,bat_speed_mph,exit_velo_mph,mood\nana-l,2025-10-06,61,88,good\n");
    expect(season.athletes[0]?.reps.n).toBe(1);
    expect(Object.keys(season.athletes[0]?.reps.words ?? {})).toEqual([]);
    expect(season.problems.map((p) => [placed(p), p.level, p.args])).toEqual([
      [`${FILE}:1:4 unknown-column`, "note", { column: "exit_velo_mph" }],
      [`${FILE}:1:5 unknown-column`, "note", { column: "mood" }],
    ]);
    expect(season.problems.length).toBe(2);
  });

  test("a misspelt column gets its suggestion", async () => {
    const { found } = await header("athlete_id,date,bat_speed_mph,launch_angel_deg");
    expect(found[0]).toEqual([
      "1:4 unknown-column",
      "note",
      { column: "launch_angel_deg", suggestion: "launch_angle_deg" },
    ]);
  });

  test("is read in whatever case it is written, and that is remarked on once", async () => {
    const season = await read("Athlete_ID,DATE,Bat_Speed_MPH\nana-l,2025-10-06,61.5\n");
    expect(season.problems.map((p) => [placed(p), p.level, p.args])).toEqual([
      [`${FILE}:1:1 other-case`, "note", { column: "Athlete_ID", meant: "athlete_id", columns: 3 }],
    ]);
    expect(season.setAside).toEqual([]);
    expect(season.athletes[0]?.reps.numbers).toEqual({ bat_speed: [61.5] });
  });

  test("in two cases at once is read in ours alone, and in neither where both are another's", async () => {
    const ours = await header("athlete_id,date,bat_speed_mph,Bat_Speed_mph");
    expect(ours.found.map(([where]) => where)).toEqual(["1:4 unknown-column", "2:1 unknown-athlete"]);
    const neither = await header("athlete_id,date,Bat_speed_mph,Bat_Speed_mph");
    expect(neither.found.map(([where]) => where)).toContain("1:- no-measured-column");
  });

  test("without a required column no row can be read, and every row is accounted for", async () => {
    const { found, season } = await header("athlet_id,mood");
    expect(found).toEqual([
      ["1:- missing-column", "error", { column: "athlete_id", suggestion: "athlet_id" }],
      ["1:- missing-column", "error", { column: "date" }],
      ["1:- no-measured-column", "error", {}],
      ["1:1 unknown-column", "note", { column: "athlet_id", suggestion: "athlete_id" }],
      ["1:2 unknown-column", "note", { column: "mood" }],
    ]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:- unreadable-row`]);
  });

  test("two columns for one field cannot both be right", async () => {
    const { found, season } = await header("athlete_id,date,bat_speed_mph,bat_speed_kmh");
    expect(found).toEqual([["1:4 repeated-column", "error", { column: "bat_speed_kmh", other: "bat_speed_mph" }]]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:- unreadable-row`]);
  });

  test.each([";", "\t", "|"])("our own columns cut by %j are read, decimal commas among them", async (mark) => {
    const rows = ["athlete_id,date,bat_speed_mph,hit_spin_rpm", "ana-l,2025-10-06,61#5,2#150", "ana-l,2025-10-06,62,"];
    const text = rows.join("\n").replaceAll(",", mark);
    for (const decimal of [".", ","]) {
      const season = await read(text.replaceAll("#", decimal));
      expect(season.problems).toEqual([]);
      expect(season.athletes[0]?.reps.numbers).toEqual({ bat_speed: [61.5, 62], hit_spin: [2.15, null] });
    }
  });

  test("a comma that may stand for thousands is no decimal comma", async () => {
    const season = await read("athlete_id;date;hit_spin_rpm\nana-l;2025-10-06;2,150\n");
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:3 unreadable-number`]);
  });

  test("a table cut by another mark that is not ours as a whole is told so", async () => {
    expect((await header("athlete_id;bat_speed_mph;mood")).found).toEqual([
      ["1:- wrong-delimiter", "error", { delimiter: ";" }],
    ]);
    expect((await header("date\tbat_speed_mph\tmood")).found).toEqual([
      ["1:- wrong-delimiter", "error", { delimiter: "tab" }],
    ]);
  });

  test("an empty file and a bare header hold no rows", async () => {
    for (const text of ["", "\n\n", "athlete_id,date,bat_speed_mph\n"]) {
      const season = await read(text);
      expect(season.problems.map((p) => [p.code, p.level])).toEqual([["empty-file", "note"]]);
      expect(season.swingFiles).toEqual([{ file: FILE, rows: 0 }]);
    }
  });

  test("a file in an encoding that nothing proves is set aside as a whole, rows counted", async () => {
    const text = "athlete_id,date,bat_speed_mph,comment\nana-l,2025-10-06,61,se\u00f1or\nana-l,2025-10-06,62,\n";
    const season = await seasonOf({ [FILE]: Buffer.from(text, "latin1") });
    expect(season.problems.map((p) => [placed(p), p.level])).toEqual([[`${FILE}:-:- not-utf-8`, "error"]]);
    expect(season.setAside.map(asideOf)).toEqual([`${FILE}:2:- unreadable-row`, `${FILE}:3:- unreadable-row`]);
  });

  test("UTF-16 is read, with a byte order mark and without", async () => {
    const text = "athlete_id,date,bat_speed_mph,comment\nana-l,2025-10-06,61,se\u00f1or\nana-l,2025-10-06,62,\n";
    const little = Buffer.from(text, "utf16le");
    const big = Buffer.from(little).swap16();
    for (const bytes of [
      little,
      big,
      Buffer.concat([Buffer.from([0xff, 0xfe]), little]),
      Buffer.concat([Buffer.from([0xfe, 0xff]), big]),
    ]) {
      const season = await seasonOf({ [FILE]: bytes });
      expect(season.problems).toEqual([]);
      expect(season.athletes[0]?.reps.words.comment).toEqual(["se\u00f1or", null]);
      expect(season.athletes[0]?.reps.line).toEqual([2, 3]);
    }
  });

  test("files are read from sub-folders in order of name", async () => {
    const csv = "athlete_id,date,bat_speed_mph\nana-l,2025-10-06,6";
    const season = await seasonOf({ "data/swings/b/1.csv": `${csv}1\n`, "data/swings/a.CSV": `${csv}2\n` }, BASE);
    expect(season.swingFiles.map(({ file }) => file)).toEqual(["data/swings/a.CSV", "data/swings/b/1.csv"]);
    expect(season.athletes[0]?.reps.numbers.bat_speed).toEqual([62, 61]);
    expect(season.athletes[0]?.reps.file).toEqual([0, 1]);
  });
});
