import type { SetAsideReason } from "../schema/reasons.ts";
import type { AthleteSeason, Season } from "../schema/season.ts";

/** What the season knows besides the athletes and the state of the files. */
export type Surroundings = Omit<Season, "athletes" | "setAside" | "problems" | "swingFiles" | "leftOut">;

/** All that one athlete's report is made from: plain JSON, so that it can cross to another thread. */
export interface ReportInput {
  readonly season: Surroundings;
  readonly athlete: AthleteSeason;
  /** The athlete's rows that intake set aside, by reason. */
  readonly setAside: Readonly<Partial<Record<SetAsideReason, number>>>;
  /** Calendar day that sets ages and consents. */
  readonly asOf: string;
}
