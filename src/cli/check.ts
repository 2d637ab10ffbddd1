import { check } from "../build.ts";
import { EXIT, type Exit } from "../publish/stopped.ts";
import type { Called } from "./arguments.ts";
import { codeLines } from "./codes.ts";
import { realEffects } from "./effects.ts";
import { type Found, foundJson, withoutSeason } from "./found.ts";
import { groupedLines } from "./group-lines.ts";
import { problemGroups } from "./problem-groups.ts";
import { problemCounts, problemLines } from "./problems.ts";
import { missingLines, rowTotals } from "./summary.ts";
import { sum } from "./table.ts";
import type { Terminal } from "./terminal.ts";
import { today } from "./today.ts";

/**
 * `npm run check`: writes nothing, prints what was found by file and cause, or every line of it. Rows set aside alone are no
 * reason to fail.
 */
export async function checkCommand({ paths, asOf, json, flags }: Called, terminal: Terminal): Promise<Exit> {
  if (flags.codes) {
    for (const line of codeLines()) terminal.print(line);
    return EXIT.done;
  }
  const effects = realEffects(terminal.tell, terminal.display);
  const found: Found = await check(paths, { asOf, today: today() }, effects)
    .catch(withoutSeason)
    .finally(effects.finished);
  const lines = json ? [foundJson(found)] : flags.all ? everyLine(found) : grouped(found);
  for (const line of lines) terminal.print(line);
  return found.problems.some(({ level }) => level === "error") ? EXIT.input : EXIT.done;
}

function everyLine(found: Found): string[] {
  const lines = problemLines(found.problems);
  return [...lines, ...(lines.length > 0 ? [""] : []), ...totals(found)];
}

function grouped(found: Found): string[] {
  return [...groupedLines(problemGroups(found.problems), found.ledger), ...totals(found)];
}

function totals(found: Found): string[] {
  const rows = found.ledger ? [...rowTotals(found.ledger.total), ""] : [];
  const aside = found.ledger && sum(found.ledger.total.setAside);
  return [...rows, problemCounts(found.problems, aside), ...missingLines(found)];
}
