import { z } from "zod";

/**
 * `data/mappings/<name>.json`: how to read one kind of export. A file is read by the mapping whose `header` is the
 * file's own header, name by name; nothing is guessed.
 */
export const Mapping = z.strictObject({
  label: z.string().min(1),
  /** Every name of the export's header, in its order, spaces at the ends removed. */
  header: z.array(z.string()).min(1),
  delimiter: z.enum([",", ";", "\t", "|"]).optional(),
  decimal: z.enum([".", ","]).optional(),
  /** Header name -> what it holds. A name left out is kept and listed, but not read. */
  columns: z.record(
    z.string(),
    z.strictObject({
      /** A field of the canonical table without its unit (`bat_speed`, `pitch_speed`, `athlete_id` …). */
      field: z.string().min(1),
      /** Unit as written in the export; needed where the field has one and the export's differs. */
      unit: z.string().min(1).optional(),
      /** Date or time form in Luxon tokens, as `dd/MM/yyyy` or `h:mm:ss a`. */
      form: z.string().min(1).optional(),
      /** Words of the export -> ours, as { "L": "left" }. */
      words: z.record(z.string(), z.string()).optional(),
    }),
  ),
  /** Field -> value for every row that does not say otherwise. */
  fixed: z.record(z.string(), z.string()).optional(),
});
export type Mapping = z.infer<typeof Mapping>;
