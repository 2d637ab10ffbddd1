/** Speed of the athlete's own game bat on the season's first and last day, mph. */
type FromTo = readonly [number, number];

/** A sudden change in true bat speed: so many mph from a day on, given back at so many mph a week. */
interface Step {
  from: string;
  mph: number;
  regainPerWeek: number;
}

/** One invented hitter's season in numbers; the words stand in `texts/`. */
export interface Story {
  id: string;
  /** How the tablet of the test days writes this athlete; also stands in the profile. */
  alias: string;
  /** Folder of the exports. */
  group: "diamond" | "fastpitch" | "grown";
  site: string;
  lane: string;
  deviceBat: string;
  deviceBall: string;
  /** Hour at which a session starts. */
  hour: number;
  /** 1 is Monday. */
  weekdays: readonly number[];
  /** Share of planned days that do not happen. */
  missed: number;
  /** Only these days, whatever the week says. */
  onlyDays?: readonly string[];
  away?: readonly (readonly [string, string])[];
  gameBat: readonly { id: string; from: string }[];
  heavy?: string;
  /** From this day on the heavy bat rests. */
  heavyUntil?: string;
  light?: string;
  short?: string;
  long?: string;
  balls: { live: string; machine: string; soft: string };
  feed: string;
  bend?: string;
  /** First day on which the machine is used. */
  machineFrom?: string;
  speed: { tee: FromTo; toss: FromTo; machine: FromTo };
  steps?: readonly Step[];
  /** The left side's own speeds; makes a switch hitter. */
  leftSpeed?: { tee: FromTo; toss: FromTo; machine: FromTo };
  side: "left" | "right";
  /** Degrees at contact off the machine, first and last day. */
  attack: FromTo;
  /** Seconds on the first and last day. */
  swingTime: FromTo;
  /** Added to the ball's collision efficiency for each game bat from the second on: a livelier barrel. */
  newBatQ?: number;
  /** mph lost with each rep of a round after the third. */
  fade: number;
  daySd: number;
  repSd: number;
  /** Share of machine swings that miss, and that are fouled. */
  miss: number;
  foul: number;
  reps: { tee: number; toss: number; machine: number; round: number };
  slaps?: boolean;
  bunts?: boolean;
  tests: boolean;
}
