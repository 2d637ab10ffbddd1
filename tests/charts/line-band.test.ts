import { expect, test } from "vitest";
import { lineBand } from "../../src/charts/line-band.ts";

/**
 * Worked by hand: sessions at weeks 0, 1, 2, 3, 4 with means 60, 62, 61, 63, 64. Mean week 2, Sxx 10, mean 62, Sxy 9, slope 0.9,
 * residuals −0.2, 0.9, −1, 0.1, 0.2 with squares 1.9, s² = 1.9/3, and t(0.975, 3) = 3.182446 (table value).
 */
const T = 3.182446;
const S = Math.sqrt(1.9 / 3);
const seSlope = S / Math.sqrt(10);
const line = {
  perWeek: 0.9,
  se: seSlope,
  df: 3,
  ci95: [0.9 - T * seSlope, 0.9 + T * seSlope] as [number, number],
  lag1: null,
  inflation: null,
  start: 60.2,
  end: 63.8,
};
const days = ["2025-11-03", "2025-11-10", "2025-11-17", "2025-11-24", "2025-12-01"];

test("the band is as wide as the textbook formula makes it at both ends and in the middle", () => {
  const points = lineBand(line, days, 4);
  expect(points.map((p) => p.y)).toEqual([60.2, 61.1, 62, 62.9, 63.8].map((y) => expect.closeTo(y, 10)));
  points.forEach((point, week) => {
    const half = T * S * Math.sqrt(1 / 5 + (week - 2) ** 2 / 10);
    expect(point.high - point.y).toBeCloseTo(half, 6);
    expect(point.y - point.low).toBeCloseTo(half, 6);
  });
  expect(points[0]!.x).toBe(Date.parse("2025-11-03T12:00:00Z"));
});

test("the order of the sessions does not move the band", () => {
  expect(lineBand(line, days.toReversed())).toEqual(lineBand(line, days));
});

test("sessions of one single day have no line", () => {
  expect(lineBand(line, ["2025-11-03", "2025-11-03"])).toEqual([]);
});
