import { mean } from "./mean.ts";
import { type TrialsAnova, trialsAnova } from "./reliability.ts";
import { sd } from "./sd.ts";

/** Part of the spread between athletes that is taken as worthwhile where nobody knows better. */
export const SHARE_OF_SPREAD = 0.2;

/** Spread between athletes in three ways, in the values' unit, and the smallest worthwhile change each gives. */
export interface SmallestWorthwhile {
  /** Of the first trial: contains measurement error. */
  readonly firstTrial: { readonly sd: number; readonly change: number };
  /** Of the athletes' means. */
  readonly means: { readonly sd: number; readonly change: number };
  /** Error taken out; 0 where it is all there is. */
  readonly true: { readonly sd: number; readonly change: number };
}

const worth = (spread: number) => ({ sd: spread, change: SHARE_OF_SPREAD * spread });

/**
 * Smallest worthwhile change from repeated trials: 0.2 of the spread between athletes, a convention and no fact.
 *
 * @param trialsBySubject one row per subject, its trials in order, rows of one length
 * @returns null with fewer than two subjects or trials
 * @throws {RangeError} as `trialsAnova`
 * @see Hopkins (2004), Sportscience 8:1-7
 */
export function smallestWorthwhile(trialsBySubject: readonly (readonly number[])[]): SmallestWorthwhile | null {
  const anova: TrialsAnova | null = trialsAnova(trialsBySubject);
  if (anova === null) return null;
  const { subjects, error, k } = anova;
  return {
    firstTrial: worth(sd(trialsBySubject.map((row) => row[0]!))!),
    means: worth(sd(trialsBySubject.map((row) => mean(row)!))!),
    true: worth(Math.sqrt(Math.max(0, (subjects - error) / k))),
  };
}
