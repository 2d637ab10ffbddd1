import { build, SeasonUnreadable } from "../build.ts";
import { EXIT, type Exit } from "../publish/stopped.ts";
import type { Called } from "./arguments.ts";
import { realEffects, thisProcess } from "./effects.ts";
import { foundJson, withoutSeason } from "./found.ts";
import { sayProblem } from "./messages.ts";
import { problemLines } from "./problems.ts";
import { buildSummary } from "./summary.ts";
import type { Terminal } from "./terminal.ts";

/** `npm run build`: writes both folders and prints a short table. */
export async function buildCommand({ paths, asOf, json }: Called, terminal: Terminal): Promise<Exit> {
  const effects = { ...realEffects(terminal.tell, terminal.display), runner: thisProcess };
  const started = effects.elapsedMs();
  const built = await build(paths, { asOf, say: sayProblem }, effects)
    .catch((error: unknown) => {
      // Whoever reads the output as JSON is told there; people read it where failures are told.
      if (json && error instanceof SeasonUnreadable) terminal.print(foundJson(withoutSeason(error)));
      throw error;
    })
    .finally(effects.finished);
  const seconds = (effects.elapsedMs() - started) / 1000;
  const errors = built.problems.filter(({ level }) => level === "error");
  if (json) {
    terminal.print(JSON.stringify({ ...built, seconds: Number(seconds.toFixed(1)) }, null, 1));
  } else {
    for (const line of problemLines(errors)) terminal.tell(line);
    for (const line of buildSummary(built, seconds)) terminal.print(line);
  }
  return errors.length > 0 || built.missing.length > 0 ? EXIT.input : EXIT.done;
}
