import type { AthleteReport, Series } from "../../report/schema.ts";
import { plainDay, plainFigure, type Reading, useAthlete, useReading } from "../reading.ts";
import type { MessageKey } from "../words.ts";
import { Breaks, Joined } from "./breaks.tsx";
import { ChartFigure } from "./chart-figure.tsx";
import { Condition, plainCondition } from "./condition.tsx";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Named, plainName } from "./names.tsx";
import { Peers } from "./peers.tsx";
import { Count, Say } from "./say.tsx";
import { Section } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { measuresOf, type Placed, sessionsOrDays, sessionWord, takesInZero, trendId } from "./series-parts.ts";
import { BesideVerdict, Verdict } from "./verdict.tsx";

/** Each measure with its chart, its values, what stands behind them, and a table of all days. */
export function Measures() {
  const { report } = useAthlete();
  const measures = measuresOf(report);
  if (measures.length === 0) return null;
  const legends = legendsOf(measures, report);
  const newGroups = newGroupsOf(measures);
  return (
    <Section id="measures" head="measure.head">
      {measures.map((placed, index) => {
        const before = measures.slice(0, index).some(({ series }) => series.metric === placed.series.metric);
        return (
          <Measure
            key={placed.at}
            placed={placed}
            explain={!before}
            legend={legends[index] ?? []}
            newGroup={newGroups[index] ?? true}
          />
        );
      })}
      {measures.some(({ series }) => series.pooled) ? (
        <p class="aside">
          <Say k="condition.pooled" />
        </p>
      ) : null}
    </Section>
  );
}

/** For each measure the marks of its chart that are not told beside a chart above. */
function legendsOf(measures: readonly Placed[], report: AthleteReport): MessageKey[][] {
  const told = new Set<MessageKey>();
  return measures.map(({ series, index }) => {
    if (series.sessions.length < 2) return [];
    const fresh = [captionOf(series), ...besideCaption(series, report, index)].filter((key) => !told.has(key));
    for (const key of fresh) told.add(key);
    return fresh;
  });
}

function newGroupsOf(measures: readonly Placed[]): boolean[] {
  const told = new Set<string>();
  return measures.map(({ series: { peers } }) => {
    const key = peers === null ? "" : JSON.stringify([peers.group, peers.n, peers.year, peers.source]);
    const fresh = !told.has(key);
    told.add(key);
    return fresh;
  });
}

interface MeasureProps {
  readonly placed: Placed;
  /** What the metric is, said once. */
  readonly explain: boolean;
  /** What the marks of its chart are that no chart above it has. */
  readonly legend: readonly MessageKey[];
  /** Others like the hitter are named where no measure above has the same. */
  readonly newGroup: boolean;
}

function Measure({ placed, explain, legend, newGroup }: MeasureProps) {
  const reading = useReading();
  const { words } = reading;
  const { report } = useAthlete();
  const { series, at } = placed;
  const about = `about.${series.metric}`;
  return (
    <article class="measure" id={`measure-${placed.index}`} aria-labelledby={`measure-${placed.index}-head`}>
      <h3 id={`measure-${placed.index}-head`}>
        <Named kind="metric" id={series.metric} />
      </h3>
      <p class="setup">
        <Condition of={at} report={report} />
      </p>
      {explain && words.has(about) ? <p class="aside">{words.text(about)}</p> : null}
      <Verdict placed={placed} />
      <div class="spread">
        {series.sessions.length < 2 ? null : (
          <ChartFigure id={trendId(placed.index)} alt={trendAlt(reading, report, placed)} days>
            {legend.length === 0
              ? undefined
              : legend.map((key) => [<Say key={key} k={key} with={{ of: sessionsOrDays(series) }} />, " "])}
          </ChartFigure>
        )}
        <Values placed={placed} />
      </div>
      {series.breaks.length === 0 || series.joined ? <Range placed={placed} /> : <Breaks placed={placed} />}
      <BesideVerdict placed={placed} />
      <Peers placed={placed} group={newGroup} />
      {series.joined ? (
        <p class="aside">
          <Joined placed={placed} />
        </p>
      ) : null}
      <Denominator placed={placed} />
      {series.pooled ? (
        <p class="aside">
          <Say k="condition.pooledShort" />
        </p>
      ) : null}
    </article>
  );
}

/** What the marks of a chart are: only those that are drawn. */
function captionOf({ first, last, trend, breaks, joined }: Series): MessageKey {
  if (breaks.length > 0 && !joined) return "measure.captionBroken";
  if (first === null || last === null) return "measure.captionDots";
  return trend.sessionLine === null ? "measure.caption" : "measure.captionLine";
}

/** What else is drawn: the quiet ribbon and the days with a note. */
function besideCaption(
  { better, window, worth, trend }: Series,
  { notes }: AthleteReport,
  index: number,
): MessageKey[] {
  const isWindow = better === "window" && window !== null;
  const isWorth = better !== "window" && worth !== null && trend.sessionLine !== null;
  return [
    ...(isWindow ? (["measure.captionWindow"] as const) : []),
    ...(isWorth ? (["measure.captionWorth"] as const) : []),
    ...(notes.length > 0 ? (["measure.captionNotes"] as const) : []),
    ...(notes.some(({ series }) => series.includes(index)) ? (["measure.captionPlan"] as const) : []),
  ];
}

/** The sentence that stands for a trend chart. */
export function trendAlt(reading: Reading, report: AthleteReport, { series, at }: Placed): string {
  const { words } = reading;
  const style = { unit: series.unit, decimals: series.decimals };
  const common = {
    metric: plainName(words, "metric", series.metric),
    condition: plainCondition(reading, report, at),
    of: sessionsOrDays(series),
    from: plainDay(reading, `${at}/sessions/0/date`),
    to: plainDay(reading, `${at}/sessions/${series.sessions.length - 1}/date`),
  };
  if (series.first === null || series.last === null) return words.text("measure.altNoBlocks", common);
  const first = plainFigure(reading, `${at}/first/mean`, style);
  const last = plainFigure(reading, `${at}/last/mean`, style);
  return words.text("measure.alt", { ...common, first, last });
}

function Values({ placed }: { readonly placed: Placed }) {
  const { series, at } = placed;
  if (series.first === null || series.last === null) return null;
  return (
    <dl class="values">
      {(["first", "last"] as const).map((which) => (
        <div key={which}>
          <dt>
            <Say k={`change.${which}`} />
          </dt>
          <dd>
            <span class="value">
              <SeriesFigure of={at} at={`${which}/mean`} />
            </span>
            <span class="under">
              <Say
                k={series[which]?.from === series[which]?.to ? "measure.blockOneDay" : "measure.block"}
                with={{
                  from: <Day at={`${at}/${which}/from`} form="short" />,
                  to: <Day at={`${at}/${which}/to`} form="short" />,
                  swings: <Count k="count.swings" at={`${at}/${which}/n`} />,
                  days: <Count k={sessionWord(series)} at={`${at}/${which}/sessions`} />,
                }}
              />
            </span>
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** The change's range in plain words, or why there is none. */
function Range({ placed }: { readonly placed: Placed }) {
  const { series, at } = placed;
  const days = <Count k={sessionWord(series)} at={`${at}/sessionCount`} />;
  if (series.change === null) {
    const blocks = series.first !== null && series.last !== null;
    return (
      <p>
        <Say k={blocks ? "change.onlyBlocks" : "change.noBlocks"} with={{ days, of: sessionsOrDays(series) }} />
      </p>
    );
  }
  return (
    <p>
      <Say
        k="change.range"
        with={{
          low: <SeriesFigure of={at} at="change/ci95/0" signed bare />,
          high: <SeriesFigure of={at} at="change/ci95/1" signed />,
          days,
          of: sessionsOrDays(series),
        }}
      />{" "}
      {takesInZero(series.change.ci95) ? <Say k="change.zero" /> : null}
    </p>
  );
}

/** The two ends against each other: the same information, easier to read. */
export function EarlyLate({ placed }: { readonly placed: Placed }) {
  const { series, at } = placed;
  if (series.earlyLate === null) return null;
  return (
    <p class="aside">
      <Say
        k="change.earlyLate"
        with={{
          estimate: <SeriesFigure of={at} at="earlyLate/estimate" signed />,
          low: <SeriesFigure of={at} at="earlyLate/ci95/0" signed bare />,
          high: <SeriesFigure of={at} at="earlyLate/ci95/1" signed />,
        }}
      />
    </p>
  );
}

/** Of how many swings these were the ones with a value. */
function Denominator({ placed }: { readonly placed: Placed }) {
  const { of } = placed.series;
  if (of === null) return null;
  const at = `${placed.at}/of`;
  return (
    <p class="aside">
      <Say
        k={of.notKnown === 0 ? "measure.ofAllKnown" : "measure.of"}
        with={{
          swings: <Count k="count.swings" at={`${at}/swings`} />,
          hit: <Figure at={`${at}/hit`} />,
          foul: <Figure at={`${at}/foul`} />,
          miss: <Figure at={`${at}/miss`} />,
          notKnown: <Figure at={`${at}/notKnown`} />,
        }}
      />
    </p>
  );
}
