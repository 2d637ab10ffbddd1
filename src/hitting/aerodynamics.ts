import { MPS_PER_MPH } from "../schema/units.ts";

/** Drag and lift of a spinning ball. Spin in rpm, speeds in m/s; coefficients have no unit. */

const RADIANS_PER_REVOLUTION = 2 * Math.PI;
const MPS_OF_100_MPH = 100 * MPS_PER_MPH;

/**
 * Spin factor S = R omega / v.
 *
 * @param rpm    part of the spin whose axis lies across the flight
 * @param speed  above 0
 * @returns a number without unit, 0 or more
 */
export function spinFactor(rpm: number, speed: number, radiusM: number): number {
  return (radiusM * Math.abs(rpm) * RADIANS_PER_REVOLUTION) / 60 / speed;
}

/** Lift coefficient of a batted ball: 1.12 S / (0.583 + 2.333 S) (Nathan 2017, eqs. 9-11). */
export const battedLift = (s: number): number => (1.12 * s) / (0.583 + 2.333 * s);

/** Lift coefficient of a pitch: 1.5 S below S = 0.1, 0.09 + 0.6 S above (Sawicki, Hubbard & Stronge 2003). */
export const pitchedLift = (s: number): number => (s < 0.1 ? 1.5 * s : 0.09 + 0.6 * s);

/** Drag coefficient that rises with spin: `base` + 0.0292 per 1000 rpm (Nathan 2017; base 0.297, in his spreadsheet 0.3008). */
export const battedDrag = (rpm: number, base: number): number => base + (0.0292 * Math.abs(rpm)) / 1000;

/**
 * Spin after a time at a speed: omega exp(-(t / tau) (v / 100 mph)).
 *
 * @param tauS 20 to 30 s by later measurements (quoted by Nathan)
 */
export const spinAfter = (rpm: number, seconds: number, speed: number, tauS: number): number =>
  rpm * Math.exp(-(seconds / tauS) * (speed / MPS_OF_100_MPH));

/** Time constant of the spin by an early note, s: 50 / (k v in mph). Later work gives four to six times as long. */
export const earlySpinDownTime = (k: number, speed: number): number => 50 / (k * (speed / MPS_PER_MPH));
