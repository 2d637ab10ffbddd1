import { cp, mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, expect, test } from "vitest";
import { checkImports } from "./check.ts";

const PROJECT = join(import.meta.dirname, "..", "..");
const RULES = join(PROJECT, ".dependency-cruiser.mjs");
let folder = "";

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "imports-"));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** A project of its own with these sources. */
async function planted(name: string, sources: Readonly<Record<string, string>>): Promise<string> {
  const root = join(folder, name);
  for (const [path, text] of Object.entries(sources)) {
    await mkdir(dirname(join(root, path)), { recursive: true });
    await writeFile(join(root, path), text);
  }
  await cp(join(PROJECT, "tsconfig.json"), join(root, "tsconfig.json"));
  return root;
}

const complaints = async (name: string, sources: Readonly<Record<string, string>>) =>
  (await checkImports(await planted(name, sources), RULES)).complaints;

const SOUND = {
  "src/schema/units.ts": "export const mph = 1;\nexport type Mph = number;\n",
  "src/hitting/gate.ts": 'import { mph } from "../schema/units.ts";\nexport const gate = mph;\n',
};

test("arrows of this project point one way", async () => {
  const { complaints: found, modules, dependencies } = await checkImports(PROJECT, RULES);
  expect(found).toEqual([]);
  expect(modules).toBeGreaterThan(20);
  expect(dependencies).toBeGreaterThan(modules);
});

test("a sound tree passes", async () => {
  expect(await complaints("sound", SOUND)).toEqual([]);
});

test.each([
  [
    "statistics that hear of a bat",
    "src/stats/mean.ts",
    'import { gate } from "../hitting/gate.ts";\nexport const mean = gate;\n',
  ],
  [
    "a page that sees a rep",
    "src/site/page.tsx",
    'import { gate } from "../hitting/gate.ts";\nexport const page = gate;\n',
  ],
  [
    "a type alone",
    "src/stats/sd.ts",
    'import type { Mph } from "../schema/units.ts";\nexport const sd = (x: Mph) => x;\n',
  ],
  ["a type named in passing", "src/stats/sum.ts", 'export const sum = (x: import("../schema/units.ts").Mph) => x;\n'],
])("a forbidden import is seen: %s", async (name, path, text) => {
  const found = await complaints(name.replaceAll(" ", "-"), { ...SOUND, [path]: text });
  expect(found).toHaveLength(1);
  expect(found[0]).toContain(`-reaches-only-its-own: ${path} -> src/`);
});

test("a file touched in the middle of the work is seen", async () => {
  const text = 'import { readFileSync } from "node:fs";\nexport const read = readFileSync;\n';
  expect(await complaints("fs", { ...SOUND, "src/report/read.ts": text })).toEqual([
    "files-at-the-ends-only: src/report/read.ts -> fs",
  ]);
});

test("a stage that calls the front door is seen", async () => {
  const sources = {
    "src/build.ts": "export const build = 1;\n",
    "src/report/report.ts": 'import { build } from "../build.ts";\nexport const report = build;\n',
  };
  const found = await complaints("front-door", { ...SOUND, ...sources });
  expect(found.join("\n")).toContain("front-door-is-for-commands: src/report/report.ts -> src/build.ts");
});

test("a circle is seen, of types too", async () => {
  const circle = {
    "src/report/a.ts": 'import type { B } from "./b.ts";\nexport type A = B | null;\n',
    "src/report/b.ts": 'import type { A } from "./a.ts";\nexport type B = A | string;\n',
  };
  const found = await complaints("circle", { ...SOUND, ...circle });
  expect(found.length).toBeGreaterThan(0);
  expect(found.every((line) => line.startsWith("no-circular: "))).toBe(true);
});

test("an import of nothing is seen", async () => {
  const found = await complaints("lost", { ...SOUND, "src/stats/lost.ts": 'export * from "./gone.ts";\n' });
  expect(found.join("\n")).toContain("no-unresolvable: src/stats/lost.ts");
});

test("files that went unread are counted, and no silence passes for order", async () => {
  const root = await planted("unread", SOUND);
  const rules = join(root, "rules.mjs");
  const text = `import all from ${JSON.stringify(pathToFileURL(RULES).href)};
export default { ...all, options: { ...all.options, exclude: { path: "hitting" } } };
`;
  await writeFile(rules, text);
  expect((await checkImports(root, rules)).complaints).toEqual(["only 1 of 2 files under src were read"]);
});
