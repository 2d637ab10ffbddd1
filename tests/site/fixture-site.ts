import type { AthleteReport } from "../../src/report/schema.ts";
import type { Reader } from "../../src/schema/reasons.ts";
import { renderSite, type SiteFile, type SiteInput } from "../../src/site/site.ts";
import { empty, full, metric, sparse } from "./fixture-report.ts";

/** A picture of one pixel. */
export const PIXEL = new Uint8Array(
  Buffer.from(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==",
    "base64",
  ),
);

export const PICTURE = "content/athletes/ottilie-fernmoor/notes/tee.png";

export interface FixturePage {
  readonly reader: Reader;
  readonly token: string;
  readonly path: string;
  readonly report: AthleteReport;
}

const named = { full, sparse, metric, empty };

/** Every fixture report for both readers. */
export const fixturePages: readonly FixturePage[] = Object.entries(named).flatMap(([name, report]) =>
  (["family", "club"] as const).map((reader) => {
    const token = `token-of-the-fixture-${name}-${reader}`;
    return { reader, token, path: `${reader === "family" ? "r" : "c"}/${token}/index.html`, report };
  }),
);

export const fixtureInput: SiteInput = {
  facility: full.facility,
  look: { accent: "#7a1f3d", logo: { bytes: PIXEL, ending: "png" } },
  languages: ["en", "es"],
  pages: fixturePages,
  images: new Map([[PICTURE, PIXEL]]),
};

export const renderFixtures = (): Promise<SiteFile[]> => renderSite(fixtureInput);

/** Pages that browsers look at: each report as it lies at its link, and for the fullest one other languages, units, all the numbers and the card. */
export const lookedAt: readonly FixturePage[] = [
  ...fixturePages,
  ...fixturePages.flatMap((page) => {
    if (!page.token.includes("-full-")) return [];
    const below =
      page.reader === "family" ? ["es/", "numbers/", "es/metric/numbers/", "card/", "es/card/"] : ["es/metric/"];
    return below.map((folder) => ({ ...page, path: page.path.replace("index.html", `${folder}index.html`) }));
  }),
];

/** A page's HTML by its path. */
export function pageAt(files: readonly SiteFile[], path: string): string {
  const body = files.find((file) => file.path === path)?.body;
  if (typeof body !== "string") throw new Error(`no page ${path}`);
  return body;
}
