import { checkedAddress } from "../address.ts";
import type { DeskLink, DeskView } from "../desk-view.ts";
import { useReading } from "../reading.ts";
import { BalanceCells, BalanceHeads } from "./desk-balance.tsx";
import { Figure } from "./figure.tsx";
import { hasSheet } from "./link-sheet.tsx";
import { Say } from "./say.tsx";
import { Scroll } from "./section.tsx";

/** Every athlete: rows, links, and in words why a page is not published. */
export function DeskAthletes({ view }: { readonly view: DeskView }) {
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
        {links.some(hasSheet) ? (
          <span>
            <a href={`links/${id}.html`} aria-label={`${displayName}: ${words.text("desk.sheetLink")}`}>
              {words.text("desk.sheetLink")}
            </a>
          </span>
        ) : null}
      </td>
    </tr>
  );
}

interface LinksProps {
  readonly publication: DeskView["athletes"][number]["report"]["publication"]["family"];
  readonly links: readonly DeskLink[];
}

/** Links to one reader's pages, each with why it leads nowhere where it does not, or why there are none. */
function Links({ publication, links }: LinksProps) {
  const { words } = useReading();
  const why = (reason: string) =>
    words.text(words.has(`desk.why.${reason}`) ? (`desk.why.${reason}` as "desk.why.ended") : "desk.notPublished");
  if (!publication.publish) return <span class="state withheld">{why(publication.why)}</span>;
  if (links.length === 0) return <span class="state">{words.text("desk.noLink")}</span>;
  return (
    <>
      {links.map((link) => {
        const href = link.withheld === null ? checkedAddress(link.href) : null;
        return (
          <span class="state" key={link.href}>
            {href === null ? (
              <span data-own>{link.recipient}</span>
            ) : (
              <a href={href} data-own>
                {link.recipient}
              </a>
            )}
            {href === null ? `: ${why(link.withheld ?? "")}` : null}
            {href !== null && link.sealed ? (
              <small> {words.text(link.asks ? "desk.asks" : "desk.sealed")}</small>
            ) : null}
          </span>
        );
      })}
    </>
  );
}
