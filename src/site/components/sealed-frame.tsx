import { SEALED_HERE, SEALED_ID } from "../../schema/sealed.ts";
import { ReadingContext } from "../reading.ts";
import type { MessageKey } from "../words.ts";
import { Day } from "./day.tsx";
import { SEALED_POLICY } from "./document.tsx";
import { PlainDocument, type PlainPageProps } from "./plain-pages.tsx";
import { Say } from "./say.tsx";

export interface SealedFrameProps extends PlainPageProps {
  /** Way from the page to the site's own folder. */
  readonly root: string;
  readonly token: string;
  readonly seal: { readonly until: string | null; readonly asks: boolean };
}

/** What may be said while the report is not open, each under the name by which the script shows it. */
const STATES = {
  wait: "sealed.wait",
  "no-key": "sealed.noKey",
  cannot: "sealed.cannot",
  broken: "sealed.broken",
} as const satisfies Record<string, MessageKey>;

/** The page that stands in the place of a sealed one: it says nothing about anybody, and opens what it holds for whoever has the key. */
export function SealedFrame({ facility, words, assets, root, token, seal }: SealedFrameProps) {
  const { until, asks } = seal;
  return (
    <ReadingContext.Provider value={{ source: seal, words, units: facility.units }}>
      <PlainDocument
        {...{ facility, words, assets, root }}
        title={words.text("sealed.title")}
        head={words.text("sealed.title")}
        loads={{ policy: SEALED_POLICY, script: assets.opener }}
        behind={
          <script
            type="application/jose"
            id={SEALED_ID}
            data-until={until ?? undefined}
            data-token={asks ? token : undefined}
            dangerouslySetInnerHTML={{ __html: SEALED_HERE }}
          />
        }
      >
        <p>{words.text("sealed.about")}</p>
        <noscript>
          <p>{words.text("sealed.noScript")}</p>
        </noscript>
        {Object.entries(STATES).map(([state, key]) => (
          <p key={state} data-state={state} hidden role="status">
            {words.text(key)}
          </p>
        ))}
        {until === null ? null : (
          <p data-state="ended" hidden role="status">
            <Say k="sealed.ended" with={{ day: <Day at="/until" /> }} />
          </p>
        )}
        {asks ? <AskForWords words={words} /> : null}
        {facility.contact === null ? null : (
          <p class="aside">
            <Say k="page.contact" with={{ contact: <span data-own>{facility.contact}</span> }} />
          </p>
        )}
      </PlainDocument>
    </ReadingContext.Provider>
  );
}

/** Asks for the words that go with the link. */
function AskForWords({ words }: Pick<SealedFrameProps, "words">) {
  return (
    <form data-state="words" hidden>
      <p>
        <label for="words">{words.text("sealed.words")}</label>
      </p>
      <p>
        <input
          id="words"
          type="password"
          autocomplete="current-password"
          autocapitalize="none"
          spellcheck={false}
          required
        />{" "}
        <button type="submit">{words.text("sealed.open")}</button>
      </p>
      <p class="wrong" role="alert" hidden>
        {words.text("sealed.wrong")}
      </p>
    </form>
  );
}
