import type { NotCountedReason } from "../schema/reasons.ts";
import type { AthleteSeason } from "../schema/season.ts";
import type { Judged } from "./gated.ts";
import { strandsOf } from "./group.ts";
import type { ReportInput } from "./input.ts";
import { match } from "./match.ts";
import { measuredBy } from "./measured-by.ts";
import type { MeasureOf } from "./measures.ts";
import type { AthleteReport, Series } from "./schema.ts";
import { type SeriesContext, seriesFrom } from "./series.ts";

type GateReport = NonNullable<AthleteReport["gate"]>;
type Effect = GateReport["effects"][number];
type Ends = Effect["ungated"];

/** mph by which all marks are moved to see how the results move. */
const MOVES = [-3, -2, -1, 0, 1, 2, 3] as const;

interface Known {
  readonly season: ReportInput["season"];
  readonly series: readonly Series[];
  readonly measures: readonly MeasureOf[];
  readonly context: SeriesContext;
}

const endsOf = (series: Series | undefined): Ends => ({
  n: series?.n ?? 0,
  first: series?.first?.mean ?? null,
  last: series?.last?.mean ?? null,
  estimate: series?.change?.estimate ?? null,
});

/** What the marks kept out, and how the measures of ball flight would read without them and with others. Null without a mark. */
export function gateReport(
  athlete: Pick<AthleteSeason, "profile" | "reps">,
  { judged, ungated, gateOf, conditions, moved }: Judged,
  { season, series, measures, context }: Known,
): GateReport | null {
  const { profile, reps } = athlete;
  const gates = profile.gates ?? [];
  if (gates.length === 0) return null;
  const under = (i: number) => judged[i] === "under-mark" || judged[i] === "no-speed-to-judge";
  const find = measuredBy(reps, season.metrics, season.devices);
  /** Series of the ball-flight measures when these reps count. */
  const seen = (reasons: readonly (NotCountedReason | null)[], measure: number): Series[] => {
    const { metric, condition } = measures[measure]!;
    const strands = strandsOf(
      reps,
      season.metrics.filter(({ id }) => id === metric),
      conditions,
      reasons,
      find,
    );
    return match(strands, metric, condition, season.implements).map((found) => seriesFrom(found, null, context));
  };
  const moves = MOVES.map((by) => ({ by, reasons: by === 0 ? judged : moved(by) }));
  const effects = series.flatMap((one, index): Effect[] => {
    const { measure } = one;
    if (measure === null || sideOf(season, one.metric) !== "ball") return [];
    const same = (list: readonly Series[]) => list.find(({ condition }) => alike(condition, one.condition));
    const without = same(seen(ungated, measure));
    if (without === undefined || !touches(one, without)) return [];
    return [
      {
        series: index,
        metric: one.metric,
        unit: one.unit,
        decimals: one.decimals,
        condition: one.condition,
        gated: endsOf(one),
        ungated: endsOf(without),
        moves: moves.map(({ by, reasons }) => ({ by, ...endsOf(by === 0 ? one : same(seen(reasons, measure))) })),
      },
    ];
  });
  const inGate = gateOf.flatMap((index, i) => (index !== null && (judged[i] === null || under(i)) ? [i] : []));
  const count = (of: (i: number) => boolean) => inGate.filter(of).length;
  return {
    marks: gates.map((one, index) => ({
      applies: Object.fromEntries(
        Object.entries(one.applies).flatMap(([key, value]) =>
          value === undefined ? [] : [[key, typeof value === "string" ? [value] : [...value]]],
        ),
      ),
      from: one.from ?? null,
      atLeast: "at_least" in one ? one.at_least : null,
      share: "at_least" in one ? null : one.share_of_recent_best,
      days: "at_least" in one ? null : one.days,
      best: "at_least" in one ? null : (one.best ?? "max"),
      judged: count((i) => gateOf[i] === index),
      passed: count((i) => gateOf[i] === index && judged[i] === null),
    })),
    judged: inGate.length,
    passed: count((i) => judged[i] === null),
    underMark: count((i) => judged[i] === "under-mark"),
    noSpeed: count((i) => judged[i] === "no-speed-to-judge"),
    effects,
  };
}

const sideOf = (season: Known["season"], metric: string) => season.metrics.find(({ id }) => id === metric)?.side;

const alike = (a: object, b: object): boolean => JSON.stringify(a) === JSON.stringify(b);

/** A series in which no swing was kept out says nothing of the gate. */
const touches = (gated: Series, ungated: Series): boolean => gated.n !== ungated.n;
