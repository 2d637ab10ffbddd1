import type { TopLevelSpec } from "vega-lite";
import type { ChartRow, ChartSpec } from "./chart.ts";
import { HALO, LABEL_PX, WIDTH } from "./frame.ts";
import { keyRow } from "./key-row.ts";
import { FOOT, HEAD, INNER, px, ROWS_FRAME, ROWS_PARAMS, valueX } from "./rows-frame.ts";
import { textWidth } from "./text-width.ts";
import { ticksOf } from "./value-axis.ts";

/** One line of the comparison: block means of one condition, in the chart's unit. */
export interface CompareRow {
  readonly label: string;
  readonly first: number;
  readonly last: number;
}

/** Every word that the chart shows, already in the reader's language. */
export interface CompareWords {
  /** Measure with its unit: "Bat speed, mph". */
  readonly xTitle: string;
  /** What the hollow and the filled dots are. */
  readonly first: string;
  readonly last: string;
  /** Decimals of the values beside the dots. */
  readonly decimals: number;
}

const ROW = 38;
/** Radius of a dot with the air that its value keeps from it, px. */
const REACH = 9;

const dot = (fill: string) =>
  ({
    type: "point",
    shape: "circle",
    filled: false,
    fill,
    stroke: "var(--mark)",
    strokeWidth: 1.8,
    size: 60,
    opacity: 1,
  }) as const;

const SPEC: TopLevelSpec = {
  datasets: { lines: [], labels: [], values: [], keyFirst: [], keyLast: [], keyWords: [] },
  params: [...ROWS_PARAMS, { name: "valueFormat", value: "" }],
  ...ROWS_FRAME,
  layer: [
    {
      data: { name: "lines" },
      mark: { type: "rule", stroke: "var(--mark)", strokeWidth: 2.5 },
      encoding: { x: valueX("first"), x2: { field: "last" }, y: px("y") },
    },
    { data: { name: "lines" }, mark: dot("var(--card)"), encoding: { x: valueX("first"), y: px("y") } },
    { data: { name: "lines" }, mark: dot("var(--mark)"), encoding: { x: valueX("last"), y: px("y") } },
    {
      data: { name: "labels" },
      mark: { type: "text", align: "left", fill: "var(--ink)", fontSize: LABEL_PX, fontWeight: 600, ...HALO },
      encoding: { x: px("x"), y: px("y"), text: { field: "text" } },
    },
    ...(["right", "left"] as const).map((align) => ({
      data: { name: "values" },
      transform: [{ filter: `datum.side === '${align}'` }],
      mark: {
        type: "text" as const,
        align,
        fill: "var(--ink)",
        fontSize: LABEL_PX,
        dx: align === "left" ? REACH : -REACH,
        text: { expr: "format(datum.value, valueFormat)" },
        ...HALO,
      },
      encoding: { x: valueX("value"), y: px("y") },
    })),
    { data: { name: "keyFirst" }, mark: dot("var(--card)"), encoding: { x: px("x"), y: px("y") } },
    { data: { name: "keyLast" }, mark: dot("var(--mark)"), encoding: { x: px("x"), y: px("y") } },
    {
      data: { name: "keyWords" },
      mark: { type: "text", align: "left", fill: "var(--ink)", fontSize: LABEL_PX },
      encoding: { x: px("x"), y: px("y"), text: { field: "text" } },
    },
  ],
};

/**
 * First block to last block, one row per condition on one scale: a hollow dot for the first block, a filled one for the last, each
 * with its value on the outer side. No rows give an empty frame.
 *
 * @param id   letters, digits, hyphens
 * @param rows in the order shown, all in one unit
 */
export function compareChart(id: string, rows: readonly CompareRow[], words: CompareWords, locale: string): ChartSpec {
  const xDomain = roomyDomain(rows, words.decimals);
  const axis = rows.length === 0 ? { ticks: [], format: "" } : ticksOf(xDomain, 4);
  const key = keyRow([words.first, words.last], INNER, -6);
  const y = (i: number) => i * ROW + 27;
  return {
    kind: "compare",
    id,
    width: WIDTH,
    height: HEAD + key.height + Math.max(1, rows.length) * ROW + FOOT,
    spec: SPEC,
    locale,
    data: {
      lines: rows.map((row, i) => ({ first: row.first, last: row.last, y: y(i) })),
      labels: rows.map((row, i) => ({ x: 0, y: y(i) - 17, text: row.label })),
      values: rows.flatMap((row, i) => sides(row, y(i))),
      keyFirst: [key.swatches[0]!],
      keyLast: [key.swatches[1]!],
      keyWords: key.words,
    },
    signals: {
      xDomain,
      xTicks: axis.ticks,
      xFormat: axis.format,
      valueFormat: `,.${words.decimals}f`,
      xTitle: words.xTitle,
    },
  };
}

/** The two values of a row, each on the side away from the other dot. */
function sides(row: CompareRow, y: number): ChartRow[] {
  const rising = row.last >= row.first;
  return [
    { value: row.first, y, side: rising ? "right" : "left" },
    { value: row.last, y, side: rising ? "left" : "right" },
  ];
}

/** Domain that leaves the outermost values room beside their dots. */
function roomyDomain(rows: readonly CompareRow[], decimals: number): [number, number] {
  const values = rows.flatMap((row) => [row.first, row.last]);
  const low = values.length === 0 ? 0 : Math.min(...values);
  const high = values.length === 0 ? 1 : Math.max(...values);
  const span = Math.max(high - low, 8 * 10 ** -decimals, Math.max(Math.abs(low), Math.abs(high)) * 1e-9);
  const widest = Math.max(...[low, high].map((v) => textWidth(v.toFixed(decimals), LABEL_PX, 400)));
  const room = REACH + widest + 3;
  const perPx = span / (INNER - 2 * room);
  const middle = low / 2 + high / 2;
  return [middle - span / 2 - room * perPx, middle + span / 2 + room * perPx];
}
