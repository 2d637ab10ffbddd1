import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Built, build } from "../../src/build.ts";
import { launch } from "../../src/cli/chromium.ts";
import { realEffects, thisProcess } from "../../src/cli/effects.ts";
import { sayProblem } from "../../src/cli/messages.ts";
import { readPointer } from "../../src/site/pointer.ts";
import { filesOf, openedSite, type SiteBytes, sealedIn } from "../opened-site.ts";
import { figuresOn } from "./figures-on-page.ts";
import { sheets } from "./sheets.ts";
import { type StaticServer, serveFiles } from "./static-server.ts";

/** The committed demo season, built as anybody would, in a folder of its own. */
const folder = mkdtempSync(join(tmpdir(), "winterbook-demo-"));
let built: Built;
/** As they lie on the host, and as they are for those who hold the links. */
let lying: SiteBytes[];
let files: SiteBytes[];
let server: StaticServer;
let browser: Browser;

beforeAll(async () => {
  const state = join(folder, ".winterbook");
  const paths = {
    content: "content",
    data: "data",
    out: join(folder, "_site"),
    desk: join(folder, "_desk"),
    state,
    hold: state,
  };
  const effects = { ...realEffects(() => {}, process.stderr), progress: () => {}, runner: thisProcess };
  built = await build(paths, { say: sayProblem }, effects);
  lying = filesOf(paths.out);
  files = await openedSite(lying, built.links);
  server = await serveFiles(files);
  browser = await launch();
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

const published = () => built.links.filter(({ withheld }) => withheld === null);
/** A link's first page, and some of those that lie below it. */
const waysTo = ({ athlete, reader, path }: Built["links"][number]) =>
  ["", "metric/", ...(reader === "family" ? ["numbers/", "card/"] : [])].map((below) => ({
    athlete,
    path: `${path}${below}`,
  }));
const reportOf = (athlete: string) =>
  JSON.parse(readFileSync(join(folder, "_desk", "reports", `${athlete}.json`), "utf8"));

test("eight of nine athletes are published, and the one nobody agreed for is on the desk alone", () => {
  expect(new Set(published().map(({ athlete }) => athlete)).size).toBe(8);
  expect(built.athletes).toHaveLength(9);
  expect(reportOf("rufus-ellingthorpe").athlete.displayName).toBe("Rufus E.");
  expect(files.filter(({ body }) => /rufus|ellingthorpe/i.test(body.toString("utf8")))).toEqual([]);
});

test("the public folder holds what it may hold and nothing else", () => {
  const allowed =
    /^(index\.html|404\.html|robots\.txt|_headers|assets\/([\w.-]+\.(css|woff2|txt)|(days|opener)\.[0-9a-f]{12}\.js)|[rc]\/[a-z0-9]{26,}\/(((en|es)\/)?(metric\/)?index\.html|img-[0-9a-f]+\.(png|jpe?g|gif|webp)(\.jwe)?)|r\/[a-z0-9]{26,}\/((en|es)\/)?(metric\/)?(numbers|card)\/index\.html)$/;
  expect(lying.map(({ path }) => path).filter((path) => !allowed.test(path))).toEqual([]);
});

test("reports of minors lie there as ciphertext alone, and of adults in plain words", () => {
  const minors = published().filter(({ athlete }) => reportOf(athlete).athlete.minor);
  expect(minors.length).toBeGreaterThan(5);
  for (const { athlete, path, sealed } of published()) {
    expect(sealed, path).toBe(reportOf(athlete).athlete.minor);
    const pages = lying.filter((file) => file.path.startsWith(path) && file.path.endsWith(".html"));
    expect(pages.length, path).toBeGreaterThan(3);
    const { displayName } = reportOf(athlete).athlete;
    for (const page of pages) {
      const text = page.body.toString("utf8");
      expect(sealedIn(text) !== null, page.path).toBe(sealed);
      expect(text.includes(displayName), page.path).toBe(!sealed);
      if (sealed) expect(text.replace(/ id="sealed"[^<]*/, ""), page.path).not.toMatch(/mph|km\/h|swing|<data/);
    }
  }
});

test("every page says that the demo is invented", () => {
  const pages = files.filter(({ path }) => path.endsWith(".html"));
  expect(
    pages.filter(({ body }) => !/all invented|son inventados/.test(body.toString("utf8"))).map(({ path }) => path),
  ).toEqual([]);
});

test.each([390, 1280])(
  "every published page reads well %d px wide: quiet, whole, and with the report's own figures",
  async (width) => {
    const context = await browser.newContext({ viewport: { width, height: 844 } });
    let compared = 0;
    for (const { athlete, path } of published().flatMap(waysTo)) {
      const report = reportOf(athlete);
      const page = await context.newPage();
      const trouble: string[] = [];
      page.on("console", (message) => trouble.push(message.text()));
      page.on("request", (request) => request.url().startsWith(server.origin) || trouble.push(request.url()));
      await page.goto(`${server.origin}/${path}`);
      expect(trouble, path).toEqual([]);
      expect(await page.locator("html").innerHTML(), path).not.toMatch(/NaN|undefined|Infinity|\[object|>null</);
      expect(await page.evaluate("document.documentElement.scrollWidth"), path).toBeLessThanOrEqual(width);
      for (const { at, value } of await figuresOn(page)) {
        expect(value, `${path} ${at}`).toBe(String(readPointer(report, at ?? "")));
        compared += 1;
      }
      await page.close();
    }
    await context.close();
    expect(compared).toBeGreaterThan(1000);
  },
  // Fifty pages, beside other browsers on two cores.
  180_000,
);

test("every family's report is light: at most 16 KB packed with its charts, and 6000 elements, in both languages", () => {
  const reports = files.filter(({ path }) => /^r\/[^/]+\/((en|es)\/)?(metric\/)?index\.html$/.test(path));
  expect(reports.length).toBe(8 * 4);
  for (const { path, body } of reports) {
    expect(gzipSync(body, { level: 9 }).length, path).toBeLessThanOrEqual(16 * 1024);
    expect(body.toString("utf8").match(/<[a-z]/g)?.length, path).toBeLessThanOrEqual(6000);
  }
});

test("the first load of a family's report is at most 75 KB packed, and nothing shifts while it loads", async () => {
  const packed = new Map<string, number>();
  for (const { path, body } of files)
    packed.set(`/${path}`, path.endsWith(".woff2") ? body.length : gzipSync(body, { level: 9 }).length);
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  await context.addInitScript(`
    globalThis.shifted = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) globalThis.shifted += entry.value;
    }).observe({ type: "layout-shift", buffered: true });
  `);
  for (const { path } of published().filter(({ reader }) => reader === "family")) {
    const page = await context.newPage();
    const asked: string[] = [];
    page.on("request", (request) => asked.push(new URL(request.url()).pathname));
    await page.goto(`${server.origin}/${path}`);
    await page.evaluate("document.fonts.ready.then(() => new Promise((done) => setTimeout(done, 200)))");
    const bytes = asked.reduce((sum, one) => sum + packed.get(one.endsWith("/") ? `${one}index.html` : one)!, 0);
    expect(asked.length, path).toBeGreaterThan(3);
    expect(bytes, path).toBeLessThanOrEqual(75 * 1024);
    expect(await page.evaluate("globalThis.shifted"), path).toBe(0);
    await page.close();
  }
  await context.close();
});

test.each(["A4", "Letter"] as const)("every club page of the demo is one sheet of %s", async (format) => {
  const page = await browser.newPage();
  const clubs = files.filter(({ path }) => /^c\/.*index\.html$/.test(path));
  expect(clubs.length).toBe(8 * 4);
  for (const { path } of clubs) expect(await sheets(page, `${server.origin}/${path}`, format), path).toBe(1);
  await page.close();
});

test("each story shows in its report", () => {
  const change = (athlete: string, metric: string, environment: string) => {
    const series = reportOf(athlete).series.find(
      (one: { metric: string; measure: number | null; condition: { environment?: string } }) =>
        one.metric === metric && one.measure !== null && one.condition.environment === environment,
    );
    return series.change as { estimate: number; ci95: [number, number] } | null;
  };
  const above = (one: ReturnType<typeof change>) => one !== null && one.ci95[0] > 0;
  const below = (one: ReturnType<typeof change>) => one !== null && one.ci95[1] < 0;
  const cannotSay = (one: ReturnType<typeof change>) => one !== null && one.ci95[0] < 0 && one.ci95[1] > 0;

  expect(above(change("corwin-tallowby", "bat_speed", "machine")), "a clear gain").toBe(true);
  expect(above(change("juniper-brackwell", "bat_speed", "front-toss")), "a gain in tosses").toBe(true);
  expect(cannotSay(change("juniper-brackwell", "bat_speed", "machine")), "that did not reach the machine").toBe(true);
  expect(cannotSay(change("desmond-farrowick", "bat_speed", "machine")), "no clear change over two sensors").toBe(true);
  expect(below(change("wrenna-stillbourne", "bat_speed", "machine")), "a drop after weeks away").toBe(true);
  expect(change("marisol-quintalba", "bat_speed", "tee"), "no change across a new bat").toBeNull();
  expect(change("bastian-oakhollow", "bat_speed", "machine"), "no change across a new sensor").toBeNull();
  expect(reportOf("anselm-drovik").athlete.bats).toBe("left");
  const sides = reportOf("thaddeus-marchbane").series.flatMap(
    (one: { measure: number | null; condition: { side?: string } }) =>
      one.measure === null ? [] : [one.condition.side],
  );
  expect(new Set(sides)).toEqual(new Set(["left", "right"]));
  expect(
    Math.max(...reportOf("rufus-ellingthorpe").series.map((one: { sessionCount: number }) => one.sessionCount)),
  ).toBeLessThan(5);
});
