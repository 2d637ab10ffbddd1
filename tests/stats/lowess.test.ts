import { describe, expect, test } from "vitest";
import { lowess } from "../../src/stats/lowess.ts";
import { expectNear } from "./samples.ts";

const yOf = (x: readonly number[], y: readonly number[], span: number, rounds: number) => [
  ...lowess(x, y, span, rounds).y,
];

describe("a curve at equal places", () => {
  test("is one value there, at the first place as at any other", () => {
    const curve = yOf([0, 0, 0, 5, 5, 9, 12], [60, 64, 62, 66, 68, 70, 75], 0.6, 0);
    expect(curve[1]).toBe(curve[0]);
    expect(curve[2]).toBe(curve[0]);
    expect(curve[4]).toBe(curve[3]);
    expect(curve[5]).not.toBe(curve[4]);
  });

  test("counts all values of that place, also when they are more than the span has", () => {
    // Six points at 0 and a span of two: their mean, not the mean of the first two.
    const curve = yOf([0, 0, 0, 0, 0, 0, 50], [10, 20, 30, 40, 50, 60, 99], 2 / 7, 0);
    expectNear(curve[0]!, 35, 1e-9);
  });

  test("that do not spread are averaged, however steep a line through them would be", () => {
    // Four places within a thousandth of the whole range: a line through them would follow the jump.
    const x = [0, 0.001, 0.002, 0.003, 500, 1000];
    const curve = yOf(x, [60, 61, 62, 63, 70, 80], 4 / 6, 0);
    const mean = yOf([0, 0, 0, 0, 500, 1000], [60, 61, 62, 63, 70, 80], 4 / 6, 0)[0]!;
    // Weights differ by where a place lies among its neighbours; the average of four rising values lies well inside them.
    expect(Math.abs(curve[0]! - mean)).toBeLessThan(1.2);
    expect(curve[0]).toBeGreaterThan(60.2);
  });
});

describe("rounds against values far from the curve", () => {
  const x = Array.from({ length: 21 }, (_, i) => i);
  const wavy = x.map((place) => 60 + place / 4 + Math.sin(place * 1.7));
  const spoiled = wavy.map((value, i) => (i === 10 ? value + 40 : value));

  test("take a misread out: after them the curve is where it would be without", () => {
    const clean = yOf(x, wavy, 0.5, 3)[10]!;
    expect(Math.abs(yOf(x, spoiled, 0.5, 0)[10]! - clean)).toBeGreaterThan(3);
    expect(Math.abs(yOf(x, spoiled, 0.5, 3)[10]! - clean)).toBeLessThan(0.5);
  });

  test("stop where most values lie on the curve already: the rest is rounding", () => {
    const straight = x.map((place) => 60 + place / 4);
    const one = straight.map((value, i) => (i === 20 ? value + 5 : value));
    expect(yOf(x, straight, 0.5, 5)).toEqual(yOf(x, straight, 0.5, 0));
    expect(yOf(x, one, 0.3, 6).slice(0, 10)).toEqual(yOf(x, one, 0.3, 1).slice(0, 10));
  });

  test("are in step with the unit of the values", () => {
    const small = yOf(
      x,
      spoiled.map((value) => value / 1024),
      0.5,
      3,
    );
    yOf(x, spoiled, 0.5, 3).forEach((value, i) => {
      expectNear(small[i]! * 1024, value, 1e-9);
    });
  });
});

describe("few points and wrong calls", () => {
  test("one point is its own curve, two are joined by a line, the same after any rounds", () => {
    expect(yOf([3], [60], 1, 3)).toEqual([60]);
    expect(yOf([3, 7], [60, 64], 1, 0)).toEqual([60, 64]);
    expect(yOf([3, 7], [60, 64], 1, 3)).toEqual([60, 64]);
  });

  test.each([-1, 0.5, Number.NaN])("%s rounds are refused", (rounds) => {
    expect(() => lowess([1, 2], [1, 2], 1, rounds)).toThrow(/rounds are counted from 0/);
  });
});
