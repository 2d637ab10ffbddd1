import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { strangerDensity } from "../../src/stats/stranger-density.ts";
import { randomFrom } from "../demo/random.ts";

const beat = Array.from({ length: 100 }, (_, i) => i * 8);

/** The density by its definition, row by row: rows at a distance, smoothed, against as many as lie anywhere. */
function byHand(a: readonly number[], noise: number, off: number): number {
  const step = noise / 2;
  const cellOf = (seconds: number) => Math.round(seconds / step);
  let near = 0;
  for (const [i, x] of a.entries()) {
    for (const y of a.slice(i + 1)) {
      for (const cell of [cellOf(y - x), -cellOf(y - x)]) {
        const away = cell - cellOf(off);
        if (Math.abs(away) <= 6) near += Math.exp(-((away / 2) ** 2) / 2) / (2 * Math.sqrt(2 * Math.PI));
      }
    }
  }
  const span = Math.max(step, a.at(-1)! - a[0]!);
  const usual = (a.length ** 2 * step) / span;
  return Math.min(3, Math.max(0.1, (near + 1) / (usual + 1)));
}

describe("how near strangers come", () => {
  test("of a beat of 8 s nobody lies near an event's own place, and more than anywhere one beat away", () => {
    const near = strangerDensity(beat, 2, 6);
    expect(near(0)).toBe(0.1);
    expect(near(8)).toBeGreaterThan(1.4);
    expect(near(4)).toBeLessThan(near(8));
    expect(near(-8)).toBe(near(8));
  });

  test("rows from anywhere are as dense as anywhere", () => {
    const random = randomFrom("anywhere");
    const anywhere = Array.from({ length: 4000 }, () => 40_000 * random.uniform()).sort((a, b) => a - b);
    const near = strangerDensity(anywhere, 10, 6);
    for (const off of [0, 20, 40, 59]) expect(Math.abs(near(off) - 1)).toBeLessThan(0.25);
  });

  test("is what its definition says, within bounds and the same on both sides; beyond reach it is that of the end", () => {
    const rows = fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(rows, fc.constantFrom(1, 2, 4), fc.integer({ min: 0, max: 12 }), (list, noise, half) => {
        const a = list.sort((one, other) => one - other);
        const near = strangerDensity(a, noise, 6);
        const off = (half * noise) / 2;
        expect(near(off)).toBeCloseTo(byHand(a, noise, off), 9);
        expect(near(-off)).toBeCloseTo(near(off), 12);
        expect(near(100 * noise)).toBeCloseTo(byHand(a, noise, 6 * noise), 9);
        expect(near(-100 * noise)).toBeCloseTo(byHand(a, noise, 6 * noise), 9);
      }),
    );
  });
});
