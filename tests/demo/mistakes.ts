import { csvTable } from "./csv.ts";
import type { Export } from "./exports.ts";

/** What went wrong on the floor and was put right afterwards, in `data/corrections.csv`. */
export const WRONG_NAME = {
  date: "2026-01-10",
  file: "data/swings/fastpitch/2026-01.csv",
  written: "juniper-brackwell",
  hitter: "marisol-quintalba",
  block: "1",
  rows: 14,
} as const;
export const WRONG_BAT = {
  date: "2026-01-12",
  file: "data/swings/diamond/2026-01.csv",
  hitter: "corwin-tallowby",
  block: "2",
  rows: 4,
  written: "game",
  bat: "bb-over",
} as const;
/** No swing at all: the bat was let fall. */
export const NO_SWING = {
  date: "2025-11-20",
  file: "data/swings/diamond/2025-11.csv",
  hitter: "thaddeus-marchbane",
  block: "1",
  mph: "28.4",
} as const;

type Mistake = typeof WRONG_NAME | typeof WRONG_BAT | typeof NO_SWING;

function rowsOf(files: ReadonlyMap<string, Export>, { file, date, block, hitter }: Mistake) {
  const { columns, rows } = files.get(file)!;
  const column = (name: string): number => columns.indexOf(name);
  const found = rows.filter(
    (row) => row[column("athlete_id")] === hitter && row[column("date")] === date && row[column("block")] === block,
  );
  return { rows, found, column };
}

/** Writes the mistakes into the exports, as the tablets did. */
export function addMistakes(files: ReadonlyMap<string, Export>): void {
  const named = rowsOf(files, WRONG_NAME);
  for (const row of named.found) row[named.column("athlete_id")] = WRONG_NAME.written;
  const swung = rowsOf(files, WRONG_BAT);
  for (const row of swung.found) row[swung.column("implement")] = WRONG_BAT.written;
  const dropped = rowsOf(files, NO_SWING);
  const last = dropped.found.at(-1)!;
  const ghost = [...last];
  const cells = { time: secondsLater(last[dropped.column("time")]!), rep: "6", bat_speed_mph: NO_SWING.mph };
  const blank = { result: "", exit_velocity_mph: "", launch_angle_deg: "", spray_angle_deg: "" };
  for (const [name, cell] of Object.entries({ ...cells, ...blank })) ghost[dropped.column(name)] = cell;
  dropped.rows.splice(dropped.rows.indexOf(last) + 1, 0, ghost);
}

/** A few seconds on, inside the same hour. */
function secondsLater(time: string): string {
  const [hour = "", minute = "", second = ""] = time.split(":");
  const all = Number(minute) * 60 + Number(second) + 6;
  if (all >= 3600) throw new Error(`${time} is too close to the full hour`);
  return [hour, Math.floor(all / 60), all % 60].map((part) => String(part).padStart(2, "0")).join(":");
}

/** `data/corrections.csv`. Lines are those of the finished exports. */
export function correctionsFile(files: ReadonlyMap<string, Export>): string {
  const header = "by,on,reason,file,line,athlete_id,date,session,block,first,last,action,field,from,to";
  const { columns, rows } = files.get(NO_SWING.file)!;
  const ghost = rows.findIndex(
    (row) => row[columns.indexOf("bat_speed_mph")] === NO_SWING.mph && row[columns.indexOf("date")] === NO_SWING.date,
  );
  return csvTable(header.split(","), [
    {
      ...{ by: "brandt", on: "2025-11-21", reason: "no swing: the bat was let fall after the round" },
      // The header is line 1.
      ...{ file: NO_SWING.file.replace("data/swings/", ""), line: ghost + 2, action: "void" },
    },
    {
      ...{ by: "oda", on: "2026-01-11", reason: "the tablet still had the name of Thursday's last hitter on it" },
      ...{ athlete_id: WRONG_NAME.written, date: WRONG_NAME.date, first: 1, last: WRONG_NAME.rows },
      ...{ action: "reassign", from: WRONG_NAME.written, to: WRONG_NAME.hitter },
    },
    {
      ...{ by: "brandt", on: "2026-01-13", reason: "heavy bat of the ladder; the tag was tapped too late" },
      ...{ athlete_id: WRONG_BAT.hitter, date: WRONG_BAT.date, block: WRONG_BAT.block },
      ...{ action: "set", field: "implement", from: WRONG_BAT.written, to: WRONG_BAT.bat },
    },
  ]);
}
