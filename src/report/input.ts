import type { SetAsideReason } from "../schema/reasons.ts";
import type { AthleteSeason, Season } from "../schema/season.ts";
import type { Bridge } from "./bridges.ts";
import type { GroupFact } from "./group-facts.ts";

/** What the season knows besides the athletes and the state of the files. */
export type Surroundings = Omit<
  Season,
  "athletes" | "setAside" | "corrections" | "pairings" | "problems" | "swingFiles" | "leftOut"
>;

/** All that one athlete's report is made from: plain JSON, so that it can cross to another thread. */
export interface ReportInput {
  readonly season: Surroundings & {
    /** What the devices of the season read above each other (`seasonBridges`); without it the athlete's own swings decide. */
    readonly bridges?: readonly Bridge[];
    /** What all athletes tell of each measure (`groupFacts`); without it this athlete alone does. */
    readonly group?: readonly GroupFact[];
  };
  readonly athlete: AthleteSeason;
  /** The athlete's rows that intake set aside, by reason. */
  readonly setAside: Readonly<Partial<Record<SetAsideReason, number>>>;
  /** Calendar day that sets ages and consents. */
  readonly asOf: string;
  /** Names of `Season.swingFiles`, in their order; without them flags name no file. */
  readonly fileNames?: readonly string[];
}
