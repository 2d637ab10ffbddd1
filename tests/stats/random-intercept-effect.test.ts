import { describe, expect, test } from "vitest";
import { tQuantile } from "../../src/stats/distributions.ts";
import { groupSums } from "../../src/stats/group-sums.ts";
import { fixedEffect, interceptOf, limits, slopeOf } from "../../src/stats/random-intercept-effect.ts";
import type { Moments } from "../../src/stats/random-intercept-moments.ts";
import { momentsAt } from "../../src/stats/random-intercept-moments.ts";
import { profileAt } from "../../src/stats/random-intercept-profile.ts";
import { bestProfile } from "../../src/stats/random-intercept-ratio.ts";
import { satterthwaiteDf } from "../../src/stats/random-intercept-satterthwaite.ts";

const sums = groupSums(
  [60, 62, 61, 64, 66, 63, 70, 69, 71],
  [0, 0, 1, 1, 1, 2, 2, 3, 3],
  [0, 0, 1, 1, 1, 2, 2, 3, 3],
  4,
);
const profile = profileAt(sums, 0.7);
const moments = momentsAt(sums, profile);
const wanted = slopeOf(sums, profile);

const NOTHING = { intercept: 0, cross: 0, slope: 0 };
/** Moments in which the rows tell nothing about the two variances. */
const uninformed: Moments = {
  ...moments,
  byGroup: NOTHING,
  byResidual: NOTHING,
  byGroupTwice: NOTHING,
  byBoth: NOTHING,
  byResidualTwice: NOTHING,
  traceGroupTwice: 0,
  traceBoth: 0,
  traceResidualTwice: 0,
};

describe("limits", () => {
  test("t quantiles times the error, on both sides; none where they are infinite", () => {
    const half = 2 * tQuantile(0.95, 7);
    expect(limits(10, 2, 7, 0.9)![0]).toBeCloseTo(10 - half, 10);
    expect(limits(10, 2, 7, 0.9)![1]).toBeCloseTo(10 + half, 10);
    expect(limits(10, 1e-300, 1e-3, 0.95)).toBeNull();
    // The quantile alone is still a double here, its product with the error no longer.
    expect(Number.isFinite(tQuantile(0.975, 0.01))).toBe(true);
    expect(limits(10, 1e300, 0.01, 0.95)).toBeNull();
  });
});

describe("where an error has no error of its own", () => {
  test("rows that tell nothing of the variances give the plain error by both methods, and no t, p or interval", () => {
    const { se, satterthwaite, kenwardRoger } = fixedEffect(
      sums,
      profile,
      { ...uninformed, traceGroupTwice: 1e6 },
      wanted,
      0.95,
    );
    expect(se).toBeGreaterThan(0);
    expect(kenwardRoger).toEqual({ se, df: null, t: null, p: null, interval: null });
    expect(satterthwaite.df).toBeNull();
    expect(satterthwaite.p).toBeNull();
  });

  test("a standard error of 0 has degrees of freedom, and no t, p or interval", () => {
    const flat = fixedEffect(sums, profile, moments, { ...wanted, unit: 0 }, 0.95);
    expect(flat.se).toBe(0);
    expect(flat.kenwardRoger).toEqual({ se: 0, df: flat.kenwardRoger.df, t: null, p: null, interval: null });
    expect(flat.kenwardRoger.df).toBeGreaterThan(0);
  });

  test("the wider of an error too large for a double is refused with its name", () => {
    expect(() => fixedEffect(sums, profile, moments, { ...wanted, unit: 1e308 * 10 }, 0.95)).toThrow(
      /a standard error/,
    );
    expect(() => fixedEffect(sums, profile, moments, { ...wanted, estimate: 1e300, unit: 1e-20 }, 0.95)).toThrow(
      /a t /,
    );
    expect(() =>
      slopeOf({ ...sums, ofY: { ...sums.ofY, scale: 1e308 }, ofX: { ...sums.ofX, scale: 1e-5 } }, profile),
    ).toThrow(/the slope/);
    expect(() =>
      interceptOf(
        { ...sums, ofY: { ...sums.ofY, scale: Number.MAX_VALUE }, ofX: { ...sums.ofX, origin: 1e9 } },
        profile,
      ),
    ).toThrow(/the intercept/);
  });
});

describe("Satterthwaite's degrees of freedom", () => {
  const combination = { intercept: 1, slope: 0 };

  test("no answer where the criterion is flat in a direction", () => {
    expect(satterthwaiteDf(sums, profile, { ...uninformed, traceGroupTwice: 1e6 }, combination)).toBeNull();
  });

  test("an answer where it bends in both, however unlike the sizes of the two curvatures", () => {
    const large = groupSums(
      Array.from({ length: 400 }, (_, i) => 60 + ((i * 37) % 11) + ((i * 7) % 5) * 3 * Math.floor(i / 100)),
      null,
      Array.from({ length: 400 }, (_, i) => Math.floor(i / 100)),
      4,
    );
    const at = bestProfile(large)!;
    const df = satterthwaiteDf(large, at, momentsAt(large, at), combination)!;
    expect(df).toBeGreaterThan(1);
    expect(df).toBeLessThan(4);
  });
});
