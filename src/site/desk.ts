import type { SiteFile } from "./assets.ts";
import { loadAssets, PLAIN } from "./assets.ts";
import { deskDocument } from "./components/desk.tsx";
import { pairsDocument } from "./components/desk-pairs.tsx";
import { type DeskInput, deskView } from "./desk-view.ts";
import { htmlOf } from "./render-page.tsx";

export type { DeskInput } from "./desk-view.ts";

/**
 * The trainer's private desk: `index.html`, a page of pairs for each athlete whom two devices saw, and assets, to be opened by double click from disk. Nothing is written.
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
  const files = [...assets.files, { path: "index.html", body: html }, ...pairs];
  return files.sort((a, b) => (a.path < b.path ? -1 : 1));
}
