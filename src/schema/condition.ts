import { z } from "zod";
import { PLACES, PURPOSES, SIDES } from "./columns.ts";

/** A condition as the trainer writes it for a measure, goal or gate: it names some keys, the rest are open. */
export const ConditionWritten = z.strictObject({
  environment: z.string().min(1).optional(),
  implement: z.string().min(1).optional(),
  ball: z.string().min(1).optional(),
  side: z.enum(SIDES).optional(),
  purpose: z.enum(PURPOSES).optional(),
  place: z.enum(PLACES).optional(),
  /** Of a test of `data/tests`: its load with the unit, as "60 kg", and its protocol. */
  load: z.string().min(1).optional(),
  protocol: z.string().min(1).optional(),
  pitchSpeed: z.tuple([z.number(), z.number()]).optional(),
});
export type ConditionWritten = z.infer<typeof ConditionWritten>;
