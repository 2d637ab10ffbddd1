import type { Problem } from "../schema/season.ts";

/** What is wrong, and what to do about it. */
export interface Said {
  readonly problem: string;
  readonly remedy: string;
}

type Args = Problem["args"];
type Wording = (args: Args) => Said;

const said = (problem: string, remedy: string): Said => ({ problem, remedy });
const fixed =
  (problem: string, remedy: string): Wording =>
  () =>
    said(problem, remedy);

/** What is written in the file, as it can be shown inside a line. */
const shown = (value: string | number | undefined) => (value === undefined || value === "" ? "nothing" : `"${value}"`);
const meant = ({ suggestion }: Args, otherwise: string) =>
  suggestion === undefined ? otherwise : `did you mean ${suggestion}?`;
const rows = (count: string | number | undefined) => (Number(count) === 1 ? "1 row" : `${count} rows`);

/** Where the entries of a list are kept. */
const LISTS: Readonly<Record<string, string>> = {
  staff: "list the person under staff in facility.md",
  drills: "describe the drill in drills.md",
  metrics: "declare the metric in metrics.md",
  implements: "add it to data/implements.csv",
  balls: "add it to data/balls.csv",
  environments: "give a drill with this environment in drills.md",
  athletes: "make a folder for the athlete under content/athletes",
  zones: "describe the zone in metrics.md",
  devices: "add it to data/devices.csv",
  sites: "list the site in facility.md",
};

const DELIMITERS: Readonly<Record<string, string>> = { tab: "tabs", ";": "semicolons", "|": "bars" };

/** What is checked today and used by nothing yet. */
const NOT_USED: Readonly<Record<string, string>> = {
  corrections: "corrections",
  tests: "test results",
  reference: "reference values",
  gates: "gates",
  plans: "day plans",
  editions: "editions",
};

function unreadableRow({ fields, expected, detail }: Args): Said {
  if (detail === "quotes") return said("the row's quotation marks do not match", "close every quotation mark");
  if (detail === "blank") return said("no cell of the row is filled", "remove the row");
  return said(`the row has ${fields} fields and the header has ${expected}`, "compare the row with its neighbours");
}

/** Wording of every problem. A code never changes its name. */
const WORDINGS: Readonly<Record<string, Wording>> = {
  // files
  "not-utf-8": fixed("the file is not UTF-8 text", "save it again with the encoding UTF-8"),
  "not-a-plain-file": fixed("this is a link or a special file, and is not read", "put the file itself here"),
  "unreadable-file": ({ detail }) => said(`the file cannot be read (${detail})`, "look at its permissions"),
  "missing-file": ({ file }) => said(`${file} is missing`, "write it; only a name is required in a profile"),
  "unknown-file": (args) => said("nothing reads a file of this name", meant(args, "rename it, or leave it as it is")),
  "bad-folder-name": ({ folder, ...args }) =>
    said(
      `the folder name ${shown(folder)} is no id`,
      meant(args, "use lower-case letters, digits and hyphens, and begin with a letter or digit"),
    ),
  "empty-file": fixed("there is no row in this file", "remove it if that is no accident"),
  // front matter, mappings
  "no-front-matter": fixed(
    "the page does not begin with keys",
    "begin it with a line of three hyphens, keys, and another such line",
  ),
  "unclosed-front-matter": fixed("the keys at the top have no end", "add a line of three hyphens below the last key"),
  "unreadable-yaml": ({ detail }) =>
    said(`the keys at the top cannot be read: ${detail}`, "look at colons, quotes and indents"),
  "unreadable-json": ({ detail }) => said(`this is not JSON: ${detail}`, "look at commas, quotes and brackets"),
  "unknown-key": ({ key, in: file, ...args }) =>
    said(
      `${file} has no key ${shown(key)}`,
      meant(args, "remove it, or write one of the keys that this page may have"),
    ),
  "missing-key": ({ key, in: file }) => said(`${key} is missing in ${file}`, "write it"),
  "wrong-value": ({ key, found, expected, ...args }) =>
    said(`${key} is ${shown(found)}, and should be: ${expected}`, meant(args, "write it as said")),
  "not-in-list": ({ key, found, list, ...args }) =>
    said(
      `${key} names ${shown(found)}, which nobody has described`,
      meant(args, LISTS[String(list)] ?? `use one of the ${list}`),
    ),
  "repeated-id": ({ key, found }) => said(`${key} holds the id ${shown(found)} twice`, "give each its own id"),
  "shared-name": ({ name, athletes }) =>
    said(
      `${shown(name)} is the name of several athletes: ${athletes}`,
      "rows under this name are set aside; let exports write ids, or give each an alias of their own",
    ),
  "no-measures": fixed(
    "facility.md names no measures",
    "the first measured columns stand in for them; list at most eight under measures to choose your own",
  ),
  "not-used-yet": ({ what }) =>
    said(
      `${NOT_USED[String(what)] ?? what} are checked, but nothing uses them yet`,
      "nothing to do; the reports do without",
    ),
  // tables
  "unknown-column": ({ column, ...args }) =>
    said(
      `the column ${shown(column)} is not known and not read`,
      meant(args, "rename it, or declare it in metrics.md or a mapping"),
    ),
  "missing-column": ({ column, ...args }) =>
    said(`there is no column ${column}`, meant(args, "add it, or write a mapping for this kind of export")),
  "no-measured-column": fixed("no column of this file is a measurement", "name one with its unit, as bat_speed_mph"),
  "repeated-column": ({ column, other }) =>
    said(`the columns ${column} and ${other} hold the same`, "keep one of them"),
  "wrong-delimiter": ({ delimiter }) =>
    said(
      `the cells are separated by ${DELIMITERS[String(delimiter)] ?? shown(delimiter)}`,
      "save it with commas, or write a mapping that names the delimiter",
    ),
  "broken-header": fixed("the quotation marks of the header do not match", "close every quotation mark"),
  "same-header": ({ other }) =>
    said(`${other} reads files of the same header`, `remove one of the two; ${other} is used`),
  "repeated-file": ({ other, rows: count }) =>
    said(`the file is the same as ${other}; its ${rows(count)} are counted there`, "remove one of the two"),
  "rows-of-left-out": ({ athlete, rows: count }) =>
    said(`${rows(count)} belong to ${athlete}, whose own files cannot be used`, "put those files right first"),
  // rows set aside
  "unreadable-date": ({ field, value }) =>
    said(`${field} is ${shown(value)}, not a date or time`, "write dates as yyyy-mm-dd and times as hh:mm"),
  "unreadable-number": ({ field, value, ...args }) =>
    said(
      `${field} is ${shown(value)}, not a number`,
      args.suggestion === undefined ? "write digits with a point, or leave the cell blank" : `write ${args.suggestion}`,
    ),
  "unreadable-row": unreadableRow,
  "out-of-range": ({ field, value, lo, hi, unit }) =>
    said(
      `${field} is ${value}, outside of what can be true (${lo} to ${hi} ${unit})`,
      "look for a misread or a wrong unit",
    ),
  "unknown-athlete": ({ value, ...args }) =>
    said(
      `no athlete is called ${shown(value)}`,
      meant(args, "add the name as an alias in a profile, or make a folder for the athlete"),
    ),
  "ambiguous-name": ({ value, athletes }) =>
    said(`${shown(value)} may be ${athletes}`, "let the export write an id, or give each an alias of their own"),
  "unknown-id": ({ field, value, ...args }) =>
    said(`${field} is ${shown(value)}, which is not known`, meant(args, "add it to its table, or correct the export")),
  duplicate: ({ other }) => said(`the same rep stands in ${other}`, "nothing to do: it is counted once"),
  revised: fixed("a later export of the same rep replaces this row", "nothing to do"),
  void: fixed("a correction takes this row out", "nothing to do"),
  "summary-row": fixed("this is a summary of other rows, not a rep", "nothing to do"),
  "unassigned-block": fixed("the row belongs to no block of the session log", "add the block to data/blocks"),
  "future-date": fixed("the date lies after the day the report stands for", "look at the year"),
  // found while reporting
  "names-other-athlete": ({ reader, words, other }) =>
    said(
      `the ${reader} page would name another athlete (${shown(words)}, ${other})`,
      "take the name out; the page is held back until then",
    ),
};

/** Every code that has words. */
export const SPOKEN_CODES: readonly string[] = Object.keys(WORDINGS);

/** English words for a problem. A code without words of its own is shown with all it carries. */
export function sayProblem({ code, args }: Pick<Problem, "code" | "args">): Said {
  const wording = Object.hasOwn(WORDINGS, code) ? WORDINGS[code] : undefined;
  if (wording) return wording(args);
  const carried = Object.entries(args).map(([key, value]) => `${key} ${shown(value)}`);
  return said([code.replaceAll("-", " "), ...carried].join(", "), "look at this place in the file");
}

/** Why a reader is not given a report. */
export const WITHHELD: Readonly<Record<string, string>> = {
  "no-consent": "nobody has agreed",
  "needs-guardian": "a guardian has to agree",
  "needs-own": "the athlete has to agree",
  withdrawn: "the agreement was taken back",
  ended: "the agreement has ended",
  "link-ended": "the link has ended",
  "names-other-athlete": "the page would name another athlete",
};
