import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { circular } from "../../src/stats/circular.ts";
import { rayleigh } from "../../src/stats/rayleigh.ts";
import { unitVector } from "../../src/stats/unit-vector.ts";
import { expectNear, numbersIn, reordered, WRONG_VALUES } from "./samples.ts";

/** Minutes on a clock face. */
const minutes = fc.array(fc.integer({ min: -1440, max: 1440 }), { maxLength: 20 });

/** Smallest way round from one direction to another. */
const apart = (a: number, b: number, period: number) => {
  const way = (((a - b) % period) + period) % period;
  return Math.min(way, period - way);
};

describe("a direction as a vector", () => {
  test("quarter turns are exact, on any turn and either way", () => {
    for (const turns of [0, 1, -3]) expect(unitVector(turns)).toEqual({ cosine: 1, sine: expect.closeTo(0, 20) });
    expect(unitVector(0.25).sine).toBe(1);
    expect(unitVector(0.25).cosine + 0).toBe(0);
    expect(unitVector(-0.25).sine).toBe(-1);
    expect(unitVector(0.75).sine).toBe(-1);
    expect(unitVector(0.5).cosine).toBe(-1);
    expect(unitVector(-0.5).cosine).toBe(-1);
    expect(unitVector(7.25).sine).toBe(1);
  });

  test("it has length 1 and the cosine and sine of the angle", () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), (turns) => {
        const { cosine, sine } = unitVector(turns);
        expectNear(cosine, Math.cos(2 * Math.PI * turns), 1e-14);
        expectNear(sine, Math.sin(2 * Math.PI * turns), 1e-14);
      }),
    );
  });
});

describe("the mean of pitch axes on a clock face", () => {
  test("half past eleven and half past twelve have noon as their mean, and 12 is 0", () => {
    const found = circular([11.5, 0.5], 12)!;
    expect(Object.is(found.meanDirection, 0)).toBe(true);
    expectNear(found.resultantLength, Math.cos(Math.PI / 12), 1e-15);
    expect(circular([12], 12)!.meanDirection).toBe(0);
    expect(Object.is(circular([-0], 12)!.meanDirection, 0)).toBe(true);
    expect(circular([11.5, 11.75, 12, 0.25, 0.5], 12)!.meanDirection).toBeLessThan(12);
    expectNear(circular([11.9999], 12)!.meanDirection, 11.9999, 1e-12);
  });

  test("four quarters by hand", () => {
    const found = circular([0, 90], 360)!;
    expect(found).toMatchObject({ n: 2, cosine: 0.5, sine: 0.5 });
    expectNear(found.meanDirection, 45, 1e-14);
    expectNear(found.resultantLength, Math.SQRT1_2, 1e-15);
    expectNear(found.variance, 1 - Math.SQRT1_2, 1e-15);
    // sqrt(-2 ln sqrt(1/2)) = sqrt(ln 2).
    expectNear(found.sdRadians, Math.sqrt(Math.LN2), 1e-15);
    expectNear(found.sd, (Math.sqrt(Math.LN2) * 180) / Math.PI, 1e-14);
    expectNear(circular([270, 180], 360)!.meanDirection, 225, 1e-14);
    // R = 1/3 from three of which two are opposite: below one half the SD comes from R itself.
    const short = circular([0, 90, 270], 360)!;
    expect(short.meanDirection).toBe(0);
    expectNear(short.resultantLength, 1 / 3, 1e-15);
    expectNear(short.sdRadians, Math.sqrt(2 * Math.log(3)), 1e-15);
  });

  test("opposite directions have no mean and no SD", () => {
    for (const list of [
      [3, 9],
      [0, 4, 8],
      [0, 3, 6, 9],
      [1.3, 7.3],
      [0, 2.4, 4.8, 7.2, 9.6],
    ]) {
      expect(circular(list, 12)).toMatchObject({
        n: list.length,
        meanDirection: null,
        resultantLength: 0,
        variance: 1,
        sdRadians: null,
        sd: null,
      });
    }
    expect(circular([3, 9, 3.1, 9.2], 12)!.meanDirection).toBeCloseTo(0.15, 9);
  });

  test("none have no summary; one and equal ones have no spread at all", () => {
    expect(circular([], 12)).toBeNull();
    for (const list of [[7.1], [7.1, 7.1, 7.1]]) {
      const found = circular(list, 12)!;
      expectNear(found.meanDirection, 7.1, 1e-14);
      expect(found.resultantLength).toBe(1);
      expect(found.sdRadians).toBeLessThan(1e-15);
      expect(found.variance).toBeLessThan(1e-30);
    }
  });

  test("a small spread keeps its digits", () => {
    // Two directions d apart: R = cos(d/2), variance about d^2 / 8.
    const found = circular([0, 1e-6], 2 * Math.PI)!;
    expectNear(found.variance * 1e12, 0.125, 1e-9);
    expectNear(found.sdRadians! * 1e6, 0.5, 1e-9);
  });

  test("turning all directions turns the mean; order, whole turns and the way round carry over", () => {
    fc.assert(
      fc.property(reordered(minutes), fc.integer({ min: -2000, max: 2000 }), ([list, other], turn) => {
        const found = circular(list, 720);
        if (found === null) {
          expect(list).toEqual([]);
          return;
        }
        for (const [got, wanted] of [
          [circular(other, 720)!, found.meanDirection],
          [
            circular(
              list.map((value) => value + turn),
              720,
            )!,
            found.meanDirection === null ? null : found.meanDirection + turn,
          ],
          [
            circular(
              list.map((value) => value + 720),
              720,
            )!,
            found.meanDirection,
          ],
          [
            circular(
              list.map((value) => -value),
              720,
            )!,
            found.meanDirection === null ? null : -found.meanDirection,
          ],
        ] as const) {
          expectNear(got.resultantLength, found.resultantLength, 1e-12);
          if (found.resultantLength < 1e-9) continue;
          expect(apart(got.meanDirection!, wanted!, 720)).toBeLessThan(1e-3 * (1e-9 / found.resultantLength) + 1e-9);
          expectNear(got.sd, found.sd, 1e-6);
        }
      }),
    );
  });

  test("another unit carries over", () => {
    fc.assert(
      fc.property(minutes, (list) => {
        const [a, b] = [
          circular(list, 720),
          circular(
            list.map((value) => value * 2),
            1440,
          ),
        ];
        expect(b?.meanDirection ?? null).toBe(a?.meanDirection == null ? null : a.meanDirection * 2);
        expect(b?.resultantLength).toBe(a?.resultantLength);
        expect(b?.sd ?? null).toBe(a?.sd == null ? null : a.sd * 2);
      }),
    );
  });

  test("wrong calls are refused, and any other answer is a number in range", () => {
    for (const wrong of WRONG_VALUES) expect(() => circular([1, wrong], 12)).toThrow(RangeError);
    for (const period of [0, -12, 1e-151, 1e151, ...WRONG_VALUES])
      expect(() => circular([1], period)).toThrow(RangeError);
    expect([circular([1e-150], 1e-150)!.meanDirection, circular([1e150], 1e150)!.meanDirection]).toEqual([0, 0]);
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1e150, max: 1e150, noNaN: true }), { minLength: 1, maxLength: 9 }),
        fc.constantFrom(12, 24, 360, 1e-150, 1e150),
        (list, period) => {
          const found = circular(list, period)!;
          expect(numbersIn([found, rayleigh(found)]).every(Number.isFinite)).toBe(true);
          expect(found.meanDirection ?? 0).toBeGreaterThanOrEqual(0);
          expect(found.meanDirection ?? 0).toBeLessThan(period);
          expect(found.resultantLength).toBeGreaterThanOrEqual(0);
          expect(found.resultantLength).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});

describe("Rayleigh's test", () => {
  const at = (n: number, resultantLength: number) => rayleigh({ n, resultantLength, variance: 1 - resultantLength });

  test("directions that cancel say nothing, like ones say much", () => {
    expect(at(10, 0)).toEqual({ z: 0, pZar: 1, pMardia: 1 });
    const all = at(10, 1);
    expect(all.z).toBe(10);
    // exp(sqrt(41) - 21).
    expectNear(all.pZar / Math.exp(Math.sqrt(41) - 21), 1, 1e-12);
    expect(all.pMardia).toBe(0);
  });

  test("turtles agree with R's circular package", () => {
    // circular 0.4-95, rayleigh.test(turtles), as in tests/reference/stats/circular.json.
    const test = rayleigh(circular([40, 303, 326, 285, 296, 314, 20, 308, 299, 296], 360)!);
    expectNear(test.z, 6.70187216165179, 1e-12);
    expectNear(test.pZar, 0.000389790701209327, 1e-14);
    expectNear(test.pMardia, 0.000305399546463317, 1e-14);
  });

  test("from 50 on the series is dropped", () => {
    const z = 3;
    expectNear(at(50, Math.sqrt(z / 50)).pMardia, Math.exp(-3), 1e-14);
    // Series for n = 49 and z = 3: 1 + (6 - 9) / 196 - (72 - 1188 + 2052 - 729) / (288 x 2401).
    expectNear(at(49, Math.sqrt(z / 49)).pMardia, Math.exp(-3) * (1 - 3 / 196 - 207 / (288 * 2401)), 1e-14);
  });
});
