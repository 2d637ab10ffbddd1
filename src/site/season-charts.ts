import type { GoalMark } from "../charts/chart.ts";
import { compareChart } from "../charts/compare.ts";
import { drawSvg } from "../charts/draw.ts";
import { peersChart } from "../charts/peers.ts";
import { trendChart } from "../charts/trend.ts";
import { weeksChart } from "../charts/weeks.ts";
import type { AthleteReport, GoalReport, Series } from "../report/schema.ts";
import type { Reader } from "../schema/reasons.ts";
import { axisTitle } from "./axis-title.ts";
import { plainCondition } from "./components/condition.tsx";
import { plainName } from "./components/names.tsx";
import {
  aimId,
  clubCharts,
  compareId,
  isGoalOf,
  measuresOf,
  type Placed,
  peersId,
  sideBySide,
  trendId,
} from "./components/series-parts.ts";
import { formatFigure, localeOf, shownUnit } from "./figures.ts";
import { drawHitting } from "./hitting-charts.ts";
import type { Reading } from "./reading.ts";
import type { PagePart } from "./variants.ts";

/**
 * The charts of one athlete's page, drawn: lines and weeks for the report; comparisons, peers and what carries over for all the numbers.
 *
 * @returns SVG by chart id; no entry for a series of fewer than two sessions, or for a club page's weeks
 */
export async function drawCharts(
  report: AthleteReport,
  reader: Reader,
  reading: Reading,
  part: PagePart,
): Promise<ReadonlyMap<string, string>> {
  const charts = await drawAll(report, reader, reading, part);
  return new Map([...charts].map(([id, svg]) => [id, inPage(svg)]));
}

/** What a picture inside a page has from the page: its name space, its typeface and how letters are drawn. */
const FROM_PAGE = / (?:xmlns="http:\/\/www\.w3\.org\/2000\/svg"|text-rendering="[^"]*"|font-family="[^"]*")/g;
const inPage = (svg: string): string => svg.replace(/^<svg[^>]*>/, (tag) => tag.replace(FROM_PAGE, ""));

async function drawAll(
  report: AthleteReport,
  reader: Reader,
  reading: Reading,
  part: PagePart,
): Promise<ReadonlyMap<string, string>> {
  const charts = new Map<string, string>();
  const lines = reader === "club" ? clubCharts(report) : measuresOf(report);
  if (part === "numbers") {
    for (const rows of sideBySide(report)) {
      charts.set(compareId(rows[0]!.series.metric), await drawCompare(report, rows, reading));
    }
    for (const placed of lines) {
      const svg = await drawPeers(placed, reading);
      if (svg !== null) charts.set(peersId(placed.index), svg);
    }
    for (const [id, svg] of await drawHitting(report, reading)) charts.set(id, svg);
    for (const index of report.aims.keys()) charts.set(aimId(index), await drawAim(report, index, reading));
    return charts;
  }
  if (part === "interim" || part === "card") return charts;
  for (const placed of lines) {
    if (placed.series.sessions.length < 2) continue;
    charts.set(trendId(placed.index), await drawTrend(report, placed, lines, reading));
  }
  if (reader === "club") return charts;
  if (report.work.weeks.length > 0) charts.set("weeks", await drawWeeks(report, reading));
  return charts;
}

async function drawTrend(
  report: AthleteReport,
  { series, index }: Placed,
  lines: readonly Placed[],
  reading: Reading,
): Promise<string> {
  const { words, units } = reading;
  const { factor, unit } = shownUnit(series.unit, units);
  const style = { unit: series.unit, decimals: series.decimals };
  const number = (value: number) => formatFigure(value, style, words.language, units).text;
  const goalNumber = (value: number) => {
    const decimals = Number.isInteger(value) ? 0 : series.decimals;
    return formatFigure(value, { ...style, decimals }, words.language, units).text;
  };
  const goal = goalOf(report, series);
  const mark = goal === null ? null : markOf(goal);
  return drawSvg(
    trendChart(
      trendId(index),
      {
        series: factor === 1 ? series : scaled(series, factor),
        period: report.period,
        away: report.athlete.away,
        goal: mark === null ? null : { low: mark.low * factor, high: mark.high * factor },
        beside: lines
          .filter((line) => line.series.metric === series.metric)
          .flatMap((line) => line.series.sessions.map(({ mean }) => mean * factor)),
        notes: report.notes.map(({ date }) => date),
        plans: report.notes.flatMap((note) => (note.series.includes(index) ? [note.date] : [])),
      },
      {
        yTitle: axisTitle(words, series.metric, unit),
        goal: mark === null ? "" : goalLabel(mark, goalNumber, reading),
        away: words.text("work.away"),
        first: series.first === null ? "" : words.text("measure.firstMark", { value: number(series.first.mean) }),
        last: series.last === null ? "" : words.text("measure.lastMark", { value: number(series.last.mean) }),
      },
      localeOf(words.language),
    ),
  );
}

/** The share of a drill's reps inside its aim, a dot a day. */
async function drawAim(report: AthleteReport, index: number, reading: Reading): Promise<string> {
  const { words, units } = reading;
  const { days, first, last } = report.aims[index]!;
  const end = (of: typeof first) => of && { ...of, sessions: of.days, n: of.of, mean: 100 * of.share };
  const mark = (key: "measure.firstMark" | "measure.lastMark", of: typeof first) =>
    of === null
      ? ""
      : words.text(key, {
          value: formatFigure(of.share, { unit: null, decimals: 0, share: true }, words.language, units).text,
        });
  return drawSvg(
    trendChart(
      aimId(index),
      {
        series: {
          sessions: days.map(({ date, of, share }) => ({ date, n: of, mean: 100 * share })),
          first: end(first),
          last: end(last),
          ...{ trend: { sessionLine: null }, breaks: [], stretches: [], joined: false },
          ...{ decimals: 0, better: "higher", window: null, worth: null },
        },
        period: report.period,
        away: report.athlete.away,
        goal: null,
        ...{ beside: [], notes: [], plans: [] },
      },
      {
        yTitle: words.text("aim.axis"),
        goal: "",
        away: words.text("work.away"),
        first: mark("measure.firstMark", first),
        last: mark("measure.lastMark", last),
      },
      localeOf(words.language),
    ),
  );
}

function goalLabel({ low, high }: GoalMark, number: (value: number) => string, { words }: Reading): string {
  return low === high
    ? words.text("measure.goalMark", { value: number(low) })
    : words.text("measure.goalWindow", { low: number(low), high: number(high) });
}

/** The goal that is about just this series. */
function goalOf(report: AthleteReport, series: Series): GoalReport | null {
  return report.goals.find((goal) => isGoalOf(goal, series)) ?? null;
}

function markOf(goal: GoalReport): GoalMark | null {
  if (goal.window !== null) return { low: goal.window[0], high: goal.window[1] };
  const value = goal.target ?? goal.atLeast;
  return value === null ? null : { low: value, high: value };
}

/** The series in the unit a reader sees; every number that a trend chart may draw is a linear value. */
function scaled(series: Series, factor: number): Series {
  const block = (of: Series["first"]) => of && { ...of, mean: of.mean * factor };
  const line = series.trend.sessionLine;
  return {
    ...series,
    sessions: series.sessions.map((session) => ({
      ...session,
      mean: session.mean * factor,
      sd: session.sd === null ? null : session.sd * factor,
      median: session.median * factor,
      p90: session.p90 * factor,
      max: session.max * factor,
      shift: session.shift * factor,
    })),
    window: series.window && [series.window[0] * factor, series.window[1] * factor],
    worth: series.worth && { ...series.worth, value: series.worth.value * factor },
    first: block(series.first),
    last: block(series.last),
    stretches: series.stretches.map((stretch) => ({ ...stretch, mean: stretch.mean * factor })),
    trend: {
      ...series.trend,
      sessionLine: line && {
        ...line,
        perWeek: line.perWeek * factor,
        se: line.se * factor,
        ci95: [line.ci95[0] * factor, line.ci95[1] * factor],
        start: line.start * factor,
        end: line.end * factor,
      },
    },
  };
}

/** First and last block of one metric's settings, one row each. */
async function drawCompare(report: AthleteReport, rows: readonly Placed[], reading: Reading): Promise<string> {
  const { words, units } = reading;
  const { metric, unit: written, decimals } = rows[0]!.series;
  const { factor, unit } = shownUnit(written, units);
  const label = ({ at }: Placed) => plainCondition(reading, report, at);
  return drawSvg(
    compareChart(
      compareId(metric),
      rows.map((placed) => ({
        label: label(placed).replace(/^./u, (letter) => letter.toUpperCase()),
        first: placed.series.first!.mean * factor,
        last: placed.series.last!.mean * factor,
      })),
      {
        xTitle: axisTitle(words, metric, unit),
        first: words.text("change.first"),
        last: words.text("change.last"),
        decimals,
      },
      localeOf(words.language),
    ),
  );
}

/** Where the athlete stands among peers; null where there is no band, or no end to stand in it. */
async function drawPeers({ series, index }: Placed, { words, units }: Reading): Promise<string | null> {
  const { peers, decimals } = series;
  if (peers === null || (peers.start === null && peers.end === null)) return null;
  const { factor, unit } = shownUnit(series.unit, units);
  const bands = (of: typeof peers.bands) => ({
    p10: of.p10 * factor,
    p25: of.p25 * factor,
    p50: of.p50 * factor,
    p75: of.p75 * factor,
    p90: of.p90 * factor,
  });
  const end = (of: typeof peers.end) => of && { ...of, value: of.value * factor };
  const said = (of: typeof peers.end) =>
    of === null ? "" : formatFigure(of.value, { unit: series.unit, decimals }, words.language, units).text;
  return drawSvg(
    peersChart(
      peersId(index),
      {
        start: end(peers.start),
        end: end(peers.end),
        bands: bands(peers.bands),
        bandsStart: peers.bandsStart && bands(peers.bandsStart),
        decimals,
      },
      {
        xTitle: axisTitle(words, series.metric, unit),
        start: words.text("change.first"),
        end: words.text("change.last"),
        startValue: said(peers.start),
        endValue: said(peers.end),
        most: words.text("peers.keyMost"),
        half: words.text("peers.keyHalf"),
        hitter: words.text("peers.keyHitter"),
      },
      localeOf(words.language),
    ),
  );
}

async function drawWeeks(report: AthleteReport, { words }: Reading): Promise<string> {
  return drawSvg(
    weeksChart(
      "weeks",
      { weeks: report.work.weeks, period: report.period, away: report.athlete.away },
      {
        yTitle: words.text("work.axis"),
        environment: (id) => plainName(words, "environment", id ?? "none"),
        others: words.text("environment.others"),
        unmeasured: words.text("work.logged"),
        away: words.text("work.away"),
      },
      localeOf(words.language),
    ),
  );
}
