import { describe, expect, test } from "vitest";
import { exitSpeed } from "../../src/hitting/collision.ts";
import { learnedEvidence } from "../../src/hitting/learned-evidence.ts";
import { pairSensors } from "../../src/hitting/pair-sensors.ts";
import { type BallStamp, type BatStamp, pairSwings } from "../../src/hitting/pair-swings.ts";

/** Gaps that no shift repeats, s. */
const GAPS = [9, 14, 11, 21, 8, 17, 12, 24, 10, 15, 19, 7, 22, 13, 16, 9, 23, 11, 18, 20];
const times = (n: number): number[] => {
  let now = 0;
  return Array.from({ length: n }, (_, i) => {
    now += GAPS[(i * 7) % GAPS.length]! + (i % 3);
    return now;
  });
};
const speedOf = (i: number) => 62 + ((i * 5) % 7);
const bat = (time: number, speed: number | null, noBall = false): BatStamp => ({ time, speed, noBall });
const ball = (time: number, exit: number | null, noBat = false): BallStamp => ({
  ...{ time, exit, noBat },
  pitch: 60,
  q: 0.2,
});
const square = (speed: number) => 0.96 * exitSpeed(0.2, 60, speed);
const bats = times(40).map((time, i) => bat(time, speedOf(i)));
const balls = times(40).map((time, i) => ball(time + 100 + (i % 2) * 0.4, square(speedOf(i))));

describe("one sensor and one screen", () => {
  test("every swing finds its ball", () => {
    const found = pairSwings(bats, balls);
    expect(found).toMatchObject({ doubtful: [] });
    expect("kind" in found ? [] : found.pairs.map(({ a, b }) => [a, b])).toEqual(bats.map((_, i) => [i, i]));
  });

  test("rows that say nothing was hit, and rows that are told apart, have no partner", () => {
    const missed = bats.map((row, i) => (i === 7 ? { ...row, noBall: true } : row));
    const found = pairSwings(missed, balls, (i, j) => i === 9 || j === 12);
    const pairs = "kind" in found ? [] : found.pairs;
    expect(pairs.map(({ a }) => a)).toEqual(bats.map((_, i) => i).filter((i) => ![7, 9, 12].includes(i)));
    expect(pairs.every(({ a, b }) => a === b)).toBe(true);
  });

  test("a waggle near a swing loses against the swing", () => {
    const waggles = [5, 15, 25].map((i) => bat(bats[i]!.time - 1.2, 28));
    const all = [...bats, ...waggles].sort((one, other) => one.time - other.time);
    const found = pairSwings(all, balls);
    const taken = "kind" in found ? [] : found.pairs.map(({ a }) => all[a]!.speed!);
    expect(taken.length).toBeGreaterThanOrEqual(39);
    expect(Math.min(...taken)).toBeGreaterThan(60);
  });

  test("readings that are missing everywhere leave time alone", () => {
    const found = pairSwings(
      bats.map((row) => ({ ...row, speed: null })),
      balls.map((row) => ({ ...row, exit: null })),
    );
    expect("kind" in found ? 0 : found.pairs.length).toBe(40);
  });

  test("a most that was stated too low costs no pairs", () => {
    const livelier = balls.map((row) => ({ ...row, exit: row.exit! * 1.15 }));
    const found = pairSwings(bats, livelier);
    expect("kind" in found ? 0 : found.pairs.length).toBe(40);
  });

  test("an empty screen and a beat without end pair nothing", () => {
    expect(pairSwings(bats, [])).toEqual({ kind: "none", reason: "empty" });
    const beat = Array.from({ length: 60 }, (_, i) => i * 8);
    const found = pairSwings(
      beat.slice(0, 55).map((time) => bat(time, null)),
      beat.slice(5).map((time) => ball(time, null)),
    );
    expect(found).toEqual({ kind: "none", reason: "cannot-tell" });
  });
});

describe("what a session tells of its rows", () => {
  const pairs = bats.map((_, i) => ({ a: i, b: i, confidence: 0.97 }));
  const waggle = bat(1000, 30);
  const toss = ball(1000, 25);
  const evidence = learnedEvidence([...bats, waggle, waggle, waggle], [...balls, toss, toss], pairs);

  test("a swing as the others speaks for a pair, a row as those without partner against it", () => {
    expect(evidence(3, 3)).toBeGreaterThan(1);
    expect(evidence(3, 40)).toBeLessThan(-3);
    expect(evidence(40, 40)).toBeLessThan(-1);
  });

  test("a ball faster than all likely pairs and their sensors allow cannot be", () => {
    const fast = ball(0, square(speedOf(0)) * 1.2);
    expect(learnedEvidence(bats, [...balls, fast], pairs)(0, 40)).toBe(Number.NEGATIVE_INFINITY);
  });

  test("no likely pairs teach nothing, and no answer is not a number", () => {
    const nothing = learnedEvidence(bats, balls, []);
    for (let i = 0; i < 40; i += 1) expect(Number.isFinite(nothing(i, i))).toBe(true);
  });
});

describe("several sensors and one screen", () => {
  // Two hitters, five swings each in turn, clocks of their own.
  const whose = (i: number) => Math.floor(i / 5) % 2;
  const rowsOf = (hitter: number) => bats.flatMap((row, i) => (whose(i) === hitter ? [{ row, swing: i }] : []));
  const sensor = (hitter: number, clock: number) => ({
    bats: rowsOf(hitter).map(({ row }) => ({ ...row, time: row.time + clock })),
    apart: () => false,
  });

  test("each finds its own balls, whatever its clock", () => {
    const found = pairSensors([sensor(0, 250), sensor(1, -333)], balls);
    found.forEach((one, hitter) => {
      const own = rowsOf(hitter).map(({ swing }) => swing);
      expect("kind" in one ? [] : one.pairs.map(({ b }) => b)).toEqual(own);
    });
  });

  test("a ball that two sensors claim goes to neither unless one claim is far stronger", () => {
    const found = pairSensors([sensor(0, 250), sensor(0, 0)], balls);
    const claimed = found.flatMap((one) => ("kind" in one ? [] : one.pairs.map(({ b }) => b)));
    expect(new Set(claimed).size).toBe(claimed.length);
    for (const one of found) expect("kind" in one ? 0 : one.pairs.length).toBe(0);
  });
});
