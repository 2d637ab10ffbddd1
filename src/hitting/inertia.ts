/**
 * How hard a bat is to turn. Moments of inertia in oz in2 about the point 6 in from the knob unless said otherwise, masses in oz,
 * lengths in in, times in s.
 */

/** in/s2. */
const GRAVITY_IN = 386.09;
/** Where a bat is pivoted, in from the knob (ASTM F2398). */
export const PIVOT_IN = 6;
/** Power of the fall of swing speed with inertia: 0.27 rods, 0.25 softball bats (Cross & Bower 2006). */
export const SPEED_POWER = { rods: 0.27, softball: 0.25 } as const;

function checkBat(weightOz: number, balanceIn: number): void {
  if (!(weightOz > 0 && Number.isFinite(weightOz)))
    throw new RangeError(`a bat weighs more than 0 oz, got ${weightOz}`);
  if (!(balanceIn > 0 && Number.isFinite(balanceIn))) {
    throw new RangeError(`a balance point lies above 0 in from the knob, got ${balanceIn}`);
  }
}

/**
 * Moment of inertia from the period of small free swings about the pivot: T2 W g (BP - 6) / (4 pi2).
 *
 * @param periodS   average of full swings there and back
 * @param balanceIn from the knob, beyond the pivot
 * @see ASTM F2398 (scope read; formula as the bat laboratories' glossaries give it)
 */
export function inertiaFromPeriod(weightOz: number, balanceIn: number, periodS: number): number {
  checkBat(weightOz, balanceIn);
  if (!(balanceIn > PIVOT_IN))
    throw new RangeError(`the balance point must lie beyond ${PIVOT_IN} in, got ${balanceIn}`);
  if (!(periodS > 0 && Number.isFinite(periodS))) throw new RangeError(`a period is above 0 s, got ${periodS}`);
  return (periodS ** 2 * weightOz * GRAVITY_IN * (balanceIn - PIVOT_IN)) / (4 * Math.PI ** 2);
}

/** The same about the knob, by the parallel-axis theorem. */
export function inertiaAtKnob(inertia: number, weightOz: number, balanceIn: number): number {
  checkBat(weightOz, balanceIn);
  return inertia + weightOz * (balanceIn ** 2 - (balanceIn - PIVOT_IN) ** 2);
}

/**
 * Moment of inertia of a uniform rod of the bat's length and mass about the pivot. A real bat carries more of its mass in the barrel: as
 * an absolute figure this is too low; as a ratio of two bats it assumes that both carry their mass alike.
 */
export function rodInertia(weightOz: number, lengthIn: number): number {
  checkBat(weightOz, lengthIn);
  return weightOz * (lengthIn ** 2 / 12 + (lengthIn / 2 - PIVOT_IN) ** 2);
}

/**
 * Speed expected with one bat as a share of that with another: (I_other / I)^n.
 *
 * @param power 0.25 to 0.27
 */
export function expectedSpeedShare(inertia: number, otherInertia: number, power: number): number {
  if (!(inertia > 0 && otherInertia > 0)) throw new RangeError("moments of inertia must be above 0");
  return (otherInertia / inertia) ** power;
}
