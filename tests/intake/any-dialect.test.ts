import fc from "fast-check";
import { DateTime } from "luxon";
import { expect, test } from "vitest";
import type { Mapping } from "../../src/schema/mapping.ts";
import { balance, seasonOf } from "./season-of.ts";

/** One rep as it was, and how it must come back. */
interface Truth {
  readonly at: string;
  readonly speed: number | null;
  readonly launch: number | null;
  readonly side: "left" | "right" | null;
  readonly comment: string | null;
}

const signs = ["a", "\u00e9", "\u20ac", '"', ",", ";", "|", "\t", "\n", " ", "0", "="];
const comment = fc
  .array(fc.constantFrom(...signs), { maxLength: 8 })
  .map((text) => text.join("").trim())
  .filter((text) => text !== "");
const tenths = (lo: number, hi: number) => fc.integer({ min: lo * 10, max: hi * 10 }).map((value) => value / 10);
const truth: fc.Arbitrary<Truth> = fc.record({
  at: fc
    // Up to a few months after the season: far beyond, a date is set aside as a mistyped year.
    .integer({ min: 0, max: 216_000_000 })
    .map((seconds) => new Date(Date.UTC(2020, 0, 1) + seconds * 1000).toISOString().slice(0, 19)),
  speed: fc.option(tenths(15, 110)),
  launch: fc.option(tenths(-90, 90)),
  side: fc.option(fc.constantFrom("left" as const, "right" as const)),
  comment: fc.option(comment),
});

const dialect = fc.record({
  mark: fc.constantFrom(",", ";", "\t", "|"),
  decimal: fc.constantFrom(".", ","),
  end: fc.constantFrom("\n", "\r\n"),
  lastEnd: fc.boolean(),
  quoteAll: fc.boolean(),
  encoding: fc.constantFrom("utf-8", "utf-8-bom", "utf-16le", "utf-16le-bom", "utf-16be-bom", "windows-1252"),
  day: fc.constantFrom(null, "dd/MM/yyyy", "M/d/yyyy", "d. MMM yyyy", "yyyyMMdd"),
  clock: fc.constantFrom(null, "HH:mm:ss", "h:mm:ss a"),
  oneCell: fc.boolean(),
  unit: fc.constantFrom("mph", "km/h", "m/s"),
  preamble: fc.array(fc.constantFrom("Report", "made,on;a|day", "Lane 2", 'the "old" one'), { maxLength: 4 }),
  headerEvery: fc.option(fc.integer({ min: 1, max: 5 })),
  units: fc.boolean(),
  sums: fc.boolean(),
  order: fc.shuffledSubarray([0, 1, 2, 3, 4, 5, 6], { minLength: 7, maxLength: 7 }),
});
type Dialect = typeof dialect extends fc.Arbitrary<infer D> ? D : never;

const MPH = { mph: 1, "km/h": 1.609344, "m/s": 0.44704 } as const;
const NAMES = ["Hitter", "Day", "Clock", "Barrel", "Lift", "Box \u00e9", "Said"];

const shown = (iso: string, form: string | null, otherwise: string): string =>
  form === null ? otherwise : DateTime.fromISO(iso, { zone: "utc", locale: "en-US" }).toFormat(form);

/** The whole speed in the dialect's unit, as exactly as decimals can tell, so that nothing is lost on the way. */
const speedIn = (speed: number, { unit }: Dialect): string => (speed * MPH[unit]).toFixed(10);

function cellsOf(rep: Truth, how: Dialect): string[] {
  const [day = "", time = ""] = rep.at.split("T");
  const date = shown(rep.at, how.day, day);
  const clock = shown(rep.at, how.clock, time);
  const decimal = (text: string) => text.replace(".", how.decimal);
  return [
    "A. Lindqvist",
    how.oneCell ? `${date} ${clock}` : date,
    how.oneCell ? "" : clock,
    rep.speed === null ? "--" : decimal(speedIn(rep.speed, how)),
    rep.launch === null ? "" : decimal(String(rep.launch)),
    rep.side === null ? "" : rep.side === "left" ? "L" : "R",
    rep.comment ?? "",
  ];
}

function mappingOf(how: Dialect, units: readonly string[]): Mapping {
  const form = how.oneCell
    ? how.day === null && how.clock === null
      ? {}
      : { form: `${how.day ?? "yyyy-MM-dd"} ${how.clock ?? "HH:mm:ss"}` }
    : how.day === null
      ? {}
      : { form: how.day };
  const clock = { Clock: { field: "time", ...(how.clock !== null && { form: how.clock }) } };
  return {
    label: "Any",
    header: NAMES,
    delimiter: how.mark as ",",
    decimal: how.decimal as ".",
    columns: {
      Hitter: { field: "athlete_id" },
      Day: { field: how.oneCell ? "date_time" : "date", ...form },
      ...(how.oneCell ? {} : clock),
      Barrel: { field: "bat_speed", unit: how.unit, words: { "--": "" } },
      Lift: { field: "launch_angle" },
      "Box \u00e9": { field: "side", words: { L: "left", R: "right" } },
      Said: { field: "comment" },
    },
    ...(how.units && { units_row: [...units] }),
    ...(how.sums && { summary_rows: { column: "Day", words: ["Mean"] } }),
  };
}

/** The file as text, and how many rows stand below its header that are no swings. */
function written(reps: readonly Truth[], how: Dialect, units: readonly string[]): { text: string; others: number } {
  const needs = (cell: string) => /["\r\n]/.test(cell) || cell.includes(how.mark);
  const line = (cells: readonly string[]): string =>
    how.order
      .map((from) => cells[from] ?? "")
      .map((cell) => (how.quoteAll || needs(cell) ? `"${cell.replaceAll('"', '""')}"` : cell))
      .join(how.mark);
  const header = how.units ? [line(NAMES), line(units)] : [line(NAMES)];
  const rows = reps.flatMap((rep, index) => {
    const again = how.headerEvery !== null && index > 0 && index % how.headerEvery === 0;
    return [...(again ? header : []), line(cellsOf(rep, how))];
  });
  const sums = how.sums ? [line(["", "Mean", "", "66", "", "", ""]), line(["", "mean", "", "", "12", "", ""])] : [];
  const all = [...how.preamble, ...header, ...rows, ...sums];
  return {
    text: all.join(how.end) + (how.lastEnd ? how.end : ""),
    others: header.length - 1 + rows.length - reps.length + sums.length,
  };
}

/** Windows-1252 for the letters used here: Latin-1, and the euro sign at 0x80. */
const windows1252 = (text: string): Buffer => Buffer.from(text.replaceAll("\u20ac", "\x80"), "latin1");

function bytesOf(text: string, encoding: string): Uint8Array {
  const little = Buffer.from(text, "utf16le");
  const mark = (...bytes: number[]) => Buffer.from(bytes);
  const bytes = {
    "utf-8": () => Buffer.from(text),
    "utf-8-bom": () => Buffer.concat([mark(0xef, 0xbb, 0xbf), Buffer.from(text)]),
    "utf-16le": () => little,
    "utf-16le-bom": () => Buffer.concat([mark(0xff, 0xfe), little]),
    "utf-16be-bom": () => Buffer.concat([mark(0xfe, 0xff), Buffer.from(little).swap16()]),
    "windows-1252": () => windows1252(text),
  }[encoding];
  return new Uint8Array(bytes?.() ?? Buffer.from(text));
}

test("reps written as a table in any dialect and mapped back are the same reps, and the ledger balances", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(truth, { minLength: 1, maxLength: 15 }), dialect, async (given, how) => {
      // Swings of one second with the same readings would rightly count as one.
      const reps = given.filter((rep, index) => given.findIndex(({ at }) => at === rep.at) === index);
      const units = ["", "", "", how.unit, "deg", "", ""];
      const { text, others } = written(reps, how, units);
      const season = await seasonOf({
        "data/mappings/any.json": JSON.stringify(mappingOf(how, units)),
        "data/swings/a.csv": bytesOf(text, how.encoding),
      });
      const read = season.athletes[0]?.reps;
      expect(season.problems.filter(({ level }) => level === "error")).toEqual([]);
      expect(read?.date).toEqual(reps.map(({ at }) => at.slice(0, 10)));
      expect(read?.words.time).toEqual(reps.map(({ at }) => at.slice(11)));
      expect(read?.words.side).toEqual(reps.map(({ side }) => side));
      expect(read?.words.comment).toEqual(reps.map((rep) => rep.comment?.replaceAll("\n", "\n") ?? null));
      expect(read?.numbers.launch_angle).toEqual(reps.map(({ launch }) => launch));
      for (const [index, { speed }] of reps.entries()) {
        const value = read?.numbers.bat_speed?.[index] ?? null;
        if (speed === null) expect(value).toBe(null);
        else expect(value).toBeCloseTo(speed, 8);
      }
      expect(balance(season)).toEqual({ read: reps.length + others, kept: reps.length, setAside: others });
      expect(season.setAside.every(({ reason }) => reason === "summary-row")).toBe(true);
    }),
    { numRuns: 300 },
  );
}, 60_000);
