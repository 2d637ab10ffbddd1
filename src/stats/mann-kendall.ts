import { normalTwoSidedP } from "./distributions.ts";
import { discordantCdf, EXACT_UP_TO, varianceOfS } from "./kendall-null.ts";
import { checkSample, type Sample } from "./sample.ts";
import { tieGroups } from "./ties.ts";

/** Up to this many untied values the exact p is the recommended one. */
export const EXACT_P_UP_TO = 10;

/** A test for a steady rise or fall. No units, apart from the counts. */
export interface MannKendall {
  readonly n: number;
  /** Later-is-higher pairs minus later-is-lower pairs. */
  readonly s: number;
  /** Variance of S under no trend, ties allowed for; 0 when all values are equal. */
  readonly varS: number;
  /** Continuity-corrected: (S - 1) / sqrt(varS) for S > 0, (S + 1) / sqrt(varS) for S < 0, else 0. */
  readonly z: number;
  /** Two-sided normal p of `z`. */
  readonly p: number;
  readonly zNoContinuity: number;
  readonly pNoContinuity: number;
  /** Two-sided exact p; null with ties, or with more values than the exact distribution is worked out for. */
  readonly pExact: number | null;
  /** `pExact` for at most 10 untied values, `p` otherwise: the one to show. */
  readonly pRecommended: number;
  /** S divided by the number of pairs. */
  readonly tauA: number;
  /** S divided by the geometric mean of untied pairs; null when all values are equal. */
  readonly tauB: number | null;
  /** Sizes of the groups of equal values, rising. */
  readonly tieGroups: readonly number[];
}

/**
 * Mann-Kendall trend test.
 *
 * @param values in time order; only the order counts, not the gaps
 * @returns the test; null for fewer than 2 values (no pair to compare)
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size
 * @see Mann (1945), Econometrica 13:245-259; Kendall (1975), Rank Correlation Methods, 4th ed.
 * @example mannKendall([1, 2, 4, 3]) // s 4, tauA 2/3
 */
export function mannKendall(values: Sample): MannKendall | null {
  checkSample(values, "values");
  const n = values.length;
  if (n < 2) return null;
  const s = kendallS(values);
  const groups = tieGroups(values);
  const varS = varianceOfS(n, groups);
  const z = kendallZ(s, varS);
  const p = normalTwoSidedP(z);
  const zNoContinuity = varS === 0 ? 0 : s / Math.sqrt(varS);
  const pExact = groups.length === 0 && n <= EXACT_UP_TO ? exactP(n, s) : null;
  const pairs = (n * (n - 1)) / 2;
  const tiedPairs = groups.reduce((sum, size) => sum + (size * (size - 1)) / 2, 0);
  return {
    n,
    s,
    varS,
    z,
    p,
    zNoContinuity,
    pNoContinuity: normalTwoSidedP(zNoContinuity),
    pExact,
    pRecommended: pExact !== null && n <= EXACT_P_UP_TO ? pExact : p,
    tauA: s / pairs,
    tauB: tiedPairs === pairs ? null : s / Math.sqrt(pairs * (pairs - tiedPairs)),
    tieGroups: groups,
  };
}

/** The continuity-corrected Z of an S with variance `varS` >= 0; 0 when either is 0. */
export function kendallZ(s: number, varS: number): number {
  if (s === 0 || varS === 0) return 0;
  return (s - Math.sign(s)) / Math.sqrt(varS);
}

function kendallS(values: Sample): number {
  let s = 0;
  for (let i = 0; i < values.length; i += 1) {
    for (let j = i + 1; j < values.length; j += 1) s += Math.sign(values[j]! - values[i]!);
  }
  return s;
}

/** Chance of an S at least as far from 0 on either side. */
function exactP(n: number, s: number): number {
  const discordant = ((n * (n - 1)) / 2 - Math.abs(s)) / 2;
  return Math.min(1, 2 * discordantCdf(n)[discordant]!);
}
