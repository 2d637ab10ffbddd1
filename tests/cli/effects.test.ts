import { chmod, mkdir, mkdtemp, rm, stat, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { realDisk, thisProcess } from "../../src/cli/effects.ts";
import { secretOf } from "../../src/publish/secret.ts";

let root = "";
beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), "disk-"));
});
afterEach(() => rm(root, { recursive: true, force: true }));

const modeOf = async (path: string) => (await stat(path)).mode & 0o777;

describe("the disk of this machine", () => {
  test("lists files in the order of code points, and names links without following them", async () => {
    await realDisk.write(join(root, "b", "z.md"), "z");
    await realDisk.write(join(root, "a.md"), "a");
    await realDisk.write(join(root, "B.md"), "b");
    await symlink(join(root, "b"), join(root, "c"));
    expect(await realDisk.list(root)).toEqual([
      { path: "B.md", kind: "file" },
      { path: "a.md", kind: "file" },
      { path: "b/z.md", kind: "file" },
      { path: "c", kind: "link" },
    ]);
  });

  test("holds nothing in a folder that is not there", async () => {
    expect(await realDisk.list(join(root, "gone"))).toEqual([]);
    expect(await realDisk.exists(join(root, "gone"))).toBe(false);
    await realDisk.remove(join(root, "gone"));
  });

  test("creates a file once", async () => {
    const path = join(root, "made", "once");
    expect(await realDisk.create(path, "first")).toBe(true);
    expect(await realDisk.create(path, "second")).toBe(false);
    expect(Buffer.from(await realDisk.read(path)).toString()).toBe("first");
  });

  test("keeps the secret from other people on this machine", async () => {
    const state = join(root, ".winterbook");
    // A folder that somebody made before, open to all, is shut.
    await mkdir(state);
    await chmod(state, 0o755);
    await secretOf(state, { disk: realDisk, randomBytes: (count) => new Uint8Array(count) });
    expect(await modeOf(state)).toBe(0o700);
    expect(await modeOf(join(state, "secret"))).toBe(0o600);
  });

  test("moves a whole folder, and takes one away", async () => {
    await writeFile(join(root, "x"), "x");
    await realDisk.write(join(root, "from", "deep", "a"), "a");
    await realDisk.rename(join(root, "from"), join(root, "to"));
    expect(await realDisk.exists(join(root, "from"))).toBe(false);
    expect((await realDisk.list(join(root, "to"))).map(({ path }) => path)).toEqual(["deep/a"]);
    await realDisk.remove(join(root, "to"));
    expect((await realDisk.list(root)).map(({ path }) => path)).toEqual(["x"]);
  });
});

test("a process that runs is told from one that does not", () => {
  expect(thisProcess.isAlive(process.pid)).toBe(true);
  expect(thisProcess.isAlive(2 ** 30)).toBe(false);
});
