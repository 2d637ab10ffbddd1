import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { build, check } from "../../src/build.ts";
import { realEffects } from "../../src/cli/effects.ts";
import { failureOf } from "../../src/cli/failure.ts";
import { sayProblem } from "../../src/cli/messages.ts";
import { problemLines } from "../../src/cli/problems.ts";

/**
 * A folder in, a folder out: each folder beside this file is a season (`content`, `data`) and what must come of it
 * (`expected`). After a wanted change, `WINTERBOOK_UPDATE=1 npx vitest run tests/seasons` writes `expected` anew; read the
 * difference before keeping it.
 */
const here = import.meta.dirname;
const cases = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);
const temporary = mkdtempSync(join(tmpdir(), "winterbook-seasons-"));
afterAll(() => rmSync(temporary, { recursive: true, force: true }));

/** The same secret every time, so that links are the same. */
const fixedBytes = (count: number) => new Uint8Array(count).fill(7);
const alone = { pid: 1, isAlive: () => false };

function filesBelow(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    .sort();
}

/** Asset names carry a hash of what is in them; which one is not what a season is about. */
const withoutHash = (name: string) => name.replace(/\.[0-9a-f]{12}\./, ".*.");

/** What came of a season, as file name -> text. */
async function outcomeOf(name: string): Promise<Map<string, string>> {
  const season = join(temporary, name);
  cpSync(join(here, name), season, { recursive: true });
  const at = (folder: string) => join(season, folder);
  const state = at(".winterbook");
  const paths = { content: at("content"), data: at("data"), out: at("_site"), desk: at("_desk"), state, hold: state };
  const effects = {
    ...realEffects(() => {}, process.stderr),
    randomBytes: fixedBytes,
    runner: alone,
    progress: () => {},
  };
  const outcome = new Map<string, string>();
  const problems = await check(paths, {}, effects).then(
    (assessed) => problemLines(assessed.problems),
    (error) => failureOf(error, false).lines,
  );
  outcome.set("check.txt", `${problems.join("\n")}\n`);
  try {
    const built = await build(paths, { say: sayProblem }, effects);
    const { total } = built.ledger;
    const rows = { read: total.read, counted: total.counted, notCounted: total.notCounted, setAside: total.setAside };
    outcome.set(
      "build.json",
      `${JSON.stringify({ asOf: built.asOf, athletes: built.athletes, missing: built.missing, pages: built.pages, rows }, null, 1)}\n`,
    );
  } catch (error) {
    outcome.set("build.txt", `exit ${failureOf(error, false).exit}\n`);
  }
  outcome.set("site.txt", `${filesBelow(paths.out).map(withoutHash).join("\n")}\n`);
  outcome.set("desk.txt", `${filesBelow(paths.desk).map(withoutHash).join("\n")}\n`);
  for (const file of filesBelow(paths.desk)) {
    if (/\.(json|csv)$/.test(file)) outcome.set(`_desk/${file}`, readFileSync(join(paths.desk, file), "utf8"));
  }
  return outcome;
}

describe.each(cases)("the season %s", (name) => {
  test("comes out as its folder says, to the byte", async () => {
    const outcome = await outcomeOf(name);
    const expected = join(here, name, "expected");
    if (process.env.WINTERBOOK_UPDATE === "1") {
      rmSync(expected, { recursive: true, force: true });
      for (const [file, text] of outcome)
        await realEffects(() => {}, process.stderr).disk.write(join(expected, file), text);
    }
    expect([...outcome.keys()].sort()).toEqual(filesBelow(expected));
    for (const [file, text] of outcome) expect(text, file).toBe(readFileSync(join(expected, file), "utf8"));
  });
});

test("there are seasons that must fail among them", () => {
  expect(cases.filter((name) => existsSync(join(here, name, "expected", "build.txt")))).not.toEqual([]);
});
