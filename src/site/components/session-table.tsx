import { shownUnit } from "../figures.ts";
import { unitText, useAthlete, useReading } from "../reading.ts";
import { Condition, plainCondition } from "./condition.tsx";
import { Day } from "./day.tsx";
import { Figure } from "./figure.tsx";
import { Named, plainName } from "./names.tsx";
import { Say } from "./say.tsx";
import { Scroll } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { type Placed, sessionsOrDays } from "./series-parts.ts";

/** Every training day's values of a series, folded away until a reader opens it. */
export function SessionTable({ placed }: { readonly placed: Placed }) {
  const reading = useReading();
  const { report } = useAthlete();
  const { series, at } = placed;
  const { words } = reading;
  const named = series.sessions.some(({ session }) => session !== null);
  const name = words.text("measure.tableName", {
    metric: plainName(words, "metric", series.metric),
    condition: plainCondition(reading, report, at),
    of: sessionsOrDays(series),
  });
  return (
    <details>
      <summary>
        <Say k="measure.values" with={{ of: sessionsOrDays(series) }} />
      </summary>
      <Scroll name={words.text("table.scroll", { name })}>
        <table data-unit={unitText(words, shownUnit(series.unit, reading.units).unit)}>
          <caption>
            <Say
              k="measure.tableName"
              with={{
                metric: <Named kind="metric" id={series.metric} />,
                condition: <Condition of={at} report={report} />,
                of: sessionsOrDays(series),
              }}
            />{" "}
            ({unitText(words, shownUnit(series.unit, reading.units).unit).trim()})
          </caption>
          <thead>
            <tr>
              <th scope="col">{words.text("table.day")}</th>
              {named ? <th scope="col">{words.text("table.session")}</th> : null}
              <th scope="col" class="n" data-swings>
                {words.text("table.swings")}
              </th>
              <th scope="col" class="n" data-mean>
                {words.text("table.mean")}
              </th>
              <th scope="col" class="n">
                {words.text("table.sd")}
              </th>
              <th scope="col" class="n">
                {words.text("table.p90")}
              </th>
              <th scope="col" class="n">
                {words.text("table.max")}
              </th>
            </tr>
          </thead>
          <tbody>
            {series.sessions.map((session, index) => {
              const here = `sessions/${index}`;
              return (
                <tr key={here}>
                  <th scope="row">
                    <Day at={`${at}/${here}/date`} form="short" />
                  </th>
                  {named ? <td data-own>{session.session ?? ""}</td> : null}
                  <td class="n">
                    <Figure at={`${at}/${here}/n`} />
                  </td>
                  <td class="n">
                    <SeriesFigure of={at} at={`${here}/mean`} bare />
                  </td>
                  <td class="n">
                    {session.sd === null ? words.text("club.dash") : <SeriesFigure of={at} at={`${here}/sd`} bare />}
                  </td>
                  <td class="n">
                    <SeriesFigure of={at} at={`${here}/p90`} bare />
                  </td>
                  <td class="n">
                    <SeriesFigure of={at} at={`${here}/max`} bare />
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scroll>
    </details>
  );
}
