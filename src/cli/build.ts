import { type BuildEffects, build, pdfPrinter, SeasonUnreadable } from "../build.ts";
import { EXIT, type Exit } from "../publish/stopped.ts";
import type { Called } from "./arguments.ts";
import { realEffects, thisProcess } from "./effects.ts";
import { foundJson, withoutSeason } from "./found.ts";
import { printed } from "./links.ts";
import { sayProblem } from "./messages.ts";
import { problemLines } from "./problems.ts";
import { buildSummary } from "./summary.ts";
import type { Terminal } from "./terminal.ts";

/** `npm run build`: writes both folders and prints a short table. */
export const buildCommand = (called: Called, terminal: Terminal): Promise<Exit> => built(called, terminal, {});

/** `npm run pdf`: the same, and every published report as PDF on the desk. A browser is loaded for it, and for nothing else. */
export async function pdfCommand(called: Called, terminal: Terminal): Promise<Exit> {
  const { launch } = await import("./chromium.ts");
  return built(called, terminal, { print: pdfPrinter(launch) });
}

async function built(
  { paths, asOf, json, flags }: Called,
  terminal: Terminal,
  more: Pick<BuildEffects, "print">,
): Promise<Exit> {
  const effects = { ...realEffects(terminal.tell, terminal.display), runner: thisProcess, ...more };
  const started = effects.elapsedMs();
  const made = await build(paths, { asOf, interim: flags.interim, say: sayProblem }, effects)
    .catch((error: unknown) => {
      // Whoever reads the output as JSON is told there; people read it where failures are told.
      if (json && error instanceof SeasonUnreadable) terminal.print(foundJson(withoutSeason(error)));
      throw error;
    })
    .finally(effects.finished);
  const seconds = (effects.elapsedMs() - started) / 1000;
  const errors = made.problems.filter(({ level }) => level === "error");
  if (json) {
    terminal.print(
      JSON.stringify({ ...made, links: made.links.map(printed), seconds: Number(seconds.toFixed(1)) }, null, 1),
    );
  } else {
    for (const line of problemLines(errors)) terminal.tell(line);
    for (const line of buildSummary(made, seconds)) terminal.print(line);
  }
  return errors.length > 0 || made.missing.length > 0 ? EXIT.input : EXIT.done;
}
