import { LABEL_PX, LINE_PX } from "./frame.ts";
import { textWidth } from "./text-width.ts";

/** Side of a key's swatch, px. */
export const SWATCH = 9;
const GAP = 5;
const BETWEEN = 14;
const KEY_LINE = LINE_PX + 2;

/** A key laid out in lines: one place per entry, px. */
export interface KeyRow {
  readonly swatches: readonly { x: number; y: number }[];
  readonly words: readonly { x: number; y: number; text: string }[];
  /** Height of all lines, px. */
  readonly height: number;
}

/**
 * Words with a swatch before each, set one after the other and broken where the next would not fit.
 *
 * @param texts  in order; none gives no lines
 * @param width  px
 * @param bottom where the last line ends, px from the top of the plot; keys stand above it, so this is negative
 * @param left   where lines start, px from the left of the plot
 * @returns swatch middles and text starts, px from the top left of the plot
 */
export function keyRow(texts: readonly string[], width: number, bottom: number, left = 0): KeyRow {
  const places: { x: number; line: number; text: string }[] = [];
  let x = 0;
  let line = 0;
  for (const text of texts) {
    const needs = SWATCH + GAP + textWidth(text, LABEL_PX, 400);
    if (x > 0 && x + needs > width) {
      x = 0;
      line += 1;
    }
    places.push({ x, line, text });
    x += needs + BETWEEN;
  }
  const height = texts.length === 0 ? 0 : (line + 1) * KEY_LINE;
  const middle = (place: { line: number }) => bottom - height + (place.line + 0.5) * KEY_LINE;
  return {
    swatches: places.map((place) => ({ x: left + place.x + SWATCH / 2, y: middle(place) })),
    words: places.map((place) => ({ x: left + place.x + SWATCH + GAP, y: middle(place), text: place.text })),
    height,
  };
}
