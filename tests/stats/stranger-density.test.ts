import fc from "fast-check";
import { expect, test } from "vitest";
import { strangerDensity } from "../../src/stats/stranger-density.ts";
import { randomFrom } from "../demo/random.ts";

const beat = Array.from({ length: 100 }, (_, i) => i * 8);

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

test("one row, rows at one place and distances beyond reach have an answer within bounds, the same on both sides", () => {
  const rows = fc.array(fc.integer({ min: 0, max: 500 }), { minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(
      rows,
      fc.double({ min: 0.2, max: 6, noNaN: true }),
      fc.integer({ min: 0, max: 80 }),
      (list, sd, off) => {
        const near = strangerDensity(
          list.sort((a, b) => a - b),
          sd,
          6,
        );
        expect(near(off)).toBeGreaterThanOrEqual(0.1);
        expect(near(off)).toBeLessThanOrEqual(3);
        expect(near(-off)).toBeCloseTo(near(off), 12);
      },
    ),
  );
});
