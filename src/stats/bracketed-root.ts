/** A place and the value of the function there. */
export interface RootEnd {
  readonly at: number;
  readonly value: number;
}

/** Halving alone gets from the largest double to the smallest in about 2100 steps; real functions take under 20. */
const MOST_STEPS = 2200;

/**
 * Root of a continuous function between two places where its sign differs: inverse quadratic steps where the last three points allow
 * them, halving where not, so it is fast and cannot leave the bracket.
 *
 * @param valueAt the function, finite between the ends
 * @param start   one end; `end` is the other. Their values differ in sign, or one of them is 0
 * @returns the place of the root, as near as doubles get
 * @throws {RangeError} the values at the ends have the same sign, or one is NaN
 * @see Chandrupatla (1997), Adv Eng Softw 28:145-149
 * @example bracketedRoot((x) => x * x - 2, { at: 0, value: -2 }, { at: 2, value: 2 }) // => 1.4142135623730951
 */
export function bracketedRoot(valueAt: (at: number) => number, start: RootEnd, end: RootEnd): number {
  if (start.value === 0) return start.at;
  if (end.value === 0) return end.at;
  if (!(Math.sign(start.value) * Math.sign(end.value) < 0)) throw new RangeError("a root needs ends of different sign");
  let newest = end;
  let opposite = start;
  let share = 0.5;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const at = newest.at + share * (opposite.at - newest.at);
    const middle = { at, value: valueAt(at) };
    if (middle.value === 0) return at;
    const sameSide = middle.value > 0 === newest.value > 0;
    const before = sameSide ? newest : opposite;
    if (!sameSide) opposite = newest;
    newest = middle;
    const best = Math.abs(newest.value) < Math.abs(opposite.value) ? newest.at : opposite.at;
    const least = (Number.EPSILON * Math.abs(best) + Number.MIN_VALUE) / Math.abs(opposite.at - newest.at);
    if (least >= 0.5) return best;
    share = Math.min(1 - least, Math.max(least, nextShare(newest, opposite, before)));
  }
  return newest.at;
}

/** How far to go from the newest point to the opposite one: by the curve through all three where it is safe, else half. */
function nextShare(newest: RootEnd, opposite: RootEnd, before: RootEnd): number {
  const xi = (newest.at - opposite.at) / (before.at - opposite.at);
  const phi = (newest.value - opposite.value) / (before.value - opposite.value);
  if (!(1 - Math.sqrt(1 - xi) < phi && phi < Math.sqrt(xi))) return 0.5;
  const alpha = (before.at - newest.at) / (opposite.at - newest.at);
  const a = newest.value / (newest.value - opposite.value);
  const b = before.value / (before.value - opposite.value);
  const c = newest.value / (before.value - newest.value);
  const d = opposite.value / (opposite.value - before.value);
  return a * b - alpha * c * d;
}
