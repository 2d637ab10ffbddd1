import fc from "fast-check";
import { expect, test } from "vitest";
import { calendarDay, isoDay } from "../../src/intake/calendar-day.ts";

test("days are those of the Gregorian calendar (ISO 8601: leap years by 4, not by 100, but by 400)", () => {
  for (const day of ["2024-02-29", "2000-02-29", "2025-12-31"])
    expect(calendarDay(day)).toBe(Date.parse(`${day}T00:00:00Z`));
  for (const day of ["2025-02-29", "1900-02-29", "2025-04-31", "2025-00-10", "2025-10-00", "0099-13-01"])
    expect(calendarDay(day)).toBe(null);
});

test("a day and its midnight in UTC stand for each other", () => {
  const days = fc.integer({ min: -50_000, max: 50_000 }).map((day) => day * 86_400_000);
  fc.assert(fc.property(days, (ms) => calendarDay(isoDay(ms)) === ms));
});
