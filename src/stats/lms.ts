import { normalCdf, normalQuantile } from "./distributions.ts";

/** A distribution at one age by power (L), median (M, above 0) and coefficient of variation (S, above 0). */
export interface Lms {
  readonly l: number;
  readonly m: number;
  readonly s: number;
}

/** Powers nearer to 0 than this are 0: their products with S would leave the range of a double. */
const NO_POWER = 1e-100;

function checkLms({ l, m, s }: Lms): void {
  if (!Number.isFinite(l)) throw new RangeError(`L must be a finite number, got ${l}`);
  if (!(m > 0 && Number.isFinite(m))) throw new RangeError(`M must be above 0, got ${m}`);
  if (!(s > 0 && Number.isFinite(s))) throw new RangeError(`S must be above 0, got ${s}`);
}

/**
 * z score of a value: ((x / M)^L - 1) / (L S), and log(x / M) / S for L = 0.
 *
 * @param x above 0, in the unit of M
 * @returns a number without unit
 * @throws {RangeError} x, M or S not above 0, or anything not finite
 * @see Cole & Green (1992), Stat Med 11:1305-1319; checked against the CDC 2000 growth tables
 * @example lmsZ(10, { l: 1, m: 8, s: 0.125 }) // => 2
 */
export function lmsZ(x: number, lms: Lms): number {
  checkLms(lms);
  if (!(x > 0 && Number.isFinite(x))) throw new RangeError(`a value must be above 0, got ${x}`);
  const log = Math.log(x / lms.m);
  // expm1 keeps the digits that (x / M)^L - 1 would lose near L = 0.
  return Math.abs(lms.l) < NO_POWER ? log / lms.s : Math.expm1(lms.l * log) / (lms.l * lms.s);
}

/**
 * Value at a z score: M (1 + L S z)^(1 / L), and M exp(S z) for L = 0.
 *
 * @returns a value in the unit of M; null where 1 + L S z is not above 0: no value is that far out
 * @throws {RangeError} M or S not above 0, or anything not finite
 */
export function lmsValue(z: number, lms: Lms): number | null {
  checkLms(lms);
  if (!Number.isFinite(z)) throw new RangeError(`a z score must be a finite number, got ${z}`);
  if (Math.abs(lms.l) < NO_POWER) return lms.m * Math.exp(lms.s * z);
  const base = lms.l * lms.s * z;
  return base <= -1 ? null : lms.m * Math.exp(Math.log1p(base) / lms.l);
}

/** Percentile of a value, 0 to 100. Errors as `lmsZ`. */
export const lmsPercentile = (x: number, lms: Lms): number => 100 * normalCdf(lmsZ(x, lms));

/** Value at a percentile above 0 and below 100; null where there is none. Errors as `lmsValue`. */
export const lmsAtPercentile = (percentile: number, lms: Lms): number | null =>
  lmsValue(normalQuantile(percentile / 100), lms);
