import type { Assessed, Built } from "../build.ts";
import type { LedgerCounts } from "../schema/season.ts";
import { WITHHELD } from "./messages.ts";
import { count, tableLines } from "./table.ts";

const sum = (counts: Readonly<Record<string, number>>) => Object.values(counts).reduce((a, b) => a + b, 0);
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

/** Who is missing because of some input; null when nobody is. */
export function missingLine({ missing }: Pick<Assessed, "missing">): string | null {
  return missing.length === 0 ? null : `Not published until their files are put right: ${missing.join(", ")}`;
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
 * What `build` prints, line by line. Who is missing stands last.
 *
 * @param seconds the build took
 */
export function buildSummary(built: Built, seconds: number): string[] {
  const { total } = built.ledger;
  const live = new Set(built.links.filter(({ withheld }) => withheld === null).map(({ athlete }) => athlete));
  const missing = missingLine(built);
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
    ...(missing === null ? [] : [missing]),
  ];
}
