import { exitSpeed } from "./collision.ts";

/** A row of the bat's sensor: speed at the point that meets the ball, mph; null where none was read. */
export interface BatRow {
  readonly speed: number | null;
  /** A swing that touched nothing has no ball. */
  readonly noBall: boolean;
}

/** A row of the ball's screen, mph. */
export interface BallRow {
  readonly exit: number | null;
  /** Pitch speed at the plate; 0 off a tee, null where nobody knows. */
  readonly pitch: number | null;
  /** Best collision efficiency of this ball and a bat. */
  readonly q: number;
  readonly noBat: boolean;
}

export interface EvidenceSetup {
  /** Mean and SD of the exit velocities of the session, mph: what a ball is like that belongs to another swing. */
  readonly exitMean: number;
  readonly exitSd: number;
}

/** Part above the most possible that two sensors' errors explain. */
export const SENSOR_ERROR = 0.06;
/**
 * Most hits come off near the most possible and fewer the farther below; `below` is how far on average, `above` what sensors make of the rest.
 * The others are anywhere.
 */
const SQUARE = { share: 0.85, below: 0.055, above: 0.012 };
/** The fastest pitch that a toss whose speed nobody read could be, mph at the plate. */
const FASTEST_TOSS = 35;

/** The ball's speed as a share of the most that bat and pitch allow; null where a reading is missing. */
export function shareOfRows(bat: BatRow, ball: BallRow): number | null {
  if (bat.speed === null || ball.exit === null) return null;
  return ball.exit / mostOf(bat.speed, ball);
}

/** The most that a ball leaves with off a bat of this speed, mph. */
export const mostOf = (bat: number, { q, pitch }: BallRow): number => exitSpeed(q, pitch ?? FASTEST_TOSS, bat);

const normal = (x: number, mean: number, sd: number): number =>
  Math.exp(-(((x - mean) / sd) ** 2) / 2) / (sd * Math.sqrt(2 * Math.PI));

/**
 * How much likelier a sensor's row and a screen's row are one swing than two, by physics alone: log of the ratio; minus infinity where they
 * cannot be, because the ball left faster than that bat and pitch allow, or because one of them says that nothing was hit. 0 where a
 * reading is missing.
 *
 * @throws {RangeError} a spread of exit velocities that is not above 0
 */
export function pairingEvidence(bat: BatRow, ball: BallRow, { exitMean, exitSd }: EvidenceSetup): number {
  if (!(exitSd > 0)) throw new RangeError(`the spread of exit velocities must be above 0, got ${exitSd}`);
  if (bat.noBall || ball.noBat) return Number.NEGATIVE_INFINITY;
  const share = shareOfRows(bat, ball);
  if (bat.speed === null || ball.exit === null || share === null) return 0;
  const most = mostOf(bat.speed, ball);
  if (share > 1 + SENSOR_ERROR) return Number.NEGATIVE_INFINITY;
  const short = 1 - share;
  const scale = short > 0 ? SQUARE.below : SQUARE.above;
  const square = (SQUARE.share * Math.exp(-Math.abs(short) / scale)) / (SQUARE.below + SQUARE.above) / most;
  const other = (1 - SQUARE.share) / most;
  return Math.log(square + other) - Math.log(normal(ball.exit, exitMean, exitSd) + 1e-6);
}
