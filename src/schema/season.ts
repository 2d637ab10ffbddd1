import type { z } from "zod";
import type { Facility } from "./facility.ts";
import type { Metric, MetricsFile } from "./metric.ts";
import type { Assessment, Closing, Drill, Note, Plan } from "./pages.ts";
import type { PairedSession } from "./pairing.ts";
import type { Profile } from "./profile.ts";
import type { NotCountedReason, SetAsideReason } from "./reasons.ts";
import type { Ball, Block, Device, Feed, Implement } from "./tables.ts";

/** A place in a file the trainer keeps. `file` is relative to the season folder, with forward slashes. */
export interface Place {
  readonly file: string;
  /** Line where the record or key starts, from 1; null when the whole file is meant. */
  readonly line: number | null;
  /** For Markdown and JSON the character, for CSV the number of the field; from 1. */
  readonly column: number | null;
}

/**
 * Something the trainer should know about a file. `code` never changes its name; words are made from `code` and
 * `args` in one place, at the command line.
 *
 * `error`: this input cannot be used (exit status 1). `row`: a row was set aside (status 0). `note`: it works, and costs something.
 */
export interface Problem {
  readonly code: string;
  readonly level: "error" | "row" | "note";
  readonly at: Place;
  readonly args: Readonly<Record<string, string | number>>;
  /** The athlete whom this keeps from being published, if it does. */
  readonly athlete: string | null;
}

/** A row of a swing file that was set aside or not counted. */
export interface LedgerRow {
  readonly file: string;
  readonly line: number;
  /** Number of the field from 1, or null when the row as a whole is meant. */
  readonly column: number | null;
  readonly field: string | null;
  readonly value: string | null;
  readonly reason: SetAsideReason | NotCountedReason;
  readonly athlete: string | null;
}

/**
 * An athlete's readable reps as columns of equal length `n`, in the order of file name and line. Plain JSON, canonical units.
 * Every column of the canonical table that the athlete's files hold, plus own metrics; a missing cell is null.
 */
export interface RepTable {
  readonly n: number;
  /** Calendar day `yyyy-mm-dd`. */
  readonly date: readonly string[];
  /** The same day as epoch milliseconds of its midnight in UTC. */
  readonly day: readonly number[];
  /** Index into `Season.swingFiles`. */
  readonly file: readonly number[];
  readonly line: readonly number[];
  /** The other device's row of the same swing, where two rows became one rep; null elsewhere. */
  readonly partner: readonly (RowPlace | null)[];
  /** Field without unit (`bat_speed`, `pitch_speed`, `round`, own metrics …) -> values in canonical units. */
  readonly numbers: Readonly<Record<string, readonly (number | null)[]>>;
  /**
   * Field (`environment`, `implement`, `time`, `comment` …) -> words. Besides the canonical table's there may be `assigned`:
   * how the rep found its block (`number`, `time`, `count`), null where the rep told its own context; and `pairing`: how it stands on a day with
   * two devices (`Pairing`).
   */
  readonly words: Readonly<Record<string, readonly (string | null)[]>>;
}

/** A row of a swing file: index into `Season.swingFiles`, and line. */
export interface RowPlace {
  readonly file: number;
  readonly line: number;
}

/** Where a line of a small table stands. */
export interface LineOf {
  readonly file: string;
  readonly line: number;
}

/** Whom a row of `data/reference` is about, and how they were measured. A blank cell is null. */
interface ReferenceAbout {
  readonly metric: string;
  readonly pointOnBat: string | null;
  readonly environment: string | null;
  readonly implement: string | null;
  readonly sport: string;
  readonly sex: string;
  readonly level: string | null;
  /** Years, both ends included; null for an open end. A row names a level, an end, or both. */
  readonly ages: readonly [number | null, number | null];
  /** Athletes behind it; one for a value. */
  readonly n: number | null;
  /** The file's name stands for the source of values that name none. */
  readonly source: string;
  readonly year: number | null;
  readonly at: LineOf;
}

/** A row of `data/reference`. Everything but L, S and n in the metric's canonical unit; m, s and sd above 0. */
export type Reference = ReferenceAbout &
  (
    | { readonly kind: "value"; readonly value: number }
    | { readonly kind: "lms"; readonly l: number; readonly m: number; readonly s: number }
    | { readonly kind: "mean-sd"; readonly mean: number; readonly sd: number }
    | { readonly kind: "line"; readonly value: number }
  );

/** A correction of `data/corrections.csv` that found its rows, and what it did. */
export interface AppliedCorrection {
  readonly at: LineOf;
  readonly by: string;
  readonly on: string;
  readonly reason: string;
  readonly action: "set" | "reassign" | "void";
  /** Field without unit; null where the whole row is meant. */
  readonly field: string | null;
  /** As written in the correction. */
  readonly from: string | null;
  readonly to: string | null;
  /** Rows in order of file and line; `athlete` had the row before, `now` has it after. Null: nobody known. */
  readonly rows: readonly (LineOf & { readonly athlete: string | null; readonly now: string | null })[];
  /** The later correction that says otherwise about some of these rows, and is followed there. */
  readonly overruledBy: LineOf | null;
}

/** How a rep found its block: by the block's number, by its time, or by counting in order. */
export type AssignedBy = "number" | "time" | "count";

/** One block of the session log as it stands for one athlete: the group's row with the athlete's own cells over it. */
export interface LoggedBlock {
  readonly date: string;
  readonly session: string | null;
  readonly block: string;
  /** Bat inside the round; null where the block has one. */
  readonly part: string | null;
  /** What a rep of it inherits: field -> value in canonical units. */
  readonly context: Readonly<Record<string, string | number>>;
  readonly rounds: number | null;
  /** Swings a round. */
  readonly reps: number | null;
  /** Swings that it expects; null when the log does not say. */
  readonly swings: number | null;
  readonly measured: "speed" | "flight" | "both" | "none" | null;
  /** Reps that were given to it, and how. */
  readonly assigned: Readonly<Partial<Record<AssignedBy, number>>>;
  /** Rows of the log that it is made from, the athlete's own first. */
  readonly from: readonly LineOf[];
}

/** A Markdown page: checked front matter and the text below it. */
export interface Page<Front> {
  readonly file: string;
  readonly front: Front;
  readonly body: string;
  /** Line of the file on which the body starts, from 1. */
  readonly bodyLine: number;
}

export type NotePage = Page<z.infer<typeof Note>> & {
  /** Pictures that lie beside the note: name -> path relative to the season folder. */
  readonly images: Readonly<Record<string, string>>;
};
export type ClosingPage = Page<z.infer<typeof Closing>> & { readonly language: string | null };

/** A result of `data/tests`: a jump, a grip, a throw; its attempts are of one day. */
export interface TestResult {
  readonly date: string;
  readonly metric: string;
  readonly side: "left" | "right" | null;
  /** In the metric's canonical unit. */
  readonly value: number;
  /** With its unit, as written; results with other loads or protocols are other series. */
  readonly load: string | null;
  readonly protocol: string | null;
  readonly at: LineOf;
}

/** Everything known of one athlete. Plain JSON. */
export interface AthleteSeason {
  readonly id: string;
  readonly profile: Profile;
  readonly notes: readonly NotePage[];
  readonly closings: readonly ClosingPage[];
  readonly assessment: Page<z.infer<typeof Assessment>> | null;
  readonly plan: Page<z.infer<typeof Plan>> | null;
  readonly reps: RepTable;
  /** Blocks of the session log in order of day and log; none without a log. */
  readonly log: readonly LoggedBlock[];
  /** In order of file and line. */
  readonly tests: readonly TestResult[];
}

/** What intake makes of `content/` and `data/`. Plain JSON. */
export interface Season {
  readonly facility: Facility;
  readonly metrics: readonly Metric[];
  readonly zones: NonNullable<MetricsFile["zones"]>;
  readonly drills: readonly Drill[];
  readonly implements: readonly Implement[];
  readonly balls: readonly Ball[];
  readonly feeds: readonly Feed[];
  readonly devices: readonly Device[];
  readonly blocks: readonly Block[];
  /** Values of other athletes and published tables, in order of file and line. */
  readonly reference: readonly Reference[];
  /** In order of id. An athlete whose own files cannot be used is not here but in `leftOut`. */
  readonly athletes: readonly AthleteSeason[];
  readonly leftOut: readonly string[];
  /** Swing files in order of name, with the number of data rows in each. */
  readonly swingFiles: readonly { readonly file: string; readonly rows: number }[];
  readonly setAside: readonly LedgerRow[];
  /** In the order in which they were applied. */
  readonly corrections: readonly AppliedCorrection[];
  /** Days on which two devices saw one athlete, in order of day. */
  readonly pairings: readonly PairedSession[];
  readonly problems: readonly Problem[];
}

/** Rows of a file, an athlete or the season: read = counted + not counted + set aside. */
export interface LedgerCounts {
  readonly read: number;
  readonly counted: number;
  readonly notCounted: Readonly<Partial<Record<NotCountedReason, number>>>;
  readonly setAside: Readonly<Partial<Record<SetAsideReason, number>>>;
}
