import type { AthleteReport } from "../../src/report/schema.ts";
import type { Reader } from "../../src/schema/reasons.ts";
import { loadAssets } from "../../src/site/assets.ts";
import { renderSite, type SiteFile, type SiteInput } from "../../src/site/site.ts";
import { styleView } from "../../src/site/style-view.ts";
import { empty, full, metric, sparse } from "./fixture-report.ts";

/** A picture of one pixel. */
export const PIXEL = new Uint8Array(
  Buffer.from(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
    "base64",
  ),
);

/** A plain bar in the facility's colour. */
const LOGO = new Uint8Array(
  Buffer.from(
    "iVBORw0KGgoAAAANSUhEUgAAAAYAAAACAQMAAABBkz8dAAAAA1BMVEV6Hz1rLpLTAAAACXBIWXMAAAPoAAAD6AG1e1JrAAAADElEQVQImWNgYGAAAAAEAAGjChXjAAAAAElFTkSuQmCC",
    "base64",
  ),
);

export const PICTURE = "content/athletes/ottilie-fernmoor/notes/tee.png";

export interface FixturePage {
  readonly reader: Reader;
  readonly recipient: string;
  readonly seal: null;
  readonly token: string;
  readonly path: string;
  readonly report: AthleteReport;
}

const named = { full, sparse, metric, empty };

/** Every fixture report for both readers. */
export const fixturePages: readonly FixturePage[] = Object.entries(named).flatMap(([name, report]) =>
  (["family", "club"] as const).map((reader) => {
    const token = `token-of-the-fixture-${name}-${reader}`;
    return {
      reader,
      recipient: reader,
      seal: null,
      token,
      path: `${reader === "family" ? "r" : "c"}/${token}/index.html`,
      report,
    };
  }),
);

export const fixtureInput: SiteInput = {
  facility: full.facility,
  look: { accent: "#7a1f3d", logo: { bytes: LOGO, ending: "png" } },
  languages: ["en", "es"],
  pages: fixturePages,
  images: new Map([[PICTURE, PIXEL]]),
};

export const renderFixtures = (): Promise<SiteFile[]> => renderSite(fixtureInput);

/** The fullest report while its season lasts. */
const interimPage: FixturePage = {
  ...{ reader: "family", recipient: "family", seal: null, token: "token-of-the-fixture-interim-family", report: full },
  path: "r/token-of-the-fixture-interim-family/index.html",
};

/** What stands in the place of a sealed page for whoever has no key to it. */
export const SEALED_PAGE = "r/token-of-the-fixture-sealed-family/index.html";
const sealedPage = {
  ...interimPage,
  token: "token-of-the-fixture-sealed-family",
  seal: { until: "2999-12-31", asks: true },
};

/** The fixtures, the note in between in their place, and the page that shows what pages are made of. */
export async function renderLookedAt(): Promise<SiteFile[]> {
  const site = await renderSite({ ...fixtureInput, styleGuide: true });
  const interim = await renderSite({ ...fixtureInput, pages: [interimPage], interim: true });
  const sealed = await renderSite({ ...fixtureInput, pages: [sealedPage] });
  const frames = sealed.flatMap(({ path, frame }) => (path === SEALED_PAGE ? [{ path, body: frame ?? "" }] : []));
  return [...site, ...interim.filter(({ path }) => path.startsWith("r/")), ...frames];
}

/** The page that shows what pages are made of has figures of the style sheet beside the report's. */
const { files, names } = await loadAssets(fixtureInput.look);
const styleReport = { ...full, style: styleView(String(files.find(({ path }) => path === names.styles)?.body)) };
const stylePage: FixturePage = {
  reader: "family",
  recipient: "family",
  seal: null,
  token: "style",
  path: "style/index.html",
  report: styleReport,
};

/** Pages that browsers look at: each report as it lies at its link, and for the fullest one other languages, units, all the numbers and the card. */
export const lookedAt: readonly FixturePage[] = [
  ...fixturePages,
  ...fixturePages.flatMap((page) => {
    if (!page.token.includes("-full-")) return [];
    const below =
      page.reader === "family" ? ["es/", "numbers/", "es/metric/numbers/", "card/", "es/card/"] : ["es/metric/"];
    return below.map((folder) => ({ ...page, path: page.path.replace("index.html", `${folder}index.html`) }));
  }),
  interimPage,
  { ...interimPage, path: interimPage.path.replace("index.html", "es/metric/index.html") },
  stylePage,
];

/** A page's HTML by its path. */
export function pageAt(files: readonly SiteFile[], path: string): string {
  const body = files.find((file) => file.path === path)?.body;
  if (typeof body !== "string") throw new Error(`no page ${path}`);
  return body;
}
