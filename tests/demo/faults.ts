import type { Export } from "./exports.ts";
import { HUB_FILES } from "./plan.ts";
import { type Random, randomFrom } from "./random.ts";

/** What goes wrong in the tablets' exports, how often, and what becomes of such a row. */
export const FAULTS = {
  misreadHigh: { rows: 6, reason: "out-of-range" },
  misreadLow: { rows: 5, reason: "out-of-range" },
  decimalComma: { rows: 4, reason: "unreadable-number" },
  shortRow: { rows: 3, reason: "unreadable-row" },
  dayFirstDate: { rows: 4, reason: "unreadable-date" },
  unknownBat: { rows: 3, reason: "unknown-id" },
  guest: { rows: 9, reason: "unknown-athlete" },
  doubled: { rows: 24, reason: "duplicate" },
  beforeSeason: { rows: 12, reason: "other-season" },
  /** The sensor slept: the row stays, its bat speed is absent. */
  noBatSpeed: { rows: 40, reason: null },
  /** Nobody tapped the bat: the row stays, its bat is absent. */
  noBat: { rows: 10, reason: null },
} as const;

/** This file was exported twice, the second time under another name: all its rows are duplicates. */
export const EXPORTED_TWICE = {
  file: "data/swings/test-days/2025-12.csv",
  again: "data/swings/test-days/2025-12-again.csv",
} as const;

/** Name that stands in the rows of somebody who is not on the roster. */
export const GUEST = "guest-2";
export const UNKNOWN_BAT = "bb-34x";
/** 13 February 2026 as no one should write it. */
export const DAY_FIRST = { right: "2026-02-13", wrong: "13/02/26" } as const;
export const BEFORE_SEASON = "2025-09-29";

interface Target {
  file: Export;
  row: string[];
}

/** Spoils the exports in place. Every fault hits a row of its own. */
export function addFaults(files: ReadonlyMap<string, Export>): void {
  const random = randomFrom("faults");
  const pick = picker(files, random);
  const set = ({ file, row }: Target, column: string, change: (cell: string) => string): void => {
    const at = file.columns.indexOf(column);
    row[at] = change(row[at]!);
  };
  // All rows are chosen before the first is spoilt: no fault lands on the copy that another one made.
  const of = {
    misreadHigh: pick(FAULTS.misreadHigh.rows),
    misreadLow: pick(FAULTS.misreadLow.rows),
    decimalComma: pick(FAULTS.decimalComma.rows),
    shortRow: pick(FAULTS.shortRow.rows),
    dayFirstDate: pick(FAULTS.dayFirstDate.rows, DAY_FIRST.right),
    unknownBat: pick(FAULTS.unknownBat.rows),
    guest: pick(FAULTS.guest.rows),
    doubled: pick(FAULTS.doubled.rows),
    beforeSeason: pick(FAULTS.beforeSeason.rows, null, "2025-10"),
    noBatSpeed: pick(FAULTS.noBatSpeed.rows),
    noBat: pick(FAULTS.noBat.rows),
  };
  for (const target of of.misreadHigh) set(target, "bat_speed_mph", (mph) => (Number(mph) + 100).toFixed(1));
  for (const target of of.misreadLow) set(target, "bat_speed_mph", (mph) => (Number(mph) / 10).toFixed(1));
  for (const target of of.decimalComma) set(target, "bat_speed_mph", (mph) => mph.replace(".", ","));
  // Columns at the end of the line went missing when the tablet lost its connection.
  for (const { row } of of.shortRow) row.length = 12;
  for (const target of of.dayFirstDate) set(target, "date", () => DAY_FIRST.wrong);
  for (const target of of.unknownBat) set(target, "implement", () => UNKNOWN_BAT);
  for (const target of of.guest) set(copyAfter(target), "athlete_id", () => GUEST);
  for (const target of of.doubled) copyAfter(target);
  for (const target of of.beforeSeason) set(copyFirst(target), "date", () => BEFORE_SEASON);
  for (const target of of.noBatSpeed) {
    for (const column of ["bat_speed_mph", "attack_angle_deg", "swing_time_s"]) set(target, column, () => "");
  }
  for (const target of of.noBat) set(target, "implement", () => "");
}

/** A picker of rows that are still whole: full swings with both bat and ball measured, off the clean files' middle. */
function picker(files: ReadonlyMap<string, Export>, random: Random) {
  const taken = new Set<string[]>();
  const sources = [...files].filter(
    ([path, file]) =>
      file.columns.includes("bat_speed_mph") && !file.columns.includes("comment") && !HUB_FILES.includes(path),
  );
  return (count: number, date: string | null = null, month = ""): Target[] => {
    const found: Target[] = [];
    while (found.length < count) {
      const [path, file] = sources[random.integer(0, sources.length - 1)]!;
      const row = file.rows[random.integer(0, file.rows.length - 1)]!;
      const cell = (column: string): string => row[file.columns.indexOf(column)] ?? "";
      const whole = cell("swing_type") === "full" && cell("effort") === "game" && cell("implement") === "game";
      const measured = cell("bat_speed_mph") !== "" && cell("exit_velocity_mph") !== "";
      if (taken.has(row) || !whole || !measured || !path.includes(month) || (date !== null && cell("date") !== date))
        continue;
      taken.add(row);
      found.push({ file, row });
    }
    return found;
  };
}

/** A copy of the row, right behind it. */
function copyAfter({ file, row }: Target): Target {
  const copy = [...row];
  file.rows.splice(file.rows.indexOf(row) + 1, 0, copy);
  return { file, row: copy };
}

/** A copy of the row at the head of its file. */
function copyFirst({ file, row }: Target): Target {
  const copy = [...row];
  file.rows.unshift(copy);
  return { file, row: copy };
}
