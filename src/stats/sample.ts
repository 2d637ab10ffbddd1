/**
 * What every function of this folder accepts, and the one rule for what it answers.
 *
 * - A wrong call throws a RangeError: NaN, an infinite or a huge value, lists of unequal length, a level outside 0..1.
 *   It is the caller's mistake and never data.
 * - Too little data is an answer: `null` for one figure that does not exist, `{ kind: "no-line", reason }` where a whole
 *   line does not. NaN and Infinity are never returned.
 * - Arguments are left unchanged, and order matters only where the comment says so.
 */

/** Values in one unit. Arrays and typed arrays both do. */
export type Sample = ArrayLike<number>;

/**
 * Largest size a value may have. Its square, and the sum of very many squares, still fit in a double (about 1.8e308);
 * anything measured is far below it.
 */
export const LARGEST_VALUE = 1e150;

/**
 * @param values any number of values, also none
 * @param what   the argument's name, for the message
 * @throws {RangeError} a value is NaN, infinite or above LARGEST_VALUE in size
 */
export function checkSample(values: Sample, what: string): void {
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i];
    if (typeof value !== "number" || !(Math.abs(value) <= LARGEST_VALUE)) {
      throw new RangeError(`${what}[${i}] must be a finite number of ordinary size, got ${String(value)}`);
    }
  }
}

/**
 * @returns the number of pairs
 * @throws {RangeError} as checkSample, or the two lists differ in length
 */
export function checkPairs(x: Sample, y: Sample): number {
  if (x.length !== y.length) throw new RangeError(`x has ${x.length} values and y has ${y.length}: need pairs`);
  checkSample(x, "x");
  checkSample(y, "y");
  return x.length;
}

/** A copy in rising order. */
export function sortedCopy(values: Sample): Float64Array {
  return Float64Array.from(values).sort();
}

/**
 * A quotient of accepted values can still leave the range of a double (1 divided by a step of 1e-320).
 *
 * @returns the value itself
 * @throws {RangeError} the value is not finite
 */
export function requireFinite(value: number, what: string): number {
  if (!Number.isFinite(value)) throw new RangeError(`${what} is too large for a double`);
  return value;
}
