/** A pitch from release to plate. Any one unit of length and time serves; k is in 1 per that length. */

/** Drag coefficient of a pitched baseball (0.33-0.36: Lyu et al. 2022, quoted); of a softball 0.27 fits the printed return times. */
export const PITCH_DRAG = { baseball: 0.35, softball: 0.27 } as const;
/** Density of indoor air by the models' convention, kg/m3. */
export const ROOM_DENSITY = 1.2;

function checkAbove(name: string, value: number): void {
  if (!(value > 0 && Number.isFinite(value))) throw new RangeError(`${name} must be above 0, got ${value}`);
}

/**
 * Speed after a distance with drag alone: v exp(-k x).
 *
 * @param speed    at the start, above 0
 * @param distance above 0
 * @param k        `dragPerMetre`, 0 or more, per the distance's unit
 */
export function speedAfter(speed: number, distance: number, k: number): number {
  checkAbove("speed", speed);
  checkAbove("distance", distance);
  return speed * Math.exp(-k * distance);
}

/**
 * Time of flight with drag alone: (exp(k x) - 1) / (k v), and x / v without drag.
 *
 * @returns in the time unit of the speed
 */
export function flightTime(speed: number, distance: number, k: number): number {
  checkAbove("speed", speed);
  checkAbove("distance", distance);
  return k === 0 ? distance / speed : Math.expm1(k * distance) / (k * speed);
}

/**
 * Speed at another distance that leaves as much time, without drag: v x_ref / x. Both distances from the same point.
 */
export function equalTimeSpeed(speed: number, distance: number, otherDistance: number): number {
  checkAbove("speed", speed);
  checkAbove("distance", distance);
  checkAbove("distance", otherDistance);
  return (speed * otherDistance) / distance;
}

/** What a constant acceleration makes of the speed toward the plate. All y toward the pitcher, so speeds are negative. */
export interface SteadyPitch {
  readonly y0: number;
  readonly yPlate: number;
  readonly vy0: number;
  readonly ay: number;
}

/**
 * Velocity at the plate and time to it, under constant acceleration.
 *
 * @returns null where the pitch never gets there
 * @see Kagan (2009), Phys. Teach. 47:412
 */
export function steadyArrival({ y0, yPlate, vy0, ay }: SteadyPitch): { vy: number; time: number } | null {
  const square = vy0 ** 2 - 2 * ay * (y0 - yPlate);
  if (!(square >= 0) || vy0 >= 0) return null;
  const vy = -Math.sqrt(square);
  return { vy, time: ay === 0 ? (yPlate - y0) / vy0 : (vy - vy0) / ay };
}

/** Direction of spin as a clock, as the pitcher sees it: 180 degrees is pure backspin and 12:00, 210 is 1:00. */
export function axisToClock(degrees: number): { hour: number; minute: number } {
  if (!Number.isFinite(degrees)) throw new RangeError(`a spin axis must be a finite number, got ${degrees}`);
  const minutes = Math.round((((degrees / 30 + 6) * 60) % 720) + 720) % 720;
  const hour = Math.floor(minutes / 60);
  return { hour: hour === 0 ? 12 : hour, minute: minutes % 60 };
}

/**
 * Degrees of a written axis: a clock as the pitcher sees it, or degrees.
 *
 * @returns 0 or more and below 360; null for a text that is neither
 * @example axisDegrees("12:45") // => 202.5
 */
export function axisDegrees(written: string): number | null {
  const clock = /^(\d{1,2}):(\d{2})$/.exec(written);
  const degrees = clock ? (Number(clock[1]) + Number(clock[2]) / 60 - 6) * 30 : Number(written);
  return written.trim() === "" || !Number.isFinite(degrees) ? null : ((degrees % 360) + 360) % 360;
}
