import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { localLine, tricube } from "../../src/stats/local-line.ts";
import { loess } from "../../src/stats/loess.ts";
import { lowess } from "../../src/stats/lowess.ts";
import { nearestPoints } from "../../src/stats/nearest-points.ts";
import {
  expectNear,
  linePoints,
  numbersIn,
  points,
  reordered,
  speed,
  speedsOf,
  WRONG_VALUES,
  weeksOf,
} from "./samples.ts";

const span = fc.constantFrom(0.3, 0.5, 0.75, 1);
const five = { x: [1, 2, 3, 4, 5], y: [2, 4, 3, 7, 8] };
const wild = fc.oneof(
  speed,
  fc.double({ min: -1e150, max: 1e150, noNaN: true }),
  fc.constantFrom(0, 5e-324, 1e-200, 1e150, -1e150),
);
const wildPoints = fc.array(fc.tuple(wild, wild), { maxLength: 9 });
const nearAll = (got: ArrayLike<number | null>, wanted: readonly (number | null)[], allowed = 1e-9) => {
  expect(got).toHaveLength(wanted.length);
  wanted.forEach((value, i) => {
    expectNear(got[i]!, value, allowed);
  });
};

describe("the points nearest to a place", () => {
  test("are a run of the sorted ones", () => {
    expect(nearestPoints([0, 1, 5], 2, 2)).toEqual({ first: 0, count: 2, bandwidth: 2 });
    expect(nearestPoints([0, 1, 5], 4, 2)).toEqual({ first: 1, count: 2, bandwidth: 3 });
    expect(nearestPoints([0, 1, 2], 1, 2)).toEqual({ first: 0, count: 2, bandwidth: 1 });
    expect(nearestPoints([0, 1, 5], -3, 1)).toEqual({ first: 0, count: 1, bandwidth: 3 });
    expect(nearestPoints([0, 1, 5], 9, 3)).toEqual({ first: 0, count: 3, bandwidth: 9 });
    expect(nearestPoints([4, 4, 4, 4], 4, 2).bandwidth).toBe(0);
  });

  test("reach as far as the q-th smallest distance", () => {
    fc.assert(
      fc.property(fc.array(speed, { minLength: 1, maxLength: 20 }), speed, fc.nat(), (list, at, pick) => {
        const count = 1 + (pick % list.length);
        const sorted = list.sort((a, b) => a - b);
        const distances = sorted.map((value) => Math.abs(value - at)).sort((a, b) => a - b);
        const { first, bandwidth } = nearestPoints(sorted, at, count);
        expect(bandwidth).toBe(distances[count - 1]);
        expect(sorted.slice(first, first + count)).toHaveLength(count);
      }),
    );
  });
});

describe("a local line", () => {
  test("goes through two points, is a mean where all stand at one x, and nothing without weights", () => {
    expect(localLine([-1, 1], [2, 4], [1, 1])).toEqual({ mean: 3, spread: 1, centre: 0, value: 3 });
    expect(localLine([1, 2], [2, 4], [1, 0.5])!.value).toBeCloseTo(0, 12);
    expect(localLine([2, 2, 9], [1, 5, 100], [1, 3, 0])).toEqual({ mean: 4, spread: 0, centre: 2, value: null });
    expect(localLine([1, 2], [2, 4], [0, 0])).toBeNull();
    expect(localLine([], [], [])).toBeNull();
  });

  test("weighs: the mean and the spread are those of the weights", () => {
    const line = localLine([0, 4], [10, 20], [3, 1])!;
    expectNear(line.mean, 12.5, 1e-14);
    expectNear(line.centre, 1, 1e-14);
    expectNear(line.spread, Math.sqrt(3), 1e-14);
    expectNear(line.value, 10, 1e-14);
    // Least squares by hand: x 0, 1, 2 and y 0, 0, 3 with weights 1, 2, 1 give slope 1.5 and 0.75 in the middle.
    expectNear(localLine([0, 1, 2], [0, 0, 3], [1, 2, 1])!.value, -0.75, 1e-14);
  });

  test("does not lose a point that hardly counts", () => {
    expectNear(localLine([1, 2], [5, 9], [1, 1e-45])!.value, 1, 1e-9);
  });

  test("tricube falls from 1 to 0", () => {
    expect([tricube(0, 2), tricube(2, 2)]).toEqual([1, 0]);
    expectNear(tricube(1, 2), 0.669921875, 1e-15);
  });
});

describe("a smooth curve through sessions", () => {
  test("is null where the points settle nothing", () => {
    // Two nearest: the farther has no weight. At a point the nearer one is the curve, beside it there is no line.
    expect(loess(five.x, five.y, [1, 2, 2.5, 3.2], 0.4)).toEqual([2, 4, null, null]);
    expect(loess(five.x, five.y, [1, 2.2], 0.2)).toEqual([null, null]);
    expect(loess(five.x, five.y, [1], 0.1)).toEqual([null]);
    expect(loess([1, 1, 1, 2, 3], [2, 4, 3, 7, 8], [1, 2, 1.5], 0.6)).toEqual([null, 7, null]);
    expect(loess([1, 1, 1, 2, 2], [2, 3, 7, 9, 4], [1, 1.5, 2, 5], 1)).toEqual([4, null, 6.5, null]);
    expect(loess([1, 1, 1], [2, 3, 7], [1, 1.5], 1)).toEqual([null, null]);
    expect(loess([1], [2], [1], 1)).toEqual([null]);
    expect(loess([1, 2], [2, 3], [1, 1.5, 2, 1.2], 1)).toEqual([2, null, 3, null]);
    expect(loess([], [], [1], 1)).toEqual([null]);
    expect(loess(five.x, five.y, [], 1)).toEqual([]);
    expect(loess(five.x, five.y, [1e20], 1)).toEqual([null]);
  });

  test("three points agree with R", () => {
    // R 4.2.2: loess(degree = 1, span = 1, surface = "direct") on (1, 2), (2, 3), (3, 7).
    nearAll(loess([3, 1, 2], [7, 2, 3], [1, 1.5, 2, 1.2, 3], 1), [2, 2.5, 3, 2.2, 7]);
    // The same on seven points, span 5/7; one of them lies at 0.9998 of the bandwidth.
    nearAll(loess([0, 1, 2, 2.9995, -3, 5, 6], [1, 5, 2, 9, 4, 7, 1], [0], 5 / 7), [1.83840590583477], 1e-12);
  });

  test("a span of exactly three points of ten sees three, in spite of rounding", () => {
    const x = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9];
    const y = x.map((at) => at * at);
    // Three nearest of 0: 0 and 1 have weights, a line through them.
    expect(loess(x, y, [0.25], 0.3)[0]).toBeCloseTo(0.25, 12);
    expect(loess(x, y, [0.25], 0.299999)[0]).toBeCloseTo(0.25, 12);
    expect(loess(x, y, [0.25], 0.2999)).toEqual([null]);
  });

  test("a straight line stays one, and so does a level", () => {
    fc.assert(
      fc.property(linePoints, speed, speed, span, (list, slope, start, seen) => {
        const x = weeksOf(list);
        const y = x.map((week) => start + slope * week);
        loess(x, y, x, seen).forEach((value, i) => {
          if (value !== null) expectNear(value, y[i]!, 1e-11);
        });
        for (const rounds of [0, 3]) {
          const curve = lowess(
            x,
            x.map(() => start),
            seen,
            rounds,
          );
          expect([...curve.y]).toEqual(x.map(() => start));
        }
      }),
    );
  });

  test("order does not count; adding, scaling and moving carry over", () => {
    fc.assert(
      fc.property(reordered(points), speed, span, ([list, other], shift, seen) => {
        const at = [0, 3.5, 20];
        const found = loess(weeksOf(list), speedsOf(list), at, seen);
        nearAll(loess(weeksOf(other), speedsOf(other), at, seen), found);
        const moved = loess(
          weeksOf(list).map((week) => 2 * week + 8),
          speedsOf(list).map((y) => 4 * y + shift),
          at.map((place) => 2 * place + 8),
          seen,
        );
        nearAll(
          moved,
          found.map((value) => (value === null ? null : 4 * value + shift)),
          1e-7,
        );
      }),
    );
  });
});

describe("a curve that odd sessions do not move", () => {
  // R 4.2.2: lowess(x, y, f, iter, delta = 0).
  test.each([
    ["one point", [1], [5], 1, 3, [1], [5]],
    ["one x", [1, 1, 1], [2, 3, 7], 1, 0, [1, 1, 1], [4, 4, 4]],
    [
      "one x with rounds",
      [1, 1, 1],
      [2, 3, 7],
      1,
      3,
      [1, 1, 1],
      [3.88911284797526, 3.88911284797526, 3.88911284797526],
    ],
    [
      "more points at one x than the span has",
      [1, 1, 1, 2, 3],
      [2, 4, 3, 7, 8],
      0.6,
      0,
      [1, 1, 1, 2, 3],
      [3, 3, 3, 7, 8],
    ],
    ["two points in the span", [1, 2, 3, 4, 5], [2, 4, 3, 7, 8], 0.4, 0, [1, 2, 3, 4, 5], [2, 4, 3, 7, 8]],
    ["fewer than two, so two", [1, 2, 3, 4, 5], [2, 4, 3, 7, 8], 0.1, 3, [1, 2, 3, 4, 5], [2, 4, 3, 7, 8]],
    ["a level", [1, 2, 3, 4, 5], [5, 5, 5, 5, 5], 0.6, 3, [1, 2, 3, 4, 5], [5, 5, 5, 5, 5]],
    ["ties out of order", [3, 1, 2, 2, 1], [5, 1, 2, 8, 9], 0.8, 3, [1, 1, 2, 2, 3], [5, 5, 5, 5, 5]],
    ["two points", [1, 2], [3, 9], 1, 3, [1, 2], [3, 9]],
    [
      "a point between 0.999 and 1 of the bandwidth",
      [0, 1, 2, 2.9995, -3, 5, 6],
      [1, 5, 2, 9, 4, 7, 1],
      5 / 7,
      0,
      [-3, 0, 1, 2, 2.9995, 5, 6],
      [
        3.7083415555482, 1.83840590622997, 3.16697920386995, 5.19220559028613, 6.26678451415585, 4.60183729863354,
        2.86160659031007,
      ],
    ],
  ])("%s as in R", (_, x, y, seen, rounds, wantedX, wantedY) => {
    const curve = lowess(x, y, seen, rounds);
    expect([...curve.x]).toEqual(wantedX);
    nearAll(curve.y, wantedY, 1e-12);
  });

  test("no points have an empty curve", () => {
    expect(lowess([], [], 1)).toEqual({ x: new Float64Array(0), y: new Float64Array(0) });
  });

  test("three rounds are usual, and take one far session out of the curve", () => {
    const x = Array.from({ length: 41 }, (_, i) => i);
    const y = x.map((at) => (at === 20 ? 100 : at + (at % 3)));
    expect(lowess(x, y, 0.3)).toEqual(lowess(x, y, 0.3, 3));
    // R 4.2.2: lowess(x, y, 0.3, iter, delta = 0) at 0, 18, 20 and 40.
    for (const [rounds, wanted] of [
      [0, [0.69679670186729, 29.02403221258508, 32.23714361329878, 40.85882646900231]],
      [1, [0.686253224391357, 17.53784589575881, 20.666168169328916, 40.856707677253603]],
      [3, [0.684572597841508, 18.820554582771297, 20.831021943440508, 40.85634531073697]],
    ] as const) {
      const curve = lowess(x, y, 0.3, rounds).y;
      nearAll(
        [0, 18, 20, 40].map((at) => curve[at]!),
        wanted,
        1e-9,
      );
    }
  });

  test("scattered sessions agree with R round by round", () => {
    // R 4.2.2: lowess(x, y, 0.7, iter, delta = 0).
    const x = [1, 2, 4, 5, 7, 8, 11, 12, 13, 17];
    const y = [3, 1, 4, 1, 5, 9, 2, 6, 5, 3];
    const one = [1.71253027088634, 2.17128236962241, 3.21066197220018, 3.81458418939044, 5.23599543623095];
    const two = [1.75079667552855, 2.18970917343272, 3.18757365496339, 3.77236976897129, 5.14852977421585];
    nearAll([...lowess(x, y, 0.7, 1).y].slice(0, 5), one, 1e-9);
    nearAll([...lowess(x, y, 0.7, 2).y].slice(0, 5), two, 1e-9);
  });

  test("points that the curve runs through keep their weight", () => {
    // R loses one of these to the rounding of its residuals (1e-14) and gives -10 twice.
    const x = [-2.0435707609512, -2.0369470704297, -0.7110232627235, -0.6504648833069, -0.22184088633];
    expect(lowess(x, [-10, -4, 2, 7, 4], 0.6, 3).y[1]).toBeCloseTo(-4, 9);
  });

  test("where most sessions lie on the curve another round changes nothing", () => {
    const x = Array.from({ length: 21 }, (_, i) => i);
    const y = x.map((at) => (at === 5 ? 9 : 0));
    // R 4.2.2: lowess(x, y, 0.2, 3, delta = 0) at 3 to 7; the median distance is 0.
    const wanted = [0, 2.57679465776294, 3.84641068447412, 2.57679465776294, 0];
    nearAll([...lowess(x, y, 0.2, 3).y].slice(3, 8), wanted, 1e-12);
    expect(lowess(x, y, 0.2, 3)).toEqual(lowess(x, y, 0.2, 0));
  });

  test("order does not count", () => {
    fc.assert(
      fc.property(reordered(linePoints), span, ([list, other], seen) => {
        const first = new Map(list);
        const distinct = list.filter(([week, value]) => first.get(week) === value);
        const again = other.filter(([week, value]) => first.get(week) === value);
        const found = lowess(weeksOf(distinct), speedsOf(distinct), seen, 0);
        const shuffled = lowess(weeksOf(again), speedsOf(again), seen, 0);
        expect([...shuffled.x]).toEqual([...found.x]);
        nearAll(shuffled.y, [...found.y], 1e-8);
      }),
    );
  });
});

describe("wrong calls and wild values", () => {
  test("are refused, or answered without NaN", () => {
    for (const wrong of WRONG_VALUES) {
      expect(() => loess([1, wrong], [1, 2], [1], 1)).toThrow(RangeError);
      expect(() => loess([1, 2], [1, wrong], [1], 1)).toThrow(RangeError);
      expect(() => loess([1, 2], [1, 2], [wrong], 1)).toThrow(RangeError);
      expect(() => lowess([1, wrong], [1, 2], 1)).toThrow(RangeError);
      expect(() => lowess([1, 2], [1, wrong], 1)).toThrow(RangeError);
    }
    expect(() => loess([1, 2], [1], [1], 1)).toThrow(RangeError);
    expect(() => lowess([1, 2], [1], 1)).toThrow(RangeError);
    for (const seen of [0, -0.5, 1.01, Number.NaN]) {
      expect(() => loess([1, 2], [1, 2], [1], seen)).toThrow(RangeError);
      expect(() => lowess([1, 2], [1, 2], seen)).toThrow(RangeError);
    }
    for (const rounds of [-1, 0.5, Number.NaN]) expect(() => lowess([1, 2], [1, 2], 1, rounds)).toThrow(RangeError);
    fc.assert(
      fc.property(wildPoints, fc.array(wild, { maxLength: 4 }), span, (list, at, seen) => {
        const [x, y] = [weeksOf(list), speedsOf(list)];
        expect(numbersIn(loess(x, y, at, seen)).every(Number.isFinite)).toBe(true);
        for (const rounds of [0, 3]) expect(Array.from(lowess(x, y, seen, rounds).y).every(Number.isFinite)).toBe(true);
      }),
    );
  });
});
