import type { AthleteReport } from "../report/schema.ts";
import type { Reader } from "../schema/reasons.ts";
import { type Assets, contentHash, type Look, loadAssets, type SiteFile } from "./assets.ts";

import { PAGE_LANGUAGES } from "./catalogues.ts";
import { HEADERS_FILE, headersFile } from "./headers.ts";
import { isFirst, type PagePart, type Variant, variantsOf, wayUp } from "./variants.ts";
import { wordsFor } from "./words.ts";

/** One page to be made: the report as this reader may see it, under a link nobody can guess. */
export interface SitePage {
  readonly reader: Reader;
  /** Id among the report's recipients. */
  readonly recipient: string;
  readonly token: string;
  readonly report: AthleteReport;
  /** For a page that will be sealed: the last day on which it is meant to open, and whether it asks for words besides its key. Null for any other. */
  readonly seal: { readonly until: string | null; readonly asks: boolean } | null;
}

export interface SiteInput {
  readonly facility: AthleteReport["facility"];
  readonly look: Look;
  /** In which pages are offered, besides each athlete's own; the first is the front page's. */
  readonly languages: readonly string[];
  readonly pages: readonly SitePage[];
  /** Bytes of pictures, by the path that a note's `images` gives. */
  readonly images: ReadonlyMap<string, Uint8Array>;
  /** The season still lasts: a note stands where the family's report will. */
  readonly interim?: boolean;
  /** Each report's PDF lies beside its page. */
  readonly pdfs?: boolean;
  /** A page that shows what pages are made of, of the first family's report; for the preview alone. */
  readonly styleGuide?: boolean;
  readonly progress?: (done: number, of: number) => void;
}

const TOKEN = /^[A-Za-z0-9_-]{20,}$/;
const partsFor = (reader: Reader, interim: boolean): readonly PagePart[] =>
  reader === "club" ? ["report"] : interim ? ["interim", "card"] : ["report", "numbers", "card"];
/** What a PDF beside its page is called. */
export const PDF_NAME = "report.pdf";
const FOLDER: Readonly<Record<Reader, string>> = { family: "r", club: "c" };
/** Kinds of picture that a page may show. SVG is not among them: it may carry script. */
const PICTURE = /\.(png|jpe?g|webp|gif|avif)$/i;

/** A page with its place in the site and the pictures that lie beside its link's first page. */
export class PageEntry {
  readonly page: SitePage;
  readonly variant: Variant;
  readonly variants: readonly Variant[];
  /** Folder of the page, without slashes at its ends: `r/<token>`, `r/<token>/es/metric`. */
  readonly folder: string;
  readonly images: ReadonlyMap<string, string>;
  readonly pdf: string | null;

  constructor(
    page: SitePage,
    variant: Variant,
    variants: readonly Variant[],
    images: ReadonlyMap<string, string>,
    pdfs: boolean,
  ) {
    this.page = page;
    this.variant = variant;
    this.variants = variants;
    this.folder = `${pageFolder(page)}/${variant.folder}`.replace(/\/$/, "");
    this.pdf = pdfs && isPrinted(page, variant) ? PDF_NAME : null;
    const up = wayUp(variant);
    this.images = new Map([...images].map(([path, name]) => [path, `${up}${name}`]));
  }
}

/** Everything the page entries are handed. A class, so that Eleventy passes it on instead of copying it key by key. */
export class PageSet {
  readonly facility: SiteInput["facility"];
  /** Of the pages that belong to nobody. */
  readonly language: string;
  readonly assets: Assets;
  readonly entries: readonly PageEntry[];
  /** Shared files and pictures: all that is not made by a page entry. */
  readonly files: readonly SiteFile[];
  /** The report whose parts the style page shows; none outside a preview. */
  readonly style: readonly PageEntry[];
  /** Told about every page that is finished. */
  readonly finished: () => void;

  constructor(
    input: Pick<SiteInput, "facility" | "languages" | "progress" | "styleGuide">,
    assets: Assets,
    entries: readonly PageEntry[],
    files: readonly SiteFile[],
  ) {
    this.facility = input.facility;
    this.language = input.languages[0] ?? "en";
    this.assets = assets;
    this.entries = entries;
    this.files = files;
    const first = entries.find(({ page, variant }) => page.reader === "family" && variant.part === "report");
    this.style = input.styleGuide === true && first !== undefined ? [first] : [];
    let done = 0;
    this.finished = () => {
      done += 1;
      input.progress?.(done, entries.length);
    };
  }

  of(reader: Reader): PageEntry[] {
    return this.entries.filter(({ page }) => page.reader === reader);
  }
}

/**
 * Folder of a page.
 *
 * @throws {RangeError} when the token is not one of ours: it could leave the folder or be guessed
 */
function pageFolder({ reader, token }: SitePage): string {
  if (!TOKEN.test(token)) throw new RangeError("a link's token is at least 20 letters, digits, hyphens or underscores");
  return `${FOLDER[reader]}/${token}`;
}

/**
 * Checks what is handed in and gathers every file that is not a page.
 *
 * @throws when a page's reader is not published, a token is not one of ours, or two pages share a token
 */
export async function pageSet(input: SiteInput): Promise<PageSet> {
  const assets = await loadAssets(input.look);
  const files: SiteFile[] = [
    ...assets.files,
    ...assets.scripts,
    { path: HEADERS_FILE, body: headersFile() },
    { path: "robots.txt", body: "User-agent: *\nDisallow: /\n" },
  ];
  const seen = new Set<string>();
  const entries = input.pages.flatMap((page) => {
    const { report, reader, token } = page;
    if (!report.publication[reader].publish) {
      throw new Error(`the ${reader} page of ${report.athlete.id} has no consent and cannot be made`);
    }
    const folder = pageFolder(page);
    if (seen.has(token)) throw new Error(`two pages share one token (${report.athlete.id}, ${reader})`);
    seen.add(token);
    const pictures = picturesOf(page, folder, input.images);
    files.push(...pictures.files);
    const variants = waysOf(page, input);
    return variants.map((variant) => new PageEntry(page, variant, variants, pictures.names, input.pdfs === true));
  });
  return new PageSet(input, assets, entries, files);
}

/** Reports that are printed: each link's own, in every language and the facility's units. */
export function printedPages(input: SiteInput) {
  return input.pages.flatMap((page) =>
    waysOf(page, input)
      .filter((variant) => isPrinted(page, variant))
      .map(({ language, folder }) => ({
        ...{ token: page.token, reader: page.reader, language, units: page.report.facility.units },
        page: `${pageFolder(page)}/${folder}index.html`,
        beside: `${pageFolder(page)}/${folder}${PDF_NAME}`,
      })),
  );
}

const isPrinted = ({ report }: SitePage, { part, units }: Variant): boolean =>
  isFirst(part) && units === report.facility.units;

function waysOf({ report, reader }: SitePage, { languages, interim = false }: SiteInput): Variant[] {
  const own = { language: wordsFor(report.athlete.language).language, units: report.facility.units };
  const offered = PAGE_LANGUAGES.filter((language) => languages.includes(language));
  const hasCard = (report.program?.items.length ?? 0) > 0;
  return variantsOf(
    own,
    offered,
    partsFor(reader, interim).filter((part) => part !== "card" || hasCard),
  );
}

/** Pictures of the notes that this page's reader may see. */
function picturesOf({ report, reader }: SitePage, folder: string, bytes: SiteInput["images"]) {
  const names = new Map<string, string>();
  const files: SiteFile[] = [];
  for (const note of report.notes) {
    if (!note.readers.includes(reader)) continue;
    for (const path of Object.values(note.images)) {
      const body = bytes.get(path);
      const ending = PICTURE.exec(path)?.[1]?.toLowerCase();
      if (body === undefined || ending === undefined || names.has(path)) continue;
      const name = `img-${contentHash(body)}.${ending}`;
      names.set(path, name);
      const file = { path: `${folder}/${name}`, body };
      if (!files.some((known) => known.path === file.path)) files.push(file);
    }
  }
  return { names, files };
}
