import { z } from "zod";
import { PURPOSES } from "./columns.ts";
import { ConditionWritten } from "./condition.ts";
import { READERS } from "./reasons.ts";
import { Id, IsoDate, Language, LocalText, Period, Weekday } from "./text.ts";

/** One of the at most eight things the facility judges a season by. */
export const Measure = z.strictObject({
  metric: z.string().min(1),
  condition: ConditionWritten.optional(),
  /** Short for `condition.purpose`. */
  purpose: z.enum(PURPOSES).optional(),
});
export type Measure = z.infer<typeof Measure>;

const timeZones = new Set(Intl.supportedValuesOf("timeZone"));

/** Whether `name` is an IANA time zone that dates can be computed in. */
export const isTimeZone = (name: string): boolean => name === "UTC" || timeZones.has(name);

/** Front matter of `content/facility.md`. */
export const Facility = z.strictObject({
  name: z.string().min(1),
  season: z
    .strictObject({
      name: z.string().min(1),
      start: IsoDate,
      end: IsoDate,
      phases: z.array(z.strictObject({ id: Id, label: LocalText.optional(), from: IsoDate, to: IsoDate })).optional(),
      baseline: Period.optional(),
      final: Period.optional(),
      /** On which all are tested; the next one stands in the note in between. */
      test_days: z.array(IsoDate).optional(),
    })
    .refine((season) => season.start <= season.end, {
      message: "the season's end must not lie before its start",
      path: ["end"],
    }),
  contact: z.string().min(1).optional(),
  site_url: z.url({ protocol: /^https?$/ }).optional(),
  /** Text that every page carries, for instance that a demo is invented. */
  notice: LocalText.optional(),
  /** The facility's own colour, for its name and the heads of parts. */
  accent: z
    .string()
    .regex(/^#[0-9a-fA-F]{6}$/, 'a colour is written "#1f6150", in quotation marks')
    .optional(),
  /** A picture beside facility.md, above its name on every page. */
  logo: z
    .string()
    .regex(/^[A-Za-z0-9][A-Za-z0-9._-]*\.(?:png|jpe?g|webp)$/i, "a logo is a png, jpg or webp beside facility.md")
    .optional(),
  languages: z.array(Language).min(1).optional(),
  units: z.enum(["imperial", "metric"]).optional(),
  time_zone: z.string().refine(isTimeZone, "a time zone is written like America/Chicago").optional(),
  sites: z
    .array(
      z.strictObject({
        id: Id,
        altitude_ft: z.number().optional(),
        indoor: z.boolean().optional(),
        temperature_f: z.number().optional(),
      }),
    )
    .optional(),
  staff: z.array(z.strictObject({ id: Id, name: z.string().min(1), role: z.string().min(1).optional() })).optional(),
  /** `days`: weekdays on which the group is to come. */
  groups: z.array(z.strictObject({ id: Id, members: z.array(Id), days: z.array(Weekday).optional() })).optional(),
  /** Periods without training, both days included. */
  closed: z.array(Period).optional(),
  measures: z.array(Measure).max(8, "at most eight measures: few, trusted numbers").optional(),
  tests: z
    .array(
      z.strictObject({
        id: Id,
        metric: z.string().min(1),
        condition: ConditionWritten.optional(),
        swings: z.int().positive().optional(),
        warm_up: z.string().min(1).optional(),
        rest_s: z.number().nonnegative().optional(),
        summary: z.enum(["mean", "median", "p90"]).optional(),
      }),
    )
    .optional(),
  /** A sensor's swing in a block with balls whose ball was not seen: does its speed count? It does not without this. */
  ball_not_recorded: z.enum(["count", "leave-out"]).optional(),
  /** Whole years from which heavy bats are swung here; younger athletes' work with them is an error. */
  overload_from_age: z.int().min(0).max(99).optional(),
  /** `npm run pdf` puts each report's PDF beside its page too, not on the desk alone. */
  publish_pdf: z.boolean().optional(),
  /** Are published pages sealed: all, none, or those of some readers? Without a word those of minors are. */
  seal: z.union([z.boolean(), z.array(z.enum(READERS)).min(1)]).optional(),
  /** Notes and messages about minors leave the desk only when a second member of the staff has read them (`read_by`). */
  second_reader: z.boolean().optional(),
  /** Day through which data is kept; `check` says what is past it. */
  keep_until: IsoDate.optional(),
  cautions: z.array(LocalText).optional(),
});
export type Facility = z.infer<typeof Facility>;
