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
  pitchSpeed: z.tuple([z.number(), z.number()]).optional(),
});
export type ConditionWritten = z.infer<typeof ConditionWritten>;
