import { CONFIG, LINE_PX, WIDTH } from "./frame.ts";

/** Charts with one row under the other on one scale of values: what they all share. */

/** Height above the first row, where the title stands, and below the last, where the scale does, px. */
export const HEAD = LINE_PX + 8;
export const FOOT = 26;
/** Width of the plot, px. */
export const INNER = WIDTH - 2;

/** A place in px of the plot. */
export const px = (field: string) => ({ field, type: "quantitative", scale: null, axis: null }) as const;

/** A value on the scale. */
export const valueX = (field: string) =>
  ({
    field,
    type: "quantitative",
    scale: { domain: { expr: "xDomain" }, zero: false, nice: false },
    axis: { values: { expr: "xTicks" }, labelExpr: "format(datum.value, xFormat)", grid: true },
  }) as const;

export const ROWS_PARAMS = [
  { name: "xDomain", value: [0, 1] },
  { name: "xTicks", value: [] },
  { name: "xFormat", value: "" },
  { name: "xTitle", value: "" },
] satisfies { name: string; value: unknown }[];

/** Everything of a spec but its data, parameters and layers. */
export const ROWS_FRAME = {
  title: { text: { expr: "xTitle" }, offset: 8, frame: "group" },
  width: WIDTH,
  height: HEAD + FOOT,
  autosize: { type: "fit", contains: "padding" },
  padding: { left: 1, right: 1, top: 1, bottom: 1 },
  config: CONFIG,
} as const;
