import { z } from "zod";
import { ConditionWritten } from "./condition.ts";
import { READERS } from "./reasons.ts";
import { Id, IsoDate, LocalText } from "./text.ts";

const Window = z
  .tuple([z.number(), z.number()])
  .refine(([lo, hi]) => lo < hi, "the first number must be below the second");

/** `athletes/<id>/notes/*.md`. Without readers the note stays on the desk; without a kind it is an observation. */
export const Note = z.strictObject({
  date: IsoDate,
  author: z.string().min(1),
  kind: z.enum(["observation", "plan-change", "milestone", "words"]).optional(),
  about: z.array(z.string().min(1)).optional(),
  readers: z.array(z.enum(READERS)).optional(),
  /** Member of the staff who read it too, besides its author. */
  read_by: Id.optional(),
});

/** `athletes/<id>/closing.md`: the coach's closing message. Without readers it is the family's. */
export const Closing = z.strictObject({
  date: IsoDate.optional(),
  by: Id.optional(),
  readers: z.array(z.enum(READERS)).optional(),
  read_by: Id.optional(),
});

/** `athletes/<id>/assessment.md`: what was seen at the start. */
export const Assessment = z.strictObject({
  date: IsoDate,
  by: Id.optional(),
  priorities: z
    .array(
      z.strictObject({
        id: Id,
        text: z.string().min(1),
        measures: z.array(z.string().min(1)).optional(),
        drills: z.array(Id).optional(),
      }),
    )
    .optional(),
});

/** `athletes/<id>/plan.md`: the program card to take along. */
export const Plan = z.strictObject({
  date: IsoDate.optional(),
  by: Id.optional(),
  /** For the athlete's own card: what comes before the first swing, and the one thing to think of. */
  warm_up: LocalText.optional(),
  own_cue: LocalText.optional(),
  items: z
    .array(
      z.strictObject({
        drill: Id,
        purpose: z.string().min(1),
        implement: z.string().min(1).optional(),
        sets: z.int().positive(),
        reps: z.int().positive(),
        rest_s: z.int().nonnegative().optional(),
        cue: z.string().min(1).optional(),
        caution: z.string().min(1).optional(),
        days_per_week: z.int().min(1).max(7).optional(),
        where: z.enum(["home", "supervised"]).optional(),
      }),
    )
    .optional(),
});

/** `plans/*.md`: a day plan. What was done is always CSV. */
export const DayPlan = z.strictObject({
  date: IsoDate.optional(),
  group: Id.optional(),
  title: z.string().min(1).optional(),
});

/** `content/drills.md`: the drill library. */
export const DrillsFile = z.strictObject({
  drills: z.array(
    z.strictObject({
      id: Id,
      label: LocalText,
      environment: z.string().min(1).optional(),
      purpose: LocalText.optional(),
      treats: z.array(z.string().min(1)).optional(),
      cue: LocalText.optional(),
      good_rep: LocalText.optional(),
      aims: z
        .array(
          z.union([
            z.strictObject({ metric: z.string().min(1), condition: ConditionWritten.optional(), window: Window }),
            z.strictObject({ metric: z.string().min(1), condition: ConditionWritten.optional(), at_least: z.number() }),
            z.strictObject({ metric: z.string().min(1), condition: ConditionWritten.optional(), zone: Id }),
          ]),
        )
        .optional(),
      implements: z.array(z.string().min(1)).optional(),
      balls: z.array(z.string().min(1)).optional(),
      feedback: LocalText.optional(),
      caution: LocalText.optional(),
    }),
  ),
});
export type Drill = z.infer<typeof DrillsFile>["drills"][number];
