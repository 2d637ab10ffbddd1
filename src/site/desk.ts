import type { SiteFile } from "./assets.ts";
import { loadAssets } from "./assets.ts";
import { deskDocument } from "./components/desk.tsx";
import { type DeskInput, deskView } from "./desk-view.ts";
import { htmlOf } from "./render-page.tsx";

export type { DeskInput } from "./desk-view.ts";

/**
 * The trainer's private desk: `index.html` and its assets, to be opened by double click from disk. Nothing is written.
 *
 * @returns files in order of path
 */
export async function renderDesk(input: DeskInput): Promise<SiteFile[]> {
  const assets = await loadAssets();
  const html = htmlOf(deskDocument(deskView(input), assets.names));
  const files = [...assets.files, { path: "index.html", body: html }];
  return files.sort((a, b) => (a.path < b.path ? -1 : 1));
}
