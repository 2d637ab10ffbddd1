import { fQuantile } from "./distributions.ts";
import { checkLevel, type Interval } from "./interval.ts";
import type { TrialsAnova } from "./reliability.ts";

/** Intraclass correlations of single measurements, without unit; null where all values are equal. */
export interface Icc {
  /** One-way random: trials are not told apart. */
  readonly oneWay: number | null;
  /** Two-way random, absolute agreement. */
  readonly agreement: number | null;
  readonly agreementInterval: Interval | null;
  /** Two-way mixed, consistency: a systematic change does not count. */
  readonly consistency: number | null;
  readonly consistencyInterval: Interval | null;
}

const ratio = (top: number, bottom: number): number | null => (bottom === 0 ? null : top / bottom);

/**
 * ICC(1,1), ICC(2,1) and ICC(3,1) with F intervals.
 *
 * @param level coverage, above 0 and below 1
 * @see Shrout & Fleiss (1979), Psychol Bull 86:420-428; McGraw & Wong (1996), Psychol Methods 1:30-46
 */
export function icc(anova: TrialsAnova, level: number): Icc {
  checkLevel(level);
  const { n, k, subjects, trials, error, within } = anova;
  const agreement = ratio(subjects - error, subjects + (k - 1) * error + (k * (trials - error)) / n);
  return {
    oneWay: ratio(subjects - within, subjects + (k - 1) * within),
    agreement,
    agreementInterval: agreement === null ? null : agreementInterval(anova, agreement, level),
    consistency: ratio(subjects - error, subjects + (k - 1) * error),
    consistencyInterval: consistencyInterval(anova, level),
  };
}

/** McGraw and Wong's interval of the agreement, its degrees of freedom by Satterthwaite; null where they are next to none. */
function agreementInterval({ n, k, subjects, trials, error }: TrialsAnova, r: number, level: number): Interval | null {
  if (error === 0 && trials === 0) return null;
  const a = (k * r) / (n * (1 - r));
  const b = 1 + (k * r * (n - 1)) / (n * (1 - r));
  if (!Number.isFinite(a)) return null;
  const df = (a * trials + b * error) ** 2 / ((a * trials) ** 2 / (k - 1) + (b * error) ** 2 / ((n - 1) * (k - 1)));
  const upper = (1 + level) / 2;
  const lowF = fQuantile(upper, n - 1, df);
  const highF = fQuantile(upper, df, n - 1);
  // So few degrees of freedom that the quantile leaves the range of a double: nothing is known of the lower end.
  if (!Number.isFinite(lowF)) return null;
  const rest = k * trials + (k * n - k - n) * error;
  return [
    (n * (subjects - lowF * error)) / (lowF * rest + n * subjects),
    (n * (highF * subjects - error)) / (rest + n * highF * subjects),
  ];
}

function consistencyInterval({ n, k, subjects, error }: TrialsAnova, level: number): Interval | null {
  if (error === 0) return null;
  const f = subjects / error;
  const df = (n - 1) * (k - 1);
  const upper = (1 + level) / 2;
  const low = f / fQuantile(upper, n - 1, df);
  const high = f * fQuantile(upper, df, n - 1);
  return [(low - 1) / (low + k - 1), (high - 1) / (high + k - 1)];
}
