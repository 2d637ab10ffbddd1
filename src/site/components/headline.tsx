import type { ComponentChildren } from "preact";
import { useAthlete, useReading } from "../reading.ts";
import { Condition } from "./condition.tsx";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { Count, Say } from "./say.tsx";
import { Section } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { measuresOf, othersOf, type Placed, sessionsOrDays, sessionWord, takesInZero } from "./series-parts.ts";
import { type Answer, answerOf, Mark } from "./verdict.tsx";

/** The season in a few lines, one measure each: the verdict, the change and its range, the values behind it. */
export function Headline() {
  const { report } = useAthlete();
  const measures = measuresOf(report);
  return (
    <Section id="changed" head="change.head">
      {measures.length === 0 ? (
        <p>
          <Say k={othersOf(report).length === 0 ? "change.none" : "change.noneOfMeasures"} />
        </p>
      ) : (
        <>
          <Summary measures={measures} />
          <ul class="changes">
            {measures.map((placed) => (
              <li key={placed.at}>
                <MeasureLine placed={placed} />
              </li>
            ))}
          </ul>
          <p class="aside">
            <Say k="change.how" with={{ of: sessionsOrDays(...measures.map(({ series }) => series)) }} />
          </p>
        </>
      )}
      {report.measures === 0 ? null : (
        <p class="aside">
          <Say
            k="change.lookedAt"
            with={{
              measures: <Count k="count.measures" at="/measures" />,
              withSwings: <Figure at="/measuresWithSwings" />,
            }}
          />
        </p>
      )}
    </Section>
  );
}

const answerFor = ({ series }: Placed): Answer => (series.says === null ? "none" : answerOf(series.says.id));

/** What changed, in at most three sentences: what got better, what got worse, and the rest. */
export function Summary({ measures }: { readonly measures: readonly Placed[] }) {
  const of = (...answers: readonly Answer[]) => measures.filter((placed) => answers.includes(answerFor(placed)));
  const [better, worse, same, open] = [of("better"), of("worse"), of("same"), of("open", "none")];
  const rest =
    open.length === measures.length
      ? "headline.nothing"
      : same.length === 0
        ? "headline.open"
        : open.length === 0
          ? "headline.same"
          : "headline.sameOpen";
  return (
    <p class="lead">
      {better.length === 0 ? null : (
        <Sentence>
          <Say k="headline.better" with={{ list: <Listed measures={better} changes /> }} />
        </Sentence>
      )}{" "}
      {worse.length === 0 ? null : (
        <Sentence>
          <Say k="headline.worse" with={{ list: <Listed measures={worse} changes /> }} />
        </Sentence>
      )}{" "}
      {same.length + open.length === 0 ? null : (
        <Sentence>
          <Say
            k={rest}
            with={{ list: <Listed measures={same.length === 0 ? open : same} />, open: <Listed measures={open} /> }}
          />
        </Sentence>
      )}
    </p>
  );
}

/** "bat speed (tee +4.3 mph, machine +3.1 mph); exit velocity (machine +2.2 mph)": settings by metric, with what tells them apart. */
function Listed({ measures, changes = false }: { readonly measures: readonly Placed[]; readonly changes?: boolean }) {
  const byMetric = new Map<string, Placed[]>();
  for (const one of measures) byMetric.set(one.series.metric, [...(byMetric.get(one.series.metric) ?? []), one]);
  return (
    <>
      {[...byMetric].map(([metric, of], i) => (
        <span key={metric}>
          {i === 0 ? "" : "; "}
          <Named kind="metric" id={metric} within />
          {" ("}
          {of.map(({ series, at }, j) => (
            <span key={at}>
              {j === 0 ? "" : ", "}
              <Setting condition={series.condition} />
              {changes && series.change !== null && series.better !== "window" ? (
                <>
                  {" "}
                  <SeriesFigure of={at} at="change/estimate" signed />
                </>
              ) : null}
            </span>
          ))}
          {")"}
        </span>
      ))}
    </>
  );
}

/** A measure's setting in two words at most: where the ball comes from, and the side of a switch hitter. */
function Setting({ condition: { environment, side } }: { readonly condition: Placed["series"]["condition"] }) {
  const { words } = useReading();
  return (
    <>
      {environment === undefined ? words.text("condition.any") : <Named kind="environment" id={environment} within />}
      {side === undefined ? null : (
        <>
          {" · "}
          <Named kind="side" id={side} within />
        </>
      )}
    </>
  );
}

function MeasureLine({ placed }: { readonly placed: Placed }) {
  const { words } = useReading();
  const { report } = useAthlete();
  const { series, at } = placed;
  return (
    <>
      <h3>
        <Mark of={answerFor(placed)} says={words.text(`club.verdict.${series.change?.verdict ?? "none"}`)} />{" "}
        <a href={`#measure-${placed.index}`}>
          <Named kind="metric" id={series.metric} />
        </a>
      </h3>
      <p class="setup">
        <Condition of={at} report={report} />
      </p>
      {series.change === null ? (
        <p class="small">
          <WhyNoChange placed={placed} />
        </p>
      ) : (
        <>
          <p class="big">
            <Say
              k="change.estimate"
              with={{
                estimate: (
                  <strong>
                    <SeriesFigure of={at} at="change/estimate" signed />
                  </strong>
                ),
              }}
            />
          </p>
          <p class="small">
            <Say
              k={takesInZero(series.change.ci95) ? "change.rangeShortZero" : "change.rangeShort"}
              with={{
                low: <SeriesFigure of={at} at="change/ci95/0" signed bare />,
                high: <SeriesFigure of={at} at="change/ci95/1" signed />,
              }}
            />
          </p>
        </>
      )}
    </>
  );
}

function WhyNoChange({ placed: { series, at } }: { readonly placed: Placed }) {
  if (series.breaks.length > 0 && !series.joined)
    return <Say k="change.broken" with={{ day: <Day at={`${at}/breaks/0/date`} /> }} />;
  return (
    <Say
      k="change.noBlocks"
      with={{ days: <Count k={sessionWord(series)} at={`${at}/sessionCount`} />, of: sessionsOrDays(series) }}
    />
  );
}

function Sentence({ children }: { readonly children: ComponentChildren }) {
  return <span class="line">{children}</span>;
}
