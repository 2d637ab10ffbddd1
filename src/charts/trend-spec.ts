import type { TopLevelSpec } from "vega-lite";
import { CONFIG, HALO, LABEL_PX, MONTH_AXIS, TIME_X, VALUE_AXIS, VALUE_Y, WIDTH } from "./frame.ts";

/** Height of a trend chart, px. */
export const TREND_HEIGHT = 190;

const at = (x: string, y: string) => ({
  x: { field: x, ...TIME_X, axis: MONTH_AXIS },
  y: { field: y, ...VALUE_Y, axis: VALUE_AXIS },
});

const dot = (fill: string) => ({ type: "point", shape: "circle", filled: false, fill, opacity: 1 }) as const;

/** Height over the foot of the plot at which the marks of notes stand, px. */
export const NOTE_LIFT = 5;

/** Back to front: absences, the quiet ribbon, changes of set-up, changes of plan, notes, band, goal, line, dots, block means, words. */
export const TREND_SPEC: TopLevelSpec = {
  datasets: {
    away: [],
    awayWords: [],
    quiet: [],
    plans: [],
    notes: [],
    band: [],
    line: [],
    goal: [],
    solid: [],
    hollow: [],
    blocks: [],
    breaks: [],
    words: [],
    borders: [],
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
  height: TREND_HEIGHT,
  autosize: { type: "fit", contains: "padding" },
  padding: { left: 1, right: 7, top: 1, bottom: 1 },
  config: CONFIG,
  layer: [
    {
      data: { name: "away" },
      mark: { type: "rect", fill: "var(--away)", opacity: 1 },
      encoding: { x: at("x", "y").x, x2: { field: "x2" } },
    },
    {
      data: { name: "quiet" },
      mark: { type: "rect", fill: "var(--quiet)", opacity: 1, x: 0, x2: { expr: "width" } },
      encoding: { y: at("x", "y").y, y2: { field: "y2" } },
    },
    {
      data: { name: "borders" },
      mark: { type: "rule", stroke: "var(--line)", y: { expr: "height" }, y2: { expr: "height + 5" } },
      encoding: { x: at("x", "y").x },
    },
    {
      data: { name: "awayWords" },
      mark: {
        type: "text",
        fill: "var(--ink-soft)",
        fontSize: LABEL_PX,
        dx: { expr: "datum.dx" },
        ...HALO,
        stroke: "var(--away)",
      },
      encoding: {
        x: at("x", "y").x,
        y: { field: "y", type: "quantitative", scale: null, axis: null },
        text: { field: "text" },
      },
    },
    {
      data: { name: "breaks" },
      mark: {
        type: "rule",
        stroke: "var(--ink-soft)",
        strokeWidth: 1.5,
        strokeDash: [2, 3],
        y: 0,
        y2: { expr: "height" },
      },
      encoding: { x: at("x", "y").x },
    },
    {
      data: { name: "plans" },
      mark: { type: "rule", stroke: "var(--second)", y: 0, y2: { expr: "height" } },
      encoding: { x: at("x", "y").x },
    },
    {
      data: { name: "notes" },
      mark: {
        type: "point",
        shape: "triangle-up",
        filled: true,
        fill: "var(--second)",
        size: 42,
        opacity: 1,
        y: { expr: `height - ${NOTE_LIFT}` },
      },
      encoding: { x: at("x", "y").x },
    },
    {
      data: { name: "band" },
      mark: { type: "area", fill: "var(--band)", opacity: 1, line: false },
      encoding: { ...at("x", "low"), y2: { field: "high" } },
    },
    {
      data: { name: "goal" },
      mark: { type: "rule", stroke: "var(--goal)", strokeWidth: 1.5, strokeDash: [5, 4] },
      encoding: { y: at("x", "y").y },
    },
    {
      data: { name: "line" },
      mark: { type: "line", stroke: "var(--mark)", strokeWidth: 1.5 },
      encoding: at("x", "y"),
    },
    ...(["solid", "hollow"] as const).map((name) => ({
      data: { name },
      mark: {
        ...dot(name === "solid" ? "var(--mark)" : "var(--card)"),
        stroke: name === "solid" ? "var(--card)" : "var(--mark)",
        strokeWidth: name === "solid" ? 0.8 : 1.5,
      },
      encoding: { ...at("x", "y"), size: { field: "size", type: "quantitative" as const, scale: null, legend: null } },
    })),
    {
      data: { name: "blocks" },
      mark: { type: "rule", stroke: "var(--ink)", strokeWidth: 2.5 },
      encoding: { ...at("x", "y"), x2: { field: "x2" } },
    },
    {
      data: { name: "words" },
      mark: {
        type: "text",
        fill: "var(--ink)",
        fontSize: LABEL_PX,
        fontWeight: 600,
        dx: { expr: "datum.dx" },
        dy: { expr: "datum.dy" },
        ...HALO,
      },
      encoding: { ...at("x", "y"), text: { field: "text" } },
    },
  ],
};
