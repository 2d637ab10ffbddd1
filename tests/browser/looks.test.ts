import { mkdir, mkdtemp, readdir, readFile, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pixelmatch from "pixelmatch";
import type { Page } from "playwright-core";
import sharp, { type Sharp } from "sharp";
import { describe, expect, test } from "vitest";
import { renderDesk } from "../../src/site/desk.ts";
import { desk } from "../site/fixture-desk.ts";
import { lookedAt, SEALED_PAGE } from "../site/fixture-site.ts";
import { fixturesServed } from "./fixtures-served.ts";
import { type StaticServer, serveFiles } from "./static-server.ts";

/** Pictures of every kind of page, half as large; taken anew with `WINTERBOOK_UPDATE=1`. */
const KEPT = join(import.meta.dirname, "looks");
const UPDATE = process.env.WINTERBOOK_UPDATE === "1";
/** Of the pixels of a picture. */
const MOST_DIFFERENT = 0.005;
/** Difference of two colours below which a pixel is the same, 0 to 1: what the kept pictures lose by having few colours. */
const SAME = 0.15;
const COLOURS = 16;
const MOST_BYTES = 40 * 1024;
const MOST_BYTES_IN_ALL = 1024 * 1024;

/** Width of the window and how much of the page from its top is looked at, px. */
const WINDOWS = [
  { width: 390, height: 1700 },
  { width: 1280, height: 1050 },
] as const;
const LIGHTS = ["light", "dark", "print"] as const;

const full = (reader: string, below = "") =>
  lookedAt.find(
    ({ token, path }) => token.includes(`-full-${reader}`) && path.endsWith(`${reader}/${below}index.html`),
  )!.path;
const KINDS: Readonly<Record<string, () => string>> = {
  front: () => "index.html",
  missing: () => "404.html",
  family: () => full("family"),
  numbers: () => full("family", "numbers/"),
  card: () => full("family", "card/"),
  interim: () => lookedAt.find(({ token }) => token.includes("-interim-"))!.path,
  club: () => full("club"),
  sealed: () => SEALED_PAGE,
  made: () => "style/index.html",
  desk: () => "desk/index.html",
  pairs: () => `desk/${desk.pairings[0] === undefined ? "" : `pairs/${desk.pairings[0].athlete}.html`}`,
};

const served = fixturesServed();
let withDesk: StaticServer | undefined;
let failed: string | undefined;

async function origin(): Promise<string> {
  const files = (await renderDesk(desk)).map((file) => ({ ...file, path: `desk/${file.path}` }));
  withDesk ??= await serveFiles([...served.files, ...files]);
  return withDesk.origin;
}

/** The top of a page, half as large, as red, green, blue and opacity of each pixel. */
async function looksLike(page: Page, path: string, light: (typeof LIGHTS)[number], height: number) {
  await page.emulateMedia(light === "print" ? { media: "print" } : { media: "screen", colorScheme: light });
  await page.goto(`${await origin()}/${path}`);
  await page.evaluate("Promise.all([...document.fonts].map((font) => font.load())).then(() => undefined)");
  const { width, tall } = (await page.evaluate(
    "({ width: innerWidth, tall: document.documentElement.scrollHeight })",
  )) as { width: number; tall: number };
  const picture = await page.screenshot({
    fullPage: true,
    clip: { x: 0, y: 0, width, height: Math.min(tall, height) },
  });
  return sharp(picture).resize({ width: Math.round(width / 2) });
}

const pixels = async (picture: Sharp) => {
  const { data, info } = await picture.ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
};

/** Keeps what a failed comparison saw where it can be looked at. */
async function keepForEyes(name: string, now: Awaited<ReturnType<typeof pixels>>, marked: Uint8Array): Promise<string> {
  failed ??= await mkdtemp(join(tmpdir(), "winterbook-looks-"));
  const raw = { width: now.width, height: now.height, channels: 4 as const };
  await sharp(now.data, { raw })
    .png()
    .toFile(join(failed, `${name}.png`));
  await sharp(marked, { raw })
    .png()
    .toFile(join(failed, `${name}.difference.png`));
  return failed;
}

describe.each(Object.entries(KINDS))("%s", (kind, path) => {
  test("looks as it did, on a phone and on a desk, by day, by night and in print", async () => {
    await mkdir(KEPT, { recursive: true });
    for (const { width, height } of WINDOWS) {
      const context = await served.browser.newContext({ viewport: { width, height: 900 } });
      const page = await context.newPage();
      for (const light of LIGHTS) {
        const name = `${kind}-${width}-${light}`;
        const file = join(KEPT, `${name}.png`);
        const picture = await looksLike(page, path(), light, height);
        if (UPDATE)
          await writeFile(
            file,
            await picture.clone().png({ palette: true, colours: COLOURS, effort: 10, dither: 0 }).toBuffer(),
          );
        const [now, kept] = [await pixels(picture), await pixels(sharp(await readFile(file)))];
        expect([now.width, now.height], name).toEqual([kept.width, kept.height]);
        const marked = new Uint8Array(now.data.length);
        const different = pixelmatch(kept.data, now.data, marked, now.width, now.height, { threshold: SAME });
        const share = different / (now.width * now.height);
        const where = share > MOST_DIFFERENT ? await keepForEyes(name, now, marked) : "";
        expect(share, `${name} looks different; see ${where}`).toBeLessThanOrEqual(MOST_DIFFERENT);
      }
      await context.close();
    }
  }, 120_000);
});

test("a page that has changed is noticed", async () => {
  const page = await served.browser.newPage({ viewport: { width: 390, height: 900 } });
  const before = await pixels(await looksLike(page, full("family"), "light", 1700));
  const after = await pixels(await looksLike(page, full("family", "es/"), "light", 1700));
  const height = Math.min(before.height, after.height);
  const size = before.width * height * 4;
  const different = pixelmatch(
    before.data.subarray(0, size),
    after.data.subarray(0, size),
    undefined,
    before.width,
    height,
    {
      threshold: SAME,
    },
  );
  expect(different / (before.width * height)).toBeGreaterThan(MOST_DIFFERENT);
  await page.close();
}, 60_000);

test("the pictures are those of the pages, and small", async () => {
  await withDesk?.close();
  const names = (await readdir(KEPT)).sort();
  const wanted = Object.keys(KINDS).flatMap((kind) =>
    WINDOWS.flatMap(({ width }) => LIGHTS.map((light) => `${kind}-${width}-${light}.png`)),
  );
  expect(names).toEqual(wanted.sort());
  const sizes = await Promise.all(names.map(async (name) => (await stat(join(KEPT, name))).size));
  for (const [i, size] of sizes.entries()) expect(size, names[i]).toBeLessThanOrEqual(MOST_BYTES);
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(MOST_BYTES_IN_ALL);
});
