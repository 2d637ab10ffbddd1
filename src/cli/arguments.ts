import { isAbsolute, join, relative, resolve, sep } from "node:path";
import { parseArgs } from "node:util";
import type { Paths } from "../build.ts";
import { EXIT, Stopped } from "../publish/stopped.ts";

export const COMMANDS = ["build", "check", "start"] as const;
export type Command = (typeof COMMANDS)[number];

export const USAGE = `Usage: npm run <command> -- [options]

  build   reads content/ and data/, writes _site/ and _desk/
  check   reads everything, writes nothing, prints every problem
  start   live preview on this machine

  --season DIR    folder with content/, data/, _site/, _desk/ (default: this project)
  --content DIR   --data DIR   --out DIR   --desk DIR     each of them alone
  --as-of DATE    the day the reports stand for, yyyy-mm-dd (default: the last measured day of the season)
  --port N        start: port on 127.0.0.1 (default: a free one)
  --json          print one JSON document instead of a table
`;

/** A command as it was called. */
export interface Called {
  readonly command: Command;
  readonly paths: Paths & { readonly desk: string };
  readonly asOf: string | undefined;
  readonly port: number;
  readonly json: boolean;
}

const wrong = (problem: string) => new Stopped(EXIT.usage, problem, "see the usage below");

function dayOf(text: string | undefined): string | undefined {
  if (text === undefined) return undefined;
  const time = /^\d{4}-\d{2}-\d{2}$/.test(text) ? Date.parse(`${text}T00:00:00Z`) : Number.NaN;
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== text) {
    throw wrong(`--as-of is "${text}", not a day as 2026-02-28`);
  }
  return text;
}

function portOf(text: string | undefined): number {
  const port = Number(text ?? "0");
  if (!/^\d{1,5}$/.test(text ?? "0") || port > 65535) throw wrong(`--port is "${text}", not a number up to 65535`);
  return port;
}

/** Whether one absolute path is another or lies below it. */
function isInside(folder: string, other: string): boolean {
  const way = relative(other, folder);
  return way !== ".." && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

/** A folder that a build replaces must not hold, or lie in, a folder that somebody keeps. */
function keepApart({ content, data, out, desk, state }: Called["paths"], here: string): void {
  const kept = { content, data, "the season's state": state };
  for (const [name, folder] of Object.entries({ "--out": out, "--desk": desk })) {
    if (isInside(here, folder)) throw wrong(`${name} would replace the folder you are in, or one around it`);
    for (const [what, other] of Object.entries(kept)) {
      if (isInside(folder, other) || isInside(other, folder))
        throw wrong(`${name} and ${what} would lie in each other`);
    }
  }
  if (isInside(out, desk) || isInside(desk, out)) throw wrong("--out and --desk would lie in each other");
}

/**
 * Reads a command line.
 *
 * @param args what stands after the program's name
 * @param here the folder that relative paths start from, absolute
 * @param home the season's folder when none is named, absolute
 * @throws {Stopped} with exit status 2
 */
export function readArguments(args: readonly string[], { here, home }: { here: string; home: string }): Called {
  const { values, positionals } = parse(args);
  const [command, ...more] = positionals;
  if (command === undefined) throw wrong("no command was named");
  if (!(COMMANDS as readonly string[]).includes(command)) throw wrong(`there is no command "${command}"`);
  if (more.length > 0) throw wrong(`"${more[0]}" is one word too many`);
  const season = values.season === undefined ? home : resolve(here, values.season);
  const at = (given: string | undefined, name: string) =>
    given === undefined ? join(season, name) : resolve(here, given);
  const content = at(values.content, "content");
  // With --content alone the state lies beside that folder: whose links they are is decided by the content.
  const beside = values.content !== undefined && values.season === undefined ? resolve(content, "..") : season;
  const state = join(beside, ".winterbook");
  const paths = {
    content,
    data: at(values.data, "data"),
    out: at(values.out, "_site"),
    desk: at(values.desk, "_desk"),
    state,
    hold: state,
  };
  keepApart(paths, here);
  return {
    command: command as Command,
    paths,
    asOf: dayOf(values["as-of"]),
    port: portOf(values.port),
    json: values.json ?? false,
  };
}

function parse(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        season: { type: "string" },
        content: { type: "string" },
        data: { type: "string" },
        out: { type: "string" },
        desk: { type: "string" },
        "as-of": { type: "string" },
        port: { type: "string" },
        json: { type: "boolean" },
      },
    });
  } catch (error) {
    throw wrong(error instanceof Error ? (error.message.split(". ")[0] ?? error.message) : String(error));
  }
}
