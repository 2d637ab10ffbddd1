import { z } from "zod";
import {
  CHANGE_METHODS,
  GOAL_STATUSES,
  NOT_COUNTED_REASONS,
  READERS,
  SET_ASIDE_REASONS,
  VERDICTS,
} from "../schema/reasons.ts";

/**
 * One athlete's report: every figure that any page shows, in canonical units. A number that does not exist is `null`, never
 * absent. No transforms here: what is parsed is what is written, so a NaN stops the build.
 */
const Day = z.iso.date();
const Num = z.number();
const NumOrNull = z.number().nullable();
const Text = z.string();
const TextOrNull = z.string().nullable();
const Interval = z.tuple([Num, Num]);
const Count = z.int().nonnegative();
const LocalText = z.union([Text, z.record(Text, Text)]);

const Reasoned = <K extends readonly [string, ...string[]]>(keys: K) => z.partialRecord(z.enum(keys), Count);

export const Ledger = z.strictObject({
  read: Count,
  counted: Count,
  notCounted: Reasoned(NOT_COUNTED_REASONS),
  setAside: Reasoned(SET_ASIDE_REASONS),
});

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
  /** Only on series that are not of full swings: slaps stand alone. */
  swing: Text.optional(),
});
export type Condition = z.infer<typeof Condition>;

const Block = z.strictObject({ from: Day, to: Day, sessions: Count, n: Count, mean: Num });

/** Values of one training day (or of one named session of it). */
export const SessionValue = z.strictObject({
  date: Day,
  session: TextOrNull,
  n: Count,
  mean: Num,
  /** Sample SD of the day's reps; null for one rep. */
  sd: NumOrNull,
  median: Num,
  p90: Num,
  max: Num,
  /**
   * What was added to the day's values so that they read as the last device would have read them; 0 unless the series is joined.
   * `mean` less `shift` is the mean as measured.
   */
  shift: Num,
});
export type SessionValue = z.infer<typeof SessionValue>;

export const Change = z.strictObject({
  /** Over the whole span, in the metric's unit. */
  estimate: Num,
  ci95: Interval,
  ci90: Interval,
  df: Num,
  method: z.enum(CHANGE_METHODS),
  smallestWorthwhile: NumOrNull,
  verdict: z.enum(VERDICTS).nullable(),
});

const Trend = z.strictObject({
  sessionLine: z
    .strictObject({
      perWeek: Num,
      se: Num,
      df: Num,
      ci95: Interval,
      lag1: NumOrNull,
      inflation: NumOrNull,
      start: Num,
      end: Num,
    })
    .nullable(),
  mixed: z.strictObject({ perWeek: Num, se: Num, df: Num, ci95: Interval, sessionSd: Num, repSd: Num }).nullable(),
  theilSen: z.strictObject({ perWeek: Num, ci95: z.tuple([NumOrNull, NumOrNull]) }).nullable(),
  ols: z.strictObject({ perWeek: Num, ci95: Interval }).nullable(),
  mannKendall: z.strictObject({ s: Num, varS: Num, z: Num, p: Num }).nullable(),
});

/** `firmware` and `set-up`: the same device, otherwise. `device`: one that measures a metric of the trainer's own. */
const BREAK_KINDS = ["bat-sensor", "ball-screen", "device", "firmware", "set-up", "game-bat"] as const;

/** What the new device reads above the old one, from a day on which both measured. */
const Bridge = z.strictObject({
  offset: Num,
  ci95: Interval,
  /** Swings that both recorded (`paired`), or swings of both together (`two-samples`). */
  n: Count,
  method: z.enum(["paired", "two-samples"]),
  date: Day,
});

export const Series = z.strictObject({
  metric: Text,
  unit: Text,
  better: z.enum(["higher", "lower", "window"]),
  decimals: Count,
  /** Place in the facility's list of measures from 0, or null when it is none of them. */
  measure: Count.nullable(),
  pooled: z.boolean(),
  /** Conditions that stand in it; above 1 only where `pooled`. */
  parts: Count,
  condition: Condition,
  of: z.strictObject({ swings: Count, hit: Count, foul: Count, miss: Count, notKnown: Count }).nullable(),
  sessions: z.array(SessionValue),
  /** How many sessions; as a figure of its own, so that a page can point at it. */
  sessionCount: Count,
  /** First and last block of sessions: the configured windows, else the outer thirds; null with fewer than three sessions in either. */
  first: Block.nullable(),
  last: Block.nullable(),
  /** Swings in all sessions. */
  n: Count,
  /** Days between the first and last session. */
  spanDays: Count,
  /** Values that lie far from the athlete's own in their condition (`flags`); they count like any other. */
  flagged: Count,
  /**
   * Days from which the set-up was another one. A series with a break has no blocks, change or trend, unless it is joined: its
   * swings are not one line.
   */
  breaks: z.array(z.strictObject({ date: Day, kind: z.enum(BREAK_KINDS), to: Text, bridge: Bridge.nullable() })),
  /** The sessions between breaks, as measured; the whole series where there is none. */
  stretches: z.array(Block),
  /**
   * There are breaks, and bridges over all of them: sessions, blocks, change and trend are in terms of the last device, and the
   * uncertainty of the offsets stands in the change's interval.
   */
  joined: z.boolean(),
  change: Change.nullable(),
  trend: Trend,
  peers: z.null(),
});
export type Series = z.infer<typeof Series>;

export const GoalReport = z.strictObject({
  metric: Text,
  unit: Text,
  decimals: Count,
  better: z.enum(["higher", "lower", "window"]),
  condition: Condition,
  kind: z.enum(["target", "window", "at-least"]),
  target: NumOrNull,
  window: Interval.nullable(),
  atLeast: NumOrNull,
  /** Wanted share of swings, 0 to 1, for window and at-least goals. */
  share: NumOrNull,
  by: Day,
  set: Day.nullable(),
  why: TextOrNull,
  /** Mean of the first block (target goals) or share in it (the others). */
  baseline: NumOrNull,
  current: NumOrNull,
  /** Part of the way from baseline to goal; may be below 0 or above 1. Null too when the baseline was at the goal already. */
  progress: NumOrNull,
  ci95: z.null(),
  status: z.enum(GOAL_STATUSES).nullable(),
  probabilityByDate: z.null(),
  /** Sessions and swings behind `baseline` and `current`. */
  baselineN: z.strictObject({ sessions: Count, n: Count }),
  currentN: z.strictObject({ sessions: Count, n: Count }),
});
export type GoalReport = z.infer<typeof GoalReport>;

export const Week = z.strictObject({
  /** Monday. */
  start: Day,
  days: Count,
  /** Measured swings of any kind: everything readable inside the season except takes. */
  swings: Count,
  byEnvironment: z.array(z.strictObject({ environment: TextOrNull, swings: Count })),
  /** Swings of the session log in blocks that were not measured. */
  loggedUnmeasured: Count,
});

export const NoteReport = z.strictObject({
  date: Day,
  author: Text,
  /** Role of the staff member; null for the athlete's own words. */
  role: TextOrNull,
  kind: z.enum(["observation", "plan-change", "milestone", "words"]),
  about: z.array(Text),
  readers: z.array(z.enum(READERS)),
  body: Text,
  /** Picture name -> path of the file beside the note, relative to the season folder. */
  images: z.record(Text, Text),
});

const Bat = z.strictObject({
  id: Text,
  label: TextOrNull,
  lengthIn: NumOrNull,
  weightOz: NumOrNull,
  from: Day.nullable(),
});

export const ProgramItem = z.strictObject({
  drill: Text,
  label: LocalText,
  purpose: Text,
  implement: TextOrNull,
  sets: Count,
  reps: Count,
  restS: Count.nullable(),
  cue: LocalText.nullable(),
  caution: LocalText.nullable(),
  daysPerWeek: Count.nullable(),
  where: z.enum(["home", "supervised"]).nullable(),
});

/** May this reader be given the report, and on whose word? */
export const Publication = z.discriminatedUnion("publish", [
  z.strictObject({
    publish: z.literal(true),
    as: z.enum(["guardian", "self"]),
    agreedOn: Day,
    covers: z.array(Text).nullable(),
  }),
  z.strictObject({
    publish: z.literal(false),
    why: z.enum(["no-consent", "needs-guardian", "needs-own", "withdrawn", "ended", "not-covered"]),
  }),
]);

/** A step in the athlete's own values that looks as if something had been swapped. Nothing follows from it by itself. */
export const Suggestion = z.strictObject({
  kind: z.literal("possible-set-up-change"),
  metric: Text,
  unit: Text,
  decimals: Count,
  condition: Condition,
  /** First session after the step, and the last one before. */
  date: Day,
  previous: Day,
  /** After minus before, a steady rise or fall taken out. */
  size: Num,
  /** Sessions before and after that were looked at. */
  sessions: z.tuple([Count, Count]),
  /** At most the chance of such a step anywhere in a steady series. */
  p: Num,
  /** Other series of the same side (bat or ball) that were searched around that day, and those that stepped within ten days. */
  sameSide: z.strictObject({ searched: Count, moved: Count }),
  /** Whether the other side (ball for bat, bat for ball) stepped within ten days. One side alone points to a device. */
  otherSide: z.enum(["still", "moved", "not-measured"]),
});

/** A value far from the athlete's own in the same condition: shown, and counted like any other. */
export const Flag = z.strictObject({
  metric: Text,
  unit: Text,
  decimals: Count,
  condition: Condition,
  date: Day,
  file: TextOrNull,
  line: Count,
  value: Num,
  /** Where the athlete's own values may be expected. */
  low: Num,
  high: Num,
  reason: z.literal("far-from-own-swings"),
});

export const AthleteReport = z.strictObject({
  schema: z.literal(1),
  edition: z.null(),
  asOf: Day,
  facility: z.strictObject({
    name: Text,
    season: Text,
    contact: TextOrNull,
    notice: LocalText.nullable(),
    units: z.enum(["imperial", "metric"]),
    cautions: z.array(LocalText),
  }),
  athlete: z.strictObject({
    id: Text,
    /** Full name for adults, first name and initial for minors. */
    displayName: Text,
    language: Text,
    sport: TextOrNull,
    level: TextOrNull,
    sex: TextOrNull,
    bats: TextOrNull,
    throws: TextOrNull,
    positions: z.array(Text),
    /** Whole years at `asOf`; null when the birth date is not on file, or only its year and that leaves two answers. */
    age: Count.nullable(),
    minor: z.boolean(),
    heights: z.array(z.strictObject({ date: Day, in: Num })),
    masses: z.array(z.strictObject({ date: Day, lb: Num })),
    gameBats: z.array(Bat),
    away: z.array(z.strictObject({ from: Day, to: Day, say: TextOrNull })),
  }),
  period: z.strictObject({ start: Day, end: Day }),
  publication: z.strictObject({ family: Publication, club: Publication }),
  ledger: Ledger,
  /** How many measures the facility judges this athlete by. */
  measures: Count,
  /** Those of them that have a series, and so swings that count. */
  measuresWithSwings: Count,
  series: z.array(Series),
  goals: z.array(GoalReport),
  work: z.strictObject({
    weeks: z.array(Week),
    days: Count,
    swings: Count,
    loggedUnmeasured: Count,
    /** Most swings in one week: the scale of the picture. */
    busiestWeek: Count,
  }),
  /** Devices, bats, balls and machine speeds that the counted swings name. */
  measuring: z.strictObject({
    devices: z.array(
      z.strictObject({
        id: Text,
        kind: TextOrNull,
        measures: TextOrNull,
        pointOnBat: TextOrNull,
        from: Day.nullable(),
        to: Day.nullable(),
        swings: Count,
      }),
    ),
    bats: z.array(Bat.extend({ role: TextOrNull, swings: Count })),
    balls: z.array(z.strictObject({ id: Text, label: TextOrNull, kind: TextOrNull, swings: Count })),
    pitchSpeeds: z.array(
      z.strictObject({ environment: Text, pitchSpeed: Interval, at: TextOrNull, distanceFt: NumOrNull, swings: Count }),
    ),
    places: z.array(z.strictObject({ place: Text, swings: Count })),
  }),
  assessment: z
    .strictObject({
      date: Day,
      by: TextOrNull,
      body: Text,
      priorities: z.array(z.strictObject({ id: Text, text: Text })),
    })
    .nullable(),
  notes: z.array(NoteReport),
  closings: z.array(
    z.strictObject({
      language: TextOrNull,
      date: Day.nullable(),
      by: TextOrNull,
      role: TextOrNull,
      readers: z.array(z.enum(READERS)),
      body: Text,
    }),
  ),
  program: z.strictObject({ date: Day.nullable(), by: TextOrNull, body: Text, items: z.array(ProgramItem) }).nullable(),
  /** For the trainer's desk alone. */
  suggestions: z.array(Suggestion),
  flags: z.array(Flag),
});
export type AthleteReport = z.infer<typeof AthleteReport>;
