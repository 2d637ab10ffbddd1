import { useAthlete, useReading } from "../reading.ts";
import { AthleteDocument } from "./athlete-document.tsx";
import { ChartFigure } from "./chart-figure.tsx";
import { Choices } from "./choices.tsx";
import { Closing } from "./closing.tsx";
import { ClubMeasures } from "./club-measures.tsx";
import { ClubWeeks } from "./club-weeks.tsx";
import { ClubWho } from "./club-who.tsx";
import { Colophon } from "./colophon.tsx";
import { Condition } from "./condition.tsx";
import { LedgerLine } from "./counted.tsx";
import { Day } from "./day.tsx";
import { Summary } from "./headline.tsx";
import { ClubHitting } from "./hitting/club-hitting.tsx";
import { Imprint } from "./imprint.tsx";
import { Agreed } from "./kept.tsx";
import { trendAlt } from "./measure.tsx";
import { Measuring } from "./measuring.tsx";
import { Named } from "./names.tsx";
import { Say } from "./say.tsx";
import { clubCharts, measuresOf, trendId } from "./series-parts.ts";

/** One page for a new club: who, measured how, on how much, and how sure. */
export function ClubPage() {
  const reading = useReading();
  const { report } = useAthlete();
  const { athlete, facility } = report;
  const drawn = clubCharts(report);
  const measures = measuresOf(report);
  const speed = reading.units === "metric" ? "kmh" : "mph";
  return (
    <AthleteDocument title="page.club.title" kind="club">
      <header class="masthead">
        <Imprint />
        <h1>
          <span data-own>{athlete.displayName}</span>
        </h1>
        <p class="season">
          <span>
            <Say k="page.summary" />
          </span>
          <span data-own>{facility.season}</span>
          <span>
            <Say k="page.period" with={{ start: <Day at="/period/start" />, end: <Day at="/period/end" /> }} />
          </span>
        </p>
      </header>
      <Choices />
      <main id="main">
        <section aria-labelledby="who" class="who">
          <h2 id="who">
            <Say k="club.who" />
          </h2>
          <ClubWho />
        </section>
        {measures.length === 0 ? null : (
          <section aria-labelledby="short" class="short">
            <h2 id="short">
              <Say k="club.short" />
            </h2>
            <Summary measures={measures} />
          </section>
        )}
        <section aria-labelledby="figures" class="figures">
          <h2 id="figures">
            <Say k="club.measures" />
          </h2>
          <ClubMeasures />
        </section>
        {drawn.length === 0 ? null : (
          <section aria-labelledby="course" class="course">
            <h2 id="course">
              <Say k="club.charts" />
            </h2>
            <div class="charts">
              {drawn.map((placed) => (
                <div key={placed.at}>
                  <h3>
                    <Named kind="metric" id={placed.series.metric} />
                  </h3>
                  <p class="setup">
                    <Condition of={placed.at} report={report} />
                  </p>
                  <ChartFigure id={trendId(placed.index)} alt={trendAlt(reading, report, placed)} />
                </div>
              ))}
            </div>
          </section>
        )}
        <section aria-labelledby="record" class="measuring">
          <h2 id="record">
            <Say k="club.record" />
          </h2>
          <Measuring />
          <p>
            <LedgerLine ledger={report.ledger} />
          </p>
          <Agreed />
        </section>
        <Closing />
        <section aria-labelledby="weeks" class="weeks">
          <h2 id="weeks">
            <Say k="club.work" />
          </h2>
          <ClubWeeks />
        </section>
        <ClubHitting />
        <section aria-labelledby="terms" class="terms">
          <h2 id="terms">
            <Say k="club.terms" />
          </h2>
          <ul>
            {(["block", "change", "verdict", "noise", "sen", "peers", "pooled", speed] as const).map((term) => (
              <li key={term}>
                <Say k={`club.term.${term}`} />
              </li>
            ))}
          </ul>
        </section>
      </main>
      <Colophon />
    </AthleteDocument>
  );
}
