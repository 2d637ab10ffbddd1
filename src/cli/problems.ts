import type { Problem } from "../schema/season.ts";
import { sayProblem } from "./messages.ts";

/** `file:line:column  problem  — what to do`; a problem of a whole file has no line. */
export function problemLine({ at, code, args }: Problem): string {
  const place = [at.file, at.line, at.column].filter((part) => part !== null).join(":");
  const { problem, remedy } = sayProblem({ code, args });
  return `${place}  ${problem}  — ${remedy}`;
}

const before = (a: string | number, b: string | number) => (a < b ? -1 : a > b ? 1 : 0);

/** In the order of files, then of lines and columns; what means the whole file comes first. */
export function sortedProblems(problems: readonly Problem[]): Problem[] {
  return [...problems].sort(
    (a, b) =>
      before(a.at.file, b.at.file) ||
      before(a.at.line ?? 0, b.at.line ?? 0) ||
      before(a.at.column ?? 0, b.at.column ?? 0) ||
      before(a.code, b.code),
  );
}

/** One line for each problem, grouped by file with an empty line between groups. */
export function problemLines(problems: readonly Problem[]): string[] {
  const lines: string[] = [];
  let file: string | null = null;
  for (const problem of sortedProblems(problems)) {
    if (file !== null && file !== problem.at.file) lines.push("");
    file = problem.at.file;
    lines.push(problemLine(problem));
  }
  return lines;
}

/** How many rows a problem stands for: a whole file that repeats another one says so once. */
export const rowsOf = ({ code, args }: Pick<Problem, "code" | "args">): number =>
  code === "repeated-file" && typeof args.rows === "number" ? args.rows : 1;

/**
 * How many there are of each kind, in words: "2 errors, 1 row set aside, no notes".
 *
 * @param setAside rows that the ledger holds as set aside; without a ledger the problems are counted
 */
export function problemCounts(problems: readonly Problem[], setAside: number | null = null): string {
  const said = (n: number, one: string, many: string) => (n === 1 ? `1 ${one}` : `${n === 0 ? "no" : n} ${many}`);
  const of = (level: Problem["level"]) =>
    problems.reduce((sum, problem) => sum + (problem.level === level ? rowsOf(problem) : 0), 0);
  return [
    said(of("error"), "error", "errors"),
    said(setAside ?? of("row"), "row set aside", "rows set aside"),
    said(of("note"), "note", "notes"),
  ].join(", ");
}
