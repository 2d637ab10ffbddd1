import type { Batch } from "./csv-batches.ts";
import type { SwingPlan } from "./swing-plan.ts";

/**
 * The decimal mark of a file in our own columns whose cells are not separated by commas. A comma is one only when no number
 * of the beginning has a point and one of them cannot be a number of thousands: `61,5`, and not `2,150` alone.
 *
 * @param head records of the beginning, the header among them
 */
export function writtenDecimal({ rows }: Batch, plan: SwingPlan): "." | "," {
  const numbers = plan.columns.filter(({ column }) => column.is.kind === "number");
  const cells = rows.flatMap((row) =>
    typeof row === "string" ? [] : numbers.map(({ index }) => (row[index] ?? "").trim()),
  );
  const pointed = cells.some((cell) => /^[-+]?\d*\.\d+$/.test(cell));
  const comma = cells.some((cell) => /^[-+]?\d*,\d+$/.test(cell) && !/^[-+]?[1-9]\d{0,2},\d{3}$/.test(cell));
  return comma && !pointed ? "," : ".";
}
