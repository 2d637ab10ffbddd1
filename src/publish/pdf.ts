import type { Browser } from "playwright-core";
import type { Output } from "./guard.ts";

export type Paper = "A4" | "Letter";

/** A page of the site that is to be printed. */
export interface PdfJob {
  /** Path of the page in the site. */
  readonly page: string;
  readonly paper: Paper;
  /** Path of the finished file. */
  readonly path: string;
}

/** Pages are printed from memory, under an address that leads nowhere. */
const ORIGIN = "http://winterbook.invalid";
const TYPES: Readonly<Record<string, string>> = {
  html: "text/html; charset=utf-8",
  css: "text/css",
  js: "text/javascript",
  woff2: "font/woff2",
  png: "image/png",
  jpg: "image/jpeg",
  jpeg: "image/jpeg",
  webp: "image/webp",
  gif: "image/gif",
  avif: "image/avif",
  svg: "image/svg+xml",
};

/** Prints pages of a finished site; see {@link pdfPrinter}. */
export type PrintPdfs = (
  site: readonly Output[],
  jobs: readonly PdfJob[],
  day: string,
  progress: (done: number, of: number) => void,
) => Promise<Output[]>;

/** A printer that asks for a browser when there is something to print. */
export const pdfPrinter =
  (launch: () => Promise<Browser>): PrintPdfs =>
  async (site, jobs, day, progress) => {
    if (jobs.length === 0) return [];
    const browser = await launch();
    try {
      return await printed(browser, site, jobs, day, progress);
    } finally {
      await browser.close();
    }
  };

/**
 * Prints pages of a finished site as tagged PDF with outline, title and language. Nothing is asked of any other machine. The dates in a file are those of
 * `day`, so that the same pages are the same bytes.
 *
 * @param site files in memory
 * @param day  ISO day that stands as the date of making
 * @throws when a page asks for a file that the site does not have
 */
async function printed(
  browser: Browser,
  site: readonly Output[],
  jobs: readonly PdfJob[],
  day: string,
  progress: (done: number, of: number) => void,
): Promise<Output[]> {
  const files = new Map(site.map(({ path, body }) => [path, body]));
  const context = await browser.newContext();
  const missing: string[] = [];
  await context.route("**/*", async (route) => {
    const url = new URL(route.request().url());
    const path = decodeURIComponent(url.pathname.slice(1));
    const body = url.origin === ORIGIN ? files.get(path) : undefined;
    if (body === undefined) {
      missing.push(url.href);
      await route.abort();
      return;
    }
    const contentType = TYPES[path.split(".").at(-1) ?? ""] ?? "application/octet-stream";
    await route.fulfill({ contentType, body: typeof body === "string" ? body : Buffer.from(body) });
  });
  const page = await context.newPage();
  const made: Output[] = [];
  for (const [index, job] of jobs.entries()) {
    await page.goto(`${ORIGIN}/${job.page}`);
    // A stand-in font is wider than ours: what is printed must not depend on which came first.
    await page.evaluate("Promise.all([...document.fonts].map((font) => font.load()))");
    if (missing.length > 0) throw new Error(`${job.page} asks for ${missing[0]}, which the site does not have`);
    const pdf = await page.pdf({
      ...{ format: job.paper, preferCSSPageSize: true },
      ...{ printBackground: true, tagged: true, outline: true },
    });
    made.push({ path: job.path, body: dated(pdf, day) });
    progress(index + 1, jobs.length);
  }
  return made;
}

/** A PDF whose dates are midnight of a day; written over in place, so that no offset in the file moves. */
export function dated(pdf: Uint8Array, day: string): Uint8Array {
  const stamp = `D:${day.replaceAll("-", "")}000000`;
  const text = Buffer.from(pdf).toString("latin1");
  return Buffer.from(
    text.replaceAll(/(\/(?:CreationDate|ModDate) \()D:\d{14}/g, (_, key: string) => `${key}${stamp}`),
    "latin1",
  );
}
