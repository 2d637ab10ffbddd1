import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { headerName, unitOf } from "../../../src/intake/guess/header-name.ts";
import { type Answers, NO_ANSWERS, propose } from "../../../src/intake/guess/propose.ts";
import { CANONICAL_HEADER, SWING_COLUMNS } from "../../../src/schema/columns.ts";
import { SURROUNDINGS } from "./surroundings.ts";

type Cells = readonly string[];
const table = (columns: Readonly<Record<string, Cells>>, units: Readonly<Record<string, string>> = {}) => {
  const names = Object.keys(columns);
  const length = Math.max(...Object.values(columns).map((cells) => cells.length));
  const rows = Array.from({ length }, (_, row) => names.map((name) => columns[name]?.[row] ?? ""));
  return { names, units: names.map((name) => unitOf(units[name] ?? "")), rows };
};
const of = (columns: Readonly<Record<string, Cells>>, answers: Partial<Answers> = {}, units = {}) =>
  propose(table(columns, units), { ...NO_ANSWERS, ...answers }, SURROUNDINGS);
const about = (name: string, cells: Cells, units = {}) => {
  const proposal = of({ [name]: cells }, {}, units);
  return { ...proposal.columns[0], questions: proposal.questions.filter(({ kind }) => kind !== "missing") };
};
const codes = (reasons: readonly { readonly code: string }[] = []) => reasons.map(({ code }) => code);

const SPEEDS = ["66.2", "68.1", "71.9", "70.4"];
const ANGLES = ["-4.1", "12.3", "25.0", "8.8"];

describe("words and unit of a header's name", () => {
  test.each([
    ["Exit Velo (mph)", ["exit", "velo"], "mph"],
    ["ExitVelocity", ["exit", "velocity"], null],
    ["bat_speed_kmh", ["bat", "speed"], "km/h"],
    ["Barrel m/s", ["barrel"], "m/s"],
    ["Launch Angle °", ["launch", "angle"], "deg"],
    ["Velocidad del bate [km / h]", ["velocidad", "bate"], "km/h"],
    ["Swing #", ["swing", "#"], null],
    ["Time to contact (ms)", ["time", "to", "contact"], "ms"],
  ])("%s", (name, words, unit) => {
    expect(headerName(name)).toEqual({ words, unit });
  });
});

describe("a column of measurements", () => {
  test.each([
    ["Bat Speed (mph)", SPEEDS, "bat_speed", "mph"],
    ["Velocidad del bate km/h", ["105.2", "104.0", "110.9"], "bat_speed", "km/h"],
    ["Exit Velocity [mph]", ["88.1", "92.0", "71.3"], "exit_velocity", "mph"],
    ["Launch Angle", ANGLES, "launch_angle", "deg"],
    ["Ángulo de ataque", ANGLES, "attack_angle", "deg"],
    ["Spray (deg)", ANGLES, "spray_angle", "deg"],
    ["Carry (m)", ["61", "80", "75"], "distance", "m"],
    ["Time to contact (ms)", ["151", "160", "148"], "swing_time", "ms"],
  ])("%s is sure", (name, cells, field, unit) => {
    expect(about(name, cells)).toMatchObject({ field, unit, certainty: "sure", questions: [] });
  });

  test("takes its unit from a row of units, too", () => {
    expect(about("Bat Speed", ["30.1", "31.0", "29.4"], { "Bat Speed": "m/s" })).toMatchObject({
      unit: "m/s",
      certainty: "sure",
    });
  });

  test("an angle is not a speed, whatever the exit", () => {
    expect(about("Exit angle", ANGLES)).toMatchObject({ field: "launch_angle" });
    expect(about("Bat Speed", ANGLES)).toMatchObject({ field: null });
  });

  test("without a unit, numbers that fit one unit alone are likely in it, others are asked", () => {
    expect(about("Bat Speed", SPEEDS)).toMatchObject({ unit: "mph", certainty: "likely", questions: [] });
    const { certainty, questions } = about("Bat Speed", ["30.1", "31.0", "29.4"]);
    expect(certainty).toBe("unsure");
    expect(questions).toMatchObject([{ kind: "unit", units: [{ unit: "m/s" }, { unit: "mph" }, { unit: "km/h" }] }]);
    // 30 m/s over the exact 0.44704 m/s of a mph.
    const [asked] = questions;
    expect(asked?.kind === "unit" && asked.units[0]?.middle).toBeCloseTo(30.1 / 0.44704, 6);
  });

  test("a written unit is doubted when the numbers speak for another one", () => {
    const { certainty, reasons, questions } = about("Bat Speed (mph)", ["30.1", "31.0", "29.4"]);
    expect(certainty).toBe("unsure");
    expect(codes(reasons)).toContain("unit-doubt");
    expect(questions).toMatchObject([{ kind: "unit", units: [{ unit: "mph" }, { unit: "m/s" }] }]);
  });

  test("a speed of which nothing says whose is asked", () => {
    const { questions } = about("Speed (mph)", SPEEDS);
    expect(questions).toMatchObject([
      {
        kind: "column",
        options: [
          { field: "bat_speed", unit: "mph" },
          { field: "exit_velocity", unit: "mph" },
          { field: "pitch_speed", unit: "mph" },
        ],
      },
    ]);
  });

  test("an average over swings is not read", () => {
    expect(about("Avg Exit Velo (mph)", SPEEDS)).toMatchObject({ field: null, reasons: [{ code: "not-one-swing" }] });
    expect(about("Max Exit Velo (mph)", SPEEDS).questions).toMatchObject([{ kind: "column" }]);
  });

  test("a column of which no word is known is left alone, and negative numbers may be an angle", () => {
    expect(about("Temp", ["61", "62"])).toMatchObject({ field: null, questions: [] });
    expect(about("Zeta", ANGLES).questions).toMatchObject([{ kind: "column" }]);
  });

  test("decimal commas are seen, and a number that may be large is asked", () => {
    expect(of({ "Bat Speed (mph)": ["66,2", "68,15"] })).toMatchObject({ decimal: ",", questions: [{}, {}] });
    expect(of({ "Spin (rpm)": ["1,234", "2,100"] }).questions[0]).toEqual({ kind: "decimal", example: "1,234" });
  });
});

/** Days that can be read either way; what is added to them proves both ways, which is no proof. */
const MIXED = Array.from({ length: 9 }, (_, i) => `0${i + 1}/11/2025`);

describe("a column that says when", () => {
  test.each([
    [["06/10/2025", "13/10/2025"], "dd/MM/yyyy"],
    [["06/10/2025", "10/13/2025"], "MM/dd/yyyy"],
    [["6.10.25", "13.10.25"], "d.M.yy"],
    [["2025/10/06"], "yyyy/MM/dd"],
    [["6 Oct 2025", "13 Oct 2025"], "d MMM yyyy"],
    [["Oct 6, 2025"], "MMM d, yyyy"],
    [["2025-10-06"], null],
  ])("%j is a date, written %s", (cells, form) => {
    expect(about("Date", cells)).toMatchObject({ field: "date", form, certainty: "sure", questions: [] });
  });

  test.each([[["06/10/2025", "07/11/2025"]], [[...MIXED, "13/10/2025", "10/13/2025"]]])(
    "%j may begin with the day or the month: asked",
    (cells) => {
      const { certainty, questions } = about("Date", cells);
      expect(certainty).toBe("unsure");
      expect(questions).toMatchObject([{ kind: "date-order", forms: ["dd/MM/yyyy", "MM/dd/yyyy"] }]);
      expect(of({ Date: cells }, { dateForm: "MM/dd/yyyy" }).columns[0]).toMatchObject({ form: "MM/dd/yyyy" });
    },
  );

  test.each([
    [["17:05:09", "09:10:11"], null],
    [["5:05:09 PM", "11:10:11 AM"], "h:mm:ss a"],
    [["5:05PM"], "h:mma"],
    [["9:05", "17:20"], "H:mm"],
  ])("%j is a time, written %s", (cells, form) => {
    expect(about("Time", cells)).toMatchObject({ field: "time", form, certainty: "sure" });
  });

  test.each([
    [["2025-10-06T17:05:09", "2025-10-06T17:05:09Z"], null],
    [["2025-10-06 17:05:09"], "yyyy-MM-dd HH:mm:ss"],
    [["13/10/2025 5:05 PM"], "dd/MM/yyyy h:mm a"],
  ])("%j is both in one cell, written %s", (cells, form) => {
    expect(about("Date", cells)).toMatchObject({ field: "date_time", form, certainty: "sure" });
  });

  test("swing time is no time of day", () => {
    const { columns } = of({ Time: ["17:05"], "Swing time (s)": ["0.151", "0.160"] });
    expect(columns.map(({ field }) => field)).toEqual(["time", "swing_time"]);
  });

  // The parts that could be a month in either place: nothing but a part above 12 decides.
  test("day and month are never told apart without proof", () => {
    const day = fc.record({ a: fc.integer({ min: 1, max: 31 }), b: fc.integer({ min: 1, max: 12 }) });
    fc.assert(
      fc.property(fc.array(day, { minLength: 1, maxLength: 12 }), fc.boolean(), (days, swap) => {
        const two = (n: number) => String(n).padStart(2, "0");
        const real = days.filter(({ a, b }) => a <= new Date(Date.UTC(2025, b, 0)).getUTCDate());
        fc.pre(real.length > 0);
        const cells = real.map(({ a, b }) => (swap ? `${two(b)}/${two(a)}/2025` : `${two(a)}/${two(b)}/2025`));
        const { form, questions } = about("Date", cells);
        if (real.some(({ a }) => a > 12)) {
          expect(form).toBe(swap ? "MM/dd/yyyy" : "dd/MM/yyyy");
          expect(questions).toEqual([]);
        } else expect(questions).toMatchObject([{ kind: "date-order", forms: ["dd/MM/yyyy", "MM/dd/yyyy"] }]);
      }),
    );
  });
});

describe("a column of words", () => {
  test("is translated by words of the trade, and a word nobody knows is asked", () => {
    expect(about("Side", ["L", "R", "zurdo"])).toMatchObject({
      field: "side",
      words: { L: "left", R: "right", zurdo: "left" },
      certainty: "sure",
    });
    const { questions } = about("Outcome", ["In play", "wobble"]);
    expect(questions).toMatchObject([{ kind: "words", field: "result", words: ["wobble"] }]);
    const answered = of(
      { Outcome: ["In play", "wobble"] },
      { words: new Map([["Outcome", new Map([["wobble", "miss"]])]]) },
    );
    expect(answered.columns[0]).toMatchObject({ words: { "In play": "hit", wobble: "miss" }, certainty: "sure" });
  });

  test("names are known by their athletes, whatever the column is called", () => {
    expect(about("Col A", ["Ana Lindqvist", "benny k"])).toMatchObject({ field: "athlete_id", certainty: "likely" });
    expect(about("Hitter", ["Zed"])).toMatchObject({ field: "athlete_id", certainty: "likely" });
  });

  test("whole numbers that rise and start again are swing numbers", () => {
    expect(about("n1", ["1", "2", "3", "1", "2"])).toMatchObject({ field: "rep", certainty: "likely" });
    expect(about("n1", ["5", "9", "5"])).toMatchObject({ field: null });
  });
});

describe("what a person said", () => {
  test("goes before any guess, and a column that is ignored stays unread", () => {
    const columns = new Map([
      ["Speed", { field: "exit_velocity", unit: "km/h" }],
      ["Bat Speed", null],
    ]);
    const proposal = of(
      { Speed: ["120", "130"], "Bat Speed": SPEEDS },
      { columns, fixed: new Map([["date", "2025-10-06"]]) },
    );
    expect(proposal.columns).toMatchObject([
      { field: "exit_velocity", unit: "km/h", certainty: "sure" },
      { field: null },
    ]);
    expect(proposal.questions).toEqual([{ kind: "missing", field: "athlete_id" }]);
  });

  test("what is missing is asked: who, when, and something measured", () => {
    expect(of({ Zeta: ["x"] }).questions).toEqual(
      ["athlete_id", "date", "measured"].map((field) => ({ kind: "missing", field })),
    );
  });
});

const NAMES = [
  "Hitter",
  "Date",
  "Day",
  "Time",
  "Bat",
  "Bat Speed",
  "Speed",
  "EV",
  "Exit velo (mph)",
  "LA",
  "Side",
  "#",
  "x",
];
const anyCell = fc.oneof(
  fc.constantFrom("", "L", "hit", "ana-l", "06/10/2025", "17:05", "-4.5"),
  fc.double({ min: -40, max: 140, noNaN: true }).map((value) => value.toFixed(1)),
);
const anyTable = fc
  .uniqueArray(fc.constantFrom(...NAMES), { minLength: 1, maxLength: 8 })
  .chain((names) =>
    fc
      .array(fc.array(anyCell, { minLength: names.length, maxLength: names.length }), { minLength: 1, maxLength: 12 })
      .map((rows) => ({ names, units: names.map(() => null), rows })),
  );

describe("any table", () => {
  test("the order of its rows changes nothing", () => {
    fc.assert(
      fc.property(
        anyTable.chain((one) =>
          fc.tuple(fc.constant(one), fc.shuffledSubarray(one.rows, { minLength: one.rows.length })),
        ),
        ([one, rows]) => {
          expect(propose({ ...one, rows }, NO_ANSWERS, SURROUNDINGS)).toEqual(propose(one, NO_ANSWERS, SURROUNDINGS));
        },
      ),
    );
  });

  test("no field is given to two columns, and day and time in one cell stand beside neither", () => {
    fc.assert(
      fc.property(anyTable, (one) => {
        const fields = propose(one, NO_ANSWERS, SURROUNDINGS).columns.flatMap(({ field }) => field ?? []);
        expect(new Set(fields).size).toBe(fields.length);
        if (fields.includes("date_time")) expect(fields.filter((field) => /^(date|time)$/.test(field))).toEqual([]);
      }),
    );
  });

  test("our own columns are always recognised as what they are, in any order, whatever stands in them", () => {
    const header = fc.shuffledSubarray([...CANONICAL_HEADER], { minLength: 1 });
    const tables = header.chain((names) =>
      fc
        .array(fc.array(anyCell, { minLength: names.length, maxLength: names.length }), { minLength: 1, maxLength: 4 })
        .map((rows) => ({ names, units: names.map(() => null), rows })),
    );
    fc.assert(
      fc.property(tables, (one) => {
        const { columns } = propose(one, NO_ANSWERS, SURROUNDINGS);
        for (const { name, field } of columns) {
          const own = SWING_COLUMNS.find((column) => column.header === name);
          const when = ["date", "time", "date_time"];
          if (own && when.includes(own.field)) expect([...when, null]).toContain(field);
          else expect(field).toBe(own?.field);
        }
      }),
    );
  });
});
