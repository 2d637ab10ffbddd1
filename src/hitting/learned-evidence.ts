import { type BallRow, type BatRow, mostOf, SENSOR_ERROR, shareOfRows } from "./pairing-evidence.ts";

/** Two rows that a first look took for one swing. */
export interface LikelyPair {
  readonly a: number;
  readonly b: number;
  /** 0 to 1. */
  readonly confidence: number;
}

/** How smooth what is learned is: SD of the kernel, and the rows that what was known before counts for. */
const SMOOTH = { bat: 2.5, exit: 3, share: 0.02 };
const BEFORE = { paired: 1, alone: 2 };
/** Where bat speeds and exit velocities may lie, mph. */
const FASTEST = 150;
/** Cells of a learned density for each SD of its kernel. */
const FINENESS = 4;
/** Share of the likely pairs above which the most possible was stated too low. */
const TOP = 0.95;

type Density = (value: number) => number;

/**
 * What a session itself tells of its rows, as evidence for each possible pair: how fast bat and ball were in likely pairs, how much of the most
 * possible the balls had, and how fast those rows were that found no partner (waggles, practice swings, tossed balls). No rule says beforehand
 * how fast a waggle is; the rows without a partner do.
 *
 * @param bats  rows of the bat's sensor
 * @param balls rows of the ball's screen
 * @param pairs what a first look, by time alone or with physics, took for one swing
 * @returns log of how much likelier two rows' readings are of one swing than of two; minus infinity where they cannot be, 0 for what was not read
 */
export function learnedEvidence(
  bats: readonly BatRow[],
  balls: readonly BallRow[],
  pairs: readonly LikelyPair[],
): (a: number, b: number) => number {
  const chanceBat = new Float64Array(bats.length);
  const chanceBall = new Float64Array(balls.length);
  for (const { a, b, confidence } of pairs) {
    chanceBat[a] = confidence;
    chanceBall[b] = confidence;
  }
  const bat = twoDensities(
    bats.map(({ speed }) => speed),
    chanceBat,
    SMOOTH.bat,
  );
  const exit = twoDensities(
    balls.map((ball) => ball.exit),
    chanceBall,
    SMOOTH.exit,
  );
  const shares = pairs.map(({ a, b }) => shareOfRows(bats[a]!, balls[b]!));
  const most = mostShare(shares);
  const anyShare: Density = () => 1 / most;
  const share = density(
    shares,
    pairs.map(({ confidence }) => confidence),
    most,
    SMOOTH.share,
    { of: anyShare, rows: BEFORE.paired },
  );
  return (a, b) => {
    const [swing, ball] = [bats[a]!, balls[b]!];
    if (swing.noBall || ball.noBat) return Number.NEGATIVE_INFINITY;
    const had = shareOfRows(swing, ball);
    if (swing.speed === null) return 0;
    const ofBat = Math.log(bat.paired(swing.speed) / bat.alone(swing.speed));
    if (ball.exit === null || had === null) return ofBat;
    if (had > most) return Number.NEGATIVE_INFINITY;
    return ofBat + Math.log(share(had) / mostOf(swing.speed, ball) / exit.alone(ball.exit));
  };
}

/** Where the likely pairs go above what was stated to be the most, the statement is wrong, not the swings. */
function mostShare(shares: readonly (number | null)[]): number {
  const known = shares.flatMap((one) => one ?? []).sort((one, other) => one - other);
  return Math.max(1, known[Math.floor(TOP * known.length)] ?? 1) + SENSOR_ERROR;
}

/** How rows with and without a partner are spread; of few rows without one little is learned, and they are taken to be like the others. */
function twoDensities(values: readonly (number | null)[], chance: Float64Array, smooth: number) {
  const anywhere: Density = () => 1 / FASTEST;
  const paired = density(values, chance, FASTEST, smooth, { of: anywhere, rows: BEFORE.paired });
  const left = chance.map((one) => 1 - one);
  return { paired, alone: density(values, left, FASTEST, smooth, { of: paired, rows: BEFORE.alone }) };
}

/**
 * Kernel density of weighted values from 0 to `most`, mixed with what was known before as if that were so many rows. Kept in cells, so that asking
 * costs the same however many rows there are.
 */
function density(
  values: readonly (number | null)[],
  weights: ArrayLike<number>,
  most: number,
  smooth: number,
  before: { readonly of: Density; readonly rows: number },
): Density {
  const step = smooth / FINENESS;
  const cells = new Float64Array(Math.ceil(most / step) + 1);
  const cellOf = (value: number) => Math.min(cells.length - 1, Math.max(0, Math.round(value / step)));
  let total = 0;
  values.forEach((value, i) => {
    if (value === null) return;
    cells[cellOf(value)]! += weights[i]!;
    total += weights[i]!;
  });
  const reach = 4 * FINENESS;
  const kernel = Array.from(
    { length: 2 * reach + 1 },
    (_, i) => Math.exp(-(((i - reach) / FINENESS) ** 2) / 2) / (smooth * Math.sqrt(2 * Math.PI)),
  );
  const heights = cells.map((_, cell) => {
    const own = kernel.reduce((sum, weight, i) => sum + weight * (cells[cell + i - reach] ?? 0), 0);
    return (own + before.rows * before.of(cell * step)) / (total + before.rows);
  });
  return (value) => heights[cellOf(value)]!;
}
