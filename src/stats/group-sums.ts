import { type OriginScale, originScale } from "./origin-scale.ts";
import type { Sample } from "./sample.ts";

/**
 * All that a random-intercept model needs of its rows: a handful of sums a group. Everything is scaled,
 * `(value - origin) / scale` of `ofX` and `ofY`.
 */
export interface GroupSums {
  readonly rows: number;
  readonly groups: number;
  /** Rows of each group, 1 or more. */
  readonly sizes: Float64Array;
  readonly smallest: number;
  readonly largest: number;
  readonly meansX: Float64Array;
  readonly meansY: Float64Array;
  /** Is there an x at all? Without it every x sum is 0. */
  readonly hasX: boolean;
  /** Does x differ between any two rows? */
  readonly xDiffers: boolean;
  /** Sum of squared deviations of x from its group's mean; 0 when x is constant in every group. */
  readonly withinX: number;
  /** Least-squares slope inside groups; 0 when x is constant in every group. */
  readonly withinSlope: number;
  /** Squares that this slope leaves inside groups; 0 also when nothing but rounding is left. */
  readonly withinSquares: number;
  readonly ofX: OriginScale;
  readonly ofY: OriginScale;
}

/**
 * @param y       checked values
 * @param x       as many checked values, or null for a model without a covariate
 * @param groupOf the group of each row, 0 to groups - 1; every group has at least one row
 * @param groups  number of groups
 */
export function groupSums(y: Sample, x: Sample | null, groupOf: ArrayLike<number>, groups: number): GroupSums {
  const rows = y.length;
  const ofY = originScale(y);
  const ofX = originScale(x ?? []);
  const sizes = new Float64Array(groups);
  for (let i = 0; i < rows; i += 1) sizes[groupOf[i]!]! += 1;
  const scaledY = scaledValues(y, ofY);
  const scaledX = x === null ? new Float64Array(rows) : scaledValues(x, ofX);
  const meansY = groupMeans(scaledY, groupOf, sizes);
  const meansX = groupMeans(scaledX, groupOf, sizes);

  const spreadX = productsWithin(scaledX, meansX, scaledX, meansX, groupOf);
  const withinX = spreadX <= rows * ofX.rounding ** 2 ? 0 : spreadX;
  const withinSlope = withinX === 0 ? 0 : productsWithin(scaledX, meansX, scaledY, meansY, groupOf) / withinX;
  let left = 0;
  for (let i = 0; i < rows; i += 1) {
    const group = groupOf[i]!;
    left += (scaledY[i]! - meansY[group]! - withinSlope * (scaledX[i]! - meansX[group]!)) ** 2;
  }
  // As many parameters as rows leave nothing: what is computed then is rounding.
  const exact = rows <= groups + (withinX === 0 ? 0 : 1) || left <= rows * ofY.rounding ** 2;
  return {
    rows,
    groups,
    sizes,
    smallest: sizes.reduce((least, size) => Math.min(least, size), rows),
    largest: sizes.reduce((most, size) => Math.max(most, size), 0),
    meansX,
    meansY,
    hasX: x !== null,
    xDiffers: scaledX.some((value) => value !== 0),
    withinX,
    withinSlope,
    withinSquares: exact ? 0 : left,
    ofX,
    ofY,
  };
}

function scaledValues(values: Sample, { origin, scale }: OriginScale): Float64Array {
  const scaled = new Float64Array(values.length);
  for (let i = 0; i < scaled.length; i += 1) scaled[i] = (values[i]! - origin) / scale;
  return scaled;
}

/** Counted from each group's first value, so that equal values give exactly that value. */
function groupMeans(values: Float64Array, groupOf: ArrayLike<number>, sizes: Float64Array): Float64Array {
  const first = new Float64Array(sizes.length).fill(Number.NaN);
  const sums = new Float64Array(sizes.length);
  for (let i = 0; i < values.length; i += 1) {
    const group = groupOf[i]!;
    if (Number.isNaN(first[group]!)) first[group] = values[i]!;
    sums[group]! += values[i]! - first[group]!;
  }
  for (let g = 0; g < sizes.length; g += 1) sums[g] = first[g]! + sums[g]! / sizes[g]!;
  return sums;
}

function productsWithin(
  a: Float64Array,
  meansA: Float64Array,
  b: Float64Array,
  meansB: Float64Array,
  groupOf: ArrayLike<number>,
): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) {
    const group = groupOf[i]!;
    sum += (a[i]! - meansA[group]!) * (b[i]! - meansB[group]!);
  }
  return sum;
}
