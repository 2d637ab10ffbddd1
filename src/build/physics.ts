import { pairSensors } from "../hitting/pair-sensors.ts";
import { PITCH_DRAG } from "../hitting/pitch.ts";
import { ballOfKind, plateSpeedAfter } from "../hitting/plate-speed.ts";
import { PITCHED_ENVIRONMENTS } from "../schema/columns.ts";
import type { BallReading, PairSensors } from "../schema/pairing.ts";

/** Collision efficiency of a ball for which balls.csv states none: domain figures for game bats and leather balls lie about it. */
const USUAL_Q = 0.23;

/** Pitch speed at the plate, mph, as far as the row tells it; null for a toss that nobody read. */
function plateSpeed({ environment, pitch, ball }: BallReading): number | null {
  if (environment === "tee") return 0;
  if (pitch === null || pitch.mph <= 0) return null;
  if (pitch.at === "plate" || !PITCHED_ENVIRONMENTS.includes(environment ?? "")) return pitch.mph;
  if (pitch.distanceFt === null || pitch.distanceFt <= 0) return pitch.mph;
  const kind = ball?.kind === "softball" ? "softball" : "baseball";
  const known = ballOfKind(kind, ball?.mass_oz, ball?.circumference_in);
  return plateSpeedAfter(pitch.mph, pitch.distanceFt, known, PITCH_DRAG[kind]);
}

/** What physics says of rows that intake hands over to be paired. */
export const pairByPhysics: PairSensors = (sensors, balls) =>
  pairSensors(
    sensors,
    balls.map((ball) => ({
      time: ball.time,
      exit: ball.exit,
      noBat: ball.noBat,
      pitch: plateSpeed(ball),
      q: ball.ball?.q ?? USUAL_Q,
    })),
  );
