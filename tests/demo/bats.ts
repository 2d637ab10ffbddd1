/** A bat on the rack. Length in inches, weight in ounces. */
export interface Bat {
  id: string;
  label: string;
  length_in: number;
  weight_oz: number;
  role: string;
  material: string;
  certification?: string;
  barrel_in?: number;
  balance_in?: number;
  owner: string;
}

export const BATS: readonly Bat[] = [
  bat("bb-33", "Alloy 33", 33, 30, "game", "alloy", "BBCOR .50", 2.625, 20.4, "corwin-tallowby"),
  bat("bb-33h", "Two-piece 33.5", 33.5, 30.5, "game", "composite", "BBCOR .50", 2.625, 20.9, "desmond-farrowick"),
  bat("maple-34", "Maple 34", 34, 31.5, "game", "maple", "", 2.5, 22.1, "anselm-drovik"),
  bat("bb-32s", "Alloy 32.5", 32.5, 29.5, "game", "alloy", "BBCOR .50", 2.625, 20.1, "thaddeus-marchbane"),
  bat("bb-32", "Alloy 32", 32, 29, "game", "alloy", "BBCOR .50", 2.625, 19.8, "bastian-oakhollow"),
  bat("bb-31y", "Youth alloy 31", 31, 23, "game", "alloy", "", 2.625, 18.9, "rufus-ellingthorpe"),
  bat("fp-33", "Fastpitch 33", 33, 23, "game", "composite", "", 2.25, 19.6, "juniper-brackwell"),
  bat("fp-32", "Fastpitch 32", 32, 22, "game", "composite", "", 2.25, 19.1, "wrenna-stillbourne"),
  bat("fp-29", "Fastpitch 29", 29, 18, "game", "alloy", "", 2.25, 17.2, "marisol-quintalba"),
  bat("fp-30", "Fastpitch 30", 30, 20, "game", "composite", "", 2.25, 17.9, "marisol-quintalba"),
  bat("bb-over", "Heavy ash", 33, 36, "overload", "ash", "", 2.5, 21.2, "barn"),
  bat("bb-under", "Light alloy", 33, 25, "underload", "alloy", "", 2.5, 19.7, "barn"),
  bat("bb-short", "Short maple", 29, 28, "short", "maple", "", 2.25, 18.2, "barn"),
  bat("bb-long", "Long ash", 36, 31, "long", "ash", "", 2.25, 22.8, "barn"),
  bat("fp-over", "Heavy fastpitch", 33, 27, "overload", "alloy", "", 2.25, 20.3, "barn"),
  bat("fp-under", "Light fastpitch", 32, 18.5, "underload", "alloy", "", 2.25, 18.6, "barn"),
  bat("fp-short", "Short fastpitch", 29, 22.5, "short", "alloy", "", 2.25, 17.3, "barn"),
  bat("fp-light-12u", "Light fastpitch, small", 28, 15.5, "underload", "alloy", "", 2.25, 16.4, "barn"),
];

function bat(
  id: string,
  label: string,
  length_in: number,
  weight_oz: number,
  role: string,
  material: string,
  certification: string,
  barrel_in: number,
  balance_in: number,
  owner: string,
): Bat {
  return { id, label, length_in, weight_oz, role, material, certification, barrel_in, balance_in, owner };
}

/** Resistance to being swung, in no unit that matters: bats of one shape go as weight times length squared. */
function inertia(id: string): number {
  const found = BATS.find((candidate) => candidate.id === id);
  if (found === undefined) throw new Error(`no bat ${id} on the rack`);
  return found.weight_oz * found.length_in * found.length_in;
}

/**
 * How fast `used` moves when the same swing moves `reference` at 1.
 *
 * Speed falls as inertia to the power -0.25 (Cross & Bower 2006, J. Sports Sci. 24:23: 0.27 for rods, 0.25 for
 * softball bats). Two square roots instead of a power: IEEE 754 fixes every bit of a square root.
 */
export function speedFactor(reference: string, used: string): number {
  return Math.sqrt(Math.sqrt(inertia(reference) / inertia(used)));
}
