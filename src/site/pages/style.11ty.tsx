import type { PageEntry, PageSet } from "../page-set.ts";
import { renderStyleGuide } from "../render-page.tsx";

interface Data {
  readonly pages: PageSet;
  readonly pagination: { readonly items: readonly [PageEntry] };
}

/** What pages are made of, in a preview: `style/index.html`. */
export const data = {
  pagination: { data: "style", size: 1 },
  permalink: "style/index.html",
  eleventyExcludeFromCollections: true,
};

export const render = ({ pages, pagination }: Data) => renderStyleGuide(pages, pagination.items[0]);
