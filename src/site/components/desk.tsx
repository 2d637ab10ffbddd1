import { checkedAddress } from "../address.ts";
import type { AssetNames } from "../assets.ts";
import type { Balance, DeskLink, DeskView } from "../desk-view.ts";
import { ReadingContext, useReading } from "../reading.ts";
import { wordsFor } from "../words.ts";
import { Day } from "./day.tsx";
import { DeskLeftOut } from "./desk-left-out.tsx";
import { DeskProblems } from "./desk-problems.tsx";
import { Document } from "./document.tsx";
import { Figure } from "./figure.tsx";
import { Say } from "./say.tsx";
import { Scroll } from "./section.tsx";

/**
 * A page opened from disk has no origin that `'self'` could mean in every browser, so the desk names the scheme as well.
 */
const DESK_POLICY =
  "default-src 'none'; style-src 'self' file:; font-src 'self' file:; img-src 'self' file:; base-uri 'none'; form-action 'none'";

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
          <Athletes view={view} />
          <DeskProblems view={view} />
          <Ledger view={view} />
          <DeskLeftOut view={view} />
        </main>
      </Document>
    </ReadingContext.Provider>
  );
}

/** The four columns of the balance, for one row of a table. */
function BalanceCells({ at }: { readonly at: string }) {
  return (
    <>
      {(["read", "counted", "notCounted", "setAside"] as const satisfies readonly (keyof Balance)[]).map((key) => (
        <td class="n" key={key}>
          <Figure at={`${at}/${key}`} />
        </td>
      ))}
    </>
  );
}

function BalanceHeads() {
  const { words } = useReading();
  return (
    <>
      {(["desk.read", "desk.counted", "desk.notCounted", "desk.setAside"] as const).map((key) => (
        <th scope="col" class="n" key={key}>
          {words.text(key)}
        </th>
      ))}
    </>
  );
}

function Athletes({ view }: { readonly view: DeskView }) {
  const { words } = useReading();
  const { athletes, leftOut } = view;
  return (
    <section aria-labelledby="athletes">
      <h2 id="athletes">
        <Say k="desk.athletes" />
      </h2>
      {athletes.length === 0 ? (
        <p>
          <Say k="desk.none" />
        </p>
      ) : (
        <Scroll name={words.text("table.scroll", { name: words.text("desk.athletes") })}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.text("desk.athlete")}</th>
                <th scope="col" class="n">
                  {words.text("desk.days")}
                </th>
                <BalanceHeads />
                <th scope="col">{words.text("desk.family")}</th>
                <th scope="col">{words.text("desk.club")}</th>
                <th scope="col">{words.text("desk.report")}</th>
              </tr>
            </thead>
            <tbody>
              {athletes.map((athlete, index) => (
                <AthleteRow key={athlete.report.athlete.id} athlete={athlete} index={index} />
              ))}
            </tbody>
          </table>
        </Scroll>
      )}
      {leftOut.length === 0 ? null : (
        <p class="level-error">
          <Say k="desk.leftOut" with={{ list: <span data-own>{leftOut.join(", ")}</span> }} />
        </p>
      )}
      <p class="aside">
        <Say k="desk.linksLink" with={{ link: <a href="links.csv">links.csv</a> }} />
      </p>
    </section>
  );
}

function AthleteRow({ athlete, index }: { readonly athlete: DeskView["athletes"][number]; readonly index: number }) {
  const { words } = useReading();
  const { report, links } = athlete;
  const { id, displayName } = report.athlete;
  return (
    <tr>
      <th scope="row">
        <b data-own>{displayName}</b> <small data-own>{id}</small>
      </th>
      <td class="n">
        <Figure at={`/athletes/${index}/report/work/days`} />
      </td>
      <BalanceCells at={`/balances/${index}`} />
      {(["family", "club"] as const).map((reader) => (
        <td key={reader}>
          <Links publication={report.publication[reader]} links={links.filter((link) => link.reader === reader)} />
        </td>
      ))}
      <td class="dots">
        <span>
          <a href={`reports/${id}.json`} aria-label={`${displayName}: ${words.text("desk.reportLink")}`}>
            {words.text("desk.reportLink")}
          </a>
        </span>
        <span>
          <a href={`reps/${id}.csv`} aria-label={`${displayName}: ${words.text("desk.repsLink")}`}>
            {words.text("desk.repsLink")}
          </a>
        </span>
      </td>
    </tr>
  );
}

interface LinksProps {
  readonly publication: DeskView["athletes"][number]["report"]["publication"]["family"];
  readonly links: readonly DeskLink[];
}

/** Links to one reader's pages, or why there are none. */
function Links({ publication, links }: LinksProps) {
  const { words } = useReading();
  if (!publication.publish) return <span class="state withheld">{words.text(`desk.why.${publication.why}`)}</span>;
  if (links.length === 0) return <span class="state">{words.text("desk.noLink")}</span>;
  return (
    <>
      {links.map((link) => {
        const href = link.published ? checkedAddress(link.href) : null;
        return (
          <span class="state" key={link.href} data-own>
            {href === null ? (
              `${link.recipient}: ${words.text("desk.notPublished")}`
            ) : (
              <a href={href}>{link.recipient}</a>
            )}
          </span>
        );
      })}
    </>
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
