import { type Forgotten, forget, type Holding } from "../build.ts";
import { EXIT, type Exit, Stopped } from "../publish/stopped.ts";
import type { Called } from "./arguments.ts";
import { realEffects, thisProcess } from "./effects.ts";
import { sayProblem } from "./messages.ts";
import { count, leftTable } from "./table.ts";
import type { Terminal } from "./terminal.ts";
import { today } from "./today.ts";

const MOST_LINES = 6;
const FATE = { own: "deleted whole", shared: "loses these rows", "by-hand": "look at it by hand" } as const;

/** Line numbers as far as they help to find the place. */
function places(lines: readonly number[]): string {
  const more = lines.length - MOST_LINES;
  const shown = lines.slice(0, MOST_LINES).join(", ");
  return lines.length === 0 ? "" : `line ${shown}${more > 0 ? ` and ${count(more)} more` : ""}`;
}

const holdingLines = (holdings: readonly Holding[]): string[] =>
  leftTable(holdings.map(({ file, lines, kind }) => [file, FATE[kind], places(lines)]));

/** `npm run forget -- ID`: pages, links and caches go; the files with the athlete's rows are listed, and deleted on a yes. */
export async function forgetCommand({ paths, asOf, words, json, flags }: Called, terminal: Terminal): Promise<Exit> {
  const [id] = words;
  if (id === undefined) throw new Stopped(EXIT.usage, "nobody is named", "say who: npm run forget -- ada-lund");
  const effects = { ...realEffects(terminal.tell, terminal.display), runner: thisProcess };
  const confirm = async (holdings: readonly Holding[]): Promise<boolean> => {
    effects.finished();
    if (!json) for (const line of holdingLines(holdings)) terminal.print(line);
    if (flags.yes || !terminal.interactive) return flags.yes;
    const { confirm: ask } = await import("@clack/prompts");
    // Whoever goes away without an answer has not said yes.
    return (await ask({ message: "Delete these files and rows for good?", initialValue: false })) === true;
  };
  const done = await forget(paths, id, confirm, { asOf, on: today(), say: sayProblem }, effects).finally(
    effects.finished,
  );
  if (json) terminal.print(JSON.stringify({ holdings: done.holdings, deleted: done.deleted }, null, 1));
  else for (const line of endLines(id, done)) terminal.print(line);
  return done.built.missing.length > 0 ? EXIT.input : EXIT.done;
}

function endLines(id: string, { deleted, holdings }: Forgotten): string[] {
  const left = holdings.some(({ kind }) => kind === "by-hand");
  return [
    `Pages and links of ${id} are gone from this machine. Upload the site again; only then are they gone from the host.`,
    ...(deleted
      ? ["Their rows are deleted. Copies in backups, in the devices' own apps and on paper are not."]
      : ["Their files are as they were, and their links stay dead. To delete the files: the same with --yes."]),
    ...(deleted && left ? ["Files marked to be looked at by hand still name them."] : []),
    "What may or must be kept, and for how long, is for local law to say.",
  ];
}
