import type { Ball } from "../../hitting/ball.ts";
import { shareOfMost } from "../../hitting/collision.ts";
import { PITCH_DRAG } from "../../hitting/pitch.ts";
import { ballOfKind, plateSpeedAfter } from "../../hitting/plate-speed.ts";
import { PITCHED_ENVIRONMENTS } from "../../schema/columns.ts";
import { median } from "../../stats/median.ts";
import { quantile } from "../../stats/quantile.ts";
import type { HittingReport } from "../hitting-schema.ts";
import { type DayValue, grouped, type Hitting, lineThrough, movedOf, rowsFor, whereKey, whereOf } from "./swings.ts";

/** Swings below which a share of the most says nothing. */
const LEAST_SWINGS = 10;

/** What a ball of balls.csv is for flight: its own mass and size, else the rule book's of its kind; null where neither is known. */
export function ballFor(
  { season, athlete }: Hitting,
  id: string | null,
): { ball: Ball; drag: number; q: number | null } | null {
  const row = season.balls.find((one) => one.id === id);
  const kind = row?.kind ?? (id === null ? athlete.profile.sport : undefined);
  if (kind !== "baseball" && kind !== "softball") return null;
  const { mass_oz: mass, circumference_in: around, q } = row ?? {};
  return { ball: ballOfKind(kind, mass, around), drag: PITCH_DRAG[kind], q: q ?? null };
}

/**
 * Pitch speed at the plate, mph: as read there, or what drag leaves of it; 0 off a tee.
 *
 * @returns null where it cannot be known: a toss whose speed nobody read, a pitch without a distance
 */
export function plateSpeed(hitting: Hitting, row: number): number | null {
  const { reps } = hitting.athlete;
  const environment = hitting.conditions[row]!.environment;
  if (environment === "tee") return 0;
  const speed = reps.numbers.pitch_speed?.[row] ?? null;
  if (speed === null || speed <= 0) return null;
  if (reps.words.pitch_speed_at?.[row] === "plate") return speed;
  const distance = reps.numbers.pitch_distance?.[row] ?? null;
  const of = ballFor(hitting, hitting.conditions[row]!.ball ?? null);
  if (distance === null || distance <= 0 || of === null || !PITCHED_ENVIRONMENTS.includes(environment ?? ""))
    return null;
  return plateSpeedAfter(speed, distance, of.ball, of.drag);
}

/** How much of what bat and pitch allow went into the ball, where both were read and the ball's q is stated. */
export function contactReport(hitting: Hitting): HittingReport["contact"] {
  const { conditions, athlete } = hitting;
  const { bat_speed: bat, exit_velocity: exit } = athlete.reps.numbers;
  const rows = rowsFor("ball", hitting).filter((row) => bat?.[row] != null && exit?.[row] != null);
  const key = (row: number) => `${whereKey(conditions[row]!)} ${conditions[row]!.ball ?? ""}`;
  return [...grouped(rows, key)]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([, list]) => {
      const ball = conditions[list[0]!]!.ball ?? null;
      const q = ballFor(hitting, ball)?.q ?? null;
      if (q === null) return [];
      const shares = list.flatMap((row): DayValue[] => {
        const plate = plateSpeed(hitting, row);
        const share = plate === null ? null : shareOfMost(exit![row]!, q, plate, bat![row]!);
        return share === null ? [] : [{ date: athlete.reps.date[row]!, value: share }];
      });
      if (shares.length < LEAST_SWINGS) return [];
      const values = shares.map(({ value }) => value);
      const days = [...new Set(shares.map(({ date }) => date))].sort();
      const means = days.map((date): DayValue => {
        const ofDay = shares.filter((one) => one.date === date);
        return { date, value: ofDay.reduce((sum, one) => sum + one.value, 0) / ofDay.length };
      });
      return [
        {
          ...whereOf(conditions[list[0]!]!),
          ball,
          q,
          swings: values.length,
          days: days.length,
          middle: median(values)!,
          p90: quantile(values, 0.9)!,
          impossible: values.filter((share) => share > 1).length,
          change: movedOf(lineThrough(means)),
        },
      ];
    });
}
