import { PITCHED_ENVIRONMENTS } from "../schema/columns.ts";
import { gameBatOn, type Profile } from "../schema/profile.ts";
import type { RepTable } from "../schema/season.ts";
import type { Implement } from "../schema/tables.ts";
import type { Condition } from "./schema.ts";

/** Width of a band of pitch speeds, mph; bands start at multiples of it. */
export const PITCH_BAND_MPH = 5;

/** Order of the keys in a condition and in its text key. */
const KEYS = [
  "environment",
  "implement",
  "ball",
  "side",
  "purpose",
  "place",
  "pitchSpeed",
  "pitchSpeedAt",
  "load",
  "protocol",
  "swing",
] as const;

/** One text per condition: equal conditions have equal keys. */
export function conditionKey(condition: Condition): string {
  return JSON.stringify(KEYS.map((key) => condition[key] ?? null));
}

/** Bats by the role that implements.csv gives them. */
export const rolesOf = (bats: readonly Implement[]): ReadonlyMap<string, string> =>
  new Map(bats.flatMap((bat) => (bat.role ? [[bat.id, bat.role] as const] : [])));

/** Where a swing was made if not at the facility: `home`, `club`, `game`. What names no place was made here. */
export const elsewhere = ({ place }: Condition): string | null =>
  place === undefined || place === "facility" ? null : place;

/** The band of 5 mph that holds a speed: lower end included. */
export function pitchBand(mph: number): [number, number] {
  const low = Math.floor(mph / PITCH_BAND_MPH) * PITCH_BAND_MPH;
  return [low, low + PITCH_BAND_MPH];
}

/**
 * The condition of each rep. A column that is absent or blank gives no key; the bat that is the athlete's game bat of that
 * day is called `game`, whichever way the row names it.
 */
export function conditionsOf(reps: RepTable, profile: Profile): Condition[] {
  const { environment, implement, ball, side, purpose, place, swing_type: swingType, pitch_speed_at: at } = reps.words;
  const pitchSpeed = reps.numbers.pitch_speed;
  return reps.date.map((date, i) => {
    const condition: Condition = {};
    const put = (key: "environment" | "ball" | "side" | "purpose" | "place", value: string | null | undefined) => {
      if (value) condition[key] = value;
    };
    put("environment", environment?.[i]);
    const bat = implement?.[i];
    if (bat) condition.implement = bat === gameBatOn(profile, date) ? "game" : bat;
    put("ball", ball?.[i]);
    put("side", side?.[i]);
    put("purpose", purpose?.[i]);
    put("place", place?.[i]);
    const speed = pitchSpeed?.[i];
    if (typeof speed === "number" && PITCHED_ENVIRONMENTS.includes(environment?.[i] ?? "")) {
      condition.pitchSpeed = pitchBand(speed);
      const where = at?.[i];
      if (where) condition.pitchSpeedAt = where;
    }
    if (swingType?.[i] === "slap") condition.swing = "slap";
    return condition;
  });
}
