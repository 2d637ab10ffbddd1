import { z } from "zod";
import { CHANGE_METHODS, SENTENCES, VERDICT_NOTES, VERDICTS } from "../schema/reasons.ts";
import { Condition, Count, Day, Interval, Num, NumOrNull, Text, TextOrNull } from "./schema-parts.ts";

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

/** For a measure with a window: how far outside it the swings were on average, which is what the verdict is about. */
const Outside = z.strictObject({
  /** Mean distance outside the window at either end of the line, in the metric's unit, 0 or more. */
  start: Num,
  end: Num,
  /** Its change; below 0 is closer to the window. */
  estimate: Num,
  ci95: Interval,
  ci90: Interval,
  df: Num,
});

export const Change = z.strictObject({
  /** Over the whole span, in the metric's unit; for tests, between their two windows. */
  estimate: Num,
  ci95: Interval,
  ci90: Interval,
  df: Num,
  method: z.enum(CHANGE_METHODS),
  /** Smallest change that matters, in the metric's unit; `worth` says where it comes from. */
  smallestWorthwhile: NumOrNull,
  /** Null where a measure has no verdict; `notes` says why. */
  verdict: z.enum(VERDICTS).nullable(),
  /** Null for measures without a window: their verdict is about `estimate` itself. */
  outside: Outside.nullable(),
  /** Two-sided p of no change in what the verdict is about; null where the verdict does not rest on a line. */
  p: NumOrNull,
  /** The same after Holm's correction for all of the athlete's measures that have one. */
  pHolm: NumOrNull,
  /** Does a verdict of a change still stand when all measures are counted? Null where none is given. */
  holds: z.boolean().nullable(),
  /** `two-tests`: is the difference larger than two tests without a change would show? */
  beyondNoise: z.boolean().nullable(),
});

/** What two measurements of an athlete who did not change differ by. */
const Noise = z.strictObject({
  /** Of one session's value, in the metric's unit. */
  typicalError: Num,
  /** Null where the trainer set it. */
  ci95: Interval.nullable(),
  df: NumOrNull,
  /** Athletes behind it; null where the trainer set it. */
  athletes: Count.nullable(),
  /** Smallest difference of two sessions that is more than noise, 95 %. */
  mdc95: Num,
  /** `test-days`: from days of one test close together; `own-lines`: from the scatter of athletes' sessions about their own lines. */
  source: z.enum(["configured", "test-days", "own-lines"]),
});

/** The smallest change that matters and where it comes from. */
const Worth = z.strictObject({
  value: Num,
  /** `configured`: the trainer's; else a fifth of the spread between athletes, of this season or of the reference sample. */
  source: z.enum(["configured", "season", "reference"]),
  athletes: Count.nullable(),
});

const Standing = z.strictObject({
  value: Num,
  /** Years, as the bands were read. */
  age: NumOrNull,
  /** 0 to 100. */
  percentile: Num,
  /** Of the percentile; null where the size of the group is not known. */
  ci95: Interval.nullable(),
});

const PeerBands = z.strictObject({ p10: Num, p25: Num, p50: Num, p75: Num, p90: Num });

/** Where the athlete stands among others of the same kind, measured the same way. */
const Peers = z.strictObject({
  /** Who they are. */
  group: z.strictObject({
    sport: Text,
    sex: Text,
    level: TextOrNull,
    ages: z.tuple([NumOrNull, NumOrNull]),
  }),
  source: Text,
  /** Year of the values; null when the table does not say. */
  year: Count.nullable(),
  /** Athletes behind the bands; null when a published table does not say. */
  n: Count.nullable(),
  kind: z.enum(["value", "lms", "mean-sd"]),
  start: Standing.nullable(),
  end: Standing.nullable(),
  /** At the athlete's age at the end. */
  bands: PeerBands,
  /** At the athlete's age at the start; null where the bands do not move with age. */
  bandsStart: PeerBands.nullable(),
});

/** A published value without a spread: a line, never a band. */
const PeerLine = z.strictObject({ value: Num, label: Text, n: Count.nullable(), source: Text, year: Count.nullable() });

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
  breaks: z.array(
    z.strictObject({
      date: Day,
      kind: z.enum(BREAK_KINDS),
      to: Text,
      bridge: Bridge.nullable(),
      /** For a new game bat: its length and mass less those of the one before; null for other kinds, or where one is not known. */
      bat: z.strictObject({ lengthIn: NumOrNull, weightOz: NumOrNull }).nullable(),
    }),
  ),
  /** The sessions between breaks, as measured; the whole series where there is none. */
  stretches: z.array(Block),
  /**
   * There are breaks, and bridges over all of them: sessions, blocks, change and trend are in terms of the last device, and the
   * uncertainty of the offsets stands in the change's interval.
   */
  joined: z.boolean(),
  change: Change.nullable(),
  trend: Trend,
  /** Last block less first block, with Welch's interval on session means; null with fewer than three sessions in either. */
  earlyLate: z.strictObject({ estimate: Num, ci95: Interval, df: Num }).nullable(),
  /** Scatter of session means about the line, and of swings about their session; null where nothing stands behind them. */
  sessionSd: NumOrNull,
  repSd: NumOrNull,
  /** The window of a window measure. */
  window: Interval.nullable(),
  /** Only for measures, like all that follows. */
  noise: Noise.nullable(),
  worth: Worth.nullable(),
  /** Sessions after which a change as large as the smallest that matters would show, at this scatter; null when not known or above 60. */
  sessionsNeeded: Count.nullable(),
  notes: z.array(z.enum(VERDICT_NOTES)),
  /** What a page says of a measure, with the numbers of the sentence. */
  says: z.strictObject({ id: z.enum(SENTENCES), args: z.record(Text, Num) }).nullable(),
  /** What a start far from the middle of its group would come back by though nobody changed. */
  rebound: z
    .strictObject({
      /** In the metric's unit, towards the middle. */
      estimate: Num,
      /** Share of the differences between starts that is not error, 0 to 1. */
      icc: Num,
      middle: Num,
      athletes: Count,
      source: z.enum(["season", "reference"]),
    })
    .nullable(),
  /** The measure since each of the season's phases began, less before, its trend taken out. */
  phases: z.array(
    z.strictObject({
      /** Place in `facility.phases`. */
      phase: Count,
      estimate: Num,
      ci95: Interval,
      df: Num,
      /** Sessions before and since. */
      before: Count,
      since: Count,
    }),
  ),
  peers: Peers.nullable(),
  /** Published values without a spread for the same kind of athlete, measured the same way. */
  peerLines: z.array(PeerLine),
  /** A group was looked for and too small for bands: its number of athletes; null where none was looked for or bands exist. */
  peersTooFew: Count.nullable(),
});
export type Series = z.infer<typeof Series>;
