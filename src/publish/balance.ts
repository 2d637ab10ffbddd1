import {
  NOT_COUNTED_REASONS,
  type NotCountedReason,
  SET_ASIDE_REASONS,
  type SetAsideReason,
} from "../schema/reasons.ts";
import type { LedgerCounts, LedgerRow, RepTable } from "../schema/season.ts";
import type { Reassigned } from "./reassigned.ts";

/** What `report` said of one athlete's readable rows: entry i is row i of the athlete's table. */
export interface Judged {
  readonly athlete: string;
  /** Where each rep stands; one of two rows counts as two rows. */
  readonly reps: Pick<RepTable, "file" | "partner">;
  /** Null for a counted row. */
  readonly judged: readonly (NotCountedReason | null)[];
}

/** `_desk/ledger.json`. */
export interface LedgerFile {
  readonly total: LedgerCounts;
  readonly files: readonly (LedgerCounts & { readonly file: string })[];
  /** `reassigned`: rows that corrections moved to or from the athlete, for information; they balance where they are now. */
  readonly athletes: readonly (LedgerCounts & { readonly id: string; readonly reassigned?: Reassigned })[];
  /** Rows that name no athlete of the season. */
  readonly unassigned: LedgerCounts;
}

/** Rows went missing or came twice: nothing may be published. */
export class Unbalanced extends Error {
  constructor(what: string, read: number, accounted: number) {
    super(`${what}: ${read} rows read, ${accounted} accounted for`);
    this.name = "Unbalanced";
  }
}

class Account {
  read = 0;
  counted = 0;
  readonly notCounted = new Map<string, number>();
  readonly setAside = new Map<string, number>();

  judge(reason: NotCountedReason | null): void {
    if (reason === null) this.counted++;
    else this.notCounted.set(reason, (this.notCounted.get(reason) ?? 0) + 1);
  }

  putAside(reason: string): void {
    this.setAside.set(reason, (this.setAside.get(reason) ?? 0) + 1);
  }

  get accounted(): number {
    const sum = (counts: Map<string, number>) => [...counts.values()].reduce((a, b) => a + b, 0);
    return this.counted + sum(this.notCounted) + sum(this.setAside);
  }

  /** Reasons in the order of the closed lists, those without rows left out. */
  counts(): LedgerCounts {
    const listed = <R extends string>(reasons: readonly R[], counts: Map<string, number>) =>
      Object.fromEntries(reasons.flatMap((r) => (counts.has(r) ? [[r, counts.get(r)]] : []))) as Partial<
        Record<R, number>
      >;
    return {
      read: this.read,
      counted: this.counted,
      notCounted: listed<NotCountedReason>(NOT_COUNTED_REASONS, this.notCounted),
      setAside: listed<SetAsideReason>(SET_ASIDE_REASONS, this.setAside),
    };
  }
}

const isSetAside = (reason: string): reason is SetAsideReason =>
  (SET_ASIDE_REASONS as readonly string[]).includes(reason);

/**
 * Holds every CSV row against what became of it: read = counted + not counted + set aside, in each file, for each athlete
 * and in total. Files are counted when they are read, rows when they are judged or set aside: the two ways must meet.
 *
 * @param files    swing files with the rows that were read from each
 * @param setAside rows set aside; each row stands there once
 * @param judged   one entry per athlete
 * @param moved    rows that corrections moved, by athlete
 * @throws {Unbalanced} they do not meet
 */
export function balance(
  files: readonly { readonly file: string; readonly rows: number }[],
  setAside: readonly LedgerRow[],
  judged: readonly Judged[],
  moved: ReadonlyMap<string, Reassigned> = new Map(),
): LedgerFile {
  const byFile = new Map(files.map(({ file }) => [file, new Account()]));
  const byAthlete = new Map(judged.map(({ athlete }) => [athlete, new Account()]));
  const unassigned = new Account();
  const total = new Account();
  const fileAccount = (file: string | undefined) => {
    const account = byFile.get(file ?? "");
    if (!account) throw new Unbalanced(`a row of ${file ?? "no file"}, which was not read`, 0, 1);
    return account;
  };

  for (const { athlete, reps, judged: reasons } of judged) {
    const { file, partner } = reps;
    if (file.length !== reasons.length) throw new Unbalanced(athlete, file.length, reasons.length);
    const own = byAthlete.get(athlete)!;
    reasons.forEach((reason, i) => {
      for (const index of [file[i]!, partner[i]?.file ?? null]) {
        if (index === null) continue;
        own.read++;
        for (const account of [own, total, fileAccount(files[index]?.file)]) account.judge(reason);
      }
    });
  }
  const seen = new Set<string>();
  for (const { file, line, athlete, reason } of setAside) {
    if (!isSetAside(reason))
      throw new Unbalanced(`${file}:${line} is set aside as "${reason}", which is no such reason`, 1, 0);
    if (seen.has(`${file}:${line}`)) throw new Unbalanced(`${file}:${line} is set aside twice`, 1, 2);
    seen.add(`${file}:${line}`);
    const own = (athlete === null ? undefined : byAthlete.get(athlete)) ?? unassigned;
    own.read++;
    for (const account of [own, total, fileAccount(file)]) account.putAside(reason);
  }
  for (const { file, rows } of files) {
    const account = byFile.get(file)!;
    account.read = rows;
    total.read += rows;
    if (account.accounted !== rows) throw new Unbalanced(file, rows, account.accounted);
  }
  if (total.accounted !== total.read) throw new Unbalanced("the season", total.read, total.accounted);
  return {
    total: total.counts(),
    files: files.map(({ file }) => ({ file, ...byFile.get(file)!.counts() })),
    athletes: judged.map(({ athlete }) => {
      const reassigned = moved.get(athlete);
      return { id: athlete, ...byAthlete.get(athlete)!.counts(), ...(reassigned && { reassigned }) };
    }),
    unassigned: unassigned.counts(),
  };
}
