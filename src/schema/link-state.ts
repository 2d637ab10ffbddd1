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
});
export type LinkState = z.infer<typeof LinkState>;
