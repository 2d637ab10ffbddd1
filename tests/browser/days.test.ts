import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { lookedAt } from "../site/fixture-site.ts";
import { fixturesServed } from "./fixtures-served.ts";

const served = fixturesServed();

const PICTURE = ".measure figure[data-days]";
/** The fullest of the reports in English. */
const reportPath = () => lookedAt.find(({ path }) => /^r\/[^/]+\/index\.html$/.test(path))!.path;

async function open(path = reportPath()): Promise<Page> {
  const page = await served.browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(`${served.server.origin}/${path}`);
  return page;
}

/** The line under a picture, once it says something. */
async function told(page: Page, index = 0): Promise<string> {
  const line = page.locator(".told").nth(index);
  await line.filter({ hasText: /\S/ }).waitFor();
  return ((await line.textContent()) ?? "").replaceAll(/\s/g, " ");
}

/** Cells of a day in the table of a measure on the page with all the numbers. */
async function rowOf(page: Page, index: number, measure = 0): Promise<{ day: string; swings: string; mean: string }> {
  const article = await page
    .locator(PICTURE)
    .nth(measure)
    .evaluate((figure) => figure.closest("[id]")?.id);
  const numbers = await open(reportPath().replace("index.html", "numbers/index.html"));
  const row = numbers.locator(`#${article} table[data-unit] tbody tr`).nth(index);
  const cells = await row.locator("th, td").allTextContents();
  const heads = await numbers.locator(`#${article} table[data-unit] thead th`).allTextContents();
  const at = (name: RegExp) => cells[heads.findIndex((head) => name.test(head.trim()))]!.trim();
  const found = { day: cells[0]!.trim(), swings: at(/^Swings$/i), mean: at(/^(Mean|Average)$/i) };
  await numbers.close();
  return found;
}

describe("the days behind a picture", () => {
  test("arrow keys go from day to day, and the line says what the table has", async () => {
    const page = await open();
    const picture = page.locator(PICTURE).first();
    const dots = await picture.locator("circle").count();
    await picture.focus();
    const last = await rowOf(page, dots - 1);
    const says = await told(page);
    expect(says).toContain(last.day);
    expect(says).toContain(` ${last.mean} mph`);
    expect(says).toContain(` ${last.swings}`);
    await page.keyboard.press("Home");
    await page.keyboard.press("ArrowRight");
    const second = await rowOf(page, 1);
    await page
      .locator(".told")
      .first()
      .filter({ hasText: `${second.day}:` })
      .waitFor();
    expect(await told(page)).toContain(` ${second.mean} mph`);
    expect(await picture.locator("circle.chosen").count()).toBe(1);
    await page.keyboard.press("Escape");
    expect(await page.locator(".told").first().textContent()).toBe("");
    expect(await picture.locator("circle.chosen").count()).toBe(0);
    await page.close();
  });

  test("pointing tells of the nearest day, and a press chooses it in every picture that has it", async () => {
    const page = await open();
    const picture = page.locator(PICTURE).first();
    await picture.scrollIntoViewIfNeeded();
    const dot = await picture.locator("circle").first().boundingBox();
    await page.mouse.move(dot!.x + 3, dot!.y + 40);
    const first = await told(page);
    await page.mouse.down();
    await page.mouse.up();
    await page.locator("circle.chosen").nth(1).waitFor();
    const day = first.slice(0, first.indexOf(":"));
    for (const line of await page.locator(".told").allTextContents())
      if (line !== "") expect(line.startsWith(`${day}:`)).toBe(true);
    await page.close();
  });

  test("where the numbers cannot be had the page stays as it is, without a complaint", async () => {
    const page = await served.browser.newPage();
    const trouble: string[] = [];
    page.on("pageerror", (error) => trouble.push(error.message));
    await page.route("**/numbers/index.html", (route) => route.fulfill({ status: 404, body: "" }));
    await page.goto(`${served.server.origin}/${reportPath()}`);
    await page.locator(PICTURE).first().focus();
    await page.waitForTimeout(300);
    expect(await page.locator(".told").first().textContent()).toBe("");
    expect(trouble).toEqual([]);
    await page.close();
  });

  test("the scripts are ours, these two, and small", () => {
    const scripts = served.files.filter(({ path }) => path.endsWith(".js"));
    expect(scripts.map(({ path }) => path.replace(/\.[0-9a-f]{12}\./, "."))).toEqual([
      "assets/days.js",
      "assets/opener.js",
    ]);
    for (const { path, body } of scripts) expect(gzipSync(body, { level: 9 }).length, path).toBeLessThan(2300);
  });
});
