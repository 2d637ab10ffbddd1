import { describe, expect, test } from "vitest";
import { randomFrom } from "./random.ts";

describe("the generator's random numbers", () => {
  test("depend on the label alone", () => {
    const draw = (label: string): number[] => Array.from({ length: 5 }, randomFrom(label).uniform);
    expect(draw("a lane")).toEqual(draw("a lane"));
    expect(draw("a lane")).not.toEqual(draw("another lane"));
  });

  test("spread as asked, within six standard deviations", () => {
    const random = randomFrom("spread");
    const values = Array.from({ length: 20_000 }, () => random.normal(60, 2));
    const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
    const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
    // Standard errors are 0.014 and 0.04; five of them leave room for this one fixed stream and no more.
    expect(Math.abs(mean - 60)).toBeLessThan(0.07);
    expect(Math.abs(variance - 4)).toBeLessThan(0.2);
    for (const value of values) expect(Math.abs(value - 60)).toBeLessThanOrEqual(12);
  });
});
