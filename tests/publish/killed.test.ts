import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { build as bundle } from "esbuild";
import { afterAll, beforeAll, expect, test } from "vitest";
import { alone } from "../../src/build/publish.ts";
import { build } from "../../src/build.ts";
import { bytesOf, OPTIONS, pathsOf, quiet, removeFolder, seasonFolder } from "../cli/small-season.ts";
import { filesOf } from "../opened-site.ts";

const folder = mkdtempSync(join(tmpdir(), "winterbook-killed-"));
const program = join(folder, "loop.cjs");

beforeAll(async () => {
  const entryPoints = [join(import.meta.dirname, "publishing-loop.ts")];
  await bundle({ entryPoints, outfile: program, bundle: true, platform: "node", format: "cjs" });
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const KILLS = 50;
/** Twice as long as one round takes on a slow machine: every moment of it is met. */
const LONGEST_MS = 120;

test("killed fifty times at any moment, the next command finds site and desk both old or both new", async () => {
  const root = join(folder, "season");
  const paths = pathsOf(root);
  let last = 0;
  const met = new Set<string>();
  for (let kill = 0; kill < KILLS; kill++) {
    const child = spawn(process.execPath, [program, root, String(last + 1)], { stdio: ["ignore", "pipe", "inherit"] });
    await once(child.stdout, "data");
    await wait(Math.random() * LONGEST_MS);
    child.kill("SIGKILL");
    await once(child, "close");
    met.add(readdirSync(root).sort().join(" "));
    await alone(paths, quiet(), async () => {});
    const [site, desk] = [filesOf(paths.out), filesOf(paths.desk)];
    const numbers = new Set([...site, ...desk].map(({ body }) => /number (\d+)$/.exec(body.toString("utf8"))?.[1]));
    expect(numbers.size, `after kill ${kill}`).toBe(1);
    expect([site.length, desk.length], `after kill ${kill}`).toEqual([42, 42]);
    expect(readdirSync(root).sort(), `after kill ${kill}`).toEqual([".winterbook", "_desk", "_site"]);
    expect(readdirSync(paths.state), `after kill ${kill}`).toEqual([]);
    last = Number([...numbers][0]);
  }
  // Else the kills would all have come between two rounds, and shown nothing.
  expect(met.size).toBeGreaterThan(1);
}, 120_000);

test("of two builds of one season at once one is told of the other or waits, and the site is one's whole", async () => {
  const root = await seasonFolder();
  const run = async () => {
    const main = join(import.meta.dirname, "../../src/cli/main.ts");
    const child = spawn(process.execPath, ["--import", "tsx", main, "build", "--season", root], {
      cwd: join(import.meta.dirname, "../.."),
      stdio: ["ignore", "pipe", "pipe"],
    });
    let said = "";
    for (const stream of [child.stdout, child.stderr]) stream.on("data", (text) => (said += String(text)));
    const [exit] = (await once(child, "close")) as [number];
    return { exit, said };
  };
  const both = await Promise.all([run(), run()]);
  const refused = both.filter(({ exit }) => exit === 2);
  for (const { said } of refused) expect(said).toContain("another build of this season");
  expect(both.filter(({ exit }) => exit === 0).length).toBe(2 - refused.length);
  expect(refused.length).toBeLessThan(2);
  const made = [await bytesOf(pathsOf(root).out), await bytesOf(pathsOf(root).desk)];
  await build(pathsOf(root), OPTIONS, quiet());
  expect([await bytesOf(pathsOf(root).out), await bytesOf(pathsOf(root).desk)]).toEqual(made);
  await removeFolder(root);
}, 120_000);
