import type { Swing } from "./swings.ts";

/** A block that did not go as planned: so many rounds of it were swung. */
interface Change {
  athlete: string;
  date: string;
  drill: string;
  rounds: number;
  comment: string;
}

/** The group whose swings come from the hub of the barn in these months, not from a tablet that knows the drills. */
export const HUB = { group: "grown", months: ["2026-01", "2026-02"] } as const;

/** Files in which a tablet would have written the hub's swings. */
export const HUB_FILES: readonly string[] = HUB.months.map((month) => `data/swings/${HUB.group}/${month}.csv`);

/** Days on which somebody did less than the plan. */
export const NOT_TO_PLAN: readonly Change[] = [
  change("anselm-drovik", "2026-01-27", "machine-set", 1, "stopped after a round, wanted to keep it quick"),
  change("desmond-farrowick", "2026-01-22", "machine-set", 2, "last round left out, late for class"),
  change("desmond-farrowick", "2026-02-09", "soft-side", 0, "soft balls were all at the shed"),
];

function change(athlete: string, date: string, drill: string, rounds: number, comment: string): Change {
  return { athlete, date, drill, rounds, comment };
}

/** What changed in a block of an athlete's day, if anything. */
export function changeOf(athlete: unknown, date: unknown, drill: unknown): Change | undefined {
  return NOT_TO_PLAN.find((one) => one.athlete === athlete && one.date === date && one.drill === drill);
}

/** Whether a planned swing was swung. */
export function tookPlace({ athlete_id, date, drill, round }: Swing): boolean {
  const found = changeOf(athlete_id, date, drill);
  return found === undefined || Number(round) <= found.rounds;
}
