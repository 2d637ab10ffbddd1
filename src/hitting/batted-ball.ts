/** What kind of batted ball it was. Angles in degrees, speeds in mph. */

export const LAUNCH_CLASSES = ["ground-ball", "line-drive", "fly-ball", "pop-up"] as const;
export type LaunchClass = (typeof LAUNCH_CLASSES)[number];

/**
 * Class of a launch angle: under 10 a ground ball, 10 to 25 a line drive, 25 to 50 a fly ball, over 50 a pop-up.
 *
 * The boundaries are a league glossary's; on which side 10, 25 and 50 fall it does not say: here 10 and 25 belong to the class above,
 * 50 to the one below.
 */
export function launchClass(angle: number): LaunchClass {
  if (angle < 10) return "ground-ball";
  if (angle < 25) return "line-drive";
  return angle <= 50 ? "fly-ball" : "pop-up";
}

/** Exit speed from which an adult league calls a ball hard-hit, mph. From adult results with wood: not a line for youth or softball. */
export const LEAGUE_HARD_HIT_MPH = 95;

export const isHard = (exitMph: number, markMph: number): boolean => exitMph >= markMph;

export const FIELD_THIRDS = ["pull", "centre", "opposite"] as const;
export type FieldThird = (typeof FIELD_THIRDS)[number];

/** Spray angle seen from the hitter's side: negative is the pull field. */
export const pulledAngle = (spray: number, side: "left" | "right"): number => (side === "left" ? -spray : spray);

/**
 * Third of the field by the hitter's side; fair ground is 90 degrees, so a third is 30 (thirds: common practice).
 *
 * @param spray 0 to centre field, negative to left, positive to right
 */
export function fieldThird(spray: number, side: "left" | "right"): FieldThird {
  const pulled = pulledAngle(spray, side);
  if (pulled < -15) return "pull";
  return pulled <= 15 ? "centre" : "opposite";
}
