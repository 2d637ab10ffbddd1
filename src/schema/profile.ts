import { z } from "zod";
import { ConditionWritten } from "./condition.ts";
import { Measure } from "./facility.ts";
import { READERS } from "./reasons.ts";
import { Id, IsoDate, Language, Weekday } from "./text.ts";

const Window = z
  .tuple([z.number(), z.number()])
  .refine(([lo, hi]) => lo < hi, "the first number must be below the second");
const Share = z.number().min(0).max(1);

/** A value or a list of values, always a list afterwards in the reader's code. */
const oneOrMany = z.union([z.string().min(1), z.array(z.string().min(1)).min(1)]);

/** What a gate applies to: a condition whose keys may list several values. */
const GateApplies = z.strictObject({
  environment: oneOrMany.optional(),
  implement: oneOrMany.optional(),
  ball: oneOrMany.optional(),
  side: oneOrMany.optional(),
  purpose: oneOrMany.optional(),
  place: oneOrMany.optional(),
});

const GateDates = { applies: GateApplies, from: IsoDate.optional() };

/** A bat-speed mark below which a rep's ball flight does not count. */
export const Gate = z.union([
  z.strictObject({ ...GateDates, at_least: z.number().positive() }),
  z.strictObject({
    ...GateDates,
    share_of_recent_best: Share,
    days: z.int().positive(),
    best: z.enum(["max", "p90"]).optional(),
  }),
]);
export type Gate = z.infer<typeof Gate>;

const GoalBase = {
  condition: ConditionWritten.optional(),
  by: IsoDate,
  set: IsoDate.optional(),
  why: z.string().min(1).optional(),
};

const MetricGoal = { ...GoalBase, metric: z.string().min(1) };

/**
 * Reach a value; be inside a window in a share of swings; be at or over a value in a share of swings; hit a share of balls into a zone of
 * metrics.md.
 */
export const Goal = z.union([
  z.strictObject({ ...MetricGoal, target: z.number() }),
  z.strictObject({ ...MetricGoal, window: Window, share: Share }),
  z.strictObject({ ...MetricGoal, at_least: z.number(), share: Share }),
  z.strictObject({ ...GoalBase, zone: Id, share: Share }),
]);
export type Goal = z.infer<typeof Goal>;

const KINDS = ["target", "window", "at_least", "zone"] as const;

/**
 * What makes two goals versions of one: the same metric or zone in the same condition, wanted in the same way. The later `set` is the
 * one that stands.
 */
export function goalKey(goal: Goal): string {
  const of = "zone" in goal ? goal.zone : goal.metric;
  const kind = KINDS.find((key) => key in goal) ?? null;
  const condition = Object.entries(goal.condition ?? {}).filter(([, value]) => value !== undefined);
  return JSON.stringify([of, kind, condition.sort(([a], [b]) => (a < b ? -1 : 1))]);
}

/** Somebody's agreement that a reader may be given the report. */
export const Consent = z.strictObject({
  by: z.string().min(1),
  as: z.enum(["guardian", "self"]),
  on: IsoDate,
  readers: z.array(z.enum(READERS)).min(1),
  /** Ids of `recipients` whom alone this word is about; it stands before any word about all of them. */
  recipients: z.array(Id).min(1).optional(),
  covers: z.array(z.string().min(1)).optional(),
  until: IsoDate.optional(),
  withdrawn: IsoDate.optional(),
});
export type Consent = z.infer<typeof Consent>;

/** Front matter of `content/athletes/<id>/profile.md`. */
export const Profile = z.strictObject({
  name: z.string().min(1),
  aliases: z.array(z.string().min(1)).optional(),
  born: z.union([IsoDate, z.int().min(1900).max(2100)]).optional(),
  sport: z.enum(["baseball", "softball", "other"]).optional(),
  level: z.string().min(1).optional(),
  sex: z.enum(["female", "male"]).optional(),
  bats: z.enum(["left", "right", "switch"]).optional(),
  throws: z.enum(["left", "right", "both"]).optional(),
  positions: z.array(z.string().min(1)).optional(),
  heights: z
    .array(
      z.union([
        z.strictObject({ date: IsoDate, in: z.number().positive() }),
        z.strictObject({ date: IsoDate, cm: z.number().positive() }),
      ]),
    )
    .optional(),
  masses: z
    .array(
      z.union([
        z.strictObject({ date: IsoDate, lb: z.number().positive() }),
        z.strictObject({ date: IsoDate, kg: z.number().positive() }),
      ]),
    )
    .optional(),
  game_bat: z.union([Id, z.array(z.strictObject({ id: Id, from: IsoDate })).min(1)]).optional(),
  joined: IsoDate.optional(),
  /** Weekdays on which the athlete is to come, where they are not the group's. */
  days: z.array(Weekday).optional(),
  away: z
    .array(
      z.strictObject({
        from: IsoDate,
        to: IsoDate,
        kind: z.string().min(1).optional(),
        say: z.string().min(1).optional(),
      }),
    )
    .optional(),
  limits: z
    .array(
      z.strictObject({
        from: IsoDate,
        to: IsoDate.optional(),
        none_of: z.array(z.string().min(1)).min(1),
        decided_by_role: z.string().min(1).optional(),
      }),
    )
    .optional(),
  gates: z.array(Gate).optional(),
  measures: z.array(Measure).max(8).optional(),
  consent: z.array(Consent).optional(),
  recipients: z
    .array(
      z.strictObject({
        id: Id,
        reader: z.enum(READERS),
        label: z.string().min(1).optional(),
        until: IsoDate.optional(),
        seal: z.boolean().optional(),
      }),
    )
    .optional(),
  /** As in facility.md, for this athlete alone. */
  keep_until: IsoDate.optional(),
  /** Are this athlete's pages sealed, whatever the facility does? */
  seal: z.boolean().optional(),
  language: Language.optional(),
  goals: z.array(Goal).optional(),
});
export type Profile = z.infer<typeof Profile>;

/** What a word may cover besides the numbers. Each is left out where a word lists what it covers and does not name it. */
export const COVERED_PARTS = ["peers", "body-mass", "video"] as const;
export type CoveredPart = (typeof COVERED_PARTS)[number];

/** The part that a trainer means by a word of `covers`; null for one that nobody knows. */
export function coveredPart(written: string): CoveredPart | "numbers" | null {
  const plain = written
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, "-");
  return (["numbers", ...COVERED_PARTS] as const).find((part) => part === plain) ?? null;
}

/** Everybody a report may be for: the recipients on file, else one of each kind of reader. */
export const recipientsOf = ({ recipients }: Profile): NonNullable<Profile["recipients"]> =>
  recipients ?? READERS.map((reader) => ({ id: reader, reader }));

/** Id of the athlete's game bat on a day, or null when none is on file. */
export function gameBatOn(profile: Profile, date: string): string | null {
  const bats = profile.game_bat;
  if (bats === undefined) return null;
  if (typeof bats === "string") return bats;
  const known = bats.filter((bat) => bat.from <= date).sort((a, b) => (a.from < b.from ? -1 : 1));
  return known.at(-1)?.id ?? null;
}
