import { Profile } from "../../schema/profile.ts";
import { Id } from "../../schema/text.ts";
import { foldedName, idFromName } from "./id-from-name.ts";

/** An athlete as a person writes one down: text by key, nothing for a key that is blank. */
export type Written = Readonly<Record<string, string | undefined>>;

/** Keys of a roster or of flags -> what they are. `group` is kept by the facility, everything else by the profile. */
export const FIELDS = [
  "name",
  "id",
  "born",
  "sport",
  "level",
  "sex",
  "bats",
  "throws",
  "aliases",
  "positions",
  "joined",
  "game_bat",
  "language",
  "guardian",
  "group",
] as const;
export type Field = (typeof FIELDS)[number];

/** What is wrong with one key. */
export interface FieldFault {
  readonly field: string;
  readonly problem: string;
  readonly remedy: string;
}

export interface NewAthlete {
  readonly id: string;
  readonly profile: Profile;
  readonly group: string | null;
}

/** Short ways to write a side or a sex. */
const SHORT: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  bats: { l: "left", r: "right", s: "switch", b: "switch", both: "switch" },
  throws: { l: "left", r: "right", b: "both", s: "both", switch: "both" },
  sex: { f: "female", m: "male", girl: "female", boy: "male" },
};
const LOWER = new Set(["sport", "sex", "bats", "throws", "language"]);

const FORMS: Readonly<Record<string, string>> = {
  born: "write the day as 2010-05-14, or the year alone",
  sport: "write baseball, softball or other",
  sex: "write female or male",
  bats: "write left, right or switch (or L, R, S)",
  throws: "write left, right or both (or L, R)",
  joined: "write the day as 2025-10-06",
  game_bat: "write the bat's id of data/implements.csv, or the id and the day as game-33 from 2025-10-06",
  language: "write two letters, as en or es",
  id: "use lower-case letters, digits and hyphens, and begin with a letter or digit",
  group: "use lower-case letters, digits and hyphens",
};

const list = (text: string | undefined): string[] | undefined => {
  const parts = (text ?? "")
    .split(/[;|]/)
    .map((part) => part.trim())
    .filter((part) => part !== "");
  return parts.length > 0 ? parts : undefined;
};

function plainValue(field: string, text: string): string {
  const plain = LOWER.has(field) ? text.toLowerCase() : text;
  return SHORT[field]?.[plain] ?? plain;
}

/** `game-33`, or `game-33 from 2025-10-06`. */
function gameBat(text: string): unknown {
  const [, id, from] = /^(\S+) from (\S+)$/.exec(text) ?? [];
  return id !== undefined && from !== undefined ? [{ id, from }] : text;
}

/**
 * Makes a profile from text. Consent is nobody's to write but theirs who give it: a guardian's name becomes the label of the
 * family's link and no more.
 *
 * @param written list-like cells are cut at `;` or `|`
 */
export function newAthlete(written: Written): { athlete: NewAthlete | null; faults: FieldFault[] } {
  const text = (field: Field) => {
    const given = written[field]?.trim().replaceAll(/\s+/g, " ");
    return given === undefined || given === "" ? undefined : plainValue(field, given);
  };
  const name = text("name");
  if (name === undefined)
    return {
      athlete: null,
      faults: [{ field: "name", problem: "there is no name", remedy: "write the athlete's name" }],
    };
  const id = text("id") ?? idFromName(name);
  const faults: FieldFault[] = [];
  if (id === "")
    faults.push({ field: "id", problem: `no id can be made from "${name}"`, remedy: "give an id in Latin letters" });
  else if (!Id.safeParse(id).success) faults.push({ field: "id", problem: `"${id}" is no id`, remedy: FORMS.id ?? "" });
  const born = text("born");
  const guardian = text("guardian");
  const bat = text("game_bat");
  const aliases = list(written.aliases)?.filter((alias) => ![name, id].map(foldedName).includes(foldedName(alias)));
  const profile = {
    name,
    aliases: aliases && aliases.length > 0 ? aliases : undefined,
    born: born !== undefined && /^\d{4}$/.test(born) ? Number(born) : born,
    sport: text("sport"),
    level: text("level"),
    sex: text("sex"),
    bats: text("bats"),
    throws: text("throws"),
    positions: list(written.positions),
    game_bat: bat === undefined ? undefined : gameBat(bat),
    joined: text("joined"),
    language: text("language"),
    recipients: guardian === undefined ? undefined : [{ id: "family-1", reader: "family", label: guardian }],
  };
  const present = Object.fromEntries(Object.entries(profile).filter(([, value]) => value !== undefined));
  const parsed = Profile.safeParse(present);
  for (const field of new Set(parsed.error?.issues.map(({ path }) => String(path[0])) ?? [])) {
    const found = written[field] ?? "";
    faults.push({ field, problem: `${field} is "${found}"`, remedy: FORMS[field] ?? "write it otherwise" });
  }
  const groupName = text("group");
  const group = groupName === undefined ? null : idFromName(groupName);
  if (group === "")
    faults.push({
      field: "group",
      problem: `no id can be made from the group "${groupName}"`,
      remedy: FORMS.group ?? "",
    });
  if (faults.length > 0 || !parsed.success) return { athlete: null, faults };
  return { athlete: { id, profile: parsed.data, group }, faults: [] };
}
