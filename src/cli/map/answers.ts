import type { Answers } from "../../build.ts";
import { EXIT, Stopped } from "../../publish/stopped.ts";
import { DELIMITERS, type Delimiter, ENCODINGS, type Encoding } from "../../schema/mapping.ts";
import type { Flags } from "../flags.ts";

/** Answers that can be added to while questions are asked. */
export interface Growing extends Answers {
  readonly columns: Map<string, { field: string; unit: string | null } | null>;
  dateForm: string | null;
  timeForm: string | null;
  readonly words: Map<string, Map<string, string>>;
  readonly fixed: Map<string, string>;
  decimal: "." | "," | null;
}

/** What answers are held against. */
export interface Possible {
  readonly names: readonly string[];
  readonly fields: readonly string[];
  unitsOf(field: string): readonly string[];
}

const wrong = (problem: string, remedy: string) => new Stopped(EXIT.usage, problem, remedy);

const oneOf = <T extends string>(
  flags: Flags,
  name: string,
  list: readonly T[],
  also: Record<string, T> = {},
): T | null => {
  const given = flags.texts[name];
  if (given === undefined) return null;
  const found = list.find((one) => one === given) ?? also[given.toLowerCase()];
  if (found === undefined)
    throw wrong(
      `--${name} is "${given}"`,
      `write one of: ${[...list.map((one) => (one === "\t" ? "tab" : one))].join("  ")}`,
    );
  return found;
};

/** What flags say of how the file is written. */
export const toldBy = (flags: Flags) => ({
  delimiter: oneOf<Delimiter>(flags, "delimiter", DELIMITERS, { tab: "\t", comma: ",", semicolon: ";", bar: "|" }),
  encoding: oneOf<Encoding>(flags, "encoding", ENCODINGS, {
    utf8: "utf-8",
    "utf-16": "utf-16le",
    ansi: "windows-1252",
  }),
  sheet: flags.texts.sheet ?? null,
});

function columnNamed(name: string, { names }: Possible, flag: string): string {
  const wanted = name.trim();
  if (names.includes(wanted)) return wanted;
  throw wrong(`${flag}: the file has no column "${wanted}"`, `its columns are: ${names.join(", ")}`);
}

/** `NAME=FIELD[:UNIT]`; a name may hold "=" itself. */
function columnAnswer(text: string, possible: Possible): [string, { field: string; unit: string | null }] {
  const at = text.lastIndexOf("=");
  if (at < 1) throw wrong(`--column is "${text}"`, 'write it as "Barrel m/s=bat_speed:m/s"');
  const name = columnNamed(text.slice(0, at), possible, "--column");
  const [field = "", unit = null] = text
    .slice(at + 1)
    .trim()
    .split(/:(.*)/);
  if (!possible.fields.includes(field))
    throw wrong(`--column: there is no field "${field}"`, `fields are: ${possible.fields.join(", ")}`);
  const units = possible.unitsOf(field);
  if (unit !== null && !units.includes(unit)) {
    const remedy = units.length > 0 ? `write one of: ${units.join(", ")}` : "leave the unit out";
    throw wrong(`--column: ${field} cannot be in "${unit}"`, remedy);
  }
  return [name, { field, unit }];
}

/** `NAME:WORD=OURS`; the longest column name that fits is the one that is meant. */
function wordAnswer(text: string, possible: Possible): [string, string, string] {
  const at = text.lastIndexOf("=");
  const before = text.slice(0, Math.max(0, at));
  const name = possible.names
    .filter((one) => before.startsWith(`${one}:`))
    .sort((one, other) => other.length - one.length)[0];
  if (at < 1 || name === undefined)
    throw wrong(
      `--words is "${text}"`,
      'write it as "Outcome:struck=hit", with a column of this file before the colon',
    );
  return [name, before.slice(name.length + 1).trim(), text.slice(at + 1).trim()];
}

function fixedAnswer(text: string, { fields }: Possible): [string, string] {
  const [field = "", value = ""] = text.split(/=(.*)/s);
  if (!text.includes("=") || value.trim() === "") throw wrong(`--fixed is "${text}"`, "write it as environment=tee");
  if (!fields.includes(field.trim()) || field === "date_time")
    throw wrong(
      `--fixed: there is no field "${field}"`,
      `fields are: ${fields.filter((one) => one !== "date_time").join(", ")}`,
    );
  return [field.trim(), value.trim()];
}

/**
 * Answers that flags give.
 *
 * @throws {Stopped} with exit status 2 when a flag names what the file does not have
 */
export function answersBy(flags: Flags, possible: Possible): Growing {
  const columns = new Map<string, { field: string; unit: string | null } | null>();
  const held = new Map<string, string>();
  for (const text of flags.list("column")) {
    const [name, told] = columnAnswer(text, possible);
    const other = held.get(told.field);
    if (other !== undefined && other !== name)
      throw wrong(`--column: "${other}" and "${name}" cannot both be ${told.field}`, "ignore one of them");
    held.set(told.field, name);
    columns.set(name, told);
  }
  for (const name of flags.list("ignore")) columns.set(columnNamed(name, possible, "--ignore"), null);
  const words = new Map<string, Map<string, string>>();
  for (const text of flags.list("words")) {
    const [name, word, ours] = wordAnswer(text, possible);
    words.set(name, (words.get(name) ?? new Map()).set(word, ours));
  }
  return {
    columns,
    words,
    fixed: new Map(flags.list("fixed").map((text) => fixedAnswer(text, possible))),
    dateForm: flags.texts["date-form"] ?? null,
    timeForm: flags.texts["time-form"] ?? null,
    decimal: oneOf(flags, "decimal", [".", ","] as const, { point: ".", comma: "," }),
  };
}
