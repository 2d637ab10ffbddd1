/** Which mark stands before the decimals of a table. */
export interface DecimalGuess {
  readonly mark: "." | ",";
  /** Cells that could be read either way, as `1,234`, and nothing that tells. */
  readonly open: string | null;
}

const POINT = /^[-+]?\d+\.\d+$/;
const COMMA = /^[-+]?\d+,\d+$/;
const THOUSANDS = /^[-+]?[1-9]\d{0,2},\d{3}$/;

/** Point, unless cells are written with a comma; `1,234` alone tells nothing. */
export function decimalMark(rows: readonly (readonly string[])[]): DecimalGuess {
  let points = 0;
  let commas = 0;
  const either: string[] = [];
  for (const row of rows) {
    for (const cell of row) {
      const text = cell.trim();
      if (POINT.test(text)) points++;
      else if (THOUSANDS.test(text)) either.push(text);
      else if (COMMA.test(text)) commas++;
    }
  }
  if (commas > points) return { mark: ",", open: null };
  return { mark: ".", open: points === 0 ? (either.sort()[0] ?? null) : null };
}
