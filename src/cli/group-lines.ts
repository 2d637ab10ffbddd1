import type { Assessed } from "../build.ts";
import type { LedgerCounts } from "../schema/season.ts";
import { meaningOf, NOT_COUNTED } from "./codes.ts";
import type { Example, ProblemGroup } from "./problem-groups.ts";
import { count, sum } from "./table.ts";

type Ledger = Pick<Assessed["ledger"], "files">;

const many = (n: number, one: string, more: string): string => `${count(n)} ${n === 1 ? one : more}`;

const LEVELS = {
  error: (n: number) => many(n, "error", "errors"),
  row: (n: number) => many(n, "row set aside", "rows set aside"),
  note: (n: number) => many(n, "note", "notes"),
} as const;

function exampleLine(file: string, { line, column, problem, remedy, times }: Example): string {
  const place = [file, line, column].filter((part) => part !== null).join(":");
  const alike = times === 1 ? "" : `  (${count(times)} times)`;
  return `    ${place}  ${problem}  — ${remedy}${alike}`;
}

function groupLines({ file, code, level, count: n, examples }: ProblemGroup): string[] {
  const shown = examples.reduce((all, { times }) => all + (code === "repeated-file" ? n : times), 0);
  const rest = n - shown;
  return [
    `  ${LEVELS[level](n)}: ${meaningOf(code)}  [${code}]`,
    ...examples.map((example) => exampleLine(file, example)),
    ...(rest > 0 ? [`    … and ${count(rest)} more; \`npm run check -- --all\` prints each`] : []),
  ];
}

/** What became of a file's rows: "75 rows read, 72 counted, 1 not counted, 2 set aside". */
function countsLine({ read, counted, notCounted, setAside }: LedgerCounts): string {
  const parts = [`${many(read, "row", "rows")} read`, `${count(counted)} counted`];
  if (sum(notCounted) > 0) parts.push(`${count(sum(notCounted))} not counted`);
  if (sum(setAside) > 0) parts.push(`${count(sum(setAside))} set aside`);
  return parts.join(", ");
}

function notCountedLines({ notCounted }: LedgerCounts): string[] {
  return Object.entries(notCounted).map(([reason, n]) => {
    const meaning = NOT_COUNTED[reason as keyof typeof NOT_COUNTED]?.meaning ?? reason.replaceAll("-", " ");
    return `  ${many(n, "row", "rows")} not counted: ${meaning}  [${reason}]`;
  });
}

/**
 * Everything that was found, by file and cause: a heading for each file, for swing files with what became of its rows; below it
 * every cause with its count, first examples and what to do. Files of which every row is counted come in one line at the end.
 */
export function groupedLines(groups: readonly ProblemGroup[], ledger: Ledger | null): string[] {
  const swings = new Map((ledger?.files ?? []).map((file) => [file.file, file]));
  const uneven = [...swings.values()].filter(({ notCounted }) => sum(notCounted) > 0).map(({ file }) => file);
  const files = [...new Set([...groups.map(({ file }) => file), ...uneven])].sort();
  const lines = files.flatMap((file) => {
    const counts = swings.get(file);
    const heading = counts ? `${file}: ${countsLine(counts)}` : file;
    const own = groups.filter((group) => group.file === file);
    return [heading, ...own.flatMap(groupLines), ...(counts ? notCountedLines(counts) : []), ""];
  });
  const whole = [...swings.keys()].filter((file) => !files.includes(file)).length;
  if (whole > 0) {
    const those = whole === 1 ? "1 swing file has" : `${count(whole)} swing files have`;
    lines.push(`${those} nothing to report: every row is counted.`, "");
  }
  return lines;
}
