import type { Disk } from "../schema/effects.ts";
import { EXIT, Stopped } from "./stopped.ts";

/** Files that desktops put into folders on their own. */
const DESKTOP_LITTER = /(?:^|\/)(?:\.DS_Store|Thumbs\.db|desktop\.ini)$/;

/**
 * Looks before a folder is replaced as a whole: one that holds anything we would not have written is somebody else's.
 *
 * @param folder   absolute; one that is not there is fine
 * @param patterns what we write there
 * @throws {Stopped} the folder holds something else
 */
export async function checkOurs(folder: string, patterns: readonly RegExp[], disk: Disk): Promise<void> {
  for (const { path, kind } of await disk.list(folder)) {
    if (DESKTOP_LITTER.test(path)) continue;
    if (kind !== "file" || !patterns.some((pattern) => pattern.test(path))) {
      throw new Stopped(
        EXIT.usage,
        `${folder} would be replaced, and holds ${path}, which no build wrote`,
        "name another folder, or move that file away",
      );
    }
  }
}
