import type { DeskView } from "../desk-view.ts";
import { useReading } from "../reading.ts";
import { Named } from "./names.tsx";
import { Say } from "./say.tsx";
import { Scroll } from "./section.tsx";
import { SeriesFigure } from "./series-figure.tsx";
import { measuresOf, type Placed } from "./series-parts.ts";
import { answerOf, Mark } from "./verdict.tsx";

type Report = DeskView["athletes"][number]["report"];

/** What a column is about: a measure in its setting, whatever side or ball. */
const columnOf = ({ series }: Placed): string =>
  JSON.stringify([series.metric, series.condition.environment ?? null, series.condition.implement ?? null]);

/** Who changed in what: a row for each athlete, a column for each measure, a sign and the change in each cell. */
export function DeskChanges({ view }: { readonly view: DeskView }) {
  const { words } = useReading();
  const columns = new Map<string, Placed>();
  for (const { report } of view.athletes) {
    for (const placed of measuresOf(report)) {
      const key = columnOf(placed);
      if (!columns.has(key)) columns.set(key, placed);
    }
  }
  if (columns.size === 0) return null;
  return (
    <section aria-labelledby="changes">
      <h2 id="changes">
        <Say k="desk.changes" />
      </h2>
      <Scroll name={words.text("table.scroll", { name: words.text("desk.changes") })}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.text("desk.athlete")}</th>
              {[...columns].map(([key, { series }]) => (
                <th scope="col" key={key}>
                  <Named kind="metric" id={series.metric} />
                  <br />
                  <small>
                    {[series.condition.environment, series.condition.implement]
                      .filter((part) => part !== undefined)
                      .map((part, index) => (
                        <span key={part}>
                          {index === 0 ? null : " · "}
                          <Named kind={part === series.condition.environment ? "environment" : "implement"} id={part} />
                        </span>
                      ))}
                  </small>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {view.athletes.map(({ report }, index) => (
              <tr key={report.athlete.id}>
                <th scope="row">
                  <b data-own>{report.athlete.displayName}</b>
                </th>
                {[...columns.keys()].map((key) => (
                  <td key={key}>
                    <Cell report={report} at={`/athletes/${index}/report`} column={key} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p class="aside">
        <Say k="desk.changesKey" />
      </p>
    </section>
  );
}

function Cell({ report, at, column }: { readonly report: Report; readonly at: string; readonly column: string }) {
  return measuresOf(report)
    .filter((placed) => columnOf(placed) === column)
    .map((placed) => <Change key={placed.at} placed={placed} at={`${at}${placed.at}`} />);
}

function Change({ placed: { series }, at }: { readonly placed: Placed; readonly at: string }) {
  const { words } = useReading();
  const { change, condition, says, rebound } = series;
  return (
    <span class="state">
      <Mark
        of={says === null ? "none" : answerOf(says.id)}
        says={words.text(`club.verdict.${change?.verdict ?? "none"}`)}
      />{" "}
      {change === null ? null : <SeriesFigure of={at} at="change/estimate" signed />}
      {condition.side === undefined ? null : (
        <small>
          {" "}
          <Named kind="side" id={condition.side} />
        </small>
      )}
      {rebound === null ? null : (
        <small class="expected">
          <SeriesFigure of={at} at="rebound/estimate" signed bare />
        </small>
      )}
    </span>
  );
}
