import type { LedgerRow, Problem, RepTable } from "../schema/season.ts";
import { remark, rowFault, wholeFile } from "./problem.ts";
import { repTables } from "./rep-table.ts";
import { repeats } from "./repeats.ts";
import type { SeasonFiles } from "./season-files.ts";
import { readSwingFile, type SwingFile, type SwingSetup, wholeRow } from "./swing-file.ts";
import type { SwingTable } from "./swing-table.ts";

/** Every swing file of a season, each data row in exactly one of `reps` and `setAside`. */
export interface Swings {
  readonly files: readonly { readonly file: string; readonly rows: number }[];
  readonly tables: readonly SwingTable[];
  /** By athlete's id. */
  readonly reps: ReadonlyMap<string, RepTable>;
  readonly setAside: readonly LedgerRow[];
  readonly problems: readonly Problem[];
}

/** Reads `data/swings/`, files in order of name. `leftOut`: athletes whose rows have no report to go to. */
export async function readSwings(
  files: SeasonFiles,
  setup: SwingSetup,
  leftOut: ReadonlySet<string>,
  progress: (done: number, of: number) => void,
): Promise<Swings> {
  const names = files.files.filter((file) => /^data\/swings\/.+\.csv$/i.test(file));
  const bodies: { file: string; bytes: Uint8Array }[] = [];
  const read: SwingFile[] = [];
  const problems: Problem[] = [];
  for (const file of names) {
    const bytes = await files.read(file);
    const number = read.length;
    if (!(bytes instanceof Uint8Array)) {
      problems.push(bytes);
      continue;
    }
    const same = bodies.findIndex(
      (other) => other.bytes.length === bytes.length && Buffer.compare(other.bytes, bytes) === 0,
    );
    const first = read[same];
    bodies.push({ file, bytes });
    read.push(
      first && first.table.n > 0 ? repeatedFile(file, number, first, setup) : readSwingFile(file, number, bytes, setup),
    );
    progress(bodies.length, names.length);
  }
  const setAside = read.map((one) => [...one.setAside]);
  problems.push(...read.flatMap((one) => one.problems));
  problems.push(...dropLeftOut(read, setAside, setup, leftOut));
  problems.push(...dropRepeats(read, setAside, setup));
  const tables = read.map(({ table }) => table);
  return {
    files: read.map(({ file, table }) => ({ file, rows: table.n })),
    tables,
    reps: repTables(tables, setup.athletes, setup.fields),
    setAside: setAside.flatMap((rows) => rows.sort((one, other) => one.line - other.line)),
    problems,
  };
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
  };
}

/** Rows of an athlete whose own files cannot be used: said once an athlete, not once a row. */
function dropLeftOut(
  read: readonly SwingFile[],
  setAside: LedgerRow[][],
  { athletes }: SwingSetup,
  leftOut: ReadonlySet<string>,
): Problem[] {
  const rows = new Map<string, number>();
  for (const [index, { file, table }] of read.entries()) {
    for (let row = 0; row < table.n; row++) {
      const athlete = athletes[table.athlete[row] ?? -1];
      if (table.kept[row] !== 1 || athlete === undefined || !leftOut.has(athlete)) continue;
      table.kept[row] = 0;
      setAside[index]?.push(wholeRow(file, table.lines[row] ?? 0, "unknown-athlete", athlete));
      rows.set(athlete, (rows.get(athlete) ?? 0) + 1);
    }
  }
  return [...rows].map(([athlete, count]) =>
    remark("rows-of-left-out", wholeFile(`content/athletes/${athlete}`), { athlete, rows: count }),
  );
}

function dropRepeats(read: readonly SwingFile[], setAside: LedgerRow[][], { athletes }: SwingSetup): Problem[] {
  const tables = read.map(({ table }) => table);
  return repeats(tables).flatMap(({ table: index, row, of }) => {
    const { file, table } = read[index] ?? {};
    const first = read[of.table];
    if (file === undefined || table === undefined || first === undefined) return [];
    const line = table.lines[row] ?? 0;
    table.kept[row] = 0;
    setAside[index]?.push(wholeRow(file, line, "duplicate", athletes[table.athlete[row] ?? -1] ?? null));
    return [
      rowFault("duplicate", { file, line, column: null }, { other: `${first.file}:${first.table.lines[of.row] ?? 0}` }),
    ];
  });
}
