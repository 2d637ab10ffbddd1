import { pulledAngle } from "../hitting/batted-ball.ts";
import type { Metric } from "../schema/metric.ts";
import type { Profile } from "../schema/profile.ts";
import type { RepTable, Season } from "../schema/season.ts";

export type Zone = Season["zones"][number];

/** What a zone's derived metric is called; no metric of a trainer's can be called so. */
export const zoneMetric = (id: string): string => `zone:${id}`;

const within = (value: number, [low, high]: readonly [number, number]): boolean => value >= low && value <= high;

/**
 * The side of each swing: its own; where none is written, the hitter's, unless other swings were made from the other side. Null for a
 * switch hitter's.
 */
export function sidesOf(reps: RepTable, bats: Profile["bats"]): ("left" | "right" | null)[] {
  const written = reps.words.side ?? [];
  const known = bats === "left" || bats === "right" ? bats : null;
  const always = written.every((side) => !side || side === known);
  // Intake lets no other word into this column.
  return reps.date.map((_, i) => (written[i] as "left" | "right" | null) || (always ? known : null));
}

/**
 * Is each ball in the zone: 1, 0, or null where a reading that the zone needs is missing, or its swing's side where it asks for spray.
 * Spray is relative to the hitter's side, pull negative: left field is the pull side of a right-handed hitter. A zone that asks for
 * nothing holds no ball.
 */
export function inZone(zone: Zone, reps: RepTable, bats: Profile["bats"]): (1 | 0 | null)[] {
  const { exit_velocity: speed, launch_angle: launch, spray_angle: spray } = reps.numbers;
  const sides = sidesOf(reps, bats);
  const pulled = (i: number) => {
    const angle = spray?.[i];
    const side = sides[i];
    return typeof angle !== "number" || side == null ? null : pulledAngle(angle, side);
  };
  return reps.date.map((_, i) => {
    const asked = (
      [
        [zone.exit_velocity, speed?.[i]],
        [zone.launch_angle, launch?.[i]],
        [zone.spray, pulled(i)],
      ] as const
    ).filter(([range]) => range !== undefined);
    if (asked.length === 0 || asked.some(([, value]) => typeof value !== "number")) return null;
    return asked.every(([range, value]) => range && typeof value === "number" && within(value, range)) ? 1 : 0;
  });
}

/**
 * The reps with one more column for each zone, and the metrics of these columns: a zone's session value is then its share of balls, and
 * conditions, pools and sessions work as everywhere.
 */
export function withZones(
  zones: readonly Zone[],
  reps: RepTable,
  bats: Profile["bats"],
): { readonly reps: RepTable; readonly metrics: readonly Metric[] } {
  const columns = zones.map((zone) => [zoneMetric(zone.id), inZone(zone, reps, bats)] as const);
  return {
    reps: { ...reps, numbers: { ...reps.numbers, ...Object.fromEntries(columns) } },
    metrics: zones.map((zone) => ({
      id: zoneMetric(zone.id),
      unit: "share",
      better: "higher",
      plausible: [0, 1],
      decimals: 2,
      side: "ball",
    })),
  };
}
