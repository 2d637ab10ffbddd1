import type { Browser, BrowserContext, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { desk } from "../../src/site/messages/desk.ts";
import { en } from "../../src/site/messages/en.ts";
import { readPointer } from "../../src/site/pointer.ts";
import { lookedAt, SEALED_PAGE } from "../site/fixture-site.ts";
import { violationsOn } from "./axe.ts";
import { figuresOn, strayDigits } from "./figures-on-page.ts";
import { fixturesServed } from "./fixtures-served.ts";
import { sheets } from "./sheets.ts";

/** Digits that sentences of the catalogue hold for good, such as 95%. */
const FIXED = new Set(
  Object.values({ ...en, ...desk }).flatMap((sentence) => sentence.match(/[^\s({]*\d[^\s;,)}]*/g) ?? []),
);

const served = fixturesServed();

const paths = ["index.html", "404.html", SEALED_PAGE, ...lookedAt.map(({ path }) => path)];
type Look = Parameters<Browser["newContext"]>[0];

/** Visits every page in one kind of window. */
async function visit(look: Look, see: (page: Page, path: string) => Promise<void>): Promise<void> {
  const context: BrowserContext = await served.browser.newContext(look);
  try {
    for (const path of paths) {
      const page = await context.newPage();
      await page.goto(`${served.server.origin}/${path}`);
      await see(page, path);
      await page.close();
    }
  } finally {
    await context.close();
  }
}

const unfold = (page: Page) => page.evaluate(`document.querySelectorAll("details").forEach((d) => { d.open = true; })`);

describe.each([320, 390, 1280])("in a window %d px wide", (width) => {
  test("no page scrolls sideways, not even with every table unfolded", async () => {
    await visit({ viewport: { width, height: 844 } }, async (page, path) => {
      await unfold(page);
      expect(await page.evaluate("document.documentElement.scrollWidth"), path).toBeLessThanOrEqual(width);
    });
  });
});

describe.each([
  [390, "light"],
  [390, "dark"],
  [1280, "light"],
  [1280, "dark"],
] as const)("at %d px, %s", (width, colorScheme) => {
  test("every page loads quietly and only from its own host, fonts included", async () => {
    const context = await served.browser.newContext({ viewport: { width, height: 844 }, colorScheme });
    for (const path of paths) {
      const page = await context.newPage();
      const trouble: string[] = [];
      const asked: string[] = [];
      page.on("console", (message) => trouble.push(message.text()));
      page.on("pageerror", (error) => trouble.push(error.message));
      page.on("requestfailed", (request) => trouble.push(request.url()));
      page.on("request", (request) => asked.push(request.url()));
      await page.goto(`${served.server.origin}/${path}`);
      await page.evaluate("document.fonts.ready.then(() => undefined)");
      expect(trouble, path).toEqual([]);
      expect(
        asked.filter((url) => !url.startsWith(`${served.server.origin}/`)),
        path,
      ).toEqual([]);
      expect(asked.filter((url) => url.endsWith(".woff2")).length, path).toBeGreaterThan(0);
      await page.close();
    }
    await context.close();
  });

  test("axe finds nothing to complain of, tables unfolded", async () => {
    const found = new Set<string>();
    await visit({ viewport: { width, height: 844 }, colorScheme }, async (page, path) => {
      // In metric units a page only has other figures.
      if (path.includes("metric")) return;
      await unfold(page);
      const violations = await violationsOn(page);
      for (const { id, nodes } of violations) {
        for (const { html, failureSummary } of nodes) found.add(`${path.slice(0, 2)} ${id}: ${html} ${failureSummary}`);
      }
    });
    expect([...found].slice(0, 10)).toEqual([]);
  });
});

test("with scripts off every page reads the same", async () => {
  const texts: Record<string, string>[] = [];
  for (const javaScriptEnabled of [true, false]) {
    const seen: Record<string, string> = {};
    await visit({ viewport: { width: 390, height: 844 }, javaScriptEnabled }, async (page, path) => {
      // biome-ignore lint/performance/useDomNodeTextContent: what is hidden does not count, only what a reader sees
      seen[path] = await page.locator("body").innerText();
    });
    texts.push(seen);
  }
  // A sealed page needs its script to open, and says so.
  const [with_ = "", without = ""] = texts.map((seen) => seen[SEALED_PAGE]);
  expect(with_).toContain("The last part of the link is missing");
  expect(without).toContain("It needs scripts to open");
  for (const seen of texts) delete seen[SEALED_PAGE];
  expect(texts[1]).toEqual(texts[0]);
  expect(texts[0]?.[lookedAt[0]!.path]).toContain("What changed");
});

test("no page shows a value that is none", async () => {
  await visit({}, async (page, path) => {
    expect(await page.locator("html").innerHTML(), path).not.toMatch(/NaN|undefined|Infinity|\[object|>null</);
  });
});

test("every figure is the report's own, rounded and nothing else", async () => {
  let compared = 0;
  await visit({}, async (page, path) => {
    const fixture = lookedAt.find((candidate) => candidate.path === path);
    for (const { at, value, text, per } of await figuresOn(page)) {
      expect(fixture, `${path} shows ${text}`).toBeDefined();
      expect(at, `${path} shows ${text}`).not.toBeNull();
      const held = readPointer(fixture!.report, at!);
      expect(value, `${path} ${at}`).toBe(String(held));
      compared += 1;
      const inMetric = fixture!.report.facility.units === "metric" || path.includes("/metric/");
      if (inMetric || text.startsWith("<")) continue;
      const digits = text.replaceAll(",", "").replace("−", "-").replace("%", "");
      const shown = Number(digits) / (text.endsWith("%") ? 100 : per);
      const decimals = (digits.split(".")[1] ?? "").length + (text.endsWith("%") ? 2 : 0);
      // Percentiles are told from 1 to 99 only.
      const told = at!.endsWith("/percentile") ? Math.max(1, Math.min(99, Number(held))) : Number(held);
      expect(Math.abs(shown - told), `${path} ${at}: ${text}`).toBeLessThanOrEqual(
        (0.5 * 10 ** -decimals) / per + 1e-9,
      );
    }
  });
  expect(compared).toBeGreaterThan(1000);
});

test("no digit stands outside a figure, a day, people's own words and the catalogue's fixed ones", async () => {
  await visit({}, async (page, path) => {
    const stray = (await strayDigits(page)).map((text) =>
      [...FIXED].reduce((rest, fixed) => rest.replaceAll(fixed, ""), text),
    );
    expect(
      stray.filter((text) => /\d/.test(text)),
      path,
    ).toEqual([]);
  });
});

test("a page for the family is read in order: one first heading, no level skipped", async () => {
  await visit({}, async (page, path) => {
    const levels = (await page.evaluate(
      `[...document.querySelectorAll("h1,h2,h3,h4,h5,h6")].map((heading) => Number(heading.tagName[1]))`,
    )) as number[];
    expect(
      levels.filter((level) => level === 1),
      path,
    ).toHaveLength(1);
    for (const [index, level] of levels.entries())
      expect(level - (levels[index - 1] ?? 0), path).toBeLessThanOrEqual(1);
  });
});

test("the keyboard reaches the report past the skip link, and every focus can be seen", async () => {
  const context = await served.browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  await page.goto(`${served.server.origin}/${lookedAt[0]!.path}`);
  await page.keyboard.press("Tab");
  const skip = page.locator("a.skip");
  expect(await skip.evaluate((element) => element.ownerDocument.activeElement === element)).toBe(true);
  expect((await skip.boundingBox())?.y).toBeGreaterThanOrEqual(0);
  await page.keyboard.press("Enter");
  expect(page.url()).toMatch(/#main$/);
  await page.keyboard.press("Tab");
  expect(await page.evaluate("getComputedStyle(document.activeElement).outlineStyle")).not.toBe("none");
  await context.close();
});

test("with letters twice as large nothing is cut off and no page scrolls sideways", async () => {
  await visit({ viewport: { width: 640, height: 844 } }, async (page, path) => {
    await page.evaluate(`document.documentElement.style.fontSize = "212.5%"`);
    await unfold(page);
    expect(await page.evaluate("document.documentElement.scrollWidth"), path).toBeLessThanOrEqual(640);
  });
});

test("nothing moves by itself, whatever a reader asked for", async () => {
  for (const reducedMotion of ["reduce", "no-preference"] as const) {
    await visit({ viewport: { width: 390, height: 844 }, reducedMotion }, async (page, path) => {
      expect(await page.evaluate("document.getAnimations().length"), path).toBe(0);
      const moving = (await page.evaluate(
        `[...document.querySelectorAll("*")].filter((one) => {
          const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(one);
          return transitionDuration !== "0s" || animationName !== "none" || scrollBehavior === "smooth";
        }).length`,
      )) as number;
      expect(moving, path).toBe(0);
    });
  }
});

test("a note in between is one screen of a phone, its facility's notice left out", async () => {
  const page = await served.browser.newPage({ viewport: { width: 390, height: 844 } });
  for (const { path } of lookedAt.filter(({ token }) => token.includes("-interim-"))) {
    await page.goto(`${served.server.origin}/${path}`);
    await page.evaluate("document.fonts.ready.then(() => undefined)");
    const [all, notice] = (await page.evaluate(
      `[document.querySelector("main").getBoundingClientRect().bottom, document.querySelector(".notice, .logo").getBoundingClientRect().height + document.querySelector(".logo").getBoundingClientRect().height]`,
    )) as [number, number];
    expect(all - notice, path).toBeLessThanOrEqual(844);
  }
  await page.close();
});

test("a replaced link shows the page that explains it, in its own clothes", async () => {
  const page = await served.browser.newPage();
  const answer = await page.goto(`${served.server.origin}/r/a-link-that-is-not-there-any-more/`);
  expect(answer?.status()).toBe(404);
  expect(await page.locator("h1").textContent()).toBe("There is no page here");
  expect(await page.evaluate("document.styleSheets[0].cssRules.length")).toBeGreaterThan(10);
  await page.close();
});

test.each(["A4", "Letter"] as const)("a club's page prints on one sheet of %s", async (format) => {
  const page = await served.browser.newPage();
  for (const { path } of lookedAt.filter(({ reader }) => reader === "club")) {
    expect(await sheets(page, `${served.server.origin}/${path}`, format), path).toBe(1);
  }
  await page.close();
});
