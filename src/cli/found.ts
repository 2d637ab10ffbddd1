import { type Assessed, SeasonUnreadable } from "../build.ts";
import { sayProblem } from "./messages.ts";
import { problemGroups } from "./problem-groups.ts";
import { sortedProblems } from "./problems.ts";
import { unusedFiles } from "./summary.ts";

/** What a look at the season brings up; without a facility there is no season, and there are problems all the same. */
export type Found = Pick<Assessed, "problems" | "missing"> & {
  readonly asOf: string | null;
  readonly ledger: Assessed["ledger"] | null;
};

/** @throws anything else than an unreadable season */
export function withoutSeason(error: unknown): Found {
  if (error instanceof SeasonUnreadable) return { problems: error.problems, missing: [], asOf: null, ledger: null };
  throw error;
}

/** The same as one JSON document, problems with their words. */
export function foundJson({ asOf, missing, problems, ledger }: Found): string {
  const said = sortedProblems(problems).map((problem) => ({ ...problem, ...sayProblem(problem) }));
  return JSON.stringify(
    { asOf, missing, files: unusedFiles(problems), problems: said, groups: problemGroups(problems), ledger },
    null,
    1,
  );
}
