import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { normalCdf } from "../../src/stats/distributions.ts";
import { mad, madSd, NORMAL_QUARTILE } from "../../src/stats/mad.ts";
import { expectNear, reordered, speed, speeds, WRONG_VALUES } from "./samples.ts";

describe("spread that half of the swings cannot move", () => {
  // Expected: R 4.2.2 (median, mad with constant 1 and 1 / qnorm(0.75)), as in the project's reference file robust-location.json.
  test.each([
    {
      // Hollander and Wolfe (1973) p. 29 f., Hamilton depression scale, as in the example of R's wilcox.test.
      what: "nine differences of a depression scale",
      x: [-0.952, 0.147, -1.022, -0.43, -0.62, -0.59, -0.49, 0.08, -0.01],
      raw: 0.462,
      scaled: 0.684962224949588,
    },
    {
      // lme4::sleepstudy, subject 308 (Belenky et al. 2003, J Sleep Res 12:1-12).
      what: "ten reaction times",
      x: [249.56, 258.7047, 250.8006, 321.4398, 356.8519, 414.6901, 382.2038, 290.1486, 430.5853, 466.3535],
      raw: 77.9927,
      scaled: 115.632150047242,
    },
    {
      // lme4::sleepstudy, five values of subject 309.
      what: "five reaction times",
      x: [222.7339, 205.2658, 202.9778, 204.707, 207.7161],
      raw: 2.28800000000001,
      scaled: 3.39219387594083,
    },
  ])("$what agree with R", ({ x, raw, scaled }) => {
    expectNear(mad(x), raw, 1e-12);
    expectNear(madSd(x), scaled, 1e-12);
  });

  test("the scale is the third quartile of the normal distribution", () => {
    expect(normalCdf(NORMAL_QUARTILE)).toBeCloseTo(0.75, 14);
  });

  test("no swings have none, equal swings have 0, and a wrong value is refused", () => {
    expect([mad([]), madSd([])]).toEqual([null, null]);
    expect([mad([61]), mad([61, 61, 61, 90])]).toEqual([0, 0]);
    for (const wrong of WRONG_VALUES) expect(() => mad([60, wrong])).toThrow(RangeError);
  });

  test("order and a fixed speed added leave it alone, another unit scales it", () => {
    fc.assert(
      fc.property(reordered(speeds), speed, ([list, other], shift) => {
        expect(mad(other)).toBe(mad(list));
        expect(mad(list.map((value) => value + shift))).toBe(mad(list));
        expect(mad(list.map((value) => value * -4))).toBe(list.length === 0 ? null : mad(list)! * 4);
      }),
    );
  });
});
