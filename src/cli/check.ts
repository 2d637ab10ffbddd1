import { type Assessed, check, SeasonUnreadable } from "../build.ts";
import { EXIT, type Exit } from "../publish/stopped.ts";
import type { Called } from "./arguments.ts";
import { realEffects } from "./effects.ts";
import { sayProblem } from "./messages.ts";
import { problemCounts, problemLines, sortedProblems } from "./problems.ts";
import { missingLine } from "./summary.ts";
import type { Terminal } from "./terminal.ts";

/** Without a facility there is no season, and there are problems all the same. */
function withoutSeason(error: unknown): Pick<Assessed, "problems" | "missing"> & { readonly asOf: null } {
  if (error instanceof SeasonUnreadable) return { problems: error.problems, missing: [], asOf: null };
  throw error;
}

/** `npm run check`: writes nothing, prints every problem. Rows set aside alone are no reason to fail. */
export async function checkCommand({ paths, asOf, json }: Called, terminal: Terminal): Promise<Exit> {
  const effects = realEffects(terminal.tell, terminal.display);
  const assessed = await check(paths, { asOf }, effects).catch(withoutSeason).finally(effects.finished);
  const { problems, missing } = assessed;
  if (json) {
    const said = sortedProblems(problems).map((problem) => ({ ...problem, ...sayProblem(problem) }));
    terminal.print(JSON.stringify({ asOf: assessed.asOf, missing, problems: said }, null, 1));
  } else {
    for (const line of problemLines(problems)) terminal.print(line);
    if (problems.length > 0) terminal.print("");
    terminal.print(problemCounts(problems));
    const last = missingLine(assessed);
    if (last !== null) terminal.print(last);
  }
  return problems.some(({ level }) => level === "error") ? EXIT.input : EXIT.done;
}
