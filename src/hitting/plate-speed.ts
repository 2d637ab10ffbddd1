import { METRES_PER_FOOT } from "../schema/units.ts";
import { BASEBALL, type Ball, ballOf, dragPerMetre, SOFTBALL } from "./ball.ts";
import { ROOM_DENSITY, speedAfter } from "./pitch.ts";

/** A ball of its own mass (oz) and circumference (in), else the rule book's of its kind. */
export function ballOfKind(
  kind: "baseball" | "softball",
  massOz: number | undefined,
  aroundIn: number | undefined,
): Ball {
  if (massOz && aroundIn) return ballOf(massOz, aroundIn);
  return kind === "softball" ? SOFTBALL : BASEBALL;
}

/** What drag alone leaves of a pitch's speed at the plate, in the unit it has at the start: indoors, over a distance in feet above 0. */
export const plateSpeedAfter = (speed: number, distanceFt: number, ball: Ball, drag: number): number =>
  speedAfter(speed, distanceFt * METRES_PER_FOOT, dragPerMetre(ball, drag, ROOM_DENSITY));
