import { describe, expect, test } from "vitest";
import { changeHalfWidth, sessionsForChange } from "../../src/stats/sessions-for-change.ts";

describe("how wide a change is known", () => {
  // The project's statistics note, section 1: half-widths in SDs of session means, to the digits printed there.
  test.each([
    [6, 3.3, 1],
    [8, 2.6, 1],
    [10, 2.3, 1],
    [15, 1.8, 1],
    [20, 1.5, 1],
    [30, 1.25, 2],
    [40, 1.1, 1],
  ])("from %i sessions: %f SDs", (n, expected, digits) => {
    expect(Math.abs(changeHalfWidth(n) - expected)).toBeLessThan(0.5 * 10 ** -digits + 0.01);
  });

  test("three sessions are the fewest", () => {
    // t(0.975, 1) = 12.7062 (printed tables, from memory), times sqrt(12 x 2 / (3 x 4)) = sqrt(2).
    expect(changeHalfWidth(3)).toBeCloseTo(12.7062 * Math.SQRT2, 3);
    expect(() => changeHalfWidth(2)).toThrow(RangeError);
    expect(() => changeHalfWidth(6.5)).toThrow(RangeError);
  });
});

describe("sessions that a change needs to show", () => {
  test("are the fewest whose half-width is small enough", () => {
    for (const [change, sd] of [
      [2, 1],
      [1, 0.7],
      [3, 1.1],
    ] as const) {
      const n = sessionsForChange(change, sd)!;
      expect(changeHalfWidth(n) * sd).toBeLessThanOrEqual(change);
      expect(changeHalfWidth(n - 1) * sd).toBeGreaterThan(change);
    }
  });

  test("are five at least, also without scatter", () => {
    expect(sessionsForChange(1, 0)).toBe(5);
    expect(sessionsForChange(100, 1)).toBe(5);
  });

  test("are not named beyond sixty", () => {
    expect(sessionsForChange(changeHalfWidth(60), 1)).toBe(60);
    expect(sessionsForChange(changeHalfWidth(60) * 0.999, 1)).toBeNull();
  });

  test.each([
    [0, 1],
    [-1, 1],
    [Number.NaN, 1],
    [1, -1],
    [1, Number.NaN],
    [1, Number.POSITIVE_INFINITY],
  ])("a change of %f with a scatter of %f is refused", (change, sd) => {
    expect(() => sessionsForChange(change, sd)).toThrow(RangeError);
  });
});
