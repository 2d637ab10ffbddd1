import type { Column } from "../../schema/columns.ts";
import type { Pairing } from "../../schema/pairing.ts";
import { cellOf, isNumeric, writeCell } from "../corrections/cell-value.ts";
import type { RowAt, RowFates } from "../row-fates.ts";
import type { SwingFields } from "../swing-fields.ts";

/** What stays each device's own: whose, when, and by which clock. */
const OWN = new Set(["athlete_id", "date", "time"]);

/**
 * Makes one rep of two rows: the bat's row stands and takes over what only the ball's row says. A row that the session log could not place
 * stands where its partner is placed.
 */
export function joinRows(fates: RowFates, bat: RowAt, ball: RowAt, fields: SwingFields): void {
  const [into, from] = [fates.files[bat.table]?.table, fates.files[ball.table]?.table];
  if (into === undefined || from === undefined) return;
  if (fates.reasonOf(bat) !== null) fates.takeBack(bat);
  fates.joinTo(ball, bat);
  for (const column of fields.columns) {
    const { field } = column;
    if (OWN.has(field)) continue;
    const own = cellOf(into, bat.row, { column, unit: null });
    const theirs = cellOf(from, ball.row, { column, unit: null });
    if (theirs === null) continue;
    if (own === null) writeCell(into, bat.row, field, theirs, isNumeric(column));
    else if (field === "comment" && own !== theirs) writeCell(into, bat.row, field, `${own}; ${theirs}`, false);
  }
  const assigned = from.words.get("assigned")?.[ball.row] ?? null;
  if (assigned !== null && (into.words.get("assigned")?.[bat.row] ?? null) === null)
    writeCell(into, bat.row, "assigned", assigned, false);
}

/** What a row may take over from the swings around it. */
const AROUND = [
  ...["session", "block", "environment", "drill", "implement", "ball", "side", "purpose", "effort", "place"],
  ...["pitch_type", "pitcher_side", "pitch_speed", "pitch_speed_at", "pitch_distance", "site", "lane"],
];

/**
 * A single row of the sensor between two joined swings was swung in the same work as they: where it says nothing of that itself, what both of them say
 * alike holds for it too.
 */
export function fillBetween(
  fates: RowFates,
  { table, row }: RowAt,
  before: RowAt,
  after: RowAt,
  { byField }: SwingFields,
): void {
  const into = fates.files[table]?.table;
  const cell = (at: RowAt, column: Column) => {
    const from = fates.files[at.table]?.table;
    return from === undefined ? null : cellOf(from, at.row, { column, unit: null });
  };
  if (["block", "environment", "drill"].some((field) => into?.words.get(field)?.[row] != null)) return;
  for (const field of AROUND) {
    const column = byField.get(field);
    if (into === undefined || column === undefined || cell({ table, row }, column) !== null) continue;
    const [one, other] = [cell(before, column), cell(after, column)];
    if (one !== null && one === other) writeCell(into, row, field, one, isNumeric(column));
  }
}

/** Notes how a row stands, in a word that travels with the rep. */
export function markRow(fates: RowFates, { table, row }: RowAt, pairing: Pairing): void {
  const found = fates.files[table]?.table;
  if (found) writeCell(found, row, "pairing", pairing, false);
}
