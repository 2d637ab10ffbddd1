import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { launch } from "../../src/cli/chromium.ts";
import { renderDesk } from "../../src/site/desk.ts";
import { desk } from "../site/fixture-desk.ts";
import { strayDigits } from "./figures-on-page.ts";

let browser: Browser;
let folder: string;

beforeAll(async () => {
  browser = await launch();
  folder = await mkdtemp(join(tmpdir(), "winterbook-desk-"));
  for (const { path, body } of await renderDesk(desk)) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), body);
  }
});

afterAll(async () => {
  await browser?.close();
  await rm(folder, { recursive: true, force: true });
});

test.each([390, 1280])("the desk opens from disk with its style and fonts, and fits %d px", async (width) => {
  const page = await browser.newPage({ viewport: { width, height: 844 } });
  const trouble: string[] = [];
  page.on("console", (message) => trouble.push(message.text()));
  page.on("requestfailed", (request) => trouble.push(request.url()));
  await page.goto(pathToFileURL(join(folder, "index.html")).href);
  expect(await page.evaluate("document.fonts.ready.then((fonts) => [...fonts].map((font) => font.status))")).toEqual([
    "loaded",
    "loaded",
  ]);
  expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
  expect(await strayDigits(page)).toEqual([]);
  expect(trouble).toEqual([]);
  await page.close();
});
