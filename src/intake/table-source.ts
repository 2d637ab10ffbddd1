import { type Delimiter, HEADER_LINES } from "../schema/mapping.ts";
import { type Batch, type CsvRow, csvBatches } from "./csv-batches.ts";
import type { SwingPlan } from "./swing-plan.ts";

/** A table that can be looked at and then read, whatever it is kept in. */
export interface TableSource {
  readonly kind: "text" | "workbook";
  /** The records of the first lines, among which the header is. */
  head(delimiter: Delimiter): Batch;
  /** Every record from `line` on. A workbook's dates and numbers come as the plan's forms would have them written. */
  batches(plan: SwingPlan | null, line: number): Iterable<Batch>;
}

const NEWLINE = 10;
/** Lines below the last line on which a header may stand: the row of units is there. */
const BELOW = 10;
const MOST_LOOKED_AT = 1 << 21;

/** @param bytes UTF-8, with or without byte order mark */
export function textSource(bytes: Uint8Array): TableSource {
  const heads = new Map<Delimiter, Batch>();
  const beginning = firstLines(bytes);
  return {
    kind: "text",
    head(delimiter) {
      const known = heads.get(delimiter) ?? joined(csvBatches(beginning, delimiter));
      heads.set(delimiter, known);
      return known;
    },
    batches: (plan, line) => csvBatches(bytes, plan?.delimiter ?? ",", line),
  };
}

function joined(batches: Iterable<Batch>): Batch {
  const rows: CsvRow[] = [];
  const lines: number[] = [];
  for (const batch of batches) {
    for (const [index, row] of batch.rows.entries()) {
      const line = batch.lines[index] ?? 0;
      if (line > HEADER_LINES + BELOW) return { rows, lines };
      rows.push(row);
      lines.push(line);
    }
  }
  return { rows, lines };
}

/** Some lines more than the header is looked for in, so that the row below it is there too. */
function firstLines(bytes: Uint8Array): Uint8Array {
  const beginning = bytes.subarray(0, MOST_LOOKED_AT);
  let end = -1;
  for (let line = 0; line < HEADER_LINES + BELOW; line++) {
    const next = beginning.indexOf(NEWLINE, end + 1);
    if (next === -1) return beginning;
    end = next;
  }
  return beginning.subarray(0, end + 1);
}
