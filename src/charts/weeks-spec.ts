import type { TopLevelSpec } from "vega-lite";
import { CONFIG, LABEL_PX, MONTH_AXIS, TIME_X, VALUE_AXIS, VALUE_Y, WIDTH } from "./frame.ts";
import { SWATCH } from "./key-row.ts";

/** Height of a weeks chart without its key, px. */
export const WEEKS_HEIGHT = 170;

/**
 * Fills from dark to light, so that grey print keeps them apart; unmeasured work is an empty box, dashed. The last of the four
 * shades is for the environments taken together.
 */
const FILLS: readonly { fill: string; fillOpacity: number; stroke: string; strokeDash?: number[] }[] = [
  { fill: "var(--mark)", fillOpacity: 1, stroke: "var(--mark)" },
  { fill: "var(--mark)", fillOpacity: 0.55, stroke: "var(--mark)" },
  { fill: "var(--mark)", fillOpacity: 0.22, stroke: "var(--mark)" },
  { fill: "var(--card)", fillOpacity: 1, stroke: "var(--mark)" },
  { fill: "var(--card)", fillOpacity: 1, stroke: "var(--ink-soft)", strokeDash: [2, 2] },
];

const px = (field: string) => ({ field, type: "quantitative", scale: null, axis: null }) as const;
const timeX = { field: "x", ...TIME_X, axis: MONTH_AXIS };
const countY = (field: string) => ({ field, ...VALUE_Y, axis: VALUE_AXIS });

export const WEEKS_SPEC: TopLevelSpec = {
  datasets: {
    away: [],
    awayWords: [],
    paper: [],
    borders: [],
    keyWords: [],
    ...Object.fromEntries(
      FILLS.flatMap((_, i) => [
        [`columns${i}`, []],
        [`key${i}`, []],
      ]),
    ),
  },
  params: [
    { name: "xDomain", value: [0, 1] },
    { name: "monthMiddles", value: [] },
    { name: "yDomain", value: [0, 1] },
    { name: "yTicks", value: [] },
    { name: "yFormat", value: "" },
    { name: "yTitle", value: "" },
  ],
  title: { text: { expr: "yTitle" }, offset: 8 },
  width: WIDTH,
  height: WEEKS_HEIGHT,
  autosize: { type: "fit", contains: "padding" },
  padding: { left: 1, right: 2, top: 1, bottom: 1 },
  config: CONFIG,
  layer: [
    {
      data: { name: "away" },
      mark: { type: "rect", fill: "var(--away)", opacity: 1 },
      encoding: { x: timeX, x2: { field: "x2" } },
    },
    {
      data: { name: "borders" },
      mark: { type: "rule", stroke: "var(--line)", y: { expr: "height" }, y2: { expr: "height + 5" } },
      encoding: { x: timeX },
    },
    {
      data: { name: "awayWords" },
      mark: { type: "text", fill: "var(--ink-soft)", fontSize: LABEL_PX, y: 7, dx: { expr: "datum.dx" } },
      encoding: { x: timeX, text: { field: "text" } },
    },
    {
      // Under the columns, so that no hairline shows through the paler shades.
      data: { name: "paper" },
      mark: { type: "rect", fill: "var(--card)", opacity: 1 },
      encoding: { x: timeX, x2: { field: "x2" }, y: countY("y"), y2: { field: "y2" } },
    },
    ...FILLS.map((fill, i) => ({
      data: { name: `columns${i}` },
      mark: {
        type: "rect" as const,
        strokeWidth: 0.8,
        opacity: 1,
        ...fill,
      },
      encoding: { x: timeX, x2: { field: "x2" }, y: countY("y"), y2: { field: "y2" } },
    })),
    ...FILLS.map((fill, i) => ({
      data: { name: `key${i}` },
      mark: {
        type: "rect" as const,
        width: SWATCH,
        height: SWATCH,
        strokeWidth: 0.8,
        opacity: 1,
        ...fill,
      },
      encoding: { x: px("x"), y: px("y") },
    })),
    {
      data: { name: "keyWords" },
      mark: { type: "text", align: "left", fill: "var(--ink)", fontSize: LABEL_PX },
      encoding: { x: px("x"), y: px("y"), text: { field: "text" } },
    },
  ],
};
