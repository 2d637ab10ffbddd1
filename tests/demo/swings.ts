import { speedFactor } from "./bats.ts";
import type { Drill } from "./blocks.ts";
import { daysBetween, seasonShare } from "./calendar.ts";
import { BRIDGED, sensorOn } from "./devices.ts";
import { Q_OF_BALL } from "./equipment.ts";
import type { Random } from "./random.ts";
import type { Story } from "./story.ts";

/** One row of an export before it is written: canonical columns, absent where the device saw nothing. */
export type Swing = Record<string, string | number | undefined>;

/** How much two readings of one swing by one kind of sensor scatter, in each metric's unit. */
const READING_SD = { bat_speed: 0.5, attack_angle: 0.6, swing_time: 0.001 } as const;

/** A day's form, shared by everything the hitter does on that day. */
export interface Form {
  date: string;
  mph: number;
  degrees: number;
}

export function formOf(story: Story, date: string, random: Random): Form {
  return { date, mph: random.normal(0, story.daySd), degrees: random.normal(0, 0.9) };
}

/** Where a season's line stands on this day: a little quicker at first, level at the end. */
function between([first, last]: readonly [number, number], date: string): number {
  const share = seasonShare(date);
  return first + (last - first) * share * (1.3 - 0.3 * share);
}

/** The bat the athlete takes to a game on this day. */
function gameBatOn(story: Story, date: string): string {
  return (story.gameBat.findLast((bat) => bat.from <= date) ?? story.gameBat[0])!.id;
}

/** True speed of the barrel before chance has its say, mph. */
function typicalSpeed(story: Story, block: Drill, side: string, form: Form): number {
  const speeds = side === "left" && story.leftSpeed !== undefined ? story.leftSpeed : story.speed;
  const { environment } = block;
  const line = environment === "machine" ? speeds.machine : environment === "front-toss" ? speeds.toss : speeds.tee;
  let mph = between(line, form.date) + form.mph;
  for (const step of story.steps ?? []) {
    if (form.date < step.from) continue;
    mph += Math.min(0, step.mph + (step.regainPerWeek * daysBetween(step.from, form.date)) / 7);
  }
  const used = block.implement === "game" ? gameBatOn(story, form.date) : block.implement;
  mph *= speedFactor(story.gameBat[0]!.id, used);
  if (block.effort === "technical") mph *= 0.88;
  if (block.effort === "max") mph *= 1.015;
  if (block.swingType === "slap") mph *= 0.83;
  if (block.feed !== undefined && block.feed.id === story.bend) mph -= 1.2;
  return mph;
}

/** What becomes of the swing. */
function outcome(story: Story, block: Drill, random: Random): "hit" | "foul" | "miss" | "take" {
  const pitched = block.environment === "machine" ? 1 : block.environment === "front-toss" ? 0.4 : 0.1;
  const draw = random.uniform();
  if (draw < story.miss * pitched) return "miss";
  if (draw < (story.miss + story.foul) * pitched) return "foul";
  if (block.environment === "machine" && draw > 0.965) return "take";
  return "hit";
}

/** Mostly full swings, now and then a bunt, a swing held back or one between pitches. */
function swingType(story: Story, block: Drill, rep: number, random: Random): string {
  if (block.purpose === "test" || block.swingType === "slap") return block.swingType;
  const draw = random.uniform();
  if (block.environment === "machine") {
    if (story.bunts === true && rep === 1 && draw < 0.3) return "bunt";
    if (draw > 0.988) return "check";
  }
  return draw > 0.976 && draw < 0.981 ? "practice" : "full";
}

/** Share of the barrel's and the pitch's speed that the ball keeps; `squareness` 0 is a square hit. */
function ballFlight(
  story: Story,
  block: Drill,
  mph: number,
  attack: number,
  side: string,
  random: Random,
  date: string,
): Swing {
  const squareness = random.normal(0, 1);
  const penalty = block.environment === "machine" ? 0.042 : block.environment === "tee" ? 0.022 : 0.032;
  const newBat =
    block.implement === "game" && gameBatOn(story, date) !== story.gameBat[0]!.id ? (story.newBatQ ?? 0) : 0;
  const q = Math.max(-0.4, (Q_OF_BALL[block.ball ?? ""] ?? 0) + newBat - penalty * squareness * squareness);
  // A pitch loses about a tenth of its speed on the way to the plate; tosses come at about 21 mph.
  const pitch = block.feed !== undefined ? block.feed.pitch_speed_mph * 0.92 : block.environment === "tee" ? 0 : 21;
  const exit = q * pitch + (1 + q) * mph;
  const scatter = block.environment === "tee" ? 9 : 13;
  const launch = Math.min(82, Math.max(-58, attack * 0.8 + 5 - 5 * squareness + random.normal(0, scatter)));
  const pull = side === "right" ? -1 : 1;
  return {
    exit_velocity: Math.max(12, exit),
    launch_angle: launch,
    spray_angle: Math.min(70, Math.max(-70, pull * random.normal(7, 20))),
    distance: distanceFt(exit, launch),
  };
}

/** A device's rough carry: five feet a mph around 400 ft at 100 mph and 28 degrees, less for other angles. */
function distanceFt(exit: number, launch: number): number {
  const best = Math.max(20, 400 + 5 * (exit - 100));
  const off = (launch - 28) / 45;
  return Math.max(4, best * Math.max(0.03, 1 - off * off));
}

/**
 * One swing (or take) of a block.
 *
 * Bat and ball are drawn from the same true barrel speed; the sensor adds its own reading error, so that a sensor that
 * reads higher leaves the ball's speed as it was.
 */
export function swing(story: Story, block: Drill, side: string, rep: number, form: Form, random: Random): Swing {
  const type = swingType(story, block, rep, random);
  const result =
    block.environment === "dry" || type === "practice" || type === "check" ? undefined : outcome(story, block, random);
  const row: Swing = { side, swing_type: type, result };
  if (result === "take") return row;
  const held = type === "bunt" ? 0.35 : type === "check" ? 0.6 : type === "practice" ? 0.85 : 1;
  const fade = Math.max(0, rep - 3) * story.fade;
  const mph = (typicalSpeed(story, block, side, form) - fade + random.normal(0, story.repSd)) * held;
  const attack =
    between(story.attack, form.date) + form.degrees + random.normal(block.environment === "machine" ? -1 : 0, 4.5);
  row.bat_speed = mph + sensorOn(story.deviceBat, form.date).mph + random.normal(0, READING_SD.bat_speed);
  row.attack_angle = attack;
  row.swing_time = Math.max(0.11, between(story.swingTime, form.date) + random.normal(0, 0.007));
  // The ball-flight screen sees fair balls, and not quite all of them.
  const seen = result === "hit" && random.chance(0.965);
  return seen ? { ...row, ...ballFlight(story, block, mph, attack, side, random, form.date) } : row;
}

/**
 * The same swing as the second sensor on the bat tells it; nothing where the first one saw none. It knows no ball and no result.
 *
 * @param row as the first sensor has it, by whose own error the two differ too
 */
export function readAgain(row: Swing, random: Random): Swing | null {
  const { bat_speed: mph, attack_angle: degrees, swing_time: seconds } = row;
  if (typeof mph !== "number" || typeof degrees !== "number" || typeof seconds !== "number") return null;
  const {
    result: _,
    exit_velocity: _exit,
    launch_angle: _launch,
    spray_angle: _spray,
    distance: _far,
    ...context
  } = row;
  return {
    ...context,
    ...{ device_bat: BRIDGED.after, device_ball: undefined },
    bat_speed: mph + BRIDGED.mph + random.normal(0, READING_SD.bat_speed),
    attack_angle: degrees + random.normal(0, READING_SD.attack_angle),
    swing_time: seconds + random.normal(0, READING_SD.swing_time),
  };
}
