import { describe, expect, test } from "vitest";
import { align } from "../../src/stats/alignment.ts";
import { score, scoreTurns } from "./two-devices.ts";

const SESSIONS = 200;
const RESTS = { every: 8, rounds: [5, 10], rest: [20, 60] } as const;

describe("two devices with known truth, by time alone", () => {
  test("2 s noise and 10 % missing on each side: 99 % of the pairs right, 95 % made, and confidence means what it says", () => {
    const { right, made, sure } = score({ noise: 2, missing: 0.1 }, SESSIONS, "a tenth missing");
    expect(right).toBeGreaterThanOrEqual(0.99);
    expect(made).toBeGreaterThanOrEqual(0.95);
    expect(Math.abs(sure.right - sure.confidence)).toBeLessThanOrEqual(0.03);
  });

  test("25 % missing: 98 % right", () => {
    expect(score({ noise: 2, missing: 0.25 }, SESSIONS, "a quarter missing").right).toBeGreaterThanOrEqual(0.98);
  });

  test("a machine's feed every 8 s with rests between rounds: 98 % right at 10 % missing, 96.5 % at 25 %", () => {
    expect(score({ noise: 2, missing: 0.1, machine: RESTS }, SESSIONS, "rests").right).toBeGreaterThanOrEqual(0.98);
    expect(score({ noise: 2, missing: 0.25, machine: RESTS }, SESSIONS, "rests").right).toBeGreaterThanOrEqual(0.965);
  });

  test("an endless feed looks the same when shifted by one swing, and a hopeless clock is hopeless: nothing is made", () => {
    const endless = { every: 8, rounds: [1000, 1000], rest: [0, 0] } as const;
    expect(score({ noise: 2, missing: 0.1, machine: endless }, SESSIONS, "endless").silent).toBe(SESSIONS);
    expect(score({ noise: 120, missing: 0.1 }, SESSIONS, "hopeless").silent).toBe(SESSIONS);
  });
});

describe("with the physics of bat and ball", () => {
  test("an endless feed can be told in most sessions, and hardly ever wrongly", () => {
    const endless = { every: 8, rounds: [1000, 1000], rest: [0, 0] } as const;
    const { right, silent } = score({ noise: 2, missing: 0.1, machine: endless }, SESSIONS, "endless", true);
    expect(silent).toBeLessThan(SESSIONS / 2);
    // A session shifted by one swing has hardly a right pair: at most one of sixteen.
    expect(right).toBeGreaterThan(15 / 16);
  });

  test("a fifth of false sensor rows and some false balls: 98 % of the pairs right, 93 % made", () => {
    const cell = { noise: 2, missing: 0.1, falseBat: 0.2, falseBall: 0.05 };
    const { right, made, sure } = score(cell, SESSIONS, "false", true);
    expect(right).toBeGreaterThanOrEqual(0.98);
    expect(made).toBeGreaterThanOrEqual(0.93);
    expect(Math.abs(sure.right - sure.confidence)).toBeLessThanOrEqual(0.03);
  });

  test("three hitters in turns, one sensor each: 98 % right", () => {
    const { right, made } = scoreTurns({ noise: 2, missing: 0.1 }, 3, SESSIONS, "turns");
    expect(right).toBeGreaterThanOrEqual(0.98);
    expect(made).toBeGreaterThanOrEqual(0.9);
  });
});

test("ten thousand swings a side take less than two seconds of the processor", () => {
  const times = Array.from({ length: 10_000 }, (_, i) => i * 15 + ((i * 7919) % 9));
  const start = process.cpuUsage();
  const found = align(
    times,
    times.map((time, i) => time + 33 + ((i * 104_729) % 100) / 40),
  );
  expect(process.cpuUsage(start).user / 1000).toBeLessThan(2000);
  expect("kind" in found ? 0 : found.pairs.length).toBeGreaterThan(9900);
});
