import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type OlsLine, ols } from "../../src/stats/ols.ts";
import { targetProbability } from "../../src/stats/target-probability.ts";
import { expectNear, linePoints, numbersIn, speed, speedsOf, weeksOf } from "./samples.ts";

const line = (points: readonly (readonly [number, number])[]): OlsLine => {
  const found = ols(weeksOf(points), speedsOf(points));
  if (!("slope" in found)) throw new Error("no line through these points");
  return found;
};
const scattered = linePoints.filter((points) => points.length > 3 && line(points).residualSd! > 0.1);

describe("known answers", () => {
  const found = line([
    [0, 60],
    [1, 62],
    [2, 61],
    [3, 63],
  ]);

  test("a target on the line is a matter of heads or tails, on either side", () => {
    const at = targetProbability(found, 10, found.intercept + 10 * found.slope, "higher")!;
    expectNear(at.probMeanReaches, 0.5, 1e-12);
    expectNear(at.probNewValueReaches, 0.5, 1e-12);
    expect(at.df).toBe(2);
  });

  test("two degrees of freedom in closed form: the chance below t is 1/2 + t / (2 sqrt(2 + t^2))", () => {
    const { fit, seMean, sePrediction, probMeanReaches, probNewValueReaches } = targetProbability(
      found,
      5,
      64,
      "higher",
    )!;
    const below = (t: number) => 0.5 + t / (2 * Math.sqrt(2 + t * t));
    expectNear(probMeanReaches, below((fit - 64) / seMean), 1e-12);
    expectNear(probNewValueReaches, below((fit - 64) / sePrediction), 1e-12);
  });
});

describe("too little", () => {
  test("two points and points on the line leave nothing to chance", () => {
    expect(
      targetProbability(
        line([
          [0, 60],
          [4, 62],
        ]),
        8,
        70,
        "higher",
      ),
    ).toBeNull();
    expect(targetProbability(line([0, 1, 2, 3].map((week) => [week, 60 + week] as const)), 8, 70, "higher")).toBeNull();
  });
});

describe("laws", () => {
  const at = fc.integer({ min: -20, max: 100 });

  test("higher and lower share out all there is", () => {
    fc.assert(
      fc.property(scattered, at, speed, (points, week, target) => {
        const up = targetProbability(line(points), week, target, "higher")!;
        const down = targetProbability(line(points), week, target, "lower")!;
        expectNear(up.probMeanReaches + down.probMeanReaches, 1);
        expectNear(up.probNewValueReaches + down.probNewValueReaches, 1);
      }),
    );
  });

  test("turned upside down, higher becomes lower", () => {
    fc.assert(
      fc.property(scattered, at, speed, (points, week, target) => {
        const turned = points.map(([x, y]) => [x, -y] as [number, number]);
        const up = targetProbability(line(points), week, target, "higher")!;
        const down = targetProbability(line(turned), week, -target, "lower")!;
        expectNear(down.probMeanReaches, up.probMeanReaches, 1e-6);
        expectNear(down.probNewValueReaches, up.probNewValueReaches, 1e-6);
      }),
    );
  });

  test("a further target is no likelier, one new value is less sure than the mean, chances lie between 0 and 1", () => {
    fc.assert(
      fc.property(scattered, at, speed, fc.integer({ min: 0, max: 50 }), (points, week, target, further) => {
        const near = targetProbability(line(points), week, target, "higher")!;
        const far = targetProbability(line(points), week, target + further, "higher")!;
        expect(far.probMeanReaches).toBeLessThanOrEqual(near.probMeanReaches + 1e-12);
        expect(near.sePrediction).toBeGreaterThan(near.seMean);
        expect(Math.abs(near.probNewValueReaches - 0.5)).toBeLessThanOrEqual(
          Math.abs(near.probMeanReaches - 0.5) + 1e-12,
        );
        for (const chance of [near.probMeanReaches, near.probNewValueReaches]) {
          expect(chance).toBeGreaterThanOrEqual(0);
          expect(chance).toBeLessThanOrEqual(1);
        }
        expect(numbersIn(near).every(Number.isFinite)).toBe(true);
      }),
    );
  });
});

describe("wrong calls", () => {
  const found = line([
    [0, 60],
    [1, 62],
    [2, 61],
  ]);

  test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e151])("a target or a place of %s is refused", (wrong) => {
    expect(() => targetProbability(found, 3, wrong, "higher")).toThrow(/target must be a finite number/);
    expect(() => targetProbability(found, 3, -wrong, "lower")).toThrow(/target must be a finite number/);
    expect(() => targetProbability(found, wrong, 62, "higher")).toThrow(RangeError);
  });

  test("a target as far out as may be is out of reach, not an error", () => {
    expect(targetProbability(found, 3, 1e150, "higher")!.probMeanReaches).toBeLessThan(1e-10);
    expect(targetProbability(found, 3, -1e150, "lower")!.probMeanReaches).toBeLessThan(1e-10);
  });
});
