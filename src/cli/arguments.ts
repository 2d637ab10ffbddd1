import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import type { Paths } from "../build.ts";
import { EXIT, Stopped } from "../publish/stopped.ts";
import { keepApart } from "./apart.ts";
import { FLAGS, type Flags, flagsOf, strangeFlag } from "./flags.ts";

export const COMMANDS = ["build", "pdf", "check", "start", "links", "forget", "map", "new"] as const;
export type Command = (typeof COMMANDS)[number];

export const USAGE = `Usage: npm run <command> -- [options]

  build   reads content/ and data/, writes _site/ and _desk/
  pdf     build, and every published report as PDF in _desk/pdf/
  check   reads everything, writes nothing, prints every problem
  start   live preview on this machine
  links   who can open what; replaces links and makes them dead
  forget  forget -- ID: takes an athlete's pages, links and caches away, lists the files that hold their rows, and
          deletes them on a yes
  map     map -- FILE: proposes how an export is read, shows it, saves it to data/mappings/
  new     new -- athlete ID | athletes ROSTER.csv | facility: makes their files

  --season DIR    folder with content/, data/, _site/, _desk/ (default: this project)
  --content DIR   --data DIR   --out DIR   --desk DIR     each of them alone
  --as-of DATE    the day the reports stand for, yyyy-mm-dd (default: the last measured day of the season)
  --interim       build, pdf, start: a short note in place of each family's report, while the season lasts
  --port N        start: port on 127.0.0.1 (default: a free one)
  --json          print one JSON document instead of a table

check:
  --all           every line, not only the first of a kind
  --codes         the list of all codes, with meaning and remedy

links:
  --rotate ID     new addresses for this athlete's links; the old ones are dead after the next build
  --revoke ID     no address at all, until the link is rotated
  --handed ID --to "WHOM"        notes that a link was handed out
  --passphrase ID [--phrase "WORDS"]   a sealed report asks for these words besides its key (asked for when not given)
  --no-passphrase ID                   and does so no more
  --recipient R   of that athlete's links only this one

forget:
  --yes           delete without asking

map:
  --column "NAME=FIELD[:UNIT]"   what a column holds, as "Barrel m/s=bat_speed:m/s"     (repeatable)
  --ignore "NAME"                do not read this column                               (repeatable)
  --words "NAME:WORD=OURS"       a word of the export, as "Outcome:struck=hit"          (repeatable)
  --fixed FIELD=VALUE            the same for every row, as environment=tee             (repeatable)
  --date-form F   --time-form F  as dd/MM/yyyy, MM/dd/yyyy HH:mm, h:mm:ss a
  --delimiter M   --decimal M    , ; tab |  and  . ,
  --encoding E    --sheet NAME   windows-1252 …; the sheet of a workbook
  --zone ZONE                    clock of the export, where it is not the facility's
  --name NAME                    the mapping's file name (default: that of the export)
  --yes                          save without asking       --replace  save over a mapping that is there

new:
  --id ID --name NAME --alias NAME --born DATE|YEAR --sport S --level L --sex S --bats SIDE --throws SIDE
  --position P --joined DATE --game-bat ID --language CODE --guardian NAME
  facility: --name NAME --season-name NAME --start DATE --end DATE --time-zone ZONE --units U --contact TEXT
`;

/** A command as it was called. */
export interface Called {
  readonly command: Command;
  readonly paths: Paths & { readonly desk: string };
  readonly asOf: string | undefined;
  readonly port: number;
  readonly json: boolean;
  /** Words after the command: a file, or what is to be made. */
  readonly words: readonly string[];
  /** Options of this command alone. */
  readonly flags: Flags;
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
  const [extra] = more.slice(MOST_WORDS[command as Command]);
  if (extra !== undefined) throw wrong(`"${extra}" is one word too many`);
  const stranger = strangeFlag(values, command);
  if (stranger !== null) throw wrong(`${command} has no option --${stranger}`);
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
  keepApart(paths, here, command === "build" || command === "pdf" || command === "forget");
  return {
    command: command as Command,
    paths,
    asOf: dayOf(values["as-of"]),
    port: portOf(values.port),
    json: values.json ?? false,
    words: more,
    flags: flagsOf(values),
  };
}

/** Words that may follow a command. */
const MOST_WORDS: Readonly<Record<Command, number>> = {
  build: 0,
  pdf: 0,
  check: 0,
  start: 0,
  links: 0,
  forget: 1,
  map: 1,
  new: 2,
};

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
        ...FLAGS,
      },
    });
  } catch (error) {
    throw wrong(error instanceof Error ? (error.message.split(". ")[0] ?? error.message) : String(error));
  }
}
