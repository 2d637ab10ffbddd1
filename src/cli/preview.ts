import { build, type Paths } from "../build.ts";
import { realEffects, thisProcess } from "./effects.ts";
import { failureOf } from "./failure.ts";
import { sayProblem, WITHHELD } from "./messages.ts";
import { problemLines } from "./problems.ts";
import { thisTerminal } from "./terminal.ts";

/** What the preview's builder reports to the process that started it. */
export interface Previewed {
  readonly links: readonly { readonly name: string; readonly reader: string; readonly path: string }[];
  /** Readers who may not see an athlete's page on that day, each with the reason in words. */
  readonly withheld: readonly { readonly name: string; readonly reader: string; readonly why: string }[];
}

/**
 * One build of the preview, in a process of its own so that changed components are read anew. Called by `start` with the
 * paths and the day as JSON; answers over the channel between the two.
 */
const { paths, asOf, interim } = JSON.parse(process.argv[2] ?? "{}") as {
  paths: Paths;
  asOf: string;
  interim: boolean;
};
const terminal = thisTerminal();
const effects = { ...realEffects(terminal.tell, terminal.display), runner: thisProcess };
try {
  const built = await build(paths, { asOf, interim, say: sayProblem }, effects).finally(effects.finished);
  for (const line of problemLines(built.problems.filter(({ level }) => level === "error"))) terminal.tell(line);
  const names = new Map(built.athletes.map(({ id, name }) => [id, name]));
  const named = built.links.map((link) => ({ ...link, name: names.get(link.athlete) ?? link.athlete }));
  const links = named.filter(({ withheld }) => withheld === null);
  const withheld = named.flatMap(({ name, reader, withheld: why }) =>
    why === null ? [] : [{ name, reader, why: WITHHELD[why] ?? why }],
  );
  process.send?.({
    links: links.map(({ name, reader, path }) => ({ name, reader, path })),
    withheld,
  } satisfies Previewed);
} catch (error) {
  const { exit, lines } = failureOf(error, process.env.WINTERBOOK_DEBUG === "1");
  for (const line of lines) terminal.tell(line);
  process.exitCode = exit;
}
process.disconnect?.();
