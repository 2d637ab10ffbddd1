/**
 * Units an export may use and their conversion to the one unit we keep.
 * Conversion happens once, when a cell is read; everything behind intake is in canonical units.
 */

/** Metres in a foot, exact (international foot, 1959). */
export const METRES_PER_FOOT = 0.3048;
/** m/s in one mph, exact: a mile is 1609.344 m, an hour 3600 s. */
export const MPS_PER_MPH = 1609.344 / 3600;
/** km/h in one mph, exact. */
export const KMH_PER_MPH = 1.609344;
/** Centimetres in an inch, exact. */
export const CM_PER_INCH = 2.54;
/** Grams in an avoirdupois ounce, exact: 453.59237 g / 16. */
export const GRAMS_PER_OUNCE = 453.59237 / 16;
/** Kilograms in an avoirdupois pound, exact. */
export const KG_PER_POUND = 0.45359237;

/** Canonical unit per quantity, as it stands in our files. */
export type CanonicalUnit =
  | "mph"
  | "deg"
  | "s"
  | "ft"
  | "in"
  | "oz"
  | "lb"
  | "rpm"
  | "clock"
  | "degF"
  | "share"
  | "count";

/** One spelling of a unit: canonical unit it belongs to, and the linear step from one to the other. */
interface UnitStep {
  readonly to: CanonicalUnit;
  /** canonical = value * factor + offset */
  readonly factor: number;
  readonly offset: number;
}

const step = (to: CanonicalUnit, factor: number, offset = 0): UnitStep => ({ to, factor, offset });

/** Unit suffixes as they may stand in a header (`bat_speed_kmh`) or in a mapping (`km/h`). */
export const UNITS: Readonly<Record<string, UnitStep>> = {
  mph: step("mph", 1),
  kmh: step("mph", 1 / KMH_PER_MPH),
  "km/h": step("mph", 1 / KMH_PER_MPH),
  mps: step("mph", 1 / MPS_PER_MPH),
  "m/s": step("mph", 1 / MPS_PER_MPH),
  fps: step("mph", METRES_PER_FOOT / MPS_PER_MPH),
  deg: step("deg", 1),
  rad: step("deg", 180 / Math.PI),
  s: step("s", 1),
  ms: step("s", 1 / 1000),
  ft: step("ft", 1),
  m: step("ft", 1 / METRES_PER_FOOT),
  yd: step("ft", 3),
  in: step("in", 1),
  cm: step("in", 1 / CM_PER_INCH),
  mm: step("in", 1 / (10 * CM_PER_INCH)),
  oz: step("oz", 1),
  g: step("oz", 1 / GRAMS_PER_OUNCE),
  lb: step("lb", 1),
  kg: step("lb", 1 / KG_PER_POUND),
  rpm: step("rpm", 1),
  degF: step("degF", 1),
  degC: step("degF", 9 / 5, 32),
};

/** A converted value is held to the billionth: 152.88768 km/h is 95 mph, not a hair below it. No device is as fine. */
const STEPS = 1e9;

/**
 * Converter from a written unit to a canonical one.
 *
 * @param from a key of {@link UNITS}
 * @param to   the unit our files keep
 * @returns a function on numbers, or `null` when the two measure different things or `from` is not known
 * @example converter("kmh", "mph")?.(100) // => 62.137119224
 */
export function converter(from: string, to: string): ((value: number) => number) | null {
  if (from === to) return (value) => value;
  const known = UNITS[from];
  if (!known || known.to !== to) return null;
  const { factor, offset } = known;
  return (value) => Math.round((value * factor + offset) * STEPS) / STEPS;
}

/** Spellings that measure the same thing as `to`, the canonical one first. */
export function unitsFor(to: string): string[] {
  const others = Object.keys(UNITS).filter((name) => UNITS[name]?.to === to && name !== to);
  return [to, ...others];
}
