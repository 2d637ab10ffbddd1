import { join } from "node:path";
import type { Effects } from "../schema/effects.ts";
import { EXIT, Stopped } from "./stopped.ts";

/** The running command, and how it tells whether another one still runs. */
export interface Runner {
  readonly pid: number;
  isAlive(pid: number): boolean;
}

/** Process number in a lock file; null for a file that was torn while being written. */
function holderOf(text: string): number | null {
  const found = /^pid (\d+)\n$/.exec(text);
  return found ? Number(found[1]) : null;
}

/**
 * Takes the season for one command. A lock whose command no longer runs is taken over.
 *
 * @param stateFolder absolute path of `.winterbook/`, which is there
 * @returns gives the season free again
 * @throws {Stopped} another command that still runs holds it
 */
export async function takeLock(
  stateFolder: string,
  runner: Runner,
  effects: Pick<Effects, "disk">,
): Promise<() => Promise<void>> {
  const path = join(stateFolder, "lock");
  const release = () => effects.disk.remove(path);
  // Three rounds: somebody else may take over the same dead lock between our looks at it.
  for (let round = 0; round < 3; round++) {
    if (await effects.disk.create(path, `pid ${runner.pid}\n`, 0o600)) return release;
    const text = await read(path, effects);
    if (text === null) continue;
    const holder = holderOf(text);
    if (holder !== null && holder !== runner.pid && runner.isAlive(holder)) {
      throw new Stopped(
        EXIT.usage,
        `another build of this season is running (process ${holder})`,
        `wait until it is done; if no build runs, remove ${path}`,
      );
    }
    await takeAway(path, text, runner, effects);
  }
  throw new Stopped(EXIT.usage, "another build of this season started at the same moment", "try again");
}

async function read(path: string, effects: Pick<Effects, "disk">): Promise<string | null> {
  try {
    return Buffer.from(await effects.disk.read(path)).toString("utf8");
  } catch {
    // Given free since: the next round takes it.
    return null;
  }
}

/** Renamed before it is removed, so that of two commands that saw the same dead lock one alone moves it. */
async function takeAway(path: string, dead: string, runner: Runner, effects: Pick<Effects, "disk">): Promise<void> {
  const aside = `${path}.${runner.pid}`;
  try {
    await effects.disk.rename(path, aside);
  } catch {
    return;
  }
  const moved = await read(aside, effects);
  // A new lock got there between our look and our hand: it goes back.
  if (moved !== null && moved !== dead) await effects.disk.create(path, moved, 0o600);
  await effects.disk.remove(aside);
}
