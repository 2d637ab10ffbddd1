import { randomFrom } from "../../demo/random.ts";

/** A swing of a made-up day: seconds of the day by the bat's clock, and what the two devices read; null where one missed it. */
export interface MadeSwing {
  readonly at: number;
  readonly bat: number | null;
  readonly exit: number | null;
}

const two = (n: number): string => String(n).padStart(2, "0");
export const clock = (seconds: number): string => {
  const whole = Math.floor(seconds);
  const ms = Math.round((seconds - whole) * 1000);
  const text = `${two(Math.floor(whole / 3600))}:${two(Math.floor(whole / 60) % 60)}:${two(whole % 60)}`;
  return ms === 0 ? text : `${text}.${String(Math.min(999, ms)).padStart(3, "0")}`;
};

/** So many swings from four o'clock on, every tenth of them seen by one device alone. */
export function madeSwings(n: number, seed = "a day", from = 16 * 3600): MadeSwing[] {
  const random = randomFrom(seed);
  let at = from;
  return Array.from({ length: n }, (_, i) => {
    at += 7 + 15 * random.uniform();
    const bat = 64 + random.normal(0, 2);
    const exit = 1.15 * bat - 3 * Math.abs(random.normal(0, 1));
    return { at, bat: i % 20 === 13 ? null : bat, exit: i % 20 === 6 ? null : exit };
  });
}

const mph = (value: number): string => value.toFixed(1);

/** The sensor's export: bat columns alone. `more` fills the columns between time and speed. */
export const batCsv = (
  swings: readonly MadeSwing[],
  athlete: string,
  date = "2025-11-04",
  more = "",
  header = "",
): string =>
  [
    `athlete_id,date,time,${header}bat_speed_mph`,
    ...swings.flatMap(({ at, bat }) => (bat === null ? [] : [`${athlete},${date},${clock(at)},${more}${mph(bat)}`])),
    "",
  ].join("\n");

/** The screen's export: ball columns alone, by a clock that is so many seconds ahead. */
export const ballCsv = (swings: readonly MadeSwing[], athlete: string, ahead: number, date = "2025-11-04"): string =>
  [
    "athlete_id,date,time,exit_velocity_mph,launch_angle_deg",
    ...swings.flatMap(({ at, exit }) =>
      exit === null ? [] : [`${athlete},${date},${clock(at + ahead)},${mph(exit)},12.0`],
    ),
    "",
  ].join("\n");
