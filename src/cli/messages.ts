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
const swings = (count: string | number | undefined) => (Number(count) === 1 ? "1 swing" : `${count} swings`);
const rows = (count: string | number | undefined) => (Number(count) === 1 ? "1 row" : `${count} rows`);
/** Why a reference leads nowhere. */
const LOST: Readonly<Record<string, string>> = {
  form: "between the brackets stand a metric, words of its set-up, a colon and what is wanted",
  metric: "no swings have such a metric",
  part: "that is not known behind the colon",
  "no-series": "no series has all these words",
  several: "several series have these words",
  "no-value": "the season has no such value",
};

/** The first of some days, and how many more there are. */
const onDays = (first: string | number | undefined, count: string | number | undefined) =>
  Number(count) === 1 ? `${first}` : `${first} and ${Number(count) - 1} more ${Number(count) === 2 ? "day" : "days"}`;

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
  feeds: "add it to data/feeds.csv",
  groups: "list the group in facility.md",
};

/** What a file turns out to be that should be a table. */
const KINDS: Readonly<Record<string, string>> = {
  text: "plain text",
  workbook: "a workbook",
  "old-workbook": "a workbook of the old kind, or one with a password",
  picture: "a picture",
  pdf: "a PDF",
  archive: "a packed archive",
  binary: "a file of bytes that are no text",
};
const KIND_REMEDIES: Readonly<Record<string, string>> = {
  text: "let its name end in .csv",
  workbook: "let its name end in .xlsx",
  "old-workbook": "save it as .xlsx without a password, or as CSV",
  archive: "unpack it and put the table here",
};

const DELIMITERS: Readonly<Record<string, string>> = { tab: "tabs", ";": "semicolons", "|": "bars" };

/** What a correction did to its rows. */
const CORRECTED: Readonly<Record<string, string>> = {
  set: "put right",
  reassign: "given to another athlete",
  void: "taken out",
};

/** What the other device says about a suspected change of set-up. */
const OTHER_SIDE: Readonly<Record<string, string>> = {
  still: ", and the other device sees no step",
  moved: ", and the other device sees one too",
};

const inside = (condition: string | number | undefined) => (condition ? ` (${condition})` : "");

/** How a file comes to be that no profile is. */
const MISSING_FILES: Readonly<Record<string, string>> = {
  "content/facility.md": "write it with a name and a season, or run npm run new facility",
};

/** What is checked today and used by nothing yet. */
const NOT_USED: Readonly<Record<string, string>> = {
  plans: "day plans",
  editions: "editions",
};

/** Words of a closed list cannot be added to; those of an export are translated by its mapping. */
function unknownWord({ value, allowed, list, mapped, suggestion }: Args): string {
  const listed = list === undefined ? undefined : LISTS[String(list)];
  const ways = [allowed === undefined ? undefined : `write ${allowed}`, listed].filter((way) => way !== undefined);
  if (mapped !== undefined) {
    const words = suggestion ?? allowed;
    const which = words === undefined ? "" : ` (${words}${suggestion === undefined ? "" : "?"})`;
    return [
      `write under words in the mapping what ${shown(value)} stands for${which}`,
      ...(listed ? [listed] : []),
    ].join(", or ");
  }
  if (suggestion !== undefined) return `did you mean ${suggestion}?`;
  return ways.length > 0 ? ways.join(", or ") : "add it to its table, or correct the export";
}

function unreadableRow({ fields, expected, detail }: Args): Said {
  if (detail === "quotes") return said("the row's quotation marks do not match", "close every quotation mark");
  if (detail === "long")
    return said("the row is longer than any swing's could be", "look for a quotation mark that is never closed");
  if (detail === "nul")
    return said("the row holds bytes that are no text", "export it again; the file may be damaged here");
  if (detail === "blank") return said("no cell of the row is filled", "remove the row");
  return said(`the row has ${fields} fields and the header has ${expected}`, "compare the row with its neighbours");
}

function unassignedBlock({ detail, block, blocks, expected, found }: Args): Said {
  const counted = block === undefined ? "" : `${block} expects ${swings(expected)}, ${found} found`;
  const maybe = blocks === undefined ? "" : `the row may belong to ${blocks}`;
  const both = [counted, maybe].filter((part) => part !== "").join("; ");
  const log = "look at rounds, reps and times in data/blocks; give the row its place with a correction";
  if (detail === "no-block")
    return said(`the log of that day has no ${block}`, "add the block to data/blocks, or correct its number");
  if (detail === "outside")
    return said(
      both === "" ? "the row lies outside of the blocks of that day" : `${both} or to none of that day's`,
      log,
    );
  if (both !== "") return said(both, log);
  return said("the row belongs to no block of the session log", "add the block to data/blocks");
}

/** Wording of every problem. A code never changes its name. */
const WORDINGS: Readonly<Record<string, Wording>> = {
  // files
  "not-utf-8": fixed("the file is not UTF-8 text", "save it again with the encoding UTF-8"),
  "not-a-plain-file": fixed("this is a link or a special file, and is not read", "put the file itself here"),
  "unreadable-file": ({ detail }) => said(`the file cannot be read (${detail})`, "look at its permissions"),
  "missing-file": ({ file }) =>
    said(`${file} is missing`, MISSING_FILES[String(file)] ?? "write it; only a name is required in a profile"),
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
  "repeated-goal": ({ set, other }) =>
    said(
      `this goal asks for the same as the one in ${other}${set === "" ? "" : `, set on the same day (${set})`}, and both are shown`,
      "remove one of the two, or write under set when each was set: the later one then stands",
    ),
  "shared-name": ({ name, athletes }) =>
    said(
      `${shown(name)} is the name of several athletes: ${athletes}`,
      "rows under this name are set aside; let exports write ids, or give each an alias of their own",
    ),
  "pale-accent": ({ found, shown }) =>
    said(
      `the accent ${found} cannot be read on the pages' paper`,
      `pages show ${shown} in its place; a darker colour of your own will be shown as it is`,
    ),
  "heavy-logo": ({ found, most }) =>
    said(
      `the logo has ${found} kB; every page loads it`,
      `make it smaller, to ${most} kB at most; pages are made without it until then`,
    ),
  "no-measures": fixed(
    "facility.md names no measures",
    "the first measured columns stand in for them; list at most eight under measures to choose your own",
  ),
  "no-pages-in-language": ({ language }) =>
    said(
      `no pages are written in ${shown(language)} yet; this athlete's are in English`,
      `nothing to do; a closing message in closing.${language}.md is shown as you write it`,
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
  "missing-column": ({ column, suggestion }) =>
    said(
      `there is no column ${column}`,
      suggestion === undefined
        ? "add it, or write a mapping for this kind of export"
        : `is it the one called ${suggestion}? then write ${column} in the header`,
    ),
  "other-case": ({ column, meant: ours, columns }) => {
    const more = Number(columns) > 1 ? `, and ${Number(columns) - 1} more in the same way` : "";
    return said(
      `the header says ${shown(column)}, and it is read as ${ours}${more}`,
      "nothing to do, if that is what the column holds; column names are written in lower case",
    );
  },
  "no-measured-column": fixed("no column of this file is a measurement", "name one with its unit, as bat_speed_mph"),
  "repeated-column": ({ column, other }) =>
    said(`the columns ${column} and ${other} hold the same`, "keep one of them"),
  "wrong-delimiter": ({ delimiter }) =>
    said(
      `the cells are separated by ${DELIMITERS[String(delimiter)] ?? shown(delimiter)}`,
      "save it with commas, or write a mapping that names the delimiter",
    ),
  "broken-header": ({ detail }) => {
    if (detail === "long") return said("the first line is far too long for a header", "export the table again, as CSV");
    if (detail === "nul") return said("the first line holds bytes that are no text", "export the table again, as CSV");
    return said("the quotation marks of the header do not match", "close every quotation mark");
  },
  "same-header": ({ other }) =>
    said(`${other} reads files of the same header`, `remove one of the two; ${other} is used`),
  "repeated-file": ({ other, rows: count }) =>
    said(`the file is the same as ${other}; its ${rows(count)} are counted there`, "remove one of the two"),
  "rows-of-left-out": ({ athlete, rows: count }) =>
    said(
      `${rows(count)} ${Number(count) === 1 ? "belongs" : "belong"} to ${athlete}, whose own files cannot be used`,
      "put those files right first",
    ),
  // exports and workbooks
  "changed-header": ({ mapping, added, missing }) => {
    const changes = [added === "" ? "" : `new: ${added}`, missing === "" ? "" : `gone: ${missing}`];
    return said(
      `the header is nearly that of ${mapping}, but not the same (${changes.filter((text) => text !== "").join("; ")})`,
      "run npm run map on this file; nothing of it is read until then",
    );
  },
  "changed-units": ({ mapping, column, expected, found }) =>
    said(
      `the row of units says ${shown(found)} for ${shown(column)}, and ${mapping} expects ${shown(expected)}`,
      "set the device back, or run npm run map on this file; nothing of it is read until then",
    ),
  "lines-skipped": ({ lines }) =>
    said(
      `${Number(lines) === 1 ? "1 line" : `${lines} lines`} above the header are not read`,
      "nothing to do, unless there are swings among them",
    ),
  "too-many-columns": ({ columns, most }) =>
    said(
      `the header has ${columns} columns; at most ${most} are read`,
      "export fewer columns, and look for a wrong delimiter",
    ),
  "no-time-zone": fixed(
    "the times of this export are those of another zone, and facility.md names none of its own",
    "write time_zone in facility.md, as America/Chicago",
  ),
  "not-a-table": ({ kind, named }) =>
    said(
      `this is ${KINDS[String(kind)] ?? "no table"}, not ${named === "workbook" ? "a workbook" : "CSV text"}`,
      KIND_REMEDIES[String(kind)] ?? "export the table as CSV and put that here",
    ),
  "still-growing": fixed(
    "the file changed while it was read; its last whole lines are used",
    "read again when the program that writes it is done",
  ),
  "workbook-too-large": ({ size, most }) =>
    said(`the workbook holds ${size} MB unpacked; at most ${most} MB are read`, "export the sheet as CSV"),
  "workbook-too-wide": ({ rows: count, columns }) =>
    said(
      `a sheet reaches to row ${count} and column ${columns}`,
      "clear the cells far out, or export the sheet as CSV",
    ),
  "workbook-with-macros": fixed(
    "the workbook holds macros, and is not read",
    "save it as .xlsx without macros, or as CSV",
  ),
  "broken-workbook": ({ detail }) =>
    said(`the workbook cannot be read: ${detail}`, "save it again as .xlsx, or as CSV"),
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
  "unknown-id": (args) => said(`${args.field} is ${shown(args.value)}, which is not known`, unknownWord(args)),
  duplicate: ({ other }) => said(`the same rep stands in ${other}`, "nothing to do: it is counted once"),
  revised: ({ other, field, from, to }) =>
    said(
      `a later export of the same rep${other === undefined ? "" : ` (${other})`} replaces this row${field === undefined ? "" : `: ${field} was ${shown(from)} and is ${shown(to)}`}`,
      "nothing to do, if the later export is right; else correct it in data/corrections.csv",
    ),
  void: ({ other, reason }) =>
    said(
      `a correction takes this row out${other === undefined ? "" : ` (${other})`}${reason === undefined ? "" : `: ${reason}`}`,
      "nothing to do",
    ),
  "summary-row": fixed("this is a summary of other rows, not a rep", "nothing to do"),
  "unassigned-block": unassignedBlock,
  "future-date": ({ value }) => said(`${value} lies more than a year after the season`, "look at the year"),
  // corrections
  "correction-incomplete": ({ detail }) =>
    said(
      `the correction cannot be used: ${detail ?? "something is missing"}`,
      "write what is missing, or take the line out",
    ),
  "correction-without-rows": fixed(
    "the correction meets no row that stands",
    "look at file and line, or at athlete, date, session, block, first and last",
  ),
  "correction-mismatch": ({ field, from, stands, other }) =>
    said(
      `${field} should be ${shown(from)} to be corrected, and ${shown(stands)} stands in ${other}`,
      "write in from what stands there, if the correction still holds",
    ),
  "correction-overruled": ({ other }) =>
    said(`a later correction (${other}) says otherwise and is followed`, "take the older line out if that is right"),
  // session log
  "log-value": ({ key, found }) =>
    said(`${key} cannot be ${shown(found)}, and no rep is given it`, "write a value that a swing's own cell may have"),
  "feed-not-valid": ({ feed, date }) =>
    said(`the feed ${shown(feed)} is not in use on ${date}`, "look at from and to in data/feeds.csv"),
  "repeated-block": ({ block, other }) =>
    said(`block ${block} of that day stands in ${other} too, which is used`, "remove one of the two, or number them"),
  contradiction: ({ field, value, found, other, rows: count }) =>
    said(
      `${field} is ${shown(value)} here and ${shown(found)} in ${other}${Number(count) > 1 ? ` (${rows(count)})` : ""}; ${shown(value)} is used`,
      "correct the one that is wrong",
    ),
  "block-count": ({ block, athlete, date, expected, found }) =>
    said(
      `${block} of ${athlete} on ${date} expects ${swings(expected)}, ${found} found`,
      "nothing to do, if some were not measured",
    ),
  "lost-reference": ({ text, why, known }) =>
    said(
      `[[${text}]] leads to no figure: ${LOST[why ?? ""] ?? why}`,
      known === "" ? "write it as [[bat_speed machine: change]]" : `possible here: ${known}`,
    ),
  "figure-not-borne-out": ({ athlete, found, metric, known }) =>
    said(
      `${shown(found)} stands near ${metric}, and no figure of ${athlete} is that`,
      `${known === "" ? "look at the report" : `start and end of the season: ${known}`}; [[as written: ${found}]] keeps it as it is`,
    ),
  "pairs-not-told": ({ athlete, date, days: count, other }) =>
    said(
      `swings of ${athlete} on ${onDays(date, count)} cannot be told apart against ${other}: bat and ball stay single there`,
      "look at _desk/pairs/, set both devices' clocks, and leave pauses between rounds; a row of corrections.csv with the field pair joins two rows",
    ),
  "pairs-without-seconds": ({ athlete, date, days: count, other }) =>
    said(
      `swings of ${athlete} on ${onDays(date, count)} are not paired with ${other}: a time is missing or has no seconds`,
      "have both devices export times with seconds",
    ),
  "correction-applied": ({ action, by, on, reason, rows: count }) =>
    said(`${by} had ${rows(count)} ${CORRECTED[action ?? ""] ?? action} on ${on}: ${reason}`, "nothing to do"),
  // found while reporting
  "possible-set-up-change": ({ athlete, metric, unit, condition, date, size, otherSide }) =>
    said(
      `${metric} of ${athlete}${inside(condition)} steps by ${size} ${unit} from ${date} on${OTHER_SIDE[otherSide ?? ""] ?? ""}`,
      "if a sensor or bat was replaced that day, write it into devices.csv or game_bat; nothing was changed",
    ),
  "far-from-own-swings": ({ athlete, metric, unit, condition, value, low, high }) =>
    said(
      `${metric} ${value} ${unit} lies far from the other swings of ${athlete}${inside(condition)} (${low} to ${high})`,
      "it counts; if it is a misread, take it out with a line in data/corrections.csv",
    ),
  "limit-broken": ({ athlete, date, word, swings, decidedBy }) =>
    said(
      `${athlete} has ${swings} swings of ${word} on ${date}, which the profile's limits rule out${decidedBy === undefined ? "" : ` (decided by: ${decidedBy})`}`,
      "put the log right if it is wrong; if it is right, talk to whoever decided the limit",
    ),
  "below-overload-age": ({ athlete, date, swings }) =>
    said(
      `${athlete} has ${swings} swings with a heavy bat on ${date}, below the facility's age for them`,
      "put the log or the birth date right if it is wrong; the league's rules and a licensed professional decide what is right",
    ),
  "names-other-athlete": ({ reader, words, other }) =>
    said(
      `the ${reader} page would name another athlete (${shown(words)}, ${other})`,
      "take the name out; the page is held back until then",
    ),
  "page-too-long": ({ bytes, most }) =>
    said(
      `the file is ${Number(bytes).toLocaleString("en-US")} bytes long, and no page is longer than ${Number(most).toLocaleString("en-US")}`,
      "look whether something else was saved under this name; put pictures beside the page, not into it",
    ),
  "shows-birth-date": ({ reader, words, other }) =>
    said(
      `the ${reader} page would show a day of birth (${shown(words)}, of ${other})`,
      "take the day out, an age is enough; the page is held back until then",
    ),
  "health-word": ({ athlete, word }) =>
    said(
      `a text of ${athlete} tells of health (${shown(word)}) and stays on the desk`,
      "say it in person; to publish the rest, take what tells of health out of the text",
    ),
  "second-reader": ({ athlete }) =>
    said(
      `a text about ${athlete} has been read by its author alone and stays on the desk`,
      "let another member of the staff read it, and put their id under read_by",
    ),
  "past-keep-until": ({ athlete, until, rows }) =>
    said(
      `what is on file of ${athlete} (${rows} readable rows) was to be kept until ${until}`,
      `take it out with npm run forget -- ${athlete}, or set another day; local law decides what may or must be kept`,
    ),
  "minor-not-sealed": ({ athlete, recipients }) =>
    said(
      `the report of ${athlete}, a minor, lies unsealed on the host for ${recipients}`,
      "take the word seal: false away, unless those who agreed know it: whoever finds the address can read it",
    ),
  "facility-names-athlete": ({ key, words, other }) =>
    said(
      `${key} in facility.md names an athlete (${shown(words)}, ${other}), and would stand on everybody's page`,
      "take the name out, or list the person under staff if a coach is meant; pages are made without this text until then",
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
  "not-covered": "the agreement does not cover the numbers",
  "link-ended": "the link has ended",
  "link-revoked": "the link was made dead",
  "names-other-athlete": "the page would name another athlete",
  "shows-birth-date": "the page would show a day of birth",
};
