import { basename, extname, join, relative, resolve } from "node:path";
import { confirm } from "@clack/prompts";
import { type Explored, explore, type NoTable, type Proposal, type Rehearsal, rehearse } from "../../build.ts";
import { EXIT, type Exit, Stopped } from "../../publish/stopped.ts";
import { columnNames, type Mapping } from "../../schema/mapping.ts";
import type { Called } from "../arguments.ts";
import { realDisk, realEffects } from "../effects.ts";
import { sayProblem } from "../messages.ts";
import { orStop } from "../new/ask.ts";
import { idFromName } from "../new/id-from-name.ts";
import type { Terminal } from "../terminal.ts";
import { answersBy, type Growing, toldBy } from "./answers.ts";
import { ask } from "./ask.ts";
import { fileLine, proposalLines, rehearsalLines } from "./proposal-lines.ts";
import { questionLines } from "./question-words.ts";

const NO_TABLE: Readonly<Record<string, readonly [string, string]>> = {
  "no-header": [
    "no header is found in it",
    "it needs a line with the names of the columns, and rows below it; name another sheet of a workbook with --sheet",
  ],
  "no-sheet": ["there is no sheet of this name in it", "give the name of a sheet with --sheet"],
};

function refused(file: string, { code, args }: NoTable): Stopped {
  const [problem, remedy] = NO_TABLE[code] ?? Object.values(sayProblem({ code, args }));
  return new Stopped(EXIT.input, `${file}: ${problem}`, remedy ?? "look at the file");
}

/** Asks until nothing is open; an answer may open another question. */
async function askAll(answers: Growing, explored: Explored): Promise<Proposal> {
  for (;;) {
    const proposal = explored.propose(answers);
    const [question] = proposal.questions;
    if (!question) return proposal;
    await ask(question, answers, explored);
  }
}

/** Shows what is proposed, and asks for the rest where somebody can be asked. */
async function settled(
  answers: Growing,
  explored: Explored,
  asks: boolean,
  { file, terminal }: { readonly file: string; readonly terminal: Terminal },
): Promise<Proposal> {
  const first = explored.propose(answers);
  for (const line of [`${file}: ${fileLine(explored)}`, "", ...proposalLines(first), ""]) terminal.print(line);
  return asks ? askAll(answers, explored) : first;
}

const sorted = (header: readonly string[]) => JSON.stringify(columnNames(header).sort());

/** A mapping that reads such files already, under another name. */
function twin(mapping: Mapping, target: string, { mappings }: Explored): string | null {
  const same = [...mappings].find(
    ([file, other]) =>
      file !== target &&
      sorted(other.header) === sorted(mapping.header) &&
      JSON.stringify(other.units_row ?? null) === JSON.stringify(mapping.units_row ?? null),
  );
  return same?.[0] ?? null;
}

/** `npm run map -- FILE`: proposes how an export is read, shows it, and on yes keeps it as a mapping. */
export async function mapCommand(called: Called, terminal: Terminal): Promise<Exit> {
  const { flags, paths, words } = called;
  const [file] = words;
  if (file === undefined)
    throw new Stopped(EXIT.usage, "no export was named", "name it: npm run map -- path/to/export.csv");
  const path = resolve(terminal.here, file);
  const bytes = await realDisk.read(path).catch(() => {
    throw new Stopped(EXIT.input, `${file} cannot be read`, "look at its name and place");
  });
  const name = idFromName(flags.texts.name ?? basename(file, extname(file)));
  if (name === "") throw new Stopped(EXIT.usage, "the mapping needs a name", "give it with --name");
  const target = `data/mappings/${name}.json`;
  const place = join(paths.data, "mappings", `${name}.json`);
  if (!flags.replace && (await realDisk.exists(place)))
    throw new Stopped(
      EXIT.usage,
      `${target} is there already`,
      "choose another name with --name, or save over it with --replace",
    );
  const effects = realEffects(terminal.tell, terminal.display);
  const explored = await explore(paths, bytes, toldBy(flags), effects);
  if ("code" in explored) throw refused(file, explored);

  const asks = terminal.interactive && !flags.yes;
  const canonical = (field: string) => explored.unitsOf(field)[0] ?? "";
  const proposal = await settled(answersBy(flags, explored), explored, asks, { file, terminal });
  if (proposal.questions.length > 0) {
    terminal.print("Open questions; add one of the flags below each to the command:");
    for (const line of questionLines(proposal.questions, canonical)) terminal.print(line);
    terminal.print("");
    terminal.print("Nothing was saved.");
    return EXIT.usage;
  }
  const mapping = explored.mapping(proposal, flags.texts.name ?? name.replaceAll("-", " "), flags.texts.zone ?? null);
  const other = twin(mapping, target, explored);
  if (other !== null)
    throw new Stopped(
      EXIT.usage,
      `${other} reads files with this header already`,
      `nothing to do, or change it with --name ${basename(other, ".json")} --replace`,
    );
  const rehearsal = await rehearse(paths, basename(file), bytes, mapping, effects).finally(effects.finished);
  for (const line of rehearsalLines(rehearsal, canonical)) terminal.print(line);
  terminal.print("");
  return save(called, terminal, { place, target, path, mapping, rehearsal, asks });
}

interface Ready {
  readonly place: string;
  readonly target: string;
  readonly path: string;
  readonly mapping: Mapping;
  readonly rehearsal: Rehearsal;
  readonly asks: boolean;
}

/** Not one row would be read, and not because nobody of these names has a folder yet, or because the session log is to come. */
function readsNothing({ rows, read, setAside }: Rehearsal): boolean {
  const later = ["unknown-athlete", "ambiguous-name", "unassigned-block"];
  return rows > 0 && read === 0 && !setAside.some(({ reason }) => later.includes(reason));
}

async function save({ flags, paths }: Called, terminal: Terminal, ready: Ready): Promise<Exit> {
  const { place, target, path, mapping, rehearsal, asks } = ready;
  if (rehearsal.problems.some(({ level }) => level === "error")) {
    terminal.print("Nothing was saved: the file cannot be read in this way.");
    return EXIT.usage;
  }
  if (readsNothing(rehearsal)) {
    terminal.print("Nothing was saved: not one row would be read. Look at the reasons above.");
    return EXIT.usage;
  }
  const yes = flags.yes || (asks && orStop(await confirm({ message: `Save this as ${target}?` })));
  if (!yes) {
    terminal.print(asks ? "Nothing was saved." : "Nothing was saved: add --yes to save it.");
    return asks ? EXIT.done : EXIT.usage;
  }
  const body = `${JSON.stringify(mapping, null, 2)}\n`;
  if (flags.replace) await realDisk.write(place, body);
  else if (!(await realDisk.create(place, body)))
    throw new Stopped(
      EXIT.usage,
      `${target} is there already`,
      "choose another name with --name, or save over it with --replace",
    );
  terminal.print(`Saved as ${target}. Every file with this header is read by it from now on, without a question.`);
  const swings = join(paths.data, "swings");
  if (relative(swings, path).startsWith("..")) terminal.print(`Put the export itself under data/swings/.`);
  return EXIT.done;
}
