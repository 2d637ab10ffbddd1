import { mean } from "./mean.ts";
import { checkSample, type Sample } from "./sample.ts";

/** Directions as one. */
export interface CircularSummary {
  readonly n: number;
  /** Mean cosine and sine. */
  readonly cosine: number;
  readonly sine: number;
  /** In the values' unit, 0 or more and below the period; meaningless where the resultant is near 0. */
  readonly meanDirection: number;
  /** 0 (all round) to 1 (all alike). */
  readonly resultantLength: number;
  /** 1 - resultant length. */
  readonly variance: number;
  /** sqrt(-2 ln R), in radians and in the values' unit; null where R is 0. */
  readonly sdRadians: number | null;
  readonly sd: number | null;
}

/** Nearer to a whole turn than this part of it is no turn at all: rounding must not print 11:60 for 12:00. */
const WHOLE_TURN = 1e-12;

/**
 * Mean direction and spread of values that go round.
 *
 * @param values directions, any number of turns
 * @param period one turn in their unit: 360 degrees, 12 hours of a clock face
 * @returns null without values
 * @throws {RangeError} NaN, an infinite value or one above 1e150 in size; a period that is not above 0
 * @see Fisher (1993), Statistical Analysis of Circular Data (from memory); checked against R's circular package
 * @example circular([11.5, 0.5], 12)?.meanDirection // => 0: twelve o'clock
 */
export function circular(values: Sample, period: number): CircularSummary | null {
  checkSample(values, "values");
  if (!(period > 0 && Number.isFinite(period))) throw new RangeError(`a period must be above 0, got ${period}`);
  const angles = Float64Array.from(values, (value) => (2 * Math.PI * (value % period)) / period);
  const cosine = mean(angles.map(Math.cos));
  const sine = mean(angles.map(Math.sin));
  if (cosine === null || sine === null) return null;
  const turn = Math.atan2(sine, cosine) / (2 * Math.PI);
  const positive = turn < 0 ? turn + 1 : turn;
  // The mean of unit vectors cannot be longer than one; rounding can make it so.
  const resultantLength = Math.min(1, Math.hypot(cosine, sine));
  const sdRadians = resultantLength === 0 ? null : Math.sqrt(-2 * Math.log(resultantLength));
  return {
    n: values.length,
    cosine,
    sine,
    meanDirection: positive >= 1 - WHOLE_TURN ? 0 : positive * period,
    resultantLength,
    variance: 1 - resultantLength,
    sdRadians,
    sd: sdRadians === null ? null : (sdRadians * period) / (2 * Math.PI),
  };
}

/** Rayleigh's test of no direction at all. */
export interface RayleighTest {
  /** n R^2. */
  readonly z: number;
  /** Zar's approximation, good from few values on. */
  readonly pZar: number;
  /** Mardia's series below 50 values, exp(-z) from there on. */
  readonly pMardia: number;
}

/**
 * @returns p values 0 to 1: small where the directions are not spread all round
 * @see Zar (2010), Biostatistical Analysis, 27.1; Mardia & Jupp (2000), Directional Statistics, 6.3.1 (both from memory)
 */
export function rayleigh({ n, resultantLength: r }: CircularSummary): RayleighTest {
  const z = n * r * r;
  const long = n * r;
  const pZar = Math.exp(Math.sqrt(1 + 4 * n + 4 * (n * n - long * long)) - (1 + 2 * n));
  const series = 1 + (2 * z - z * z) / (4 * n) - (24 * z - 132 * z ** 2 + 76 * z ** 3 - 9 * z ** 4) / (288 * n * n);
  const within = (p: number) => Math.min(1, Math.max(0, p));
  return { z, pZar: within(pZar), pMardia: within(n < 50 ? Math.exp(-z) * series : Math.exp(-z)) };
}
