import type { Assessed, Built } from "../build.ts";
import type { LedgerCounts } from "../schema/season.ts";
import { WITHHELD } from "./messages.ts";
import { count, sum, tableLines } from "./table.ts";

const byReason = (counts: Readonly<Record<string, number>>) =>
  Object.entries(counts).map(([reason, n]) => [`  ${reason.replaceAll("-", " ")}`, count(n)]);

/** Athletes whom no reader may see, each with the reason. */
function unpublished({ athletes }: Pick<Assessed, "athletes">): string[] {
  return athletes.flatMap(({ id, withheld }) => {
    const whys = Object.values(withheld);
    if (whys.includes(null)) return [];
    const words = [...new Set(whys)].map((why) => WITHHELD[why ?? ""] ?? why);
    return [`${id} is on the desk and not published: ${words.join("; ")}`];
  });
}

const MOST_NAMED = 5;

/** Files that cannot be used, or not all of them, and are no athlete's own. */
export function unusedFiles(problems: Assessed["problems"]): string[] {
  const own = problems.filter(({ level, athlete }) => level === "error" && athlete === null);
  return [...new Set(own.map(({ at }) => at.file))].sort();
}

/** What is missing because of some input: files first, then athletes; nothing when all is there. */
export function missingLines({ missing, problems }: Pick<Assessed, "missing" | "problems">): string[] {
  const files = unusedFiles(problems);
  const rest = files.length - MOST_NAMED;
  const named = `${files.slice(0, MOST_NAMED).join(", ")}${rest > 0 ? ` and ${count(rest)} more` : ""}`;
  return [
    ...(files.length === 0 ? [] : [`Missing, or used only in part, until put right: ${named}`]),
    ...(missing.length === 0 ? [] : [`Not published until their files are put right: ${missing.join(", ")}`]),
  ];
}

const rowRows = (total: LedgerCounts): string[][] => [
  ["rows read", count(total.read)],
  ["counted", count(total.counted)],
  ["not counted", count(sum(total.notCounted))],
  ...byReason(total.notCounted),
  ["set aside", count(sum(total.setAside))],
  ...byReason(total.setAside),
];

/** What became of every row of the season, by reason. */
export const rowTotals = (total: LedgerCounts): string[] => tableLines(rowRows(total));

/**
 * What `build` prints, line by line. What and who is missing stands last.
 *
 * @param seconds the build took
 */
export function buildSummary(built: Built, seconds: number): string[] {
  const { total } = built.ledger;
  const live = new Set(built.links.filter(({ withheld }) => withheld === null).map(({ athlete }) => athlete));
  return [
    ...tableLines([
      ["athletes", count(built.athletes.length)],
      ["published", count(live.size)],
      ...rowRows(total),
      ["pages", count(built.pages)],
      ["as of", built.asOf],
      ["seconds", seconds.toFixed(1)],
    ]),
    ...unpublished(built),
    ...missingLines(built),
  ];
}
