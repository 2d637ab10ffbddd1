import type { TopLevelSpec } from "vega-lite";

/** A row of a named data set: finite numbers and short texts only. Times are epoch milliseconds, UTC. */
export type ChartRow = Readonly<Record<string, number | string | boolean>>;

/** What a signal of a chart may be set to. */
export type ChartSignal = number | string | readonly number[] | readonly string[];

/**
 * One chart, ready to be drawn. `spec` is the same object for every chart of a kind: what differs from chart to chart travels in
 * `data` and `signals`, so that a kind is compiled once and its parsed form is shared.
 */
export interface ChartSpec {
  /** Name of the kind; one kind has one spec. */
  readonly kind: string;
  /** Letters, digits and hyphens, e.g. "trend-3". Every id inside the SVG starts with it. */
  readonly id: string;
  /** Outer size in CSS px at 100%; the page scales the SVG. */
  readonly width: number;
  readonly height: number;
  readonly spec: TopLevelSpec;
  /** Rows by name of the data set in `spec`. */
  readonly data: Readonly<Record<string, readonly ChartRow[]>>;
  /** Values by name of the parameter in `spec`. */
  readonly signals: Readonly<Record<string, ChartSignal>>;
  /** BCP 47 language of tick labels, e.g. "en", "es". */
  readonly locale: string;
}

/** The first and last day that a chart spans, ISO dates, both included. */
export interface Span {
  readonly start: string;
  readonly end: string;
}

/** Days away, ISO dates, both included. */
export interface Absence {
  readonly from: string;
  readonly to: string;
}

/** Where a goal lies on the y axis, in the series' unit: `low === high` for a target or an at-least mark, both ends for a window. */
export interface GoalMark {
  readonly low: number;
  readonly high: number;
}

/** A chart that cannot be drawn honestly: a value that is not a finite number, a name that the spec does not know. */
export class ChartError extends Error {
  override readonly name = "ChartError";
  readonly chart: string;

  constructor(chart: string, problem: string) {
    super(`chart ${chart}: ${problem}`);
    this.chart = chart;
  }
}
