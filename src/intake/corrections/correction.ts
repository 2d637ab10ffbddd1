import type { LineOf } from "../../schema/season.ts";
import type { CorrectionWritten } from "../../schema/tables.ts";
import type { CellContext } from "../cell-reader.ts";
import type { SwingFields } from "../swing-fields.ts";

/** A row of `data/corrections.csv` and where it stands. */
export interface Correction extends CorrectionWritten {
  readonly at: LineOf;
}

export interface CorrectionSetup {
  readonly fields: SwingFields;
  readonly context: CellContext;
  /** Athletes by the index that stands for them. */
  readonly athletes: readonly string[];
}
