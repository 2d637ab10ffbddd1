import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { type OlsLine, ols } from "../../src/stats/ols.ts";
import { olsAt } from "../../src/stats/ols-at.ts";
import {
  expectNear,
  linePoints,
  numbersIn,
  points,
  reordered,
  speed,
  speedsOf,
  WRONG_VALUES,
  weeksOf,
} from "./samples.ts";

function line(x: readonly number[], y: readonly number[], level?: number): OlsLine {
  const fitted = ols(x, y, level);
  if (fitted.kind !== "line") throw new Error(`expected a line, got ${fitted.reason}`);
  return fitted;
}

describe("known answers", () => {
  test("three sessions worked by hand: slope 3/2, residuals -1/6, 1/3, -1/6, t with 1 degree of freedom", () => {
    const fitted = line([0, 1, 2], [1, 3, 4]);
    const t = Math.tan(Math.PI * 0.475);
    const se = Math.sqrt(1 / 6) / Math.sqrt(2);
    expect(fitted.slope).toBeCloseTo(1.5, 14);
    expect(fitted.intercept).toBeCloseTo(7 / 6, 14);
    expect(fitted.residualSd).toBeCloseTo(Math.sqrt(1 / 6), 14);
    expect(fitted.seSlope).toBeCloseTo(se, 14);
    expect(fitted.ciSlope![0]).toBeCloseTo(1.5 - t * se, 12);
    expect(fitted.ciSlope![1]).toBeCloseTo(1.5 + t * se, 12);
    // Total sum of squares 14/3, residual 1/6.
    expect(fitted.rSquared).toBeCloseTo(1 - 1 / 28, 14);
    // p of t with 1 df: 1 - 2 atan(t) / pi.
    expect(fitted.pSlope).toBeCloseTo(1 - (2 * Math.atan(1.5 / se)) / Math.PI, 12);
  });

  test("NIST Norris to 11 digits of the certified values (NIST StRD, public domain)", () => {
    const Certified = z.record(z.string(), z.number());
    const File = z.object({
      cases: z.array(
        z.object({
          id: z.string(),
          inputs: z.object({ x: z.array(z.number()), y: z.array(z.number()) }),
          published: z.object({ certified: Certified }).optional(),
        }),
      ),
    });
    const path = new URL("../reference/stats/ols.json", import.meta.url);
    const norris = File.parse(JSON.parse(readFileSync(path, "utf8"))).cases.find(({ id }) => id === "nist-norris")!;
    const fitted = new Map<string, unknown>(Object.entries(line(norris.inputs.x, norris.inputs.y)));
    const certified = Object.entries(norris.published!.certified);
    expect(certified).toHaveLength(6);
    for (const [field, value] of certified) {
      expect(Math.abs(Number(fitted.get(field)) - value), field).toBeLessThanOrEqual(1e-11 * Math.abs(value));
    }
  });
});

describe("too few sessions", () => {
  test("no session or one session give no line, and say so", () => {
    expect(ols([], [])).toEqual({ kind: "no-line", n: 0, reason: "too-few" });
    expect(ols([3], [61])).toEqual({ kind: "no-line", n: 1, reason: "too-few" });
  });

  test("sessions on one day give no line", () => {
    expect(ols([3, 3, 3], [61, 64, 60])).toEqual({ kind: "no-line", n: 3, reason: "same-x" });
  });

  test("two sessions give a line through both and nothing about its error", () => {
    const fitted = line([0, 4], [60, 62]);
    expect([fitted.slope, fitted.intercept, fitted.df]).toEqual([0.5, 60, 0]);
    const { residualSd, seSlope, seIntercept, tSlope, pSlope, ciSlope, ciIntercept, rSquared } = fitted;
    for (const none of [residualSd, seSlope, seIntercept, tSlope, pSlope, ciSlope, ciIntercept, rSquared]) {
      expect(none).toBeNull();
    }
    expect(olsAt(fitted, 8)).toEqual({
      x: 8,
      fit: 64,
      seFit: null,
      sePrediction: null,
      confidence: null,
      prediction: null,
    });
  });

  test("equal speeds give a flat line without spread: no t, no p, no share of variance", () => {
    const fitted = line([0, 1, 5], [61.3, 61.3, 61.3]);
    expect([fitted.slope, fitted.intercept, fitted.seSlope]).toEqual([0, 61.3, 0]);
    expect([fitted.tSlope, fitted.pSlope, fitted.rSquared]).toEqual([null, null, null]);
    expect(fitted.ciSlope).toEqual([0, 0]);
  });
});

describe("wrong calls", () => {
  test.each(WRONG_VALUES)("a speed or a day of %s is refused", (wrong) => {
    expect(() => ols([0, 1, 2], [60, wrong, 62])).toThrow(RangeError);
    expect(() => ols([0, 1, wrong], [60, 61, 62])).toThrow(RangeError);
    expect(() => olsAt(line([0, 1, 2], [60, 61, 63]), wrong)).toThrow(RangeError);
  });

  test("lists of unequal length and a level of 1 are refused", () => {
    expect(() => ols([0, 1], [60])).toThrow(RangeError);
    expect(() => ols([0, 1], [60, 61], 1)).toThrow(RangeError);
    expect(() => ols([], [], Number.NaN)).toThrow(RangeError);
  });

  test("days closer together than a double can divide by are refused, not answered with Infinity", () => {
    expect(() => ols([0, 1e-160], [0, 1e150])).toThrow(RangeError);
  });
});

describe("laws", () => {
  test("no result is ever NaN or infinite", () => {
    fc.assert(
      fc.property(points, (list) => {
        const fitted = ols(weeksOf(list), speedsOf(list));
        const all = [fitted, fitted.kind === "line" ? olsAt(fitted, 70) : null];
        expect(numbersIn(all).every(Number.isFinite)).toBe(true);
      }),
    );
  });

  test("the order in which sessions are listed moves nothing", () => {
    fc.assert(
      fc.property(reordered(linePoints), ([list, other]) => {
        const a = line(weeksOf(list), speedsOf(list));
        const b = line(weeksOf(other), speedsOf(other));
        expectNear(b.slope, a.slope);
        expectNear(b.intercept, a.intercept);
        expectNear(b.seSlope, a.seSlope);
      }),
    );
  });

  test("another first day or a fixed speed added leaves the slope and its error alone", () => {
    fc.assert(
      fc.property(linePoints, speed, speed, (list, later, faster) => {
        const a = line(weeksOf(list), speedsOf(list));
        const b = line(
          weeksOf(list).map((week) => week + later),
          speedsOf(list).map((value) => value + faster),
        );
        expectNear(b.slope, a.slope);
        expectNear(b.seSlope, a.seSlope, 1e-6);
        expectNear(olsAt(b, 10 + later).fit, olsAt(a, 10).fit + faster);
      }),
    );
  });

  test("another unit of speed scales slope and error, and leaves the share of variance alone", () => {
    fc.assert(
      fc.property(linePoints, (list) => {
        const a = line(weeksOf(list), speedsOf(list));
        const b = line(
          weeksOf(list),
          speedsOf(list).map((value) => value * -4),
        );
        expectNear(b.slope, a.slope * -4);
        expectNear(b.seSlope, a.seSlope === null ? null : a.seSlope * 4);
        expectNear(b.rSquared, a.rSquared);
      }),
    );
  });

  test("every interval holds its estimate, a wider level holds the narrower, a new value the mean line", () => {
    fc.assert(
      fc.property(linePoints, fc.integer({ min: -20, max: 90 }), (list, at) => {
        const narrow = line(weeksOf(list), speedsOf(list), 0.9);
        const wide = line(weeksOf(list), speedsOf(list), 0.95);
        if (narrow.ciSlope === null || wide.ciSlope === null) {
          expect(narrow.df).toBe(0);
          return;
        }
        expect(narrow.ciSlope[0]).toBeLessThanOrEqual(narrow.slope);
        expect(narrow.ciSlope[1]).toBeGreaterThanOrEqual(narrow.slope);
        expect(wide.ciSlope[0]).toBeLessThanOrEqual(narrow.ciSlope[0]);
        expect(wide.ciSlope[1]).toBeGreaterThanOrEqual(narrow.ciSlope[1]);
        const { fit, confidence, prediction } = olsAt(wide, at);
        expect(confidence![0]).toBeLessThanOrEqual(fit);
        expect(confidence![1]).toBeGreaterThanOrEqual(fit);
        expect(prediction![0]).toBeLessThanOrEqual(confidence![0]);
        expect(prediction![1]).toBeGreaterThanOrEqual(confidence![1]);
      }),
    );
  });
});
