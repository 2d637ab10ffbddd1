import { type AlignedPair, type Alignment, DOUBTFUL, MADE, type NoAlignment } from "../stats/alignment.ts";
import { type BallStamp, type BatStamp, pairSwings } from "./pair-swings.ts";

/** One bat sensor, with a clock of its own. */
export interface Sensor {
  /** In rising order of time. */
  readonly bats: readonly BatStamp[];
  /** Rows that cannot be one swing. */
  apart(bat: number, ball: number): boolean;
}

/** A chance that is not quite sure, so that two sensors that are sure of one ball can be weighed. */
const NEARLY = 1 - 1e-9;

/**
 * Pairs several bat sensors with one ball screen, as when hitters take turns or stand in two lanes. Each sensor is paired for itself, the balls of the
 * others being balls without a swing; a sensor that could not be told is looked at again among the balls that nobody else is sure of; then a ball that
 * two sensors claim is weighed between them, and the less likely claim goes.
 *
 * @param balls in rising order of time
 * @returns one entry a sensor
 */
export function pairSensors(sensors: readonly Sensor[], balls: readonly BallStamp[]): (Alignment | NoAlignment)[] {
  const found = lookedAtAgain(
    sensors.map(({ bats, apart }) => pairSwings(bats, balls, apart)),
    sensors,
    balls,
  );
  const claims = new Map<number, number>();
  for (const one of found) {
    if ("kind" in one) continue;
    for (const { b, confidence } of [...one.pairs, ...one.doubtful]) {
      claims.set(b, (claims.get(b) ?? 0) + odds(confidence));
    }
  }
  return found.map((one) => {
    if ("kind" in one) return one;
    const all = [...one.pairs, ...one.doubtful]
      .map((pair): AlignedPair => {
        const own = odds(pair.confidence);
        return { ...pair, confidence: own / (1 + (claims.get(pair.b) ?? own)) };
      })
      .sort((x, y) => x.a - y.a);
    return {
      ...one,
      pairs: all.filter(({ confidence }) => confidence >= MADE),
      doubtful: all.filter(({ confidence }) => confidence < MADE && confidence > DOUBTFUL),
    };
  });
}

/** Sensors that could not be told, among the balls that are left. */
function lookedAtAgain(
  first: readonly (Alignment | NoAlignment)[],
  sensors: readonly Sensor[],
  balls: readonly BallStamp[],
): (Alignment | NoAlignment)[] {
  const found = [...first];
  found.forEach((one, index) => {
    if (!("kind" in one) || found.every((other) => "kind" in other)) return;
    const taken = new Set(found.flatMap((other) => ("kind" in other ? [] : other.pairs.map(({ b }) => b))));
    const left = balls.flatMap((_, b) => (taken.has(b) ? [] : [b]));
    const { bats, apart } = sensors[index]!;
    const again = pairSwings(
      bats,
      left.map((b) => balls[b]!),
      (i, j) => apart(i, left[j]!),
    );
    if ("kind" in again) return;
    const asBefore = (pair: AlignedPair): AlignedPair => ({ ...pair, b: left[pair.b]! });
    found[index] = { ...again, pairs: again.pairs.map(asBefore), doubtful: again.doubtful.map(asBefore) };
  });
  return found;
}

const odds = (chance: number): number => Math.min(chance, NEARLY) / (1 - Math.min(chance, NEARLY));
