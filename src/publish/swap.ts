import { dirname, join, relative, resolve } from "node:path";
import type { Disk } from "../schema/effects.ts";
import type { Output } from "./guard.ts";
import { EXIT, Stopped } from "./stopped.ts";

/** A folder to be replaced as a whole. */
export interface Replacement {
  /** Absolute path of the live folder. */
  readonly folder: string;
  readonly files: readonly Output[];
}

interface Journal {
  readonly v: 1;
  /** Live folders, relative to the folder of the journal. */
  readonly folders: readonly string[];
}

/** Where the new folder is made ready, and where the old one waits. Siblings: a rename never crosses disks. */
export const nextOf = (folder: string) => `${folder}.winterbook-next`;
export const oldOf = (folder: string) => `${folder}.winterbook-old`;

/**
 * Replaces folders, all of them or none. New folders are written beside the live ones; from the moment the journal stands
 * they are complete, and {@link recover} finishes whatever was interrupted. Before that moment nothing live was touched.
 *
 * @param journal absolute path of the journal, in a folder that is there
 * @param progress told after each file
 */
export async function swap(
  replacements: readonly Replacement[],
  journal: string,
  disk: Disk,
  progress: (done: number, of: number) => void = () => {},
): Promise<void> {
  const of = replacements.reduce((sum, { files }) => sum + files.length, 0);
  let done = 0;
  for (const { folder, files } of replacements) {
    await disk.remove(nextOf(folder));
    await disk.makeFolder(nextOf(folder));
    for (const { path, body } of files) {
      await disk.write(join(nextOf(folder), path), body);
      progress(++done, of);
    }
    await disk.remove(oldOf(folder));
  }
  const folders = replacements.map(({ folder }) => relative(dirname(journal), folder).replaceAll("\\", "/"));
  const text: Journal = { v: 1, folders };
  // Written beside and renamed: a journal that can be seen is a whole one.
  await disk.write(`${journal}.new`, `${JSON.stringify(text)}\n`, 0o600);
  await disk.rename(`${journal}.new`, journal);
  await finish(
    replacements.map(({ folder }) => folder),
    journal,
    disk,
  );
}

/**
 * Finishes a swap that was interrupted, and clears away what an unfinished one left. Does nothing when there is neither.
 *
 * @param journal absolute path of the journal
 * @param folders live folders whose leftovers are looked for when there is no journal
 * @returns true when a swap was finished
 * @throws {Stopped} the journal cannot be read, or a folder it names is in neither place
 */
export async function recover(journal: string, folders: readonly string[], disk: Disk): Promise<boolean> {
  const begun = await disk.exists(journal);
  if (begun) await finish(await foldersOf(journal, disk), journal, disk);
  for (const folder of folders) {
    await disk.remove(nextOf(folder));
    await disk.remove(oldOf(folder));
  }
  await disk.remove(`${journal}.new`);
  return begun;
}

/** Every step may have been done before: a step that was is skipped. */
async function finish(folders: readonly string[], journal: string, disk: Disk): Promise<void> {
  for (const folder of folders) {
    const waiting = await disk.exists(nextOf(folder));
    const live = await disk.exists(folder);
    if (!waiting && !live) {
      throw new Stopped(
        EXIT.input,
        `${folder} is gone, and so is the finished folder that was to replace it`,
        `the folder as it was may still be ${oldOf(folder)}: rename it back, remove ${journal}, and build again`,
      );
    }
    if (waiting && live) await disk.rename(folder, oldOf(folder));
    if (waiting) await disk.rename(nextOf(folder), folder);
  }
  await disk.remove(journal);
  for (const folder of folders) await disk.remove(oldOf(folder));
}

async function foldersOf(journal: string, disk: Disk): Promise<string[]> {
  const text = Buffer.from(await disk.read(journal)).toString("utf8");
  try {
    const { v, folders } = JSON.parse(text) as Partial<Journal>;
    if (v === 1 && Array.isArray(folders) && folders.every((folder) => typeof folder === "string")) {
      return folders.map((folder) => resolve(dirname(journal), folder));
    }
  } catch {
    // Said below in words that help.
  }
  throw new Stopped(
    EXIT.input,
    `${journal} is damaged: it should say which folders were being replaced`,
    "look whether the folders ending in .winterbook-old or .winterbook-next are the ones you want, rename them, and remove the journal",
  );
}
