import { fork } from "node:child_process";
import { once } from "node:events";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Paths } from "../build.ts";
import { EXIT, type Exit } from "../publish/stopped.ts";
import type { Called } from "./arguments.ts";
import { realDisk } from "./effects.ts";
import type { Previewed } from "./preview.ts";
import { serve } from "./serve.ts";
import { tableLines } from "./table.ts";
import type { Terminal } from "./terminal.ts";
import { today } from "./today.ts";
import { watch } from "./watch.ts";

const LOOK_EVERY_MS = 500;
const SOURCE = dirname(dirname(fileURLToPath(import.meta.url)));

/** Builds the preview in a process of its own; null when it could not be built, which was said then. */
async function rebuild(paths: Paths, asOf: string, interim: boolean): Promise<Previewed | null> {
  const child = fork(join(SOURCE, "cli", "preview.ts"), [JSON.stringify({ paths, asOf, interim })]);
  let previewed: Previewed | null = null;
  child.on("message", (message) => {
    previewed = message as Previewed;
  });
  await once(child, "close");
  return previewed;
}

/** `npm start`: builds into `.preview/`, serves it on this machine alone, and builds again after every change. */
export async function startCommand({ paths, asOf, port, flags }: Called, terminal: Terminal): Promise<Exit> {
  const home = dirname(paths.state);
  const preview = { ...paths, out: join(home, ".preview"), desk: null, hold: join(paths.state, "preview") };
  const day = asOf ?? today();
  const first = await rebuild(preview, day, flags.interim);
  const { server, port: taken } = await serve(preview.out, port, realDisk);
  const root = `http://127.0.0.1:${taken}/`;
  for (const line of tableLines(
    (first?.links ?? []).map(({ name, reader, path }) => [name, reader, `${root}${path}`]),
  )) {
    terminal.print(line);
  }
  for (const line of tableLines((first?.withheld ?? []).map(({ name, reader, why }) => [name, reader, why]))) {
    terminal.print(`not shown: ${line}`);
  }
  if (!flags.interim) terminal.print(`what pages are made of: ${root}style/`);
  terminal.print(`Preview at ${root}, as of ${day}. It is built again after every change; stop it with Ctrl+C.`);
  const stop = watch([paths.content, paths.data, SOURCE], LOOK_EVERY_MS, async () => {
    const built = await rebuild(preview, day, flags.interim);
    if (built) terminal.print(`Built again: ${built.links.length} pages. Load the page again to see it.`);
  });
  await Promise.race([once(process, "SIGINT"), once(process, "SIGTERM")]);
  stop();
  server.close();
  server.closeAllConnections();
  return EXIT.done;
}
