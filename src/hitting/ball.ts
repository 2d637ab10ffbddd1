import { CM_PER_INCH, GRAMS_PER_OUNCE } from "../schema/units.ts";

/** What flight needs of a ball: mass in kg, radius in m. */
export interface Ball {
  readonly massKg: number;
  readonly radiusM: number;
}

/**
 * Ball of a mass and a circumference as rule books state them.
 *
 * @throws {RangeError} either not above 0
 * @example ballOf(5.125, 9.125) // => { massKg: 0.14529..., radiusM: 0.036888... }
 */
export function ballOf(massOz: number, circumferenceIn: number): Ball {
  if (!(massOz > 0 && circumferenceIn > 0 && Number.isFinite(massOz) && Number.isFinite(circumferenceIn))) {
    throw new RangeError(`a ball has a mass and a circumference above 0, got ${massOz} oz and ${circumferenceIn} in`);
  }
  return {
    massKg: (massOz * GRAMS_PER_OUNCE) / 1000,
    radiusM: (circumferenceIn * CM_PER_INCH) / 100 / (2 * Math.PI),
  };
}

/** Middle of what the Official Baseball Rules allow: 5 to 5.25 oz, 9 to 9.25 in round. */
export const BASEBALL: Ball = ballOf(5.125, 9.125);
/** 12 in softball of 6.25 to 7 oz (reference pages; the league's rule book decides). */
export const SOFTBALL: Ball = ballOf(6.6, 12);

/**
 * What drag takes from the speed per metre: k = C_D rho A / (2 m), 1/m.
 *
 * @param density of the air, kg/m3
 */
export function dragPerMetre({ massKg, radiusM }: Ball, coefficient: number, density: number): number {
  return (coefficient * density * Math.PI * radiusM ** 2) / (2 * massKg);
}
