import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bracketedRoot } from "../../src/stats/bracketed-root.ts";

function rootOf(valueAt: (at: number) => number, from: number, to: number): { root: number; calls: number } {
  let calls = 0;
  const counted = (at: number) => {
    calls += 1;
    return valueAt(at);
  };
  return { root: bracketedRoot(counted, { at: from, value: valueAt(from) }, { at: to, value: valueAt(to) }), calls };
}

describe("roots", () => {
  test("the square root of 2, from either side, in few calls", () => {
    const square = (x: number) => x * x - 2;
    for (const { root, calls } of [rootOf(square, 0, 2), rootOf(square, 2, 0)]) {
      expect(Math.abs(root - Math.SQRT2)).toBeLessThanOrEqual(4e-16);
      expect(calls).toBeLessThan(15);
    }
  });

  test("an end that is the root is given back at once", () => {
    const never = () => {
      throw new Error("not needed");
    };
    expect(bracketedRoot(never, { at: 3, value: 0 }, { at: 5, value: 1 })).toBe(3);
    expect(bracketedRoot(never, { at: 3, value: 1 }, { at: 5, value: 0 })).toBe(5);
  });

  test("a steep, a flat and a stepped function are followed to the last digits", () => {
    expect(rootOf((x) => Math.expm1(50 * (x - 0.3)), 0, 2).root).toBeCloseTo(0.3, 15);
    expect(rootOf((x) => (x - 0.3) ** 9, 0, 2).root).toBeCloseTo(0.3, 15);
    expect(rootOf((x) => (x < 0.3 ? -1 : 1), 0, 2).root).toBeCloseTo(0.3, 15);
  });

  test("a root at 0 or far out is found", () => {
    expect(Math.abs(rootOf((x) => Math.sinh(x) + 0.5 * x, -3, 5).root)).toBeLessThan(1e-16);
    expect(rootOf((x) => x - 1e20, 0, 1e40).root).toBe(1e20);
  });

  test("ends of one sign, or NaN, are refused", () => {
    const ends = (a: number, b: number) => () => bracketedRoot((x) => x, { at: 1, value: a }, { at: 2, value: b });
    expect(ends(1, 2)).toThrow(/different sign/);
    expect(ends(-1, -2)).toThrow(RangeError);
    expect(ends(Number.NaN, 2)).toThrow(RangeError);
  });

  test("for any cubic that rises, the sign differs on both sides of what is found", () => {
    const number = fc.double({ min: 1, max: 100, noNaN: true });
    fc.assert(
      fc.property(number, fc.double({ min: 0, max: 3, noNaN: true }), (at, slope) => {
        const cubic = (x: number) => (x - at) ** 3 + slope * (x - at);
        const { root, calls } = rootOf(cubic, -200, 300);
        const step = 1e-5;
        expect(cubic(root - step)).toBeLessThan(0);
        expect(cubic(root + step)).toBeGreaterThan(0);
        expect(calls).toBeLessThan(120);
      }),
    );
  });
});
