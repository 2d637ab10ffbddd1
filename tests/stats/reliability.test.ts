import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { agreement } from "../../src/stats/agreement.ts";
import { icc } from "../../src/stats/icc.ts";
import { trialsAnova, typicalError } from "../../src/stats/reliability.ts";
import { smallestWorthwhile } from "../../src/stats/smallest-worthwhile.ts";
import { expectNear, numbersIn, speed, WRONG_VALUES } from "./samples.ts";

/**
 * Six subjects with four raters, printed with its mean squares and coefficients in Shrout & Fleiss (1979), Psychol Bull 86:420-428,
 * tables 2 to 4 (two decimals).
 */
const SHROUT_FLEISS = [
  [9, 2, 5, 8],
  [6, 1, 3, 2],
  [8, 4, 6, 8],
  [7, 1, 2, 6],
  [10, 5, 6, 9],
  [6, 2, 4, 7],
];

const table = fc
  .tuple(fc.integer({ min: 2, max: 8 }), fc.integer({ min: 2, max: 4 }))
  .chain(([n, k]) => fc.array(fc.array(speed, { minLength: k, maxLength: k }), { minLength: n, maxLength: n }));

describe("analysis of variance of repeated trials", () => {
  test("mean squares of the printed example", () => {
    const found = trialsAnova(SHROUT_FLEISS)!;
    expect(found).toMatchObject({ n: 6, k: 4 });
    expectNear(found.subjects, 11.24, 1e-3);
    expectNear(found.within, 6.26, 1e-3);
    expectNear(found.trials, 32.49, 1e-3);
    expectNear(found.error, 1.02, 1e-3);
  });

  test("squares within are those of trials and error together, whatever the numbers", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const { n, k, within, trials, error, subjects } = trialsAnova(rows)!;
        expectNear(n * (k - 1) * within, (k - 1) * trials + (n - 1) * (k - 1) * error, 1e-7);
        const all = rows.flat();
        const mean = all.reduce((sum, value) => sum + value, 0) / all.length;
        const total = all.reduce((sum, value) => sum + (value - mean) ** 2, 0);
        expectNear((n - 1) * subjects + n * (k - 1) * within, total, 1e-7);
      }),
    );
  });

  test("a change of all in one trial is no error", () => {
    fc.assert(
      fc.property(table, speed, (rows, shift) => {
        const moved = rows.map(([first, ...rest]) => [first! + shift, ...rest]);
        expectNear(trialsAnova(moved)!.error, trialsAnova(rows)!.error, 1e-7);
        expectNear(trialsAnova(moved)!.subjects, trialsAnova(rows)!.subjects, 1e-7);
      }),
    );
  });

  test("fewer than two subjects or trials have none; the fewest have one", () => {
    expect(trialsAnova([])).toBeNull();
    expect(trialsAnova([[60, 61]])).toBeNull();
    expect(trialsAnova([[60], [61]])).toBeNull();
    expect(trialsAnova([[], []])).toBeNull();
    expect(
      trialsAnova([
        [60, 61],
        [62, 63],
      ]),
    ).toMatchObject({ n: 2, k: 2, error: 0, subjects: 4, trials: 1, within: 0.5 });
  });

  test("rows of unequal length and values that are none are refused", () => {
    expect(() => trialsAnova([[60, 61], [62]])).toThrow(/every subject needs 2 trials, got 1/);
    for (const wrong of WRONG_VALUES) expect(() => trialsAnova([[60, wrong]])).toThrow(/trials\[1\] must be a finite/);
  });
});

describe("typical error", () => {
  test("two trials: the SD of the differences over the root of two, and its multiples", () => {
    const rows = [
      [60, 61],
      [62, 66],
      [64, 64],
    ];
    const differences = [1, 4, 0];
    const mean = 5 / 3;
    const sd = Math.sqrt(differences.reduce((sum, value) => sum + (value - mean) ** 2, 0) / 2);
    const found = typicalError(trialsAnova(rows)!, 0.95);
    expectNear(found.typicalError, sd / Math.SQRT2, 1e-12);
    expectNear(found.mdc95, 1.96 * sd, 1e-12);
    expectNear(found.mdc95Exact, 1.959963984540054 * sd, 1e-12);
    expect(found.df).toBe(2);
    // With the change left in: the root of the mean square of half the differences.
    expectNear(found.withBias, Math.sqrt((1 + 16 + 0) / 2 / 3), 1e-12);
    expect(found.interval![0]).toBeLessThan(found.typicalError);
    expect(found.interval![1]).toBeGreaterThan(found.typicalError);
  });

  test("agrees with the differences of two trials, taken by themselves", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(speed, speed), { minLength: 2, maxLength: 12 }), (pairs) => {
        const byAnova = typicalError(trialsAnova(pairs)!, 0.95).typicalError;
        expectNear(agreement(pairs, 0.95)!.typicalError, byAnova, 1e-7);
      }),
    );
  });

  test("a level outside 0 to 1 is refused", () => {
    for (const level of [0, 1, Number.NaN])
      expect(() => typicalError(trialsAnova(SHROUT_FLEISS)!, level)).toThrow(/level above 0 and below 1/);
  });
});

describe("intraclass correlation", () => {
  test("coefficients of the printed example", () => {
    const found = icc(trialsAnova(SHROUT_FLEISS)!, 0.95);
    expectNear(found.oneWay, 0.17, 5e-3);
    expectNear(found.agreement, 0.29, 5e-3);
    expectNear(found.consistency, 0.71, 5e-3);
  });

  test("intervals of the same example as R's irr gives them (McGraw & Wong 1996, from memory; two decimals)", () => {
    const found = icc(trialsAnova(SHROUT_FLEISS)!, 0.95);
    expectNear(found.agreementInterval![0], 0.02, 5e-3);
    expectNear(found.agreementInterval![1], 0.76, 5e-3);
    expectNear(found.consistencyInterval![0], 0.34, 5e-3);
    expectNear(found.consistencyInterval![1], 0.95, 5e-3);
  });

  test("trials that repeat each other agree wholly; a steady shift is consistent and no agreement", () => {
    const alike = icc(
      trialsAnova([
        [60, 60],
        [64, 64],
        [70, 70],
      ])!,
      0.95,
    );
    expect(alike).toEqual({
      oneWay: 1,
      agreement: 1,
      agreementInterval: null,
      consistency: 1,
      consistencyInterval: null,
    });
    const shifted = icc(
      trialsAnova([
        [60, 63],
        [64, 67],
        [70, 73],
      ])!,
      0.95,
    );
    expect(shifted.consistency).toBe(1);
    expect(shifted.consistencyInterval).toBeNull();
    expect(shifted.agreement).toBeLessThan(1);
    // Subject SS 2(36.22..)/..., by hand: between 50.67, trials 13.5, error 0: 50.67 / (50.67 + 2 x 13.5 / 3).
    expectNear(shifted.agreement, 50.666666666666664 / (50.666666666666664 + 9), 1e-9);
    expect(shifted.agreementInterval).not.toBeNull();
  });

  test("values that are all equal have none", () => {
    const found = icc(
      trialsAnova([
        [60, 60],
        [60, 60],
      ])!,
      0.95,
    );
    expect(found).toEqual({
      oneWay: null,
      agreement: null,
      agreementInterval: null,
      consistency: null,
      consistencyInterval: null,
    });
  });

  test("shift and scale change nothing, and each lies in its interval and below 1", () => {
    fc.assert(
      fc.property(table, speed, (rows, shift) => {
        const anova = trialsAnova(rows)!;
        // A spread of nothing but rounding has no correlation to speak of.
        fc.pre(anova.error > 1e-6 && anova.subjects > 1e-6);
        const found = icc(anova, 0.95);
        const moved = icc(trialsAnova(rows.map((row) => row.map((value) => 4 * value + shift)))!, 0.95);
        for (const kind of ["oneWay", "agreement", "consistency"] as const) {
          expectNear(moved[kind], found[kind], 1e-6);
          expect(found[kind]).toBeLessThanOrEqual(1 + 1e-9);
        }
        const [low, high] = found.consistencyInterval!;
        expect(low).toBeLessThanOrEqual(found.consistency! + 1e-9);
        expect(high).toBeGreaterThanOrEqual(found.consistency! - 1e-9);
        expect(numbersIn(found).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  test("an agreement with next to no degrees of freedom has no interval, never NaN", () => {
    const found = icc(
      trialsAnova([
        [-65, -2.5, -4, 0],
        [0, 0, -119, 0],
      ])!,
      0.95,
    );
    expect(found.agreement).toBeLessThan(0);
    expect(found.agreementInterval).toBeNull();
  });

  test("a wider level holds the narrower, and a level outside 0 to 1 is refused", () => {
    const anova = trialsAnova(SHROUT_FLEISS)!;
    const [narrow, wide] = [icc(anova, 0.8), icc(anova, 0.99)];
    for (const kind of ["agreementInterval", "consistencyInterval"] as const) {
      expect(wide[kind]![0]).toBeLessThan(narrow[kind]![0]);
      expect(wide[kind]![1]).toBeGreaterThan(narrow[kind]![1]);
    }
    for (const level of [0, 1, Number.NaN]) expect(() => icc(anova, level)).toThrow(/level above 0 and below 1/);
  });
});

describe("agreement of two trials", () => {
  test("mean change, its SD and interval, and limits", () => {
    const found = agreement(
      [
        [60, 62],
        [61, 61],
        [64, 68],
      ],
      0.95,
    )!;
    expect(found.meanChange).toBe(2);
    expect(found.sdChange).toBe(2);
    expect(found.limits).toEqual([2 - 1.96 * 2, 2 + 1.96 * 2]);
    expectNear(found.typicalError, Math.SQRT2, 1e-12);
    // t at 0.975 with two degrees of freedom is 4.302653 (any printed table).
    expectNear(found.interval![0], 2 - (4.302652729911275 * 2) / Math.sqrt(3), 1e-9);
    expectNear(found.interval![1], 2 + (4.302652729911275 * 2) / Math.sqrt(3), 1e-9);
  });

  test("fewer than two pairs have none, equal changes limits without width", () => {
    expect(agreement([], 0.95)).toBeNull();
    expect(agreement([[60, 61]], 0.95)).toBeNull();
    expect(
      agreement(
        [
          [60, 61],
          [62, 63],
        ],
        0.95,
      ),
    ).toMatchObject({ meanChange: 1, sdChange: 0, limits: [1, 1], typicalError: 0 });
  });

  test("values and levels that are none are refused", () => {
    for (const wrong of WRONG_VALUES)
      expect(() =>
        agreement(
          [
            [60, wrong],
            [60, 61],
          ],
          0.95,
        ),
      ).toThrow(RangeError);
    expect(() =>
      agreement(
        [
          [60, 61],
          [61, 60],
        ],
        1,
      ),
    ).toThrow(/level above 0 and below 1/);
  });
});

describe("smallest worthwhile change", () => {
  test("a fifth of the spread, in three ways", () => {
    const rows = [
      [60, 62],
      [64, 64],
      [70, 68],
    ];
    const found = smallestWorthwhile(rows)!;
    // First trial 60, 64, 70: squares about 64.67 sum to 50.67. Means 61, 64, 69: squares about 64.67 sum to 32.67.
    expectNear(found.firstTrial.sd, Math.sqrt(50.666666666666664 / 2), 1e-12);
    expectNear(found.means.sd, Math.sqrt(32.666666666666664 / 2), 1e-12);
    // Subjects 2 x 32.67 / 2, error: differences 2, 0, -2 have mean square 8 / 2 / 2 = 2.
    expectNear(found.true.sd, Math.sqrt((32.666666666666664 - 2) / 2), 1e-12);
    for (const { sd, change } of Object.values(found)) expectNear(change, sd / 5, 1e-12);
  });

  test("error that is all there is leaves no true spread", () => {
    expect(
      smallestWorthwhile([
        [60, 70],
        [70, 60],
      ])?.true,
    ).toEqual({ sd: 0, change: 0 });
  });

  test("too few subjects or trials have none", () => {
    expect(smallestWorthwhile([])).toBeNull();
    expect(smallestWorthwhile([[60, 61]])).toBeNull();
    expect(smallestWorthwhile([[60], [61]])).toBeNull();
  });

  test("shifts change nothing, scale scales", () => {
    fc.assert(
      fc.property(table, speed, (rows, shift) => {
        const found = smallestWorthwhile(rows)!;
        const moved = smallestWorthwhile(rows.map((row) => row.map((value) => 2 * value + shift)))!;
        for (const kind of ["firstTrial", "means"] as const)
          expectNear(moved[kind].change, 2 * found[kind].change, 1e-7);
        expectNear(moved.true.sd ** 2, 4 * found.true.sd ** 2, 1e-7);
      }),
    );
  });
});
