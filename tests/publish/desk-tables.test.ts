import { expect, test } from "vitest";
import { ledgerCsv, ledgerRows } from "../../src/publish/ledger-rows.ts";
import { repsCsv } from "../../src/publish/reps-csv.ts";
import { BUILT_IN_METRICS, type Metric } from "../../src/schema/metric.ts";
import type { AthleteSeason, LedgerRow, RepTable } from "../../src/schema/season.ts";

const FILES = [{ file: "data/swings/b.csv" }, { file: "data/swings/a.csv" }];
const HIP: Metric = {
  id: "hip_turn",
  unit: "dps",
  better: "higher",
  plausible: [0, 2000],
  decimals: 0,
  side: "own",
};
const REPS: RepTable = {
  n: 3,
  date: ["2026-01-05", "2026-01-05", "2026-01-07"],
  day: [0, 0, 172_800_000],
  file: [0, 0, 1],
  line: [2, 3, 2],
  partner: [null, null, { file: 0, line: 9 }],
  numbers: {
    exit_velocity: [80.5, null, 0],
    bat_speed: [61, 62.25, 63],
    hip_turn: [700, null, null],
    launch_angle: [null, null, null],
  },
  words: { environment: ["tee", "tee", "machine"], comment: [null, '=1+1, "good"', null] },
};

test("reps stand in canonical columns that hold something, then own metrics, then their fate and source", () => {
  expect(repsCsv("ada-lund", REPS, [null, "take", null], FILES, [...BUILT_IN_METRICS, HIP])).toBe(
    "athlete_id,date,environment,bat_speed_mph,exit_velocity_mph,comment,hip_turn_dps,counted,source\n" +
      "ada-lund,2026-01-05,tee,61,80.5,,700,yes,data/swings/b.csv:2\n" +
      'ada-lund,2026-01-05,tee,62.25,,"=1+1, ""good""",,take,data/swings/b.csv:3\n' +
      "ada-lund,2026-01-07,machine,63,0,,,yes,data/swings/a.csv:2+data/swings/b.csv:9\n",
  );
});

test("an athlete without reps has a table without rows", () => {
  const none: RepTable = { n: 0, date: [], day: [], file: [], line: [], partner: [], numbers: {}, words: {} };
  expect(repsCsv("ada-lund", none, [], FILES, BUILT_IN_METRICS)).toBe("athlete_id,date,counted,source\n");
});

const ASIDE: LedgerRow[] = [
  {
    file: "data/swings/a.csv",
    line: 9,
    column: 8,
    field: "bat_speed_mph",
    value: "=61,5",
    reason: "unreadable-number",
    athlete: "ada-lund",
  },
  { file: "data/swings/b.csv", line: 5, column: null, field: null, value: null, reason: "duplicate", athlete: null },
];

test("the ledger lists rows in the order of files and lines, whoever they belong to", () => {
  const athlete = { id: "ada-lund", reps: REPS } as unknown as AthleteSeason;
  const rows = ledgerRows(ASIDE, [{ athlete, judged: [null, "take", "practice"] }], FILES);
  expect(ledgerCsv(rows)).toBe(
    "file,line,column,field,value,reason,athlete_id\n" +
      "data/swings/b.csv,3,,,,take,ada-lund\n" +
      "data/swings/b.csv,5,,,,duplicate,\n" +
      "data/swings/b.csv,9,,,,practice,ada-lund\n" +
      "data/swings/a.csv,2,,,,practice,ada-lund\n" +
      'data/swings/a.csv,9,8,bat_speed_mph,"\'=61,5",unreadable-number,ada-lund\n',
  );
});
