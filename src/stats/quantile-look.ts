import { type Line, type Points, ROUNDING_SHARE } from "./tilt.ts";

/** A line and how the points lie about it. */
export interface Look {
  readonly line: Line;
  /** 1 above the line, -1 below, 0 on it. */
  readonly sides: Int8Array;
  /** Indices of the points on the line, in order. */
  readonly on: readonly number[];
  readonly objective: number;
}

/** Differences of x and y that the rounding of the values can explain. */
export interface Rounding {
  readonly x: number;
  readonly y: number;
}

/** @param points of ordinary size (differences up to 4) */
export function lookAt({ x, y }: Points, line: Line, tau: number, rounding: Rounding): Look {
  const { slope, through } = line;
  const sides = new Int8Array(x.length);
  const on: number[] = [];
  let objective = 0;
  for (let i = 0; i < x.length; i += 1) {
    const rise = slope * (x[i]! - x[through]!);
    const above = y[i]! - y[through]! - rise;
    const noise = 2 * (rounding.y + Math.abs(slope) * rounding.x) + 8 * Number.EPSILON * Math.abs(rise);
    sides[i] = Math.abs(above) <= noise ? 0 : Math.sign(above);
    if (sides[i] === 0) on.push(i);
    else objective += above * (above > 0 ? tau : tau - 1);
  }
  return { line, sides, on, objective };
}

/** What the objective does when the line is turned about a point on it: -1 falls, 0 stays the same, 1 rises. */
export interface Turn {
  readonly about: number;
  readonly up: -1 | 0 | 1;
  readonly down: -1 | 0 | 1;
}

/**
 * Turns about each point on the line, one for each x. Between them they are all the edges on which the objective can change first,
 * so a line from which no turn falls is best, and it is the only best one when every turn rises.
 */
export function* turns({ x }: Points, { sides, on }: Look, tau: number): Generator<Turn, void> {
  let lastX = Number.NaN;
  for (const about of on) {
    if (x[about] === lastX) continue;
    lastX = x[about]!;
    let [up, down, size] = [0, 0, 0];
    for (let i = 0; i < x.length; i += 1) {
      const distance = x[i]! - lastX;
      size += Math.abs(distance);
      // Turned up, the line rises to the right of the point: what lay on it lies below there, and above to the left.
      const sideUp = sides[i] || -Math.sign(distance);
      const sideDown = sides[i] || Math.sign(distance);
      up -= distance * (sideUp > 0 ? tau : tau - 1);
      down += distance * (sideDown > 0 ? tau : tau - 1);
    }
    const rounding = ROUNDING_SHARE * size;
    yield { about, up: signOf(up, rounding), down: signOf(down, rounding) };
  }
}

function signOf(value: number, rounding: number): -1 | 0 | 1 {
  if (Math.abs(value) <= rounding) return 0;
  return value > 0 ? 1 : -1;
}
