import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launch } from "../../src/cli/chromium.ts";
import type { Link } from "../../src/publish/links.ts";
import { linkFolder, sealFiles, withKeys } from "../../src/publish/sealing.ts";
import { renderSite, type SiteFile } from "../../src/site/site.ts";
import { fixtureInput, fixturePages } from "../site/fixture-site.ts";
import { violationsOn } from "./axe.ts";
import { type StaticServer, serveFiles } from "./static-server.ts";

/** The fullest fixture under four links: as it comes, one with a last day that is over, one that asks for words, and a club's. */
const secret = new Uint8Array(32).fill(7);
const WORDS = "four quiet words";
const token = (name: string) => `sealed-fixture-of-the-${name}`;
const full = fixturePages.filter(({ path }) => path.includes("-full-"));
const of = (name: string, reader: "family" | "club", until: string | null, passphrase: string | null): Link => ({
  ...{ athlete: "ottilie-fernmoor", recipient: reader, reader, label: null, token: token(name), until, passphrase },
  ...{ path: `${reader === "family" ? "r" : "c"}/${token(name)}/`, withheld: null, since: null, handed: [] },
  ...{ rotation: 0, sealed: true, key: null },
});
const PDF = "%PDF-1.7 not much of one";
let links: Link[];
let plain: SiteFile[];
let server: StaticServer;
let open: StaticServer;
let files: { path: string; body: string | Uint8Array }[];
let browser: Browser;

beforeAll(async () => {
  links = await withKeys(secret, [
    of("family", "family", "2999-12-31", null),
    of("ended", "family", "2020-01-31", null),
    of("asking", "family", null, WORDS),
    of("club", "club", null, null),
    of("note", "family", null, null),
  ]);
  const pages = links.map((link) => ({
    ...full.find(({ reader }) => reader === link.reader)!,
    ...{ token: link.token, path: `${link.path}index.html` },
    seal: { until: link.until, asks: link.passphrase !== null },
  }));
  const report = await renderSite({ ...fixtureInput, pages: pages.slice(0, -1), pdfs: true });
  const interim = await renderSite({ ...fixtureInput, pages: pages.slice(-1), interim: true });
  plain = [
    ...report,
    ...interim.filter(({ path }) => linkFolder(path) === linkOf("note").path),
    { path: `${linkOf("family").path}report.pdf`, body: PDF },
  ];
  files = await sealFiles(secret, plain, links);
  [server, open] = await Promise.all([serveFiles(files), serveFiles(plain)]);
  browser = await launch();
});

afterAll(async () => {
  await browser?.close();
  await Promise.all([server?.close(), open?.close()]);
});

const linkOf = (name: string) => links.find((link) => link.token === token(name))!;
const addressOf = (name: string, below = "") => `${server.origin}/${linkOf(name).path}${below}#${linkOf(name).key}`;
const said = (page: Page) => page.locator("main").textContent();

/** A page that complains of nothing, and asks nobody else for anything. */
async function quietPage(): Promise<{ page: Page; trouble: string[] }> {
  const page = await browser.newPage();
  const trouble: string[] = [];
  page.on("console", (message) => trouble.push(message.text()));
  page.on("pageerror", (error) => trouble.push(String(error)));
  page.on("request", (request) => {
    if (!request.url().startsWith("blob:") && !request.url().startsWith(server.origin)) trouble.push(request.url());
    if (links.some(({ key }) => key !== null && request.url().includes(key))) trouble.push(`the key: ${request.url()}`);
  });
  return { page, trouble };
}

const opens = async (page: Page) => page.locator("body:not(.plain)").waitFor();

describe("a sealed link", () => {
  test("has ciphertext below it and nothing else, and what lies elsewhere is as it was", () => {
    const below = files.filter(({ path }) => links.some((link) => link.path === linkFolder(path)));
    expect(below.length).toBeGreaterThan(20);
    for (const { path, body } of below) {
      expect(path).toMatch(/\.(?:html|jwe)$/);
      const text = path.endsWith(".jwe") ? "" : String(body).replace(/ id="sealed"[^<]*/, "");
      expect(text, path).not.toMatch(/Ottilie|Fernmoor|mph|<data|<svg/);
      const original = plain.find((one) => [path, path.replace(/\.jwe$/, "")].includes(one.path))!;
      for (const word of String(original.body).match(/>[^<]{25,}</g) ?? []) {
        if (!original.frame?.includes(word)) expect(text, path).not.toContain(word);
      }
    }
    const rest = (list: typeof files) =>
      list.filter(({ path }) => !links.some((link) => link.path === linkFolder(path)));
    expect(rest(files)).toEqual(rest(plain).map(({ path, body }) => ({ path, body })));
  });

  test.each([
    ["family", ""],
    ["family", "numbers/"],
    ["family", "card/"],
    ["family", "es/"],
    ["note", ""],
    ["note", "es/metric/"],
    ["club", ""],
  ] as const)("of the %s opens /%s with its key, to the very page that was sealed", async (name, below) => {
    const { page, trouble } = await quietPage();
    await page.goto(addressOf(name, below));
    await opens(page);
    const plainly = await browser.newPage();
    await plainly.goto(`${open.origin}/${linkOf(name).path}${below}`);
    const look = "[document.documentElement.lang, document.title, document.body.className, document.body.innerText]";
    await plainly.evaluate("document.fonts.ready");
    await page.evaluate("document.fonts.ready");
    expect(await page.evaluate(look)).toEqual(await plainly.evaluate(look));
    expect(await page.evaluate("document.body.scrollHeight")).toBe(
      await plainly.evaluate("document.body.scrollHeight"),
    );
    const violations = await violationsOn(page);
    expect(violations.map(({ id }) => id)).toEqual([]);
    expect(trouble).toEqual([]);
    await Promise.all([page.close(), plainly.close()]);
  });

  test("keeps its key through the skip link, ways inside the page, loading again, another language and back", async () => {
    const { page, trouble } = await quietPage();
    const { key } = linkOf("family");
    await page.goto(addressOf("family"));
    await opens(page);
    await page.locator("a.skip").focus();
    await page.keyboard.press("Enter");
    expect(await page.evaluate("document.activeElement.id")).toBe("main");
    expect(page.url()).toBe(addressOf("family"));
    const inside = page.locator('main a[data-jump^="measure-"]').first();
    const id = await inside.getAttribute("data-jump");
    await inside.click();
    expect(await page.evaluate("document.activeElement.id")).toBe(id);
    expect(Math.abs((await page.locator(`[id="${id}"]`).boundingBox())!.y)).toBeLessThan(200);
    expect(page.url()).toBe(addressOf("family"));
    await page.reload();
    await opens(page);
    await page.locator('nav.choices a[lang="es"]').click();
    await page.waitForURL(`**/es/index.html#${key}`);
    await opens(page);
    expect(await page.evaluate("document.documentElement.lang")).toBe("es");
    await page.locator("a[data-numbers]").click();
    await page.waitForURL(`**/es/numbers/index.html#${key}`);
    await opens(page);
    await page.goBack();
    await opens(page);
    await page.goBack();
    await opens(page);
    expect(page.url()).toBe(addressOf("family"));
    expect(await page.evaluate("document.documentElement.lang")).toBe("en");
    expect(trouble).toEqual([]);
    await page.close();
  });

  test("shows its pictures and gives its PDF, which lie sealed beside it", async () => {
    const { page, trouble } = await quietPage();
    await page.goto(addressOf("family"));
    await opens(page);
    const picture = page.locator(".voice img").first();
    await picture.scrollIntoViewIfNeeded();
    await expect.poll(() => page.evaluate("document.querySelector('.voice img').naturalWidth")).toBeGreaterThan(0);
    expect(await picture.getAttribute("src")).toMatch(/^blob:/);
    await page.goto(addressOf("family"));
    await opens(page);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.locator('a[type="application/pdf"]').click(),
    ]);
    const chunks: Buffer[] = [];
    for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
    expect(Buffer.concat(chunks).toString()).toBe(PDF);
    expect(download.suggestedFilename()).toBe("report.pdf");
    expect(trouble).toEqual([]);
    await page.close();
  });

  test("tells of a day in the words of the page with all the numbers, which is sealed as well", async () => {
    const { page, trouble } = await quietPage();
    await page.goto(addressOf("family"));
    await opens(page);
    const figure = page.locator(".measure figure[data-days][tabindex]").first();
    await figure.focus();
    await page.keyboard.press("Home");
    await expect.poll(() => page.evaluate("document.querySelector('.told')?.textContent")).toMatch(/\d/);
    expect(trouble).toEqual([]);
    await page.close();
  });
});

describe("nothing of a sealed report is shown, and in plain words why,", () => {
  test("without the key, and with it as soon as it is there", async () => {
    const { page } = await quietPage();
    await page.goto(`${server.origin}/${linkOf("family").path}`);
    await page.getByText("The last part of the link is missing").waitFor();
    await page.goto(addressOf("family"));
    await opens(page);
    await page.close();
  });

  test("with another key, with a key that is not whole, and when a bit of the file was changed", async () => {
    const { page } = await quietPage();
    const { key, path } = linkOf("family");
    await page.goto(`${server.origin}/${path}#${linkOf("club").key}`);
    await page.getByText("The link is not whole").waitFor();
    await page.goto("about:blank");
    await page.goto(`${server.origin}/${path}#${key!.slice(0, -1)}`);
    await page.getByText("The last part of the link is missing").waitFor();
    const lying = String(files.find((one) => one.path === `${path}index.html`)!.body);
    const at = lying.indexOf('id="sealed"') + 2000;
    const other = lying[at] === "A" ? "B" : "A";
    await page.route("**/*", (route) =>
      new URL(route.request().url()).pathname === `/${path}`
        ? route.fulfill({ contentType: "text/html", body: lying.slice(0, at) + other + lying.slice(at + 1) })
        : route.continue(),
    );
    await page.goto("about:blank");
    await page.goto(addressOf("family"));
    await page.getByText("The link is not whole").waitFor();
    expect(await page.content()).not.toContain("Ottilie");
    await page.close();
  });

  test("after its last day", async () => {
    const { page } = await quietPage();
    await page.goto(addressOf("ended"));
    await page.getByText("This link was meant to last through").waitFor();
    expect(await said(page)).toContain("January 31, 2020");
    expect(await page.content()).not.toContain("Ottilie");
    await page.close();
  });

  test("until the words are right", async () => {
    const { page, trouble } = await quietPage();
    await page.goto(addressOf("asking"));
    const words = page.locator("input[type=password]");
    await words.fill("four loud words");
    await words.press("Enter");
    await page.getByText("These words do not open it").waitFor({ timeout: 60_000 });
    expect(await page.content()).not.toContain("Ottilie");
    await words.fill(` ${WORDS} `);
    await page.locator("button").click();
    await opens(page);
    expect(await page.evaluate("document.body.innerText")).toContain("Ottilie");
    expect(trouble).toEqual([]);
    await page.close();
  }, 120_000);

  test("without scripts", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(addressOf("family"));
    expect(await page.locator("noscript").textContent()).toContain("ask for the printed copy");
    await context.close();
  });

  test("over plain http from elsewhere, where browsers have no encryption", async () => {
    const { page } = await quietPage();
    const byPath = new Map(files.map((file) => [`/${file.path}`, file.body]));
    await page.route("http://cage.example/**", (route) => {
      const { pathname } = new URL(route.request().url());
      const body = byPath.get(pathname.endsWith("/") ? `${pathname}index.html` : pathname);
      const contentType = pathname.endsWith(".js")
        ? "text/javascript"
        : pathname.endsWith(".css")
          ? "text/css"
          : "text/html";
      return body === undefined ? route.abort() : route.fulfill({ contentType, body: Buffer.from(body) });
    });
    await page.goto(`http://cage.example/${linkOf("family").path}#${linkOf("family").key}`);
    await page.getByText("Or ask for the printed copy").waitFor();
    await page.close();
  });
});
