import { execFile } from "node:child_process";
import { cp, mkdtemp, readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, test } from "vitest";
import { literally } from "../../src/schema/text.ts";
import { en } from "../../src/site/messages/en.ts";
import { removeFolder, seasonFolder } from "../cli/small-season.ts";

const run = promisify(execFile);
const here = join(import.meta.dirname, "../..");
/** Stands before every sentence of the made-up language, and nowhere in English. */
const MARK = "ŝ";

let program: string;
let season: string;

beforeAll(async () => {
  program = await mkdtemp(join(tmpdir(), "third-language-"));
  for (const name of ["package.json", "tsconfig.json"]) await cp(join(here, name), join(program, name));
  await cp(join(here, "src"), join(program, "src"), { recursive: true });
  await symlink(join(here, "node_modules"), join(program, "node_modules"));
  const sentences = Object.entries(en).map(([key, sentence]) => [key, `${MARK}${sentence}`]);
  await writeFile(
    join(program, "src/site/messages/eo.ts"),
    `import type { Catalogue } from "../catalogues.ts";\nexport const eo: Catalogue = ${JSON.stringify(Object.fromEntries(sentences))};\n`,
  );
  const facility =
    "name: Lantern Cage\nseason: { name: Winter, start: 2026-01-05, end: 2026-02-28 }\nlanguages: [en, eo]\nseal: false";
  season = await seasonFolder({
    "content/facility.md": `---\n${facility}\nmeasures: [{ metric: bat_speed, condition: { environment: tee } }]\n---\n`,
  });
});

afterAll(async () => {
  await removeFolder(season);
  await rm(program, { recursive: true, force: true });
});

test("a third language is one file: with it alone every page stands in it too", async () => {
  await run(
    process.execPath,
    [join(here, "node_modules/tsx/dist/cli.mjs"), "src/cli/main.ts", "build", "--season", season],
    {
      cwd: program,
    },
  );
  const paths = (await readdir(join(season, "_site"), { recursive: true })).filter((path) =>
    /^[rc]\/[^/]+\/eo\/(metric\/)?(numbers\/)?index\.html$/.test(path),
  );
  expect(paths.length).toBe(2 * 4 + 2);
  for (const path of paths) {
    const html = await readFile(join(season, "_site", path), "utf8");
    expect(html, path).toContain('<html lang="eo">');
    // Every sentence's own text has the mark; what the athlete wrote, names, days, figures and unit signs have none.
    const heads = [...html.matchAll(/<h2[^>]*>(.*?)<\/h2>/g)].map(([, head]) => head!.replace(/<[^>]*>/g, ""));
    expect(heads.length, path).toBeGreaterThan(3);
    expect(
      heads.filter((head) => !head.startsWith(MARK)),
      path,
    ).toEqual([]);
    const english = Object.values(en).filter((sentence) => !/[{}]/.test(sentence) && sentence.length > 20);
    const unmarked = english.filter((sentence) => new RegExp(`[^${MARK}]${literally(sentence)}`).test(html));
    expect(unmarked, path).toEqual([]);
  }
}, 120_000);
