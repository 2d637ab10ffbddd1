import type { Sample } from "./sample.ts";

/**
 * Where a list of values starts and how far it reaches, to compute with `(value - origin) / scale`: no square or product of these
 * leaves the range of a double, whatever the unit. Equal values give exactly 0.
 */
export interface OriginScale {
  /** The first value; 0 for an empty list. */
  readonly origin: number;
  /** A power of two, so dividing changes no digit; 1 when all values are equal. Scaled values lie between -2 and 2. */
  readonly scale: number;
  /** Largest scaled difference that the rounding of the values themselves can explain. */
  readonly rounding: number;
}

/**
 * @param values checked values in one unit, also none
 * @example originScale([60, 62, 65]) // origin 60, scale 4
 */
export function originScale(values: Sample): OriginScale {
  const origin = values[0] ?? 0;
  let reach = 0;
  let largest = 0;
  for (let i = 0; i < values.length; i += 1) {
    reach = Math.max(reach, Math.abs(values[i]! - origin));
    largest = Math.max(largest, Math.abs(values[i]!));
  }
  const scale = reach === 0 ? 1 : 2 ** Math.floor(Math.log2(reach));
  return { origin, scale, rounding: (4 * Number.EPSILON * largest) / scale };
}
