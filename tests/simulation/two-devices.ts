import { pairSensors } from "../../src/hitting/pair-sensors.ts";
import { type BallStamp, type BatStamp, pairSwings } from "../../src/hitting/pair-swings.ts";
import { type Alignment, align, type NoAlignment } from "../../src/stats/alignment.ts";
import { type Random, randomFrom } from "../demo/random.ts";

/** Sessions of two devices with known truth. */
export interface TwoDevices {
  /** SD of the difference between the two stamps of one swing, s. */
  readonly noise: number;
  /** Share of swings that each device missed. */
  readonly missing: number;
  /** False rows as a share of the true ones; a third of the sensor's lie within 4 s of a true swing. */
  readonly falseBat?: number;
  readonly falseBall?: number;
  /** Seconds between two swings: uniform from and to, or of a machine that throws every so often with rests between rounds. */
  readonly gaps?: readonly [number, number];
  readonly machine?: {
    readonly every: number;
    readonly rounds: readonly [number, number];
    readonly rest: readonly [number, number];
  };
}

interface Stamped {
  readonly time: number;
  /** The swing it is of; null for a row of nothing. */
  readonly swing: number | null;
  /** Bat speed or exit velocity, mph. */
  readonly mph: number;
}

export interface Session {
  readonly a: readonly Stamped[];
  readonly b: readonly Stamped[];
}

const between = (random: Random, low: number, high: number): number => low + (high - low) * random.uniform();

const byTime = (one: Stamped, other: Stamped) => one.time - other.time;

function swingTimes(random: Random, { gaps = [6, 25], machine }: TwoDevices): number[] {
  const n = Math.round(between(random, 60, 200));
  const times: number[] = [];
  let t = 0;
  let left = 0;
  for (let i = 0; i < n; i += 1) {
    if (machine === undefined) t += between(random, gaps[0], gaps[1]);
    else {
      if (left === 0) {
        left = Math.round(between(random, machine.rounds[0], machine.rounds[1]));
        t += between(random, machine.rest[0], machine.rest[1]);
      }
      left -= 1;
      t += machine.every;
    }
    times.push(t);
  }
  return times;
}

const Q = 0.2;
const PITCH = 60;
const SENSOR_SD = 0.7;

/** A swing and its ball: struck squarely more or less, as a ball of such a bat is. */
function struck(random: Random, time: number): { time: number; bat: number; exit: number } {
  const bat = random.normal(65, 3);
  const q = Q - 0.04 * random.normal(0, 1) ** 2;
  return { time, bat, exit: q * PITCH + (1 + q) * bat };
}

/** Half of what a sensor makes up are waggles and dropped bats, half are practice swings at nearly full speed. */
const falseBat = (random: Random, i: number): number =>
  Math.max(5, i % 2 === 0 ? random.normal(30, 8) : random.normal(60, 5));

const batStamps = (rows: readonly Stamped[]): BatStamp[] =>
  rows.map(({ time, mph }) => ({ time, speed: mph, noBall: false }));
const ballStamps = (rows: readonly Stamped[]): BallStamp[] =>
  rows.map(({ time, mph }) => ({ time, exit: mph, pitch: PITCH, q: Q, noBat: false }));

/** A clock up to ten minutes and 200 ppm off, whose stamps of true swings scatter. */
function clocks(random: Random, noise: number): (time: number, scatters: boolean) => number {
  const offset = between(random, -600, 600);
  const drift = between(random, -200e-6, 200e-6);
  return (time, scatters) => time * (1 + drift) + offset + (scatters ? random.normal(0, noise) : 0);
}

/** What a device saw of the swings, but for those that it missed. */
function seen(random: Random, swings: readonly ReturnType<typeof struck>[], of: "bat" | "exit", missing: number) {
  return swings.flatMap((one, swing): Stamped[] =>
    between(random, 0, 1) < missing ? [] : [{ time: one.time, swing, mph: one[of] + random.normal(0, SENSOR_SD) }],
  );
}

/** One session of one sensor and one screen. */
export function session(random: Random, cell: TwoDevices): Session {
  const times = swingTimes(random, cell);
  const clock = clocks(random, cell.noise);
  const swings = times.map((time) => struck(random, time));
  const bat = seen(random, swings, "bat", cell.missing);
  const ball = seen(random, swings, "exit", cell.missing);
  const span = times.at(-1)!;
  const falseRows = (share: number, near: boolean): Stamped[] =>
    Array.from({ length: Math.round(share * times.length) }, (_, i) => {
      const close = near && i % 3 === 0;
      const at = close
        ? times[Math.floor(between(random, 0, times.length - 1e-9))]! + between(random, -4, 4)
        : between(random, 0, span);
      return { time: at, swing: null, mph: near ? falseBat(random, i) : random.normal(60, 15) };
    });
  const a = [...bat, ...falseRows(cell.falseBat ?? 0, true)].sort(byTime);
  const b = [...ball, ...falseRows(cell.falseBall ?? 0, false)]
    .map(({ time, swing, mph }) => ({ mph, time: clock(time, swing !== null), swing }))
    .sort(byTime);
  return { a, b };
}

export interface Score {
  /** Share of made pairs that are true, and of true pairs that are made. */
  readonly right: number;
  readonly made: number;
  /** Sessions in which nothing was paired. */
  readonly silent: number;
  /** Of the pairs given confidence 0.9 to 1: share right and mean confidence. */
  readonly sure: { readonly right: number; readonly confidence: number };
}

/** Aligns so many sessions of a cell and counts. */
export function score(cell: TwoDevices, sessions: number, seed: string, physics = false): Score {
  const count = counted();
  for (let i = 0; i < sessions; i += 1) {
    const { a, b } = session(randomFrom(`${seed} ${i}`), cell);
    const found = physics
      ? pairSwings(batStamps(a), ballStamps(b))
      : align(
          a.map(({ time }) => time),
          b.map(({ time }) => time),
        );
    tally(found, a, b, count);
  }
  return scored(count);
}

/** Three hitters in turns, a round each, one sensor each with a clock of its own, one screen that sees them all. */
export function scoreTurns(cell: TwoDevices, hitters: number, sessions: number, seed: string): Score {
  const count = counted();
  for (let i = 0; i < sessions; i += 1) {
    const random = randomFrom(`${seed} ${i}`);
    const times = swingTimes(random, cell);
    const whose = turnsOf(random, times.length, hitters);
    const swings = times.map((time) => struck(random, time));
    const screen = seen(random, swings, "exit", cell.missing);
    const b = screen.map((row) => ({ ...row, time: row.time + random.normal(0, cell.noise) })).sort(byTime);
    const sensors = Array.from({ length: hitters }, (_, hitter) => {
      const own = clocks(random, 0);
      const rows = seen(random, swings, "bat", cell.missing).filter(({ swing }) => whose[swing ?? -1] === hitter);
      return rows.map((row) => ({ ...row, time: own(row.time, false) }));
    });
    const found = pairSensors(
      sensors.map((rows) => ({ bats: batStamps(rows), apart: () => false })),
      ballStamps(b),
    );
    found.forEach((one, hitter) => {
      tally(one, sensors[hitter]!, b, count);
    });
  }
  return scored(count);
}

/** Who swings: rounds of five to eight, one hitter after the other. */
function turnsOf(random: Random, swings: number, hitters: number): number[] {
  const whose: number[] = [];
  for (let turn = 0; whose.length < swings; turn += 1) {
    const round = Math.round(between(random, 5, 8));
    whose.push(...Array.from({ length: round }, () => turn % hitters));
  }
  return whose.slice(0, swings);
}

interface Count {
  made: number;
  right: number;
  true: number;
  silent: number;
  sure: number;
  sureRight: number;
  confidence: number;
}

const counted = (): Count => ({ made: 0, right: 0, true: 0, silent: 0, sure: 0, sureRight: 0, confidence: 0 });

function scored(count: Count): Score {
  return {
    right: count.made === 0 ? 1 : count.right / count.made,
    made: count.right / count.true,
    silent: count.silent,
    sure: { right: count.sureRight / count.sure, confidence: count.confidence / count.sure },
  };
}

function tally(found: Alignment | NoAlignment, a: readonly Stamped[], b: readonly Stamped[], count: Count): void {
  const inB = new Set(b.flatMap(({ swing }) => swing ?? []));
  count.true += a.filter(({ swing }) => swing !== null && inB.has(swing)).length;
  if ("kind" in found) {
    count.silent += 1;
    return;
  }
  for (const pair of found.pairs) {
    const swing = a[pair.a]!.swing;
    const right = swing !== null && swing === b[pair.b]!.swing;
    count.made += 1;
    if (right) count.right += 1;
    if (pair.confidence < 0.9) continue;
    count.sure += 1;
    count.confidence += pair.confidence;
    if (right) count.sureRight += 1;
  }
}
