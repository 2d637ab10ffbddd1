import type { Problem } from "../schema/season.ts";
import { sayProblem } from "./messages.ts";
import { rowsOf, sortedProblems } from "./problems.ts";

/** One place that shows what a group is about, and how many others read just the same. */
export interface Example {
  readonly line: number | null;
  readonly column: number | null;
  readonly problem: string;
  readonly remedy: string;
  /** Problems of the group with these very words, this one included. */
  readonly times: number;
}

/** Problems of one file with one cause. */
export interface ProblemGroup {
  readonly file: string;
  readonly code: string;
  readonly level: Problem["level"];
  readonly count: number;
  /** The first ones whose words differ, at most {@link MOST_EXAMPLES}. */
  readonly examples: readonly Example[];
}

export const MOST_EXAMPLES = 3;

const ORDER: Readonly<Record<Problem["level"], number>> = { error: 0, row: 1, note: 2 };

/**
 * Problems by file and cause: files in order of name, in each errors first, then rows set aside, then notes, more before fewer.
 *
 * @returns nothing for no problems
 */
export function problemGroups(problems: readonly Problem[]): ProblemGroup[] {
  const groups = new Map<string, { first: Problem; count: number; said: Map<string, Example & { times: number }> }>();
  for (const problem of sortedProblems(problems)) {
    const key = JSON.stringify([problem.at.file, problem.code, problem.level]);
    const group = groups.get(key) ?? { first: problem, count: 0, said: new Map() };
    groups.set(key, group);
    group.count += rowsOf(problem);
    const { problem: what, remedy } = sayProblem(problem);
    const words = `${what}\n${remedy}`;
    const known = group.said.get(words);
    if (known) known.times++;
    else if (group.said.size < MOST_EXAMPLES)
      group.said.set(words, { line: problem.at.line, column: problem.at.column, problem: what, remedy, times: 1 });
  }
  const found = [...groups.values()].map(({ first, count, said }): ProblemGroup => {
    return { file: first.at.file, code: first.code, level: first.level, count, examples: [...said.values()] };
  });
  const byFile = (one: string, other: string) => (one < other ? -1 : one > other ? 1 : 0);
  return found.sort(
    (one, other) =>
      byFile(one.file, other.file) ||
      ORDER[one.level] - ORDER[other.level] ||
      other.count - one.count ||
      byFile(one.code, other.code),
  );
}
