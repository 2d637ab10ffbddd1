import type { Reference } from "../schema/season.ts";
import { hasAges, holdsAge } from "./peer-age.ts";
import { type PeerQuestion, peerGroups } from "./peer-match.ts";
import type { Series } from "./schema.ts";

/** What a line is about when its row names no level: the ages. */
function agesText({ ages: [low, high] }: Reference): string {
  if (low === null || high === null) return low === null ? `≤ ${high}` : `≥ ${low}`;
  return low === high ? String(low) : `${low}–${high}`;
}

/**
 * Published values without a spread for the same kind of athlete, measured the same way.
 *
 * @param age years; without it only rows that name a level and no ages fit
 * @returns larger groups first, then newer ones
 */
export function peerLines(
  question: PeerQuestion,
  age: number | null,
  reference: readonly Reference[],
): Series["peerLines"] {
  return peerGroups(question, reference).flatMap(({ rows }) =>
    rows.flatMap((row) => {
      if (row.kind !== "line") return [];
      if (hasAges(row) && (age === null || !holdsAge(row, age))) return [];
      const { value, level, n, source, year } = row;
      return [{ value, label: level ?? agesText(row), n, source, year }];
    }),
  );
}
