import { z } from "zod";

/** Identifiers: lower-case letters, digits and hyphens. Files are named by them, so those that Windows keeps for devices are none. */
export const Id = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]*$/, "an id is lower-case letters, digits and hyphens")
  .regex(/^(?!(?:con|prn|aux|nul|com\d|lpt\d)$)/, "an id is no name that Windows keeps for a device");

/** A text as part of a regular expression that means just that text. */
export const literally = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** Finds any of `words` where no letter, digit or hyphen goes on with it. */
export const wholeWords = (words: readonly string[], flags: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}-])(?:${words.map(literally).join("|")})(?![\\p{L}\\p{N}-])`, flags);

/** Plain text, or the same text in several languages. */
export const LocalText = z.union([z.string().min(1), z.record(z.string().regex(/^[a-z]{2}$/), z.string().min(1))]);
export type LocalText = z.infer<typeof LocalText>;

/** A calendar day as ISO 8601 `yyyy-mm-dd`, kept as text: a day has no time zone. */
export const IsoDate = z.iso.date("a date is written yyyy-mm-dd");

/** A clock time `hh:mm` or `hh:mm:ss`. */
export const ClockTime = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d{1,3})?)?$/, "a time is written hh:mm or hh:mm:ss");

/** A period; a missing end is open. */
export const Period = z.strictObject({ from: IsoDate, to: IsoDate });

/** Days of the week as a trainer writes them. */
export const Weekday = z.enum(
  ["mon", "tue", "wed", "thu", "fri", "sat", "sun"],
  "a weekday is mon, tue, wed, thu, fri, sat or sun",
);

/** Language code of two letters. */
export const Language = z.string().regex(/^[a-z]{2}$/, "a language is two letters, as en or es");
