import type { Explored, Proposal, Rehearsal } from "../../build.ts";
import { meaningOf } from "../codes.ts";
import { problemGroups } from "../problem-groups.ts";
import { count } from "../table.ts";
import { fieldWords, reasonLine } from "./reason-words.ts";

/** Columns of text side by side, to the left, two spaces between. */
function leftTable(rows: readonly (readonly string[])[]): string[] {
  const widths: number[] = [];
  for (const row of rows) for (const [i, cell] of row.entries()) widths[i] = Math.max(widths[i] ?? 0, cell.length);
  return rows.map((row) =>
    row
      .map((cell, i) => cell.padEnd(widths[i] ?? 0))
      .join("  ")
      .trimEnd(),
  );
}

/** How the file is written: what stands around the table, and in it. */
export function fileLine({ table }: Explored): string {
  const { found, delimiter, encoding, kind, sheet } = table;
  const marks: Readonly<Record<string, string>> = { "\t": "tabs", ";": "semicolons", "|": "bars" };
  const parts = [
    kind === "workbook"
      ? `a workbook, ${sheet === null ? "first sheet" : `sheet ${sheet}`}`
      : `cells separated by ${marks[delimiter ?? ""] ?? "commas"}`,
  ];
  if (encoding) parts.push(`written in ${encoding}`);
  if (found.above > 0) parts.push(`${found.above === 1 ? "1 line" : `${found.above} lines`} above the header`);
  if (found.unitsRow) parts.push("a row of units below the header");
  if (found.summaryWords.length > 0) parts.push(`rows that sum up others: ${found.summaryWords.join(", ")}`);
  return parts.join(", ");
}

/** One line for each column: what it is taken for, how sure that is, and why. */
export function proposalLines({ columns }: Proposal): string[] {
  const read = columns.filter(({ field }) => field !== null);
  const left = columns.filter(({ field }) => field === null);
  const rows = read.map(({ name, field, unit, words, certainty, reasons }) => {
    const turned = Object.entries(words ?? {}).map(([from, to]) => `${from} = ${to === "" ? "blank" : to}`);
    const what = `${fieldWords(field)}${unit ? ` (${unit})` : ""}`;
    return [name, what, certainty, [reasonLine(reasons), ...turned].filter((part) => part !== "").join("; ")];
  });
  return [
    ...leftTable([["column", "is read as", "how sure", "because"], ...rows]),
    ...(left.length > 0 ? ["", "Not read, and kept in the file:"] : []),
    ...leftTable(left.map(({ name, reasons }) => [`  ${name}`, reasonLine(reasons)])),
  ];
}

/** Words shown beside who and when. */
const SHOWN_WORDS = ["time", "environment", "side", "result"];

/** The first rows as they would be read, one beside the other, in the units that we keep. */
function firstRows({ first }: Rehearsal, canonical: (field: string) => string): string[] {
  const words = SHOWN_WORDS.filter((field) => first.some((row) => row.words[field] !== undefined));
  const numbers = [...new Set(first.flatMap((row) => Object.keys(row.numbers)))];
  const named = (field: string) => `${fieldWords(field)} ${canonical(field)}`.trim();
  return leftTable([
    ["line", ...first.map(({ line }) => String(line))],
    ["athlete", ...first.map(({ athlete }) => athlete)],
    ["date", ...first.map(({ date }) => date)],
    ...words.map((field) => [fieldWords(field), ...first.map((row) => row.words[field] ?? "")]),
    ...numbers.map((field) => [named(field), ...first.map((row) => shown(row.numbers[field]))]),
  ]).map((line) => `  ${line}`);
}

const shown = (value: number | undefined): string =>
  value === undefined ? "" : String(Number(value.toFixed(Math.abs(value) < 1 ? 3 : 1)));

/** What would become of the file: the first rows, then what would be set aside and why. */
export function rehearsalLines(rehearsal: Rehearsal, canonical: (field: string) => string): string[] {
  const { rows, read, first, problems } = rehearsal;
  const lines = first.length > 0 ? ["The first rows would be read as:", ...firstRows(rehearsal, canonical), ""] : [];
  lines.push(`${count(read)} of ${count(rows)} rows would be read${read === rows ? "." : ":"}`);
  for (const { level, code, count: n, examples } of problemGroups(problems)) {
    if (level === "note") continue;
    lines.push(`  ${count(n)} ${level === "row" ? "set aside" : "in the way"}: ${meaningOf(code)}`);
    for (const { line, problem, remedy, times } of examples) {
      const place = line === null ? "" : `line ${line}: `;
      lines.push(`    ${place}${problem}  — ${remedy}${times > 1 ? `  (${count(times)} times)` : ""}`);
    }
  }
  return lines;
}
