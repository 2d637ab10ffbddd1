import type { SiteFile } from "./assets.ts";
import { loadAssets, PLAIN } from "./assets.ts";
import { deskDocument } from "./components/desk.tsx";
import { pairsDocument } from "./components/desk-pairs.tsx";
import { linkSheet } from "./components/link-sheet.tsx";
import { type DeskInput, deskView } from "./desk-view.ts";
import { htmlOf } from "./render-page.tsx";

export type { DeskInput } from "./desk-view.ts";

/**
 * The trainer's private desk: `index.html`, a page of pairs for each athlete whom two devices saw, a sheet of links for each who has one, and assets, to be opened by double click from disk. Nothing is written.
 *
 * @returns files in order of path
 */
export async function renderDesk(input: DeskInput): Promise<SiteFile[]> {
  const assets = await loadAssets(PLAIN);
  const view = deskView(input);
  const html = htmlOf(deskDocument(view, assets.names));
  const pairs = view.paired.map(({ id }, index) => ({
    path: `pairs/${id}.html`,
    body: htmlOf(pairsDocument(view, index, assets.names)),
  }));
  const sheets = input.athletes.flatMap((athlete) => {
    const sheet = linkSheet(input, athlete, assets.names);
    return sheet === null ? [] : [{ path: `links/${athlete.report.athlete.id}.html`, body: htmlOf(sheet) }];
  });
  const files = [...assets.files, { path: "index.html", body: html }, ...pairs, ...sheets];
  return files.sort((a, b) => (a.path < b.path ? -1 : 1));
}
