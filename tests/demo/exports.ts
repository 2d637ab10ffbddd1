import { blocksOf, type Drill, testBlock } from "./blocks.ts";
import { clock, openDays } from "./calendar.ts";
import { BRIDGED, sensorOn } from "./devices.ts";
import { HUB_FILES, tookPlace } from "./plan.ts";
import { type Random, randomFrom } from "./random.ts";
import { STORIES } from "./stories.ts";
import type { Story } from "./story.ts";
import { type Form, formOf, readAgain, type Swing, swing } from "./swings.ts";

/** Saturdays on which everybody who is there hits the tee test. */
export const TEST_DAYS = ["2025-10-18", "2025-12-06", "2026-02-14"] as const;

/** One exported file: header and rows of cells, all text. */
export interface Export {
  columns: readonly string[];
  rows: string[][];
}

const CONTEXT =
  "athlete_id,date,time,block,environment,drill,implement,ball,round,rep,side,swing_type,result,purpose,effort,pitch_type,pitch_speed_mph,pitch_speed_at,pitch_distance_ft";
const BAT = "bat_speed_mph,attack_angle_deg,swing_time_s";
const BALL = "exit_velocity_mph,launch_angle_deg,spray_angle_deg";
const WHERE = "site,lane,device_bat,device_ball";

/** Every lane's tablet is set up a little differently; the fastpitch one puts the ball first. */
const COLUMNS: Readonly<Record<string, string>> = {
  diamond: [CONTEXT, BAT, BALL, WHERE].join(","),
  fastpitch: [CONTEXT, BALL, BAT, WHERE].join(","),
  grown: [CONTEXT, BAT, BALL, "distance_ft", WHERE].join(","),
  "test-days": [CONTEXT, BAT, BALL, WHERE, "comment"].join(","),
  "both-sensors": [CONTEXT, BAT, WHERE].join(","),
};

/** What the second sensor saw on the evening with both. */
export const SECOND_SENSOR_FILE = `data/swings/both-sensors/${BRIDGED.both}.csv`;
/** Drills of that evening for which both hung on the bat. */
const WITH_BOTH: readonly unknown[] = ["tee-middle", "machine-set"];

/** In this month somebody had switched the tablet of the adults' lane to metric; afterwards a hub took its place, metric too. */
const METRIC_FILES: readonly string[] = ["data/swings/grown/2025-12.csv", ...HUB_FILES];
const KMH_PER_MPH = 1.609344;
const METRES_PER_FOOT = 0.3048;

/** One cell of a swing, rounded as the devices round. */
function cellOf(row: Swing, column: string): string {
  const direct = row[column];
  if (direct !== undefined) return String(direct);
  const factor = column.endsWith("_kmh") ? KMH_PER_MPH : column.endsWith("_m") ? METRES_PER_FOOT : 1;
  const metric = column.replace(/_(mph|kmh|deg|s|ft|m)$/, "");
  const value = row[metric];
  if (metric === column || typeof value !== "number") return "";
  const decimals = metric === "swing_time" ? 3 : metric === "distance" ? 0 : 1;
  const text = (value * factor).toFixed(decimals);
  // A tiny negative number rounds to "-0.0", which no device writes.
  return Number(text) === 0 ? text.replace("-", "") : text;
}

/** All rows of one session, in the order in which they were swung. */
function session(story: Story, blocks: readonly Drill[], start: number, form: Form, random: Random): Swing[] {
  const rows: Swing[] = [];
  let seconds = start + random.integer(30, 400);
  for (const [index, block] of blocks.entries()) {
    for (let done = 0; done < block.reps; done++) {
      const round = Math.floor(done / block.round) + 1;
      const rep = (done % block.round) + 1;
      const other = story.leftSpeed !== undefined && round % 2 === 0;
      const side = other ? "left" : story.side;
      seconds += rep === 1 ? random.integer(60, 110) : random.integer(9, 19);
      rows.push({
        ...context(story, block, form.date),
        ...{ time: clock(seconds), block: index + 1, round, rep },
        ...swing(story, block, side, rep, form, random),
      });
    }
    seconds += 45;
  }
  return rows;
}

function context(story: Story, block: Drill, date: string): Swing {
  return {
    ...{ athlete_id: story.id, date, environment: block.environment, drill: block.drill, implement: block.implement },
    ...{ ball: block.ball, purpose: block.purpose, effort: block.effort, pitch_type: block.feed?.pitch_type },
    ...{ pitch_speed_mph: block.feed?.pitch_speed_mph, pitch_speed_at: block.feed?.pitch_speed_at },
    pitch_distance_ft: block.feed?.pitch_distance_ft,
    ...{ site: story.site, lane: story.lane, device_bat: sensorOn(story.deviceBat, date).id },
    device_ball: block.environment === "dry" ? undefined : story.deviceBall,
  };
}

/** The days on which an athlete trains; test days are not among them. */
export function trainingDays(story: Story): string[] {
  const random = randomFrom(`days of ${story.id}`);
  const planned = story.onlyDays ?? openDays(story.weekdays).filter(() => !random.chance(story.missed));
  const tests: readonly string[] = TEST_DAYS;
  return planned.filter((date) => !tests.includes(date) && !isAway(story, date));
}

function isAway(story: Story, date: string): boolean {
  return (story.away ?? []).some(([from, to]) => date >= from && date <= to);
}

/** One athlete's swings of the whole season, each with the file it is exported to. */
function seasonOf(story: Story): { file: string; row: Swing }[] {
  const random = randomFrom(`swings of ${story.id}`);
  const found: { file: string; row: Swing }[] = [];
  for (const [number, date] of trainingDays(story).entries()) {
    const form = formOf(story, date, random);
    const rows = session(story, blocksOf(story, number, date), story.hour * 3600, form, random).filter(tookPlace);
    for (const row of rows) found.push({ file: `data/swings/${story.group}/${date.slice(0, 7)}.csv`, row });
    if (story.deviceBat === BRIDGED.before && date === BRIDGED.both) found.push(...secondSensor(rows));
  }
  for (const date of story.tests ? TEST_DAYS : []) {
    if (isAway(story, date)) continue;
    const form = formOf(story, date, random);
    const start = 9 * 3600 + STORIES.indexOf(story) * 900;
    for (const row of session(story, [testBlock(story)], start, form, random)) {
      const named = { ...row, athlete_id: story.alias, comment: "tee-ten" };
      found.push({ file: `data/swings/test-days/${date.slice(0, 7)}.csv`, row: named });
    }
  }
  return found;
}

/** The rows of the sensor that hung on the bat beside the other one. */
function secondSensor(rows: readonly Swing[]): { file: string; row: Swing }[] {
  const random = randomFrom("the second sensor");
  return rows.flatMap((row) => {
    const again = WITH_BOTH.includes(row.drill) ? readAgain(row, random) : null;
    return again === null ? [] : [{ file: SECOND_SENSOR_FILE, row: again }];
  });
}

/** All exports before anything went wrong with them: path in the season folder -> file, rows by date and time. */
export function cleanExports(): Map<string, Export> {
  const swings = STORIES.flatMap(seasonOf).sort((one, other) => compare(sortKey(one), sortKey(other)));
  const files = new Map<string, Export>();
  for (const { file, row } of swings) {
    let target = files.get(file);
    if (target === undefined) {
      const header = COLUMNS[file.split("/")[2]!]!;
      target = {
        columns: (METRIC_FILES.includes(file) ? metricHeader(header) : header).split(","),
        rows: [],
      };
      files.set(file, target);
    }
    target.rows.push(target.columns.map((column) => cellOf(row, column)));
  }
  return files;
}

const metricHeader = (header: string): string =>
  header
    .replaceAll("_mph", "_kmh")
    .replace("pitch_speed_kmh", "pitch_speed_mph")
    .replace(",distance_ft", ",distance_m");

const sortKey = ({ file, row }: { file: string; row: Swing }): string =>
  `${file} ${row.date} ${row.time} ${row.athlete_id}`;

/** By code unit, so that no machine's language changes the order. */
const compare = (one: string, other: string): number => (one < other ? -1 : one > other ? 1 : 0);
