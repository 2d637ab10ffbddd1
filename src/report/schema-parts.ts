import { z } from "zod";

/** What the parts of the report are built from. */
export const Day = z.iso.date();
export const Num = z.number();
export const NumOrNull = z.number().nullable();
export const Text = z.string();
export const TextOrNull = z.string().nullable();
export const Interval = z.tuple([Num, Num]);
export const Count = z.int().nonnegative();

export const Condition = z.strictObject({
  environment: Text.optional(),
  implement: Text.optional(),
  ball: Text.optional(),
  side: Text.optional(),
  purpose: Text.optional(),
  place: Text.optional(),
  /** mph, lower end included, upper end not. */
  pitchSpeed: Interval.optional(),
  /** Where the pitch speed was read; series read at different places never meet. */
  pitchSpeedAt: Text.optional(),
  /** Of a test of `data/tests`: what was lifted, thrown or held, with its unit, and how. */
  load: Text.optional(),
  protocol: Text.optional(),
  /** Only on series that are not of full swings: slaps stand alone. */
  swing: Text.optional(),
});
export type Condition = z.infer<typeof Condition>;
