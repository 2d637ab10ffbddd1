import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { benjaminiHochberg, bonferroni, holm } from "../../src/stats/multiplicity.ts";

const ADJUSTMENTS = [holm, benjaminiHochberg, bonferroni];
/** Whole 1024ths: products with a count are exact, and ties are frequent. */
const chance = fc.integer({ min: 0, max: 1024 }).map((parts) => parts / 1024);
const chances = fc.array(chance, { maxLength: 20 });

function expectNearAll(got: readonly number[], wanted: readonly number[]): void {
  expect(got).toHaveLength(wanted.length);
  got.forEach((value, i) => {
    expect(value).toBeCloseTo(wanted[i]!, 14);
  });
}

describe("known answers", () => {
  test("three tests worked by hand, in the order they came in", () => {
    // Rising 0.01, 0.03, 0.04. Holm times 3, 2, 1: 0.03, 0.06, 0.04 and never less than before.
    expectNearAll(holm([0.01, 0.04, 0.03]), [0.03, 0.06, 0.06]);
    // Times 3/1, 3/2, 3/3: 0.03, 0.045, 0.04 and never more than after.
    expectNearAll(benjaminiHochberg([0.01, 0.04, 0.03]), [0.03, 0.04, 0.04]);
    expectNearAll(bonferroni([0.01, 0.04, 0.03]), [0.03, 0.12, 0.09]);
  });

  test("nothing becomes more than certain", () => {
    expect(holm([0.5, 0.75, 0.9])).toEqual([1, 1, 1]);
    expect(bonferroni([0.5, 0.25, 1])).toEqual([1, 0.75, 1]);
    expect(benjaminiHochberg([0.5, 1, 1])).toEqual([1, 1, 1]);
  });

  test("none gives none, one stays itself, and so do the ends", () => {
    for (const adjust of ADJUSTMENTS) {
      expect(adjust([])).toEqual([]);
      expect(adjust([0.02])).toEqual([0.02]);
      expect(adjust([0, 0, 0])).toEqual([0, 0, 0]);
      expect(adjust([1, 1])).toEqual([1, 1]);
    }
  });

  test("with all alike Holm asks for all of them, Benjamini and Hochberg for none", () => {
    expect(holm([0.125, 0.125, 0.125])).toEqual([0.375, 0.375, 0.375]);
    expect(benjaminiHochberg([0.125, 0.125, 0.125])).toEqual([0.125, 0.125, 0.125]);
  });
});

describe("laws", () => {
  test("a p never becomes smaller, the order of the tests is kept, and equal ones stay equal", () => {
    fc.assert(
      fc.property(chances, (p) => {
        for (const adjust of ADJUSTMENTS) {
          const adjusted = adjust(p);
          expect(adjusted).toHaveLength(p.length);
          adjusted.forEach((value, i) => {
            expect(value).toBeGreaterThanOrEqual(p[i]!);
            expect(value).toBeLessThanOrEqual(1);
            p.forEach((other, j) => {
              if (p[i]! <= other) expect(value).toBeLessThanOrEqual(adjusted[j]!);
            });
          });
        }
      }),
    );
  });

  test("Benjamini and Hochberg ask less than Holm, Holm less than Bonferroni", () => {
    fc.assert(
      fc.property(chances, (p) => {
        const [middle, most] = [holm(p), bonferroni(p)];
        benjaminiHochberg(p).forEach((least, i) => {
          expect(least).toBeLessThanOrEqual(middle[i]!);
          expect(middle[i]).toBeLessThanOrEqual(most[i]!);
        });
      }),
    );
  });

  test("what is at or below the level is what the step-wise tests reject, one after the other", () => {
    fc.assert(
      fc.property(chances, chance, (p, level) => {
        const sorted = p.toSorted((a, b) => a - b);
        // Holm goes up and stops at the first that fails; Benjamini and Hochberg take all up to the last that passes.
        const fails = sorted.findIndex((value, i) => value * (p.length - i) > level);
        const passes = sorted.findLastIndex((value, i) => value * p.length <= level * (i + 1));
        if (level < 1) {
          expect(holm(p).filter((value) => value <= level)).toHaveLength(fails < 0 ? p.length : fails);
          expect(benjaminiHochberg(p).filter((value) => value <= level + 1e-12)).toHaveLength(passes + 1);
        }
      }),
    );
  });

  test("listed in another order, each test keeps its own answer, and the list is left as it was", () => {
    fc.assert(
      fc.property(chances, (p) => {
        const before = [...p];
        for (const adjust of ADJUSTMENTS) expect(adjust(p.toReversed())).toEqual(adjust(p).toReversed());
        expect(p).toEqual(before);
      }),
    );
  });
});

describe("wrong calls", () => {
  test.each([Number.NaN, -0.01, 1.01, Number.POSITIVE_INFINITY])("a p of %s is refused", (wrong) => {
    for (const adjust of ADJUSTMENTS) expect(() => adjust([0.5, wrong])).toThrow(/between 0 and 1, got/);
  });
});
