import { readSeason } from "../intake/season.ts";
import type { Disk, Effects } from "../schema/effects.ts";
import type { Mapping } from "../schema/mapping.ts";
import type { AthleteSeason, LedgerRow, Problem } from "../schema/season.ts";
import type { Paths } from "./terms.ts";

/** One row as it would be read: who, when, and what was measured, in canonical units. */
export interface RehearsedRow {
  readonly line: number;
  readonly athlete: string;
  readonly date: string;
  readonly words: Readonly<Record<string, string>>;
  readonly numbers: Readonly<Record<string, number>>;
}

/** What would become of an export if a mapping were kept. */
export interface Rehearsal {
  readonly rows: number;
  readonly read: number;
  /** The first rows that would be read, in order of line. */
  readonly first: readonly RehearsedRow[];
  readonly setAside: readonly LedgerRow[];
  /** Problems of the export and of the mapping; those of the rest of the season are not this export's. */
  readonly problems: readonly Problem[];
}

const MOST_SHOWN = 5;

/** The season's own data without swings, log, corrections and other mappings, and with these files. */
function withFiles(disk: Disk, data: string, files: ReadonlyMap<string, Uint8Array>): Disk {
  const aside = /^(swings|blocks|mappings|inbox|tests|reference)\/|^corrections\.csv$/;
  return {
    ...disk,
    read: async (path) => files.get(path) ?? disk.read(path),
    list: async (folder) => {
      const found = await disk.list(folder);
      if (folder !== data) return found;
      const added = [...files.keys()].map((path) => ({ path: path.slice(data.length + 1), kind: "file" as const }));
      const all = [...found.filter(({ path }) => !aside.test(path)), ...added];
      return all.sort((one, other) => (one.path < other.path ? -1 : 1));
    },
  };
}

/**
 * Reads one export by one mapping, as a build would, without writing anything: the very way by which it is read later.
 *
 * @param file its name; nothing else of where it lies matters
 * @throws {SeasonUnreadable} `facility.md` cannot be used
 */
export async function rehearse(
  paths: Pick<Paths, "content" | "data">,
  file: string,
  bytes: Uint8Array,
  mapping: Mapping,
  effects: Effects,
): Promise<Rehearsal> {
  const swings = `data/swings/${file}`;
  const files = new Map([
    [`${paths.data}/swings/${file}`, bytes],
    [`${paths.data}/mappings/proposed.json`, new TextEncoder().encode(JSON.stringify(mapping))],
  ]);
  const season = await readSeason(paths, { ...effects, disk: withFiles(effects.disk, paths.data, files) }, null);
  const own = new Set([swings, "data/mappings/proposed.json"]);
  return {
    rows: season.swingFiles.find((one) => one.file === swings)?.rows ?? 0,
    read: season.athletes.reduce((sum, { reps }) => sum + reps.n, 0),
    first: season.athletes
      .flatMap(rowsOf)
      .sort((one, other) => one.line - other.line)
      .slice(0, MOST_SHOWN),
    setAside: season.setAside.filter((row) => row.file === swings),
    problems: season.problems.filter(({ at }) => own.has(at.file)),
  };
}

/** An athlete's first rows; the others' may stand before, between or behind them. */
function rowsOf({ id, reps }: AthleteSeason): RehearsedRow[] {
  const present = <T>(columns: Readonly<Record<string, readonly (T | null)[]>>, row: number) =>
    Object.fromEntries(
      Object.entries(columns).flatMap(([field, values]) => {
        const value = values[row] ?? null;
        return value === null ? [] : [[field, value] as const];
      }),
    );
  const order = Array.from({ length: reps.n }, (_, row) => row).sort(
    (a, b) => (reps.line[a] ?? 0) - (reps.line[b] ?? 0),
  );
  return order.slice(0, MOST_SHOWN).map((row) => ({
    line: reps.line[row] ?? 0,
    athlete: id,
    date: reps.date[row] ?? "",
    words: present(reps.words, row),
    numbers: present(reps.numbers, row),
  }));
}
