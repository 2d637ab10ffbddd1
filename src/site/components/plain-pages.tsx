import type { AthleteReport } from "../../report/schema.ts";
import type { AssetNames } from "../assets.ts";
import type { Words } from "../words.ts";
import { Document } from "./document.tsx";

export interface PlainPageProps {
  readonly facility: AthleteReport["facility"];
  readonly words: Words;
  readonly assets: AssetNames;
}

/** The public front: the facility's name and nothing about anybody. */
export function FrontPage({ facility, words, assets }: PlainPageProps) {
  const title = words.text("page.index.title", { name: facility.name });
  return (
    <Document title={title} words={words} assets={assets} root="" kind="plain" notice={facility.notice}>
      <main id="main">
        <p class="imprint" data-own>
          {facility.name}
        </p>
        <h1>{words.text("page.index.head")}</h1>
        <p>{words.text("page.index.body")}</p>
      </main>
    </Document>
  );
}

/**
 * What a host shows for a link that leads nowhere. Old links are two folders deep (`r/<token>/`), so its style sheet is sought from
 * there; browsers stop at the top of the site, so the page looks the same when it is opened by its own name.
 */
export function MissingPage({ facility, words, assets }: PlainPageProps) {
  const title = words.text("page.missing.title");
  return (
    <Document title={title} words={words} assets={assets} root="../../" kind="plain" notice={facility.notice}>
      <main id="main">
        <p class="imprint" data-own>
          {facility.name}
        </p>
        <h1>{words.text("page.missing.head")}</h1>
        <p>{words.text("page.missing.body")}</p>
      </main>
    </Document>
  );
}
