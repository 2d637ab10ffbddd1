import { randomBytes } from "node:crypto";
import { chmod, lstat, mkdir, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { Runner } from "../publish/lock.ts";
import type { Disk, Effects, Found } from "../schema/effects.ts";
import { progressTo } from "./progress.ts";

const byCodePoints = (a: Found, b: Found) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0);

async function listBelow(folder: string, below: string, found: Found[]): Promise<void> {
  for (const entry of await readdir(join(folder, below), { withFileTypes: true })) {
    const path = below === "" ? entry.name : `${below}/${entry.name}`;
    if (entry.isDirectory()) await listBelow(folder, path, found);
    else found.push({ path, kind: entry.isFile() ? "file" : entry.isSymbolicLink() ? "link" : "other" });
  }
}

const isMissing = (error: unknown) => (error as NodeJS.ErrnoException).code === "ENOENT";

/** The disk of this machine. */
export const realDisk: Disk = {
  read: (path) => readFile(path),

  async look(path) {
    try {
      const { size, mtimeMs } = await stat(path);
      return { size, changed: mtimeMs };
    } catch (error) {
      if (isMissing(error)) return null;
      throw error;
    }
  },

  async list(folder) {
    const found: Found[] = [];
    try {
      await listBelow(folder, "", found);
    } catch (error) {
      if (!isMissing(error) || (await realDisk.exists(folder))) throw error;
    }
    return found.sort(byCodePoints);
  },

  async exists(path) {
    try {
      await lstat(path);
      return true;
    } catch (error) {
      if (isMissing(error)) return false;
      throw error;
    }
  },

  async write(path, body, mode) {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(path, body, mode === undefined ? {} : { mode });
    if (mode !== undefined) await chmod(path, mode);
  },

  async create(path, body, mode) {
    await mkdir(dirname(path), { recursive: true });
    try {
      await writeFile(path, body, { flag: "wx", mode: mode ?? 0o666 });
      return true;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
      throw error;
    }
  },

  async makeFolder(path, mode) {
    await mkdir(path, { recursive: true });
    if (mode !== undefined) await chmod(path, mode);
  },

  rename: (from, to) => rename(from, to),

  remove: (path) => rm(path, { recursive: true, force: true }),
};

/** This process, and how it tells whether another one still runs. */
export const thisProcess: Runner = {
  pid: process.pid,
  isAlive(pid) {
    try {
      process.kill(pid, 0);
      return true;
    } catch (error) {
      // It is there, and belongs to somebody else.
      return (error as NodeJS.ErrnoException).code === "EPERM";
    }
  },
};

/**
 * The outside world of a command.
 *
 * @param say     where lines for the person at the terminal go
 * @param display where progress is shown; standard error keeps standard output clean for what is piped on
 */
export function realEffects(say: (line: string) => void, display: NodeJS.WriteStream): Effects & { finished(): void } {
  const elapsedMs = () => performance.now();
  const shown = progressTo(display, elapsedMs);
  return {
    disk: realDisk,
    elapsedMs,
    randomBytes: (count) => new Uint8Array(randomBytes(count)),
    log: say,
    progress: shown.progress,
    finished: shown.finished,
  };
}
