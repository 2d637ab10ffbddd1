import type { Disk } from "../schema/effects.ts";
import type { Problem } from "../schema/season.ts";
import { fault, wholeFile } from "./problem.ts";

/** The plain files of one of the trainer's two folders, named from the season folder. */
export interface SeasonFiles {
  /** `content/…` or `data/…`, in order of code points. */
  readonly files: readonly string[];
  /** Links and special files: listed, never followed. */
  readonly refused: readonly string[];
  /** @returns the bytes, or the problem that kept them */
  read(file: string, athlete?: string | null): Promise<Uint8Array | Problem>;
  /** Size in bytes and time of the last change, to tell whether a file is still written; null when the disk does not tell. */
  look(file: string): Promise<{ readonly size: number; readonly changed: number } | null>;
}

/** Something whose name starts with a point is the system's, not the trainer's. */
const hidden = (path: string): boolean => path.split("/").some((part) => part.startsWith("."));

/**
 * Lists a folder. A folder that is not there holds nothing.
 *
 * @param folder absolute path
 * @param prefix what the folder is called in messages, whatever it is called on disk
 */
export async function seasonFiles(folder: string, prefix: "content" | "data", disk: Disk): Promise<SeasonFiles> {
  const found = (await disk.list(folder)).filter(({ path }) => !hidden(path));
  const named = (plain: boolean): string[] =>
    found.filter(({ kind }) => (kind === "file") === plain).map(({ path }) => `${prefix}/${path}`);
  const read = async (file: string, athlete: string | null = null): Promise<Uint8Array | Problem> => {
    try {
      return await disk.read(`${folder}/${file.slice(prefix.length + 1)}`);
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      return fault("unreadable-file", wholeFile(file), { detail }, athlete);
    }
  };
  const look = async (file: string) => (await disk.look?.(`${folder}/${file.slice(prefix.length + 1)}`)) ?? null;
  return { files: named(true), refused: named(false), read, look };
}
