import { type BcaInterval, bcaInterval, percentileInterval, sharesAbout } from "./bootstrap-limits.ts";
import { drawnResamples, everyResample, type Resamples } from "./bootstrap-resamples.ts";
import { figureOf, rowsWithout, type Statistic } from "./bootstrap-statistic.ts";
import { checkLevel, type Interval } from "./interval.ts";
import { acceleration } from "./jackknife.ts";
import { sumOf } from "./sum.ts";

/** What resampling says of a figure. All in the figure's unit but the shares, the acceleration and the levels. */
export interface Bootstrap {
  /** The figure of the rows as they are. */
  readonly estimate: number;
  /** SD of the resamples; null where only one of those that were drawn has the figure. */
  readonly se: number | null;
  /** Mean of the resamples minus the estimate. */
  readonly meanShift: number;
  /** Shares of the resamples below the estimate and tied with it, rounding aside. */
  readonly shareBelow: number;
  readonly shareEqual: number;
  /** Share of all resamples in which the figure does not exist; they are left out of all else. */
  readonly shareWithout: number;
  readonly level: number;
  readonly percentile: Interval;
  /** Null with fewer than 2 rows, or where leaving one out changes nothing. */
  readonly acceleration: number | null;
  /** The interval to show, half of the ties with the estimate counted as below it; null where it does not exist. */
  readonly bca: BcaInterval | null;
  /** The same with no tie counted, as R's boot package has it. */
  readonly bcaStrict: BcaInterval | null;
}

/** A seeded run. */
export interface Draws {
  /** A whole number, 0 to 2^32 - 1: the same seed gives the same answer to the bit. */
  readonly seed: number;
  /** 1 or more; limits to print want 10,000 or more. */
  readonly resamples: number;
}

/**
 * Seeded bootstrap of a figure, with percentile and BCa intervals. With few rows (6, say) both are too short, whatever the method, and
 * of a single row they are that row.
 *
 * @param n         rows, 0 or more
 * @param statistic the figure for given rows; asked once for each resample and once for each row that is left out
 * @param draws     seed and number of resamples
 * @param level     coverage, above 0 and below 1
 * @returns null where the figure does not exist for the rows as they are, or for no resample
 * @throws {RangeError} n, seed or resamples that are no such whole numbers; a level outside 0..1; a figure that is no finite number
 * @see Efron (1987), J Am Stat Assoc 82:171-185; checked in tests/reference/stats/bootstrap.json
 * @example bootstrap(3, (rows) => mean(Array.from(rows, (i) => [60, 62, 67][i]!)), { seed: 1, resamples: 10_000 }, 0.95)
 */
export function bootstrap(n: number, statistic: Statistic, draws: Draws, level = 0.95): Bootstrap | null {
  return summary(n, statistic, level, () => drawnResamples(n, statistic, draws.seed, draws.resamples));
}

/**
 * The same from every resample there is, each with its chance: exact, for up to 10 rows.
 *
 * @param n rows, 0 to 10
 * @returns as `bootstrap`
 * @throws {RangeError} more than 10 rows; else as `bootstrap`
 */
export function completeBootstrap(n: number, statistic: Statistic, level = 0.95): Bootstrap | null {
  return summary(n, statistic, level, () => everyResample(n, statistic));
}

function summary(n: number, statistic: Statistic, level: number, resample: () => Resamples): Bootstrap | null {
  checkLevel(level);
  if (!(Number.isSafeInteger(n) && n >= 0)) throw new RangeError(`a bootstrap needs a number of rows, got ${n}`);
  const rows = rowsWithout(n);
  // Without rows nothing can be drawn, whatever the statistic would say of none.
  const estimate = n === 0 ? null : figureOf(statistic, rows);
  if (estimate === null) return null;
  const resamples = resample();
  const { figures, weights, total, freedom, without } = resamples;
  if (figures.length === 0) return null;
  const origin = figures[0]!;
  const rise = sumOf(figures.length, (i) => weights[i]! * (figures[i]! - origin)) / total;
  const squares = sumOf(figures.length, (i) => weights[i]! * (figures[i]! - origin - rise) ** 2);
  const shares = sharesAbout(resamples, estimate);
  const accelerated = acceleration(n, statistic);
  return {
    estimate,
    se: freedom > 0 ? Math.sqrt(squares / freedom) : null,
    meanShift: origin - estimate + rise,
    shareBelow: shares.below,
    shareEqual: shares.equal,
    shareWithout: without / (total + without),
    level,
    percentile: percentileInterval(resamples, level),
    acceleration: accelerated,
    bca: bcaInterval(resamples, shares.below + shares.equal / 2, accelerated, level),
    bcaStrict: bcaInterval(resamples, shares.below, accelerated, level),
  };
}
