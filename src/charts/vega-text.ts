import * as vega from "vega";
import { textWidth } from "./text-width.ts";

/** The part of Vega's scenegraph that measures text; exported by vega, absent from its types. */
interface TextMetrics {
  width: (item: { fontSize?: number; fontWeight?: number | string }, text: unknown) => number;
}

/**
 * Makes Vega measure text with the font that the pages ship. Its own estimate (no canvas in Node) is 1.4 to 1.9 times too wide, so it
 * would drop labels that fit and leave margins that are empty. The setting is Vega's only one and holds for the whole process:
 * every chart of this process is drawn in that font, and setting it twice changes nothing.
 */
export function measureWithPageFont(): void {
  const { textMetrics } = vega as unknown as { textMetrics: TextMetrics };
  textMetrics.width = pageFontWidth;
}

function pageFontWidth(item: { fontSize?: number; fontWeight?: number | string }, text: unknown): number {
  const line = text === null || text === undefined ? "" : String(text).trim();
  const weight = item.fontWeight === "bold" ? 600 : Number(item.fontWeight ?? 400);
  return textWidth(line, item.fontSize ?? 11, Number.isFinite(weight) ? weight : 400);
}
