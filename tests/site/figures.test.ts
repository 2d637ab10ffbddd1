import { describe, expect, test } from "vitest";
import { formatDay, formatFigure } from "../../src/site/figures.ts";

const mph = { unit: "mph", decimals: 1 };

describe("figures", () => {
  test("a change carries its sign, and the minus is a true minus", () => {
    expect(formatFigure(2.13, { ...mph, signed: true }, "en", "imperial")).toEqual({ text: "+2.1", unit: "mph" });
    expect(formatFigure(-0.44, { ...mph, signed: true }, "en", "imperial").text).toBe("−0.4");
    expect(formatFigure(-12.5, { unit: "deg", decimals: 1 }, "en", "imperial").text).toBe("−12.5");
  });

  test("what rounds to nothing has no sign", () => {
    expect(formatFigure(-0.01, { ...mph, signed: true }, "en", "imperial").text).toBe("0.0");
    expect(formatFigure(-0.01, mph, "en", "imperial").text).toBe("0.0");
  });

  test("counts are grouped, shares are percentages", () => {
    expect(formatFigure(12345, { unit: null, decimals: 0 }, "en", "imperial").text).toBe("12,345");
    expect(formatFigure(0.694, { unit: null, decimals: 0, share: true }, "en", "imperial").text).toBe("69%");
  });

  test("a tiny p is never written as zero, and zero is never written as tiny", () => {
    const p = { unit: null, decimals: 3, least: 0.001 };
    expect(formatFigure(0.00002, p, "en", "imperial").text).toBe("<0.001");
    expect(formatFigure(0.0012, p, "en", "imperial").text).toBe("0.001");
    expect(formatFigure(0, p, "en", "imperial").text).toBe("0.000");
  });

  // Exact definitions: 1 mile = 1609.344 m, 1 foot = 0.3048 m, 1 inch = 2.54 cm, 1 pound = 0.45359237 kg (NIST SP 811, appendix B).
  test.each([
    [60, "mph", 1, "96.6", "km/h"],
    [300, "ft", 0, "91.4", "m"],
    [66.5, "in", 1, "168.9", "cm"],
    [148, "lb", 0, "67", "kg"],
    [30, "oz", 0, "850", "g"],
    [10.5, "deg", 1, "10.5", "deg"],
    [0.158, "s", 3, "0.158", "s"],
  ] as const)("%d %s is shown in metric units where the facility uses them", (value, unit, decimals, text, shown) => {
    expect(formatFigure(value, { unit, decimals }, "en", "metric")).toEqual({ text, unit: shown });
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("%d cannot be shown", (value) => {
    expect(() => formatFigure(value, mph, "en", "imperial")).toThrow(RangeError);
  });

  test.each([
    [0, "1"],
    [0.4, "1"],
    [50.6, "51"],
    [99.6, "99"],
    [100, "99"],
  ])("a percentile of %d is told as %s", (value, text) => {
    expect(formatFigure(value, { unit: null, decimals: 0, percentile: true }, "en", "imperial").text).toBe(text);
  });

  test("a day is the same day in any time zone", () => {
    const before = process.env.TZ;
    for (const zone of ["Pacific/Kiritimati", "America/Adak", "UTC"]) {
      process.env.TZ = zone;
      expect(formatDay("2026-02-20", "long", "en")).toBe("February 20, 2026");
    }
    if (before === undefined) delete process.env.TZ;
    else process.env.TZ = before;
  });

  test("what is no day is refused", () => {
    expect(() => formatDay("2026-13-01", "long", "en")).toThrow(RangeError);
    expect(() => formatDay("20.2.2026", "long", "en")).toThrow(RangeError);
  });
});
