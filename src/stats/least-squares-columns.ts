import { Matrix, QrDecomposition, solve } from "ml-matrix";
import { mean } from "./mean.ts";
import { originScale } from "./origin-scale.ts";
import type { Sample } from "./sample.ts";
import { sumOf } from "./sum.ts";

/** A column as deviations from its mean, divided by their length. */
interface UnitColumn {
  readonly mean: number;
  /** What the deviations were divided with; above 0. */
  readonly scale: number;
  readonly values: Float64Array;
  /** Length that rounding of the values alone can give to a column that depends on the others. */
  readonly rounding: number;
}

/**
 * A least-squares fit on centred columns of length 1, where nothing cancels. Coefficients of any other form of the same model are
 * weighted sums of these: `level` and `slopes`.
 */
export interface CentredFit {
  readonly columns: readonly UnitColumn[];
  /** Mean of y. Its variance is 1 / n times the residual variance, and it is uncorrelated with the slopes. */
  readonly level: number;
  /** One for each column, in the unit of y. */
  readonly slopes: readonly number[];
  /** Inverse of the triangle R: the slopes' covariance is rootCovariance rootCovariance' times the residual variance. */
  readonly rootCovariance: Matrix;
  readonly squaresLeft: number;
  readonly squaresY: number;
}

/**
 * @param columns at least one; checked values, each column as long as y
 * @param y       checked values, more than there are columns, of ordinary size (their squares are summed)
 * @returns null when a column is constant or depends on the others, as far as the rounding of the values lets see
 */
export function centredLeastSquares(columns: readonly Sample[], y: Sample): CentredFit | null {
  const n = y.length;
  const unit = columns.map(unitColumn);
  const found = unit.filter((column) => column !== null);
  const level = mean(y);
  if (found.length < unit.length || level === null) return null;
  const design = new Matrix(found.map(({ values }) => values)).transpose();
  const fromMean = Matrix.columnVector(Array.from({ length: n }, (_, i) => y[i]! - level));
  const qr = new QrDecomposition(design);
  const triangle = qr.upperTriangularMatrix;
  const rounding = Math.max(...found.map((column) => column.rounding));
  if (triangle.diagonal().some((length) => Math.abs(length) <= rounding)) return null;

  const slopes = qr.solve(fromMean).to1DArray();
  const left = Matrix.sub(fromMean, design.mmul(Matrix.columnVector(slopes)));
  const squares = (column: Matrix) => sumOf(n, (i) => column.get(i, 0) ** 2);
  return {
    columns: found,
    level,
    slopes,
    rootCovariance: solve(triangle, Matrix.eye(found.length)),
    squaresLeft: squares(left),
    squaresY: squares(fromMean),
  };
}

/** Null for a column whose values do not differ. */
function unitColumn(values: Sample): UnitColumn | null {
  const { scale: reach, rounding } = originScale(values);
  const n = values.length;
  const centre = mean(values) ?? 0;
  const deviations = Float64Array.from({ length: n }, (_, i) => (values[i]! - centre) / reach);
  const length = Math.sqrt(sumOf(n, (i) => deviations[i]! ** 2));
  if (length === 0) return null;
  return {
    mean: centre,
    scale: reach * length,
    values: deviations.map((value) => value / length),
    rounding: 2 * n * Math.max(4 * Number.EPSILON, rounding / length),
  };
}
