import type { NotCountedReason } from "../schema/reasons.ts";
import type { Place, Problem } from "../schema/season.ts";
import { sayProblem } from "./messages.ts";

type Level = Problem["level"];

/** What is said of one code, besides the words for a single case, which `messages.ts` makes. */
export interface CodeEntry {
  /** A code that is an error in one file may set aside a row in another. */
  readonly levels: readonly Level[];
  /** What such problems have in common, as the heading of a group: no place, no value. */
  readonly meaning: string;
  /** One case of it, invented. */
  readonly at: Place;
  readonly args: Problem["args"];
}

const at = (file: string, line: number | null = null, column: number | null = null): Place => ({ file, line, column });
const error: readonly Level[] = ["error"];
const row: readonly Level[] = ["row"];
const note: readonly Level[] = ["note"];
const entry = (levels: readonly Level[], meaning: string, place: Place, args: Problem["args"] = {}): CodeEntry => ({
  levels,
  meaning,
  at: place,
  args,
});

const PROFILE = "content/athletes/ada-lund/profile.md";
const SWINGS = "data/swings/lane-2.csv";
const MAPPING = "data/mappings/lane-screen.json";

/** Every code that `check` may print. A code never changes its name. */
export const CODES: Readonly<Record<string, CodeEntry>> = {
  // files
  "not-utf-8": entry(error, "the file is not UTF-8 text", at(PROFILE)),
  "not-a-plain-file": entry(error, "a link or a special file stands where a file should", at("data/swings/old.csv")),
  "unreadable-file": entry(error, "the file cannot be opened", at(SWINGS), { detail: "permission denied" }),
  "missing-file": entry(error, "a file that is needed is not there", at(PROFILE), { file: PROFILE }),
  "unknown-file": entry(note, "nothing reads a file of this name", at("content/athletes/ada-lund/profil.md"), {
    suggestion: "profile.md",
  }),
  "bad-folder-name": entry(error, "a folder's name is no id", at("content/athletes/Ada Lund"), {
    folder: "Ada Lund",
    suggestion: "ada-lund",
  }),
  "empty-file": entry(note, "the file holds no row", at(SWINGS)),
  "page-too-long": entry(error, "the file is too long for a page or a mapping", at(PROFILE), {
    bytes: 52_428_800,
    most: 1_048_576,
  }),
  // front matter, mappings
  "no-front-matter": entry(error, "the page does not begin with keys", at(PROFILE, 1, 1)),
  "unclosed-front-matter": entry(error, "the keys at the top of the page have no end", at(PROFILE, 1, 1)),
  "unreadable-yaml": entry(error, "the keys at the top of the page cannot be read", at(PROFILE, 3, 7), {
    detail: "Nested mappings are not allowed here",
  }),
  "unreadable-json": entry(error, "a mapping cannot be read", at(MAPPING, 4, 1), { detail: "a comma is missing" }),
  "unknown-key": entry(error, "a key that this file does not have", at(PROFILE, 3, 1), {
    key: "borm",
    in: "profile.md",
    suggestion: "born",
  }),
  "missing-key": entry(["error", "row"], "something that is required is not written", at(PROFILE, 2, 1), {
    key: "name",
    in: "profile.md",
  }),
  "wrong-value": entry(["error", "row"], "a value that cannot stand there", at(PROFILE, 5, 7), {
    key: "bats",
    found: "rigth",
    expected: "one of left, right, switch",
    suggestion: "right",
  }),
  "not-in-list": entry(["error", "row", "note"], "a name that nobody has described", at(SWINGS, 4, 6), {
    key: "drill",
    found: "tee-hgh",
    list: "drills",
    suggestion: "tee-high",
  }),
  "repeated-id": entry(error, "one id is given twice", at("data/balls.csv", 4, 1), { key: "id", found: "soft" }),
  "repeated-goal": entry(
    note,
    "two goals ask for the same, and no day tells which is the later one",
    at(PROFILE, 12, 5),
    {
      set: "2025-10-06",
      other: `${PROFILE}:11`,
    },
  ),
  "shared-name": entry(note, "one name belongs to several athletes", at(PROFILE, 3, 11), {
    name: "Ada",
    athletes: "ada-lund, ada-brook",
  }),
  "pale-accent": entry(note, "the facility's colour cannot be read on the paper", at("content/facility.md", 9, 9), {
    found: "#ffcc00",
    shown: "#856a00",
  }),
  "heavy-logo": entry(error, "the logo is too heavy", at("content/logo.png"), { found: 212, most: 40 }),
  "no-measures": entry(note, "the facility names no measures", at("content/facility.md", 1, 1)),
  "no-pages-in-language": entry(note, "a language in which there are no pages yet", at(PROFILE, 6, 11), {
    language: "fr",
  }),
  "not-used-yet": entry(note, "this is checked, and nothing uses it yet", at("content/editions.csv"), {
    what: "editions",
  }),
  // tables
  "unknown-column": entry(["error", "note"], "a column that is not known, and is not read", at(SWINGS, 1, 5), {
    column: "batspeed_mph",
    suggestion: "bat_speed_mph",
  }),
  "other-case": entry(note, "a column whose name is ours but for capital letters", at(SWINGS, 1, 1), {
    column: "Athlete_ID",
    meant: "athlete_id",
    columns: 1,
  }),
  "missing-column": entry(error, "a column that is needed is not there", at(SWINGS, 1), { column: "athlete_id" }),
  "no-measured-column": entry(error, "the file holds no measurement", at(SWINGS, 1)),
  "repeated-column": entry(error, "two columns hold the same", at(SWINGS, 1, 6), {
    column: "bat_speed_kmh",
    other: "bat_speed_mph",
  }),
  "wrong-delimiter": entry(error, "the cells are not separated by commas", at(SWINGS, 1), { delimiter: ";" }),
  "broken-header": entry(error, "the quotation marks of the header do not match", at(SWINGS, 1)),
  "same-header": entry(error, "two mappings are for the same header", at(MAPPING), {
    other: "data/mappings/lane.json",
  }),
  "repeated-file": entry(row, "the whole file is a copy of another one", at("data/swings/lane-2 (1).csv"), {
    other: SWINGS,
    rows: 412,
  }),
  "rows-of-left-out": entry(
    note,
    "rows of an athlete whose own files cannot be used",
    at("content/athletes/ada-lund"),
    {
      athlete: "ada-lund",
      rows: 412,
    },
  ),
  // exports and workbooks
  "changed-header": entry(error, "an export changed its columns", at(SWINGS, 1), {
    mapping: MAPPING,
    added: "Spin",
    missing: "Temp",
  }),
  "changed-units": entry(error, "an export changed its units", at(SWINGS, 2, 5), {
    mapping: MAPPING,
    column: "Barrel",
    expected: "m/s",
    found: "mph",
  }),
  "lines-skipped": entry(note, "lines above the header are not read", at(SWINGS), { lines: 3 }),
  "too-many-columns": entry(error, "the header has far too many columns", at(SWINGS, 1), {
    columns: 10_000,
    most: 500,
  }),
  "no-time-zone": entry(error, "times of another zone, and no zone of our own", at(SWINGS)),
  "not-a-table": entry(error, "the file is not what its name says", at("data/swings/photo.csv"), {
    kind: "picture",
    named: "text",
  }),
  "still-growing": entry(note, "the file was still being written", at(SWINGS)),
  "workbook-too-large": entry(error, "the workbook is too large", at("data/swings/all.xlsx"), { size: 812, most: 200 }),
  "workbook-too-wide": entry(error, "a sheet has cells far out", at("data/swings/all.xlsx"), {
    rows: 1_048_576,
    columns: 16_384,
  }),
  "workbook-with-macros": entry(error, "the workbook holds macros", at("data/swings/all.xlsx")),
  "broken-workbook": entry(error, "the workbook cannot be read", at("data/swings/all.xlsx"), {
    detail: "its directory is cut off",
  }),
  // rows set aside
  "unreadable-date": entry(row, "a date or a time that cannot be read", at(SWINGS, 14, 2), {
    field: "date",
    value: "13/02/26",
  }),
  "unreadable-number": entry(row, "a number that cannot be read", at(SWINGS, 14, 9), {
    field: "bat_speed_mph",
    value: "61,5",
    suggestion: "61.5",
  }),
  "unreadable-row": entry(row, "a row that does not fit under the header", at(SWINGS, 14), { fields: 7, expected: 9 }),
  "out-of-range": entry(row, "a number that cannot be true", at(SWINGS, 14, 9), {
    field: "bat_speed_mph",
    value: "615",
    lo: 15,
    hi: 110,
    unit: "mph",
  }),
  "unknown-athlete": entry(row, "a name that fits nobody", at(SWINGS, 14, 1), {
    value: "Ada Lunt",
    suggestion: "ada-lund",
  }),
  "ambiguous-name": entry(row, "a name that fits several athletes", at(SWINGS, 14, 1), {
    value: "Ada",
    athletes: "ada-brook, ada-lund",
  }),
  "unknown-id": entry(row, "a word, a bat or a ball that is not known", at(SWINGS, 14, 6), {
    field: "implement",
    value: "game33",
    list: "implements",
    suggestion: "game-33",
  }),
  duplicate: entry(row, "the same rep once more", at(SWINGS, 14), { other: "data/swings/lane-1.csv:14" }),
  revised: entry(row, "a later export says it anew", at(SWINGS, 14)),
  void: entry(row, "a correction takes the row out", at(SWINGS, 14)),
  "summary-row": entry(row, "a row that sums up others", at(SWINGS, 90)),
  "unassigned-block": entry(row, "a rep that fits no block of the session log", at(SWINGS, 14)),
  "future-date": entry(row, "a day more than a year after the season", at(SWINGS, 14), { value: "2062-01-05" }),
  // corrections
  "correction-incomplete": entry(error, "a correction that does not say enough", at("data/corrections.csv", 4), {
    detail: "to is missing",
  }),
  "correction-without-rows": entry(error, "a correction that meets no row", at("data/corrections.csv", 4)),
  "correction-mismatch": entry(
    error,
    "a correction of something that does not stand there",
    at("data/corrections.csv", 4),
    {
      field: "implement",
      from: "wood",
      stands: "game",
      other: `${SWINGS}:14`,
    },
  ),
  "correction-overruled": entry(note, "a later correction says otherwise", at("data/corrections.csv", 4), {
    other: "data/corrections.csv:9",
  }),
  // session log
  "log-value": entry(note, "a value of the session log that no swing can have", at("data/blocks/2025-10.csv", 4, 8), {
    key: "implement",
    found: "woood",
  }),
  "feed-not-valid": entry(note, "a feed that is not in use on that day", at("data/blocks/2025-10.csv", 4, 12), {
    feed: "wheel-60",
    date: "2025-10-06",
  }),
  "repeated-block": entry(
    note,
    "a block of the session log that stands there twice",
    at("data/blocks/2025-10.csv", 9),
    {
      block: "2",
      other: "data/blocks/2025-10.csv:4",
    },
  ),
  contradiction: entry(note, "two places say different things of the same swings", at(SWINGS, 14, 5), {
    field: "environment",
    value: "tee",
    found: "machine",
    other: "data/blocks/2025-10.csv:4",
    rows: 12,
  }),
  "correction-applied": entry(note, "a correction that was applied", at("data/corrections.csv", 2), {
    action: "reassign",
    by: "brandt",
    on: "2026-01-12",
    reason: "wrong name at the sensor",
    rows: 12,
  }),
  "possible-set-up-change": entry(
    note,
    "a step that looks like another sensor or bat",
    at("content/athletes/ada-lund"),
    {
      athlete: "ada-lund",
      metric: "bat_speed",
      unit: "mph",
      condition: "tee, game",
      date: "2025-12-10",
      size: 2.5,
      otherSide: "still",
    },
  ),
  "limit-broken": entry(error, "work that a limit of the profile rules out", at("data/blocks/2026-01.csv", 40), {
    athlete: "ada-lund",
    date: "2026-01-12",
    word: "overload",
    swings: 20,
    decidedBy: "physiotherapist",
  }),
  "below-overload-age": entry(error, "work with a heavy bat below the facility's age for it", at(SWINGS, 212), {
    athlete: "ada-lund",
    date: "2026-01-12",
    word: "overload",
    swings: 20,
  }),
  "far-from-own-swings": entry(note, "a value far from the athlete's other swings", at(SWINGS, 212), {
    athlete: "ada-lund",
    metric: "bat_speed",
    unit: "mph",
    condition: "tee, game",
    value: 88.1,
    low: 52.3,
    high: 70.9,
  }),
  "block-count": entry(
    note,
    "a block has more or fewer swings than the log expects",
    at("data/blocks/2025-10.csv", 4),
    {
      block: "block 3",
      athlete: "ada-lund",
      date: "2025-10-06",
      expected: 15,
      found: 14,
    },
  ),
  "lost-reference": entry(
    error,
    "a reference of a text that leads to no figure",
    at("content/athletes/ada-lund/closing.md", 9),
    {
      athlete: "ada-lund",
      text: "bat_speed cage: change",
      why: "no-series",
      known: "tee game; machine game",
    },
  ),
  "figure-not-borne-out": entry(
    note,
    "a figure typed by hand that looks like a measure and is none of the season's",
    at("content/athletes/ada-lund/notes/2026-02-01.md", 7),
    { athlete: "ada-lund", found: "from 58 to 64", metric: "bat_speed", known: "58.3 to 62.1" },
  ),
  "pairs-not-told": entry(
    note,
    "a day of two devices whose clocks do not tell which ball is which swing's",
    at("data/swings/knob/2025-10.csv"),
    { athlete: "ada-lund", date: "2025-10-06", days: 2, other: "data/swings/screen/2025-10.csv" },
  ),
  "pairs-without-seconds": entry(
    note,
    "a day of two devices whose times have no seconds",
    at("data/swings/knob/2025-10.csv"),
    { athlete: "ada-lund", date: "2025-10-06", days: 1, other: "data/swings/screen/2025-10.csv" },
  ),
  // found while reporting
  "names-other-athlete": entry(error, "a page would name another athlete", at(`${PROFILE}`), {
    reader: "family",
    words: "Ben Ridge",
    other: "ben-ridge",
  }),
  "shows-birth-date": entry(error, "a page would show a day of birth", at("content/athletes/ada-lund/closing.md", 7), {
    reader: "family",
    words: "2009-05-14",
    other: "ada-lund",
  }),
  "health-word": entry(
    note,
    "a text that tells of health stays on the desk",
    at("content/athletes/ada-lund/closing.md", 9),
    {
      athlete: "ada-lund",
      word: "sprained",
    },
  ),
  "second-reader": entry(
    note,
    "a text about a minor that nobody else has read stays on the desk",
    at("content/athletes/ada-lund/notes/2026-01-20.md"),
    { athlete: "ada-lund" },
  ),
  "past-keep-until": entry(note, "data that is kept past its day", at("content/facility.md"), {
    athlete: "ada-lund",
    until: "2026-06-30",
    rows: 812,
  }),
  "minor-not-sealed": entry(note, "a minor's report lies unsealed on the host", at(PROFILE), {
    athlete: "ada-lund",
    recipients: "family",
  }),
  "facility-names-athlete": entry(error, "a text for everybody's page names an athlete", at("content/facility.md"), {
    key: "notice",
    words: "Ben Ridge",
    other: "ben-ridge",
  }),
};

/** Why a row that was read feeds no series; these stand in `_desk/ledger.csv` and in the counts of `check`. */
export const NOT_COUNTED: Readonly<Record<NotCountedReason, { readonly meaning: string; readonly remedy: string }>> = {
  "under-mark": {
    meaning: "bat speed under the athlete's mark",
    remedy: "nothing to do: the mark is set in the profile",
  },
  "no-speed-to-judge": {
    meaning: "no bat speed to hold against the mark",
    remedy: "nothing to do, or measure bat speed too",
  },
  practice: { meaning: "a practice swing", remedy: "nothing to do" },
  take: { meaning: "a pitch that was let go by", remedy: "nothing to do" },
  bunt: { meaning: "a bunt", remedy: "nothing to do" },
  check: { meaning: "a checked swing", remedy: "nothing to do" },
  "no-swing": { meaning: "neither a reading nor a result", remedy: "nothing to do, or look at the device" },
  technical: { meaning: "a technical swing, made without full effort", remedy: "nothing to do" },
  "other-season": {
    meaning: "a day outside of the season",
    remedy: "nothing to do, or look at the season's start and end",
  },
};

/** What problems of a code have in common; the code in words when nobody has written it down. */
export const meaningOf = (code: string): string =>
  (Object.hasOwn(CODES, code) ? CODES[code]?.meaning : undefined) ?? code.replaceAll("-", " ");

/** Without its suggestion an example shows what is to be done in general. */
function remedyOf(code: string, { args }: CodeEntry): string {
  const { suggestion: _, ...general } = args;
  return sayProblem({ code, args: general }).remedy;
}

function exampleOf(code: string, { at: place, args }: CodeEntry): string {
  const where = [place.file, place.line, place.column].filter((part) => part !== null).join(":");
  return `${where}  ${sayProblem({ code, args }).problem}`;
}

const LEVELS: Readonly<Record<Level, string>> = { error: "error", row: "row set aside", note: "note" };
const levelsOf = ({ levels }: CodeEntry): string => levels.map((level) => LEVELS[level]).join(" or ");

/** The list of all codes for a terminal, one paragraph each. */
export function codeLines(): string[] {
  const coded = Object.entries(CODES).flatMap(([code, entry]) => [
    `${code}  (${levelsOf(entry)})`,
    `  ${entry.meaning}`,
    `  ${remedyOf(code, entry)}`,
    `  e.g. ${exampleOf(code, entry)}`,
    "",
  ]);
  const uncounted = Object.entries(NOT_COUNTED).flatMap(([code, { meaning, remedy }]) => [
    `${code}  (row not counted)`,
    `  ${meaning}`,
    `  ${remedy}`,
    "",
  ]);
  return [...coded, ...uncounted].slice(0, -1);
}

const cell = (text: string): string => text.replaceAll("|", "\\|");

/** The same list as a page of Markdown. */
export function codesPage(): string {
  const coded = Object.entries(CODES).map(
    ([code, entry]) =>
      `| \`${code}\` | ${levelsOf(entry)} | ${cell(entry.meaning)} | ${cell(remedyOf(code, entry))} | \`${cell(exampleOf(code, entry))}\` |`,
  );
  const uncounted = Object.entries(NOT_COUNTED).map(
    ([code, { meaning, remedy }]) => `| \`${code}\` | ${cell(meaning)} | ${cell(remedy)} |`,
  );
  return [
    "# What `npm run check` may say",
    "",
    "Made from the table in `codes.ts` and the words in `messages.ts`; `npm run check -- --codes` prints it. A code never changes",
    "its name. An *error* keeps something from being used, a *row set aside* was read and counts for nothing, a *note* costs something",
    "and works.",
    "",
    "| code | kind | meaning | what to do | example |",
    "| --- | --- | --- | --- | --- |",
    ...coded,
    "",
    "## Rows that are read and not counted",
    "",
    "| code | meaning | what to do |",
    "| --- | --- | --- |",
    ...uncounted,
    "",
  ].join("\n");
}
