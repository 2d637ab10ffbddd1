/** 12345 -> "12,345". */
export const count = (n: number): string => String(n).replace(/\B(?=(\d{3})+$)/g, ",");

/**
 * Lines of a table with two columns or more: the first column to the left, the others to the right, two spaces between.
 * No rows give no lines.
 */
export const tableLines = (rows: readonly (readonly string[])[]): string[] =>
  linesOf(rows, (cell, i, width) => (i === 0 ? cell.padEnd(width) : cell.padStart(width)));

/** The same with every column to the left, for words. */
export const leftTable = (rows: readonly (readonly string[])[]): string[] =>
  linesOf(rows, (cell, _i, width) => cell.padEnd(width));

function linesOf(
  rows: readonly (readonly string[])[],
  laid: (cell: string, i: number, width: number) => string,
): string[] {
  const widths: number[] = [];
  for (const row of rows) {
    for (const [i, cell] of row.entries()) widths[i] = Math.max(widths[i] ?? 0, cell.length);
  }
  return rows.map((row) =>
    row
      .map((cell, i) => laid(cell, i, widths[i] ?? 0))
      .join("  ")
      .trimEnd(),
  );
}

/** All numbers of a record together. */
export const sum = (counts: Readonly<Record<string, number>>): number =>
  Object.values(counts).reduce((a, b) => a + b, 0);
