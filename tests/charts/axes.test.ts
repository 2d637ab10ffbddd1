import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { months } from "../../src/charts/days.ts";
import { drawingLocale } from "../../src/charts/locale.ts";
import { textWidth } from "../../src/charts/text-width.ts";
import { countAxis, valueAxis } from "../../src/charts/value-axis.ts";

describe("an axis of values", () => {
  test("has round ticks inside its ends", () => {
    const axis = valueAxis([58.9, 66.2], 1);
    expect(axis.ticks).toEqual([60, 62, 64, 66]);
    expect(axis.format).toBe(",.0f");
  });

  test("tells thousandths of a second apart", () => {
    const axis = valueAxis([0.151, 0.171], 3);
    expect(axis.ticks).toEqual([0.15, 0.155, 0.16, 0.165, 0.17]);
    expect(axis.format).toBe(",.3f");
  });

  test("holds every value, has at least two ticks and never collapses", () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(fc.array(value, { minLength: 1 }), fc.integer({ min: 0, max: 3 }), (values, decimals) => {
        const { domain, ticks } = valueAxis(values, decimals);
        expect(domain[1]).toBeGreaterThan(domain[0]);
        for (const v of values) expect(v >= domain[0] && v <= domain[1]).toBe(true);
        expect(ticks.length).toBeGreaterThanOrEqual(2);
        expect(ticks.length).toBeLessThanOrEqual(8);
        expect(ticks.every((t, i) => i === 0 || t > ticks[i - 1]!)).toBe(true);
      }),
    );
  });

  test("of counts starts at zero and goes up in whole swings", () => {
    expect(countAxis(2)).toMatchObject({ domain: [0, 2], ticks: [0, 1, 2] });
    expect(countAxis(205)).toMatchObject({ domain: [0, 250], ticks: [0, 50, 100, 150, 200, 250] });
    expect(countAxis(0)).toMatchObject({ domain: [0, 1], ticks: [0] });
  });
});

describe("months below a chart", () => {
  const at = (day: string) => Date.parse(day);

  test("begin on their first day, UTC, and the season's own ends are no borders", () => {
    const found = months([at("2025-10-06"), at("2026-01-01")], 300, 20);
    expect(found.borders).toEqual([at("2025-11-01"), at("2025-12-01")]);
    expect(found.middles).toHaveLength(3);
    expect(found.middles[1]).toBe((at("2025-11-01") + at("2025-12-01")) / 2);
  });

  test("that show only a day or two are not named", () => {
    expect(months([at("2025-10-30"), at("2026-01-01")], 300, 28).middles).toHaveLength(2);
  });

  test("of a long stretch are named every few", () => {
    const found = months([at("2024-01-01"), at("2026-01-01")], 300, 28);
    expect(found.borders).toHaveLength(23);
    expect(found.middles.length).toBeLessThanOrEqual(300 / 28);
  });
});

/**
 * Measured with canvas measureText of Chromium 143 at 120 px in the shipped font files; it rounds each glyph's advance to whole px,
 * hence the tolerance of half a px a glyph.
 */
test.each([
  [400, "Bat speed, mph", 783],
  [400, "Tope AVATAR 72.0", 879],
  [400, "logged, not measured", 1089],
  [600, "Bat speed, mph", 802],
  [600, "Tope AVATAR 72.0", 904],
  [600, "logged, not measured", 1119],
])("text is as wide as a browser sets it: %s %s", (weight, text, px) => {
  expect(Math.abs(textWidth(text, 120, weight) - px)).toBeLessThanOrEqual(text.length / 2);
  expect(textWidth(text, 12, weight)).toBeCloseTo(textWidth(text, 120, weight) / 10, 9);
});

test("numbers and months follow the language", () => {
  expect(drawingLocale("en")).toMatchObject({ number: { decimal: ".", thousands: "," } });
  expect(drawingLocale("es").number.decimal).toBe(",");
  expect(drawingLocale("es").time.shortMonths[0]).toBe("ene");
  expect(drawingLocale("en").time.months[11]).toBe("December");
  expect(drawingLocale("en").time.days[0]).toBe("Sunday");
});
