import { type Interval, tInterval } from "./interval.ts";
import { mean } from "./mean.ts";
import type { Sample } from "./sample.ts";
import { satterthwaite } from "./satterthwaite.ts";
import { sd } from "./sd.ts";
import { sumOf } from "./sum.ts";

/** How far one way of measuring reads above another, in the unit of the values. */
export interface Offset {
  /** Second minus first. */
  readonly offset: number;
  /** 0 when no value differs from its neighbours. */
  readonly se: number;
  /** Degrees of freedom, above 0; seldom whole with two samples. */
  readonly df: number;
  readonly ci95: Interval;
}

/**
 * Offset from things measured by both: the mean difference with Student's t interval.
 *
 * @param differences second minus first for each thing measured, in one unit, in any order
 * @returns the offset; null for fewer than two differences
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size
 * @see Student (1908), Biometrika 6:1-25; checked against SciPy's ttest_rel (tests/stats/offset.test.ts)
 */
export function pairedOffset(differences: Sample): Offset | null {
  const offset = mean(differences);
  const spread = sd(differences);
  if (offset === null || spread === null) return null;
  return withInterval(offset, spread / Math.sqrt(differences.length), differences.length - 1);
}

/** What both ways of measuring read under the same circumstances (one hitter, one condition, one day), not swing by swing. */
export interface TwoSamples {
  readonly first: Sample;
  readonly second: Sample;
}

/**
 * Offset from things of which some were measured one way and some the other: the difference of means inside each cell, averaged
 * over the cells with weights n1 n2 / (n1 + n2), so that hitters who differ never weigh as a difference between devices. The
 * weights rest on the counts alone. Spread may differ; degrees of freedom by Satterthwaite. One cell gives Welch's interval.
 *
 * @param cells cells with fewer than two values on a side say nothing of their own spread and are left out
 * @returns the offset; null when no cell is left
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size
 * @see Satterthwaite (1946), Biometrics Bull 2:110-114
 */
export function twoSampleOffset(cells: readonly TwoSamples[]): Offset | null {
  const parts = cells.flatMap(({ first, second }) => {
    const [a, b, sdA, sdB] = [mean(first), mean(second), sd(first), sd(second)];
    if (a === null || b === null || sdA === null || sdB === null) return [];
    const [n, m] = [first.length, second.length];
    return [{ difference: b - a, weight: (n * m) / (n + m), varA: sdA ** 2 / n, varB: sdB ** 2 / m, n, m }];
  });
  if (parts.length === 0) return null;
  const total = sumOf(parts.length, (i) => parts[i]!.weight);
  const offset = sumOf(parts.length, (i) => (parts[i]!.weight / total) * parts[i]!.difference);
  const terms = parts.flatMap(({ weight, varA, varB, n, m }) => [
    { variance: (weight / total) ** 2 * varA, df: n - 1 },
    { variance: (weight / total) ** 2 * varB, df: m - 1 },
  ]);
  const { variance, df } = satterthwaite(terms);
  return withInterval(offset, Math.sqrt(variance), df);
}

function withInterval(offset: number, se: number, df: number): Offset {
  return { offset, se, df, ci95: tInterval(offset, se, df, 0.95) ?? [offset, offset] };
}
