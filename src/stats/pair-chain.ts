/**
 * Sum over all ways to pair two timed sequences in order, each row with at most one partner: a way's weight is the product of its
 * pairs' odds, rows without a partner weigh 1.
 *
 * Only pairs of a band are looked at, so time and memory are linear in rows for a band of bounded width. Every row's sums are kept
 * relative to that row's largest, which keeps them in the range of a double however long the sequences are.
 */
export interface Band {
  /** First and last column of each row's band, the last exclusive; both never fall from one row to the next. */
  readonly from: Int32Array;
  readonly to: Int32Array;
}

export interface PairChain {
  /** Log of the sum of all ways; 0 where no pair is possible. */
  readonly logTotal: number;
  /** Chance of each pair of the band, row after row, at `start[row] + column - from[row]`. */
  readonly chance: Float64Array;
  readonly start: Int32Array;
}

/** Sums over one direction: log weight of all ways that end in each pair of the band. */
interface Sweep {
  readonly ending: Float64Array;
  readonly logTotal: number;
}

/**
 * Chance of every pair of the band, over all ways to pair.
 *
 * @param band    columns that each row may be paired with
 * @param logOdds of a pair against two rows without a partner; minus infinity for one that cannot be
 */
export function pairChain(band: Band, columns: number, logOdds: (row: number, column: number) => number): PairChain {
  const rows = band.from.length;
  const start = new Int32Array(rows + 1);
  for (let row = 0; row < rows; row += 1) start[row + 1] = start[row]! + band.to[row]! - band.from[row]!;
  const odds = new Float64Array(start[rows]!);
  for (let row = 0; row < rows; row += 1) {
    for (let column = band.from[row]!; column < band.to[row]!; column += 1) {
      odds[start[row]! + column - band.from[row]!] = logOdds(row, column);
    }
  }
  const forward = sweep(band, odds, start, columns);
  const mirrored = mirror(band, columns);
  const backward = sweep(mirrored, reversed(odds), mirroredStart(start), columns);
  const chance = new Float64Array(odds.length);
  for (let at = 0; at < odds.length; at += 1) {
    // Each sweep holds the pair's own odds; together they hold them twice.
    const log = forward.ending[at]! + backward.ending[odds.length - 1 - at]! - odds[at]! - forward.logTotal;
    chance[at] = odds[at] === Number.NEGATIVE_INFINITY ? 0 : Math.min(1, Math.exp(log));
  }
  return { logTotal: forward.logTotal, chance, start };
}

function sweep({ from, to }: Band, odds: Float64Array, start: Int32Array, columns: number): Sweep {
  const ending = new Float64Array(odds.length);
  // sums[column] is the sum over all ways whose last pair lies in rows so far and columns up to it, times exp(-scale).
  const sums = new Float64Array(columns + 1);
  let scale = 0;
  let low = 0;
  let filled = 0;
  for (let row = 0; row < from.length; row += 1) {
    const [first, last] = [from[row]!, to[row]!];
    // Columns that no pair reached yet hold what the last reached one holds.
    for (; filled < last; filled += 1) sums[filled + 1] = sums[filled]!;
    let before = sums[first] ?? 0;
    let added = 0;
    let most = 0;
    for (let column = first; column < last; column += 1) {
      const at = start[row]! + column - first;
      const here = before + Math.exp(-scale);
      const log = odds[at]! === Number.NEGATIVE_INFINITY ? Number.NEGATIVE_INFINITY : odds[at]! + Math.log(here);
      ending[at] = log + scale;
      before = sums[column + 1]!;
      added += Math.exp(log);
      sums[column + 1] = before + added;
      most = Math.max(most, sums[column + 1]!);
    }
    low = Math.max(low, first);
    if (most > 1e100) {
      const shift = Math.log(most);
      for (let column = low; column <= filled; column += 1) sums[column] = sums[column]! / most;
      scale += shift;
    }
  }
  const total = (sums[filled] ?? 0) + Math.exp(-scale);
  return { ending, logTotal: Math.log(total) + scale };
}

/** The band seen from the other end: the last row first, the last column first. */
function mirror({ from, to }: Band, columns: number): Band {
  const rows = from.length;
  return {
    from: Int32Array.from({ length: rows }, (_, i) => columns - to[rows - 1 - i]!),
    to: Int32Array.from({ length: rows }, (_, i) => columns - from[rows - 1 - i]!),
  };
}

function mirroredStart(start: Int32Array): Int32Array {
  const last = start.length - 1;
  return Int32Array.from({ length: start.length }, (_, i) => start[last]! - start[last - i]!);
}

const reversed = (values: Float64Array): Float64Array => Float64Array.from(values).reverse();
