export type Cell = string | number | null;

/** Starts that make a spreadsheet take a cell for a formula. */
const FORMULA = /^[=+\-@\t\r]/;
const PLAIN_NUMBER = /^[-+]?\d+([.,]\d+)?$/;

function quoted(text: string): string {
  return /[",\n\r]/.test(text) || /^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * A CSV file as RFC 4180 has it, but with lines ending in a line feed alone. A missing value is a blank cell.
 *
 * @param header names of the columns
 * @param rows   each as long as the header
 * @param opened `spreadsheet` for files that people open in one: text that would run there as a formula gets a leading
 *               apostrophe. `data` for files that programs read: every cell as it is.
 * @throws {RangeError} a row is longer or shorter than the header
 */
export function csv(
  header: readonly string[],
  rows: Iterable<readonly Cell[]>,
  opened: "spreadsheet" | "data",
): string {
  const safe = (text: string) =>
    opened === "spreadsheet" && FORMULA.test(text) && !PLAIN_NUMBER.test(text) ? `'${text}` : text;
  const cell = (value: Cell) => (value === null ? "" : typeof value === "number" ? String(value) : quoted(safe(value)));
  const lines = [header.map(quoted).join(",")];
  for (const row of rows) {
    if (row.length !== header.length) throw new RangeError(`a row of ${row.length} cells under ${header.length} names`);
    lines.push(row.map(cell).join(","));
  }
  return `${lines.join("\n")}\n`;
}
