import { awayColumns, awayLabels } from "./absences.ts";
import type { Absence, ChartRow, ChartSpec, Span } from "./chart.ts";
import { DAY_MS, dayStart, months, timeDomain } from "./days.ts";
import { LABEL_PX, WIDTH } from "./frame.ts";
import { keyRow } from "./key-row.ts";
import { textWidth } from "./text-width.ts";
import { countAxis } from "./value-axis.ts";
import { type Stack, stacks, type Week } from "./week-stacks.ts";
import { WEEKS_HEIGHT, WEEKS_SPEC } from "./weeks-spec.ts";

/** The report's weeks, the season and the days away. */
export interface WeeksParts {
  readonly weeks: readonly Week[];
  readonly period: Span;
  readonly away: readonly Absence[];
}

/** Every word that the chart shows, already in the reader's language. */
export interface WeeksWords {
  /** "Swings a week". */
  readonly yTitle: string;
  /** Name of an environment; null is work whose environment nobody wrote down. */
  readonly environment: (id: string | null) => string;
  /** Environments beyond the three with most swings, together. */
  readonly others: string;
  /** Swings of the session log that no device measured. */
  readonly unmeasured: string;
  readonly away: string;
}

/** Air above the columns for the word that names an absence, px. */
const AWAY_LINE = 16;

/**
 * Swings per week as stacked columns over the season, the environments in shades with a key, logged work that was not measured as an
 * empty dashed box on top, absences as tinted columns. No weeks give empty axes.
 *
 * @param id letters, digits, hyphens
 */
export function weeksChart(id: string, parts: WeeksParts, words: WeeksWords, locale: string): ChartSpec {
  const made = stacks(parts.weeks);
  const xDomain = timeDomain(
    parts.period,
    parts.weeks.flatMap((w) => [w.start, dayAfter(w.start, 6)]),
  );
  const busiest = Math.max(0, ...parts.weeks.map((_, i) => made.reduce((sum, stack) => sum + stack.swings[i]!, 0)));
  const axis = countAxis(busiest);
  const left = -6 - Math.max(...axis.ticks.map((tick) => textWidth(tick.toLocaleString("en"), LABEL_PX, 400)));
  const names = made.map((stack) => nameOf(stack, words));
  const key = keyRow(names, WIDTH - 6, -6, left);
  const away = awayColumns(parts.away, xDomain);
  const air = away.length === 0 ? 1 : 1 + AWAY_LINE / (WEEKS_HEIGHT - 60);
  const month = months(xDomain, WIDTH - 36, 28);
  return {
    kind: "weeks",
    id,
    width: WIDTH,
    height: WEEKS_HEIGHT + key.height,
    spec: WEEKS_SPEC,
    locale,
    data: {
      away,
      awayWords: awayLabels(away, words.away, textWidth(words.away, LABEL_PX, 400), xDomain, WIDTH - 36),
      borders: month.borders.map((x) => ({ x })),
      keyWords: key.words,
      ...columns(parts.weeks, made),
      ...Object.fromEntries(made.map((stack, i) => [`key${stack.level}`, [key.swatches[i]!]])),
    },
    signals: {
      xDomain,
      monthMiddles: month.middles,
      yDomain: [0, axis.domain[1] * air],
      yTicks: axis.ticks,
      yFormat: axis.format,
      yTitle: words.yTitle,
    },
  };
}

/** Boxes of every shade, those below it underneath; a day's air between weeks. */
function columns(weeks: readonly Week[], made: readonly Stack[]): Record<string, ChartRow[]> {
  const base = weeks.map(() => 0);
  const rows: Record<string, ChartRow[]> = {};
  const span = (week: Week) => ({ x: dayStart(week.start) + DAY_MS / 2, x2: dayStart(week.start) + 6.5 * DAY_MS });
  for (const stack of made) {
    rows[`columns${stack.level}`] = weeks.flatMap((week, i) => {
      const y = base[i]!;
      const y2 = y + stack.swings[i]!;
      base[i] = y2;
      if (y2 === y) return [];
      return [{ ...span(week), y, y2 }];
    });
  }
  rows.paper = weeks.flatMap((week, i) => (base[i]! > 0 ? [{ ...span(week), y: 0, y2: base[i]! }] : []));
  return rows;
}

function nameOf(stack: Stack, words: WeeksWords): string {
  return stack.name.kind === "environment" ? words.environment(stack.name.id) : words[stack.name.kind];
}

function dayAfter(day: string, days: number): string {
  return new Date(dayStart(day) + days * DAY_MS).toISOString().slice(0, 10);
}
