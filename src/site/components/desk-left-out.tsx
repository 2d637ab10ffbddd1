import type { DeskView } from "../desk-view.ts";
import { useReading } from "../reading.ts";
import { Named, plainName } from "./names.tsx";
import { Count, Say } from "./say.tsx";
import { Scroll } from "./section.tsx";

/** What was not counted or set aside: how many rows for each reason, and the first of them. */
export function DeskLeftOut({ view }: { readonly view: DeskView }) {
  const { words } = useReading();
  return (
    <section aria-labelledby="left-out">
      <h2 id="left-out">
        <Say k="desk.rowsHead" />
      </h2>
      {view.reasons.length === 0 ? (
        <p>
          <Say k="desk.noRows" />
        </p>
      ) : null}
      {view.reasons.map(({ reason, first }, index) => (
        <details key={reason}>
          <summary>
            <Say
              k="desk.reasonCount"
              with={{
                reason: <Named kind="reason" id={reason} />,
                rows: <Count k="count.rows" at={`/reasons/${index}/count`} />,
              }}
            />
          </summary>
          <Scroll
            name={words.text("table.scroll", {
              name: words.text("desk.examples", { reason: plainName(words, "reason", reason) }),
            })}
          >
            <table>
              <thead>
                <tr>
                  <th scope="col">{words.text("desk.place")}</th>
                  <th scope="col">{words.text("desk.column")}</th>
                  <th scope="col">{words.text("desk.value")}</th>
                  <th scope="col">{words.text("desk.athlete")}</th>
                </tr>
              </thead>
              <tbody>
                {first.map((row) => (
                  <tr key={`${row.file}:${row.line}`}>
                    <td data-own>{[row.file, row.line, row.column].filter((part) => part !== null).join(":")}</td>
                    <td data-own>{row.field ?? ""}</td>
                    <td data-own>{row.value ?? ""}</td>
                    <td data-own>{row.athlete ?? ""}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroll>
        </details>
      ))}
      <p class="aside">
        <Say k="desk.ledgerLink" with={{ link: <a href="ledger.csv">ledger.csv</a> }} />
      </p>
    </section>
  );
}
