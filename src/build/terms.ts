import type { LedgerFile } from "../publish/balance.ts";
import type { Link } from "../publish/links.ts";
import type { Runner } from "../publish/lock.ts";
import type { PrintPdfs } from "../publish/pdf.ts";
import type { Effects } from "../schema/effects.ts";
import type { Reader } from "../schema/reasons.ts";
import type { Problem } from "../schema/season.ts";

/** Folders of a build, all absolute. */
export interface Paths {
  readonly content: string;
  readonly data: string;
  readonly out: string;
  /** Null for a preview: then only the pages are written. */
  readonly desk: string | null;
  /** `.winterbook/`: the secret. */
  readonly state: string;
  /** Where lock and journal lie. A preview has a place of its own, so that it never waits for a build. */
  readonly hold: string;
}

export interface Options {
  /** Calendar day that sets ages, consents and the end of links; without it the season says. */
  readonly asOf?: string | undefined;
  /** Day against which it is held how long data is kept; without it the day of the reports. */
  readonly today?: string;
  /** Families are shown a short note in place of the report. */
  readonly interim?: boolean;
  /** English words for a problem, for the desk. */
  readonly say: (problem: Problem) => { readonly problem: string; readonly remedy: string };
}

/** The outside world, and the command that asks. */
export interface BuildEffects extends Effects {
  readonly runner: Runner;
  /** Prints pages; without it no PDF is made, and none stays from an earlier build. */
  readonly print?: PrintPdfs;
}

/** For each reader null when the report may be published, else the reason why not. */
export type Withheld = Readonly<Record<Reader, string | null>>;

/** What a command may print of a season. */
export interface Assessed {
  readonly asOf: string;
  /** Athletes with a report, in order of id. */
  readonly athletes: readonly { readonly id: string; readonly name: string; readonly withheld: Withheld }[];
  /** Athletes missing from what is published because of some input. */
  readonly missing: readonly string[];
  readonly ledger: LedgerFile;
  readonly problems: readonly Problem[];
}

/** What a command may print of a build. */
export interface Built extends Assessed {
  readonly links: readonly Link[];
  /** HTML pages of the public site. */
  readonly pages: number;
}
