import type { Series } from "../report/schema.ts";
import { awayColumns, awayLabels } from "./absences.ts";
import type { Absence, ChartSpec, GoalMark, Span } from "./chart.ts";
import { DAY_MS, dayMiddle, dayStart, months, timeDomain } from "./days.ts";
import { LABEL_PX, WIDTH } from "./frame.ts";
import { type BandPoint, lineBand } from "./line-band.ts";
import { textWidth } from "./text-width.ts";
import { trendLabels } from "./trend-labels.ts";
import { TREND_HEIGHT, TREND_SPEC } from "./trend-spec.ts";
import { valueAxis } from "./value-axis.ts";

/** What the chart shows of one series; the report's own parts fit as they are. */
export interface TrendParts {
  readonly series: Pick<
    Series,
    "first" | "last" | "decimals" | "breaks" | "stretches" | "joined" | "better" | "window" | "worth"
  > & {
    readonly sessions: readonly Pick<Series["sessions"][number], "date" | "n" | "mean">[];
    readonly trend: Pick<Series["trend"], "sessionLine">;
  };
  readonly period: Span;
  readonly away: readonly Absence[];
  readonly goal: GoalMark | null;
  /** Values of the charts of the same metric beside it, which shares their scale: in the unit of the series. */
  readonly beside: readonly number[];
  /** Days with a note that this reader sees, ISO dates in any order. */
  readonly notes: readonly string[];
  /** Days on which the plan for this measure changed, likewise. */
  readonly plans: readonly string[];
}

/** Every word that the chart shows, already in the reader's language. */
export interface TrendWords {
  /** Measure with its unit: "Bat speed, mph". */
  readonly yTitle: string;
  /** Beside the goal line; not shown without a goal. */
  readonly goal: string;
  readonly away: string;
  /** Beside the bars of the first and last block. */
  readonly first: string;
  readonly last: string;
}

/** Swings below which a session's dot is hollow: its mean rests on too little to weigh like the others. */
const FEW = 4;
const FULL_AREA = 120;
const LEAST_AREA = 16;

/**
 * One series over the season: a dot per session (area by swings, hollow below four), the session line with its band when the report
 * has one, goal, absences, days with a note, changes of plan, block means, and where the set-up became another one an upright line with the mean of each
 * stretch. Behind them all lies one quiet ribbon: the window of a window measure, else the smallest change that matters up and down
 * from where the line starts. Any number of sessions, none included, gives a chart.
 *
 * @param id letters, digits, hyphens
 */
export function trendChart(id: string, parts: TrendParts, words: TrendWords, locale: string): ChartSpec {
  const { series, goal } = parts;
  const xDomain = timeDomain(
    parts.period,
    series.sessions.map((s) => s.date),
  );
  const band =
    series.trend.sessionLine === null
      ? []
      : lineBand(
          series.trend.sessionLine,
          series.sessions.map((s) => s.date),
        );
  const blocks = blockBars(series);
  const quiet = quietRibbon(series);
  const axis = valueAxis(
    [...valuesShown(series, band, goal), ...quiet.flatMap(({ y, y2 }) => [y, y2]), ...parts.beside],
    series.decimals,
  );
  const plot = { width: WIDTH - 38, height: TREND_HEIGHT - 44 };
  const month = months(xDomain, plot.width, 28);
  const dots = sessionDots(series);
  const away = awayColumns(parts.away, xDomain);
  const line = [band[0], band.at(-1)].flatMap((point) => (point === undefined ? [] : [{ x: point.x, y: point.y }]));
  const awayWords = awayLabels(away, words.away, textWidth(words.away, LABEL_PX, 400), xDomain, plot.width);
  const notes = noteMarks(parts.notes, xDomain);
  const plans = noteMarks(parts.plans, xDomain);
  const labels = trendLabels({
    blocks,
    dots,
    line: band,
    goal,
    notes,
    awayWords,
    words,
    xDomain,
    yDomain: axis.domain,
    plot,
  });
  const goals = goal === null ? [] : [...new Set([goal.low, goal.high])].map((y) => ({ y }));
  return {
    kind: "trend",
    id,
    width: WIDTH,
    height: TREND_HEIGHT,
    spec: TREND_SPEC,
    locale,
    data: {
      away,
      awayWords: labels.away,
      quiet,
      notes,
      plans,
      band: band.map(({ x, low, high }) => ({ x, low, high })),
      line,
      goal: goals,
      solid: dots.filter((row) => row.n >= FEW),
      hollow: dots.filter((row) => row.n < FEW),
      blocks: [...blocks, ...stretchBars(series)],
      breaks: [...new Set(series.breaks.map(({ date }) => date))].map((date) => ({ x: dayStart(date) })),
      words: labels.words,
      borders: month.borders.map((x) => ({ x })),
    },
    signals: {
      xDomain,
      monthMiddles: month.middles,
      yDomain: axis.domain,
      yTicks: axis.ticks,
      yFormat: axis.format,
      yTitle: words.yTitle,
    },
  };
}

/** What stands quietly behind the dots; nothing where there is no line to start it from, or no window. */
function quietRibbon({ better, window, worth, trend }: TrendParts["series"]): { y: number; y2: number }[] {
  if (better === "window") return window === null ? [] : [{ y: window[0], y2: window[1] }];
  if (worth === null || trend.sessionLine === null) return [];
  const { start } = trend.sessionLine;
  return [{ y: start - worth.value, y2: start + worth.value }];
}

/** One mark per day with a note, in time order; notes from outside the chart's time are left to the page. */
function noteMarks(days: readonly string[], [from, to]: readonly [number, number]): { x: number }[] {
  return [...new Set(days)]
    .sort()
    .map((day) => ({ x: dayMiddle(day) }))
    .filter(({ x }) => x >= from && x <= to);
}

/** A session's place and the area of its dot in px², in step with its share of the busiest session's swings. */
function sessionDots(series: TrendParts["series"]): { x: number; y: number; n: number; size: number }[] {
  const most = Math.max(20, ...series.sessions.map((s) => s.n));
  return series.sessions.map((s) => ({
    x: dayMiddle(s.date),
    y: s.mean,
    n: s.n,
    size: Math.max(LEAST_AREA, (FULL_AREA * s.n) / most),
  }));
}

/** A bar for each stretch between changes of set-up; none where the set-up stayed, or where a bridge joined them to one line. */
function stretchBars(series: TrendParts["series"]): { x: number; x2: number; y: number }[] {
  if (series.breaks.length === 0 || series.joined) return [];
  return series.stretches.map(({ from, to, mean }) => ({ x: dayStart(from), x2: dayStart(to) + DAY_MS, y: mean }));
}

function blockBars(series: TrendParts["series"]): { x: number; x2: number; y: number; which: "first" | "last" }[] {
  return (["first", "last"] as const).flatMap((which) => {
    const block = series[which];
    if (block === null) return [];
    return [{ x: dayStart(block.from), x2: dayStart(block.to) + DAY_MS, y: block.mean, which }];
  });
}

function valuesShown(series: TrendParts["series"], band: readonly BandPoint[], goal: GoalMark | null): number[] {
  return [
    ...series.sessions.map((s) => s.mean),
    ...band.flatMap((point) => [point.low, point.high]),
    ...(goal === null ? [] : [goal.low, goal.high]),
    ...[series.first, series.last].flatMap((block) => (block === null ? [] : [block.mean])),
  ];
}
