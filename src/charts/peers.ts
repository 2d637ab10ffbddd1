import type { TopLevelSpec } from "vega-lite";
import type { Series } from "../report/schema.ts";
import type { ChartRow, ChartSpec } from "./chart.ts";
import { HALO, LABEL_PX, WIDTH } from "./frame.ts";
import { keyRow } from "./key-row.ts";
import { FOOT, HEAD, INNER, px, ROWS_FRAME, ROWS_PARAMS, valueX } from "./rows-frame.ts";
import { textWidth } from "./text-width.ts";
import { valueAxis } from "./value-axis.ts";

/** What the chart shows of one series; the report's own parts fit as they are. */
export type PeersParts = Pick<NonNullable<Series["peers"]>, "start" | "end" | "bands" | "bandsStart"> & {
  readonly decimals: number;
};

/** Every word that the chart shows, already in the reader's language. */
export interface PeersWords {
  /** Measure with its unit: "Bat speed, mph". */
  readonly xTitle: string;
  /** Before the rows. */
  readonly start: string;
  readonly end: string;
  /** Values beside the athlete's marks; "" where there is none. */
  readonly startValue: string;
  readonly endValue: string;
  /** What the thin bar, the thick one and the dot are. */
  readonly most: string;
  readonly half: string;
  readonly hitter: string;
}

const ROW = 52;

const bar = (strokeWidth: number) => ({ type: "rule", stroke: "var(--band)", strokeWidth, strokeCap: "butt" }) as const;
const hitter = {
  type: "point",
  shape: "circle",
  filled: false,
  fill: "var(--mark)",
  stroke: "var(--card)",
  strokeWidth: 1.5,
  size: 110,
  opacity: 1,
} as const;
const words = { type: "text", align: "left", fill: "var(--ink)", fontSize: LABEL_PX } as const;

const THIN = 5;
const THICK = 15;

const SPEC: TopLevelSpec = {
  datasets: { bands: [], hitters: [], labels: [], values: [], keyMost: [], keyHalf: [], keyHitter: [], keyWords: [] },
  params: [...ROWS_PARAMS],
  ...ROWS_FRAME,
  layer: [
    {
      data: { name: "bands" },
      mark: bar(THIN),
      encoding: { x: valueX("p10"), x2: { field: "p90" }, y: px("y") },
    },
    {
      data: { name: "bands" },
      mark: bar(THICK),
      encoding: { x: valueX("p25"), x2: { field: "p75" }, y: px("y") },
    },
    {
      data: { name: "bands" },
      mark: { type: "rule", stroke: "var(--ink)", strokeWidth: 1.5 },
      encoding: { x: valueX("p50"), y: px("top"), y2: { field: "bottom" } },
    },
    { data: { name: "hitters" }, mark: hitter, encoding: { x: valueX("value"), y: px("y") } },
    {
      data: { name: "labels" },
      mark: { ...words, fontWeight: 600, ...HALO },
      encoding: { x: px("x"), y: px("y"), text: { field: "text" } },
    },
    {
      data: { name: "values" },
      mark: { ...words, align: "center", fontWeight: 600, dx: { expr: "datum.dx" }, ...HALO },
      encoding: { x: valueX("value"), y: px("y"), text: { field: "text" } },
    },
    { data: { name: "keyMost" }, mark: bar(THIN), encoding: { x: px("x"), x2: { field: "x2" }, y: px("y") } },
    { data: { name: "keyHalf" }, mark: bar(THICK - 4), encoding: { x: px("x"), x2: { field: "x2" }, y: px("y") } },
    { data: { name: "keyHitter" }, mark: { ...hitter, size: 80 }, encoding: { x: px("x"), y: px("y") } },
    { data: { name: "keyWords" }, mark: words, encoding: { x: px("x"), y: px("y"), text: { field: "text" } } },
  ],
};

/**
 * Where the athlete stands among peers, one row at the start and one at the end: a thin bar from the 10th to the 90th percentile, a
 * thick one over the middle half with a tick at the median, and the athlete's own value as a dot. Where the bands do not move with age
 * both rows have the same ones. An end without a value has no row.
 *
 * @param id letters, digits, hyphens
 */
export function peersChart(id: string, parts: PeersParts, text: PeersWords, locale: string): ChartSpec {
  const { start, end, bands, bandsStart } = parts;
  const rows = [
    ...(start === null
      ? []
      : [{ value: start.value, bands: bandsStart ?? bands, label: text.start, said: text.startValue }]),
    ...(end === null ? [] : [{ value: end.value, bands, label: text.end, said: text.endValue }]),
  ];
  const axis = valueAxis(
    rows.flatMap((row) => [row.value, row.bands.p10, row.bands.p90]),
    parts.decimals,
  );
  const key = keyRow([text.most, text.half, text.hitter], INNER, -6);
  const y = (i: number) => i * ROW + 38;
  const swatch = (i: number): ChartRow => ({ ...key.swatches[i]! });
  const dash = (i: number): ChartRow => ({
    x: key.swatches[i]!.x - 6,
    x2: key.swatches[i]!.x + 6,
    y: key.swatches[i]!.y,
  });
  return {
    kind: "peers",
    id,
    width: WIDTH,
    height: HEAD + key.height + Math.max(1, rows.length) * ROW + FOOT,
    spec: SPEC,
    locale,
    data: {
      bands: rows.map((row, i) => ({ ...row.bands, y: y(i), top: y(i) - THICK / 2, bottom: y(i) + THICK / 2 })),
      hitters: rows.map(({ value }, i) => ({ value, y: y(i) })),
      labels: rows.map(({ label }, i) => ({ x: 0, y: y(i) - 29, text: label })),
      values: rows.map(({ value, said }, i) => ({
        value,
        y: y(i) - 15,
        dx: inside(value, axis.domain, said),
        text: said,
      })),
      keyMost: [dash(0)],
      keyHalf: [dash(1)],
      keyHitter: [swatch(2)],
      keyWords: key.words,
    },
    signals: { xDomain: axis.domain, xTicks: axis.ticks, xFormat: axis.format, xTitle: text.xTitle },
  };
}

/** Shift in px that keeps a text over its value on the sheet. */
function inside(value: number, [low, high]: readonly [number, number], text: string): number {
  const half = textWidth(text, LABEL_PX, 600) / 2;
  const x = ((value - low) / (high - low)) * INNER;
  return Math.max(half, Math.min(INNER - half, x)) - x;
}
