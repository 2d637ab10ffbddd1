import { z } from "zod";
import { Condition, Count, Day, Interval, Num, NumOrNull, Text, TextOrNull } from "./schema-parts.ts";

/** Ends of a series: swings, means of the first and last block, change over the season. */
const Ends = { n: Count, first: NumOrNull, last: NumOrNull, estimate: NumOrNull };

/** The bat-speed marks below which a rep's ball flight does not count, and what follows from them. */
export const GateReport = z.strictObject({
  marks: z.array(
    z.strictObject({
      /** Names of a condition with the values they may have. */
      applies: z.record(Text, z.array(Text)),
      from: Day.nullable(),
      /** mph; null for a share of the recent best. */
      atLeast: NumOrNull,
      share: NumOrNull,
      days: Count.nullable(),
      best: z.enum(["max", "p90"]).nullable(),
      /** Swings that this mark stands for, and those of them that count. */
      judged: Count,
      passed: Count,
    }),
  ),
  judged: Count,
  passed: Count,
  underMark: Count,
  noSpeed: Count,
  /** The ball-flight measures that a mark touches. */
  effects: z.array(
    z.strictObject({
      /** Place in `series`. */
      series: Count,
      metric: Text,
      unit: Text,
      decimals: Count,
      condition: Condition,
      gated: z.strictObject(Ends),
      ungated: z.strictObject(Ends),
      /** With every mark so many mph higher; 0 as it is. */
      moves: z.array(z.strictObject({ by: Num, ...Ends })),
    }),
  ),
});

/** A mean over days with its t interval; null interval for one day. */
const Estimated = z.strictObject({ estimate: Num, ci95: Interval.nullable(), df: Num, n: Count });
/** A change over the season, from a line through days; null interval for two days. */
const Moved = z.strictObject({ estimate: Num, ci95: Interval.nullable(), df: Num });
/** A share of swings with Wilson's interval. */
export const Share = z.strictObject({ count: Count, of: Count, share: Num, ci95: Interval });

/** Which swings: environment, bat (`game` for the game bat of the day), side stood on. */
const Where = { environment: TextOrNull, implement: TextOrNull, side: TextOrNull };

/** Bat speed inside a round, mph. */
export const RoundsReport = z.strictObject({
  ...Where,
  /** Swings in a round: up to five, six or seven, eight or more. */
  length: z.enum(["short", "middle", "long"]),
  rounds: Count,
  swings: Count,
  days: Count,
  /** Typical number of swings in a round. */
  swingsInRound: Count,
  /** Change from one swing to the next (mixed model, rounds random), and over a typical round. */
  perSwing: z.strictObject({ estimate: Num, ci95: Interval, df: Num }),
  drop: z.strictObject({ estimate: Num, ci95: Interval }),
  /** Mean of the swings at each place in the round, less the mean of their rounds. */
  places: z.array(z.strictObject({ rep: Count, n: Count, mean: Num })),
});

/** First swing of a round less the last of the round before, against the rest between them. */
export const RecoveryReport = z.strictObject({
  pairs: Count,
  days: Count,
  /** Median rest, s. */
  restS: Num,
  /** mph, over days. */
  recovery: Estimated,
  /** mph per minute of rest; null where all rests are alike. */
  perMinute: z.strictObject({ estimate: Num, ci95: Interval, df: Num }).nullable(),
});

/** One metric in two environments on the same days. */
export const CarryOverReport = z.strictObject({
  metric: Text,
  unit: Text,
  decimals: Count,
  implement: TextOrNull,
  side: TextOrNull,
  from: Text,
  to: Text,
  /** Band of pitch speeds in `to`, and where they were read. */
  pitchSpeed: Interval.nullable(),
  pitchSpeedAt: TextOrNull,
  days: Count,
  swings: z.tuple([Count, Count]),
  /** `to` less `from`, mean over days. */
  gap: Estimated,
  /** Line through the days' gaps, at its start and its end, and their difference. */
  start: NumOrNull,
  end: NumOrNull,
  change: Moved.nullable(),
  /** `closed`, `opened`: the interval of the change says so; `cannot-tell` else; null where like is not held against like. */
  answer: z.enum(["closed", "opened", "cannot-tell"]).nullable(),
  /** `to` came last on every day: the gap holds order and tiredness too. */
  alwaysLater: z.boolean(),
  /** Are both struck with one kind of ball? Null where a ball is not named. */
  sameBall: z.boolean().nullable(),
  /** A pitch adds to this metric in `to`: the gap is no loss or gain of the hitter alone. */
  pitchAdds: z.boolean(),
});

/** Touched balls (hit or foul) by band of pitch speed. */
export const ContactShareReport = z.strictObject({
  environment: Text,
  side: TextOrNull,
  pitchSpeed: Interval.nullable(),
  pitchSpeedAt: TextOrNull,
  touched: Share,
});

const BatAt = z.strictObject({ lengthIn: NumOrNull, weightOz: NumOrNull, label: TextOrNull });

/** A bat that is not the game bat, held against the game bat of the same days. */
export const ImplementReport = z.strictObject({
  id: Text,
  environment: TextOrNull,
  side: TextOrNull,
  bat: BatAt,
  gameBat: BatAt.extend({ id: Text }),
  /** As the table says, or from mass and length against the game bat. */
  roles: z.array(z.enum(["heavy", "light", "long", "short", "alike"])),
  /** Parts of the game bat's: 0.9 is a tenth less. */
  mass: NumOrNull,
  length: NumOrNull,
  /** Moment of inertia about 6 in from the knob as a part of the game bat's; how it is known. */
  inertia: NumOrNull,
  inertiaBy: z.enum(["swing-period", "rod"]).nullable(),
  swings: Count,
  days: Count,
  /** mph, mean over days. */
  speed: Num,
  gameSpeed: Num,
  /** Speed as a part of the game bat's on the same day. */
  ratio: Estimated,
  ratioChange: Moved.nullable(),
  /** What inertia alone lets expect, between two published powers. */
  expected: Interval.nullable(),
});

/** Attack angle in its window. */
export const PlaneReport = z.strictObject({
  ...Where,
  drill: TextOrNull,
  /** in over the ground; null for any height. */
  ballHeight: Interval.nullable(),
  window: Interval.nullable(),
  windowOf: z.enum(["drill", "athlete"]).nullable(),
  inside: Share.nullable(),
  swings: Count,
  days: Count,
  /** Degrees. */
  middle: Num,
  spread: NumOrNull,
});

/** What became of the balls. Shares of classes are of the balls whose flight was read. */
export const FlightReport = z.strictObject({
  ...Where,
  of: z.strictObject({ swings: Count, hit: Count, foul: Count, miss: Count, notKnown: Count }),
  launch: z.strictObject({ read: Count, groundBall: Count, lineDrive: Count, flyBall: Count, popUp: Count }).nullable(),
  field: z.strictObject({ read: Count, pull: Count, centre: Count, opposite: Count }).nullable(),
  /** Hit at the trainer's own speed or more. */
  firm: Share.extend({ mark: Num }).nullable(),
  zones: z.array(z.strictObject({ id: Text, label: z.union([Text, z.record(Text, Text)]), in: Share })),
});

/** Exit velocity as a part of the most that bat and pitch allow. */
export const ContactReport = z.strictObject({
  ...Where,
  ball: TextOrNull,
  q: Num,
  swings: Count,
  days: Count,
  middle: Num,
  p90: Num,
  /** Readings above the most possible: measuring errors. */
  impossible: Count,
  change: Moved.nullable(),
});

/** What a change of bat speed is worth, by the models; never measured. */
export const WorthReport = z.strictObject({
  /** The series whose change it is. */
  series: Count,
  environment: TextOrNull,
  side: TextOrNull,
  batSpeed: z.strictObject({ start: Num, change: Num, ci95: Interval }),
  q: Num,
  pitchAtPlate: Num,
  /** mph, from the ends of the interval. */
  exit: z.strictObject({ estimate: Num, range: Interval }),
  /** ft, to the nearest five; null where the flight model has no word (softball, youth). */
  carry: z
    .strictObject({
      estimate: Num,
      range: Interval,
      launch: Num,
      backspin: Num,
      airKgM3: Num,
      extrapolated: z.boolean(),
    })
    .nullable(),
});

/** Bats tried against each other. */
export const FittingReport = z.strictObject({
  date: Day,
  environment: TextOrNull,
  ball: TextOrNull,
  side: TextOrNull,
  bats: z.array(
    z.strictObject({
      id: Text,
      swings: Count,
      misses: Count,
      speed: Estimated.nullable(),
      exit: Estimated.nullable(),
      zones: z.array(z.strictObject({ id: Text, label: z.union([Text, z.record(Text, Text)]), in: Share })),
    }),
  ),
  /** `bat` less `other`, paired by round. */
  pairs: z.array(
    z.strictObject({
      metric: Text,
      unit: Text,
      decimals: Count,
      bat: Text,
      other: Text,
      rounds: Count,
      estimate: Num,
      ci95: Interval,
      p: Num,
      /** After Holm's correction for all pairs of the fitting. */
      pHolm: Num,
      differs: z.boolean(),
    }),
  ),
});

/** Swings of days with two devices whose ball was not recorded; speeds are mph, means of days. */
export const UnseenReport = z.strictObject({
  ...Where,
  /** Whether they count for bat speed here. */
  counted: z.boolean(),
  paired: Count,
  unseen: Count,
  without: NumOrNull,
  with: NumOrNull,
});

/** A machine's pitch in words that another club can set up. */
export const MachineReport = z.strictObject({
  environment: Text,
  pitchType: TextOrNull,
  ball: TextOrNull,
  swings: Count,
  days: Count,
  speed: Num,
  at: TextOrNull,
  distanceFt: NumOrNull,
  /** By drag alone; null where distance or ball kind is not known, or speed was read at the plate. */
  flightTimeS: NumOrNull,
  plateSpeed: NumOrNull,
  spinRpm: NumOrNull,
  /** Mean direction on a clock as the pitcher sees it, and how much the directions agree (0 to 1). */
  axis: z.strictObject({ hour: Count, minute: Count, agreement: Num }).nullable(),
  /** Speeds at other distances that leave as much time, both from the point where the ball is let go. */
  equalTime: z.array(z.strictObject({ distanceFt: Num, mph: Num })),
});

/** Growing beside changing. */
export const GrowthReport = z.strictObject({
  heightIn: NumOrNull,
  massLb: NumOrNull,
  /** From the first to the last entry within the season. */
  days: Count.nullable(),
  peers: z.array(
    z.strictObject({
      series: Count,
      metric: Text,
      unit: Text,
      decimals: Count,
      condition: Condition,
      change: NumOrNull,
      /** What the median of the peers gains between the athlete's ages at both ends. */
      peersGain: Num,
    }),
  ),
});

/** Swings done, measured or logged; no rate of them, and nothing about how many are right. */
export const LoadReport = z.strictObject({
  weeks: z.array(
    z.strictObject({
      /** Monday. */
      start: Day,
      swings: Count,
      byEffort: z.strictObject({ max: Count, game: Count, technical: Count, unknown: Count }),
      /** Against the game bat of the day. */
      byMass: z.strictObject({ heavier: Count, alike: Count, lighter: Count, unknown: Count }),
    }),
  ),
  /** Last day with swings at full effort, and days from it to the report's day. */
  lastMax: Day.nullable(),
  daysSinceMax: Count.nullable(),
  weeksWithWork: Count,
  weeksInSeason: Count,
});

export const HittingReport = z.strictObject({
  load: LoadReport,
  rounds: z.array(RoundsReport),
  recovery: RecoveryReport.nullable(),
  carryOver: z.array(CarryOverReport),
  contactShares: z.array(ContactShareReport),
  implements: z.array(ImplementReport),
  fittings: z.array(FittingReport),
  plane: z.array(PlaneReport),
  flight: z.array(FlightReport),
  contact: z.array(ContactReport),
  worth: WorthReport.nullable(),
  machine: z.array(MachineReport),
  unseen: z.array(UnseenReport),
  growth: GrowthReport.nullable(),
});
export type HittingReport = z.infer<typeof HittingReport>;
