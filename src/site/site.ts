import { Eleventy } from "@11ty/eleventy";
import type { SiteFile } from "./assets.ts";
import { configure, type EleventyConfig, PAGES } from "./config.ts";
import { pageSet, type SiteInput } from "./page-set.ts";
import { renderFrame } from "./render-page.tsx";
import { readTypeScriptPages } from "./typescript-pages.ts";

export type { SiteFile } from "./assets.ts";
export { PAGE_LANGUAGES } from "./catalogues.ts";
export { printedPages, type SiteInput, type SitePage } from "./page-set.ts";

/** What Eleventy hands back for a page. */
interface Made {
  readonly url: string | false;
  readonly outputPath: string | false;
  readonly content: string;
}

/** Eleventy never writes here: it only needs a folder to name its pages by. */
const NOWHERE = "/winterbook-site/";

/**
 * The public site as files: front page, a report for each link, assets. Nothing is written.
 *
 * @returns files in order of path; with no pages, the front page and the assets alone
 * @throws when a page has no consent, a token is not one of ours, a figure is missing, or two files share a path
 */
export async function renderSite(input: SiteInput): Promise<SiteFile[]> {
  readTypeScriptPages();
  const pages = await pageSet(input);
  const eleventy = new Eleventy(PAGES, NOWHERE, {
    configPath: false,
    quietMode: true,
    config: (config: EleventyConfig) => configure(config, async () => pages),
  });
  const made = (await eleventy.toJSON()) as readonly Made[];
  const frames = new Map(pages.entries.map((entry) => [`${entry.folder}/index.html`, renderFrame(pages, entry)]));
  const framed = made.map((page): SiteFile => {
    const path = pathOf(page);
    const frame = frames.get(path) ?? null;
    return { path, body: page.content, ...(frame === null ? {} : { frame }) };
  });
  const files = [...pages.files, ...framed];
  return files.sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : refuseTwin(a.path)));
}

/** Path inside the site, from the address under which Eleventy filed the page. */
function pathOf({ url, outputPath }: Made): string {
  if (url === false || outputPath === false) throw new Error("a page of the site was made without an address");
  const path = url.endsWith("/") ? `${url}index.html` : url;
  const parts = path.slice(1).split("/");
  if (!path.startsWith("/") || parts.some((part) => part === "" || part === "." || part === "..")) {
    throw new Error(`"${path}" leaves the site's folder`);
  }
  return parts.join("/");
}

function refuseTwin(path: string): never {
  throw new Error(`two files of the site share the path ${path}`);
}
