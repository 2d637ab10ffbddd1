import type { AppliedCorrection } from "../schema/season.ts";

/** Rows that corrections moved: to whom and from whom, by athlete's id. They stand in the balance of their new athlete alone. */
export interface Reassigned {
  readonly to: Readonly<Record<string, number>>;
  readonly from: Readonly<Record<string, number>>;
}

/** Stands for a row that named nobody of the season. */
const NOBODY = "nobody";

/**
 * Rows that left an athlete and rows that came, from where each stood before any correction to where it stands after all.
 *
 * @returns by athlete's id; athletes without such rows are not there
 */
export function reassignedRows(corrections: readonly AppliedCorrection[]): Map<string, Reassigned> {
  const ways = new Map<string, { before: string; after: string }>();
  for (const { action, rows } of corrections) {
    if (action !== "reassign") continue;
    for (const { file, line, athlete, now } of rows) {
      const key = `${file}:${line}`;
      ways.set(key, { before: ways.get(key)?.before ?? athlete ?? NOBODY, after: now ?? NOBODY });
    }
  }
  const counts = new Map<string, { to: Record<string, number>; from: Record<string, number> }>();
  const count = (athlete: string, way: "to" | "from", other: string): void => {
    const own = counts.get(athlete) ?? { to: {}, from: {} };
    counts.set(athlete, own);
    own[way][other] = (own[way][other] ?? 0) + 1;
  };
  for (const { before, after } of ways.values()) {
    if (before === after) continue;
    count(before, "to", after);
    count(after, "from", before);
  }
  counts.delete(NOBODY);
  return counts;
}
