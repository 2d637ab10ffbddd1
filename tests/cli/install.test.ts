import { spawn } from "node:child_process";
import { chmod, copyFile, mkdir, mkdtemp, readFile, rm, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";

const HOOK = join(import.meta.dirname, "..", "..", "src", "cli", "install.mjs");
let root = "";

/** A project with the hook and an npm that only writes down how it was called. */
beforeEach(async () => {
  root = await mkdtemp(join(tmpdir(), "install-"));
  await mkdir(join(root, "src", "cli"), { recursive: true });
  await copyFile(HOOK, join(root, "src", "cli", "install.mjs"));
  await writeFile(join(root, "package.json"), JSON.stringify({ engines: { node: ">=20.19" } }));
  await writeFile(join(root, "package-lock.json"), "{}");
  await mkdir(join(root, "bin"));
  await npmIs(`
echo "$@" >> calls
echo "npm speaks"
sleep 0.4
mkdir -p node_modules
touch node_modules/.package-lock.json`);
});
afterEach(() => rm(root, { recursive: true, force: true }));

async function npmIs(script: string): Promise<void> {
  await writeFile(join(root, "bin", "npm"), `#!/bin/sh\n${script}\n`);
  await chmod(join(root, "bin", "npm"), 0o755);
}

interface Ran {
  readonly code: number | null;
  readonly said: string;
}

function run(): Promise<Ran> {
  const { npm_execpath: _, ...env } = process.env;
  const child = spawn(process.execPath, [join(root, "src", "cli", "install.mjs")], {
    cwd: tmpdir(),
    env: { ...env, PATH: `${join(root, "bin")}:${env.PATH}` },
  });
  let said = "";
  child.stdout.on("data", (text) => {
    said += text;
  });
  child.stderr.on("data", (text) => {
    said += text;
  });
  return new Promise((done) => child.on("close", (code) => done({ code, said })));
}

const calls = async () => (await readFile(join(root, "calls"), "utf8").catch(() => "")).split("\n").filter(Boolean);
const installed = async (seconds: number) => {
  await mkdir(join(root, "node_modules"), { recursive: true });
  await writeFile(join(root, "node_modules", ".package-lock.json"), "{}");
  await utimes(join(root, "node_modules", ".package-lock.json"), seconds, seconds);
};
const lockedAt = (seconds: number) => utimes(join(root, "package-lock.json"), seconds, seconds);
const lockFolder = () => readFile(join(root, ".install-lock", "pid"), "utf8").catch(() => null);

describe("the install hook", () => {
  test("installs on a fresh clone, says so, and lets npm speak", async () => {
    const { code, said } = await run();
    expect(code).toBe(0);
    expect(await calls()).toEqual(["ci --include=dev --no-audit --no-fund"]);
    expect(said).toContain("npm ci");
    expect(said).toContain("npm speaks");
    expect(await lockFolder()).toBeNull();
  });

  test("installs again when the lock file is newer than the installation", async () => {
    await lockedAt(2000);
    await installed(1000);
    await run();
    expect(await calls()).toHaveLength(1);
  });

  test.each([
    ["as old as", 2000],
    ["newer than", 3000],
  ])("does nothing and says nothing when the installation is %s the lock file", async (_, seconds) => {
    await lockedAt(2000);
    await installed(seconds);
    expect(await run()).toEqual({ code: 0, said: "" });
    expect(await calls()).toEqual([]);
  });

  test("installs once when two commands start at once", async () => {
    const both = await Promise.all([run(), run()]);
    expect(both.map(({ code }) => code)).toEqual([0, 0]);
    expect(await calls()).toHaveLength(1);
  });

  test("takes over the lock of a command that is gone", async () => {
    const gone = spawn(process.execPath, ["-e", ""]);
    await new Promise((done) => gone.on("close", done));
    await mkdir(join(root, ".install-lock"));
    await writeFile(join(root, ".install-lock", "pid"), String(gone.pid));
    expect((await run()).code).toBe(0);
    expect(await calls()).toHaveLength(1);
    expect(await lockFolder()).toBeNull();
  });

  test("waits while another command installs", async () => {
    await mkdir(join(root, ".install-lock"));
    await writeFile(join(root, ".install-lock", "pid"), String(process.pid));
    const waiting = run();
    // A busy machine takes its time to start a process.
    await new Promise((done) => setTimeout(done, 3000));
    expect(await calls()).toEqual([]);
    await installed(Date.now() / 1000 + 10);
    const { code, said } = await waiting;
    expect(code).toBe(0);
    expect(said).toContain("waiting");
    expect(await calls()).toEqual([]);
    // The other one's lock is the other one's to take away.
    expect(await lockFolder()).toBe(String(process.pid));
  });

  test("passes on npm's exit status and leaves no lock behind", async () => {
    await npmIs("exit 7");
    expect((await run()).code).toBe(7);
    expect(await lockFolder()).toBeNull();
  });

  test("names the Node it needs before anything else", async () => {
    await writeFile(join(root, "package.json"), JSON.stringify({ engines: { node: ">=99.1" } }));
    const { code, said } = await run();
    expect(code).toBe(1);
    expect(said).toBe(
      `Winterbook needs Node 99.1 or newer, and this is Node ${process.versions.node}. Install a newer Node and try again.\n`,
    );
    expect(await calls()).toEqual([]);
  });

  test("leans on nothing but Node itself", async () => {
    const text = await readFile(HOOK, "utf8");
    const imports = [...text.matchAll(/from "([^"]+)"/g)].map(([, name]) => name);
    expect(imports.length).toBeGreaterThan(0);
    expect(imports.every((name) => name?.startsWith("node:"))).toBe(true);
  });
});
