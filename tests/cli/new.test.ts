import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { facilityPage } from "../../src/cli/new/facility-page.ts";
import { idFromName } from "../../src/cli/new/id-from-name.ts";
import { madeLines } from "../../src/cli/new/made-lines.ts";
import { makeFolders } from "../../src/cli/new/make-folders.ts";
import { newAthlete } from "../../src/cli/new/profile-fields.ts";
import { lacksOf, profilePage } from "../../src/cli/new/profile-page.ts";
import { readRoster } from "../../src/cli/new/roster.ts";
import { splitFrontMatter } from "../../src/intake/front-matter.ts";
import { readYaml } from "../../src/intake/yaml-text.ts";
import { Facility } from "../../src/schema/facility.ts";
import { Profile } from "../../src/schema/profile.ts";
import { Id } from "../../src/schema/text.ts";
import { type Entry, memoryDisk } from "../intake/memory-disk.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
/** Front matter as intake reads it. */
function front(page: string): unknown {
  const parts = splitFrontMatter(page);
  const read = parts.kind === "found" ? readYaml("profile.md", parts.yaml, parts.yamlLine) : null;
  return read && "data" in read ? read.data : null;
}

describe("an id made from a name", () => {
  test.each([
    ["Ada Lund", "ada-lund"],
    ["José Núñez-Østby", "jose-nunez-ostby"],
    ["Straße, Łukasz Đorđe", "strasse-lukasz-dorde"],
    ["Ray O'Neil  Jr.", "ray-oneil-jr"],
    ["ＡＤＡ Lund", "ada-lund"],
    ["  ", ""],
    ["山田 太郎", ""],
  ])("%s is %s", (name, id) => {
    expect(idFromName(name)).toBe(id);
  });

  test("is an id or nothing, and that of the same name written otherwise in Unicode", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (name) => {
        const id = idFromName(name);
        expect(id === "" || Id.safeParse(id).success).toBe(true);
        expect(idFromName(name.normalize("NFD"))).toBe(id);
        expect(idFromName(id)).toBe(id);
      }),
    );
  });
});

describe("a profile that is written", () => {
  const name = fc.oneof(
    fc.constantFrom(
      "no",
      "14",
      "2010-05-14",
      "null",
      "~",
      "# x",
      "a: b",
      "'",
      '"',
      "- x",
      "Ana Lindqvist",
      "{a}",
      "!x",
      "&y",
      "*z",
      "---",
    ),
    fc.string({ unit: "grapheme", minLength: 1 }).filter((text) => /^[^\p{C}\p{Z}]+$/u.test(text)),
  );

  test("reads back as what it was, whatever a name looks like", () => {
    fc.assert(
      fc.property(name, fc.array(name, { minLength: 1, maxLength: 3 }), name, (full, aliases, level) => {
        const profile = Profile.parse({ name: full, aliases, level, born: 2010, bats: "left", joined: "2025-10-06" });
        expect(Profile.parse(front(profilePage(profile)))).toEqual(profile);
      }),
    );
  });

  test("holds no consent, and shows what is missing as comments", () => {
    const { athlete } = newAthlete({
      name: "Ada Lund",
      born: "2010-05-14",
      bats: "L",
      guardian: "Mum & Dad",
      aliases: "14;A. Lund",
    });
    const page = profilePage(athlete?.profile ?? { name: "" });
    expect(front(page)).toEqual({
      name: "Ada Lund",
      aliases: ["14", "A. Lund"],
      born: "2010-05-14",
      bats: "left",
      recipients: [{ id: "family-1", reader: "family", label: "Mum & Dad" }],
    });
    expect(page).toContain("\n# consent: [");
    expect(lacksOf(athlete?.profile ?? {}).map(({ what }) => what)).toEqual(["consent", "level", "game bat", "goals"]);
  });

  test("shows lines that are right once they are filled in", () => {
    const filled = lacksOf({})
      .map(({ line }) => line.replaceAll("yyyy-mm-dd", "2025-10-06"))
      .join("\n");
    expect(() => Profile.parse({ name: "Ada", ...parse(filled) })).not.toThrow();
    const page = facilityPage({ name: "Barn", "season-name": "W", start: "2025-10-06", end: "2026-02-22" }).page ?? "";
    const open = page.split("\n").flatMap((line) => /^# (\w+: .*)$/.exec(line)?.[1] ?? []);
    expect(open.length).toBeGreaterThan(4);
    expect(() => Facility.parse({ ...(front(page) as object), ...parse(open.join("\n")) })).not.toThrow();
  });
});

test("a facility without its season is refused, key by key", () => {
  expect(facilityPage({ name: "Barn", start: "6.10.2025" }).faults.map(({ field }) => field)).toEqual([
    "season-name",
    "start",
    "end",
  ]);
});

describe("a roster", () => {
  test("makes athletes from any of its columns, and names those it does not know", () => {
    const roster = readRoster(
      bytes("\ufeffName;DOB;Bats;Shirt;levl;Team\nAda Lund;2010-05-14;S;M;hs;U12 Red\nBo Fenn;;;;;\n"),
    );
    expect(roster.faults).toEqual([]);
    expect(roster.athletes).toMatchObject([
      { id: "ada-lund", line: 2, group: "u12-red", profile: { name: "Ada Lund", born: "2010-05-14", bats: "switch" } },
      { id: "bo-fenn", line: 3, group: null, profile: { name: "Bo Fenn" } },
    ]);
    expect(roster.unknown).toEqual([
      { column: "Shirt", suggestion: null },
      { column: "levl", suggestion: "level" },
    ]);
  });

  test("says every mistake with its place, and makes nobody of a row that is wrong", () => {
    const roster = readRoster(bytes('name,born,bats\n"Ada\nLund",14/02/2012,X\n,2010,\nCy Dunn,2010,L\n'));
    expect(roster.faults.map(({ line, column }) => [line, column])).toEqual([
      [2, 2],
      [2, 3],
      [4, 1],
    ]);
    expect(roster.athletes.map(({ id }) => id)).toEqual(["cy-dunn"]);
  });

  test("never merges two who would have one folder: both are named, neither is made", () => {
    const roster = readRoster(bytes("name,id\nJosé Núñez,\nJose Nunez,\nAda,x\nBea,x\nCy,\n"));
    expect(roster.athletes.map(({ id }) => id)).toEqual(["cy"]);
    expect(roster.faults.map(({ line }) => line)).toEqual([2, 3, 4, 5]);
    expect(roster.faults[0]?.problem).toContain("line 3");
  });

  test.each([
    ["no name", "who,born\nAda,2010\n"],
    ["an unclosed quotation mark", 'name\n"Ada\n'],
    ["one column twice", "name,player\nAda,Ada\n"],
    ["nothing", ""],
  ])("with %s is refused in a sentence", (_, text) => {
    const { athletes, faults } = readRoster(bytes(text));
    expect(athletes).toEqual([]);
    expect(faults).toHaveLength(1);
  });
});

describe("folders", () => {
  const forty = readRoster(
    bytes(
      `name,bats\n${Array.from({ length: 40 }, (_, i) => `Hitter ${"abcdefghij"[i % 10]}${"wxyz"[i % 4]}${i},L`).join("\n")}\n`,
    ),
  ).athletes;

  test("for forty athletes are made in one step, and each that lacks something is listed", async () => {
    const entries = new Map<string, Entry>();
    const made = await makeFolders(forty, "/season/content", memoryDisk(entries));
    expect(entries.size).toBe(40);
    for (const text of entries.values()) expect(() => Profile.parse(front(String(text)))).not.toThrow();
    const lines = madeLines(made);
    expect(lines[0]).toBe("Made 40 folders under content/athletes.");
    for (const { id } of forty)
      expect(lines).toContain(`  ${id}: consent, birth date, level, game bat, names in exports, goals`);
    expect(lines.join("\n")).toMatch(/consent +40 of 40 {2}nothing is published/);
  });

  test("that are there stay as they are, to the byte, and one of somebody else is pointed out", async () => {
    const first = forty[0];
    const second = forty[1];
    if (!first || !second) throw new Error("the roster is empty");
    const own = `---\nname: ${first.profile.name.toUpperCase()}\n---\nMine.\n`;
    const entries = new Map<string, Entry>([
      [`/season/content/athletes/${first.id}/profile.md`, own],
      [`/season/content/athletes/${second.id}/profile.md`, "---\nname: Zed\n---\n"],
    ]);
    const made = await makeFolders([first, second], "/season/content", memoryDisk(entries));
    expect(made).toEqual({
      made: [],
      there: [
        { id: first.id, name: null },
        { id: second.id, name: second.profile.name },
      ],
    });
    expect(entries.get(`/season/content/athletes/${first.id}/profile.md`)).toBe(own);
    expect(madeLines(made).join("\n")).toContain(`give ${second.profile.name} another id`);
  });
});
