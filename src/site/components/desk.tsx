import type { AssetNames } from "../assets.ts";
import type { DeskView } from "../desk-view.ts";
import { ReadingContext, useReading } from "../reading.ts";
import { wordsFor } from "../words.ts";
import { Day } from "./day.tsx";
import { DeskAthletes } from "./desk-athletes.tsx";
import { BalanceCells, BalanceHeads } from "./desk-balance.tsx";
import { DeskChanges } from "./desk-changes.tsx";
import { DeskLeftOut } from "./desk-left-out.tsx";
import { DeskPairs } from "./desk-pairs.tsx";
import { DESK_POLICY } from "./desk-policy.ts";
import { DeskProblems } from "./desk-problems.tsx";
import { Document } from "./document.tsx";
import { MethodText } from "./method.tsx";
import { Say } from "./say.tsx";
import { Scroll } from "./section.tsx";

/** The trainer's desk as a document. */
export function deskDocument(view: DeskView, assets: AssetNames) {
  const words = wordsFor("en");
  return (
    <ReadingContext.Provider value={{ source: view, words, units: view.facility.units }}>
      <Document
        title={words.text("desk.title", { name: view.facility.name })}
        words={words}
        assets={assets}
        root=""
        policy={DESK_POLICY}
        kind="desk"
        notice={view.facility.notice}
      >
        <header class="masthead">
          <p class="imprint" data-own>
            {view.facility.name}
          </p>
          <h1>
            <Say k="desk.head" />
          </h1>
          <p class="season">
            <span data-own>{view.facility.season}</span>
            <span>
              <Say k="page.asOf" with={{ day: <Day at="/asOf" /> }} />
            </span>
            <span>
              <Say k="desk.private" />
            </span>
          </p>
        </header>
        <main id="main">
          <DeskAthletes view={view} />
          <DeskChanges view={view} />
          <DeskProblems view={view} />
          <DeskPairs view={view} />
          <Ledger view={view} />
          <DeskLeftOut view={view} />
          {view.athletes.length === 0 ? null : (
            <section aria-labelledby="method">
              <h2 id="method">
                <Say k="method.head" />
              </h2>
              <MethodText at="/athletes/0/report/method" />
            </section>
          )}
        </main>
      </Document>
    </ReadingContext.Provider>
  );
}

function Ledger({ view }: { readonly view: DeskView }) {
  const { words } = useReading();
  return (
    <section aria-labelledby="ledger">
      <h2 id="ledger">
        <Say k="desk.ledger" />
      </h2>
      <p>
        <Say k="desk.balance" />
      </p>
      <Scroll name={words.text("table.scroll", { name: words.text("desk.ledger") })}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.text("desk.file")}</th>
              <BalanceHeads />
            </tr>
          </thead>
          <tbody>
            <tr class="total">
              <th scope="row">
                <b>{words.text("desk.total")}</b>
              </th>
              <BalanceCells at="/total" />
            </tr>
            {view.files.map(({ file }, index) => (
              <tr key={file}>
                <th scope="row" data-own>
                  {file}
                </th>
                <BalanceCells at={`/files/${index}`} />
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  );
}
