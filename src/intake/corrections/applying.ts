import type { AppliedCorrection, LineOf, Problem } from "../../schema/season.ts";
import { near } from "../near.ts";
import { fault, remark, withSuggestion } from "../problem.ts";
import type { RowAt, RowFates } from "../row-fates.ts";
import {
  type CellValue,
  cellOf,
  isNumeric,
  type NamedField,
  namedField,
  readValue,
  shownValue,
  stands,
  writeCell,
} from "./cell-value.ts";
import type { Correction, CorrectionSetup } from "./correction.ts";

/** What a correction changed in one cell: who did it, and whether a text is what stood there before anybody did. */
interface Change {
  readonly by: number;
  was(from: string | undefined): boolean;
}

/** A row that passed its checks. */
interface Passed {
  readonly at: RowAt;
  /** Cell as reading left it aside, if it did. */
  readonly failed: boolean;
  readonly change: Change;
  readonly overrules: number | null;
}

/** Applies one correction after the other, and remembers what each changed. */
export class Applying {
  readonly #fates: RowFates;
  readonly #setup: CorrectionSetup;
  readonly #done: {
    correction: Correction;
    field: string | null;
    rows: AppliedCorrection["rows"];
    by: LineOf | null;
  }[] = [];
  readonly #changes = new Map<string, Change>();
  readonly #voided = new Map<string, number>();
  readonly #mended = new Map<string, Set<string>>();

  constructor(fates: RowFates, setup: CorrectionSetup) {
    this.#fates = fates;
    this.#setup = setup;
  }

  get applied(): AppliedCorrection[] {
    return this.#done.map(({ correction, field, rows, by }) => ({
      at: correction.at,
      by: correction.by,
      on: correction.on,
      reason: correction.reason,
      action: correction.action,
      field,
      from: correction.from ?? null,
      to: correction.to ?? null,
      rows,
      overruledBy: by,
    }));
  }

  refuse({ at }: Correction, code: string, args: Problem["args"] = {}): void {
    this.#fates.say(fault(code, { ...at, column: null }, args));
  }

  refuseAthlete(correction: Correction, field: string, value: string): void {
    const whom = this.#setup.context.names.find(value);
    if (whom.kind === "ambiguous")
      this.refuse(correction, "ambiguous-name", { field, value, athletes: whom.ids.join(", ") });
    else
      this.refuse(
        correction,
        "unknown-athlete",
        withSuggestion({ field, value }, whom.kind === "unknown" ? whom.suggestion : null),
      );
  }

  apply(correction: Correction, rows: readonly RowAt[]): void {
    if (correction.action === "void") this.#void(correction, rows);
    else if (correction.action === "reassign") this.#reassign(correction, rows);
    else this.#set(correction, rows);
  }

  #void(correction: Correction, rows: readonly RowAt[]): void {
    const open = rows.filter((at) => this.#fates.reasonOf(at) !== "void");
    if (open.length === 0) {
      this.refuse(correction, "correction-without-rows");
      return;
    }
    const index = this.#record(correction, null, open);
    for (const at of open) {
      const place = `${correction.at.file}:${correction.at.line}`;
      this.#fates.putAside(at, "void", { other: place, reason: correction.reason });
      this.#voided.set(key(at), index);
    }
  }

  #reassign(correction: Correction, rows: readonly RowAt[]): void {
    const { names, index } = this.#setup.context;
    const { to } = correction;
    if (to === undefined) {
      this.refuse(correction, "correction-incomplete", { detail: "to names the athlete" });
      return;
    }
    const whom = names.find(to);
    const athlete = whom.kind === "one" ? index.get(whom.id) : undefined;
    if (athlete === undefined) {
      this.refuseAthlete(correction, "to", to);
      return;
    }
    const resolved = (from: string | undefined): string | null => {
      const who = from === undefined ? null : names.find(from);
      return who?.kind === "one" ? who.id : null;
    };
    const passed = this.#passed(correction, rows, "athlete_id", (at) => {
      const who = this.#fates.athleteOf(at);
      const was = (from: string | undefined): boolean => (who === null ? from === undefined : resolved(from) === who);
      return { was, stands: () => who ?? "" };
    });
    if (passed === null) return;
    this.#finish(correction, "athlete_id", passed, ({ table, row }) => {
      const found = this.#fates.files[table];
      if (found) found.table.athlete[row] = athlete;
    });
  }

  #set(correction: Correction, rows: readonly RowAt[]): void {
    const { fields, context } = this.#setup;
    const name = correction.field;
    if (name === undefined) {
      this.refuse(correction, "correction-incomplete", { detail: "field names the cell" });
      return;
    }
    const named = namedField(name, fields);
    if (named === null) {
      const args = { key: "field", found: name, expected: "a field of the swing table" };
      this.refuse(
        correction,
        "wrong-value",
        withSuggestion(args, near(name, [...fields.byField.keys(), ...fields.byHeader.keys()])),
      );
      return;
    }
    const { field, is } = named.column;
    if (is.kind === "athlete") {
      this.refuse(correction, "correction-incomplete", {
        detail: "another athlete is an action of its own: reassign",
      });
      return;
    }
    const to = readValue(correction.to, named, context);
    if (!("value" in to) || (is.kind === "date" && to.value === null)) {
      this.refuse(correction, "wrong-value", { key: "to", found: correction.to ?? "", expected: meant(named) });
      return;
    }
    const passed = this.#passed(correction, rows, field, (at) => this.#cell(at, named));
    if (passed === null) return;
    this.#finish(correction, field, passed, ({ table, row }) => {
      const found = this.#fates.files[table];
      if (found) writeCell(found.table, row, field, to.value, isNumeric(named.column));
    });
  }

  /** A cell that was read, as the file and as we write it. */
  #cell(at: RowAt, named: NamedField): { was: Change["was"]; stands: () => string } {
    const found = this.#fates.files[at.table];
    const own: CellValue = found ? cellOf(found.table, at.row, named) : null;
    // What a mapping says of every row stands in a blank cell, too.
    const value = own ?? found?.table.fixed.get(named.column.field) ?? null;
    const { context } = this.#setup;
    return {
      was: (from) => stands(value, from, named, context, found?.plan ?? null) || (own === null && from === undefined),
      stands: () => shownValue(value, named.column),
    };
  }

  /**
   * Rows of the correction that may be changed, each held against `from`.
   *
   * @returns null when it was refused: nothing is changed then
   */
  #passed(
    correction: Correction,
    rows: readonly RowAt[],
    field: string,
    cell: (at: RowAt) => { was: Change["was"]; stands: () => string },
  ): Passed[] | null {
    const passed: Passed[] = [];
    for (const at of rows) {
      const written = this.#failedText(at, field);
      const reason = this.#fates.reasonOf(at);
      const voidHere = reason === "void" && correction.line !== undefined;
      if (reason !== null && written === null && !voidHere) continue;
      const now = written === null ? cell(at) : asWritten(written);
      const before = this.#changes.get(`${key(at)} ${field}`);
      const matches = now.was(correction.from);
      if (!matches && !before?.was(correction.from)) {
        const { file, line } = this.#fates.placeOf(at);
        const args = { field, from: correction.from ?? "", stands: now.stands(), other: `${file}:${line}` };
        this.refuse(correction, "correction-mismatch", args);
        return null;
      }
      const overrules = matches ? (voidHere ? (this.#voided.get(key(at)) ?? null) : null) : (before?.by ?? null);
      passed.push({ at, failed: written !== null, change: before ?? { by: 0, was: now.was }, overrules });
    }
    if (passed.length > 0) return passed;
    this.refuse(correction, "correction-without-rows");
    return null;
  }

  /** What is written in a cell because of which the row was set aside; null when no such cell is left in this field. */
  #failedText(at: RowAt, field: string): string | null {
    if (this.#fates.reasonOf(at) === null || this.#mended.get(key(at))?.has(field)) return null;
    const cells = this.#fates.files[at.table]?.failed.find(({ row }) => row === at.row)?.cells;
    return cells?.find((one) => one.field === field)?.text ?? null;
  }

  #finish(correction: Correction, field: string, passed: readonly Passed[], write: (at: RowAt) => void): void {
    const before = passed.map(({ at }) => this.#fates.athleteOf(at));
    for (const { at, failed } of passed) {
      write(at);
      if (failed) this.#mend(at, field);
      else if (this.#fates.reasonOf(at) === "void") this.#unvoid(at);
    }
    const index = this.#record(
      correction,
      field,
      passed.map(({ at }) => at),
      before,
    );
    const overruled = new Set<number>();
    for (const { at, change, overrules } of passed) {
      this.#changes.set(`${key(at)} ${field}`, { by: index, was: change.was });
      if (overrules !== null) overruled.add(overrules);
    }
    for (const other of overruled) this.#overrule(other, correction);
  }

  /** No longer void: read, unless a cell that kept it out is still as it was. */
  #unvoid(at: RowAt): void {
    if (this.#readable(at)) this.#fates.takeBack(at);
    else this.#fates.asRead(at);
  }

  #overrule(index: number, by: Correction): void {
    const done = this.#done[index];
    if (done === undefined) return;
    done.by = by.at;
    const args = { other: `${by.at.file}:${by.at.line}` };
    this.#fates.say(remark("correction-overruled", { ...done.correction.at, column: null }, args));
  }

  /** The row is read after all once every cell that kept it out was put right. */
  #mend(at: RowAt, field: string): void {
    const mended = this.#mended.get(key(at)) ?? new Set<string>();
    this.#mended.set(key(at), mended.add(field));
    if (this.#readable(at)) this.#fates.takeBack(at);
  }

  /** Every cell that kept the row out was put right, or none did. */
  #readable(at: RowAt): boolean {
    const mended = this.#mended.get(key(at));
    const cells = this.#fates.files[at.table]?.failed.find(({ row }) => row === at.row)?.cells ?? [];
    return cells.every((cell) => mended?.has(cell.field));
  }

  #record(
    correction: Correction,
    field: string | null,
    rows: readonly RowAt[],
    before: readonly (string | null)[] = rows.map((at) => this.#fates.athleteOf(at)),
  ): number {
    const told = rows.map((at, i) => ({
      ...this.#fates.placeOf(at),
      athlete: before[i] ?? null,
      now: this.#fates.athleteOf(at),
    }));
    this.#done.push({ correction, field, rows: told, by: null });
    return this.#done.length - 1;
  }
}

const key = ({ table, row }: RowAt): string => `${table}:${row}`;

const asWritten = (text: string): { was: Change["was"]; stands: () => string } => ({
  was: (from) => (from ?? "").trim() === text.trim(),
  stands: () => text,
});

function meant({ column: { field, is } }: NamedField): string {
  if (is.kind === "number") return `${is.plausible[0]} to ${is.plausible[1]} ${is.unit}`;
  return is.kind === "words" ? `one of ${is.words.join(", ")}` : `a value of ${field}`;
}
