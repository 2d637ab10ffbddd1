import { mean } from "./mean.ts";
import { checkSample, LARGEST_VALUE, type Sample } from "./sample.ts";
import { unitVector } from "./unit-vector.ts";

/** Directions in one. */
export interface CircularSummary {
  readonly n: number;
  /** Mean cosine and mean sine. */
  readonly cosine: number;
  readonly sine: number;
  /**
   * In the values' unit, 0 or more and below the period; null where the directions cancel. With a short resultant it means nothing: ask
   * `rayleigh` before it is shown.
   */
  readonly meanDirection: number | null;
  /** 0 (the directions cancel) to 1 (all alike). */
  readonly resultantLength: number;
  /** 1 - resultant length. */
  readonly variance: number;
  /** sqrt(-2 ln R), in radians and in the values' unit; null where R is 0. */
  readonly sdRadians: number | null;
  readonly sd: number | null;
}

/** A resultant shorter than this is rounding: the cosines and sines that cancel are good to about 1e-16. */
const ROUNDING = 1e-15;
/** Nearer to a whole turn than this part of it is the start: 12:00 must not be printed as 11:60. */
const WHOLE_TURN = 1e-12;

/**
 * Mean direction and spread of values that go round.
 *
 * @param values directions, over any number of turns and in any order
 * @param period one turn in their unit: 360 for degrees, 12 for the hours of a clock face
 * @returns null for no values
 * @throws {RangeError} a value is NaN, infinite or above 1e150 in size; the period is not between 1e-150 and 1e150
 * @see Fisher (1993), Statistical Analysis of Circular Data (from memory); checked against R's circular package (tests/reference/stats/circular.json)
 * @example circular([11.5, 0.5], 12)?.meanDirection // => 0: twelve o'clock
 */
export function circular(values: Sample, period: number): CircularSummary | null {
  checkSample(values, "values");
  if (!(period >= 1 / LARGEST_VALUE && period <= LARGEST_VALUE)) {
    throw new RangeError(`a period must be above 0 and of ordinary size, got ${period}`);
  }
  const turns = Array.from(values, (value) => (value % period) / period);
  const vectors = turns.map(unitVector);
  const cosine = mean(vectors.map((vector) => vector.cosine));
  const sine = mean(vectors.map((vector) => vector.sine));
  if (cosine === null || sine === null) return null;
  const length = Math.hypot(cosine, sine);
  const spread =
    length < ROUNDING ? { resultantLength: 0, variance: 1, sdRadians: null } : spreadAbout(turns, cosine, sine, length);
  const { sdRadians } = spread;
  return {
    n: values.length,
    cosine,
    sine,
    meanDirection: sdRadians === null ? null : direction(cosine, sine) * period,
    ...spread,
    sd: sdRadians === null ? null : (sdRadians / (2 * Math.PI)) * period,
  };
}

/** @returns turns, 0 or more and below 1 */
function direction(cosine: number, sine: number): number {
  const turn = Math.atan2(sine, cosine) / (2 * Math.PI);
  const positive = turn < 0 ? turn + 1 : turn;
  return positive > WHOLE_TURN && positive < 1 - WHOLE_TURN ? positive : 0;
}

function spreadAbout(turns: readonly number[], cosine: number, sine: number, length: number) {
  if (length < 0.5)
    return { resultantLength: length, variance: 1 - length, sdRadians: Math.sqrt(-2 * Math.log(length)) };
  // Near 1 the difference 1 - R is lost in rounding: like directions would have an SD of 1e-8. Summed up from the half angles it is not.
  const middle = Math.atan2(sine, cosine);
  const variance = 2 * mean(turns.map((turn) => Math.sin(Math.PI * turn - middle / 2) ** 2))!;
  return { resultantLength: 1 - variance, variance, sdRadians: Math.sqrt(-2 * Math.log1p(-variance)) };
}
