import { uniformInt } from "pure-rand/distribution/uniformInt";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { skipN } from "pure-rand/utils/skipN";
import { figureOf, type Statistic } from "./bootstrap-statistic.ts";

/** What a figure came to in the resamples. */
export interface Resamples {
  /** In rising order; resamples without the figure are left out. */
  readonly figures: Float64Array;
  /** How many resamples, or what part of all, each figure stands for; above 0. */
  readonly weights: Float64Array;
  /** Sum of the weights. */
  readonly total: number;
  /** Divides the squared distances from the mean for their variance: one fewer than were drawn, or all of a complete distribution. */
  readonly freedom: number;
  /** Weight of the resamples without the figure. */
  readonly without: number;
}

/** Seeds are whole numbers below this: the generator takes 32 bits, and two seeds must not mean the same. */
export const SEEDS = 2 ** 32;

/** Numbers thrown away first: the generator's state is mostly zeros and ones after seeding, and its first numbers are no chance at all. */
const WARM_UP = 64;

/** Up to this many rows every resample can be looked at: 92,378 of them for 10 rows. */
export const COMPLETE_UP_TO = 10;

/**
 * Draws rows with replacement, as many as there are.
 *
 * @param n     rows, 1 or more
 * @param seed  a whole number, 0 or more and below SEEDS; the same one gives the same figures on every machine
 * @param draws resamples, 1 or more
 * @throws {RangeError} seed or draws are no such numbers, or the statistic gives no finite number
 */
export function drawnResamples(n: number, statistic: Statistic, seed: number, draws: number): Resamples {
  if (!(Number.isInteger(seed) && seed >= 0 && seed < SEEDS)) {
    throw new RangeError(`a seed is a whole number from 0 to ${SEEDS - 1}, got ${seed}`);
  }
  if (!(Number.isSafeInteger(draws) && draws >= 1)) throw new RangeError(`resamples are counted from 1, got ${draws}`);
  const random = xoroshiro128plus(seed);
  skipN(random, WARM_UP);
  const rows = new Int32Array(n);
  const figures: number[] = [];
  for (let draw = 0; draw < draws; draw += 1) {
    for (let i = 0; i < n; i += 1) rows[i] = uniformInt(random, 0, n - 1);
    const figure = figureOf(statistic, rows);
    if (figure !== null) figures.push(figure);
  }
  return {
    figures: Float64Array.from(figures).sort(),
    weights: new Float64Array(figures.length).fill(1),
    total: figures.length,
    freedom: figures.length - 1,
    without: draws - figures.length,
  };
}

/**
 * Every resample there is, each with its chance: no random numbers and so no error from them.
 *
 * @param n rows, 1 to COMPLETE_UP_TO
 * @throws {RangeError} n is not in that range, or the statistic gives no finite number
 */
export function everyResample(n: number, statistic: Statistic): Resamples {
  if (!(n >= 1 && n <= COMPLETE_UP_TO))
    throw new RangeError(`every resample is for 1 to ${COMPLETE_UP_TO} rows, got ${n}`);
  const rows = new Int32Array(n);
  const found: { figure: number; chance: number }[] = [];
  let [total, without] = [0, 0];
  // Resamples that differ only in order are one: rows stand in rising order, and the chance counts the n! / (times! ...) orders.
  const fill = (at: number, times: number, chance: number): void => {
    if (at === n) {
      const figure = figureOf(statistic, rows);
      if (figure === null) without += chance;
      else {
        found.push({ figure, chance });
        total += chance;
      }
      return;
    }
    const last = at === 0 ? 0 : rows[at - 1]!;
    for (let row = last; row < n; row += 1) {
      rows[at] = row;
      const again = at > 0 && row === last ? times + 1 : 1;
      fill(at + 1, again, (chance * (at + 1)) / (n * again));
    }
  };
  fill(0, 0, 1);
  found.sort((a, b) => a.figure - b.figure);
  return {
    figures: Float64Array.from(found, ({ figure }) => figure),
    weights: Float64Array.from(found, ({ chance }) => chance),
    total,
    freedom: total,
    without,
  };
}
