import { DELIMITERS, type Delimiter, type Encoding } from "../../schema/mapping.ts";
import { csvBatches } from "../csv-batches.ts";
import { provenEncoding, toUtf8 } from "../encodings.ts";
import { type FoundTable, findTable } from "./find-table.ts";

/** How a file of text is written. */
export interface Dialect {
  readonly encoding: Encoding;
  /** The bytes themselves tell the encoding. */
  readonly proven: boolean;
  readonly delimiter: Delimiter;
}

/** Rows looked at: more make no guess better, and a season's file may be large. */
export const MOST_ROWS = 20_000;

function rowsOf(bytes: Uint8Array, delimiter: Delimiter): string[][] {
  const rows: string[][] = [];
  for (const batch of csvBatches(bytes, delimiter)) {
    for (const row of batch.rows) if (typeof row !== "string") rows.push([...row]);
    if (rows.length >= MOST_ROWS) break;
  }
  return rows;
}

/**
 * Finds how a text is written and cut into cells, and the table in it. Without a proven encoding it is taken for Windows-1252.
 *
 * @param told what a person said of it; null where nothing was said
 * @returns null when no delimiter leaves a header of two columns or more with a row below it
 */
export function textTable(
  bytes: Uint8Array,
  told: { readonly encoding: Encoding | null; readonly delimiter: Delimiter | null },
): { dialect: Dialect; table: FoundTable } | null {
  const proof = provenEncoding(bytes);
  const encoding = proof ?? told.encoding ?? "windows-1252";
  const text = toUtf8(bytes, encoding);
  const found = (told.delimiter === null ? DELIMITERS : [told.delimiter]).flatMap((delimiter) => {
    const table = findTable(rowsOf(text, delimiter));
    return table === null ? [] : [{ dialect: { encoding, proven: proof !== null, delimiter }, table }];
  });
  const worth = ({ table }: (typeof found)[number]) => table.header.length * table.even;
  return found.sort((one, other) => worth(other) - worth(one))[0] ?? null;
}
