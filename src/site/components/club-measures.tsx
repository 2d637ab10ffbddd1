import { shownUnit } from "../figures.ts";
import { unitText, useAthlete, useReading } from "../reading.ts";
import { BreakLines, JoinedShort, StretchMeans } from "./breaks.tsx";
import { ClubDetail } from "./club-detail.tsx";
import { Condition } from "./condition.tsx";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { Say } from "./say.tsx";
import { Scroll } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { measuresOf, type Placed, sessionsOrDays } from "./series-parts.ts";
import { answerOf, Mark } from "./verdict.tsx";

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
  const head = (key: "club.start" | "club.end" | "club.change" | "club.range" | "club.n" | "club.peers") => (
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
            <th scope="col">{words.text("club.verdict")}</th>
            {head("club.peers")}
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
    <>
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
        </th>
        <td class="n">
          <Say
            k="club.nValue"
            with={{ swings: <Figure at={`${at}/n`} />, days: <Figure at={`${at}/sessionCount`} /> }}
          />
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
        <td class="verdict-cell">
          <VerdictWord series={series} />
        </td>
        <td class="n">
          <Percentiles placed={placed} />
        </td>
      </tr>
      <tr class="detail">
        <td colSpan={8}>
          {series.breaks.length === 0 ? null : (
            <span>
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
          <ClubDetail placed={placed} />
        </td>
      </tr>
    </>
  );
}

/** The verdict in a word or two, with its mark; a change that does not hold among all measures says so. */
function VerdictWord({ series }: { readonly series: Placed["series"] }) {
  const { words } = useReading();
  const { change, says } = series;
  if (says === null) return <>{words.text("club.dash")}</>;
  const verdict = change?.verdict ?? null;
  const answer = answerOf(says.id);
  return (
    <>
      <Mark of={answer} /> {words.text(verdict === null ? "club.verdict.none" : `club.verdict.${verdict}`)}
      {change?.holds === false ? words.text("club.notHolding") : null}
    </>
  );
}

/** Percentile among peers at both ends, with the range of the second. */
function Percentiles({ placed }: { readonly placed: Placed }) {
  const { words } = useReading();
  const { peers } = placed.series;
  const at = `${placed.at}/peers`;
  if (peers === null || peers.end === null) return <>{words.text("club.dash")}</>;
  return (
    <>
      {peers.start === null ? null : (
        <>
          <Figure at={`${at}/start/percentile`} percentile /> →{" "}
        </>
      )}
      <b>
        <Figure at={`${at}/end/percentile`} percentile />
      </b>
      {peers.end.ci95 === null ? null : (
        <small>
          {" "}
          <Say
            k="club.percentileRange"
            with={{ low: <Figure at={`${at}/end/ci95/0`} />, high: <Figure at={`${at}/end/ci95/1`} /> }}
          />
        </small>
      )}
    </>
  );
}

function Denominator({ at }: { readonly at: string }) {
  return (
    <span>
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
