import { mkdir, symlink, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { afterAll, beforeAll, expect, test } from "vitest";
import { build } from "../../src/build.ts";
import { bytesOf, OPTIONS, pathsOf, quiet, removeFolder, seasonFolder } from "../cli/small-season.ts";

/** The child whose files are hostile stands beside a grown hitter whose are not. */
const BEN = "content/athletes/ben-ridge";
const PROFILE = "name: Ben Ridge\nborn: 2014\nconsent: [{ by: her, as: guardian, on: 2026-01-02, readers: [family] }]";
const profile = (...more: string[]) => ({ [`${BEN}/profile.md`]: `---\n${[PROFILE, ...more].join("\n")}\n---\n` });
const note = (front: string, body = "Well hit.") => ({
  [`${BEN}/notes/a.md`]: `---\ndate: 2026-01-20\nauthor: athlete\nreaders: [family]\n${front}\n---\n${body}\n`,
});
const bomb = [
  "a: &a [x, x, x, x, x, x, x, x, x]",
  ..."bcdefghij".split("").map((letter, i) => {
    const before = `*${"abcdefghij"[i]}`;
    return `${letter}: &${letter} [${Array(9).fill(before).join(", ")}]`;
  }),
].join("\n");

type Files = Readonly<Record<string, string | Uint8Array | { readonly link: string }>>;
const CASES: readonly (readonly [name: string, files: Files, code: string])[] = [
  ["a permalink that leaves the site", note("permalink: ../../../../escaped/index.html"), "unknown-key"],
  [
    "a recipient whose id leaves the site",
    profile("recipients: [{ id: ../../escaped, reader: family }]"),
    "wrong-value",
  ],
  ["a game bat whose id leaves the site", profile("game_bat: ../../escaped"), "wrong-value"],
  [
    "an athlete's folder with a name of Windows' own",
    { "content/athletes/con/profile.md": `---\n${PROFILE}\n---\n` },
    "bad-folder-name",
  ],
  ["one with its number", { "content/athletes/com1/profile.md": `---\n${PROFILE}\n---\n` }, "bad-folder-name"],
  [
    "an athlete's folder that ends in a dot",
    { "content/athletes/ben./profile.md": `---\n${PROFILE}\n---\n` },
    "bad-folder-name",
  ],
  [
    "an athlete's folder called __proto__",
    { "content/athletes/__proto__/profile.md": `---\n${PROFILE}\n---\n` },
    "bad-folder-name",
  ],
  [
    "a profile that is a link to a file elsewhere",
    { [`${BEN}/profile.md`]: { link: "/etc/passwd" } },
    "not-a-plain-file",
  ],
  [
    "a picture that is a link",
    { ...note("kind: words", "![x](a.png)"), [`${BEN}/notes/a.png`]: { link: "/etc/passwd" } },
    "not-a-plain-file",
  ],
  ["a key called __proto__", profile("__proto__: { minor: false, polluted: true }"), "unknown-key"],
  ["a key called constructor", profile("constructor: { prototype: { polluted: true } }"), "unknown-key"],
  ["aliases that would grow without end", { [`${BEN}/profile.md`]: `---\n${bomb}\n---\n` }, "unreadable-yaml"],
  ["brackets within brackets", profile(`aliases: ${"[".repeat(20_000)}${"]".repeat(20_000)}`), "unreadable-yaml"],
  ["front matter of 50 MB", profile(`aliases: [${"very long name, ".repeat(3_500_000)}]`), "page-too-long"],
  [
    "a mapping with keys of its own making",
    { "data/mappings/m.json": '{ "__proto__": { "label": "x" }, "label": "x" }' },
    "unknown-key",
  ],
];

/** Her pages with the child in the season and without: what is known of a group hangs on who is in it. */
let before: Record<string, string>[];
const roots: string[] = [];
async function seasonWith(files: Files): Promise<string> {
  const plain = Object.fromEntries(
    Object.entries(files).filter(([, body]) => typeof body === "string" || body instanceof Uint8Array),
  );
  const root = await seasonFolder({ [`${BEN}/profile.md`]: null, ...(plain as Record<string, string>) });
  roots.push(root);
  for (const [path, body] of Object.entries(files)) {
    if (typeof body === "string" || body instanceof Uint8Array) continue;
    await mkdir(dirname(join(root, path)), { recursive: true });
    await symlink(body.link, join(root, path));
  }
  return root;
}
/** Ada's pages, whatever else there is. */
const hers = async (root: string, links: Awaited<ReturnType<typeof build>>["links"]) => {
  const site = await bytesOf(pathsOf(root).out);
  const own = links.filter(({ athlete }) => athlete === "ada-lund").map(({ path }) => path);
  return Object.fromEntries(Object.entries(site).filter(([path]) => own.some((folder) => path.startsWith(folder))));
};

beforeAll(async () => {
  before = await Promise.all(
    [profile(), {}].map(async (files) => {
      const root = await seasonWith(files);
      return hers(root, (await build(pathsOf(root), OPTIONS, quiet())).links);
    }),
  );
  for (const pages of before) expect(Object.keys(pages).length).toBeGreaterThan(5);
});

afterAll(async () => {
  for (const root of roots) await removeFolder(root);
});

test.each(CASES)("%s is refused by name, and nobody else is touched", async (_, files, code) => {
  const root = await seasonWith(files);
  await writeFile(join(root, "outside.txt"), "as it was");
  const { problems, links } = await build(pathsOf(root), OPTIONS, quiet());
  expect(problems.map((problem) => problem.code)).toContain(code);
  const found = await hers(root, links);
  expect(before.some((pages) => isDeepStrictEqual(pages, found))).toBe(true);
  const made = Object.keys(await bytesOf(root)).filter(
    (path) => !/^(?:content|data|_site|_desk|\.winterbook)\//.test(path),
  );
  expect(made).toEqual(["outside.txt"]);
  const site = Object.entries(await bytesOf(pathsOf(root).out));
  for (const [path, body] of site) {
    expect(path).not.toMatch(/escaped|passwd/);
    expect(Buffer.from(body, "base64").toString("latin1"), path).not.toMatch(/root:x:0/);
  }
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
});
