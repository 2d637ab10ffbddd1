import { expect, test } from "vitest";
import { nextOf, oldOf, recover, swap } from "../../src/publish/swap.ts";
import { MemoryDisk, PowerCut } from "./memory-disk.ts";

const SITE = "/season/_site";
const DESK = "/season/_desk";
const JOURNAL = "/season/.winterbook/swap.json";
const OLD_SITE = { "index.html": "old index", "r/aaa/index.html": "old report", "assets/a.css": "old style" };
const OLD_DESK = { "index.html": "old desk", "ledger.json": "old ledger" };
const NEW_SITE = { "index.html": "new index", "r/bbb/index.html": "new report" };
const NEW_DESK = { "index.html": "new desk", "ledger.json": "new ledger", "links.csv": "new links" };

const below = (folder: string, files: Record<string, string>) =>
  Object.fromEntries(Object.entries(files).map(([path, text]) => [`${folder}/${path}`, text]));
const outputs = (files: Record<string, string>) => Object.entries(files).map(([path, body]) => ({ path, body }));
const replacements = [
  { folder: SITE, files: outputs(NEW_SITE) },
  { folder: DESK, files: outputs(NEW_DESK) },
];
const published = () => new MemoryDisk({ ...below(SITE, OLD_SITE), ...below(DESK, OLD_DESK) });

/** Runs a swap on a disk that stops after so many operations; true when it ran to its end. */
async function interrupted(disk: MemoryDisk, operations: number): Promise<boolean> {
  disk.stopAfter = operations;
  try {
    await swap(replacements, JOURNAL, disk);
    return true;
  } catch (error) {
    if (!(error instanceof PowerCut)) throw error;
    return false;
  } finally {
    disk.stopAfter = Number.POSITIVE_INFINITY;
    disk.operations = 0;
  }
}

const isOld = (disk: MemoryDisk) =>
  JSON.stringify([disk.tree(SITE), disk.tree(DESK)]) === JSON.stringify([sorted(OLD_SITE), sorted(OLD_DESK)]);
const isNew = (disk: MemoryDisk) =>
  JSON.stringify([disk.tree(SITE), disk.tree(DESK)]) === JSON.stringify([sorted(NEW_SITE), sorted(NEW_DESK)]);
const sorted = (files: Record<string, string>) => Object.fromEntries(Object.entries(files).sort());

test("a build killed after any step leaves site and desk both old or both new", async () => {
  const ends = { old: 0, new: 0 };
  let finished = false;
  for (let k = 0; !finished; k++) {
    const disk = published();
    finished = await interrupted(disk, k);
    await recover(JOURNAL, [SITE, DESK], disk);
    expect(isOld(disk) || isNew(disk), `stopped after ${k} operations`).toBe(true);
    expect(
      [...disk.files.keys()].filter((path) => /winterbook/.test(path)),
      `leftovers after ${k}`,
    ).toEqual([]);
    ends[isOld(disk) ? "old" : "new"]++;
  }
  // Both ends were really seen: steps before the journal undo, steps after it finish.
  expect(ends.old).toBeGreaterThan(5);
  expect(ends.new).toBeGreaterThan(5);
});

test("until the new site is in place, the previous one lies whole in its place or beside it", async () => {
  let finished = false;
  for (let k = 0; !finished; k++) {
    const disk = published();
    finished = await interrupted(disk, k);
    const whole = [SITE, oldOf(SITE)].some((f) => JSON.stringify(disk.tree(f)) === JSON.stringify(sorted(OLD_SITE)));
    const replaced = JSON.stringify(disk.tree(SITE)) === JSON.stringify(sorted(NEW_SITE));
    expect(whole || replaced, `stopped after ${k} operations`).toBe(true);
  }
});

test("a recovery that is killed itself is taken up by the next one", async () => {
  for (let k = 0, done = false; !done; k++) {
    for (let again = 0, recovered = false; !recovered; again++) {
      const disk = published();
      done = await interrupted(disk, k);
      disk.stopAfter = again;
      recovered = await recover(JOURNAL, [SITE, DESK], disk).then(
        () => true,
        () => false,
      );
      disk.stopAfter = Number.POSITIVE_INFINITY;
      await recover(JOURNAL, [SITE, DESK], disk);
      expect(isOld(disk) || isNew(disk), `stopped after ${k}, then after ${again}`).toBe(true);
    }
  }
});

test("the first build has nothing to move aside", async () => {
  for (let k = 0, done = false; !done; k++) {
    const disk = new MemoryDisk();
    done = await interrupted(disk, k);
    await recover(JOURNAL, [SITE, DESK], disk);
    const nothing = disk.files.size === 0;
    expect(nothing || isNew(disk), `stopped after ${k} operations`).toBe(true);
  }
});

test("a season folder that was moved after the kill is still recovered", async () => {
  const disk = published();
  const whole = published();
  await swap(replacements, JOURNAL, whole);
  for (let k = 0, done = false; !done; k++) {
    const cut = published();
    done = await interrupted(cut, k);
    if (!(await cut.exists(JOURNAL))) continue;
    const moved = new MemoryDisk();
    for (const [path, body] of cut.files) moved.files.set(path.replace("/season/", "/elsewhere/"), body);
    await recover(JOURNAL.replace("/season/", "/elsewhere/"), ["/elsewhere/_site", "/elsewhere/_desk"], moved);
    expect(moved.tree("/elsewhere/_site")).toEqual(NEW_SITE);
    expect(moved.tree("/elsewhere/_desk")).toEqual(NEW_DESK);
  }
  expect(isOld(disk)).toBe(true);
});

test("a damaged journal is said in words, and nothing is touched", async () => {
  const disk = published();
  await disk.write(JOURNAL, "{");
  await expect(recover(JOURNAL, [SITE, DESK], disk)).rejects.toThrow(/journal|damaged/);
  expect(isOld(disk)).toBe(true);
});

test("with both the live and the finished folder gone, nothing more is thrown away", async () => {
  const disk = new MemoryDisk({
    ...below(oldOf(SITE), OLD_SITE),
    [JOURNAL]: JSON.stringify({ v: 1, folders: ["../_site"] }),
  });
  await expect(recover(JOURNAL, [SITE], disk)).rejects.toThrow("is gone");
  expect(disk.tree(oldOf(SITE))).toEqual(OLD_SITE);
  expect(await disk.exists(nextOf(SITE))).toBe(false);
});
