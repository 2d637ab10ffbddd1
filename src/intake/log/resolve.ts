import type { LineOf, Problem } from "../../schema/season.ts";
import type { Block } from "../../schema/tables.ts";
import { calendarDay } from "../calendar-day.ts";
import { remark } from "../problem.ts";
import type { LogRow, Told } from "./log-rows.ts";

/** A block of one athlete's day, one bat of it where bats alternate. */
export interface ResolvedBlock {
  readonly athlete: string;
  readonly date: string;
  /** Midnight of the day in UTC, epoch milliseconds. */
  readonly day: number;
  readonly session: string | null;
  readonly label: string;
  readonly part: string | null;
  /** Position of the block in the day, the same for everybody whose row it is. */
  readonly order: number;
  /** Position of the athlete in a round. */
  readonly turn: number;
  /** What a rep of it inherits. */
  readonly context: ReadonlyMap<string, Told>;
  readonly rounds: number | null;
  readonly reps: number | null;
  /** `hh:mm` or `hh:mm:ss`. */
  readonly start: string | null;
  readonly end: string | null;
  readonly lane: string | null;
  readonly site: string | null;
  readonly measured: NonNullable<Block["measured"]> | null;
  /** Rows that it is made from, the athlete's own first. */
  readonly from: readonly LineOf[];
}

/** Swings that a block expects. One round where only reps are written; null where the log does not say. */
export const expectedSwings = ({ rounds, reps }: Pick<ResolvedBlock, "rounds" | "reps">): number | null =>
  reps === null ? null : (rounds ?? 1) * reps;

interface Draft {
  readonly athlete: string;
  readonly rows: LogRow[];
  readonly order: number;
  readonly turn: number;
}

/**
 * Every athlete's blocks: the group's row for every member that is present, the athlete's own row over it, cell by cell.
 * An own row belongs to the group's row of the same date, session, block and part; a session or part that it leaves blank fits
 * any. Blocks of no rounds or no reps did not take place.
 *
 * @param present whether a member of a group trained on that day
 * @returns blocks in order of day, then of the log, then of turns
 */
export function resolveLog(
  rows: readonly LogRow[],
  present: (athlete: string, date: string) => boolean,
  drills: ReadonlyMap<string, string | undefined>,
): { blocks: ResolvedBlock[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const blocks: ResolvedBlock[] = [];
  const days = new Map<string, LogRow[]>();
  for (const row of rows) days.set(row.block.date, [...(days.get(row.block.date) ?? []), row]);
  for (const [date, ofDay] of [...days].sort(([one], [other]) => (one < other ? -1 : 1))) {
    const drafts = draftsOf(ofDay, (athlete) => present(athlete, date), problems);
    const made = drafts.map((draft) => resolved(draft, date, drills, problems));
    blocks.push(...made.filter(({ rounds, reps }) => rounds !== 0 && reps !== 0));
  }
  return { blocks, problems: distinct(problems) };
}

const same = (one: string | undefined, other: string | undefined): boolean => one === undefined || one === other;

function draftsOf(rows: readonly LogRow[], present: (athlete: string) => boolean, problems: Problem[]): Draft[] {
  const orders = new Map<string, number>();
  const orderOf = ({ block, label }: LogRow): number => {
    const key = JSON.stringify([block.session ?? null, label]);
    const order = orders.get(key) ?? orders.size;
    orders.set(key, order);
    return order;
  };
  const drafts: Draft[] = [];
  const add = (athlete: string, row: LogRow, turn: number): void => {
    const order = orderOf(row);
    const other = drafts.find(
      (draft) => draft.athlete === athlete && draft.order === order && draft.rows[0]?.block.part === row.block.part,
    )?.rows[0];
    if (other === undefined) drafts.push({ athlete, rows: [row], order, turn });
    else
      problems.push(
        remark("repeated-block", { ...row.at, column: null }, { block: row.label, other: place(other.at) }),
      );
  };
  for (const row of rows) orderOf(row);
  for (const row of rows)
    if ("members" in row.owner)
      for (const [turn, id] of row.owner.members.entries()) if (present(id)) add(id, row, turn);
  const groups = drafts.map((draft) => draft);
  for (const row of rows) {
    if ("members" in row.owner) continue;
    const { athlete } = row.owner;
    const over = groups.filter(
      (draft) =>
        draft.athlete === athlete &&
        draft.rows.some(
          ({ label, block }) =>
            label === row.label && same(row.block.session, block.session) && same(row.block.part, block.part),
        ),
    );
    for (const draft of over) draft.rows.unshift(row);
    // Without a group's row the order of the rows is the order of turns.
    if (over.length === 0) add(athlete, row, rows.indexOf(row));
  }
  return drafts.sort((one, other) => one.order - other.order || one.turn - other.turn);
}

const place = ({ file, line }: LineOf): string => `${file}:${line}`;

function resolved(
  { athlete, rows, order, turn }: Draft,
  date: string,
  drills: ReadonlyMap<string, string | undefined>,
  problems: Problem[],
): ResolvedBlock {
  const first = <K extends keyof Block>(key: K): NonNullable<Block[K]> | null => {
    const row = rows.find(({ block }) => block[key] !== undefined);
    return (row?.block[key] ?? null) as NonNullable<Block[K]> | null;
  };
  const context = new Map<string, Told>();
  const fill = (told: ReadonlyMap<string, Told>, said: boolean): void => {
    for (const [field, value] of told) {
      const over = context.get(field);
      if (over === undefined) context.set(field, value);
      else if (said && over.value !== value.value) problems.push(disagreement(field, over, value, rows));
    }
  };
  // An athlete's row is written to differ from the group's; a feed or a drill is not.
  for (const { own } of rows) fill(own, false);
  const fed = rows.find(({ block }) => block.feed !== undefined);
  if (fed) fill(fed.feed, true);
  const drill = context.get("drill");
  const environment = drills.get(String(drill?.value));
  if (drill && environment !== undefined) fill(new Map([["environment", { value: environment, at: drill.at }]]), true);
  return {
    athlete,
    date,
    day: calendarDay(date) ?? Number.NaN,
    session: first("session"),
    label: rows[0]?.label ?? "",
    part: rows.at(-1)?.block.part ?? null,
    order,
    turn,
    context,
    rounds: first("rounds"),
    reps: first("reps"),
    start: first("start"),
    end: first("end"),
    lane: first("lane"),
    site: first("site"),
    measured: first("measured"),
    from: rows.map(({ at }) => at),
  };
}

/** A feed's ball that is not the row's, a drill's environment that is not the row's. */
function disagreement(field: string, over: Told, under: Told, rows: readonly LogRow[]): Problem {
  const drill = rows.find(({ block }) => block.drill !== undefined)?.block.drill ?? "";
  const feed = rows.find(({ block }) => block.feed !== undefined)?.block.feed ?? "";
  const other = field === "environment" ? `the drill ${drill}` : `the feed ${feed}`;
  const args = { field, value: over.value, found: under.value, other, rows: 0 };
  return remark("contradiction", { ...over.at, column: null }, args);
}

/** A group's row speaks for several athletes and is wrong once. */
function distinct(problems: readonly Problem[]): Problem[] {
  const told = new Set<string>();
  return problems.filter((problem) => {
    const text = JSON.stringify(problem);
    return !told.has(text) && told.add(text);
  });
}
