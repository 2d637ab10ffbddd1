import { battedDrag, battedLift, spinAfter, spinFactor } from "./aerodynamics.ts";
import { BASEBALL, type Ball, dragPerMetre } from "./ball.ts";

/** m/s2, standard. */
export const GRAVITY = 9.80665;

/** How air acts on a ball: coefficients by spin factor and spin (rpm). `spinTauS`: null where the spin stays. */
export interface FlightModel {
  readonly drag: (rpm: number) => number;
  readonly lift: (s: number) => number;
  readonly spinTauS: number | null;
  readonly gravity: number;
}

/**
 * The model of the reports: fitted to adult fly balls of 2016, 90 mph and more at 20 to 35 degrees. Elsewhere it is an extrapolation.
 *
 * @see Nathan (2017), Analysis of Baseball Trajectories, eqs. 9-11
 */
export const BATTED: FlightModel = {
  drag: (rpm) => battedDrag(rpm, 0.297),
  lift: battedLift,
  spinTauS: null,
  gravity: GRAVITY,
};

export interface Launch {
  /** m/s, above 0. */
  readonly speed: number;
  /** Degrees above the ground. */
  readonly angle: number;
  /** rpm; positive lifts. */
  readonly backspin: number;
  /** rpm about the upright axis; positive bends toward the right of the flight. */
  readonly sidespin?: number;
  /** Height of the start, m. */
  readonly height: number;
}

export interface FlightPoint {
  readonly t: number;
  /** m along the flight, to its left, and up. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface Flight {
  /** Distance over the ground from start to landing, m. */
  readonly carry: number;
  /** s. */
  readonly hangTime: number;
  /** Highest point, m. */
  readonly apex: number;
  /** Path, one point per step. */
  readonly path: readonly FlightPoint[];
}

/** Position and velocity. */
type State = readonly [number, number, number, number, number, number];

/** Seconds after which a flight is given up: nothing batted stays up so long. */
const LONGEST = 20;

/**
 * Flight of a batted ball to where it would meet the ground, by the classical Runge-Kutta method.
 *
 * @param density of the air, kg/m3
 * @param step    s; half of it changes carry by less than a millimetre
 * @throws {RangeError} a speed, height, density or step that is none; a ball that stays in the air
 * @see Nathan (2008), Am. J. Phys. 76:119-124 for the equation of motion
 */
export function fly(
  launch: Launch,
  density: number,
  model: FlightModel = BATTED,
  ball: Ball = BASEBALL,
  step = 0.005,
): Flight {
  checkLaunch(launch, density, step);
  const { speed, angle, backspin, sidespin = 0, height } = launch;
  const up = (angle * Math.PI) / 180;
  const forces = {
    model,
    ball,
    perMetre: dragPerMetre(ball, 1, density),
    rpm: Math.hypot(backspin, sidespin),
    axis: [backspin, sidespin] as const,
  };
  const path: FlightPoint[] = [];
  let now: State = [0, 0, height, speed * Math.cos(up), 0, speed * Math.sin(up)];
  let apex = height;
  for (let n = 0; ; n += 1) {
    const t = n * step;
    path.push({ t, x: now[0], y: now[1], z: now[2] });
    if (t > LONGEST) throw new RangeError(`the ball is still in the air after ${LONGEST} s`);
    const next = rungeKutta(now, t, step, forces);
    apex = Math.max(apex, topBetween(now, next, step));
    if (next[2] <= 0) return { ...landing(now, next, t, step), apex, path };
    now = next;
  }
}

interface Forces {
  readonly model: FlightModel;
  readonly ball: Ball;
  /** What a coefficient of 1 takes from the speed, 1/m. */
  readonly perMetre: number;
  readonly rpm: number;
  readonly axis: readonly [number, number];
}

function rungeKutta(state: State, t: number, h: number, forces: Forces): State {
  const k1 = derivative(state, t, forces);
  const k2 = derivative(along(state, k1, h / 2), t + h / 2, forces);
  const k3 = derivative(along(state, k2, h / 2), t + h / 2, forces);
  const k4 = derivative(along(state, k3, h), t + h, forces);
  return state.map((value, i) => value + (h / 6) * (k1[i]! + 2 * k2[i]! + 2 * k3[i]! + k4[i]!)) as unknown as State;
}

const along = (state: State, slope: State, h: number): State =>
  state.map((value, i) => value + h * slope[i]!) as unknown as State;

function derivative([, , , vx, vy, vz]: State, t: number, { model, ball, perMetre, rpm, axis }: Forces): State {
  const speed = Math.hypot(vx, vy, vz);
  const spin = model.spinTauS === null ? rpm : spinAfter(rpm, t, speed, model.spinTauS);
  const drag = perMetre * model.drag(spin) * speed;
  const [lx, ly, lz] = liftDirection([vx, vy, vz], axis);
  const across = Math.hypot(lx, ly, lz);
  // Only spin across the flight lifts; `across` is the sine between spin and flight.
  const lift = across === 0 ? 0 : perMetre * model.lift(spinFactor(spin * across, speed, ball.radiusM)) * speed ** 2;
  const unit = across === 0 ? 0 : lift / across;
  return [vx, vy, vz, -drag * vx + unit * lx, -drag * vy + unit * ly, -drag * vz + unit * lz - model.gravity];
}

/** Spin axis times flight direction: its length is the share of the spin that lies across the flight. */
function liftDirection(
  v: readonly [number, number, number],
  [back, side]: readonly [number, number],
): [number, number, number] {
  const rpm = Math.hypot(back, side);
  const speed = Math.hypot(...v);
  if (rpm === 0 || speed === 0) return [0, 0, 0];
  // Backspin turns about the axis that points to the left's opposite of the flight: (0, -1, 0) x forward is up.
  const [ay, az] = [-back / rpm, -side / rpm];
  const [x, y, z] = [v[0] / speed, v[1] / speed, v[2] / speed];
  return [ay * z - az * y, az * x, -ay * x];
}

/** Highest point between two states, by the parabola through both ends' heights and climbs. */
function topBetween(from: State, to: State, h: number): number {
  if (!(from[5] > 0 && to[5] <= 0)) return to[2];
  const share = from[5] / (from[5] - to[5]);
  return from[2] + (from[5] * share * h) / 2;
}

/** Where the height is 0 between two states, by the cubic through heights and climbs; bisected. */
function landing(from: State, to: State, t: number, h: number): { carry: number; hangTime: number } {
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    if (hermite(from, to, 2, middle, h) > 0) low = middle;
    else high = middle;
  }
  return { carry: Math.hypot(hermite(from, to, 0, high, h), hermite(from, to, 1, high, h)), hangTime: t + high * h };
}

function hermite(from: State, to: State, i: 0 | 1 | 2, s: number, h: number): number {
  const [p0, p1, m0, m1] = [from[i], to[i], from[i + 3]! * h, to[i + 3]! * h];
  return (
    (2 * s ** 3 - 3 * s ** 2 + 1) * p0 +
    (s ** 3 - 2 * s ** 2 + s) * m0 +
    (-2 * s ** 3 + 3 * s ** 2) * p1 +
    (s ** 3 - s ** 2) * m1
  );
}

function checkLaunch({ speed, angle, height }: Launch, density: number, step: number): void {
  if (!(speed > 0 && speed < 200)) throw new RangeError(`an exit speed lies above 0 and below 200 m/s, got ${speed}`);
  if (!(angle >= -90 && angle <= 90)) throw new RangeError(`a launch angle lies from -90 to 90 degrees, got ${angle}`);
  if (!(height > 0 && height < 10)) throw new RangeError(`a ball starts above 0 and below 10 m, got ${height}`);
  if (!(density >= 0 && density < 2)) throw new RangeError(`the density of air lies from 0 to 2 kg/m3, got ${density}`);
  if (!(step > 0 && step <= 0.1)) throw new RangeError(`a step lies above 0 and up to 0.1 s, got ${step}`);
}
