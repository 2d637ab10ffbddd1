import type { z } from "zod";
import type { Facility } from "./facility.ts";
import type { Metric, MetricsFile } from "./metric.ts";
import type { Assessment, Closing, Drill, Note, Plan } from "./pages.ts";
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
  /** Field without unit (`bat_speed`, `pitch_speed`, `round`, own metrics …) -> values in canonical units. */
  readonly numbers: Readonly<Record<string, readonly (number | null)[]>>;
  /** Field (`environment`, `implement`, `time`, `comment` …) -> words. */
  readonly words: Readonly<Record<string, readonly (string | null)[]>>;
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

/** Everything known of one athlete. Plain JSON. */
export interface AthleteSeason {
  readonly id: string;
  readonly profile: Profile;
  readonly notes: readonly NotePage[];
  readonly closings: readonly ClosingPage[];
  readonly assessment: Page<z.infer<typeof Assessment>> | null;
  readonly plan: Page<z.infer<typeof Plan>> | null;
  readonly reps: RepTable;
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
  /** In order of id. An athlete whose own files cannot be used is not here but in `leftOut`. */
  readonly athletes: readonly AthleteSeason[];
  readonly leftOut: readonly string[];
  /** Swing files in order of name, with the number of data rows in each. */
  readonly swingFiles: readonly { readonly file: string; readonly rows: number }[];
  readonly setAside: readonly LedgerRow[];
  readonly problems: readonly Problem[];
}

/** Rows of a file, an athlete or the season: read = counted + not counted + set aside. */
export interface LedgerCounts {
  readonly read: number;
  readonly counted: number;
  readonly notCounted: Readonly<Partial<Record<NotCountedReason, number>>>;
  readonly setAside: Readonly<Partial<Record<SetAsideReason, number>>>;
}
