import { createHash } from "node:crypto";
import { dirname } from "node:path/posix";
import type { PairedSession } from "../schema/pairing.ts";
import type { AppliedCorrection, LedgerRow, LineOf, LoggedBlock, Problem, RepTable } from "../schema/season.ts";
import type { Ball, Block } from "../schema/tables.ts";
import { isoDay, MS_PER_DAY } from "./calendar-day.ts";
import { applyCorrections } from "./corrections/apply.ts";
import { cellOf, shownValue } from "./corrections/cell-value.ts";
import type { Correction } from "./corrections/correction.ts";
import { fillFixed } from "./log/inherit.ts";
import { type SessionLogSetup, sessionLog } from "./log/log.ts";
import { type PairingSetup, pairRows } from "./pairing/pairing.ts";
import { PAIR_FIELD } from "./pairing/told-pairs.ts";
import { remark, rowFault, wholeFile } from "./problem.ts";
import { type PartnerOf, repTables } from "./rep-table.ts";
import { repeats } from "./repeats.ts";
import { revisions } from "./revisions.ts";
import { type RowAt, RowFates } from "./row-fates.ts";
import type { SeasonFiles } from "./season-files.ts";
import { readSwingFile, type SwingFile, type SwingSetup, wholeRow } from "./swing-file.ts";
import type { SwingTable } from "./swing-table.ts";
import { readWhole } from "./whole-file.ts";

/** Every swing file of a season, each data row in exactly one of `reps` and `setAside`. */
export interface Swings {
  readonly files: readonly { readonly file: string; readonly rows: number }[];
  readonly tables: readonly SwingTable[];
  /** By athlete's id. */
  readonly reps: ReadonlyMap<string, RepTable>;
  /** By athlete's id: the blocks of the session log. */
  readonly log: ReadonlyMap<string, readonly LoggedBlock[]>;
  readonly corrections: readonly AppliedCorrection[];
  readonly pairings: readonly PairedSession[];
  readonly setAside: readonly LedgerRow[];
  readonly problems: readonly Problem[];
}

/** What people wrote about the swings, beside the files of the devices. */
export interface Written {
  readonly corrections: readonly Correction[];
  readonly blocks: readonly (Block & { readonly at: LineOf })[];
  readonly balls: readonly Ball[];
  readonly log: Omit<SessionLogSetup, "fields" | "context" | "athletes">;
  /** Athletes whose rows have no report to go to. */
  readonly leftOut: ReadonlySet<string>;
  /** The season's last day, in epoch milliseconds. */
  readonly seasonEnd: number;
}

/** Days after the season's end from which a date is no later season but a mistyped year. */
const FAR_DAYS = 366;

/**
 * Reads `data/swings/`, files in order of name. Then, one after the other: exports that tell the same swing twice, corrections,
 * the session log, what a mapping says of every row, and the rows of two devices that are one swing.
 */
export async function readSwings(
  files: SeasonFiles,
  setup: SwingSetup & Pick<PairingSetup, "pair">,
  written: Written,
  progress: (done: number, of: number) => void,
): Promise<Swings> {
  const { read, copies, problems } = await readFiles(files, setup, progress);
  const fates = new RowFates(read, setup.athletes);
  for (const [table, of] of copies)
    for (let row = 0; row < (read[table]?.table.n ?? 0); row++) fates.standFor({ table, row }, { table: of, row });
  dropRevised(fates, setup);
  dropRepeats(fates);
  const ofPairs = written.corrections.filter(({ field }) => field === PAIR_FIELD);
  const others = written.corrections.filter(({ field }) => field !== PAIR_FIELD);
  const { applied, waiting } = applyCorrections(others, fates, setup, false);
  // A correction may have made two rows tell of one swing.
  if (applied.length > 0) dropRepeats(fates);
  const { log, problems: ofLog } = sessionLog(written.blocks, fates, { ...setup, ...written.log });
  for (const { table } of read) fillFixed(table, setup.fields);
  const { applied: late } = applyCorrections(waiting, fates, setup, true);
  const { sides, same } = written.log;
  const pairing = { ...setup, sides, same, log, balls: written.balls };
  const paired = pairRows(fates, ofPairs, pairing);
  for (const problem of [...paired.problems, ...ofLog, ...dropLeftOut(fates, written.leftOut)]) problems.push(problem);
  dropFuture(fates, written.seasonEnd);
  const tables = read.map(({ table }) => table);
  return {
    files: read.map(({ file, table }) => ({ file, rows: table.n })),
    tables,
    reps: repTables(tables, setup.athletes, setup.fields, partnersIn(fates)),
    pairings: paired.sessions,
    log,
    corrections: [...applied, ...late, ...paired.applied],
    setAside: fates.setAside(),
    problems: [...problems, ...fates.problems()],
  };
}

/** @returns `copies`: file -> the file that it is the same as */
async function readFiles(
  files: SeasonFiles,
  setup: SwingSetup,
  progress: (done: number, of: number) => void,
): Promise<{ read: SwingFile[]; copies: Map<number, number>; problems: Problem[] }> {
  const names = files.files.filter((file) => /^data\/swings\/.+\.(csv|xlsx)$/i.test(file));
  const bodies: string[] = [];
  const read: SwingFile[] = [];
  const copies = new Map<number, number>();
  const problems: Problem[] = [];
  for (const file of names) {
    const whole = await readWhole(files, file);
    const number = read.length;
    if (!("bytes" in whole)) {
      problems.push(whole);
      continue;
    }
    const { bytes } = whole;
    problems.push(...whole.problems);
    // A digest, so that the files themselves need not stay in memory.
    const body = createHash("sha256").update(bytes).digest("hex");
    const same = bodies.indexOf(body);
    const first = read[same];
    bodies.push(body);
    if (first && first.table.n > 0) {
      read.push(repeatedFile(file, number, first, setup));
      copies.set(number, same);
    } else read.push(await readSwingFile(file, number, bytes, setup));
    progress(bodies.length, names.length);
  }
  return { read, copies, problems };
}

/** The same export saved twice: none of its rows says anything new. */
function repeatedFile(file: string, number: number, first: SwingFile, { athletes }: SwingSetup): SwingFile {
  const table = { ...first.table, file: number, kept: new Uint8Array(first.table.n) };
  const setAside = Array.from(table.lines, (line, row) =>
    wholeRow(file, line, "duplicate", athletes[table.athlete[row] ?? -1] ?? null),
  );
  return {
    file,
    table,
    setAside,
    problems: [rowFault("repeated-file", wholeFile(file), { other: first.file, rows: table.n })],
    plan: null,
    failed: [],
  };
}

const partnersIn =
  (fates: RowFates): PartnerOf =>
  ({ file: table }, row) => {
    const partner = fates.partnerOf({ table, row });
    return partner && { file: partner.table, line: fates.placeOf(partner).line };
  };

/** Rows dated more than a year after the season: nothing was measured then yet, somebody mistyped a year. */
function dropFuture(fates: RowFates, seasonEnd: number): void {
  const last = seasonEnd + FAR_DAYS * MS_PER_DAY;
  for (const [index, { table }] of fates.files.entries()) {
    for (let row = 0; row < table.n; row++) {
      const day = table.day[row] ?? Number.NaN;
      if (table.kept[row] === 1 && day > last)
        fates.putAside({ table: index, row }, "future-date", { value: isoDay(day) });
    }
  }
}

/** Rows of an athlete whose own files cannot be used: said once an athlete, not once a row. */
function dropLeftOut(fates: RowFates, leftOut: ReadonlySet<string>): Problem[] {
  const rows = new Map<string, number>();
  for (const [index, { table }] of fates.files.entries()) {
    for (let row = 0; row < table.n; row++) {
      const at = { table: index, row };
      const athlete = table.kept[row] === 1 ? fates.athleteOf(at) : null;
      if (athlete === null || !leftOut.has(athlete)) continue;
      fates.putAside(at, "unknown-athlete", {}, null);
      rows.set(athlete, (rows.get(athlete) ?? 0) + 1);
    }
  }
  return [...rows].map(([athlete, count]) =>
    remark("rows-of-left-out", wholeFile(`content/athletes/${athlete}`), { athlete, rows: count }),
  );
}

const place = ({ file, line }: LineOf): string => `${file}:${line}`;

function dropRepeats(fates: RowFates): void {
  for (const { table, row, of } of repeats(fates.files.map((file) => file.table))) {
    fates.putAside({ table, row }, "duplicate", { other: place(fates.placeOf(of)) });
    fates.standFor({ table, row }, of);
  }
}

function dropRevised(fates: RowFates, { fields }: SwingSetup): void {
  const tables = fates.files.map(({ table }) => table);
  const folders = fates.files.map(({ file }) => dirname(file));
  for (const { table, row, by } of revisions(tables, folders, fields.measured)) {
    const other = place(fates.placeOf(by));
    fates.putAside({ table, row }, "revised", { other, ...firstChange(fates, { table, row }, by, fields) });
    fates.standFor({ table, row }, by);
  }
}

/** The first cell, in the order of the canonical table, that the two rows do not share. */
function firstChange(fates: RowFates, one: RowAt, other: RowAt, { columns }: SwingSetup["fields"]): Problem["args"] {
  const [left, right] = [fates.files[one.table]?.table, fates.files[other.table]?.table];
  for (const column of columns) {
    if (left === undefined || right === undefined || column.is.kind === "athlete" || column.is.kind === "date")
      continue;
    const was = cellOf(left, one.row, { column, unit: null });
    const is = cellOf(right, other.row, { column, unit: null });
    if (was !== is) return { field: column.header, from: shownValue(was, column), to: shownValue(is, column) };
  }
  return {};
}
