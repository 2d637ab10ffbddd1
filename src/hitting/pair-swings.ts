import { type Alignment, type AlignmentOptions, align, type NoAlignment } from "../stats/alignment.ts";
import { mean } from "../stats/mean.ts";
import { sd } from "../stats/sd.ts";
import { learnedEvidence } from "./learned-evidence.ts";
import { type BallRow, type BatRow, pairingEvidence } from "./pairing-evidence.ts";

/** A row of the bat's sensor by its own clock, s. */
export interface BatStamp extends BatRow {
  readonly time: number;
}

/** A row of the ball's screen by its own clock, s. */
export interface BallStamp extends BallRow {
  readonly time: number;
}

/** How often what the session tells of its rows is learned anew. */
const LESSONS = 3;
/** A spread of exit velocities below which they tell nothing, mph. */
const LEAST_SPREAD = 0.5;

/**
 * Pairs the rows of one bat sensor with those of one ball screen. First by time alone; where time cannot tell, with what physics allows. What was
 * found then teaches what this session's swings, waggles and tossed balls are like, and the pairs are weighed again.
 *
 * @param bats  in rising order of time
 * @param balls in rising order of time
 * @param apart rows that cannot be one swing for other reasons, as another block or another bat
 * @throws {RangeError} times that fall
 */
export function pairSwings(
  bats: readonly BatStamp[],
  balls: readonly BallStamp[],
  apart: (bat: number, ball: number) => boolean = () => false,
): Alignment | NoAlignment {
  const [a, b] = [bats.map(({ time }) => time), balls.map(({ time }) => time)];
  const run = (evidence: (i: number, j: number) => number, options: AlignmentOptions = {}) =>
    align(a, b, {
      ...options,
      evidence: (i, j) => (apart(i, j) ? Number.NEGATIVE_INFINITY : evidence(i, j)),
    });
  const byTime = run((i, j) => (bats[i]!.noBall || balls[j]!.noBat ? Number.NEGATIVE_INFINITY : 0));
  let found = "kind" in byTime && byTime.reason === "cannot-tell" ? run(firstEvidence(bats, balls)) : byTime;
  for (let lesson = 0; lesson < LESSONS && !("kind" in found); lesson += 1) {
    const { offset, offsetConfidence, pairs, doubtful } = found;
    const next = run(learnedEvidence(bats, balls, [...pairs, ...doubtful]), { known: { offset, offsetConfidence } });
    if ("kind" in next) break;
    found = next;
  }
  return found;
}

/** Physics with nothing learned yet. */
function firstEvidence(bats: readonly BatStamp[], balls: readonly BallStamp[]): (i: number, j: number) => number {
  const exits = balls.flatMap(({ exit }) => exit ?? []);
  const spread = exits.length < 2 ? null : sd(exits);
  if (spread === null || spread < LEAST_SPREAD) return () => 0;
  const setup = { exitMean: mean(exits)!, exitSd: spread };
  return (i, j) => pairingEvidence(bats[i]!, balls[j]!, setup);
}
