import type { ComponentChildren } from "preact";
import type { AssetNames } from "../assets.ts";
import { localText, type Words } from "../words.ts";

export interface DocumentProps {
  readonly title: string;
  readonly words: Words;
  readonly assets: AssetNames;
  /** Way from the page to the folder that holds `assets/`: "", "../../". */
  readonly root: string;
  /** What the page may load. */
  readonly policy?: string;
  /** Kind of page, for the style sheet. */
  readonly kind: "family" | "club" | "card" | "card interim" | "plain" | "desk";
  /** A script of ours beside the style sheet; the page reads the same without it. */
  readonly script?: string;
  readonly notice: string | Readonly<Record<string, string>> | null;
  readonly children: ComponentChildren;
}

/** Nothing but our own style sheet, fonts and pictures; no script, no inline style, no form, no frame. */
export const POLICY =
  "default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

/** The same for a page with a script of ours, which may ask for a page beside it and nothing else. */
export const SCRIPT_POLICY = `${POLICY}; script-src 'self'; connect-src 'self'`;

/** The same for a sealed page, whose pictures are opened into the browser's memory. */
export const SEALED_POLICY = SCRIPT_POLICY.replace("img-src 'self'", "img-src 'self' blob:");

/** The shell of every page. */
export function Document(props: DocumentProps) {
  const { title, words, assets, root, script, kind, notice, children } = props;
  const { policy = script === undefined ? POLICY : SCRIPT_POLICY } = props;
  return (
    <html lang={words.language}>
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={policy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="robots" content="noindex, nofollow" />
        <meta name="referrer" content="no-referrer" />
        <meta name="color-scheme" content="light dark" />
        <meta name="format-detection" content="telephone=no" />
        <title>{title}</title>
        <link rel="stylesheet" href={root + assets.styles} />
        {/* Pages from a disk may not ask ahead. */}
        {(kind === "desk" ? [] : assets.fonts).map((font) => (
          <link key={font} rel="preload" href={root + font} as="font" type="font/woff2" crossOrigin="anonymous" />
        ))}
        {script === undefined ? null : <script src={root + script} defer />}
      </head>
      <body class={kind}>
        <a class="skip" href="#main">
          {words.text("page.skip")}
        </a>
        {notice === null ? null : <Notice notice={notice} words={words} />}
        {children}
      </body>
    </html>
  );
}

function Notice({ notice, words }: { readonly notice: NonNullable<DocumentProps["notice"]>; readonly words: Words }) {
  const { text, language } = localText(notice, words.language);
  return (
    <aside class="notice" aria-label={words.text("page.notice")}>
      <p data-own lang={language !== null && language !== words.language ? language : undefined}>
        {text}
      </p>
    </aside>
  );
}
