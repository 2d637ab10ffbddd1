import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { usualRange } from "../../src/report/flags.ts";
import { reportFor } from "../../src/report/report.ts";
import { randomFrom } from "../demo/random.ts";
import { input, type Rep, weekLater } from "./season.ts";

const swings = (count: number, more: Partial<Rep> = {}): Rep[] =>
  Array.from({ length: count }, (_, i) => ({
    date: weekLater(i % 5),
    environment: "tee",
    bat_speed: 60 + ((i * 7) % 11) / 5,
    ...more,
  }));
const misread: Rep = { date: weekLater(2), environment: "tee", bat_speed: 97 };

describe("a swing far from the hitter's own", () => {
  const reps = [...swings(30), misread];
  const { report } = reportFor({ ...input(reps), fileNames: ["data/swings/one.csv"] });

  test("is shown with its place, its value, what was to be expected, and the reason", () => {
    expect(report.flags).toHaveLength(1);
    expect(report.flags[0]).toMatchObject({
      metric: "bat_speed",
      condition: { environment: "tee" },
      date: weekLater(2),
      file: "data/swings/one.csv",
      line: 32,
      value: 97,
      reason: "far-from-own-swings",
    });
  });

  test("counts like any other: no figure moves", () => {
    expect(report.ledger.counted).toBe(31);
    expect(report.series[0]?.n).toBe(31);
    expect(report.series[0]?.sessions.some((session) => session.max === 97)).toBe(true);
  });

  test("is counted where its condition stands, in a pool too", () => {
    expect(report.series.map((one) => [one.measure, one.pooled, one.flagged])).toEqual([
      [0, true, 1],
      [null, false, 1],
    ]);
  });

  test("names no file where none are known", () => {
    expect(reportFor(input(reps)).report.flags[0]?.file).toBeNull();
  });

  test("is judged by the hitter's swings of that condition alone", () => {
    const heavy = swings(30, { implement: "heavy", bat_speed: 45 });
    expect(reportFor(input([...swings(30), ...heavy])).report.flags).toEqual([]);
  });
});

test("worked by hand: 20 swings of 1 to 20 have the median 10.5 and the MAD 5, so six SDs are 30 / 0.6744898", () => {
  const [low, high] = usualRange(
    Array.from({ length: 20 }, (_, i) => i + 1),
    1,
  )!;
  expect(low).toBeCloseTo(10.5 - 30 / 0.6744897501960817, 12);
  expect(high).toBeCloseTo(10.5 + 30 / 0.6744897501960817, 12);
});

test("nineteen swings flag nothing", () => {
  expect(reportFor(input([...swings(18), misread])).report.flags).toEqual([]);
  expect(usualRange(new Array(19).fill(60), 1)).toBeNull();
});

test("a device that rounds makes no odd swings of a quiet hitter's: one step of the last decimal is the least SD", () => {
  const [low, high] = usualRange([...new Array<number>(30).fill(60), 60.6], 1)!;
  expect(low).toBeCloseTo(59.4, 12);
  expect(high).toBeCloseTo(60.6, 12);
});

test("the order of swings and a fixed speed added flag the same swings", () => {
  const list = fc.array(fc.integer({ min: 0, max: 200 }), { minLength: 20, maxLength: 60 });
  fc.assert(
    fc.property(list, fc.integer({ min: -50, max: 50 }), (values, shift) => {
      const [low, high] = usualRange(values, 1)!;
      const moved = usualRange(values.map((value) => value + shift).toReversed(), 1)!;
      expect(moved[0] - shift).toBeCloseTo(low, 9);
      expect(moved[1] - shift).toBeCloseTo(high, 9);
    }),
  );
});

describe("how often an honest swing is flagged", () => {
  /** Swings outside their own range, of 40,000 in lots of 20. */
  const flagged = (draw: () => number) => {
    let found = 0;
    for (let lot = 0; lot < 2000; lot += 1) {
      const values = Array.from({ length: 20 }, draw);
      const [low, high] = usualRange(values, 6)!;
      found += values.filter((value) => value < low || value > high).length;
    }
    return found / 40_000;
  };

  test("of normal swings, even in lots of twenty, less than one in a thousand", () => {
    const random = randomFrom("honest swings");
    expect(flagged(() => random.normal(60, 2))).toBeLessThan(0.001);
  });

  test("of swings with heavy tails (Student's t, 3 degrees of freedom), about one in a hundred", () => {
    const random = randomFrom("heavy tails");
    const normal = () => random.normal(0, 1);
    const rate = flagged(() => normal() / Math.sqrt((normal() ** 2 + normal() ** 2 + normal() ** 2) / 3));
    expect(rate).toBeGreaterThan(0.004);
    expect(rate).toBeLessThan(0.016);
  });
});
