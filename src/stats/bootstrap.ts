import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { normalCdf, normalQuantile } from "./distributions.ts";
import { checkLevel, type Interval } from "./interval.ts";
import { sumOf } from "./sum.ts";

/** A figure computed from rows by their indices, the same one several times if it was drawn so; null where it does not exist. */
export type Statistic = (rows: Int32Array) => number | null;

/** What resampling says of a figure. In its unit. */
export interface Bootstrap {
  readonly estimate: number;
  /** Of the resamples. */
  readonly se: number;
  readonly percentile: Interval;
  /** Bias-corrected and accelerated, ties with the estimate counted half; null where all resamples lie on one side or nothing varies. */
  readonly bca: Interval | null;
  /** The same with ties not counted, as R's boot package has it. */
  readonly bcaStrict: Interval | null;
  readonly acceleration: number;
  /** Resamples in which the figure exists. */
  readonly resamples: number;
}

export interface BootstrapOptions {
  /** A whole number: the same seed gives the same answer to the bit. */
  readonly seed: number;
  /** 1 or more; 10,000 or more for limits to print. */
  readonly resamples: number;
  /** Above 0 and below 1. */
  readonly level: number;
}

/** Relative size below which a resample ties with the estimate: sums in another order differ by so little. */
const TIE = 1e-9;

/** Resampled figures in rising order; draws for which there is none are left out. */
function resampled(n: number, statistic: Statistic, { seed, resamples }: BootstrapOptions): Float64Array {
  const random = xoroshiro128plus(seed);
  const rows = new Int32Array(n);
  const figures: number[] = [];
  for (let draw = 0; draw < resamples; draw += 1) {
    for (let i = 0; i < n; i += 1) rows[i] = uniformInt(random, 0, n - 1);
    const figure = statistic(rows);
    if (figure !== null) figures.push(figure);
  }
  return Float64Array.from(figures).sort();
}

/** Smallest figure whose share reaches a level. */
const atLevel = (sorted: Float64Array, level: number): number =>
  sorted[Math.min(sorted.length, Math.max(1, Math.ceil(sorted.length * level - 1e-9))) - 1]!;

/** sum d^3 / (6 (sum d^2)^1.5) over the figures without one row each; 0 where they are alike. */
function accelerationOf(n: number, statistic: Statistic): number {
  const without = Array.from({ length: n }, (_, left) =>
    statistic(Int32Array.from({ length: n - 1 }, (__, i) => (i < left ? i : i + 1))),
  ).filter((one) => one !== null);
  const centre = sumOf(without.length, (i) => without[i]!) / Math.max(1, without.length);
  const squares = sumOf(without.length, (i) => (centre - without[i]!) ** 2);
  const cubes = sumOf(without.length, (i) => (centre - without[i]!) ** 3);
  return squares === 0 ? 0 : cubes / (6 * squares ** 1.5);
}

function bcaInterval(sorted: Float64Array, below: number, acceleration: number, level: number): Interval | null {
  if (below <= 0 || below >= 1) return null;
  const bias = normalQuantile(below);
  const limit = (chance: number): number | null => {
    const shifted = bias + normalQuantile(chance);
    const spread = 1 - acceleration * shifted;
    return spread <= 0 ? null : atLevel(sorted, normalCdf(bias + shifted / spread));
  };
  const [low, high] = [limit((1 - level) / 2), limit((1 + level) / 2)];
  return low === null || high === null ? null : [low, high];
}

/**
 * Seeded bootstrap of a figure: percentile and BCa intervals.
 *
 * With few rows both are too short, whatever the method (tests/reference/stats/bootstrap.json).
 *
 * @param n         rows, 1 or more
 * @param statistic computed from the indices 0 .. n - 1 that were drawn
 * @returns null where the figure does not exist for the rows as they are, or for no resample
 * @throws {RangeError} n, seed or resamples that are no such whole numbers; a level outside 0 to 1
 * @see Efron (1987), J Am Stat Assoc 82:171-185
 */
export function bootstrap(n: number, statistic: Statistic, options: BootstrapOptions): Bootstrap | null {
  const { seed, resamples, level } = options;
  checkLevel(level);
  if (!(Number.isInteger(n) && n >= 1)) throw new RangeError(`a bootstrap needs rows, got ${n}`);
  if (!Number.isInteger(seed)) throw new RangeError(`a seed is a whole number, got ${seed}`);
  if (!(Number.isInteger(resamples) && resamples >= 1))
    throw new RangeError(`resamples are 1, 2 ..., got ${resamples}`);
  const estimate = statistic(Int32Array.from({ length: n }, (_, i) => i));
  if (estimate === null) return null;
  const sorted = resampled(n, statistic, options);
  const count = sorted.length;
  if (count === 0) return null;
  const near = TIE * Math.max(Math.abs(estimate), Math.abs(sorted[0]!), Math.abs(sorted[count - 1]!));
  const equal = sorted.filter((one) => Math.abs(one - estimate) <= near).length / count;
  const below = sorted.filter((one) => one < estimate - near).length / count;
  const centre = sumOf(count, (i) => sorted[i]!) / count;
  const acceleration = accelerationOf(n, statistic);
  return {
    estimate,
    se: count < 2 ? 0 : Math.sqrt(sumOf(count, (i) => (sorted[i]! - centre) ** 2) / (count - 1)),
    percentile: [atLevel(sorted, (1 - level) / 2), atLevel(sorted, (1 + level) / 2)],
    bca: bcaInterval(sorted, below + equal / 2, acceleration, level),
    bcaStrict: bcaInterval(sorted, below, acceleration, level),
    acceleration,
    resamples: count,
  };
}
