import type { AthleteReport } from "../report/schema.ts";

/** One week of an athlete's work, as the report has it. */
export type Week = AthleteReport["work"]["weeks"][number];

/** What one shade of the columns stands for. */
export type StackName =
  | { readonly kind: "environment"; readonly id: string | null }
  | { readonly kind: "others" | "unmeasured" };

/** One shade: its number of the fills (0 to 4), its name, and its swings per week in the order of the weeks. */
export interface Stack {
  readonly level: number;
  readonly name: StackName;
  readonly swings: readonly number[];
}

const NAMED = 3;
const OTHERS_LEVEL = 3;
const UNMEASURED_LEVEL = 4;

/**
 * Shades of the columns from the bottom up: the three environments with most swings over all weeks (ties by name), all others
 * together, then work that was logged but not measured. With exactly four environments the fourth keeps its own name.
 * A shade without swings is left out.
 */
export function stacks(weeks: readonly Week[]): Stack[] {
  const totals = new Map<string | null, number>();
  for (const week of weeks) {
    for (const part of week.byEnvironment)
      totals.set(part.environment, (totals.get(part.environment) ?? 0) + part.swings);
  }
  const order = [...totals].filter(([, n]) => n > 0).sort((a, b) => b[1] - a[1] || compareNames(a[0], b[0]));
  const ids = order.map(([id]) => id);
  const alone = ids.length === NAMED + 1 ? ids : ids.slice(0, NAMED);
  const rest = new Set(ids.slice(alone.length));
  const made: Stack[] = alone.map((id, level) => ({
    level,
    name: { kind: "environment", id },
    swings: weeks.map((week) => swingsOf(week, (e) => e === id)),
  }));
  if (rest.size > 0) {
    made.push({
      level: OTHERS_LEVEL,
      name: { kind: "others" },
      swings: weeks.map((w) => swingsOf(w, (e) => rest.has(e))),
    });
  }
  if (weeks.some((w) => w.loggedUnmeasured > 0)) {
    made.push({ level: UNMEASURED_LEVEL, name: { kind: "unmeasured" }, swings: weeks.map((w) => w.loggedUnmeasured) });
  }
  return made;
}

function swingsOf(week: Week, wanted: (environment: string | null) => boolean): number {
  return week.byEnvironment.reduce((sum, part) => (wanted(part.environment) ? sum + part.swings : sum), 0);
}

/** By code unit, the unnamed last: the same order in every language. */
function compareNames(a: string | null, b: string | null): number {
  if (a === b) return 0;
  if (a === null) return 1;
  if (b === null) return -1;
  return a < b ? -1 : 1;
}
