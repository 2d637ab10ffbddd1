import type { Exit } from "../publish/stopped.ts";
import { type Command, readArguments } from "./arguments.ts";
import { buildCommand, pdfCommand } from "./build.ts";
import { checkCommand } from "./check.ts";
import { failureOf } from "./failure.ts";
import { forgetCommand } from "./forget.ts";
import { linksCommand } from "./links.ts";
import { mapCommand } from "./map/map.ts";
import { newCommand } from "./new/new.ts";
import { startCommand } from "./start.ts";
import { type Terminal, thisTerminal } from "./terminal.ts";

const COMMANDS: Readonly<
  Record<Command, (called: ReturnType<typeof readArguments>, terminal: Terminal) => Promise<Exit>>
> = {
  build: buildCommand,
  pdf: pdfCommand,
  check: checkCommand,
  start: startCommand,
  links: linksCommand,
  forget: forgetCommand,
  map: mapCommand,
  new: newCommand,
};

// Whoever reads our lines may stop early (`| head`): that is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

const terminal = thisTerminal();
try {
  const called = readArguments(process.argv.slice(2), terminal);
  process.exitCode = await COMMANDS[called.command](called, terminal);
} catch (error) {
  const { exit, lines } = failureOf(error, process.env.WINTERBOOK_DEBUG === "1");
  for (const line of lines) terminal.tell(line);
  process.exitCode = exit;
}
