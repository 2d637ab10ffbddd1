import { shownUnit } from "../figures.ts";
import { unitText, useAthlete, useReading } from "../reading.ts";
import { BreakLines, JoinedShort, StretchMeans } from "./breaks.tsx";
import { Condition } from "./condition.tsx";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { Say } from "./say.tsx";
import { Scroll } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { measuresOf, type Placed, sessionsOrDays } from "./series-parts.ts";

/** All measures as a table, with the second look beside the first. */
export function ClubMeasures() {
  const { words } = useReading();
  const measures = measuresOf(useAthlete().report);
  if (measures.length === 0)
    return (
      <p>
        <Say k="club.noMeasures" />
      </p>
    );
  const of = sessionsOrDays(...measures.map(({ series }) => series));
  const head = (key: "club.start" | "club.end" | "club.change" | "club.range" | "club.n" | "club.mkShort") => (
    <th scope="col" class="n">
      {words.text(key, { of })}
    </th>
  );
  return (
    <Scroll name={words.text("table.scroll", { name: words.text("club.measures") })}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.text("club.measure")}</th>
            {head("club.n")}
            {head("club.start")}
            {head("club.end")}
            {head("club.change")}
            {head("club.range")}
            <th scope="col" class="n">
              {words.text("club.senShort")} <small>{words.text("club.perWeek")}</small>
            </th>
            {head("club.mkShort")}
          </tr>
        </thead>
        <tbody>
          {measures.map((placed) => (
            <Row key={placed.at} placed={placed} />
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

function Row({ placed }: { readonly placed: Placed }) {
  const reading = useReading();
  const { words } = reading;
  const { report } = useAthlete();
  const { series, at } = placed;
  const none = words.text("club.dash");
  return (
    <tr>
      <th scope="row">
        <span class="what">
          <Named kind="metric" id={series.metric} />,{" "}
          {unitText(words, shownUnit(series.unit, reading.units).unit).trim()}
        </span>
        <span class="setup">
          <Condition of={at} report={report} />
          {series.pooled ? <> ({words.text("club.pooled")})</> : null}
        </span>
        {series.breaks.length === 0 ? null : (
          <span class="of">
            {series.joined ? (
              <JoinedShort placed={placed} />
            ) : (
              <>
                <BreakLines placed={placed} /> <StretchMeans placed={placed} />
              </>
            )}
          </span>
        )}
        {series.of === null ? null : <Denominator at={`${at}/of`} />}
      </th>
      <td class="n">
        <Say k="club.nValue" with={{ swings: <Figure at={`${at}/n`} />, days: <Figure at={`${at}/sessionCount`} /> }} />
      </td>
      <td class="n">{series.first === null ? none : <SeriesFigure of={at} at="first/mean" bare />}</td>
      <td class="n">{series.last === null ? none : <SeriesFigure of={at} at="last/mean" bare />}</td>
      <td class="n">
        {series.change === null ? (
          none
        ) : (
          <b>
            <SeriesFigure of={at} at="change/estimate" signed bare />
          </b>
        )}
      </td>
      <td class="n">
        {series.change === null ? (
          none
        ) : (
          <Say
            k="club.range.value"
            with={{
              low: <SeriesFigure of={at} at="change/ci95/0" signed bare />,
              high: <SeriesFigure of={at} at="change/ci95/1" signed bare />,
            }}
          />
        )}
      </td>
      <td class="n">
        {series.trend.theilSen === null ? (
          none
        ) : (
          <SeriesFigure of={at} at="trend/theilSen/perWeek" signed bare finer={1} />
        )}
      </td>
      <td class="n">
        {series.trend.mannKendall === null ? (
          none
        ) : (
          <Figure at={`${at}/trend/mannKendall/p`} decimals={3} least={0.001} />
        )}
      </td>
    </tr>
  );
}

function Denominator({ at }: { readonly at: string }) {
  return (
    <span class="of">
      <Say
        k="club.misses"
        with={{
          hit: <Figure at={`${at}/hit`} />,
          foul: <Figure at={`${at}/foul`} />,
          miss: <Figure at={`${at}/miss`} />,
          notKnown: <Figure at={`${at}/notKnown`} />,
        }}
      />
    </span>
  );
}
