import type { Resamples } from "./bootstrap-resamples.ts";
import { normalCdf, normalQuantile } from "./distributions.ts";
import type { Interval } from "./interval.ts";

/** How the resamples lie about the figure of the rows as they are; shares of the resamples that have the figure. */
export interface Shares {
  readonly below: number;
  readonly equal: number;
}

/** A bias-corrected and accelerated interval, and where its limits were read. */
export interface BcaInterval {
  /** z0: normal quantile of the share below the figure. */
  readonly bias: number;
  /** Shares of the resamples at which the limits were read, in place of (1 - level) / 2 and (1 + level) / 2. */
  readonly levels: readonly [lower: number, upper: number];
  readonly interval: Interval;
}

/** Part of the resamples' range, and of their size in units of rounding, within which two figures count as equal: sums in another order differ. */
const TIE_OF_RANGE = 1e-10;
const TIE_IN_ROUNDINGS = 8;

/** @param resamples with 1 figure or more */
export function sharesAbout({ figures, weights, total }: Resamples, estimate: number): Shares {
  const smallest = figures[0]!;
  const largest = figures[figures.length - 1]!;
  const size = Math.max(Math.abs(smallest), Math.abs(largest), Math.abs(estimate));
  const near = TIE_OF_RANGE * (largest - smallest) + TIE_IN_ROUNDINGS * Number.EPSILON * size;
  let [below, equal] = [0, 0];
  figures.forEach((figure, i) => {
    if (figure < estimate - near) below += weights[i]!;
    else if (figure <= estimate + near) equal += weights[i]!;
  });
  return { below: below / total, equal: equal / total };
}

/** Smallest figures whose cumulated shares reach (1 - level) / 2 and (1 + level) / 2. */
export function percentileInterval(resamples: Resamples, level: number): Interval {
  return [figureAt(resamples, (1 - level) / 2), figureAt(resamples, (1 + level) / 2)];
}

/**
 * @param share        of the resamples that counts as below the figure
 * @param acceleration null where there is none
 * @returns null without an acceleration, with all resamples on one side, or so far from symmetric that a limit is beyond reach
 * @see Efron (1987), J Am Stat Assoc 82:171-185
 */
export function bcaInterval(
  resamples: Resamples,
  share: number,
  acceleration: number | null,
  level: number,
): BcaInterval | null {
  if (acceleration === null || !(share > 0 && share < 1)) return null;
  const bias = normalQuantile(share);
  const shifted = (chance: number): number | null => {
    const z = bias + normalQuantile(chance);
    // At 0 the level has run off to one end; past it the formula would come back from the other.
    const room = 1 - acceleration * z;
    return room > 0 ? normalCdf(bias + z / room) : null;
  };
  const lower = shifted((1 - level) / 2);
  const upper = shifted((1 + level) / 2);
  if (lower === null || upper === null) return null;
  return { bias, levels: [lower, upper], interval: [figureAt(resamples, lower), figureAt(resamples, upper)] };
}

function figureAt({ figures, weights, total }: Resamples, share: number): number {
  // A share that is reached but for the rounding of sums counts as reached.
  const wanted = share * total * (1 - 1e-12);
  let sum = 0;
  const at = weights.findIndex((weight) => {
    sum += weight;
    return sum >= wanted;
  });
  return at < 0 ? figures[figures.length - 1]! : figures[at]!;
}
