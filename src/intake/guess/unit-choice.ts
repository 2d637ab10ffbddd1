import { type UnitFit, unitFit, usualUnits } from "./typical.ts";

/** The unit a column of numbers is read in, and why. */
export interface UnitChoice {
  readonly unit: string;
  /** How well the numbers fit, 0 to 1. */
  readonly fit: number;
  readonly why: "written" | "only-unit" | "numbers-fit" | "doubt" | "not-written";
  /** Units a person may choose from; empty when nothing has to be asked. */
  readonly ask: readonly UnitFit[];
}

interface Measured {
  readonly field: string;
  readonly unit: string;
  readonly plausible: readonly [number, number];
}

/** Numbers that this many of can be true may be of this field. */
const POSSIBLE = 0.8;

/**
 * Chooses a unit. A written unit is believed unless the numbers speak for another one; without one, the canonical unit is taken
 * where it is the only one in which the numbers lie where they usually do.
 *
 * @param written unit of the header or of a row of units; null when there is none
 * @param numbers sorted; without any nothing speaks against a unit
 * @returns null when `written` measures something else, or no unit makes the numbers possible
 */
export function chooseUnit(field: Measured, written: string | null, numbers: readonly number[]): UnitChoice | null {
  const usual = usualUnits(field.unit);
  const fits = usual.flatMap((unit) => unitFit(field, unit, numbers) ?? []);
  const typical = fits.filter((fit) => fit.typical && fit.possible >= POSSIBLE);
  if (written !== null) {
    const own = unitFit(field, written, numbers);
    if (own === null) return null;
    const others = typical.filter((fit) => fit.unit !== written);
    const sound = own.possible >= POSSIBLE;
    if (numbers.length === 0 || (sound && (own.typical || others.length === 0)))
      return { unit: written, fit: own.possible, why: "written", ask: [] };
    if (others.length === 0) return null;
    return { unit: written, fit: POSSIBLE, why: "doubt", ask: [own, ...others] };
  }
  if (usual.length === 1) {
    const [only] = fits;
    return only && only.possible >= POSSIBLE
      ? { unit: only.unit, fit: only.possible, why: "only-unit", ask: [] }
      : null;
  }
  const [first, ...more] = typical;
  if (first && more.length === 0 && first.unit === field.unit)
    return { unit: first.unit, fit: first.possible, why: "numbers-fit", ask: [] };
  const possible = fits.filter((fit) => fit.possible >= POSSIBLE);
  const ask = [...typical, ...possible.filter((fit) => !fit.typical)];
  const [best] = ask;
  return best ? { unit: best.unit, fit: best.possible, why: "not-written", ask } : null;
}
