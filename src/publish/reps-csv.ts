import { SWING_COLUMNS } from "../schema/columns.ts";
import type { Metric } from "../schema/metric.ts";
import type { NotCountedReason } from "../schema/reasons.ts";
import type { RepTable, RowPlace } from "../schema/season.ts";
import { type Cell, csv } from "./csv.ts";

interface Out {
  readonly header: string;
  at(row: number): Cell;
}

/**
 * `_desk/reps/<id>.csv`: every readable rep of one athlete in canonical units. The canonical columns that hold anything, in the
 * order of the canonical header, then own metrics, then `counted` (yes, or the reason why not) and `source` (file:line; both of a swing
 * that two devices saw, joined by +).
 *
 * @param judged entry i is what was said of rep i; null for a counted one
 * @param files  the season's swing files
 */
export function repsCsv(
  athlete: string,
  reps: RepTable,
  judged: readonly (NotCountedReason | null)[],
  files: readonly { readonly file: string }[],
  metrics: readonly Metric[],
): string {
  const held = (field: string): ((row: number) => Cell) | null => {
    const column = reps.numbers[field] ?? reps.words[field];
    return column?.some((value) => value !== null) ? (row) => column[row] ?? null : null;
  };
  const columns: Out[] = SWING_COLUMNS.flatMap(({ field, header }): Out[] => {
    if (field === "athlete_id") return [{ header, at: () => athlete }];
    if (field === "date") return [{ header, at: (row) => reps.date[row] ?? null }];
    const at = held(field);
    return at ? [{ header, at }] : [];
  });
  for (const { id, unit, side } of metrics) {
    const at = side === "own" ? held(id) : null;
    if (at) columns.push({ header: `${id}_${unit}`, at });
  }
  columns.push({ header: "counted", at: (row) => judged[row] ?? "yes" });
  const placeOf = ({ file, line }: RowPlace): string => `${files[file]?.file}:${line}`;
  columns.push({
    header: "source",
    at: (row) => {
      const partner = reps.partner[row] ?? null;
      const own = placeOf({ file: reps.file[row] ?? -1, line: reps.line[row] ?? 0 });
      return partner === null ? own : `${own}+${placeOf(partner)}`;
    },
  });
  const rows = Array.from({ length: reps.n }, (_, row) => columns.map(({ at }) => at(row)));
  return csv(
    columns.map(({ header }) => header),
    rows,
    "data",
  );
}
