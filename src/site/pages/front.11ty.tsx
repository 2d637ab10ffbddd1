import { FrontPage } from "../components/plain-pages.tsx";
import type { PageSet } from "../page-set.ts";
import { htmlOf } from "../render-page.tsx";
import { wordsFor } from "../words.ts";

/** The public front, `index.html`: no roster, no names. */
export const data = { permalink: "index.html", eleventyExcludeFromCollections: true };

export const render = ({ pages }: { readonly pages: PageSet }) =>
  htmlOf(<FrontPage facility={pages.facility} words={wordsFor(pages.language)} assets={pages.assets.names} />);
