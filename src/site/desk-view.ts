import type { AthleteReport } from "../report/schema.ts";
import type { PairedSession } from "../schema/pairing.ts";
import type { Reader } from "../schema/reasons.ts";
import type { LedgerCounts, LedgerRow, Problem } from "../schema/season.ts";
import { type PairedAthlete, pairedAthletes } from "./pair-view.ts";

export interface DeskLink {
  readonly reader: Reader;
  readonly recipient: string;
  /** Relative from the desk's folder. */
  readonly href: string;
  /** Where it lies once it is published; null where nobody has said where the site is. */
  readonly address: string | null;
  /** Null for a live link, else why it leads nowhere. */
  readonly withheld: string | null;
  /** Last day on which it is meant to open. */
  readonly until: string | null;
  readonly sealed: boolean;
  /** Does it ask for words besides its key? */
  readonly asks: boolean;
}

export interface DeskInput {
  readonly facility: AthleteReport["facility"];
  readonly asOf: string;
  readonly athletes: readonly { readonly report: AthleteReport; readonly links: readonly DeskLink[] }[];
  /** Ids of athletes whose own files could not be used. */
  readonly leftOut: readonly string[];
  readonly ledger: {
    readonly total: LedgerCounts;
    readonly files: readonly (LedgerCounts & { readonly file: string })[];
  };
  /** Rows that were not counted or were set aside. */
  readonly rows: readonly LedgerRow[];
  /** Days on which two devices saw one athlete. */
  readonly pairings: readonly PairedSession[];
  readonly problems: readonly {
    readonly code: string;
    readonly place: string;
    readonly problem: string;
    readonly remedy: string;
    readonly level: Problem["level"];
  }[];
}

/** Rows of a file or of all, as the desk's table has them. */
export interface Balance {
  readonly read: number;
  readonly counted: number;
  readonly notCounted: number;
  readonly setAside: number;
}

/** What the desk shows; figures on it are read from here. */
export interface DeskView extends Omit<DeskInput, "ledger" | "rows" | "problems" | "pairings"> {
  readonly paired: readonly PairedAthlete[];
  /** What asks something of the trainer: errors first, then notes. */
  readonly problems: DeskInput["problems"];
  /** Rows that were set aside, in the order of the files. */
  readonly rowProblems: DeskInput["problems"];
  readonly rowProblemCount: number;
  /** Values that were counted and lie far from the athlete's own. */
  readonly farValues: DeskInput["problems"];
  readonly farValueCount: number;
  readonly total: Balance;
  readonly files: readonly (Balance & { readonly file: string })[];
  readonly balances: readonly Balance[];
  /** Rows left out, by reason in the order of most rows, with the first few of each. */
  readonly reasons: readonly {
    readonly reason: LedgerRow["reason"];
    readonly count: number;
    readonly first: readonly LedgerRow[];
  }[];
}

/** Rows shown for a reason; the ledger's file has them all. */
const SHOWN = 8;
/** A season read for the first time may have thousands. */
const ROW_PROBLEMS_SHOWN = 200;

/** Code of a note that may come up for dozens of rows; such notes are folded away. */
const FAR_VALUE = "far-from-own-swings";

const sum = (counts: Readonly<Partial<Record<string, number>>>): number =>
  Object.values(counts).reduce<number>((total, count) => total + (count ?? 0), 0);

const balance = ({ read, counted, notCounted, setAside }: LedgerCounts): Balance => ({
  read,
  counted,
  notCounted: sum(notCounted),
  setAside: sum(setAside),
});

/** Orders what the build hands over the way a trainer reads it. */
export function deskView({ ledger, rows, problems, pairings, ...rest }: DeskInput): DeskView {
  const rowProblems = problems.filter(({ level }) => level === "row");
  const farValues = problems.filter(({ code }) => code === FAR_VALUE);
  const byReason = groupByReason(rows);
  const reasons = [...byReason].map(([reason, of]) => ({ reason, count: of.length, first: of.slice(0, SHOWN) }));
  reasons.sort((a, b) => b.count - a.count || (a.reason < b.reason ? -1 : 1));
  const names = rest.athletes.map(({ report }) => ({ id: report.athlete.id, name: report.athlete.displayName }));
  return {
    ...rest,
    paired: pairedAthletes(pairings, names),
    problems: [
      ...problems.filter(({ level }) => level === "error"),
      ...problems.filter(({ level, code }) => level === "note" && code !== FAR_VALUE),
    ],
    rowProblems: rowProblems.slice(0, ROW_PROBLEMS_SHOWN),
    rowProblemCount: rowProblems.length,
    farValues: farValues.slice(0, ROW_PROBLEMS_SHOWN),
    farValueCount: farValues.length,
    total: balance(ledger.total),
    files: ledger.files.map((file) => ({ file: file.file, ...balance(file) })),
    balances: rest.athletes.map(({ report }) => balance(report.ledger)),
    reasons,
  };
}

function groupByReason(rows: readonly LedgerRow[]): Map<LedgerRow["reason"], LedgerRow[]> {
  const groups = new Map<LedgerRow["reason"], LedgerRow[]>();
  for (const row of rows) {
    const group = groups.get(row.reason);
    if (group) group.push(row);
    else groups.set(row.reason, [row]);
  }
  return groups;
}
