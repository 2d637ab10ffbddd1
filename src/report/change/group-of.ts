import type { GroupFact } from "../group-facts.ts";
import type { PeerSpread } from "../peer-spread.ts";

/** Whom the athlete is one of. */
export interface Kind {
  readonly sport: string | null;
  readonly sex: string | null;
  readonly level: string | null;
}

/** Athletes of the same kind, how far they lie apart, and where their middle is. */
export interface Group extends PeerSpread {
  readonly source: "season" | "reference";
}

/**
 * Athletes of the same sport, sex and level: of this season with the error of their starts taken out of the spread, else of the reference
 * sample, whose values are taken as they are. Null where neither has enough.
 */
export function groupOf(fact: GroupFact | undefined, kind: Kind, reference: PeerSpread | null): Group | null {
  const here = fact?.between.find(
    ({ sport, sex, level }) => sport === kind.sport && sex === kind.sex && level === kind.level,
  );
  if (here && here.sd > 0) return { sd: here.sd, middle: here.middle, athletes: here.athletes, source: "season" };
  return reference === null || reference.sd <= 0 ? null : { ...reference, source: "reference" };
}
