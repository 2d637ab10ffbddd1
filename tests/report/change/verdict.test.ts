import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isChange, mirrored, type Turned, verdictOf } from "../../../src/report/change/verdict.ts";

/** A change whose 90 % interval is 0.8 times as wide as its 95 % one. */
const change = (low: number, high: number): Turned => {
  const estimate = (low + high) / 2;
  const inner = 0.4 * (high - low);
  return { estimate, ci95: [low, high], ci90: [estimate - inner, estimate + inner] };
};

describe("where the interval lies against nothing and against what matters", () => {
  // The rows of the table in the project's statistics note, with 1 mph as the smallest change that matters.
  test.each([
    ["wholly above what matters", 1.1, 3, "clear-improvement"],
    ["just at what matters is not above it", 1, 3, "improvement"],
    ["above nothing, estimate above what matters", 0.2, 3, "improvement"],
    ["above nothing, estimate below what matters", 0.2, 1.4, "small-improvement"],
    ["above nothing, estimate just what matters", 0.5, 1.5, "small-improvement"],
    ["touching nothing from above", 0, 3, "cannot-tell"],
    ["wholly within what matters", -0.9, 0.8, "same"],
    ["90 % within what matters, 95 % not", -1.1, 1.1, "same"],
    ["90 % just beyond what matters", -1.3, 1.3, "cannot-tell"],
    ["reaching beyond on one side", -0.2, 2.5, "cannot-tell"],
    ["reaching beyond on the other side", -2.5, 0.2, "cannot-tell"],
    ["small and below nothing", -1.4, -0.2, "small-decline"],
    ["below nothing, estimate beyond what matters", -3, -0.2, "decline"],
    ["wholly below", -3, -1.1, "clear-decline"],
  ] as const)("%s", (_, low, high, expected) => {
    expect(verdictOf(change(low, high), 1)).toBe(expected);
  });

  test("without knowing what matters nothing is clear, small or the same", () => {
    expect(verdictOf(change(5, 9), null)).toBe("improvement");
    expect(verdictOf(change(0.01, 0.02), null)).toBe("improvement");
    expect(verdictOf(change(-0.01, 0.01), null)).toBe("cannot-tell");
    expect(verdictOf(change(-9, -5), null)).toBe("decline");
  });

  test("no change at all, measured without scatter, is the same", () => {
    expect(verdictOf(change(0, 0), 1)).toBe("same");
    expect(verdictOf(change(0, 0), null)).toBe("cannot-tell");
  });

  const eighths = fc.integer({ min: -160, max: 160 }).map((one) => one / 8);
  const ends = fc.tuple(eighths, eighths);
  const worth = fc.option(fc.double({ min: 0.01, max: 10, noNaN: true }), { nil: null });
  const MIRROR: Readonly<Record<string, string>> = {
    "clear-improvement": "clear-decline",
    improvement: "decline",
    "small-improvement": "small-decline",
    "clear-decline": "clear-improvement",
    decline: "improvement",
    "small-decline": "small-improvement",
    same: "same",
    "cannot-tell": "cannot-tell",
  };

  test("the other way round gives the mirrored verdict", () => {
    fc.assert(
      fc.property(ends, worth, ([a, b], smallest) => {
        const one = change(Math.min(a, b), Math.max(a, b));
        expect(verdictOf(mirrored(one), smallest)).toBe(MIRROR[verdictOf(one, smallest)]);
      }),
    );
  });

  test("in other units the verdict is the same", () => {
    fc.assert(
      fc.property(ends, worth, fc.constantFrom(0.25, 2, 1024), ([a, b], smallest, factor) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const scaled = smallest === null ? null : smallest * factor;
        expect(verdictOf(change(low * factor, high * factor), scaled)).toBe(verdictOf(change(low, high), smallest));
      }),
    );
  });

  test("a change is never said where the interval holds nothing", () => {
    fc.assert(
      fc.property(ends, worth, ([a, b], smallest) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        if (low <= 0 && high >= 0) expect(isChange(verdictOf(change(low, high), smallest))).toBe(false);
      }),
    );
  });
});
