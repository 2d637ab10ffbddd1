import type { NotCountedReason } from "../schema/reasons.ts";
import type { AthleteSeason, LedgerRow } from "../schema/season.ts";
import { csv } from "./csv.ts";

/**
 * Every row that was not counted or was set aside, in the order of file, line and field.
 *
 * @param judged for each athlete, entry i is what was said of rep i
 * @param files  the season's swing files, in their order
 */
export function ledgerRows(
  setAside: readonly LedgerRow[],
  judged: readonly { readonly athlete: AthleteSeason; readonly judged: readonly (NotCountedReason | null)[] }[],
  files: readonly { readonly file: string }[],
): LedgerRow[] {
  const rows: LedgerRow[] = [...setAside];
  for (const { athlete, judged: reasons } of judged) {
    reasons.forEach((reason, i) => {
      if (reason === null) return;
      const own = { file: athlete.reps.file[i]!, line: athlete.reps.line[i]! };
      for (const place of [own, athlete.reps.partner[i] ?? null]) {
        if (place === null) continue;
        rows.push({
          file: files[place.file]!.file,
          line: place.line,
          column: null,
          field: null,
          value: null,
          reason,
          athlete: athlete.id,
        });
      }
    });
  }
  const order = new Map(files.map(({ file }, i) => [file, i]));
  const place = (row: LedgerRow) => order.get(row.file) ?? files.length;
  return rows.sort((a, b) => place(a) - place(b) || a.line - b.line || (a.column ?? 0) - (b.column ?? 0));
}

/** `_desk/ledger.csv`. */
export function ledgerCsv(rows: readonly LedgerRow[]): string {
  return csv(
    ["file", "line", "column", "field", "value", "reason", "athlete_id"],
    rows.map((row) => [row.file, row.line, row.column, row.field, row.value, row.reason, row.athlete]),
    "spreadsheet",
  );
}
