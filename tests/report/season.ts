import type { ReportInput, Surroundings } from "../../src/report/input.ts";
import { BUILT_IN_METRICS } from "../../src/schema/metric.ts";
import type { AthleteSeason, RepTable } from "../../src/schema/season.ts";

/** A rep as a test writes it: the date, and canonical fields without units. */
export type Rep = { readonly date: string } & Readonly<Record<string, string | number | null>>;

/** Reps as the columns that intake hands over. */
export function table(reps: readonly Rep[]): RepTable {
  const numbers: Record<string, (number | null)[]> = {};
  const words: Record<string, (string | null)[]> = {};
  const fields = new Set(reps.flatMap((rep) => Object.keys(rep)).filter((key) => key !== "date"));
  for (const field of fields) {
    const values = reps.map((rep) => rep[field] ?? null);
    if (values.some((value) => typeof value === "number")) numbers[field] = values as (number | null)[];
    else words[field] = values as (string | null)[];
  }
  return {
    n: reps.length,
    date: reps.map((rep) => rep.date),
    day: reps.map((rep) => Date.parse(`${rep.date}T00:00:00Z`)),
    file: reps.map(() => 0),
    line: reps.map((_, i) => i + 2),
    partner: reps.map(() => null),
    numbers,
    words,
  };
}

const surroundings: Surroundings = {
  facility: { name: "Invented Cage", season: { name: "Invented winter", start: "2025-10-06", end: "2026-02-22" } },
  metrics: BUILT_IN_METRICS,
  zones: [],
  drills: [],
  implements: [],
  balls: [],
  feeds: [],
  devices: [],
  blocks: [],
  reference: [],
};

/** A whole report input around some reps. */
export function input(
  reps: readonly Rep[],
  changes: {
    readonly season?: Partial<Surroundings>;
    readonly athlete?: Partial<AthleteSeason>;
    readonly asOf?: string;
  } = {},
): ReportInput {
  return {
    season: { ...surroundings, ...changes.season },
    athlete: {
      id: "invented-one",
      profile: { name: "Invented One" },
      notes: [],
      closings: [],
      assessment: null,
      plan: null,
      log: [],
      tests: [],
      reps: table(reps),
      ...changes.athlete,
    },
    setAside: {},
    asOf: changes.asOf ?? "2026-02-22",
  };
}

/** The day `n` weeks after the first Monday of the season. */
export const weekLater = (n: number): string => new Date(Date.UTC(2025, 9, 6 + 7 * n)).toISOString().slice(0, 10);
