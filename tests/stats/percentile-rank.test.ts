import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { percentileRank } from "../../src/stats/percentile-rank.ts";
import { jeffreys, wilson } from "../../src/stats/proportion-ci.ts";
import { numbersIn, reordered, speed, speeds, WRONG_VALUES } from "./samples.ts";

const peers = fc.array(speed, { minLength: 1, maxLength: 30 });

describe("known answers", () => {
  test("two of four peers below and one equal: 50, 75 and half-way between", () => {
    const rank = percentileRank([66, 60, 64, 62], 64, 0.95)!;
    expect(rank).toMatchObject({ n: 4, below: 2, equal: 1, strict: 50, weak: 75, mean: 62.5 });
    const percent = (limits: readonly number[]) => limits.map((limit) => 100 * limit);
    // Half a peer counts: 2.5 of 4; at or below are 3 of 4.
    expect(rank.wilsonMean).toEqual(percent(wilson(2.5, 4, 0.95)));
    expect(rank.jeffreysMean).toEqual(percent(jeffreys(2.5, 4, 0.95)));
    expect(rank.wilsonWeak).toEqual(percent(wilson(3, 4, 0.95)));
  });

  test("above all, below all and between two", () => {
    expect(percentileRank([60, 62], 70, 0.95)).toMatchObject({ strict: 100, weak: 100, mean: 100 });
    expect(percentileRank([60, 62], 50, 0.95)).toMatchObject({ strict: 0, weak: 0, mean: 0 });
    expect(percentileRank([60, 62], 61, 0.95)).toMatchObject({ strict: 50, weak: 50, mean: 50 });
  });
});

describe("few peers and equal ones", () => {
  test("none give no rank; one, two and equal ones give one in the middle", () => {
    expect(percentileRank([], 60, 0.95)).toBeNull();
    for (const list of [[60], [60, 60], [60, 60, 60, 60]]) {
      expect(percentileRank(list, 60, 0.95)).toMatchObject({ equal: list.length, strict: 0, weak: 100, mean: 50 });
    }
  });
});

describe("laws", () => {
  test("the order of the peers and another unit change nothing", () => {
    fc.assert(
      fc.property(reordered(peers), speed, speed, ([list, other], value, shift) => {
        const rank = percentileRank(list, value, 0.9);
        expect(percentileRank(other, value, 0.9)).toEqual(rank);
        const moved = list.map((peer) => 4 * peer + shift);
        expect(percentileRank(moved, 4 * value + shift, 0.9)).toEqual(rank);
      }),
    );
  });

  test("turned round, those below become those above and the half-way rank its rest to 100", () => {
    fc.assert(
      fc.property(peers, speed, (list, value) => {
        const rank = percentileRank(list, value, 0.9)!;
        const turned = percentileRank(
          list.map((peer) => -peer),
          -value,
          0.9,
        )!;
        expect(turned.below).toBe(list.length - rank.below - rank.equal);
        expect(turned.mean + rank.mean).toBeCloseTo(100, 10);
        expect(turned.strict + rank.weak).toBeCloseTo(100, 10);
        expect(turned.wilsonMean[0] + rank.wilsonMean[1]).toBeCloseTo(100, 10);
      }),
    );
  });

  test("a faster value never ranks lower, and the three ranks are in order, each inside its interval", () => {
    fc.assert(
      fc.property(peers, speed, speed, (list, a, b) => {
        const [slow, fast] = [percentileRank(list, Math.min(a, b), 0.95)!, percentileRank(list, Math.max(a, b), 0.95)!];
        for (const kind of ["strict", "weak", "mean"] as const) expect(slow[kind]).toBeLessThanOrEqual(fast[kind]);
        for (const { strict, weak, mean, wilsonMean, wilsonWeak } of [slow, fast]) {
          expect(strict).toBeLessThanOrEqual(mean);
          expect(mean).toBeLessThanOrEqual(weak);
          expect(wilsonMean[0]).toBeLessThanOrEqual(mean);
          expect(wilsonMean[1]).toBeGreaterThanOrEqual(mean);
          expect(wilsonWeak[0]).toBeLessThanOrEqual(weak);
          expect(wilsonWeak[1]).toBeGreaterThanOrEqual(weak);
        }
      }),
    );
  });

  test("no result is ever NaN or outside 0 to 100, but for the counts", () => {
    fc.assert(
      fc.property(speeds, fc.double({ min: -1e150, max: 1e150, noNaN: true }), (list, value) => {
        const rank = percentileRank(list, value, 0.99);
        if (rank === null) {
          expect(list).toEqual([]);
          return;
        }
        for (const one of numbersIn({ ...rank, n: 0, below: 0, equal: 0 })) {
          expect(one).toBeGreaterThanOrEqual(0);
          expect(one).toBeLessThanOrEqual(100);
        }
      }),
    );
  });
});

describe("wrong calls", () => {
  test.each(WRONG_VALUES)("a peer or a value of %s is refused, also without peers", (wrong) => {
    expect(() => percentileRank([60, wrong], 60, 0.95)).toThrow(/peers\[1\] must be a finite number/);
    expect(() => percentileRank([], wrong, 0.95)).toThrow(/value\[0\] must be a finite number/);
  });

  test("a level of 1 is refused, also without peers", () => {
    expect(() => percentileRank([60], 60, 1)).toThrow(/level above 0 and below 1/);
    expect(() => percentileRank([], 60, 1)).toThrow(/level above 0 and below 1/);
  });
});
