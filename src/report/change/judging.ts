import type { Facility } from "../../schema/facility.ts";
import type { Interval } from "../../stats/interval.ts";
import type { GroupFact } from "../group-facts.ts";
import type { LineContext } from "../line.ts";
import type { Series } from "../schema.ts";
import type { Group } from "./group-of.ts";

/** What a series is judged with besides its sessions. */
export interface Judging {
  readonly season: Facility["season"];
  readonly lines: LineContext;
  /** Of this measure; absent for one that no group stands behind. */
  readonly fact: GroupFact | undefined;
  /** Others of the same kind. */
  readonly group: Group | null;
  readonly worth: Series["worth"];
  /** For a window measure, where better lies. */
  readonly window: Interval | null;
}

/** What is told of a measure's change. */
export type Told = Pick<Series, "change" | "sessionsNeeded" | "notes" | "says">;
