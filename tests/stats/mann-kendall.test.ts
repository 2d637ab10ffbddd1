import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hamedRao } from "../../src/stats/hamed-rao.ts";
import { discordantCdf, EXACT_UP_TO } from "../../src/stats/kendall-null.ts";
import { mannKendall } from "../../src/stats/mann-kendall.ts";
import { tieGroups } from "../../src/stats/ties.ts";
import { expectNear, numbersIn, speed, speeds, WRONG_VALUES } from "./samples.ts";

/** Every order of 1..n. */
function orders(n: number): number[][] {
  if (n === 0) return [[]];
  return orders(n - 1).flatMap((shorter) =>
    Array.from({ length: n }, (_, at) => [...shorter.slice(0, at), n, ...shorter.slice(at)]),
  );
}

describe("known answers", () => {
  test("four sessions worked by hand: five pairs rise and one falls", () => {
    const result = mannKendall([1, 2, 4, 3])!;
    expect(result.s).toBe(4);
    expect(result.varS).toBeCloseTo((4 * 3 * 13) / 18, 14);
    expect(result.z).toBeCloseTo(3 / Math.sqrt(26 / 3), 14);
    expect(result.tauA).toBeCloseTo(2 / 3, 14);
    // Of the 24 orders 1 has no falling pair and 3 have one: 2 x 4 / 24.
    expect(result.pExact).toBeCloseTo(1 / 3, 14);
    expect(result.pRecommended).toBe(result.pExact);
  });

  test.each([3, 4, 5, 6])("the exact p of %s sessions is the count over every order", (n) => {
    const all = orders(n).map((order) => ({ order, s: mannKendall(order)!.s }));
    const falling = Array.from({ length: n }, (_, i) => n - i);
    for (const values of [falling, [2, 1, ...falling.slice(0, n - 2)], orders(n)[0]!]) {
      const s = mannKendall(values)!.s;
      const asFar = all.filter((each) => Math.abs(each.s) >= Math.abs(s)).length;
      expect(mannKendall(values)!.pExact).toBeCloseTo(asFar / all.length, 12);
    }
  });

  test("the exact distribution of three values is 1, 3, 5, 6 sixths", () => {
    const cdf = [...discordantCdf(3)];
    expect(cdf).toHaveLength(4);
    [1 / 6, 3 / 6, 5 / 6, 1].forEach((wanted, t) => {
      expect(cdf[t]).toBeCloseTo(wanted, 14);
    });
  });

  test("the exact p is the one to show up to ten untied sessions, the normal one from eleven on", () => {
    const ten = mannKendall([1, 5, 2, 6, 3, 7, 4, 8, 10, 9])!;
    expect(ten.pRecommended).toBe(ten.pExact);
    const eleven = mannKendall([1, 5, 2, 6, 3, 7, 4, 8, 10, 9, 11])!;
    expect(eleven.pExact).not.toBeNull();
    expect(eleven.pRecommended).toBe(eleven.p);
  });

  test("fast and slow sessions in turn: lag 1 counts with its minus sign and shrinks the signed variance", () => {
    const inTurn = Array.from({ length: 20 }, (_, i) => (i % 2 === 0 ? 60 : 64) + ((i * 7) % 20) / 40);
    const result = hamedRao(inTurn)!;
    expect(result.significantLags[0]).toBe(1);
    expect(result.rankAutocorrelation[0]).toBeLessThan(-0.5);
    expect(result.signed.factor).toBeLessThan(1);
    expect(result.absolute.factor).toBeGreaterThanOrEqual(1);
  });

  test("a level for keeping lags lies between 0 and 1, both excluded", () => {
    expect(() => hamedRao([1, 2, 3], 0)).toThrow(/alphaLags must be above 0 and below 1, got 0/);
    expect(() => hamedRao([1, 2, 3], 1)).toThrow(/got 1/);
    expect(() => hamedRao([1, 2, 3], Number.NaN)).toThrow(RangeError);
  });

  test("equal speeds fall into groups, smallest first", () => {
    expect(tieGroups([5, 7, 5, 7, 7, 1])).toEqual([2, 3]);
    expect(tieGroups([3, 1, 2])).toEqual([]);
    expect(tieGroups([])).toEqual([]);
  });
});

describe("too few sessions", () => {
  test("no session or one session cannot be tested", () => {
    expect([mannKendall([]), mannKendall([60])]).toEqual([null, null]);
    expect([hamedRao([]), hamedRao([60]), hamedRao([60, 61])]).toEqual([null, null, null]);
  });

  test("two sessions prove nothing", () => {
    expect(mannKendall([60, 70])).toMatchObject({ s: 1, varS: 1, z: 0, p: 1, pExact: 1 });
  });

  test("equal speeds, or speeds on one straight line, leave nothing to correlate", () => {
    expect(mannKendall([61, 61, 61])).toMatchObject({ s: 0, varS: 0, z: 0, p: 1, pExact: null, tauA: 0, tauB: null });
    expect(hamedRao([61, 61, 61, 61])).toBeNull();
    expect(hamedRao([61.1, 61.2, 61.3, 61.4, 61.5])).toBeNull();
  });
});

describe("wrong calls", () => {
  test.each(WRONG_VALUES)("a speed of %s is refused", (wrong) => {
    expect(() => mannKendall([60, wrong])).toThrow(RangeError);
    expect(() => hamedRao([60, 61, wrong])).toThrow(RangeError);
  });

  test("a size beyond the exact distribution and an impossible level are refused", () => {
    expect(() => discordantCdf(EXACT_UP_TO + 1)).toThrow(RangeError);
    expect(() => discordantCdf(2.5)).toThrow(RangeError);
    expect(() => hamedRao([1, 2, 4], 1)).toThrow(RangeError);
  });
});

describe("laws", () => {
  const several = fc.array(speed, { minLength: 2, maxLength: 30 });

  test("no result is ever NaN or infinite, and every p lies between 0 and 1", () => {
    fc.assert(
      fc.property(speeds, (list) => {
        const result = mannKendall(list);
        expect(numbersIn([result, hamedRao(list)]).every(Number.isFinite)).toBe(true);
        for (const p of result === null ? [] : [result.p, result.pNoContinuity, result.pRecommended]) {
          expect(p).toBeGreaterThanOrEqual(0);
          expect(p).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  test("a fixed speed added, another unit, or any rising scale leaves the test alone", () => {
    fc.assert(
      fc.property(several, speed, (list, faster) => {
        expect(mannKendall(list.map((value) => value + faster))).toEqual(mannKendall(list));
        expect(mannKendall(list.map((value) => value * 4))).toEqual(mannKendall(list));
        expect(mannKendall(list.map((value) => value ** 3))).toEqual(mannKendall(list));
      }),
    );
  });

  test("the season told backwards, or slower counted as better, turns the sign and keeps the p", () => {
    fc.assert(
      fc.property(several, (list) => {
        const forwards = mannKendall(list)!;
        for (const turned of [mannKendall(list.toReversed())!, mannKendall(list.map((value) => -value))!]) {
          expect(turned.s + forwards.s).toBe(0);
          expectNear(turned.z, -forwards.z);
          expectNear(turned.p, forwards.p);
        }
      }),
    );
  });

  test("counting correlation on its absolute value never shrinks the variance", () => {
    fc.assert(
      fc.property(several, (list) => {
        const result = hamedRao(list);
        if (result === null) return;
        expect(result.absolute.factor).toBeGreaterThanOrEqual(1);
        expect(result.absolute.factor).toBeGreaterThanOrEqual(result.signed.factor);
        expect(result.signed.z === null).toBe(result.signed.factor < 0);
      }),
    );
  });

  test("the largest exact distribution still sums to 1 and is symmetric", () => {
    const cdf = discordantCdf(EXACT_UP_TO);
    const pairs = cdf.length - 1;
    expect(cdf[pairs - 1]).toBeCloseTo(1, 12);
    expect(cdf[pairs / 2 - 1]! + cdf[pairs / 2]!).toBeCloseTo(1, 10);
  });
});
