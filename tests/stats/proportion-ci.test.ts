import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { binomialCdf } from "../../src/stats/distributions.ts";
import type { Interval } from "../../src/stats/interval.ts";
import { clopperPearson, jeffreys, jeffreysModified, wilson } from "../../src/stats/proportion-ci.ts";
import { expectNear } from "./samples.ts";

const METHODS = [wilson, jeffreys, jeffreysModified, clopperPearson];
const level = fc.constantFrom(0.5, 0.8, 0.9, 0.95, 0.99);
/** Successes of tries. */
const counted = fc.integer({ min: 1, max: 60 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));

function expectNearBoth(got: Interval, wanted: Interval, allowed = 1e-9): void {
  expectNear(got[0], wanted[0], allowed);
  expectNear(got[1], wanted[1], allowed);
}

describe("known answers", () => {
  test("Wilson at a level where z is 1, worked by hand", () => {
    // z = 1 at 68.27%; 2 of 4: (2 + 1/2 -+ sqrt(1 + 1/4)) / 5.
    const half = Math.sqrt(5) / 10;
    expectNearBoth(wilson(2, 4, 0.682689492137086), [0.5 - half, 0.5 + half]);
    // None of 4: 0 to 1 / 5; half of one tie of 4: (1/2 + 1/2 -+ sqrt(7/16 + 1/4)) / 5.
    expectNearBoth(wilson(0, 4, 0.682689492137086), [0, 0.2]);
    expectNearBoth(wilson(0.5, 4, 0.682689492137086), [(1 - Math.sqrt(11) / 4) / 5, (1 + Math.sqrt(11) / 4) / 5]);
  });

  test("Clopper and Pearson in closed form where nothing or everything succeeded", () => {
    // P(0 of n) = (1 - p)^n = 0.025.
    expectNearBoth(clopperPearson(0, 10, 0.95), [0, 1 - 0.025 ** 0.1]);
    expectNearBoth(clopperPearson(10, 10, 0.95), [0.025 ** 0.1, 1]);
  });

  test("Jeffreys with one try is the arcsine distribution raised: none of one has Beta(1/2, 3/2)", () => {
    // Its distribution function is (2 / pi) (asin sqrt(p) + sqrt(p (1 - p))).
    const reached = (p: number) => (2 / Math.PI) * (Math.asin(Math.sqrt(p)) + Math.sqrt(p * (1 - p)));
    const [lower, upper] = jeffreys(0, 1, 0.95);
    expectNear(reached(lower), 0.025, 1e-9);
    expectNear(reached(upper), 0.975, 1e-9);
    expect(jeffreysModified(0, 1, 0.95)).toEqual([0, upper]);
  });
});

describe("laws", () => {
  test("success and failure exchanged turn every interval round", () => {
    fc.assert(
      fc.property(counted, level, ([count, n], wanted) => {
        for (const method of METHODS) {
          const [lower, upper] = method(count, n, wanted);
          expectNearBoth(method(n - count, n, wanted), [1 - upper, 1 - lower]);
        }
      }),
    );
  });

  test("limits are in order and from 0 to 1, and a wider level holds the narrower", () => {
    fc.assert(
      fc.property(counted, ([count, n]) => {
        for (const method of METHODS) {
          const [narrow, wide] = [method(count, n, 0.9), method(count, n, 0.95)];
          expect(0).toBeLessThanOrEqual(wide[0]);
          expect(wide[0]).toBeLessThanOrEqual(narrow[0]);
          expect(narrow[0]).toBeLessThanOrEqual(narrow[1]);
          expect(narrow[1]).toBeLessThanOrEqual(wide[1]);
          expect(wide[1]).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  test("Wilson and Clopper-Pearson hold the share, Jeffreys where something succeeded and something failed", () => {
    fc.assert(
      fc.property(counted, ([count, n]) => {
        const inside = count > 0 && count < n;
        for (const method of [wilson, clopperPearson, jeffreysModified, ...(inside ? [jeffreys] : [])]) {
          const [lower, upper] = method(count, n, 0.95);
          expect(lower).toBeLessThanOrEqual(count / n);
          expect(upper).toBeGreaterThanOrEqual(count / n);
        }
      }),
    );
  });

  test("at no success and at no failure the limit is exact, but for Jeffreys unmodified", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), level, (n, wanted) => {
        for (const method of [wilson, jeffreysModified, clopperPearson]) {
          expect(method(0, n, wanted)[0]).toBe(0);
          expect(method(n, n, wanted)[1]).toBe(1);
        }
        expect(jeffreys(0, n, wanted)[0]).toBeGreaterThan(0);
        expect(jeffreys(n, n, wanted)[1]).toBeLessThan(1);
        expect(jeffreysModified(n, n, wanted)[0]).toBe(jeffreys(n, n, wanted)[0]);
      }),
    );
  });

  test("the limits of Clopper and Pearson are the shares at which so many, or so few, are one in forty", () => {
    fc.assert(
      fc.property(counted, ([count, n]) => {
        const [lower, upper] = clopperPearson(count, n, 0.95);
        if (count > 0) expectNear(1 - binomialCdf(count - 1, n, lower), 0.025, 1e-7);
        if (count < n) expectNear(binomialCdf(count, n, upper), 0.025, 1e-7);
      }),
    );
  });

  test("any share of the tries has limits about it, also a crumb of one and a level of nearly nothing", () => {
    const crumb = fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(0, 1, 1e-20, 5e-324, 1 - 1e-16));
    fc.assert(
      fc.property(
        crumb,
        fc.integer({ min: 1, max: 1e9 }),
        fc.constantFrom(1e-17, 0.95, 1 - 1e-15),
        (part, n, wanted) => {
          const [lower, upper] = wilson(part * n, n, wanted);
          expect(lower).toBeGreaterThanOrEqual(0);
          expect(lower).toBeLessThanOrEqual(part + 1e-15);
          expect(upper).toBeGreaterThanOrEqual(part - 1e-15);
          expect(upper).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});

describe("wrong calls", () => {
  test.each([0, -1, 2.5, Number.NaN, Number.POSITIVE_INFINITY, 1e9 + 1])("%s tries are refused", (n) => {
    for (const method of METHODS) expect(() => method(0, n, 0.95)).toThrow(/whole number of tries from 1/);
  });

  test.each([-0.5, 10.5, Number.NaN])("a count of %s of ten is refused", (count) => {
    for (const method of METHODS) expect(() => method(count, 10, 0.95)).toThrow(/a count from 0 to 10/);
  });

  test("the exact interval refuses half a success, and all refuse a level of 1", () => {
    expect(() => clopperPearson(0.5, 10, 0.95)).toThrow(/needs a whole count/);
    for (const method of METHODS) expect(() => method(1, 10, 1)).toThrow(/level above 0 and below 1/);
    expect(wilson(1e9, 1e9, 0.95)[1]).toBe(1);
  });
});
