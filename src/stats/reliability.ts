import { normalQuantile } from "./distributions.ts";
import { checkLevel, type Interval } from "./interval.ts";
import { mean } from "./mean.ts";
import { sdInterval } from "./pooled-sd.ts";
import { checkSample } from "./sample.ts";
import { sumOf } from "./sum.ts";

/** Mean squares of subjects x trials, every subject with every trial. Squares of the values' unit. */
export interface TrialsAnova {
  /** Subjects, 2 or more. */
  readonly n: number;
  /** Trials of each, 2 or more. */
  readonly k: number;
  readonly subjects: number;
  readonly trials: number;
  /** Two-way: what neither subject nor trial explains. */
  readonly error: number;
  /** One-way: everything within subjects, a systematic change included. */
  readonly within: number;
}

/**
 * Two-way analysis of variance of repeated trials.
 *
 * @param trialsBySubject one row per subject, its trials in order, rows of one length
 * @returns null with fewer than two subjects or trials
 * @throws {RangeError} rows of unequal length; NaN, an infinite value or one above 1e150 in size
 */
export function trialsAnova(trialsBySubject: readonly (readonly number[])[]): TrialsAnova | null {
  const n = trialsBySubject.length;
  const k = trialsBySubject[0]?.length ?? 0;
  for (const row of trialsBySubject) {
    if (row.length !== k) throw new RangeError(`every subject needs ${k} trials, got ${row.length}`);
    checkSample(row, "trials");
  }
  if (n < 2 || k < 2) return null;
  const all = mean(trialsBySubject.flat())!;
  const ofSubject = trialsBySubject.map((row) => mean(row)!);
  const ofTrial = Array.from({ length: k }, (_, t) => mean(trialsBySubject.map((row) => row[t]!))!);
  const squares = (term: (s: number, t: number) => number) => sumOf(n, (s) => sumOf(k, (t) => term(s, t) ** 2));
  const between = k * sumOf(n, (s) => (ofSubject[s]! - all) ** 2);
  const overTrials = n * sumOf(k, (t) => (ofTrial[t]! - all) ** 2);
  const left = squares((s, t) => trialsBySubject[s]![t]! - ofSubject[s]! - ofTrial[t]! + all);
  const within = squares((s, t) => trialsBySubject[s]![t]! - ofSubject[s]!);
  return {
    n,
    k,
    subjects: between / (n - 1),
    trials: overTrials / (k - 1),
    error: left / ((n - 1) * (k - 1)),
    within: within / (n * (k - 1)),
  };
}

/**
 * Standard error of measurement from a spread between subjects and a reliability: SD sqrt(1 - ICC), in the values' unit.
 *
 * @throws {RangeError} an SD below 0, an ICC above 1
 * @see Hopkins (2000), Sports Med 30:1-15
 */
export function standardError(sd: number, icc: number): number {
  if (!(sd >= 0 && Number.isFinite(sd))) throw new RangeError(`an SD is 0 or more, got ${sd}`);
  if (!(icc <= 1 && Number.isFinite(icc))) throw new RangeError(`an ICC is at most 1, got ${icc}`);
  return sd * Math.sqrt(1 - icc);
}

/** Smallest difference of two measurements that is more than noise, 95 %: 1.96 sqrt(2) errors of one, in their unit. */
export const smallestDetectable = (error: number): number => 1.96 * Math.SQRT2 * error;

/** What two measurements of an unchanged subject differ by. In the values' unit. */
export interface TypicalError {
  /** sqrt of the error mean square: a systematic change from trial to trial is taken out. */
  readonly typicalError: number;
  readonly interval: Interval | null;
  readonly df: number;
  /** sqrt of the mean square within subjects: a systematic change is left in (Bland and Altman). */
  readonly withBias: number;
  /** 1.96 sqrt(2) typical errors, the smallest difference of two measurements that is more than noise. */
  readonly mdc95: number;
  /** The same with the exact normal quantile. */
  readonly mdc95Exact: number;
}

/**
 * Typical error of measurement from repeated trials.
 *
 * @param level coverage of the chi-square interval, above 0 and below 1
 * @see Hopkins (2000), Sports Med 30:1-15; Weir (2005), J Strength Cond Res 19:231-240; Bland & Altman (1986), Lancet i:307-310
 */
export function typicalError({ n, k, error, within }: TrialsAnova, level: number): TypicalError {
  checkLevel(level);
  const df = (n - 1) * (k - 1);
  const found = Math.sqrt(error);
  return {
    typicalError: found,
    interval: sdInterval(found, df, level),
    df,
    withBias: Math.sqrt(within),
    mdc95: smallestDetectable(found),
    mdc95Exact: normalQuantile(0.975) * Math.SQRT2 * found,
  };
}
