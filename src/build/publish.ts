import { join } from "node:path";
import { DESK_PATTERNS, guard, type Output, PREVIEW_PATTERNS, SITE_PATTERNS } from "../publish/guard.ts";
import { takeLock } from "../publish/lock.ts";
import { checkOurs } from "../publish/ours.ts";
import { recover, swap } from "../publish/swap.ts";
import type { BuildEffects, Paths } from "./terms.ts";

const journalOf = ({ hold }: Paths) => join(hold, "swap.json");

/**
 * Does `work` while no other build of the season runs. A swap that was cut off is finished or cleared away first.
 *
 * @throws {Stopped} another build runs
 */
export async function alone<T>(paths: Paths, effects: BuildEffects, work: () => Promise<T>): Promise<T> {
  const { disk } = effects;
  await disk.makeFolder(paths.state, 0o700);
  await disk.makeFolder(paths.hold, 0o700);
  const release = await takeLock(paths.hold, effects.runner, effects);
  try {
    await recover(journalOf(paths), paths.desk === null ? [paths.out] : [paths.out, paths.desk], disk);
    // A preview's folder is never named by hand, and other commands write there too.
    if (paths.desk !== null) {
      await checkOurs(paths.out, SITE_PATTERNS, disk);
      await checkOurs(paths.desk, DESK_PATTERNS, disk);
    }
    return await work();
  } finally {
    await release();
  }
}

/** Replaces site and desk at once by finished files that keep to their folder's rules. */
export async function publish(
  site: readonly Output[],
  desk: readonly Output[],
  paths: Paths,
  effects: BuildEffects,
): Promise<void> {
  guard(site, paths.desk === null ? PREVIEW_PATTERNS : SITE_PATTERNS);
  guard(desk, DESK_PATTERNS);
  const replacements = [{ folder: paths.out, files: site }];
  if (paths.desk !== null) replacements.push({ folder: paths.desk, files: desk });
  await swap(replacements, journalOf(paths), effects.disk, (done, of) => effects.progress("files", done, of));
}
