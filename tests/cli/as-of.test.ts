import { expect, test } from "vitest";
import { asOfFor } from "../../src/build/as-of.ts";
import type { Season } from "../../src/schema/season.ts";

const season = (...days: string[][]) =>
  ({
    facility: { name: "Lantern Cage", season: { name: "Winter", start: "2025-10-06", end: "2026-02-28" } },
    athletes: days.map((date) => ({ reps: { date } })),
  }) as unknown as Pick<Season, "facility" | "athletes">;

test.each([
  [
    "the last measured day of all athletes",
    [
      ["2025-10-07", "2026-02-20"],
      ["2026-02-21", "2025-11-01"],
    ],
    "2026-02-21",
  ],
  ["never a day after the season", [["2026-02-20", "2026-03-09"]], "2026-02-20"],
  ["the season's own last day when it was measured", [["2026-02-28"]], "2026-02-28"],
  ["the season's end when only other seasons were measured", [["2025-09-01", "2026-03-09"]], "2026-02-28"],
  ["the season's end without any swing", [[], []], "2026-02-28"],
  ["the season's end without any athlete", [], "2026-02-28"],
])("a season stands for %s", (_, days, expected) => {
  expect(asOfFor(season(...days))).toBe(expected);
});
