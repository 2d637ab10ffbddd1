import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { PAPER, readableOn, TEXT_CONTRAST } from "../schema/colour.ts";

/** A finished file. `path` is relative to the output folder, with forward slashes. */
export interface SiteFile {
  readonly path: string;
  readonly body: string | Uint8Array;
  /** For a page that will be sealed: the page that stands in its place. */
  readonly frame?: string;
}

/** Names of the shared files, relative to the output folder. */
export interface AssetNames {
  readonly styles: string;
  readonly fonts: readonly string[];
  /** What a day's dot stands for, on the pages of a report; nothing needs it. */
  readonly days: string;
  /** Opens a sealed page. */
  readonly opener: string;
  /** The facility's own picture. */
  readonly logo: string | null;
}

/** How a facility wants its pages to look. */
export interface Look {
  /** `#rrggbb`; null for our own. */
  readonly accent: string | null;
  /** `ending`: png, jpg … */
  readonly logo: { readonly bytes: Uint8Array; readonly ending: string } | null;
}

/** Our own look. */
export const PLAIN: Look = { accent: null, logo: null };

export interface Assets {
  readonly names: AssetNames;
  readonly files: readonly SiteFile[];
  /** Scripts of the public pages; the desk has none. */
  readonly scripts: readonly SiteFile[];
}

const STYLES = new URL("./styles/", import.meta.url);
const SCRIPTS = new URL("../client/", import.meta.url);
const FONT_PACKAGE = "@fontsource/source-sans-3";
const WEIGHTS = ["400", "600"] as const;
const resolve = createRequire(import.meta.url).resolve;

/** Short name of some bytes: the same bytes have the same name, so a browser may keep them for ever. */
export function contentHash(body: string | Uint8Array): string {
  return createHash("sha256").update(body).digest("hex").slice(0, 12);
}

/**
 * The style sheet and the fonts, ready to be written. Styles are the files of `styles/` in order of name.
 *
 * @param look of the facility; its colour is made readable on both papers
 * @throws when a style file names a font that is not shipped
 */
export async function loadAssets(look: Look): Promise<Assets> {
  const fonts = await Promise.all(
    WEIGHTS.map(async (weight) => {
      const body = await readFile(resolve(`${FONT_PACKAGE}/files/source-sans-3-latin-${weight}-normal.woff2`));
      return { weight, path: `assets/source-sans-3-${weight}.${contentHash(body)}.woff2`, body };
    }),
  );
  const names = (await readdir(STYLES)).filter((name) => name.endsWith(".css")).sort();
  const sheets = await Promise.all(names.map((name) => readFile(new URL(name, STYLES), "utf8")));
  const css = [...sheets, ...accentSheet(look)].join("\n").replaceAll(/font-(\d+)\.woff2/g, (_, weight: string) => {
    const font = fonts.find((candidate) => candidate.weight === weight);
    if (!font) throw new Error(`the style sheet names a font of weight ${weight}, which is not shipped`);
    return font.path.slice("assets/".length);
  });
  const styles = { path: `assets/winterbook.${contentHash(css)}.css`, body: css };
  const logo = look.logo && {
    path: `assets/logo.${contentHash(look.logo.bytes)}.${look.logo.ending}`,
    body: look.logo.bytes,
  };
  const [days, opener] = await Promise.all([loadScript("days"), loadScript("opener")]);
  // The fonts' licence has to travel with them.
  const licence = {
    path: "assets/source-sans-3.OFL.txt",
    body: await readFile(resolve(`${FONT_PACKAGE}/LICENSE`), "utf8"),
  };
  return {
    names: {
      styles: styles.path,
      fonts: fonts.map((font) => font.path),
      days: days.path,
      opener: opener.path,
      logo: logo?.path ?? null,
    },
    scripts: [days, opener],
    files: [
      styles,
      ...fonts.map(({ path, body }) => ({ path, body: new Uint8Array(body) })),
      licence,
      ...(logo === null ? [] : [logo]),
    ],
  };
}

/** The facility's colour in its role, by day and by night. */
function accentSheet({ accent }: Look): string[] {
  if (accent === null) return [];
  const role = (ground: string) => `:root{--accent:${readableOn(accent.toLowerCase(), ground, TEXT_CONTRAST)}}`;
  return [role(PAPER.day), `@media screen and (prefers-color-scheme:dark){${role(PAPER.night)}}`];
}

/** One of our scripts for browsers with all that it needs, made small: types gone, names short. */
async function loadScript(name: string): Promise<SiteFile> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL(`${name}.ts`, SCRIPTS))],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2021",
    minify: true,
    charset: "utf8",
    legalComments: "none",
  });
  const code = outputFiles[0]!.text;
  return { path: `assets/${name}.${contentHash(code)}.js`, body: code };
}
