import { SEASON_START } from "./calendar.ts";
import { csvText } from "./csv.ts";
import type { Export } from "./exports.ts";
import { GUEST, UNKNOWN_BAT } from "./faults.ts";
import { type Random, randomFrom } from "./random.ts";

/** From New Year on the young hitters' lanes have no tablet: the sensor and the screen write a file each, by clocks of their own. */
const SENSOR_FOLDER = "data/swings/diamond";
const MONTHS = ["2026-01", "2026-02"] as const;
export const SENSOR_FILES: readonly string[] = MONTHS.map((month) => `${SENSOR_FOLDER}/${month}.csv`);
export const screenFile = (screen: string, month: string): string => `data/swings/screen-${screen}/${month}.csv`;
/** Seconds that a screen's clock is ahead, and how far it runs on in an hour. */
const CLOCKS = {
  "gate-1": { ahead: 74, anHour: 0.2 },
  "gate-2": { ahead: 15, anHour: 0.1 },
  "gate-3": { ahead: -131, anHour: -0.3 },
} as const;
type Screen = keyof typeof CLOCKS;
export const SCREEN_FILES: readonly string[] = (Object.keys(CLOCKS) as Screen[]).flatMap((screen) =>
  MONTHS.map((month) => screenFile(screen, month)),
);
/** SD of the difference between two stamps of one swing, s. */
const SCATTER = 0.6;
/** What the sensor took for swings: waggles, and practice swings between two pitches. */
export const FALSE_ROWS = { waggles: 18, practice: 12 } as const;

const BALL = ["exit_velocity_mph", "launch_angle_deg", "spray_angle_deg"] as const;
const OF_SCREEN = ["athlete_id", "date", "time", ...BALL, "device_ball"] as const;

const seconds = (time: string): number => time.split(":").reduce((sum, part) => sum * 60 + Number(part), 0);
const clock = (all: number): string =>
  [Math.floor(all / 3600), Math.floor(all / 60) % 60, all % 60].map((part) => String(part).padStart(2, "0")).join(":");

/**
 * Turns the tablet's files of these months into the sensor's and the screens'. A row that went wrong on the tablet has no ball.
 *
 * @param files as the tablet would have written them; the sensor's stay in their place
 * @param disturbed whether the sensor also wrote what was no swing
 * @returns path in the season folder -> text of the screens' files
 */
export function splitDevices(files: Map<string, Export>, disturbed: boolean): Map<string, string> {
  const random = randomFrom("two devices");
  const screens = new Map<string, string[][]>(SCREEN_FILES.map((path) => [path, []]));
  for (const [index, path] of SENSOR_FILES.entries()) {
    const { columns, rows } = files.get(path)!;
    for (const [place, row] of rows.entries()) {
      // A row that the tablet wrote twice was one ball.
      if (row.join() === rows[place - 1]?.join()) continue;
      const cell = (name: string): string => row[columns.indexOf(name)] ?? "";
      const screen = cell("device_ball") as Screen;
      if (cell("exit_velocity_mph") === "" || !sound(row, columns)) continue;
      const at = seconds(cell("time"));
      const { ahead, anHour } = CLOCKS[screen];
      const own = at + ahead + (anHour * (at - 16 * 3600)) / 3600 + random.normal(0, SCATTER);
      const cells = OF_SCREEN.map((name) => (name === "time" ? clock(Math.round(own)) : cell(name)));
      screens.get(screenFile(screen, MONTHS[index]!))!.push(cells);
    }
    const kept = columns.flatMap((name, at) => ((BALL as readonly string[]).includes(name) ? [] : [at]));
    const sensor: Export = {
      columns: kept.map((at) => columns[at]!),
      rows: rows.map((row) => kept.flatMap((at) => row[at] ?? [])),
    };
    if (disturbed) addFalseRows(sensor, random);
    files.set(path, sensor);
  }
  return new Map([...screens].map(([path, rows]) => [path, csvText(OF_SCREEN, inTime(rows))]));
}

/** By day, time and hitter, as a device writes. */
function inTime(rows: readonly string[][]): string[][] {
  const key = ([athlete = "", date = "", time = ""]: readonly string[]) => `${date} ${time} ${athlete}`;
  return [...rows].sort((one, other) => (key(one) < key(other) ? -1 : 1));
}

/** A row that can be read, of somebody on the roster. */
function sound(row: readonly string[], columns: readonly string[]): boolean {
  const cell = (name: string): string => row[columns.indexOf(name)] ?? "";
  const mph = cell("bat_speed_mph");
  const speed = mph === "" || (/^\d+\.\d$/.test(mph) && Number(mph) >= 15 && Number(mph) <= 110);
  const day = /^\d{4}-/.test(cell("date")) && cell("date") >= SEASON_START;
  return (
    row.length === columns.length && speed && day && cell("athlete_id") !== GUEST && cell("implement") !== UNKNOWN_BAT
  );
}

/** Rows between two swings of one round that nobody gave a result. */
function addFalseRows({ columns, rows }: Export, random: Random): void {
  const at = (name: string): number => columns.indexOf(name);
  const wanted = [
    ...Array.from({ length: FALSE_ROWS.waggles }, () => [18, 1] as const),
    ...Array.from({ length: FALSE_ROWS.practice }, () => [52, 3] as const),
  ];
  for (const [mean, sd] of wanted) {
    let index = 0;
    let [here, next] = [rows[0]!, rows[1]!];
    do {
      index = random.integer(1, rows.length - 2);
      [here, next] = [rows[index]!, rows[index + 1]!];
    } while (!between(here, next, at));
    const row = [...here];
    const cells = { time: clock(seconds(here[at("time")]!) + 5), rep: "", result: "", swing_type: "" };
    const read = { bat_speed_mph: random.normal(mean, sd).toFixed(1), attack_angle_deg: "", swing_time_s: "" };
    for (const [name, text] of Object.entries({ ...cells, ...read })) row[at(name)] = text;
    rows.splice(index + 1, 0, row);
  }
}

/** Two swings of one hitter's machine round, ten seconds apart at least. */
function between(one: readonly string[], other: readonly string[], at: (name: string) => number): boolean {
  const same = ["athlete_id", "date", "block", "round"].every((name) => one[at(name)] === other[at(name)]);
  const pause = seconds(other[at("time")] ?? "") - seconds(one[at("time")] ?? "");
  return same && one[at("environment")] === "machine" && one[at("result")] === "hit" && pause >= 10;
}
