import { drawSvg } from "../charts/draw.ts";
import { type IntervalRow, intervalsChart } from "../charts/intervals.ts";
import type { AthleteReport } from "../report/schema.ts";
import { axisTitle } from "./axis-title.ts";
import { plainCondition } from "./components/condition.tsx";
import { type HittingChart, hittingChartId, plainWhere } from "./components/hitting/parts.tsx";
import { gameRounds } from "./components/hitting/rounds.tsx";
import { plainGear, plainName } from "./components/names.tsx";
import { type FigureStyle, formatFigure, localeOf, shownUnit } from "./figures.ts";
import { type Reading, unitText } from "./reading.ts";

interface Drawn {
  readonly rows: readonly IntervalRow[];
  readonly title: string;
  readonly none: number | null;
  readonly decimals: number;
}

type Pair = readonly [number, number];

/** Pictures of what carries over, by chart id; none for a part without values. */
export async function drawHitting(report: AthleteReport, reading: Reading): Promise<ReadonlyMap<string, string>> {
  const charts = new Map<string, string>();
  for (const [chart, drawn] of Object.entries(partsOf(report, reading)) as [HittingChart, Drawn][]) {
    if (drawn.rows.length === 0) continue;
    const id = hittingChartId(chart);
    const { rows, title, none, decimals } = drawn;
    const spec = intervalsChart(id, rows, { xTitle: title, none, decimals }, localeOf(reading.words.language));
    charts.set(id, await drawSvg(spec));
  }
  return charts;
}

function partsOf(report: AthleteReport, reading: Reading): Record<HittingChart, Drawn> {
  const { words, units } = reading;
  const { hitting, gate } = report;
  const { factor, unit } = shownUnit("mph", units);
  const speed = (label: string, value: number, range: Pair | null, decimals = 1): IntervalRow => ({
    label,
    value: value * factor,
    range: range && [range[0] * factor, range[1] * factor],
    expected: null,
    said: said(reading, value, { unit: "mph", decimals, signed: true }),
  });
  const percent = (
    label: string,
    value: number,
    range: Pair | null,
    expected: Pair | null,
    decimals = 0,
  ): IntervalRow => ({
    label,
    value: 100 * value,
    range: range && [100 * range[0], 100 * range[1]],
    expected: expected && [100 * expected[0], 100 * expected[1]],
    said: said(reading, value, { unit: null, decimals, share: true }),
  });
  const axis = (metric: string) => axisTitle(words, metric, unit);
  const share = (head: string) => words.text("hitting.axisShare", { head });
  return {
    carry: {
      rows: hitting.carryOver
        .filter(({ metric }) => metric === "bat_speed")
        .map((gap) => speed(wayLabel(report, reading, gap), gap.gap.estimate, gap.gap.ci95)),
      title: axis("bat_speed"),
      none: 0,
      decimals: 1,
    },
    rounds: {
      rows: gameRounds(hitting.rounds).map(({ round }) =>
        speed(
          `${plainWhere(report, words, round)}, ${words.text(`rounds.${round.length}`)}`,
          round.drop.estimate,
          round.drop.ci95,
        ),
      ),
      title: axis("bat_speed"),
      none: 0,
      decimals: 1,
    },
    bats: {
      rows: hitting.implements.map((bat) =>
        percent(
          [plainGear(report, words, "implement", bat.id), plainWhere(report, words, bat)].filter(Boolean).join(", "),
          bat.ratio.estimate,
          bat.ratio.ci95,
          bat.expected,
          1,
        ),
      ),
      title: share(words.text("bats.ratio")),
      none: 100,
      decimals: 1,
    },
    worth: {
      rows:
        hitting.worth === null
          ? []
          : [
              speed(
                plainName(words, "metric", "bat_speed"),
                hitting.worth.batSpeed.change,
                hitting.worth.batSpeed.ci95,
              ),
              speed(plainName(words, "metric", "exit_velocity"), hitting.worth.exit.estimate, hitting.worth.exit.range),
            ],
      title: words.text("hitting.axisSpeed", { unit: unitText(words, unit).trim() }),
      none: 0,
      decimals: 1,
    },
    contact: {
      rows: hitting.contact
        .filter(({ implement }) => implement === "game")
        .map((one) => percent(plainWhere(report, words, one), one.middle, null, [one.middle, one.p90])),
      title: share(words.text("contact.middle")),
      none: 100,
      decimals: 0,
    },
    machine: {
      rows: (hitting.machine[0]?.equalTime ?? []).map(({ distanceFt, mph }) => ({
        label: said(reading, distanceFt, { unit: "ft", decimals: 1 }),
        value: mph * factor,
        range: null,
        expected: null,
        said: said(reading, mph, { unit: "mph", decimals: 0 }),
      })),
      title: words.text("hitting.axisSpeed", { unit: unitText(words, unit).trim() }),
      none: null,
      decimals: 0,
    },
    plane: {
      rows: hitting.plane
        .filter(({ drill, ballHeight, inside }) => drill === null && ballHeight === null && inside !== null)
        .map((plane) => percent(plainWhere(report, words, plane), plane.inside!.share, plane.inside!.ci95, null)),
      title: share(words.text("plane.inside")),
      none: null,
      decimals: 0,
    },
    balls: {
      rows: hitting.flight.flatMap((flight) => {
        const where = plainWhere(report, words, flight);
        return flight.zones.map(({ label, in: inside }) => {
          const zone = typeof label === "string" ? label : (label[words.language] ?? Object.values(label)[0] ?? "");
          return percent(words.text("balls.zoneShare", { where, zone }), inside.share, inside.ci95, null);
        });
      }),
      title: share(words.text("balls.read")),
      none: null,
      decimals: 0,
    },
    gate: {
      rows: (gate?.effects ?? []).flatMap((effect, index) => {
        const condition = plainCondition(reading, report, `/gate/effects/${index}`);
        return effect.moves.flatMap(({ by, estimate }) =>
          estimate === null
            ? []
            : [
                speed(
                  `${condition}: ${by === 0 ? words.text("gate.asIs") : said(reading, by, { unit: "mph", decimals: 0, signed: true })}`,
                  estimate,
                  null,
                  effect.decimals,
                ),
              ],
        );
      }),
      title: axis(gate?.effects[0]?.metric ?? "exit_velocity"),
      none: 0,
      decimals: 1,
    },
  };
}

/** A value as a reader sees it, with its unit. */
function said({ words, units }: Reading, value: number, style: FigureStyle): string {
  const { text, unit } = formatFigure(value, style, words.language, units);
  return unit === null ? text : `${text}${unitText(words, unit)}`;
}

/** "Tee → Machine, 70 to 75 mph". */
function wayLabel(report: AthleteReport, reading: Reading, gap: AthleteReport["hitting"]["carryOver"][number]): string {
  const { words } = reading;
  const way = `${plainName(words, "environment", gap.from)} → ${plainWhere(report, words, { environment: gap.to, side: gap.side })}`;
  if (gap.pitchSpeed === null) return way;
  const [low, high] = gap.pitchSpeed;
  const style = { unit: "mph", decimals: 0 };
  const bare = formatFigure(low, style, words.language, reading.units).text;
  return `${way}, ${words.text("hitting.range", { low: bare, high: said(reading, high, style) })}`;
}
