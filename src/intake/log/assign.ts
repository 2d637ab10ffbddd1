import type { AssignedBy, LoggedBlock, Problem } from "../../schema/season.ts";
import { cellOf, writeCell } from "../corrections/cell-value.ts";
import { remark } from "../problem.ts";
import type { RowAt, RowFates } from "../row-fates.ts";
import type { SwingFields } from "../swing-fields.ts";
import { byNumber, mayHold } from "./by-number.ts";
import { Contradictions, inherit, type SameName } from "./inherit.ts";
import { type Laid, layOut, type Swing } from "./lay.ts";
import { expectedSwings, type ResolvedBlock } from "./resolve.ts";
import { repNumbers } from "./rounds.ts";
import { type Sides, type Stream, streams } from "./streams.ts";
import { unassignedArgs } from "./unassigned.ts";

export interface AssignSetup {
  readonly fields: SwingFields;
  readonly athletes: readonly string[];
  readonly sides: Sides;
  readonly same: SameName;
  /** Side that an athlete always stands on; null for one who changes, or where nobody knows. */
  sideOf(athlete: string): "left" | "right" | null;
}

/** Gives rows their blocks, and blocks' words to their rows. What belongs to no block, or to one of several, is set aside. */
export function assignBlocks(
  fates: RowFates,
  blocks: readonly ResolvedBlock[],
  setup: AssignSetup,
): { assigned: LoggedBlock["assigned"][]; problems: Problem[] } {
  const assigning = new Assigning(fates, blocks, setup);
  const days = new Set(blocks.map(({ day }) => day));
  for (const stream of streams(fates, days, setup.sides)) assigning.stream(stream);
  return assigning.done();
}

class Assigning {
  readonly #fates: RowFates;
  readonly #blocks: readonly ResolvedBlock[];
  readonly #setup: AssignSetup;
  readonly #contradictions = new Contradictions();
  readonly #counts: Map<AssignedBy, number>[];
  readonly #notes: Problem[] = [];

  constructor(fates: RowFates, blocks: readonly ResolvedBlock[], setup: AssignSetup) {
    this.#fates = fates;
    this.#blocks = blocks;
    this.#setup = setup;
    this.#counts = blocks.map(() => new Map());
  }

  done(): { assigned: LoggedBlock["assigned"][]; problems: Problem[] } {
    const assigned = this.#counts.map((counts) => Object.fromEntries(counts) as LoggedBlock["assigned"]);
    return { assigned, problems: [...this.#notes, ...this.#contradictions.problems()] };
  }

  #word({ table, row }: RowAt, field: string): string | null {
    return this.#fates.files[table]?.table.words.get(field)?.[row] ?? null;
  }

  stream(stream: Stream): void {
    const athlete = this.#setup.athletes[stream.athlete] ?? null;
    const possible = this.#blocks.flatMap((block, index) => (mayHold(stream, athlete, block) ? [index] : []));
    const groups = byNumber(stream.rows, (at) => this.#word(at, "block"));
    const taken = new Set(groups.keys());
    for (const [number, rows] of groups) {
      const open = possible.filter((index) => {
        const label = this.#blocks[index]?.label ?? "";
        return number === null ? !taken.has(label) : label === number;
      });
      if (open.length > 0) this.#group(rows, open, number !== null, athlete === null);
      else this.#homeless(rows, number, athlete, possible.length > 0);
    }
  }

  /** Rows for which the log has no block. They stand as they are where they know their athlete and the log is not about them. */
  #homeless(rows: readonly RowAt[], number: string | null, athlete: string | null, logged: boolean): void {
    for (const at of rows) {
      const told = this.#word(at, "environment") !== null || this.#word(at, "drill") !== null;
      if (athlete !== null && (told || !logged)) continue;
      const args = number === null ? { detail: "no-log" } : { detail: "no-block", block: `block ${number}` };
      this.#fates.putAside(at, "unassigned-block", args);
    }
  }

  #group(rows: readonly RowAt[], open: readonly number[], numbered: boolean, nameless: boolean): void {
    const blocks = open.flatMap((index) => this.#blocks[index] ?? []);
    const { laid, found } = layOut(
      rows.map((at) => this.#swing(at)),
      blocks,
      numbered,
    );
    const places = laid.map((one) => ("slot" in one ? { slot: one.slot, round: one.round } : null));
    const reps = repNumbers(places);
    for (const [i, at] of rows.entries()) {
      const one = laid[i];
      if (one === undefined) continue;
      const block = "slot" in one ? blocks[one.slot] : undefined;
      if (!("slot" in one)) this.#fates.putAside(at, "unassigned-block", unassignedArgs(one, blocks, found, nameless));
      else if (block) this.#assign(at, block, one.round, reps[i] ?? null, one.by, open[one.slot] ?? 0);
    }
    this.#check(laid, blocks);
  }

  #swing(at: RowAt): Swing {
    const { fields, same } = this.#setup;
    const table = this.#fates.files[at.table]?.table;
    const round = table?.numbers.get("round")?.[at.row] ?? Number.NaN;
    const cells = ["environment", "drill", "implement", "ball", "side"].flatMap((field) => {
      const column = fields.byField.get(field);
      const value = column && table ? cellOf(table, at.row, { column, unit: null }) : null;
      return value === null ? [] : [{ field, value }];
    });
    const agrees = (block: ResolvedBlock, planned: number): boolean =>
      (Number.isNaN(round) || block.rounds === null || round === planned) &&
      cells.every(({ field, value }) => {
        const told = block.context.get(field);
        return told === undefined || same(field, value, told.value, block.athlete, block.date);
      });
    return { time: this.#word(at, "time"), agrees };
  }

  #assign(
    at: RowAt,
    block: ResolvedBlock,
    round: number | null,
    rep: number | null,
    by: AssignedBy,
    index: number,
  ): void {
    const found = this.#fates.files[at.table];
    if (found === undefined) return;
    const { table, file } = found;
    const athlete = this.#setup.athletes.indexOf(block.athlete);
    if ((table.athlete[at.row] ?? -1) < 0) table.athlete[at.row] = athlete;
    const { fields, same, sideOf } = this.#setup;
    const heir = { table, row: at.row, file, athlete: block.athlete, date: block.date };
    inherit(heir, block.context, fields, same, this.#contradictions);
    const fill = (field: string, value: string | number | null): void => {
      const column = fields.byField.get(field);
      if (value === null || column === undefined || cellOf(table, at.row, { column, unit: null }) !== null) return;
      writeCell(table, at.row, field, value, typeof value === "number");
    };
    fill("session", block.session);
    fill("block", block.label);
    const numbered = cellOf(table, at.row, { column: fields.byField.get("rep") ?? NO_COLUMN, unit: null }) !== null;
    fill("round", round);
    if (!numbered) fill("rep", rep);
    if (!table.fixed.has("side")) fill("side", sideOf(block.athlete));
    writeCell(table, at.row, "assigned", by, false);
    this.#counts[index]?.set(by, (this.#counts[index]?.get(by) ?? 0) + 1);
  }

  /** A block that holds other than what it expects is told, though its swings are certain. */
  #check(laid: readonly Laid[], blocks: readonly ResolvedBlock[]): void {
    for (const [slot, block] of blocks.entries()) {
      const expected = expectedSwings(block);
      const found = laid.filter((one) => "slot" in one && one.slot === slot).length;
      const doubtful = laid.some((one) => !("slot" in one) && one.slots.includes(slot));
      if (expected === null || found === expected || found === 0 || doubtful) continue;
      const [at] = block.from;
      if (at === undefined) continue;
      const args = { block: `block ${block.label}`, athlete: block.athlete, date: block.date, expected, found };
      this.#notes.push(remark("block-count", { ...at, column: null }, args));
    }
  }
}

const NO_COLUMN = { field: "", header: "", is: { kind: "count" } } as const;
