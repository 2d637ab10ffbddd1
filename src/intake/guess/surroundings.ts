import { type Column, MOMENT_COLUMN } from "../../schema/columns.ts";
import type { Allowed } from "./word-sense.ts";

/** What a season knows that a guess may lean on. */
export interface Surroundings {
  /** The canonical table, then the season's own metrics. */
  readonly columns: readonly Column[];
  /** Header names that are understood as they stand, with their unit. */
  readonly byHeader: ReadonlyMap<string, { readonly column: Column; readonly unit: string | null }>;
  /** Fields that are measurements. */
  readonly measured: ReadonlySet<string>;
  /** Values that a column of words takes; null when it takes anything. */
  allowed(column: Column): readonly Allowed[] | null;
  /** Whom a name means. */
  whom(text: string): "one" | "unknown" | "ambiguous";
}

/** Day and clock in one cell. */
export const DATE_TIME = MOMENT_COLUMN.field;

/** The column of a field; undefined for a field that this season does not have. */
export const columnOf = (field: string, { columns }: Surroundings): Column | undefined =>
  columns.find((column) => column.field === field);
