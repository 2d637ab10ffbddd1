import { join, relative } from "node:path";
import type { Output } from "../publish/guard.ts";
import { ledgerCsv } from "../publish/ledger-rows.ts";
import { addressOf, type Link, linksCsv, withKey } from "../publish/links.ts";
import { repsCsv } from "../publish/reps-csv.ts";
import { facilityOf } from "../report/facility-part.ts";
import type { Place } from "../schema/season.ts";
import { renderDesk } from "../site/desk.ts";
import type { Judgement } from "./judge.ts";
import type { Options, Paths } from "./terms.ts";

/** `file:line:column`, as far as it is known. */
export const placeText = ({ file, line, column }: Place): string =>
  [file, line, column].filter((part) => part !== null).join(":");

const json = (value: unknown) => `${JSON.stringify(value, null, 1)}\n`;

/** The trainer's desk: the page, every report, every rep, the ledger and the links. Written for everybody. */
export async function deskFiles(
  judgement: Judgement,
  links: readonly Link[],
  { desk, out }: { readonly desk: string; readonly out: Paths["out"] },
  { say }: Pick<Options, "say">,
): Promise<Output[]> {
  const { season, asOf, told, ledger, rows, problems } = judgement;
  const siteUrl = season.facility.site_url ?? null;
  const page = await renderDesk({
    facility: facilityOf(season.facility),
    asOf,
    athletes: told.map(({ athlete, report }) => ({
      report,
      links: links
        .filter((link) => link.athlete === athlete.id)
        .map((link) => ({
          reader: link.reader,
          recipient: link.label ?? link.recipient,
          href: withKey(relative(desk, join(out, link.path, "index.html")).replaceAll("\\", "/"), link),
          address: siteUrl === null ? null : addressOf(link, siteUrl),
          withheld: link.withheld,
          until: link.until,
          asks: link.passphrase !== null,
          sealed: link.sealed,
        })),
    })),
    leftOut: [...season.leftOut],
    ledger: { total: ledger.total, files: [...ledger.files] },
    rows: [...rows],
    pairings: [...season.pairings],
    problems: problems.map((problem) => ({
      code: problem.code,
      place: placeText(problem.at),
      level: problem.level,
      ...say(problem),
    })),
  });
  return [
    ...page,
    { path: "links.csv", body: linksCsv(links, siteUrl) },
    { path: "ledger.csv", body: ledgerCsv(rows) },
    { path: "ledger.json", body: json(ledger) },
    ...told.map(({ athlete, report }) => ({ path: `reports/${athlete.id}.json`, body: json(report) })),
    ...told.map(({ athlete, judged }) => ({
      path: `reps/${athlete.id}.csv`,
      body: repsCsv(athlete.id, athlete.reps, judged, season.swingFiles, season.metrics),
    })),
  ];
}
