import type { Config } from "vega-lite";

/** Outer width of every chart, CSS px: what a phone leaves beside its margins. */
export const WIDTH = 340;
/** Font sizes of charts, px. */
export const LABEL_PX = 12;
/** Height that one line of labels takes, px. */
export const LINE_PX = 14;
/** In quotes, because an unquoted CSS family name cannot hold a word that is a number. */
export const FONT = "'Source Sans 3', sans-serif";

/**
 * Look of all charts. Colours are names of custom properties, so that one drawing serves light, dark and print; Vega hands
 * literal texts through to the SVG unread.
 */
export const CONFIG: Config = {
  font: FONT,
  aria: false,
  background: "transparent",
  view: { stroke: null, fill: null },
  axis: {
    domain: false,
    ticks: false,
    title: null,
    grid: false,
    gridColor: "var(--line)",
    gridWidth: 1,
    labelColor: "var(--ink-soft)",
    labelFontSize: LABEL_PX,
    labelPadding: 6,
    labelLimit: 0,
    labelOverlap: false,
  },
  title: {
    anchor: "start",
    frame: "bounds",
    color: "var(--ink-soft)",
    fontSize: LABEL_PX,
    fontWeight: "normal",
    limit: 0,
  },
};

/** Shared pieces of a layered spec: x in time with months below, y in values with a hairline per tick. */
export const TIME_X = {
  type: "temporal",
  scale: { type: "utc", domain: { expr: "xDomain" }, nice: false },
} as const;

export const MONTH_AXIS = {
  values: { expr: "monthMiddles" },
  labelExpr: "utcFormat(datum.value, '%b')",
  labelPadding: 7,
} as const;

export const VALUE_Y = {
  type: "quantitative",
  scale: { domain: { expr: "yDomain" }, zero: false, nice: false },
} as const;

export const VALUE_AXIS = {
  values: { expr: "yTicks" },
  labelExpr: "format(datum.value, yFormat)",
  grid: true,
} as const;

/** Text that stays readable over lines and dots: a rim in the colour of the card it lies on. */
export const HALO = { stroke: "var(--card)", strokeWidth: 3, strokeJoin: "round" } as const;
