import type { PageEntry, PageSet } from "../page-set.ts";
import { renderAthletePage } from "../render-page.tsx";

interface Data {
  readonly pages: PageSet;
  readonly pagination: { readonly items: readonly [PageEntry] };
}

/** One report for each family that has agreed: `r/<token>/index.html`. */
export const data = {
  pagination: { data: "family", size: 1 },
  permalink: ({ pagination }: Data) => `${pagination.items[0].folder}/index.html`,
  eleventyExcludeFromCollections: true,
};

export const render = ({ pages, pagination }: Data) => renderAthletePage(pages, pagination.items[0]);
