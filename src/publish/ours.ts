import { join } from "node:path";
import type { Disk } from "../schema/effects.ts";
import { EXIT, Stopped } from "./stopped.ts";

/** Files that desktops put into folders on their own. */
const DESKTOP_LITTER = /(?:^|\/)(?:\.DS_Store|Thumbs\.db|desktop\.ini)$/;

/** The style sheet that every build writes and every page of it names. Public, and the same for the same program. */
const MARK = /^assets\/winterbook\.[0-9a-f]{12}\.css$/;
const FRONT = "index.html";

/** Whether a build wrote the front page: it names our style sheet, which lies beside it. */
async function isMarked(folder: string, paths: readonly string[], disk: Disk): Promise<boolean> {
  const marks = paths.filter((path) => MARK.test(path));
  if (marks.length === 0 || !paths.includes(FRONT)) return false;
  const front = Buffer.from(await disk.read(join(folder, FRONT))).toString("utf8");
  return marks.some((mark) => front.includes(`"${mark}"`));
}

/**
 * Looks before a folder is replaced as a whole: one that holds anything we would not have written is somebody else's, and so
 * is one whose files have names of ours but do not bear our mark.
 *
 * @param folder   absolute; one that is not there or holds no file is fine
 * @param patterns what we write there
 * @throws {Stopped} the folder is not one of ours
 */
export async function checkOurs(folder: string, patterns: readonly RegExp[], disk: Disk): Promise<void> {
  const found = (await disk.list(folder)).filter(({ path }) => !DESKTOP_LITTER.test(path));
  for (const { path, kind } of found) {
    if (kind !== "file" || !patterns.some((pattern) => pattern.test(path))) throw notOurs(folder, path);
  }
  const paths = found.map(({ path }) => path);
  if (paths[0] !== undefined && !(await isMarked(folder, paths, disk))) throw notOurs(folder, paths[0]);
}

const notOurs = (folder: string, path: string) =>
  new Stopped(
    EXIT.usage,
    `${folder} would be replaced, and holds ${path}, which no build wrote`,
    "name another folder, or move what it holds away",
  );
