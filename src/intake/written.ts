import { gameBatOn } from "../schema/profile.ts";
import { calendarDay } from "./calendar-day.ts";
import { type Content, metricsOf } from "./content.ts";
import type { DataTables } from "./data-tables.ts";
import { sameNames } from "./log/inherit.ts";
import type { Written } from "./swings.ts";

/** What people wrote about the swings, ready to be held against them. @param leftOut athletes who get no report */
export function written(content: Content, tables: DataTables, leftOut: ReadonlySet<string>): Written {
  const profiles = new Map(
    content.folders.flatMap(({ id, profile }) => (profile?.page ? [[id, profile.page.front]] : [])),
  );
  const metrics = metricsOf(content.metricsFile?.page?.front ?? null);
  const ofSide = (wanted: string): Set<string> =>
    new Set(metrics.flatMap(({ id, side }) => (side === wanted ? [id] : [])));
  const gameBat = (athlete: string, date: string): string | null => {
    const profile = profiles.get(athlete);
    return profile === undefined ? null : gameBatOn(profile, date);
  };
  const drills = content.drillsFile?.page?.front.drills ?? [];
  return {
    corrections: tables.corrections,
    blocks: tables.blocks,
    balls: tables.balls ?? [],
    leftOut,
    // Without a facility there is no season to be late for, and the build stops for that.
    seasonEnd: calendarDay(content.facility?.page?.front.season.end ?? "") ?? Number.POSITIVE_INFINITY,
    log: {
      groups: content.facility?.page?.front.groups ?? [],
      feeds: tables.feeds,
      drills: new Map(drills.map(({ id, environment }) => [id, environment])),
      sides: { bat: ofSide("bat"), ball: ofSide("ball") },
      same: sameNames(tables.implements ?? [], tables.balls ?? [], gameBat),
      sideOf: (athlete) => {
        const bats = profiles.get(athlete)?.bats;
        return bats === "left" || bats === "right" ? bats : null;
      },
      profiles,
    },
  };
}
