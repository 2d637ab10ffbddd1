import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Built, build } from "../../src/build.ts";
import { launch } from "../../src/cli/chromium.ts";
import { type StaticServer, serveFiles } from "../browser/static-server.ts";
import { OPTIONS, pathsOf, quiet, removeFolder, seasonFolder } from "../cli/small-season.ts";
import { filesOf, openedSite, type SiteBytes } from "../opened-site.ts";
import { markedSeason } from "./marked-season.ts";

/** Ways to have a script of one's own run in somebody's browser, collected from what HTML, SVG, CSS, Markdown and URLs allow. */
const TRICKS = [
  "<script>hit()</script>",
  '"><img src=x onerror=hit()>',
  "'><svg onload=hit()>",
  "javascript:hit()",
  "[press](javascript:hit())",
  "[press](JaVa\tScript:hit())",
  "[press](&#106;avascript:hit())",
  "[press](data:text/html,<script>parent.hit()</script>)",
  '![x](x" onerror="hit())',
  "![x](javascript:hit())",
  "<javascript:hit()>",
  '<a href="javascript:hit()" autofocus onfocus=hit()>press</a>',
  "</title><script>hit()</script>",
  "</script><script>hit()</script>",
  "</style><script>hit()</script>",
  "</noscript><script>hit()</script>",
  '<iframe srcdoc="<script>parent.hit()</script>"></iframe>',
  "<details open ontoggle=hit()>",
  "<input autofocus onfocus=hit()>",
  "<body onload=hit()>",
  '<x onclick=hit() style="position:fixed;inset:0">',
  "<math><mtext></form><form><mglyph><style></math><img src onerror=hit()>",
  "<svg><animate onbegin=hit() attributeName=x dur=1s>",
  '<svg><a xlink:href="javascript:hit()"><text>press</text></a></svg>',
  '<meta http-equiv=refresh content="0;url=javascript:hit()">',
  "<base href=javascript:hit()//>",
  "<!--><script>hit()</script>-->",
  "]]><script>hit()</script>",
  "&lt;script&gt;hit()&lt;/script&gt;",
  "`</code><script>hit()</script>`",
  "```\n</code></pre><script>hit()</script>\n```",
  "[[<img src=x onerror=hit()>: change]]",
  "[a]: javascript:hit()\n\n[a]",
  "{{constructor.constructor('hit()')()}}",
  `\${hit()}<%= hit() %>`,
  "\u2028<script>hit()</script>",
  "<style>@import 'javascript:hit()';*{background:url(javascript:hit())}</style>",
  '<div style="background:url(javascript:hit())">',
  "<object data=javascript:hit()>",
  "<embed src=javascript:hit()>",
  "<form action=javascript:hit()><button>press</button></form>",
  "<link rel=stylesheet href=javascript:hit()>",
  "<template><script>hit()</script></template>",
  "+ADw-script+AD4-hit()+ADw-/script+AD4-",
  "=cmd|' /C calc'!A0",
];

let root: string;
let built: Built;
let site: SiteBytes[];
let server: StaticServer;
let browser: Browser;
/** So many fields were filled, with each trick in turn; names stay apart from each other. */
let fields = 0;

beforeAll(async () => {
  const seen = new Map<string, string>();
  const trick = (field: string): string => {
    const known = seen.get(field);
    if (known !== undefined) return known;
    const made = `${TRICKS[fields % TRICKS.length]} ${fields}`;
    seen.set(field, made);
    fields += 1;
    return made;
  };
  // A trick in every field, and all of them in some: a note, a message, a reason, a text on everybody's page, a cell.
  const several = (field: string): string =>
    /^ben-ridge (?:note|closing|plan body|why)$|^notice en$|^lane$/.test(field)
      ? `${trick(field)}\n\n${TRICKS.join("\n\n")}`
      : trick(field);
  root = await seasonFolder(markedSeason(several));
  built = await build(pathsOf(root), OPTIONS, quiet());
  site = await openedSite(filesOf(pathsOf(root).out), built.links);
  server = await serveFiles(site);
  browser = await launch();
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  await removeFolder(root);
});

/** A page in which whatever runs is heard, looked over and pressed everywhere. */
async function heardOn(address: string): Promise<{ heard: string[]; inside: string[] }> {
  const page = await browser.newPage();
  const heard: string[] = [];
  await page.exposeFunction("hit", () => heard.push("a script ran"));
  page.on("dialog", (dialog) => {
    heard.push(`a dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on("console", (message) => heard.push(message.text()));
  page.on("pageerror", (error) => heard.push(String(error)));
  page.on("popup", () => heard.push("a window"));
  page.on("request", (request) => {
    if (!/^(?:file:|blob:|data:)/.test(request.url()) && !request.url().startsWith(server.origin))
      heard.push(request.url());
  });
  await page.goto(address);
  const inside = (await page.evaluate(`
    [...document.querySelectorAll("*")].flatMap((one) => [
      ...[...one.attributes].filter(({ name, value }) => /^on/i.test(name) || name === "style" || /^\\s*(?:javascript|data|vbscript):/i.test(value) && /^(?:href|src|action|data|xlink:href)$/i.test(name)).map(({ name }) => one.tagName + " " + name),
      ...(/^(?:script|iframe|object|embed|base|form|template)$/i.test(one.tagName) && !/assets\\/days/.test(one.src ?? "") ? [one.tagName] : []),
      ...(/^meta$/i.test(one.tagName) && /refresh/i.test(one.httpEquiv) ? ["refresh"] : []),
    ])`)) as string[];
  for (const one of await page.locator("summary, a[href^='#']").all()) await one.dispatchEvent("click");
  await page.mouse.move(200, 300);
  await page.mouse.click(200, 300);
  await page.keyboard.press("Tab");
  await page.close();
  return { heard, inside };
}

test("the listener hears a script that does run", async () => {
  const loud = await serveFiles([{ path: "index.html", body: "<!DOCTYPE html><img src=data:, onerror=hit()><p>x" }]);
  const { heard, inside } = await heardOn(`${loud.origin}/`);
  expect(heard).toContain("a script ran");
  expect(inside).toContain("IMG onerror");
  await loud.close();
});

test("the browser keeps sites apart as a reader's does", async () => {
  const other = await serveFiles([{ path: "index.html", body: "theirs" }]);
  const page = await browser.newPage();
  const own = await serveFiles([{ path: "index.html", body: "<!DOCTYPE html><p>ours" }]);
  await page.goto(`${own.origin}/`);
  const read = `fetch("${other.origin}/").then((answer) => answer.text()).catch(() => "refused")`;
  expect(await page.evaluate(read)).toBe("refused");
  await page.close();
  await Promise.all([own.close(), other.close()]);
});

test("every page is made of a season whose every field is out to run a script", () => {
  expect(fields).toBeGreaterThan(100);
  expect(built.links.filter(({ withheld }) => withheld === null)).toHaveLength(4);
});

test("nothing that anybody wrote runs on any published page", { timeout: 180_000 }, async () => {
  // Other units differ from these by figures alone.
  const pages = site.filter(({ path }) => path.endsWith(".html") && !path.includes("/metric/"));
  expect(pages.length).toBeGreaterThan(15);
  for (const { path } of pages) {
    const { heard, inside } = await heardOn(`${server.origin}/${path}`);
    expect(heard, path).toEqual([]);
    expect(inside, path).toEqual([]);
  }
});

test("nor on any page of the desk, opened from disk", async () => {
  const { desk } = pathsOf(root);
  const pages = filesOf(desk).filter(({ path }) => path.endsWith(".html"));
  expect(pages.length).toBeGreaterThan(0);
  for (const { path } of pages) {
    const { heard, inside } = await heardOn(pathToFileURL(`${desk}/${path}`).href);
    expect(heard, path).toEqual([]);
    expect(inside, path).toEqual([]);
  }
});
