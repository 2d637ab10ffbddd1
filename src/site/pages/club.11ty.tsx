import type { PageEntry, PageSet } from "../page-set.ts";
import { renderAthletePage } from "../render-page.tsx";

interface Data {
  readonly pages: PageSet;
  readonly pagination: { readonly items: readonly [PageEntry] };
}

/** One summary for each club link that was agreed to: `c/<token>/index.html`. */
export const data = {
  pagination: { data: "club", size: 1 },
  permalink: ({ pagination }: Data) => `${pagination.items[0].folder}/index.html`,
  eleventyExcludeFromCollections: true,
};

export const render = ({ pages, pagination }: Data) => renderAthletePage(pages, pagination.items[0]);
