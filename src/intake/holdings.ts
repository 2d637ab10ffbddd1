import type { Disk } from "../schema/effects.ts";
import type { AthleteSeason, Season } from "../schema/season.ts";
import { wholeWords } from "../schema/text.ts";
import { csvBatches } from "./csv-batches.ts";
import { seasonFiles } from "./season-files.ts";

/** A file that holds something of an athlete. */
export interface Holding {
  /** From the season folder, `content/…` or `data/…`. */
  readonly file: string;
  /** Lines on which their rows start or their name stands; none where the file as a whole is meant. */
  readonly lines: readonly number[];
  /** The athlete's alone; shared with others, whose rows stay; or nothing that a program should change. */
  readonly kind: "own" | "shared" | "by-hand";
}

/** Tables whose rows name athletes by id or full name. */
const NAMING = /^data\/(?:blocks|tests)\/.*\.csv$|^data\/corrections\.csv$/;
const TEXT = /\.(?:md|csv|json)$/;

/** Lines of a file can be told apart byte by byte: not in UTF-16, in workbooks, or where a lone CR ends them. */
const isPlainLines = (file: string, bytes: Uint8Array): boolean =>
  file.endsWith(".csv") && bytes.includes(10) && !(bytes[0] === 0xff || bytes[0] === 0xfe || bytes.includes(0));

const plain = (text: string) => text.trim().toLowerCase();

/** Lines of an athlete's swings by file: the ones read, those joined to them, and those set aside under their name. */
function swingLines({ swingFiles, setAside }: Season, athlete: AthleteSeason | undefined, id: string) {
  const found = new Map<string, Set<number>>();
  const add = (file: string | undefined, line: number) => {
    if (file !== undefined) found.set(file, (found.get(file) ?? new Set()).add(line));
  };
  for (let row = 0; row < (athlete?.reps.n ?? 0); row++) {
    const { file, line, partner } = athlete!.reps;
    add(swingFiles[file[row]!]?.file, line[row]!);
    const other = partner[row];
    if (other) add(swingFiles[other.file]?.file, other.line);
  }
  for (const row of setAside) if (row.athlete === id) add(row.file, row.line);
  return found;
}

/** Rows of a small table in which a cell is one of `words`, and how many rows it has. */
function rowsNaming(bytes: Uint8Array, words: ReadonlySet<string>): { lines: number[]; rows: number } {
  const header = new TextDecoder().decode(bytes.subarray(0, 4096)).split("\n")[0] ?? "";
  const delimiter = [",", ";", "\t", "|"].find((mark) => header.includes(mark)) ?? ",";
  const lines: number[] = [];
  let rows = -1;
  for (const batch of csvBatches(bytes, delimiter)) {
    for (const [i, row] of batch.rows.entries()) {
      rows++;
      if (typeof row !== "string" && row.some((cell) => words.has(plain(cell)))) lines.push(batch.lines[i]!);
    }
  }
  return { lines, rows };
}

/** Corrections that moved rows from the athlete to somebody else are somebody else's too. */
function correctionsOfOthers({ corrections }: Season, id: string): Set<string> {
  const kept = corrections.filter(({ rows }) => rows.some(({ now }) => now !== null && now !== id));
  return new Set(kept.map(({ at }) => `${at.file}:${at.line}`));
}

/**
 * Every file that holds something of an athlete: those of their own folder, the rows of tables, and places where they are named.
 *
 * @param season as it was read; of an athlete whose files could not be used the swings are named only where their id stands
 * @param folders absolute paths
 */
export async function holdingsOf(
  id: string,
  season: Season,
  folders: { readonly content: string; readonly data: string },
  disk: Disk,
): Promise<Holding[]> {
  const athlete = season.athletes.find((one) => one.id === id);
  const swings = swingLines(season, athlete, id);
  const words = new Set([id, ...(athlete ? [athlete.profile.name] : [])].map(plain));
  const others = correctionsOfOthers(season, id);
  const named = wholeWords([...words], "iu");
  const found: Holding[] = [];
  for (const prefix of ["content", "data"] as const) {
    const { files, read } = await seasonFiles(folders[prefix], prefix, disk);
    for (const file of files) {
      if (file.startsWith(`content/athletes/${id}/`)) {
        found.push({ file, lines: [], kind: "own" });
        continue;
      }
      const bytes = await read(file);
      if (!(bytes instanceof Uint8Array)) continue;
      const table = NAMING.test(file) ? rowsNaming(bytes, words) : null;
      const rows = season.swingFiles.find((one) => one.file === file)?.rows ?? table?.rows ?? 0;
      const lines = [...(swings.get(file) ?? table?.lines ?? [])].sort((a, b) => a - b);
      const free = lines.filter((line) => !others.has(`${file}:${line}`));
      if (free.length > 0 && free.length === rows) {
        found.push({ file, lines: free, kind: "own" });
        continue;
      }
      if (free.length > 0) found.push({ file, lines: free, kind: isPlainLines(file, bytes) ? "shared" : "by-hand" });
      // Whatever is left names them somewhere else: in a group, in somebody else's note, as the owner of a bat.
      const text = TEXT.test(file) ? new TextDecoder().decode(bytes).split(/\r\n|\n|\r/) : [];
      const seen = new Set(free);
      const mentioned = text.flatMap((line, i) => (named.test(line) && !seen.has(i + 1) ? [i + 1] : []));
      if (mentioned.length > 0) found.push({ file, lines: mentioned, kind: "by-hand" });
    }
  }
  return found;
}

/**
 * A table without some of its records. Their lines stay, empty: corrections name other rows by their line.
 *
 * @param starts lines on which the records start, from 1
 */
export function withoutRecords(bytes: Uint8Array, starts: readonly number[]): Uint8Array {
  // One character for each byte, whatever the encoding.
  const lines = Buffer.from(bytes).toString("latin1").split("\n");
  for (const start of starts) {
    let quotes = 0;
    for (let at = start - 1; at < lines.length; at++) {
      const line = lines[at]!;
      quotes += line.split('"').length - 1;
      lines[at] = line.endsWith("\r") ? "\r" : "";
      if (quotes % 2 === 0) break;
    }
  }
  return Buffer.from(lines.join("\n"), "latin1");
}
