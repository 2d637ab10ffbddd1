import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { bootstrap, completeBootstrap } from "../../src/stats/bootstrap.ts";
import type { Statistic } from "../../src/stats/bootstrap-statistic.ts";
import { acceleration } from "../../src/stats/jackknife.ts";
import { mean } from "../../src/stats/mean.ts";
import { median } from "../../src/stats/median.ts";
import { expectNear, numbersIn, speed, speeds, WRONG_VALUES } from "./samples.ts";

const meanOf =
  (x: readonly number[]): Statistic =>
  (rows) =>
    mean(Array.from(rows, (i) => x[i]!));
const medianOf =
  (x: readonly number[]): Statistic =>
  (rows) =>
    median(Array.from(rows, (i) => x[i]!));
const slopeOf =
  (x: readonly number[], y: readonly number[]): Statistic =>
  (rows) => {
    const [middleX, middleY] = [mean(Array.from(rows, (i) => x[i]!)), mean(Array.from(rows, (i) => y[i]!))];
    let [squares, products] = [0, 0];
    for (const i of rows) {
      squares += (x[i]! - middleX!) ** 2;
      products += (x[i]! - middleX!) * (y[i]! - middleY!);
    }
    return squares === 0 ? null : products / squares;
  };

const ten = [249.56, 258.7047, 250.8006, 321.4398, 356.8519, 414.6901, 382.2038, 290.1486, 430.5853, 466.3535];
const draws = { seed: 3, resamples: 400 };

const Bca = z.object({ z0: z.number(), levels: z.array(z.number()), interval: z.array(z.number()) });
const Case = z.object({
  id: z.string(),
  inputs: z.object({
    statistic: z.enum(["mean", "median", "slope"]),
    confLevel: z.number(),
    x: z.array(z.number()),
    y: z.array(z.number()).optional(),
  }),
  expected: z.object({
    estimate: z.number(),
    bootstrapSe: z.number(),
    bias: z.number(),
    probBelow: z.number(),
    probEqual: z.number(),
    acceleration: z.number(),
    percentile: z.array(z.number()),
    bcaStrict: Bca,
    bcaHalfTies: Bca,
    probDegenerate: z.number().optional(),
  }),
});
// Complete enumeration of all resamples in Python with NumPy; the source stands in the file.
const file = readFileSync(new URL("../reference/stats/bootstrap.json", import.meta.url), "utf8");
const { cases } = z.object({ cases: z.array(Case).min(1) }).parse(JSON.parse(file));

describe("every resample there is", () => {
  test.each(cases)("$id agrees with the enumeration in the reference file", ({ inputs, expected }) => {
    const { statistic, confLevel, x, y = [] } = inputs;
    const figure = { mean: meanOf(x), median: medianOf(x), slope: slopeOf(x, y) }[statistic];
    const found = completeBootstrap(x.length, figure, confLevel)!;
    const near = (got: number, wanted: number) => expectNear(got, wanted, 1e-9);
    near(found.estimate, expected.estimate);
    near(found.se!, expected.bootstrapSe);
    near(found.meanShift, expected.bias);
    near(found.shareBelow, expected.probBelow);
    near(found.shareEqual, expected.probEqual);
    near(found.acceleration!, expected.acceleration);
    near(found.shareWithout, expected.probDegenerate ?? 0);
    expect(found.level).toBe(confLevel);
    for (const end of [0, 1] as const) {
      near(found.percentile[end], expected.percentile[end]!);
      for (const [got, wanted] of [
        [found.bca!, expected.bcaHalfTies],
        [found.bcaStrict!, expected.bcaStrict],
      ] as const) {
        near(got.bias, wanted.z0);
        near(got.levels[end], wanted.levels[end]!);
        near(got.interval[end], wanted.interval[end]!);
      }
    }
  });

  test("of two swings are four", () => {
    const found = completeBootstrap(2, meanOf([0, 2]), 0.5)!;
    // Means 0, 1, 1 and 2; both tails of a quarter are reached exactly.
    expect(found).toMatchObject({
      estimate: 1,
      se: Math.SQRT1_2,
      meanShift: 0,
      shareBelow: 0.25,
      shareEqual: 0.5,
      acceleration: 0,
    });
    expect(found.percentile).toEqual([0, 1]);
    expect(found.bca).toMatchObject({ bias: 0, interval: [0, 1] });
    expectNear(found.bca!.levels[0], 0.25, 1e-14);
    // z0 is the quartile -0.6745, so the levels are those of -3 and -1 quartiles.
    expectNear(found.bcaStrict!.levels[0], 0.021512395369194769, 1e-12);
    expectNear(found.bcaStrict!.levels[1], 0.25, 1e-12);
    expect(completeBootstrap(2, meanOf([0, 2]))!.percentile).toEqual([0, 2]);
    expect(completeBootstrap(2, meanOf([0, 2]))!.level).toBe(0.95);
  });

  test("shares leave out resamples without the figure", () => {
    // Two points: two of the four resamples have one x, and both others the slope 3.
    const found = completeBootstrap(2, slopeOf([0, 1], [0, 3]));
    expect(found).toMatchObject({
      estimate: 3,
      shareWithout: 0.5,
      shareEqual: 1,
      shareBelow: 0,
      percentile: [3, 3],
      se: 0,
    });
    expect(found).toMatchObject({ acceleration: null, bca: null, bcaStrict: null });
  });

  test("stops at ten rows", () => {
    expect(completeBootstrap(10, meanOf(ten))).not.toBeNull();
    expect(() => completeBootstrap(11, meanOf([...ten, 1]))).toThrow(RangeError);
  });
});

describe("a seeded run", () => {
  test("repeats to the bit, and another seed draws others", () => {
    expect(bootstrap(10, meanOf(ten), draws)).toEqual(bootstrap(10, meanOf(ten), draws));
    const runs = [0, 1, 2, 3, 2 ** 32 - 1].map((seed) => bootstrap(10, meanOf(ten), { ...draws, seed })!.se);
    expect(new Set(runs).size).toBe(runs.length);
  });

  test("stays the same on every machine and in every version", () => {
    // Not from outside: a change here changes figures that were printed before.
    const drawn: number[] = [];
    bootstrap(3, (rows) => drawn.push(...rows), { seed: 1, resamples: 4 });
    expect(drawn.slice(3, 15)).toEqual([1, 2, 0, 2, 2, 1, 1, 1, 0, 2, 0, 0]);
  });

  test("draws every row alike, as many as there are", () => {
    const times = [0, 0, 0, 0, 0];
    let sizes = 0;
    bootstrap(
      5,
      (rows) => {
        for (const row of rows) times[row]! += 1;
        sizes += rows.length;
        return rows[0]!;
      },
      { seed: 11, resamples: 4000 },
    );
    // The rows as they are, 4000 resamples of 5, and 5 lists without one.
    expect(sizes).toBe(5 + 20_000 + 20);
    // Five SDs of a count of mean 4000: 5 sqrt(20000 x 0.2 x 0.8) = 283; 5 more come from the lists that are not drawn.
    for (const count of times) expect(Math.abs(count - 4005)).toBeLessThan(283);
  });

  test("comes near the complete distribution", () => {
    const exact = completeBootstrap(10, meanOf(ten))!;
    const drawn = bootstrap(10, meanOf(ten), { seed: 20_251_006, resamples: 40_000 })!;
    // Monte Carlo: the SD of an SD of 40,000 is 24 / sqrt(80,000) = 0.085, that of their mean 0.12, that of a share 0.0025.
    expect(Math.abs(drawn.se! - exact.se!)).toBeLessThan(0.43);
    expect(Math.abs(drawn.meanShift - exact.meanShift)).toBeLessThan(0.6);
    expect(Math.abs(drawn.shareBelow - exact.shareBelow)).toBeLessThan(0.0125);
    expect(drawn.acceleration).toBe(exact.acceleration);
    expect(drawn.percentile).not.toEqual(exact.percentile);
  });

  test("one resample has no spread, two have that of two values", () => {
    const one = bootstrap(3, meanOf([1, 2, 4]), { seed: 5, resamples: 1 })!;
    expect(one).toMatchObject({ se: null, shareWithout: 0 });
    expect(one.percentile[0]).toBe(one.percentile[1]);
    const seen: number[] = [];
    const two = bootstrap(3, (rows) => seen[seen.push(meanOf([1, 2, 4])(rows)!) - 1]!, { seed: 5, resamples: 2 })!;
    const [a, b] = [seen[1]!, seen[2]!];
    expect(a).not.toBe(b);
    expectNear(two.se, Math.abs(a - b) / Math.SQRT2, 1e-12);
    expectNear(two.meanShift, (a + b) / 2 - 7 / 3, 1e-12);
  });

  test("resamples without the figure are counted and left out", () => {
    const slope = slopeOf([0, 1], [0, 3]);
    const found = bootstrap(2, slope, { seed: 8, resamples: 1000 })!;
    expect(found.percentile).toEqual([3, 3]);
    // Half of them, within five SDs of 0.0158.
    expect(Math.abs(found.shareWithout - 0.5)).toBeLessThan(0.079);
  });
});

describe("too little for a bootstrap, and wrong calls", () => {
  test("no swings have none, one and equal ones have themselves and no acceleration", () => {
    expect(bootstrap(0, meanOf([]), draws)).toBeNull();
    expect(bootstrap(0, () => 1, draws)).toBeNull();
    expect(bootstrap(2, () => null, draws)).toBeNull();
    let asked = 0;
    expect(bootstrap(2, () => (asked++ === 0 ? 1 : null), draws)).toBeNull();
    for (const list of [[61], [61.3, 61.3, 61.3]]) {
      const found = bootstrap(list.length, meanOf(list), draws);
      expect(found).toMatchObject({ estimate: list[0], se: 0, meanShift: 0, shareEqual: 1, shareBelow: 0 });
      expect(found).toMatchObject({ percentile: [list[0], list[0]], acceleration: null, bca: null, bcaStrict: null });
    }
  });

  test("a figure that has all resamples on one side has no BCa interval", () => {
    // The largest value: no resample lies above, so half of the ties still leave room and none do not below.
    const largest = (rows: Int32Array) => Math.max(...Array.from(rows, (i) => [1, 5, 7][i]!));
    expect(completeBootstrap(3, largest)).toMatchObject({ estimate: 7, percentile: [1, 7] });
    expect(completeBootstrap(3, largest)!.bca).not.toBeNull();
    let asked = 0;
    const aside: Statistic = (rows) => (asked++ === 0 ? 100 : rows[0]!);
    expect(bootstrap(3, aside, draws)).toMatchObject({ shareBelow: 1, shareEqual: 0, bca: null, bcaStrict: null });
  });

  test.each([-1, 1.5, Number.NaN, 2 ** 32, Number.POSITIVE_INFINITY])("a seed of %s is refused", (seed) => {
    expect(() => bootstrap(3, meanOf([1, 2, 3]), { ...draws, seed })).toThrow(RangeError);
  });

  test.each([0, 1.5, -1, Number.NaN, Number.POSITIVE_INFINITY])("%s resamples or rows are refused", (count) => {
    expect(() => bootstrap(3, meanOf([1, 2, 3]), { ...draws, resamples: count })).toThrow(RangeError);
    if (count !== 0) expect(() => bootstrap(count, () => 1, draws)).toThrow(RangeError);
    if (count !== 0) expect(() => completeBootstrap(count, () => 1)).toThrow(RangeError);
  });

  test("a level outside 0..1 and a figure that is no number are refused, also in a resample alone", () => {
    for (const level of [0, 1, Number.NaN]) {
      expect(() => bootstrap(3, meanOf([1, 2, 3]), draws, level)).toThrow(RangeError);
      expect(() => completeBootstrap(3, meanOf([1, 2, 3]), level)).toThrow(RangeError);
    }
    for (const wrong of WRONG_VALUES) {
      expect(() => bootstrap(3, () => wrong, draws)).toThrow(RangeError);
      let asked = 0;
      expect(() => bootstrap(3, () => (asked++ === 0 ? 1 : wrong), draws)).toThrow(RangeError);
      expect(() => acceleration(3, () => wrong)).toThrow(RangeError);
    }
  });
});

describe("laws of the bootstrap", () => {
  test("adding and scaling carry over, limits are in order and nothing is NaN", () => {
    fc.assert(
      fc.property(speeds, speed, fc.nat(1000), (list, shift, seed) => {
        const run = { seed, resamples: 60 };
        const found = bootstrap(list.length, medianOf(list), run);
        if (found === null) {
          expect(list).toEqual([]);
          return;
        }
        const moved = bootstrap(list.length, medianOf(list.map((value) => value * 4 + shift)), run)!;
        expect(moved.percentile).toEqual(found.percentile.map((limit) => limit * 4 + shift));
        expect(moved.bca?.interval).toEqual(found.bca?.interval.map((limit) => limit * 4 + shift));
        expectNear(moved.acceleration, found.acceleration, 1e-9);
        expect(found.percentile[0]).toBeLessThanOrEqual(found.percentile[1]);
        for (const { interval } of [found.bca, found.bcaStrict].filter((one) => one !== null)) {
          expect(interval[0]).toBeLessThanOrEqual(interval[1]);
        }
        expect(numbersIn(found).every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  test("huge and tiny swings are no exception", () => {
    const wild = fc.array(
      fc.oneof(fc.double({ min: -1e150, max: 1e150, noNaN: true }), fc.constantFrom(0, 5e-324, 1e150)),
      { maxLength: 7 },
    );
    fc.assert(
      fc.property(wild, (list) => {
        expect(
          numbersIn(bootstrap(list.length, medianOf(list), { seed: 1, resamples: 40 })).every(Number.isFinite),
        ).toBe(true);
        expect(numbersIn(completeBootstrap(Math.min(5, list.length), meanOf(list))).every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 40 },
    );
    expectNear(acceleration(3, meanOf([0, 0, 3e140])), 1 / (6 * Math.sqrt(6)), 1e-12);
    expectNear(acceleration(3, meanOf([0, 0, 3e-140])), 1 / (6 * Math.sqrt(6)), 1e-12);
  });

  test("a tie is a tie in spite of rounding, and a small step on a large value is none", () => {
    // 0.1 + 0.2 in another order differs in the last digit.
    const noisy = [0.1, 0.2, 0.3];
    expectNear(completeBootstrap(3, (rows) => rows.reduce((sum, i) => sum + noisy[i]!, 0))!.shareEqual, 7 / 27, 1e-12);
    expectNear(completeBootstrap(2, meanOf([1e9, 1e9 + 1]))!.shareEqual, 0.5, 1e-12);
  });

  test("acceleration is that of one far swing, turns with the sign and needs every row left out", () => {
    expectNear(acceleration(3, meanOf([0, 0, 3])), 1 / (6 * Math.sqrt(6)), 1e-14);
    expectNear(acceleration(3, meanOf([0, 0, -3])), -1 / (6 * Math.sqrt(6)), 1e-14);
    expect(acceleration(1, () => 4)).toBeNull();
    expect(acceleration(2, slopeOf([0, 1], [0, 3]))).toBeNull();
    expect(acceleration(4, meanOf([0.1, 0.1, 0.1, 0.1]))).toBeNull();
  });

  test("so strong an acceleration that a limit runs off leaves no interval", () => {
    // a = 1/6 at most for one far swing among many: at a level of 1 - 1e-12 the upper normal quantile is 7.1, and 1 - a z < 0.
    const list = [...new Array(59).fill(0), 1];
    const spike = acceleration(60, meanOf(list))!;
    expectNear(spike, ((59 * 58) / (6 * (59 * 60) ** 1.5)) * 60, 1e-9);
    expect(bootstrap(60, meanOf(list), draws, 1 - 1e-12)).toMatchObject({ bca: null });
    expect(bootstrap(60, meanOf(list), draws, 0.9)!.bca).not.toBeNull();
  });
});
