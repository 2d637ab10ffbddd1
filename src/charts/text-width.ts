import { createRequire } from "node:module";
import { type Font, openSync } from "fontkit";

const require = createRequire(import.meta.url);
const fonts = new Map<number, Font>();
/** Widths in em by weight and text: charts of a season repeat a few hundred ticks and words, and shaping one costs more than a look-up. */
const widths = new Map<string, number>();

/**
 * Width of one line of text as the pages set it, px: the advance widths, kerning included, of the font that the site ships.
 * Characters that the font lacks count as wide as its box for missing ones.
 *
 * @param size   font size, px
 * @param weight 600 and above measures the semi-bold cut, all else the regular one
 * @example textWidth("", 12, 400) // => 0
 */
export function textWidth(text: string, size: number, weight: number): number {
  const key = `${weight >= 600 ? 600 : 400} ${text}`;
  const em = widths.get(key) ?? emWidth(text, weight >= 600 ? 600 : 400);
  widths.set(key, em);
  return em * size;
}

function emWidth(text: string, weight: 400 | 600): number {
  const font = cut(weight);
  return font.layout(text).advanceWidth / font.unitsPerEm;
}

function cut(weight: 400 | 600): Font {
  const known = fonts.get(weight);
  if (known) return known;
  const opened = openSync(
    require.resolve(`@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff2`),
  );
  if (!("layout" in opened)) throw new TypeError("the page font is a collection, not one font");
  fonts.set(weight, opened);
  return opened;
}
