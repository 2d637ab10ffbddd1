import { converter, unitsFor } from "../../schema/units.ts";

/**
 * Where the middle of a column usually lies, in canonical units: from children to professionals. Only for telling units and
 * fields apart, never for setting a row aside. Common practice, wide on purpose.
 */
const TYPICAL: Readonly<Record<string, readonly [number, number]>> = {
  bat_speed: [45, 85],
  attack_angle: [-15, 25],
  swing_time: [0.1, 0.25],
  exit_velocity: [45, 105],
  launch_angle: [-30, 50],
  spray_angle: [-60, 60],
  distance: [40, 420],
  hit_spin: [300, 4500],
  pitch_speed: [25, 95],
  pitch_distance: [10, 65],
  spin: [300, 3500],
  ball_height: [10, 50],
};

/** Units worth thinking of when none is written; others are taken only where they are written. */
const USUAL: Readonly<Record<string, readonly string[]>> = {
  mph: ["mph", "km/h", "m/s"],
  s: ["s", "ms"],
  ft: ["ft", "m"],
  in: ["in", "cm"],
};

/** Units a column may be in when its header does not say, the canonical one first. */
export const usualUnits = (canonical: string): readonly string[] => USUAL[canonical] ?? [canonical];

export interface UnitFit {
  readonly unit: string;
  /** Share of the numbers that can be true in this unit, 0 to 1. */
  readonly possible: number;
  /** The middle lies where it usually lies. */
  readonly typical: boolean;
  /** Middle of the column in the canonical unit. */
  readonly middle: number;
}

/** How well sorted numbers fit a field when they are read in `unit`; null when the unit measures something else. */
export function unitFit(
  field: { readonly field: string; readonly unit: string; readonly plausible: readonly [number, number] },
  unit: string,
  numbers: readonly number[],
): UnitFit | null {
  const convert = unitsFor(field.unit).includes(unit) ? converter(unit, field.unit) : null;
  if (convert === null) return null;
  const [lo, hi] = field.plausible;
  const within = numbers.filter((value) => convert(value) >= lo && convert(value) <= hi).length;
  const middle = convert(numbers[Math.floor(numbers.length / 2)] ?? Number.NaN);
  const usual = TYPICAL[field.field] ?? field.plausible;
  const possible = numbers.length === 0 ? 1 : within / numbers.length;
  return { unit, possible, typical: middle >= usual[0] && middle <= usual[1], middle };
}
