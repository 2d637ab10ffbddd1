import type { TopLevelSpec } from "vega-lite";
import type { ChartSpec } from "./chart.ts";
import { HALO, LABEL_PX, WIDTH } from "./frame.ts";
import { FOOT, HEAD, INNER, px, ROWS_FRAME, ROWS_PARAMS, valueX } from "./rows-frame.ts";
import { textWidth } from "./text-width.ts";
import { valueAxis } from "./value-axis.ts";

/** One line of the chart, in the chart's unit. */
export interface IntervalRow {
  readonly label: string;
  readonly value: number;
  /** Where the value plausibly lies; null where nobody can say. */
  readonly range: readonly [number, number] | null;
  /** What was to be expected, drawn pale behind it; null where nothing was. */
  readonly expected: readonly [number, number] | null;
  /** The value as a reader sees it. */
  readonly said: string;
}

export interface IntervalWords {
  /** Measure with its unit. */
  readonly xTitle: string;
  /** Where "no difference" lies, drawn as an upright line; null for none. */
  readonly none: number | null;
  readonly decimals: number;
}

const ROW = 36;

const SPEC: TopLevelSpec = {
  datasets: { none: [], expected: [], ranges: [], values: [], labels: [], said: [] },
  params: [...ROWS_PARAMS],
  ...ROWS_FRAME,
  layer: [
    {
      data: { name: "none" },
      mark: { type: "rule", stroke: "var(--ink-soft)", strokeWidth: 1.5, y: 0, y2: { expr: "height" } },
      encoding: { x: valueX("x") },
    },
    {
      data: { name: "expected" },
      mark: { type: "rule", stroke: "var(--band)", strokeWidth: 12, strokeCap: "butt" },
      encoding: { x: valueX("low"), x2: { field: "high" }, y: px("y") },
    },
    {
      data: { name: "ranges" },
      mark: { type: "rule", stroke: "var(--mark)", strokeWidth: 2 },
      encoding: { x: valueX("low"), x2: { field: "high" }, y: px("y") },
    },
    {
      data: { name: "values" },
      mark: {
        type: "point",
        shape: "circle",
        filled: false,
        fill: "var(--mark)",
        stroke: "var(--card)",
        strokeWidth: 1,
        size: 70,
        opacity: 1,
      },
      encoding: { x: valueX("value"), y: px("y") },
    },
    {
      data: { name: "labels" },
      mark: { type: "text", align: "left", fill: "var(--ink)", fontSize: LABEL_PX, fontWeight: 600, ...HALO },
      encoding: { x: px("x"), y: px("y"), text: { field: "text" } },
    },
    {
      data: { name: "said" },
      mark: { type: "text", align: "right", fill: "var(--ink)", fontSize: LABEL_PX, ...HALO },
      encoding: { x: px("x"), y: px("y"), text: { field: "text" } },
    },
  ],
};

/**
 * Values with where they plausibly lie, one row each on one scale: label and value above, the dot with its range below.
 *
 * @param id   letters, digits, hyphens
 * @param rows in the order shown, all in one unit; none give an empty frame
 */
export function intervalsChart(
  id: string,
  rows: readonly IntervalRow[],
  words: IntervalWords,
  locale: string,
): ChartSpec {
  const ends = rows.flatMap(({ value, range, expected }) => [value, ...(range ?? []), ...(expected ?? [])]);
  const axis = valueAxis(rows.length === 0 || words.none === null ? ends : [...ends, words.none], words.decimals);
  const y = (i: number) => i * ROW + 25;
  const span = (of: "range" | "expected") =>
    rows.flatMap((row, i) => (row[of] === null ? [] : [{ low: row[of][0], high: row[of][1], y: y(i) }]));
  return {
    kind: "intervals",
    id,
    width: WIDTH,
    height: HEAD + Math.max(1, rows.length) * ROW + FOOT,
    spec: SPEC,
    locale,
    data: {
      none: rows.length === 0 || words.none === null ? [] : [{ x: words.none }],
      expected: span("expected"),
      ranges: span("range"),
      values: rows.map(({ value }, i) => ({ value, y: y(i) })),
      labels: rows.map(({ label, said }, i) => ({ x: 0, y: y(i) - 15, text: fitted(label, said) })),
      said: rows.map(({ said }, i) => ({ x: INNER, y: y(i) - 15, text: said })),
    },
    signals: { xDomain: axis.domain, xTicks: axis.ticks, xFormat: axis.format, xTitle: words.xTitle },
  };
}

/** A label cut where it would run into the value at the other end of its line. */
function fitted(label: string, said: string): string {
  const room = INNER - textWidth(said, LABEL_PX, 400) - 8;
  if (textWidth(label, LABEL_PX, 600) <= room) return label;
  let cut = label;
  while (cut.length > 1 && textWidth(`${cut}…`, LABEL_PX, 600) > room) cut = cut.slice(0, -1);
  return `${cut.trimEnd()}…`;
}
