import { type CentredFit, centredLeastSquares } from "./least-squares-columns.ts";
import { originScale } from "./origin-scale.ts";
import { checkPairs, checkSample, requireFinite, type Sample } from "./sample.ts";
import { sumOf } from "./sum.ts";

/**
 * A least-squares fit with several columns. With as many rows as coefficients (df 0) it goes through every row and says nothing
 * about its own error: standard errors, residual SD and r squared are null.
 */
export interface OlsMultiple {
  readonly kind: "fit";
  readonly n: number;
  /** Intercept first, then one for each column, or for each power of x from 1 on. */
  readonly coefficients: readonly number[];
  /** In the same order. */
  readonly standardErrors: readonly number[] | null;
  /** Degrees of freedom of the residuals, n - coefficients. */
  readonly df: number;
  readonly residualSd: number | null;
  /** Share of the variance of y that the fit takes up, 0 to 1; also null when all y are equal. */
  readonly rSquared: number | null;
  readonly residualSumOfSquares: number;
}

/** Fewer rows than coefficients, or a column that is constant or a sum of others. `n` is the number of rows. */
export interface NoFit {
  readonly kind: "no-fit";
  readonly n: number;
  readonly reason: "too-few" | "dependent-columns";
}

/**
 * Ordinary least squares with an intercept and any number of columns. Rows may stand in any order.
 *
 * @param columns at least one, each in its own unit and as long as y
 * @param y       values in one unit
 * @returns the fit, or why there is none
 * @throws {RangeError} no column; unequal lengths; NaN, an infinite value or one above 1e150 in size; a result too large for a double
 * @see checked against NIST StRD Longley (tests/reference/stats/ols-nist-multiple.json, certified)
 * @example olsMultiple([[0, 1, 0, 1], [0, 0, 1, 1]], [1, 3, 2, 4]) // coefficients 1, 2, 1
 */
export function olsMultiple(columns: readonly Sample[], y: Sample): OlsMultiple | NoFit {
  if (columns.length === 0) throw new RangeError("olsMultiple needs at least 1 column, got 0");
  for (const column of columns) checkPairs(column, y);
  return fitted(columns, y, fromCentred);
}

/**
 * Least-squares polynomial: coefficients of 1, x, x^2, … It is solved in x counted from the middle of its range and in halves of
 * it, where powers are far less alike, and written in x afterwards.
 *
 * @param x      positions in one unit
 * @param y      values at these positions, in one unit
 * @param degree highest power, a whole number from 1
 * @returns as olsMultiple; `dependent-columns` when x has no more different values than `degree`
 * @throws {RangeError} as olsMultiple, and a degree that is not a whole number from 1
 * @see checked against NIST StRD Pontius (tests/reference/stats/ols-nist-multiple.json, certified)
 * @example olsPolynomial([0, 1, 2, 3], [1, 2, 5, 10], 2) // coefficients 1, 0, 1
 */
export function olsPolynomial(x: Sample, y: Sample, degree: number): OlsMultiple | NoFit {
  if (!(Number.isInteger(degree) && degree >= 1))
    throw new RangeError(`a polynomial needs a degree from 1, got ${degree}`);
  checkPairs(x, y);
  const { middle, half } = middleAndHalf(x);
  const powers = Array.from({ length: degree }, (_, k) =>
    Float64Array.from({ length: x.length }, (_, i) => ((x[i]! - middle) / half) ** (k + 1)),
  );
  return fitted(powers, y, (fit) => inPlainPowers(fromCentred(fit), middle, half));
}

/** Weights on the centred level and slopes: one row for each coefficient. */
type Weights = readonly (readonly number[])[];

function fitted(columns: readonly Sample[], y: Sample, weightsOf: (fit: CentredFit) => Weights): OlsMultiple | NoFit {
  checkSample(y, "y");
  const n = y.length;
  const df = n - columns.length - 1;
  if (df < 0) return { kind: "no-fit", n, reason: "too-few" };
  const { origin, scale } = originScale(y);
  const fit = centredLeastSquares(
    columns,
    Float64Array.from(y, (value) => (value - origin) / scale),
  );
  if (fit === null) return { kind: "no-fit", n, reason: "dependent-columns" };
  const weights = weightsOf(fit);
  const values = [fit.level + origin / scale, ...fit.slopes];
  const sd = df === 0 ? null : Math.sqrt(fit.squaresLeft / df) * scale;
  const ofY = (value: number) => requireFinite(value * scale, "a coefficient");
  return {
    kind: "fit",
    n,
    coefficients: weights.map((row) => ofY(sumOf(row.length, (k) => row[k]! * values[k]!))),
    standardErrors:
      sd === null ? null : weights.map((row) => requireFinite(sd * spread(row, fit, n), "a standard error")),
    df,
    residualSd: sd,
    rSquared: df === 0 || fit.squaresY === 0 ? null : Math.max(0, 1 - fit.squaresLeft / fit.squaresY),
    residualSumOfSquares: df === 0 ? 0 : requireFinite(fit.squaresLeft * scale * scale, "a sum of squares"),
  };
}

/** Standard error of a weighted sum of level and slopes for residual SD 1. */
function spread([level = 0, ...slopes]: readonly number[], { rootCovariance }: CentredFit, n: number): number {
  const parts = slopes.map((_, column) => sumOf(slopes.length, (k) => slopes[k]! * rootCovariance.get(k, column)));
  return Math.hypot(level / Math.sqrt(n), ...parts);
}

/** The coefficients of the columns as they came: slopes over the columns' scales, and the intercept at 0. */
function fromCentred({ columns }: CentredFit): number[][] {
  const slopes = columns.map(({ scale }, column) => [0, ...columns.map((_, k) => (k === column ? 1 / scale : 0))]);
  return [[1, ...columns.map(({ mean, scale }) => -mean / scale)], ...slopes];
}

/** From powers of (x - middle) / half to powers of x, by the binomial theorem. */
function inPlainPowers(weights: Weights, middle: number, half: number): number[][] {
  const ratio = -middle / half;
  return weights.map((_, power) => {
    const shares = weights.map((_, k) => (k < power ? 0 : (binomial(k, power) * ratio ** (k - power)) / half ** power));
    return weights[0]!.map((_, column) => sumOf(shares.length, (k) => shares[k]! * weights[k]![column]!));
  });
}

function binomial(n: number, k: number): number {
  let product = 1;
  for (let i = 1; i <= k; i += 1) product = (product * (n - k + i)) / i;
  return product;
}

/** Half is above 0, and 1 when all x are equal. Without any x there is nothing to count from the middle. */
function middleAndHalf(x: Sample): { middle: number; half: number } {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < x.length; i += 1) {
    low = Math.min(low, x[i]!);
    high = Math.max(high, x[i]!);
  }
  if (low === high) return { middle: low, half: 1 };
  // Half of the smallest double is 0.
  return { middle: low / 2 + high / 2, half: high / 2 - low / 2 || high - low };
}
