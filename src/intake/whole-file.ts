import type { Problem } from "../schema/season.ts";
import { remark, wholeFile } from "./problem.ts";
import type { SeasonFiles } from "./season-files.ts";

const NEWLINE = 10;

/**
 * Reads a file that another program may still be writing. One that changes while it is read is read as far as its last whole
 * line, and said to be growing; the rest comes with the next reading.
 *
 * @returns the bytes with what is to be said of them, or the problem that kept them
 */
export async function readWhole(
  files: SeasonFiles,
  file: string,
): Promise<{ readonly bytes: Uint8Array; readonly problems: readonly Problem[] } | Problem> {
  const before = await files.look(file);
  const bytes = await files.read(file);
  if (!(bytes instanceof Uint8Array)) return bytes;
  const after = await files.look(file);
  const still = before === null || after === null || (before.size === after.size && before.changed === after.changed);
  if (still) return { bytes, problems: [] };
  const problems = [remark("still-growing", wholeFile(file))];
  // A workbook has no lines: half of it is none.
  if (/\.xlsx$/i.test(file)) return { bytes, problems };
  return { bytes: bytes.subarray(0, bytes.lastIndexOf(NEWLINE) + 1), problems };
}
