import { MissingPage } from "../components/plain-pages.tsx";
import type { PageSet } from "../page-set.ts";
import { htmlOf } from "../render-page.tsx";
import { wordsFor } from "../words.ts";

/** `404.html`, for links that lead nowhere. */
export const data = { permalink: "404.html", eleventyExcludeFromCollections: true };

export const render = ({ pages }: { readonly pages: PageSet }) =>
  htmlOf(<MissingPage facility={pages.facility} words={wordsFor(pages.language)} assets={pages.assets.names} />);
