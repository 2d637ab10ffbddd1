import { z } from "zod";
import { isTimeZone } from "./facility.ts";

/** Encodings an export may have. */
export const ENCODINGS = ["utf-8", "utf-16le", "utf-16be", "windows-1252"] as const;
export type Encoding = (typeof ENCODINGS)[number];

/** Marks that may stand between cells. */
export const DELIMITERS = [",", ";", "\t", "|"] as const;
export type Delimiter = (typeof DELIMITERS)[number];

/** The header is looked for in so many lines from the top. */
export const HEADER_LINES = 50;

/**
 * `data/mappings/<name>.json`: how to read one kind of export. A file is read by the mapping whose `header` holds the
 * names of the file's own header, in any order, and whose `units_row` stands below it; nothing is guessed.
 */
export const Mapping = z.strictObject({
  label: z.string().min(1),
  /**
   * Every name of the export's header, in its order, spaces at the ends removed. The second column of the same name is
   * called `name #2` wherever a column is named.
   */
  header: z.array(z.string()).min(1),
  /** Comma when absent. Not looked at for workbooks. */
  delimiter: z.enum(DELIMITERS).optional(),
  /** Point when absent. Number cells of a workbook need none. */
  decimal: z.enum([".", ","]).optional(),
  /** Only where the file does not tell: a byte order mark, or bytes that are UTF-8, tell more than this. */
  encoding: z.enum(ENCODINGS).optional(),
  /** Name of the sheet in a workbook; the first when absent. */
  sheet: z.string().min(1).optional(),
  /**
   * Cells of the row under the header that names units, in the order of `header`, blank where it is blank. The row must
   * stand there just so: a device that was switched to other units is noticed, and not read.
   */
  units_row: z.array(z.string()).optional(),
  /**
   * Rows that sum up others: those whose cell in `column` (without it, the first filled cell) is one of `words`, case
   * aside. They are set aside as `summary-row`.
   */
  summary_rows: z.strictObject({ column: z.string().optional(), words: z.array(z.string().min(1)).min(1) }).optional(),
  /** IANA zone of the export's clock, where it is not the facility's `time_zone`. */
  zone: z.string().refine(isTimeZone, "a time zone is written like America/Chicago").optional(),
  /** false: rows of this export are never paired with another device's. */
  pairs: z.boolean().optional(),
  /** Header name -> what it holds. A name left out is kept and listed, but not read. */
  columns: z.record(
    z.string(),
    z.strictObject({
      /** A field of the canonical table without its unit (`bat_speed`, `pitch_speed`, `athlete_id` …), or `date_time`. */
      field: z.string().min(1),
      /** Unit as written in the export; needed where the field has one and the export's differs. */
      unit: z.string().min(1).optional(),
      /** Form of a date, a time or both in Luxon tokens, as `dd/MM/yyyy` or `h:mm:ss a`; ISO 8601 when absent. */
      form: z.string().min(1).optional(),
      /** Words of the export -> ours, as { "L": "left" }. */
      words: z.record(z.string(), z.string()).optional(),
    }),
  ),
  /** Field -> value for every row that does not say otherwise. */
  fixed: z.record(z.string(), z.string()).optional(),
});
export type Mapping = z.infer<typeof Mapping>;

/** Names of a header as columns are called: spaces at the ends removed, the k-th repeat of a name as `name #k`. */
export function columnNames(header: readonly string[]): string[] {
  const seen = new Map<string, number>();
  return header.map((cell) => {
    const name = cell.trim();
    const times = (seen.get(name) ?? 0) + 1;
    seen.set(name, times);
    return times === 1 ? name : `${name} #${times}`.trim();
  });
}
