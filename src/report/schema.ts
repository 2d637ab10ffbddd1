import { z } from "zod";
import { COVERED_PARTS } from "../schema/profile.ts";
import {
  GOAL_STATUSES,
  HOLD_ANSWERS,
  NO_HOLD_ANSWERS,
  NOT_COUNTED_REASONS,
  READERS,
  SET_ASIDE_REASONS,
} from "../schema/reasons.ts";
import { GateReport, HittingReport, Share } from "./hitting-schema.ts";
import { Condition, Count, Day, Interval, Num, NumOrNull, Text, TextOrNull } from "./schema-parts.ts";
import { Series } from "./series-schema.ts";

export { Condition } from "./schema-parts.ts";
export { Change, Series, SessionValue } from "./series-schema.ts";

/**
 * One athlete's report: every figure that any page shows, in canonical units. A number that does not exist is `null`, never
 * absent. No transforms here: what is parsed is what is written, so a NaN stops the build.
 */
const LocalText = z.union([Text, z.record(Text, Text)]);

const Reasoned = <K extends readonly [string, ...string[]]>(keys: K) => z.partialRecord(z.enum(keys), Count);

export const Ledger = z.strictObject({
  read: Count,
  counted: Count,
  notCounted: Reasoned(NOT_COUNTED_REASONS),
  setAside: Reasoned(SET_ASIDE_REASONS),
});

export const GoalReport = z.strictObject({
  metric: Text,
  unit: Text,
  decimals: Count,
  better: z.enum(["higher", "lower", "window"]),
  condition: Condition,
  kind: z.enum(["target", "window", "at-least", "zone"]),
  /** The target zone of metrics.md; `metric` is then `zone`, and values are shares of the balls whose flight was read. */
  zone: z
    .strictObject({
      id: Text,
      label: LocalText,
      exitVelocity: Interval.nullable(),
      launchAngle: Interval.nullable(),
      /** Relative to the hitter's side, pull negative. */
      spray: Interval.nullable(),
    })
    .nullable(),
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
  /** 95 % interval of `progress`, the way to go taken as fixed. */
  ci95: Interval.nullable(),
  /** 95 % interval of `current`. */
  currentCi95: Interval.nullable(),
  status: z.enum(GOAL_STATUSES).nullable(),
  /** Chance that a session on the day `by` reaches the goal if the trend held; null where that is too far to say. */
  probabilityByDate: NumOrNull,
  /** The goal was set anew on this day; the later version stands in this list too. Null for goals that stand. */
  replacedOn: Day.nullable(),
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

/** Why a text stays on the desk although it names readers; null for one that does not. */
const Held = z.enum(["health-word", "second-reader"]).nullable();

export const NoteReport = z.strictObject({
  date: Day,
  author: Text,
  /** Role of the staff member; null for the athlete's own words. */
  role: TextOrNull,
  kind: z.enum(["observation", "plan-change", "milestone", "words"]),
  about: z.array(Text),
  readers: z.array(z.enum(READERS)),
  held: Held,
  body: Text,
  /** Picture name -> path of the file beside the note, relative to the season folder. */
  images: z.record(Text, Text),
  /** For a change of plan: places in `series` of the measures it is about, whose charts show its day. */
  series: z.array(Count),
});

const AimBlock = z.strictObject({ from: Day, to: Day, days: Count, ...Share.shape });

/** How many of a drill's reps were inside one of its aims. */
const AimReport = z.strictObject({
  drill: Text,
  label: LocalText,
  /** Null for a zone. */
  metric: TextOrNull,
  unit: Text,
  decimals: Count,
  zone: LocalText.nullable(),
  window: Interval.nullable(),
  atLeast: NumOrNull,
  days: z.array(z.strictObject({ date: Day, inside: Count, of: Count, share: Num })),
  dayCount: Count,
  all: Share,
  /** The blocks of every series; null with too few days for both. */
  first: AimBlock.nullable(),
  last: AimBlock.nullable(),
  /** Mean of the last days' shares less that of the first, with Welch's interval. */
  change: z.strictObject({ estimate: Num, ci95: Interval }).nullable(),
});

/** One measure elsewhere (at home, at a club, in games) against the last block here. */
const CheckIn = z.strictObject({
  place: Text,
  metric: Text,
  unit: Text,
  decimals: Count,
  condition: Condition,
  /** Places in `series`: elsewhere, and the same here; null where the same was not done here. */
  series: Count,
  here: Count.nullable(),
  /** Sessions elsewhere since the last block here began; null where there are none. */
  there: z.strictObject({ from: Day, to: Day, sessions: Count, n: Count, mean: Num }).nullable(),
  /** Elsewhere less here. */
  difference: z.strictObject({ estimate: Num, ci95: Interval, ci90: Interval, df: NumOrNull }).nullable(),
  /** The smallest difference that matters. */
  worth: NumOrNull,
  answer: z.enum(HOLD_ANSWERS).nullable(),
  /** Why there is no answer. */
  why: z.enum(NO_HOLD_ANSWERS).nullable(),
});

const Work = { days: Count, swings: Count, logged: Count };

/** How the season stands while it lasts. */
const Interim = z.strictObject({
  /** Days on which the athlete was to come, those of them on which there was work, and days of work besides. */
  came: z.strictObject({ planned: Count, kept: Count, besides: Count }).nullable(),
  sofar: z.strictObject(Work),
  lately: z.strictObject({ from: Day, ...Work }),
  /** Places in `facility.phases`. */
  phase: Count.nullable(),
  nextPhase: Count.nullable(),
  nextTest: Day.nullable(),
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
  /** What a good rep looks like. */
  goodRep: LocalText.nullable(),
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

/** A reference `[[…]]` of a coach's text: the figure, range, chart or plain words that stand in its place. */
const Reference = z.strictObject({
  /** Between the brackets, spaces at the ends removed. */
  text: Text,
  kind: z.enum(["figure", "range", "chart", "words"]),
  words: TextOrNull,
  /** Place in `series`. */
  series: Count.nullable(),
  /** Pointers into the report: one, or both ends of a range. */
  at: z.array(Text),
  unit: TextOrNull,
  decimals: Count,
  signed: z.boolean(),
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
    /** Of the season, as the facility's file names them. */
    phases: z.array(z.strictObject({ id: Text, label: LocalText.nullable(), from: Day, to: Day })),
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
    /** Between ten and sixteen years old during the season, when growth alone moves many measures; null without an age. */
    growing: z.boolean().nullable(),
    heights: z.array(z.strictObject({ date: Day, in: Num })),
    masses: z.array(z.strictObject({ date: Day, lb: Num })),
    gameBats: z.array(Bat),
    away: z.array(z.strictObject({ from: Day, to: Day, say: TextOrNull })),
  }),
  period: z.strictObject({ start: Day, end: Day }),
  /** Of each kind of reader: the word that lets one of them have the report, where there is one. */
  publication: z.strictObject({ family: Publication, club: Publication }),
  /** Everybody a report is for, each with the word about them. */
  recipients: z.array(
    z.strictObject({
      id: Text,
      reader: z.enum(READERS),
      publication: Publication,
      /** May pictures, and ways that lead elsewhere and so perhaps to film, be shown? */
      film: z.boolean(),
      /** What is on file, and an adult's word does not cover. */
      kept: z.array(z.enum(COVERED_PARTS)),
      keptCount: Count,
    }),
  ),
  ledger: Ledger,
  /** How many measures the facility judges this athlete by. */
  measures: Count,
  /** Those of them that have a series, and so swings that count. */
  measuresWithSwings: Count,
  series: z.array(Series),
  goals: z.array(GoalReport),
  /** How often the rules behind the verdicts say "changed" of athletes who did not change, as measured by simulation. */
  method: z.strictObject({
    /** Share of simulated seasons without a change that were given a change, worst case of each kind. */
    falseAlarm: z.strictObject({ independent: Num, alike: Num, tests: Num }),
    /** Simulated seasons in each case. */
    seasons: Count,
  }),
  checkIns: z.array(CheckIn),
  aims: z.array(AimReport),
  /** Null for readers whom it does not concern. */
  interim: Interim.nullable(),
  gate: GateReport.nullable(),
  hitting: HittingReport,
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
      priorities: z.array(
        z.strictObject({
          id: Text,
          text: Text,
          /** Its drills: swings measured, swings only logged, days of either. */
          did: z.array(z.strictObject({ drill: Text, label: LocalText, swings: Count, logged: Count, days: Count })),
          /** Places in `series`: the season's measures of its metrics. */
          moved: z.array(Count),
          /** Places in `program.items`. */
          next: z.array(Count),
        }),
      ),
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
      held: Held,
      body: Text,
    }),
  ),
  program: z
    .strictObject({
      date: Day.nullable(),
      by: TextOrNull,
      warmUp: LocalText.nullable(),
      ownCue: LocalText.nullable(),
      body: Text,
      items: z.array(ProgramItem),
    })
    .nullable(),
  /** For the trainer's desk alone. */
  suggestions: z.array(Suggestion),
  references: z.array(Reference),
  flags: z.array(Flag),
});
export type AthleteReport = z.infer<typeof AthleteReport>;
