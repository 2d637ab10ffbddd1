import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ols } from "../../src/stats/ols.ts";
import { type NoFit, type OlsMultiple, olsMultiple, olsPolynomial } from "../../src/stats/ols-multiple.ts";
import { expectNear, numbersIn, points, reordered, speed, speedsOf, WRONG_VALUES, weeksOf } from "./samples.ts";

function fitted(result: OlsMultiple | NoFit): OlsMultiple {
  if (result.kind !== "fit") throw new Error(`expected a fit, got ${result.reason}`);
  return result;
}

function expectAll(got: readonly number[], wanted: readonly number[], digits = 10): void {
  expect(got).toHaveLength(wanted.length);
  got.forEach((value, i) => {
    expect(value).toBeCloseTo(wanted[i]!, digits);
  });
}

const row = fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 }), speed);
const rows = fc.array(row, { maxLength: 25 });
const columnsOf = (list: readonly (readonly [number, number, number])[]) => [
  list.map(([a]) => a),
  list.map(([, b]) => b),
];
const ofRows = (list: readonly (readonly [number, number, number])[]) =>
  olsMultiple(
    columnsOf(list),
    list.map(([, , y]) => y),
  );

describe("known answers", () => {
  test("a two by two layout worked by hand: effects are half differences, one residual square of 1", () => {
    const layout = fitted(
      olsMultiple(
        [
          [0, 1, 0, 1],
          [0, 0, 1, 1],
        ],
        [1, 3, 2, 6],
      ),
    );
    expectAll(layout.coefficients, [0.5, 3, 2]);
    // Residuals 1/2, -1/2, -1/2, 1/2.
    expect(layout.residualSumOfSquares).toBeCloseTo(1, 12);
    expect([layout.n, layout.df]).toEqual([4, 1]);
    expect(layout.residualSd).toBeCloseTo(1, 12);
    expectAll(layout.standardErrors!, [Math.sqrt(3) / 2, 1, 1]);
    expect(layout.rSquared).toBeCloseTo(1 - 1 / 14, 12);
  });

  test("a parabola through its points, far from 0 too", () => {
    expectAll(fitted(olsPolynomial([0, 1, 2, 3, 4], [1, 2, 5, 10, 17], 2)).coefficients, [1, 0, 1]);
    const far = fitted(olsPolynomial([100, 101, 102, 103, 104], [10000, 10201, 10404, 10609, 10816], 2));
    expectAll(far.coefficients, [0, 0, 1], 6);
    expect(fitted(olsPolynomial([-1, 0, 1, 2], [-1, 0, 1, 8], 3)).coefficients[3]).toBeCloseTo(1, 12);
  });

  test("as many rows as coefficients: through every row, and nothing about the error", () => {
    const exact = fitted(olsPolynomial([0, 1, 3], [2, 5, 1], 2));
    expect([exact.df, exact.standardErrors, exact.residualSd, exact.rSquared]).toEqual([0, null, null, null]);
    expect(exact.residualSumOfSquares).toBe(0);
    const [a, b, c] = exact.coefficients;
    expectAll(
      [0, 1, 3].map((x) => a! + b! * x + c! * x * x),
      [2, 5, 1],
    );
  });

  test("equal speeds give a flat fit without error and no share of variance", () => {
    const flat = fitted(
      olsMultiple(
        [
          [0, 1, 0, 1],
          [0, 0, 1, 1],
        ],
        [61.3, 61.3, 61.3, 61.3],
      ),
    );
    expect(flat.coefficients).toEqual([61.3, 0, 0]);
    expect([flat.standardErrors, flat.residualSd, flat.rSquared]).toEqual([[0, 0, 0], 0, null]);
  });
});

describe("no fit, and why", () => {
  test("fewer rows than coefficients", () => {
    expect(olsMultiple([[]], [])).toEqual({ kind: "no-fit", n: 0, reason: "too-few" });
    expect(olsMultiple([[1]], [60])).toEqual({ kind: "no-fit", n: 1, reason: "too-few" });
    expect(olsPolynomial([0, 1], [60, 61], 2)).toEqual({ kind: "no-fit", n: 2, reason: "too-few" });
    expect(olsPolynomial([], [], 1)).toEqual({ kind: "no-fit", n: 0, reason: "too-few" });
  });

  test("a constant column, a column that is a sum of others even after rounding, too few different x", () => {
    const dependent = { kind: "no-fit", n: 5, reason: "dependent-columns" };
    const y = [1, 3, 2, 4, 1];
    expect(olsMultiple([[2, 2, 2, 2, 2]], y)).toEqual(dependent);
    expect(
      olsMultiple(
        [
          [1, 2, 3, 4, 6],
          [0.1, 0.2, 0.3, 0.4, 0.6],
        ],
        y,
      ),
    ).toEqual(dependent);
    expect(
      olsMultiple(
        [
          [1, 0, 2, 5, 1],
          [3, 1, 1, 0, 2],
          [4.1, 1.1, 3.1, 5.1, 3.1],
        ],
        y,
      ),
    ).toEqual(dependent);
    expect(
      olsMultiple(
        [
          [2021.1, 2022.1, 2023.1, 2024.1, 2026.1],
          [0, 7, 14, 21, 35],
        ],
        y,
      ),
    ).toEqual(dependent);
    expect(olsPolynomial([0, 0, 1, 1, 1], y, 2)).toEqual(dependent);
    expect(olsPolynomial([3, 3, 3, 3, 3], y, 1)).toEqual(dependent);
  });

  test("columns that are nearly alike are still told apart", () => {
    const x = [1, 2, 3, 4, 5, 6];
    const other = x.map((value, i) => value + (i % 2) * 1e-6);
    const y = x.map((value, i) => 60 + 2 * value + 1e6 * (other[i]! - value));
    expectAll(fitted(olsMultiple([x, other], y)).coefficients, [60, 2 - 1e6, 1e6], 2);
  });
});

describe("wrong calls", () => {
  test.each(WRONG_VALUES)("%s in y, in a column or in x is refused", (wrong) => {
    expect(() => olsMultiple([[0, 1, 2, 3]], [60, wrong, 62, 61])).toThrow(RangeError);
    expect(() =>
      olsMultiple(
        [
          [0, 1, 2, 3],
          [0, wrong, 2, 1],
        ],
        [60, 61, 62, 61],
      ),
    ).toThrow(RangeError);
    expect(() => olsPolynomial([0, wrong, 2, 3], [60, 61, 62, 61], 1)).toThrow(RangeError);
  });

  test("no column, unequal lengths, and a degree that is no whole number from 1", () => {
    expect(() => olsMultiple([], [60, 61])).toThrow(/at least 1 column/);
    expect(() =>
      olsMultiple(
        [
          [0, 1, 2],
          [0, 1],
        ],
        [60, 61, 62],
      ),
    ).toThrow(/need pairs/);
    for (const degree of [0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => olsPolynomial([0, 1, 2], [60, 61, 63], degree)).toThrow(/degree/);
    }
    expect(() => olsPolynomial([0, 1], [60], 1)).toThrow(/need pairs/);
  });

  test("a result beyond the range of a double is refused, not answered with Infinity", () => {
    expect(() => olsMultiple([[0, 1e-200, 3e-200]], [0, 1e150, -1e150])).toThrow(/too large/);
  });
});

describe("laws", () => {
  test("one column, or degree 1, is the plain line", () => {
    fc.assert(
      fc.property(points, (list) => {
        const [x, y] = [weeksOf(list), speedsOf(list)];
        const plain = ols(x, y);
        for (const result of [olsMultiple([x], y), olsPolynomial(x, y, 1)]) {
          if (plain.kind === "no-line") {
            expect(result.kind).toBe("no-fit");
            continue;
          }
          const { coefficients, standardErrors, residualSd, rSquared, df } = fitted(result);
          expectNear(coefficients[0]!, plain.intercept);
          expectNear(coefficients[1]!, plain.slope);
          expectNear(standardErrors?.[0] ?? null, plain.seIntercept);
          expectNear(standardErrors?.[1] ?? null, plain.seSlope);
          expectNear(residualSd, plain.residualSd);
          expectNear(rSquared, plain.rSquared);
          expect(df).toBe(plain.df);
        }
      }),
    );
  });

  test("powers of x as columns and the polynomial agree", () => {
    fc.assert(
      fc.property(points, (list) => {
        const [x, y] = [weeksOf(list), speedsOf(list)];
        const byColumns = olsMultiple([x, x.map((value) => value ** 2)], y);
        const byPowers = olsPolynomial(x, y, 2);
        if (byColumns.kind === "no-fit" || byPowers.kind === "no-fit") {
          expect(byColumns).toEqual(byPowers);
          return;
        }
        byPowers.coefficients.forEach((value, i) => {
          expectNear(byColumns.coefficients[i]!, value, 1e-6);
        });
        byPowers.standardErrors?.forEach((value, i) => {
          expectNear(byColumns.standardErrors![i]!, value, 1e-6);
        });
      }),
    );
  });

  test("residuals are at right angles to every column: no other coefficients leave less", () => {
    fc.assert(
      fc.property(rows, (list) => {
        const found = ofRows(list);
        if (found.kind === "no-fit") return;
        const [level, first, second] = found.coefficients;
        const left = list.map(([a, b, y]) => y - level! - first! * a - second! * b);
        for (const column of [list.map(() => 1), ...columnsOf(list)]) {
          expectNear(
            column.reduce((sum, value, i) => sum + value * left[i]!, 0),
            0,
            1e-6,
          );
        }
        if (found.df > 0)
          expectNear(
            found.residualSumOfSquares,
            left.reduce((sum, value) => sum + value * value, 0),
            1e-7,
          );
      }),
    );
  });

  test("the order of rows moves nothing; other units and first values follow", () => {
    fc.assert(
      fc.property(reordered(rows), ([list, other]) => {
        const a = ofRows(list);
        const b = ofRows(other.map(([first, second, y]) => [4 * first + 12, second - 3, 2 * y + 10]));
        if (a.kind === "no-fit" || b.kind === "no-fit") {
          expect(a).toEqual(b);
          return;
        }
        expectNear(b.coefficients[1]!, a.coefficients[1]! / 2, 1e-7);
        expectNear(b.coefficients[2]!, a.coefficients[2]! * 2, 1e-7);
        const level = 2 * (a.coefficients[0]! - 3 * a.coefficients[1]! + 3 * a.coefficients[2]!) + 10;
        expectNear(b.coefficients[0]!, level, 1e-6);
        expectNear(b.residualSd, a.residualSd === null ? null : 2 * a.residualSd, 1e-7);
        expectNear(b.rSquared, a.rSquared, 1e-7);
      }),
    );
  });

  test("no result is ever NaN or infinite, whatever the size of the values", () => {
    const any = fc.oneof(speed, fc.constantFrom(0, 1e150, -1e150, 1e-300, 5e-324, 61.3));
    const wild = fc.array(fc.tuple(any, any, any), { maxLength: 8 });
    fc.assert(
      fc.property(wild, fc.integer({ min: 1, max: 4 }), (list, degree) => {
        const y = list.map(([, , value]) => value);
        for (const call of [
          () => olsMultiple(columnsOf(list), y),
          () => olsPolynomial(columnsOf(list)[0]!, y, degree),
        ]) {
          try {
            expect(numbersIn(call()).every(Number.isFinite)).toBe(true);
          } catch (error) {
            if (!(error instanceof RangeError)) throw error;
            expect(error.message).toMatch(/too large for a double$/);
          }
        }
      }),
      { numRuns: 500 },
    );
  });
});
