/**
 * Bat meets ball. All speeds of one call are in one unit and are those at the moment of impact: the bat's at the point that meets the
 * ball, the pitch's at the plate; a ball on a tee has 0. q, the collision efficiency (also e_A), has no unit; it joins ball, bat and
 * point of impact in one number.
 *
 * @see Nathan (2003), Am. J. Phys. 71:134-143
 */

function check(name: string, value: number, least: number): void {
  if (!(value >= least && Number.isFinite(value)))
    throw new RangeError(`${name} must be ${least} or more, got ${value}`);
}

function checkQ(q: number): void {
  if (!(q > -1 && q < 1)) throw new RangeError(`q must lie between -1 and 1, got ${q}`);
}

/**
 * Exit speed of a square hit: q v_pitch + (1 + q) v_bat.
 *
 * @param pitch at the plate, 0 or more
 * @param bat   at the point of impact, 0 or more
 * @throws {RangeError} a negative or infinite speed, a q outside -1 to 1
 * @example exitSpeed(0.2, 94, 70) // => 102.8
 */
export function exitSpeed(q: number, pitch: number, bat: number): number {
  checkQ(q);
  check("pitch speed", pitch, 0);
  check("bat speed", bat, 0);
  return q * pitch + (1 + q) * bat;
}

/**
 * q that a measured hit amounts to: (v_exit - v_bat) / (v_bat + v_pitch).
 *
 * @returns null where neither bat nor ball moves
 */
export function efficiencyOf(exit: number, pitch: number, bat: number): number | null {
  check("exit speed", exit, 0);
  check("pitch speed", pitch, 0);
  check("bat speed", bat, 0);
  return bat + pitch === 0 ? null : (exit - bat) / (bat + pitch);
}

/** q from a ball exit speed ratio, whose definition is q + 1/2. */
export const efficiencyFromRatio = (ballExitSpeedRatio: number): number => ballExitSpeedRatio - 0.5;

/**
 * q from restitution and masses: (e - r) / (1 + r), r the ball's mass over the bat's effective mass at the point of impact.
 *
 * @param restitution of bat and ball together, 0 to 1
 * @param ballMass    above 0, in the unit of the bat's mass
 */
export function efficiencyFromRestitution(restitution: number, ballMass: number, effectiveBatMass: number): number {
  if (!(restitution >= 0 && restitution <= 1)) throw new RangeError(`restitution lies from 0 to 1, got ${restitution}`);
  if (!(ballMass > 0 && effectiveBatMass > 0 && Number.isFinite(ballMass) && Number.isFinite(effectiveBatMass))) {
    throw new RangeError(`masses must be above 0, got ${ballMass} and ${effectiveBatMass}`);
  }
  const r = ballMass / effectiveBatMass;
  return (restitution - r) / (1 + r);
}

/**
 * Exit speed as a share of the most that this bat and pitch allow. Above 1 is a measuring error, not a feat.
 *
 * @returns null where nothing moves
 */
export function shareOfMost(exit: number, q: number, pitch: number, bat: number): number | null {
  check("exit speed", exit, 0);
  const most = exitSpeed(q, pitch, bat);
  return most > 0 ? exit / most : null;
}
