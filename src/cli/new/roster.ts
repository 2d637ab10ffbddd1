import { isUtf8 } from "node:buffer";
import { parse } from "csv-parse/sync";
import { distance } from "fastest-levenshtein";
import { idFromName } from "./id-from-name.ts";
import { FIELDS, type Field, type NewAthlete, newAthlete } from "./profile-fields.ts";

/** Something wrong with a roster, at a place in it. */
export interface RosterFault {
  readonly line: number;
  /** Number of the field from 1; null when the row is meant. */
  readonly column: number | null;
  readonly problem: string;
  readonly remedy: string;
}

export interface Roster {
  /** In the order of the file, each with the line it stands on. */
  readonly athletes: readonly (NewAthlete & { readonly line: number })[];
  readonly faults: readonly RosterFault[];
  /** Columns that are not read, as they are called. */
  readonly unknown: readonly { readonly column: string; readonly suggestion: string | null }[];
}

/** Other names that rosters have for our columns. */
const ALSO: Readonly<Record<string, Field>> = {
  "full name": "name",
  athlete: "name",
  player: "name",
  nombre: "name",
  birthdate: "born",
  "birth date": "born",
  "date of birth": "born",
  dob: "born",
  "birth year": "born",
  alias: "aliases",
  nickname: "aliases",
  position: "positions",
  "game bat": "game_bat",
  parent: "guardian",
  team: "group",
};

const plain = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, " ");

function fieldOf(name: string): Field | null {
  const wanted = plain(name);
  return FIELDS.find((field) => plain(field) === wanted) ?? ALSO[wanted] ?? null;
}

function meant(name: string, taken: readonly (Field | null)[]): string | null {
  const free = FIELDS.filter((field) => !taken.includes(field));
  return free.find((field) => distance(plain(name), plain(field)) <= (field.length > 5 ? 2 : 1)) ?? null;
}

interface Row {
  readonly record: readonly string[];
  readonly info: { readonly lines: number };
}

function rowsOf(text: string): Row[] {
  const [first = ""] = text.split(/\r?\n/, 1);
  const delimiter = [";", "\t", "|"].find((mark) => first.split(mark).length > first.split(",").length) ?? ",";
  const options = { bom: true, delimiter, relax_column_count: true, skip_empty_lines: true, info: true } as const;
  return parse(text, options) as unknown as Row[];
}

/** A roster that could not be read at all. */
const unread = (problem: string, remedy: string): Roster => ({
  athletes: [],
  faults: [{ line: 1, column: null, problem, remedy }],
  unknown: [],
});

/**
 * Reads a roster: columns `name` and any of the others, in any order. Everything wrong comes at once; a row that is wrong makes no
 * athlete. Two rows that would become one athlete are both named, and neither is made.
 */
export function readRoster(bytes: Uint8Array): Roster {
  const text = isUtf8(bytes) ? new TextDecoder("utf-8").decode(bytes) : new TextDecoder("windows-1252").decode(bytes);
  let rows: Row[];
  try {
    rows = rowsOf(text);
  } catch (error) {
    const { lines } = error as { lines?: number };
    const at = lines === undefined ? "" : ` near line ${lines}`;
    return unread(`the quotation marks do not match${at}`, "close every quotation mark");
  }
  const header = rows[0]?.record ?? [];
  const fields = header.map(fieldOf);
  if (!fields.includes("name"))
    return unread("there is no column name", "begin the file with a line as: name,born,bats,throws");
  const twice = fields.find((field, at) => field !== null && fields.indexOf(field) !== at);
  if (twice) return unread(`two columns hold ${twice}`, "keep one of them");
  const unknown = header.flatMap((column, at) =>
    fields[at] === null && column.trim() !== "" ? [{ column: column.trim(), suggestion: meant(column, fields) }] : [],
  );
  const faults: RosterFault[] = [];
  const athletes: Roster["athletes"][number][] = [];
  for (const { record, info } of rows.slice(1)) {
    if (record.every((cell) => cell.trim() === "")) continue;
    // The line on which the record ends, less those inside its cells.
    const line = info.lines - record.reduce((breaks, text) => breaks + text.split("\n").length - 1, 0);
    const written = Object.fromEntries(
      fields.flatMap((field, at) => (field === null ? [] : [[field, record[at] ?? ""] as const])),
    );
    const made = newAthlete(written);
    const place = (field: string) => ({ line, column: fields.indexOf(field as Field) + 1 || null });
    faults.push(...made.faults.map(({ field, problem, remedy }) => ({ ...place(field), problem, remedy })));
    if (made.athlete) athletes.push({ ...made.athlete, line });
  }
  const { alone, collisions } = withoutCollisions(athletes);
  return { athletes: alone, faults: [...faults, ...collisions].sort((a, b) => a.line - b.line), unknown };
}

function withoutCollisions(athletes: Roster["athletes"]): { alone: Roster["athletes"]; collisions: RosterFault[] } {
  const lines = new Map<string, number[]>();
  for (const { id, line } of athletes) lines.set(id, [...(lines.get(id) ?? []), line]);
  const collisions = athletes.flatMap(({ id, line, profile }) => {
    const others = (lines.get(id) ?? []).filter((other) => other !== line);
    if (others.length === 0) return [];
    return [
      {
        line,
        column: null,
        problem: `${profile.name} would be ${id}, and so would line ${others.join(", line ")}`,
        remedy: idFromName(profile.name) === id ? "give each an id of its own in a column id" : "choose another id",
      },
    ];
  });
  return { alone: athletes.filter(({ id }) => lines.get(id)?.length === 1), collisions };
}
