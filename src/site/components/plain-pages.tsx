import type { ComponentChildren } from "preact";
import type { AthleteReport } from "../../report/schema.ts";
import type { AssetNames } from "../assets.ts";
import type { Words } from "../words.ts";
import { Document, type DocumentProps } from "./document.tsx";

export interface PlainPageProps {
  readonly facility: AthleteReport["facility"];
  readonly words: Words;
  readonly assets: AssetNames;
}

export interface PlainDocumentProps extends PlainPageProps {
  readonly title: string;
  readonly head: string;
  /** Way from the page to the folder that holds `assets/`. */
  readonly root: string;
  /** What else than styles and fonts the page may load, and its script. */
  readonly loads?: Pick<DocumentProps, "policy" | "script">;
  /** Stands behind what is read. */
  readonly behind?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** The shell of a page that says nothing about anybody: the facility's name, a heading, a few sentences. */
export function PlainDocument(props: PlainDocumentProps) {
  const { facility, words, assets, title, head, root, loads = {}, behind, children } = props;
  return (
    <Document title={title} words={words} assets={assets} root={root} kind="plain" notice={facility.notice} {...loads}>
      <main id="main">
        <p class="imprint" data-own>
          {facility.name}
        </p>
        <h1>{head}</h1>
        {children}
      </main>
      {behind}
    </Document>
  );
}

/** The public front: the facility's name and nothing about anybody. */
export function FrontPage(page: PlainPageProps) {
  const { words, facility } = page;
  const title = words.text("page.index.title", { name: facility.name });
  return (
    <PlainDocument {...page} title={title} head={words.text("page.index.head")} root="">
      <p>{words.text("page.index.body")}</p>
    </PlainDocument>
  );
}

/**
 * What a host shows for a link that leads nowhere. Old links are two folders deep (`r/<token>/`), so its style sheet is sought from
 * there; browsers stop at the top of the site, so the page looks the same when it is opened by its own name.
 */
export function MissingPage(page: PlainPageProps) {
  const { words } = page;
  return (
    <PlainDocument
      {...page}
      title={words.text("page.missing.title")}
      head={words.text("page.missing.head")}
      root="../../"
    >
      <p>{words.text("page.missing.body")}</p>
    </PlainDocument>
  );
}
