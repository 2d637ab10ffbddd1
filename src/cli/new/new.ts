import { basename, join, resolve } from "node:path";
import { EXIT, type Exit, Stopped } from "../../publish/stopped.ts";
import type { Called } from "../arguments.ts";
import { realDisk } from "../effects.ts";
import type { Terminal } from "../terminal.ts";
import { type Asked, askFor } from "./ask.ts";
import { facilityPage } from "./facility-page.ts";
import { madeLines } from "./made-lines.ts";
import { makeFolders } from "./make-folders.ts";
import { type FieldFault, newAthlete, type Written } from "./profile-fields.ts";
import { readRoster } from "./roster.ts";

const WHAT = "athlete ID, athletes ROSTER.csv, or facility";

/** `npm run new`: makes files that a season needs, and never touches one that is there. */
export async function newCommand(called: Called, terminal: Terminal): Promise<Exit> {
  const [what, name] = called.words;
  switch (what) {
    case "athlete":
      return newOne(called, name, terminal);
    case "athletes":
      return newMany(called, name, terminal);
    case "facility":
      if (name !== undefined)
        throw new Stopped(EXIT.usage, `"${name}" is one word too many`, "give the name as --name");
      return newFacility(called, terminal);
    case undefined:
      throw new Stopped(EXIT.usage, "what is to be made was not named", `name it: npm run new -- ${WHAT}`);
    default:
      throw new Stopped(EXIT.usage, `there is nothing new called "${what}"`, `name one of these: ${WHAT}`);
  }
}

const ATHLETE: readonly Asked[] = [
  { key: "name", message: "Name", needed: true },
  { key: "born", message: "Birth date, as 2010-05-14, or the year" },
  { key: "sport", message: "Sport", choices: ["baseball", "softball", "other"] },
  { key: "level", message: "Level, as high-school" },
  { key: "sex", message: "Sex", choices: ["female", "male"] },
  { key: "bats", message: "Bats", choices: ["left", "right", "switch"] },
  { key: "throws", message: "Throws", choices: ["left", "right", "both"] },
  { key: "aliases", message: "Names in exports, with ; between them" },
  { key: "guardian", message: "Guardian, as the family's link is to be labelled" },
];

/** Flags by the names that a roster gives them. */
function writtenFrom({ flags }: Called): Record<string, string | undefined> {
  const { texts } = flags;
  const several = (name: string) => (flags.list(name).length > 0 ? flags.list(name).join(";") : undefined);
  return { ...texts, game_bat: texts["game-bat"], aliases: several("alias"), positions: several("position") };
}

const isAsked = (called: Called, terminal: Terminal): boolean => terminal.interactive && !called.flags.yes;

async function newOne(called: Called, word: string | undefined, terminal: Terminal): Promise<Exit> {
  const given = writtenFrom(called);
  const id = word ?? given.id;
  const written: Written = isAsked(called, terminal) ? await askFor(ATHLETE, given) : given;
  const { athlete, faults } = newAthlete({ ...written, id });
  if (!athlete) return refuse(faults, terminal);
  const made = await makeFolders([athlete], called.paths.content, realDisk);
  if (made.made.length === 0) {
    throw new Stopped(
      EXIT.input,
      `content/athletes/${athlete.id} is there already, and was left as it is`,
      "choose another id, or write in the file that is there",
    );
  }
  terminal.print(join("content/athletes", athlete.id, "profile.md"));
  for (const line of madeLines(made)) terminal.print(line);
  return EXIT.done;
}

/** Says what is wrong, each with the flag that puts it right. */
function refuse(faults: readonly FieldFault[], terminal: Terminal): Exit {
  for (const { field, problem, remedy } of faults) terminal.tell(`${problem}  — ${remedy}, after --${flagOf(field)}`);
  terminal.tell("Nothing was written.");
  return EXIT.usage;
}

const flagOf = (field: string): string =>
  ({ aliases: "alias", positions: "position", game_bat: "game-bat" })[field] ?? field;

async function newMany(called: Called, file: string | undefined, terminal: Terminal): Promise<Exit> {
  if (file === undefined)
    throw new Stopped(EXIT.usage, "no roster was named", "name it: npm run new -- athletes roster.csv");
  const path = resolve(terminal.here, file);
  const bytes = await realDisk.read(path).catch(() => {
    throw new Stopped(EXIT.input, `${file} cannot be read`, "look at its name and place");
  });
  const { athletes, faults, unknown } = readRoster(bytes);
  const name = basename(file);
  for (const { column, suggestion } of unknown) {
    const meant = suggestion === null ? "it is left out; nothing else depends on it" : `did you mean ${suggestion}?`;
    terminal.tell(`${name}:1  the column "${column}" is not known and not read  — ${meant}`);
  }
  for (const { line, column, problem, remedy } of faults)
    terminal.tell(`${[name, line, column].filter((part) => part !== null).join(":")}  ${problem}  — ${remedy}`);
  const made = await makeFolders(athletes, called.paths.content, realDisk);
  for (const text of madeLines(made)) terminal.print(text);
  const left = new Set(faults.map(({ line }) => line)).size;
  if (left > 0) terminal.print(`${left === 1 ? "1 line" : `${left} lines`} of ${name} made no folder; see above.`);
  return faults.length > 0 || made.there.some((one) => one.name !== null) ? EXIT.input : EXIT.done;
}

const FACILITY: readonly Asked[] = [
  { key: "name", message: "Name of the facility", needed: true },
  { key: "season-name", message: "Name of the season", needed: true, placeholder: "Winter 2026" },
  { key: "start", message: "First day, as 2025-10-06", needed: true },
  { key: "end", message: "Last day, as 2026-02-22", needed: true },
  { key: "time-zone", message: "Time zone, as America/Chicago" },
  { key: "units", message: "Units families read", choices: ["imperial", "metric"] },
  { key: "contact", message: "Where families reach you" },
];

async function newFacility(called: Called, terminal: Terminal): Promise<Exit> {
  const { texts } = called.flags;
  const file = join(called.paths.content, "facility.md");
  const there = new Stopped(
    EXIT.input,
    "content/facility.md is there already, and was left as it is",
    "write in that file",
  );
  if (await realDisk.exists(file)) throw there;
  const written = isAsked(called, terminal) ? await askFor(FACILITY, texts) : texts;
  const { page, faults } = facilityPage(written);
  if (page === null) return refuse(faults, terminal);
  if (!(await realDisk.create(file, page))) throw there;
  terminal.print("content/facility.md");
  terminal.print(
    "Made. The lines with # show what else may stand in it; `npm run new -- athletes roster.csv` comes next.",
  );
  return EXIT.done;
}
