/** Writing CSV: LF line ends, a final newline, quotes only where a cell needs them. */
export type Cell = string | number | undefined;

export function csvLine(cells: readonly string[]): string {
  return cells.map((cell) => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(",");
}

/** A whole file: header line, then one line per row. */
export function csvText(columns: readonly string[], rows: readonly (readonly string[])[]): string {
  return [columns, ...rows].map((row) => `${csvLine(row)}\n`).join("");
}

/** Rows given as records become cells in the order of `columns`; an absent value is an empty cell. */
export function csvTable(columns: readonly string[], records: readonly Readonly<Record<string, Cell>>[]): string {
  return csvText(
    columns,
    records.map((record) => columns.map((column) => String(record[column] ?? ""))),
  );
}
