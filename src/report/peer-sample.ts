import type { Reference } from "../schema/season.ts";
import { percentileRank } from "../stats/percentile-rank.ts";
import { quantile } from "../stats/quantile.ts";
import { type QuantileLine, quantileLine } from "../stats/quantile-regression.ts";
import { agesOf, holdsAge, middleAge } from "./peer-age.ts";
import { bandsFrom, ELSEWHERE, LEVEL, PEERS_FOR_BANDS, type PeersAtAge, placeAt } from "./peer-curve.ts";
import type { PeerGroup } from "./peer-match.ts";

/** Athletes, and years between the youngest and the oldest of them, from which bands move with age. */
const PEERS_BY_AGE = 30;
const YEARS_BY_AGE = 2;
const PERCENTILES = Array.from({ length: 99 }, (_, i) => i + 1);

/** Values of athletes whose ages are all known, far enough apart to tell how values move with age. */
export interface AgedSample {
  readonly ages: readonly number[];
  readonly values: readonly number[];
  readonly youngest: number;
  readonly oldest: number;
}

/** Values of a group, in the order of its rows. */
export const valuesOf = (rows: readonly Reference[]): number[] =>
  rows.flatMap((row) => (row.kind === "value" ? [row.value] : []));

/** The group as a sample along age; null where there are too few athletes, too few years or ages that are not known. */
export function agedSample({ rows }: PeerGroup): AgedSample | null {
  const ages = rows.flatMap((row) => middleAge(row) ?? []);
  const values = valuesOf(rows);
  if (ages.length < PEERS_BY_AGE || ages.length !== values.length) return null;
  let [youngest, oldest] = [ages[0]!, ages[0]!];
  for (const age of ages) [youngest, oldest] = [Math.min(youngest, age), Math.max(oldest, age)];
  return oldest - youngest >= YEARS_BY_AGE ? { ages, values, youngest, oldest } : null;
}

/** Fits of a group, made when they are first asked for: forty athletes ask for the same. */
const FITS = new WeakMap<PeerGroup, readonly QuantileLine[]>();

function linesOf(group: PeerGroup, { ages, values }: AgedSample): readonly QuantileLine[] {
  const known = FITS.get(group);
  if (known) return known;
  const lines = PERCENTILES.flatMap((percentile) => {
    const line = quantileLine(ages, values, percentile / 100);
    return line.kind === "line" ? [line] : [];
  });
  FITS.set(group, lines);
  return lines;
}

/**
 * Percentile of a value among rising values at the percentiles 1 to 99, straight between two of them; among equal ones the middle of
 * theirs. Beyond either end half a percent is left.
 */
function percentileAmong(rising: readonly number[], value: number): number {
  const atOrAbove = rising.findIndex((one) => one >= value);
  if (atOrAbove < 0) return 99.5;
  const high = rising[atOrAbove]!;
  if (high === value) return (atOrAbove + 1 + rising.lastIndexOf(value) + 1) / 2;
  if (atOrAbove === 0) return 0.5;
  const low = rising[atOrAbove - 1]!;
  return atOrAbove + (value - low) / (high - low);
}

/** Regression quantiles read at one age, put in order so that none cross. Never beyond the ages of the sample. */
function alongAge(group: PeerGroup, sample: AgedSample, age: number): PeersAtAge {
  if (age < sample.youngest || age > sample.oldest) return ELSEWHERE;
  const rising = linesOf(group, sample)
    .map(({ intercept, slope }) => intercept + slope * age)
    .sort((a, b) => a - b);
  const bands = bandsFrom((percentile) => rising[percentile - 1] ?? null);
  if (bands === null) return ELSEWHERE;
  const n = sample.values.length;
  return {
    kind: "curve",
    n,
    ages: agesOf(group.rows),
    bands,
    place: (value) => placeAt(percentileAmong(rising, value), n),
  };
}

/** The values as they are. */
function asTheyAre(rows: readonly Reference[]): PeersAtAge {
  const values = valuesOf(rows);
  const n = values.length;
  if (n < PEERS_FOR_BANDS) return n === 0 ? ELSEWHERE : { kind: "too-few", n };
  const bands = bandsFrom((percentile) => quantile(values, percentile / 100, 8));
  if (bands === null) return ELSEWHERE;
  return {
    kind: "curve",
    n,
    ages: agesOf(rows),
    bands,
    place: (value) => {
      const rank = percentileRank(values, value, LEVEL);
      return rank && { percentile: rank.mean, ci95: rank.wilsonMean };
    },
  };
}

/**
 * Athletes' own values at one age: along age where their ages tell how values move, else as they are; of a group without a level then
 * only those whose ages hold the athlete's.
 *
 * @param age years; null when not known
 */
export function sampleAt(group: PeerGroup, age: number | null): PeersAtAge {
  const sample = age === null ? null : agedSample(group);
  if (sample !== null && age !== null) return alongAge(group, sample, age);
  if (group.level !== null) return asTheyAre(group.rows);
  return age === null ? ELSEWHERE : asTheyAre(group.rows.filter((row) => holdsAge(row, age)));
}
