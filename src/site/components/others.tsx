import { useAthlete, useReading } from "../reading.ts";
import { Condition } from "./condition.tsx";
import { Figure } from "./figure.tsx";
import { Named } from "./names.tsx";
import { Say } from "./say.tsx";
import { Scroll, Section } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { othersOf, type Placed, sessionsOrDays } from "./series-parts.ts";

/** Series that are none of the season's measures: values, no comparison. */
export function Others() {
  const { words } = useReading();
  const { report } = useAthlete();
  const others = othersOf(report);
  if (others.length === 0) return null;
  return (
    <Section id="others" head="others.head">
      <p>
        <Say k="others.intro" />
      </p>
      <details>
        <summary>
          <Say k="others.open" />
        </summary>
        <Scroll name={words.text("table.scroll", { name: words.text("others.head") })}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.text("others.what")}</th>
                <th scope="col">{words.text("others.how")}</th>
                <th scope="col" class="n">
                  {words.text("table.swings")}
                </th>
                <th scope="col" class="n">
                  {words.text("others.days", { of: sessionsOrDays(...others.map(({ series }) => series)) })}
                </th>
                <th scope="col" class="n">
                  {words.text("change.first")}
                </th>
                <th scope="col" class="n">
                  {words.text("change.last")}
                </th>
              </tr>
            </thead>
            <tbody>
              {others.map((placed) => (
                <Row key={placed.at} placed={placed} />
              ))}
            </tbody>
          </table>
        </Scroll>
      </details>
    </Section>
  );
}

function Row({ placed }: { readonly placed: Placed }) {
  const { words } = useReading();
  const { report } = useAthlete();
  const { series, at } = placed;
  return (
    <tr>
      <th scope="row">
        <Named kind="metric" id={series.metric} />
      </th>
      <td>
        <Condition of={at} report={report} />
      </td>
      <td class="n">
        <Figure at={`${at}/n`} />
      </td>
      <td class="n">
        <Figure at={`${at}/sessionCount`} />
      </td>
      {(["first", "last"] as const).map((which) => (
        <td class="n" key={which}>
          {series[which] === null ? words.text("club.dash") : <SeriesFigure of={at} at={`${which}/mean`} />}
        </td>
      ))}
    </tr>
  );
}
