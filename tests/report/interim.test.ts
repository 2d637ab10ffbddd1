import { describe, expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import type { Facility } from "../../src/schema/facility.ts";
import type { Profile } from "../../src/schema/profile.ts";
import { input, type Rep } from "./season.ts";

const facility: Facility = {
  name: "Invented Cage",
  season: {
    ...{ name: "Invented winter", start: "2025-10-06", end: "2026-02-22", test_days: ["2026-02-14", "2025-10-18"] },
    phases: [
      { id: "look", from: "2025-10-06", to: "2025-10-26" },
      { id: "build", from: "2025-10-27", to: "2026-02-22" },
    ],
  },
  groups: [
    { id: "ours", members: ["invented-one"], days: ["mon", "wed"] },
    { id: "others", members: ["somebody"], days: ["fri"] },
  ],
  closed: [{ from: "2025-10-20", to: "2025-10-21" }],
};
const swing = (date: string): Rep => ({ date, bat_speed: 60 });
const interim = (dates: readonly string[], asOf: string, profile: Partial<Profile> = {}, place = facility) =>
  reportFor(
    input(dates.map(swing), {
      season: { facility: place },
      athlete: { profile: { name: "Invented One", ...profile } },
      asOf,
    }),
  ).report.interim!;

describe("a note while the season lasts", () => {
  test("counts the planned days up to then, closed days left out, those that were kept, and days besides", () => {
    // Mondays and Wednesdays from 6 to 24 October: 6, 8, 13, 15, 22 (the 20th was closed).
    const { came } = interim(["2025-10-06", "2025-10-08", "2025-10-10", "2025-10-22", "2025-11-03"], "2025-10-24");
    expect(came).toEqual({ planned: 5, kept: 3, besides: 1 });
  });

  test("takes the athlete's own weekdays first, and counts from the day of joining", () => {
    expect(interim([], "2025-10-24", { days: ["fri"] }).came).toEqual({ planned: 3, kept: 0, besides: 0 });
    expect(interim([], "2025-10-24", { joined: "2025-10-15" }).came?.planned).toBe(2);
    expect(interim([], "2025-10-24", {}, { ...facility, groups: [] }).came).toBeNull();
  });

  test("tells work so far and in the last four weeks, and nothing of later days", () => {
    const dates = ["2025-10-06", "2025-10-06", "2025-11-01", "2025-11-28", "2025-11-29"];
    const told = interim(dates, "2025-11-28");
    expect(told.sofar).toEqual({ days: 3, swings: 4, logged: 0 });
    expect(told.lately).toEqual({ from: "2025-11-01", days: 2, swings: 2, logged: 0 });
  });

  test("names the phase, the next one and the next test day", () => {
    expect(interim([], "2025-10-10")).toMatchObject({ phase: 0, nextPhase: 1, nextTest: "2025-10-18" });
    expect(interim([], "2025-10-18")).toMatchObject({ phase: 0, nextTest: "2026-02-14" });
    expect(interim([], "2026-02-22")).toMatchObject({ phase: 1, nextPhase: null, nextTest: null });
  });
});
