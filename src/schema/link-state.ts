import { z } from "zod";
import { Id, IsoDate } from "./text.ts";

/** A link by whose report it opens and who may open it. */
const Of = { athlete: Id, recipient: Id };

/** `.winterbook/links.json`: what was done with links, besides what the athletes' profiles say. */
export const LinkState = z.strictObject({
  /** Each time a link was replaced by a new one, or made dead for good. */
  changes: z.array(z.strictObject({ ...Of, kind: z.enum(["rotated", "revoked"]), on: IsoDate })),
  /** To whom a link was handed out, and after how many rotations. */
  handed: z.array(z.strictObject({ ...Of, to: z.string().min(1), on: IsoDate, rotation: z.int().min(0) })),
  /** Athletes whose data was taken out, under a mark in place of their id, and the number from which their links count should they return. */
  forgotten: z.array(z.strictObject({ mark: z.string().min(1), rotation: z.int().min(0) })).default([]),
  /** Words that a sealed page asks for, besides the key in its link. */
  passphrases: z.array(z.strictObject({ ...Of, words: z.string().min(1), on: IsoDate })).default([]),
});
export type LinkState = z.infer<typeof LinkState>;
