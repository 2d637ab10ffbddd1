import { describe, expect, test } from "vitest";
import {
  normalRank,
  rankSumLimit,
  rankSumMoments,
  signedRankLimit,
  signedRankMoments,
} from "../../src/stats/pair-rank.ts";
import { rankSumCdf, rankSumIsCounted, SIGNED_RANK_UP_TO, signedRankCdf } from "../../src/stats/rank-null.ts";
import { expectNear } from "./samples.ts";

describe("chances of the signed-rank sum", () => {
  test("few values agree with every choice of signs written down", () => {
    expect([...signedRankCdf(1)]).toEqual([1 / 2]);
    expect([...signedRankCdf(2)]).toEqual([1 / 4, 2 / 4]);
    expect([...signedRankCdf(3)]).toEqual([1 / 8, 2 / 8, 3 / 8, 5 / 8]);
    for (let n = 1; n <= 10; n += 1) {
      const cdf = signedRankCdf(n);
      expect(cdf).toHaveLength(Math.floor((n * (n + 1)) / 4) + 1);
      const sums = Array.from({ length: 2 ** n }, (_, signs) =>
        Array.from({ length: n }, (__, i) => (Math.floor(signs / 2 ** i) % 2) * (i + 1)).reduce((a, b) => a + b, 0),
      );
      cdf.forEach((chance, t) => {
        expect(chance).toBe(sums.filter((sum) => sum <= t).length / 2 ** n);
      });
    }
  });

  test("100 values agree with R, and 1000 are still counted", () => {
    // R 4.2.2: psignrank(1000, 100), psignrank(232346, 1000) from the coverage 1 - 2 p.
    expectNear(signedRankCdf(100)[1000]! / 2.243547887062679e-8, 1, 1e-12);
    expectNear(1 - 2 * signedRankCdf(1000)[232346]!, 0.9500051357052872, 1e-12);
  });

  test.each([0, -1, 2.5, Number.NaN, SIGNED_RANK_UP_TO + 1])("a count of %s is refused", (n) => {
    expect(() => signedRankCdf(n)).toThrow(RangeError);
    expect(SIGNED_RANK_UP_TO).toBe(1000);
  });
});

describe("chances of the rank-sum count", () => {
  test("few values agree with every order written down", () => {
    expect([...rankSumCdf(1, 1)]).toEqual([1 / 2]);
    expect([...rankSumCdf(2, 2)]).toEqual([1 / 6, 2 / 6, 4 / 6]);
    // R 4.2.2: pwilcox(0:6, 3, 4) * 35.
    expect(Array.from(rankSumCdf(3, 4), (chance) => Math.round(chance * 35 * 1e9) / 1e9)).toEqual([
      1, 2, 4, 7, 11, 15, 20,
    ]);
    for (const [n, m] of [
      [1, 4],
      [2, 5],
      [3, 3],
      [4, 3],
      [5, 2],
      [5, 5],
    ] as const) {
      const counts: number[] = [];
      const place = (left: number, below: number, wins: number): void => {
        if (left === 0) counts.push(wins);
        else for (let beaten = below; beaten <= m; beaten += 1) place(left - 1, beaten, wins + beaten);
      };
      place(n, 0, 0);
      const cdf = rankSumCdf(n, m);
      expect(cdf).toHaveLength(Math.floor((n * m) / 2) + 1);
      cdf.forEach((chance, u) => {
        expect(chance).toBe(counts.filter((count) => count <= u).length / counts.length);
      });
    }
  });

  test("many values agree with R, whichever sample is named first", () => {
    // R 4.2.2: pwilcox(800, 50, 50); 1 - 2 pwilcox(921, 40, 60).
    expectNear(rankSumCdf(50, 50)[800]! / 8.69917143080259e-4, 1, 1e-12);
    expectNear(1 - 2 * rankSumCdf(40, 60)[921]!, 0.950260250199733, 1e-12);
    expect(rankSumCdf(60, 40)).toEqual(rankSumCdf(40, 60));
  });

  test.each([
    [0, 3],
    [3, 0],
    [1.5, 2],
    [2, 1.5],
    [Number.NaN, 2],
    [201, 201],
  ])("%s against %s is refused", (n, m) => {
    expect(() => rankSumCdf(n, m)).toThrow(RangeError);
  });

  test("what is counted out depends on the smaller sample first", () => {
    expect([rankSumIsCounted(200, 200), rankSumIsCounted(201, 201)]).toEqual([true, false]);
    expect([rankSumIsCounted(2, 28_000), rankSumIsCounted(28_000, 2), rankSumIsCounted(2, 29_000)]).toEqual([
      true,
      true,
      false,
    ]);
    expect(rankSumIsCounted(1, 10_000_000)).toBe(true);
  });
});

describe("the rank of a limit", () => {
  // R 4.2.2: k = qsignrank(0.025, n), coverage 1 - 2 psignrank(k - 1, n).
  test.each([
    [6, 1, 0.96875],
    [7, 3, 0.953125],
    [10, 9, 0.951171875],
    [25, 90, 0.9517375826835632],
    [53, 495, 0.9501431181607394],
    [54, 515, 0.9509242308945387],
    [100, 1956, 0.9500762403957075],
    [1000, 232347, 0.9500051357052872],
  ])("of one sample of %i agrees with R", (n, rank, coverage) => {
    const found = signedRankLimit(n, 0.025);
    expect(found.rank).toBe(rank);
    expectNear(found.coverage, coverage, 1e-12);
  });

  // R 4.2.2: k = qwilcox(0.025, n, m), coverage 1 - 2 pwilcox(k - 1, n, m).
  test.each([
    [4, 4, 1, 0.9714285714285714],
    [3, 5, 1, 0.9642857142857143],
    [2, 8, 1, 0.9555555555555556],
    [10, 10, 24, 0.9567429474550218],
    [28, 28, 273, 0.9503330832631134],
    [40, 60, 922, 0.950260250199733],
    [1, 40, 1, 0.9512195121951219],
    [1, 79, 1, 0.975],
  ])("of %i against %i agrees with R", (n, m, rank, coverage) => {
    const found = rankSumLimit(n, m, 0.025);
    expect(found.rank).toBe(rank);
    expectNear(found.coverage, coverage, 1e-12);
  });

  test("with too few values there is none, also where a chance equals the tail", () => {
    expect(signedRankLimit(5, 0.025)).toEqual({ rank: 0, coverage: null });
    expect(rankSumLimit(3, 4, 0.025)).toEqual({ rank: 0, coverage: null });
    // 1 of 40 orders is 0.025 exactly; 1 - 0.95 in binary is a little more than 0.05.
    expect(rankSumLimit(1, 39, (1 - 0.95) / 2)).toEqual({ rank: 0, coverage: null });
    expect(signedRankLimit(4, 1 / 16)).toEqual({ rank: 0, coverage: null });
    expect(signedRankLimit(4, 2 / 16)).toEqual({ rank: 1, coverage: 1 - 2 / 16 });
  });

  test("beyond the counted ones it is the normal approximation's, which agrees with the count where both are there", () => {
    for (const tail of [0.25, 0.05, 0.025, 0.005]) {
      expect(normalRank(signedRankMoments(100), tail).rank).toBe(signedRankLimit(100, tail).rank);
      expect(normalRank(signedRankMoments(1000), tail).rank).toBe(signedRankLimit(1000, tail).rank);
      expect(normalRank(rankSumMoments(20, 20), tail).rank).toBe(rankSumLimit(20, 20, tail).rank);
      const unlike = normalRank(rankSumMoments(30, 300), tail).rank - rankSumLimit(30, 300, tail).rank;
      expect(Math.abs(unlike)).toBeLessThanOrEqual(1);
    }
    expect(signedRankLimit(1001, 0.025)).toEqual({ rank: 232821, coverage: null });
    expect(rankSumLimit(201, 201, 0.025)).toEqual({ rank: 17918, coverage: null });
    expect(normalRank(signedRankMoments(3), 0.001)).toEqual({ rank: 0, coverage: null });
  });

  test("moments are those of the distributions", () => {
    for (const [moments, cdf, top] of [
      [signedRankMoments(7), signedRankCdf(7), 28],
      [rankSumMoments(4, 5), rankSumCdf(4, 5), 20],
    ] as const) {
      const lower = Array.from(cdf, (chance, t) => chance - (cdf[t - 1] ?? 0));
      const chances = Array.from({ length: top + 1 }, (_, t) => lower[Math.min(t, top - t)]!);
      const moment = (power: number) => chances.reduce((sum, chance, t) => sum + chance * (t - top / 2) ** power, 0);
      expect(moments.centre).toBe(top / 2);
      expectNear(moments.sd, Math.sqrt(moment(2)), 1e-12);
      expectNear(moments.excess, moment(4) / moment(2) ** 2 - 3, 1e-12);
    }
  });
});
