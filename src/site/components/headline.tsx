import type { ComponentChildren } from "preact";
import { useAthlete } from "../reading.ts";
import { StretchMeans } from "./breaks.tsx";
import { Condition } from "./condition.tsx";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { Count, Say } from "./say.tsx";
import { Section } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { measuresOf, othersOf, type Placed, sessionsOrDays, sessionWord, takesInZero } from "./series-parts.ts";
import { Verdict } from "./verdict.tsx";

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

function MeasureLine({ placed }: { readonly placed: Placed }) {
  const { report } = useAthlete();
  const { series, at } = placed;
  return (
    <>
      <h3>
        <a href={`#measure-${placed.index}`}>
          <Named kind="metric" id={series.metric} />
        </a>
      </h3>
      <p class="setup">
        <Condition of={at} report={report} />
      </p>
      <Verdict placed={placed} />
      {series.change === null ? null : (
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
      )}
      <p class="small">
        {series.change === null ? null : (
          <Sentence>
            <Say
              k={takesInZero(series.change.ci95) ? "change.rangeShortZero" : "change.rangeShort"}
              with={{
                low: <SeriesFigure of={at} at="change/ci95/0" signed bare />,
                high: <SeriesFigure of={at} at="change/ci95/1" signed />,
              }}
            />
          </Sentence>
        )}
        {series.breaks.length > 0 && !series.joined ? (
          <>
            <Sentence>
              <StretchMeans placed={placed} />
            </Sentence>
            <Sentence>
              <Say k="change.broken" with={{ day: <Day at={`${at}/breaks/0/date`} /> }} />
            </Sentence>
          </>
        ) : series.first === null || series.last === null ? (
          <Sentence>
            <Sessions placed={placed} bare={series.change !== null} />
          </Sentence>
        ) : (
          <Sentence>
            <Say
              k="change.fromTo"
              with={{
                first: <SeriesFigure of={at} at="first/mean" bare />,
                last: <SeriesFigure of={at} at="last/mean" />,
              }}
            />
          </Sentence>
        )}
      </p>
    </>
  );
}

function Sessions({ placed, bare }: { readonly placed: Placed; readonly bare: boolean }) {
  const days = <Count k={sessionWord(placed.series)} at={`${placed.at}/sessionCount`} />;
  return bare ? days : <Say k="change.noBlocks" with={{ days }} />;
}

function Sentence({ children }: { readonly children: ComponentChildren }) {
  return <span class="line">{children}</span>;
}
