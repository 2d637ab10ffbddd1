import type { AppliedCorrection } from "../../schema/season.ts";
import type { RowFates } from "../row-fates.ts";
import { Applying } from "./applying.ts";
import type { Correction, CorrectionSetup } from "./correction.ts";
import { namedRows } from "./named-rows.ts";

export interface Corrected {
  readonly applied: readonly AppliedCorrection[];
  /** Corrections of a block that no row names itself: the session log may give it rows. */
  readonly waiting: readonly Correction[];
}

/**
 * Applies corrections in order of `on`, then of line; each as a whole or not at all, in which case it is said why.
 *
 * A correction is measured against what stands in its rows. Where an earlier one changed that and `from` is what stood there
 * before, the two contradict each other: the later one is followed, and it is said. A row that is void keeps its number
 * in its block but is touched again by file and line only.
 *
 * @param last no later stage can give a block its rows: nothing waits
 */
export function applyCorrections(
  corrections: readonly Correction[],
  fates: RowFates,
  setup: CorrectionSetup,
  last: boolean,
): Corrected {
  const inOrder = corrections
    .map((correction) => ({ correction, rows: namedRows(correction, fates, setup.context.names, setup.context.index) }))
    .sort((one, other) => order(one.correction, other.correction));
  const applying = new Applying(fates, setup);
  const waiting: Correction[] = [];
  for (const { correction, rows } of inOrder) {
    if ("rows" in rows) applying.apply(correction, rows.rows);
    else if (rows.why === "no-rows" && correction.block !== undefined && !last) waiting.push(correction);
    else if (rows.why === "no-rows") applying.refuse(correction, "correction-without-rows");
    else if (rows.why === "incomplete") applying.refuse(correction, "correction-incomplete", { detail: rows.detail });
    else applying.refuseAthlete(correction, "athlete_id", rows.value);
  }
  return { applied: applying.applied, waiting };
}

const order = (one: Correction, other: Correction): number =>
  one.on < other.on ? -1 : one.on > other.on ? 1 : one.at.line - other.at.line;
