import type { ComponentChildren } from "preact";
import type { AssetNames } from "../assets.ts";
import type { DeskInput } from "../desk-view.ts";
import { ReadingContext } from "../reading.ts";
import type { Words } from "../words.ts";
import { DESK_POLICY } from "./desk-policy.ts";
import { Document } from "./document.tsx";

export interface DeskPageProps {
  readonly title: string;
  /** JSON that figures are read from. */
  readonly source: unknown;
  readonly words: Words;
  readonly facility: DeskInput["facility"];
  readonly assets: AssetNames;
  /** What stands under the way back to the desk. */
  readonly head: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A page one folder below the desk's own, with a way back to it. */
export function DeskPage({ title, source, words, facility, assets, head, children }: DeskPageProps) {
  return (
    <ReadingContext.Provider value={{ source, words, units: facility.units }}>
      <Document
        title={title}
        words={words}
        assets={assets}
        root="../"
        policy={DESK_POLICY}
        kind="desk"
        notice={facility.notice}
      >
        <header class="masthead">
          <p class="imprint">
            <a href="../index.html">{words.text("desk.head")}</a>
          </p>
          {head}
        </header>
        <main id="main">{children}</main>
      </Document>
    </ReadingContext.Provider>
  );
}
