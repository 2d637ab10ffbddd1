import { lstatSync, readlinkSync, realpathSync } from "node:fs";
import { basename, dirname, isAbsolute, join, relative, resolve, sep } from "node:path";
import type { Paths } from "../build.ts";
import { EXIT, Stopped } from "../publish/stopped.ts";

/** As many as Linux follows: https://man7.org/linux/man-pages/man7/path_resolution.7.html */
const MOST_LINKS = 40;

const wrong = (problem: string) => new Stopped(EXIT.usage, problem, "name another folder");

/** Whether the path itself is a link, wherever it leads; what lies below a file is none. */
function isLink(path: string): boolean {
  try {
    return lstatSync(path, { throwIfNoEntry: false })?.isSymbolicLink() ?? false;
  } catch {
    return false;
  }
}

/**
 * Where a path lies once every link on the way is followed, of folders too that are not there yet.
 *
 * @param path absolute
 * @throws {Stopped} links lead in a circle, or the way cannot be read
 */
export function realPath(path: string, links = MOST_LINKS): string {
  try {
    return realpathSync.native(path);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    const parent = dirname(path);
    if (links === 0 || (code !== "ENOENT" && code !== "ENOTDIR") || parent === path) {
      throw wrong(`${path} cannot be followed to where it lies`);
    }
    // A link may lead to a folder that the build is yet to make.
    const there = join(realPath(parent, links), basename(path));
    return isLink(there) ? realPath(resolve(dirname(there), readlinkSync(there)), links - 1) : there;
  }
}

/** Whether one absolute path is another or lies below it. */
function isInside(folder: string, other: string): boolean {
  const way = relative(other, folder);
  return way !== ".." && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

/**
 * A folder that a build replaces must not hold, or lie in, a folder that somebody keeps, by whichever links it is reached.
 *
 * @param here      the folder the command was called in, absolute
 * @param replacing whether the command replaces site and desk: then neither may itself be a link, which would be replaced
 *                  instead of the folder it leads to
 * @throws {Stopped} with exit status 2
 */
export function keepApart(paths: Paths & { readonly desk: string }, here: string, replacing: boolean): void {
  const named = { "--out": paths.out, "--desk": paths.desk };
  for (const [name, folder] of Object.entries(named)) {
    if (replacing && isLink(folder)) {
      throw wrong(`${name} is a link (${folder}), and only a folder can be replaced: name the folder it leads to`);
    }
  }
  const [out, desk, content, data, state] = [paths.out, paths.desk, paths.content, paths.data, paths.state].map(
    (path) => realPath(path),
  ) as [string, string, string, string, string];
  const kept = { content, data, "the season's state": state };
  for (const [name, folder] of Object.entries({ "--out": out, "--desk": desk })) {
    if (isInside(realPath(here), folder)) throw wrong(`${name} would replace the folder you are in, or one around it`);
    for (const [what, other] of Object.entries(kept)) {
      if (isInside(folder, other) || isInside(other, folder))
        throw wrong(`${name} and ${what} would lie in each other`);
    }
  }
  if (isInside(out, desk) || isInside(desk, out)) throw wrong("--out and --desk would lie in each other");
}
