const OTHERS: Readonly<Record<string, string>> = { ";": ";", "\t": "tab", "|": "|" };

/**
 * Tells whether a header that was cut at commas is one of ours cut by something else.
 *
 * @returns the name of the mark that stands between the columns, or null
 */
export function wrongDelimiter(header: readonly string[], columns: readonly string[]): string | null {
  const [only] = header;
  if (only === undefined || header.length > 1) return null;
  const mark = Object.keys(OTHERS).find(
    (other) => only.split(other).filter((name) => columns.includes(name.trim())).length > 1,
  );
  return mark === undefined ? null : (OTHERS[mark] ?? null);
}
