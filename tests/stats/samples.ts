import fc from "fast-check";
import { expect } from "vitest";

/** Whole and half speeds: sums, shifts and doublings of them are exact in a double, so ties stay ties. */
export const speed = fc.integer({ min: -400, max: 400 }).map((halves) => halves / 2);
export const speeds = fc.array(speed, { maxLength: 30 });

/** Points (week, speed); weeks may repeat. */
export const points = fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), speed), { maxLength: 25 });

/** Points with at least two different weeks, so that there is a line. */
export const linePoints = points.filter((list) => new Set(list.map(([week]) => week)).size >= 2);

/** The same list twice: as it is, and in another order. */
export function reordered<T>(lists: fc.Arbitrary<T[]>): fc.Arbitrary<[T[], T[]]> {
  return lists.chain((list) =>
    fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length, maxLength: list.length })),
  );
}

export const weeksOf = (list: readonly (readonly [number, number])[]): number[] => list.map(([week]) => week);
export const speedsOf = (list: readonly (readonly [number, number])[]): number[] => list.map(([, value]) => value);

/** Equal but for the last digits of arithmetic on values of ordinary size; null only with null. */
export function expectNear(got: number | null, wanted: number | null, allowed = 1e-8): void {
  if (got === null || wanted === null) {
    expect(got).toBe(wanted);
    return;
  }
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(allowed * Math.max(1, Math.abs(wanted)));
}

/** Every number inside a result, at any depth. */
export function numbersIn(result: unknown): number[] {
  if (typeof result === "number") return [result];
  if (typeof result !== "object" || result === null) return [];
  return Object.values(result).flatMap(numbersIn);
}

/** The values no function may take. */
export const WRONG_VALUES = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e200];
