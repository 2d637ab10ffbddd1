import type { Pair, PairedSession } from "../../schema/pairing.ts";

/**
 * A session without balls that are another hitter's: one screen may see several on one day, and each one's page shows their own, and nobody's.
 *
 * @param theirs whether the ball at this place is the hitter's or nobody's
 */
export function onlyTheirBalls(session: PairedSession, theirs: (ball: number) => boolean): PairedSession {
  const kept = session.balls.flatMap((_, ball) => (theirs(ball) ? [ball] : []));
  const places = new Map(kept.map((ball, place) => [ball, place]));
  const moved = <T extends Pair>(pairs: readonly T[]): T[] =>
    pairs.flatMap((pair) => {
      const b = places.get(pair.b);
      return b === undefined ? [] : [{ ...pair, b }];
    });
  return {
    ...session,
    balls: kept.map((ball) => session.balls[ball]!),
    ballPairing: kept.map((ball) => session.ballPairing[ball] ?? null),
    pairs: moved(session.pairs),
    doubtful: moved(session.doubtful),
  };
}
