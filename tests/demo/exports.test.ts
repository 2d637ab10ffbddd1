import { beforeAll, describe, expect, test } from "vitest";
import type { Judgement } from "../../src/build/judge.ts";
import type { AthleteReport } from "../../src/report/schema.ts";
import type { RepTable } from "../../src/schema/season.ts";
import { generateDemo } from "./generate.ts";
import { HUB_EXPORTS, hubFile, ROWS_BESIDE_SWINGS } from "./hub.ts";
import { judged } from "./judged.ts";
import { HUB_FILES, NOT_TO_PLAN } from "./plan.ts";
import { onTablets } from "./season.ts";

const demo = generateDemo("hub");

const HITTERS = ["anselm-drovik", "desmond-farrowick"];
const hubFiles = HUB_EXPORTS.map(({ to }) => hubFile(to));

/** Rows of the log that only tell what the hub's swings were: those of measured blocks in its months. */
function withoutHubLog(files: ReadonlyMap<string, string>): Map<string, string> {
  return new Map(
    [...files].map(([path, text]) => {
      if (!/^data\/blocks\/2026-/.test(path)) return [path, text];
      const [header = "", ...lines] = text.split("\n");
      const block = header.split(",").indexOf("block");
      return [path, [header, ...lines.filter((line) => !/^\d$/.test(line.split(",")[block] ?? ""))].join("\n")];
    }),
  );
}

let hub: Judgement;
let tablet: Judgement;
let noLog: Judgement;

beforeAll(async () => {
  hub = await judged(demo);
  tablet = await judged(onTablets);
  noLog = await judged(withoutHubLog(onTablets));
});

const reportOf = ({ told }: Judgement, id: string): AthleteReport =>
  told.find(({ athlete }) => athlete.id === id)!.report;
const repsOf = ({ told }: Judgement, id: string): RepTable =>
  told.find(({ athlete }) => athlete.id === id)!.athlete.reps;
const ids = () => hub.told.map(({ athlete }) => athlete.id);

/**
 * A report without what says where its rows stand and how often a swing was told:
 * - `flags[].file` and `.line` are places of rows;
 * - `ledger.read` and `ledger.setAside.duplicate` count the rows that the second export of a pair repeats. (Units and means are
 *   rows of nobody, so they stand in no athlete's report.)
 */
function apartFromRows({ ledger, flags, ...rest }: AthleteReport) {
  const { read: _, setAside, ...counts } = ledger;
  const { duplicate: _again, ...other } = setAside;
  const values = flags.map(({ file: _file, line: _line, ...flag }) => flag);
  return { ...rest, ledger: { ...counts, setAside: other }, flags: values };
}

/** Rows of a hitter in the hub's exports that are set aside because an earlier export has them. */
const repeatedBy = (id: string): number =>
  hub.season.setAside.filter(
    ({ file, athlete, reason }) => hubFiles.includes(file) && athlete === id && reason === "duplicate",
  ).length;

describe("an export of the hub with the session log", () => {
  test("stands in place of the tablet's files", () => {
    const swingFiles = (files: ReadonlyMap<string, string>) =>
      [...files.keys()].filter((path) => path.startsWith("data/swings/"));
    expect(swingFiles(demo).filter((path) => !onTablets.has(path))).toEqual(hubFiles);
    expect(swingFiles(onTablets).filter((path) => !demo.has(path))).toEqual([...HUB_FILES]);
    for (const path of hubFiles) expect(demo.get(path)).not.toMatch(/tee|machine|toss|dry|bb-|maple|soft|wheel|train/);
  });

  test("gives every athlete the report that the tablet's own columns would have given", () => {
    expect(ids()).toHaveLength(9);
    for (const id of ids()) {
      expect(apartFromRows(reportOf(hub, id)), id).toEqual(apartFromRows(reportOf(tablet, id)));
    }
  });

  test("gives the report that the tablet's columns give when nobody had kept a log", () => {
    for (const id of ids()) {
      expect(apartFromRows(reportOf(hub, id)), id).toEqual(apartFromRows(reportOf(noLog, id)));
    }
  });

  test("differs from the tablet's in the ledger by the rows that it repeats, and by nothing else", () => {
    for (const id of ids()) {
      const [mine, other] = [reportOf(hub, id).ledger, reportOf(tablet, id).ledger];
      expect(mine.read - other.read, id).toBe(repeatedBy(id));
      expect((mine.setAside.duplicate ?? 0) - (other.setAside.duplicate ?? 0), id).toBe(repeatedBy(id));
      expect(repeatedBy(id) > 0, id).toBe(HITTERS.includes(id));
    }
  });

  test.each(HITTERS)("tells of each swing of %s what the tablet would have told, round and rep included", (id) => {
    const [mine, other] = [repsOf(hub, id), repsOf(tablet, id)];
    const inTime = (reps: RepTable): number[] =>
      Array.from({ length: reps.n }, (_, row) => row).sort((a, b) => (keyOf(reps, a) < keyOf(reps, b) ? -1 : 1));
    const keyOf = (reps: RepTable, row: number) =>
      `${reps.date[row]} ${reps.words.time?.[row]} ${reps.words.device_bat?.[row]}`;
    const told = (reps: RepTable) =>
      inTime(reps).map((row) => {
        const cells = [...Object.entries(reps.numbers), ...Object.entries(reps.words)];
        // How a rep found its block is not the same: by counting here, by its number there.
        return Object.fromEntries(
          cells.flatMap(([field, values]) => (field === "assigned" ? [] : [[field, values[row]]])),
        );
      });
    expect(mine.n).toBe(other.n);
    expect(told(mine)).toEqual(told(other));
  });

  test("has every one of its swings in a block, and every block of the log its swings", () => {
    const inHub = (reps: RepTable, row: number) => hubFiles.includes(hub.season.swingFiles[reps.file[row]!]!.file);
    for (const id of HITTERS) {
      const { log, reps } = hub.told.find(({ athlete }) => athlete.id === id)!.athlete;
      const rows = Array.from({ length: reps.n }, (_, row) => row).filter((row) => inHub(reps, row));
      expect(rows.length).toBeGreaterThan(500);
      expect(rows.every((row) => reps.words.assigned?.[row] === "count")).toBe(true);
      const measured = log.filter(({ block, date }) => date >= "2026" && !block.startsWith("u"));
      for (const { date, block, assigned, swings } of measured) expect(assigned.count, `${date} ${block}`).toBe(swings);
      expect(measured.reduce((sum, { swings }) => sum + (swings ?? 0), 0)).toBe(rows.length);
    }
    expect(hub.problems.filter(({ code }) => /block|contradiction|^log/.test(code))).toEqual([]);
  });

  test("loses nothing but its units, its means and what it repeats", () => {
    const aside = hub.season.setAside.filter(({ file }) => hubFiles.includes(file));
    const reasons = aside.map(({ reason, athlete }) => `${reason} ${athlete === null ? "nobody's" : "a hitter's"}`);
    const repeated = hub.season.swingFiles.find(({ file }) => file === hubFiles[1])!.rows - ROWS_BESIDE_SWINGS;
    expect(reasons.filter((reason) => reason === "summary-row nobody's")).toHaveLength(
      hubFiles.length * ROWS_BESIDE_SWINGS,
    );
    expect(reasons.filter((reason) => reason === "duplicate a hitter's")).toHaveLength(repeated);
    expect(new Set(reasons).size).toBe(2);
    expect(aside.filter(({ reason }) => reason === "duplicate").every(({ file }) => file === hubFiles[2])).toBe(true);
  });
});

describe("the log of the hub's months", () => {
  const lines = ["2026-01", "2026-02"].flatMap((month) => (demo.get(`data/blocks/${month}.csv`) ?? "").split("\n"));

  test("takes a line of the group for each block of a day that went to plan", () => {
    for (const date of ["2026-01-12", "2026-02-10"]) {
      const ofDay = lines.filter((line) => line.startsWith(date) && /,\d,,/.test(line));
      expect(ofDay.length).toBeGreaterThan(3);
      expect(ofDay.every((line) => line.startsWith(`${date},,grown,,`))).toBe(true);
    }
  });

  test.each(NOT_TO_PLAN)(
    "has a line of $athlete's own where $date did not go to plan",
    ({ athlete, date, comment }) => {
      const own = lines.filter((line) => line.startsWith(`${date},,,${athlete},`) && line.includes(comment));
      expect(own).toHaveLength(1);
      expect(lines.some((line) => line.startsWith(`${date},,grown,`))).toBe(true);
    },
  );
});
