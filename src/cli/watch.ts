import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";

/** Size and time of every file below some folders, as one text: two looks differ when a file did. */
export async function lookAt(folders: readonly string[]): Promise<string> {
  const seen: string[] = [];
  for (const folder of folders) {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch(() => []);
    for (const entry of entries) {
      if (!entry.isFile()) continue;
      const path = join(entry.parentPath, entry.name);
      // A file may go between the list and the look.
      const found = await stat(path).catch(() => null);
      if (found) seen.push(`${path}\0${found.size}\0${found.mtimeMs}`);
    }
  }
  return seen.sort().join("\n");
}

/**
 * Calls `changed` after files below `folders` have changed and come to rest. Looks instead of listening: it works alike on
 * every disk, network drives included. Changes during a call lead to one more call after it.
 *
 * @param everyMs time between looks
 * @returns stops looking
 */
export function watch(folders: readonly string[], everyMs: number, changed: () => Promise<void>): () => void {
  let stopped = false;
  const loop = async () => {
    let handled = await lookAt(folders);
    let last = handled;
    while (!stopped) {
      await new Promise((done) => setTimeout(done, everyMs));
      const now = await lookAt(folders);
      const atRest = now === last;
      last = now;
      if (!atRest || now === handled || stopped) continue;
      handled = now;
      await changed();
    }
  };
  void loop();
  return () => {
    stopped = true;
  };
}
