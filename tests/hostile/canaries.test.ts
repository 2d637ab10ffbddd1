import { afterAll, beforeAll, expect, test } from "vitest";
import { type Built, build } from "../../src/build.ts";
import { linkFolder } from "../../src/publish/sealing.ts";
import { OPTIONS, pathsOf, quiet, removeFolder, seasonFolder } from "../cli/small-season.ts";
import { filesOf, openedSite, type SiteBytes } from "../opened-site.ts";
import { ATHLETES, markedSeason, type Shown } from "./marked-season.ts";

/** A word that stands nowhere else, in every field of every file. */
const canaries = new Map<string, { field: string; shown: Shown }>();
const wordFor = (field: string, shown: Shown): string => {
  const known = [...canaries].find(([, one]) => one.field === field);
  if (known) return known[0];
  const word = `kanarin${String(canaries.size).padStart(3, "0")}q`;
  canaries.set(word, { field, shown });
  return word;
};

let root: string;
let built: Built;
let lying: SiteBytes[];
let site: SiteBytes[];
let desk: SiteBytes[];

beforeAll(async () => {
  root = await seasonFolder({ ...emptied, ...markedSeason(wordFor) });
  const paths = pathsOf(root);
  built = await build(paths, OPTIONS, quiet());
  lying = filesOf(paths.out);
  site = await openedSite(lying, built.links);
  desk = filesOf(paths.desk);
});

afterAll(() => removeFolder(root));

/** The small season's own files stay away. */
const emptied = Object.fromEntries(
  [
    "content/athletes/ada-lund/notes/2026-01-20.md",
    "content/athletes/ada-lund/notes/2026-01-21.md",
    "content/athletes/ada-lund/notes/stance.png",
    "content/athletes/ada-lund/notes/hidden.png",
    "content/athletes/cleo-vane/profile.md",
    "data/swings/more.csv",
  ].map((path) => [path, null]),
);

const ownerOf = ({ path }: SiteBytes): string | null =>
  built.links.find((link) => link.path === linkFolder(path))?.athlete ?? null;
const wordsIn = ({ body }: SiteBytes): string[] => [...new Set(body.toString("utf8").match(/kanarin\d{3}q/g) ?? [])];

test("both athletes are published to both readers, one open and one sealed", () => {
  expect(built.links.map(({ athlete, reader, withheld, sealed }) => [athlete, reader, withheld, sealed])).toEqual([
    ["ada-lund", "family", null, false],
    ["ada-lund", "club", null, false],
    ["ben-ridge", "family", null, true],
    ["ben-ridge", "club", null, true],
  ]);
  expect(canaries.size).toBeGreaterThan(100);
});

test("no word stands on a page where it does not belong", () => {
  const strays = site.flatMap((file) => {
    const owner = ownerOf(file);
    return wordsIn(file).flatMap((word) => {
      const { field, shown } = canaries.get(word)!;
      const allowed = shown === "everybody" || (shown === "own" && owner !== null && field.startsWith(owner));
      return allowed ? [] : [`${file.path}: ${field}`];
    });
  });
  expect([...new Set(strays)]).toEqual([]);
});

test("the words of both athletes' own texts do stand on their pages, so that the search finds what is there", () => {
  for (const { id } of ATHLETES) {
    const own = new Set(site.filter((file) => ownerOf(file) === id).flatMap(wordsIn));
    const fields = [...own].map((word) => canaries.get(word)!.field).filter((field) => field.startsWith(id));
    for (const field of ["note", "closing", "plan body", "own words", "assessment body", "why", "purpose"])
      expect(fields, id).toContain(`${id} ${field}`);
  }
});

test("pages that are nobody's hold no word of anybody", () => {
  for (const file of site.filter((one) => ownerOf(one) === null))
    for (const word of wordsIn(file)) expect(canaries.get(word)?.shown, `${file.path}: ${word}`).toBe("everybody");
});

test("a sealed page holds no athlete's word before it is opened", () => {
  const sealed = lying.filter((file) => ownerOf(file) === "ben-ridge");
  expect(sealed.length).toBeGreaterThan(10);
  for (const file of sealed)
    for (const word of wordsIn(file)) expect(canaries.get(word)?.shown, file.path).toBe("everybody");
});

test("nobody's name, id, token, key or day of birth stands in another's page, and no day of birth in any", () => {
  for (const file of site) {
    const text = file.body.toString("utf8");
    const owner = ownerOf(file);
    for (const { id, name, born } of ATHLETES) {
      expect(text, file.path).not.toContain(born);
      if (id === owner) continue;
      expect(text, file.path).not.toContain(id);
      expect(text.toLowerCase(), file.path).not.toContain(name.toLowerCase());
      expect(text, file.path).not.toContain(name.split(" ")[1]);
    }
    for (const { athlete, token, key } of built.links) {
      if (athlete !== owner) expect(text, file.path).not.toContain(token);
      if (key !== null) expect(text, file.path).not.toContain(key);
    }
  }
});

test("a sealed page shows first name and initial alone", () => {
  const ben = site.filter((file) => ownerOf(file) === "ben-ridge" && file.path.endsWith(".html"));
  for (const { path, body } of ben) expect(body.toString("utf8"), path).not.toContain("Ridgewell");
  expect(ben.some(({ body }) => body.toString("utf8").includes("Benjamin R."))).toBe(true);
});

test("of one athlete's words the desk's files of another hold none", () => {
  for (const { id } of ATHLETES) {
    const files = desk.filter(({ path }) => path.includes(`/${id}.`));
    expect(files.length).toBeGreaterThan(1);
    for (const file of files)
      for (const word of wordsIn(file)) {
        const other = ATHLETES.find((one) => one.id !== id)!.id;
        expect(canaries.get(word)!.field.startsWith(other), `${file.path}: ${canaries.get(word)!.field}`).toBe(false);
      }
  }
});
