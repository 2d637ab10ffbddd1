import type { BatReading, Pair, Pairing } from "../../schema/pairing.ts";
import { median } from "../../stats/median.ts";

interface Bat extends BatReading {
  /** Block, else environment: swings of one unit were watched by the same devices. Null where nobody says. */
  readonly unit: string | null;
  readonly standing: boolean;
  /** Somebody wrote what came of it: then it was a swing, whatever the screen saw. */
  readonly hasResult: boolean;
}

interface Ball {
  /** Known to be this athlete's. */
  readonly own: boolean;
  readonly standing: boolean;
}

/** A row slower than this part of the usual paired swing is a waggle or a dropped bat, not a swing whose ball was missed (common practice). */
const SLOW = 0.6;
/** Seconds before the first and after the last pair that still belong to the work with balls. */
const AROUND = 120;

/** Where clocks tell nothing and corrections alone made pairs: of a row without one nothing is said. */
export function onlyPaired(
  bats: number,
  balls: number,
  pairs: readonly Pair[],
): { batPairing: (Pairing | null)[]; ballPairing: (Pairing | null)[] } {
  const among = (count: number, places: ReadonlySet<number>) =>
    Array.from({ length: count }, (_, i): Pairing | null => (places.has(i) ? "paired" : null));
  return {
    batPairing: among(bats, new Set(pairs.map(({ a }) => a))),
    ballPairing: among(balls, new Set(pairs.map(({ b }) => b))),
  };
}

/** How every row of a paired day stands. */
export function alonePairings({
  bats,
  balls,
  pairs,
}: {
  readonly bats: readonly Bat[];
  readonly balls: readonly Ball[];
  readonly pairs: readonly Pair[];
}): { batPairing: (Pairing | null)[]; ballPairing: (Pairing | null)[] } {
  const paired = new Set(pairs.map(({ a }) => a));
  const taken = new Set(pairs.map(({ b }) => b));
  const usual = median([...paired].flatMap((a) => bats[a]?.speed ?? []));
  const units = new Set([...paired].map((a) => bats[a]?.unit ?? null));
  const times = [...paired].map((a) => bats[a]?.time ?? 0);
  const [first, last] = [Math.min(...times) - AROUND, Math.max(...times) + AROUND];
  const withBalls = ({ unit, time }: Bat) => (unit === null ? time >= first && time <= last : units.has(unit));
  return {
    batPairing: bats.map((bat, a) => {
      if (paired.has(a)) return "paired";
      if (!bat.standing || bat.noBall || bat.hasResult || !withBalls(bat)) return null;
      return usual !== null && bat.speed !== null && bat.speed < SLOW * usual ? "no-swing" : "ball-not-recorded";
    }),
    ballPairing: balls.map(({ own, standing }, b) => {
      if (taken.has(b)) return "paired";
      return own && standing ? "bat-not-recorded" : null;
    }),
  };
}
