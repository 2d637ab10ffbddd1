import { expect, test } from "vitest";
import { wholeYears } from "../../src/report/calendar.ts";
import { displayName, isGrowing, isMinor } from "../../src/report/person.ts";
import { publicationFor } from "../../src/report/publication.ts";
import type { Consent } from "../../src/schema/profile.ts";

const asOf = "2026-02-22";
const guardian: Consent = { by: "guardian", as: "guardian", on: "2025-10-01", readers: ["family", "club"] };
const self: Consent = { ...guardian, by: "self", as: "self" };

test.each([
  ["the day before the 18th birthday", "2008-02-23", true],
  ["the 18th birthday", "2008-02-22", false],
  ["a birth year whose 18th birthday falls in this year", 2008, true],
  ["a birth year before that", 2007, false],
  ["no birth date on file", undefined, true],
])("minor or not: %s", (_, born, expected) => {
  expect(isMinor(born, asOf)).toBe(expected);
});

test.each([
  ["the day before the 10th birthday", "2016-02-23", false],
  ["the 10th birthday", "2016-02-22", true],
  ["the last day of being 16, which is the season's last", "2009-02-23", true],
  ["17 since the season began", "2008-10-06", false],
  ["17 in mid-season", "2008-12-01", true],
  ["a birth year that leaves 9 or 10", 2016, null],
  ["a birth year of 10 or 11", 2015, true],
  ["a birth year that leaves 16 or 17 as the season begins", 2008, null],
  ["a birth year of 17 or more", 2007, false],
  ["a birth year of 9 or less", 2017, false],
  ["no birth date on file", undefined, null],
])("growing or not: %s", (_, born, expected) => {
  expect(isGrowing(born, asOf, "2025-10-06")).toBe(expected);
});

test("birthdays on 29 February count from 1 March in other years", () => {
  expect([wholeYears("2008-02-29", "2026-02-28"), wholeYears("2008-02-29", "2026-03-01")]).toEqual([17, 18]);
});

test("a minor is shown with first name and initial, an adult in full", () => {
  expect(displayName("Ada Marie Brook", true)).toBe("Ada B.");
  expect(displayName("Ada Marie Brook", false)).toBe("Ada Marie Brook");
  expect(displayName("Ada", true)).toBe("Ada");
});

test.each<[string, Consent[], boolean, object]>([
  ["nobody was asked", [], true, { publish: false, why: "no-consent" }],
  ["a guardian agreed for a minor", [guardian], true, { publish: true, as: "guardian", agreedOn: "2025-10-01" }],
  ["a minor's own word is not enough", [self], true, { publish: false, why: "needs-guardian" }],
  ["an adult agreed", [self], false, { publish: true, as: "self" }],
  ["a guardian's word ends with the athlete's minority", [guardian], false, { publish: false, why: "needs-own" }],
  ["a word was taken back", [{ ...guardian, withdrawn: "2026-01-01" }], true, { publish: false, why: "withdrawn" }],
  ["a word has ended", [{ ...guardian, until: "2026-02-21" }], true, { publish: false, why: "ended" }],
  ["a word holds on its last day", [{ ...guardian, until: asOf }], true, { publish: true }],
  ["a word for the club only", [{ ...guardian, readers: ["club"] }], true, { publish: false, why: "no-consent" }],
  [
    "a word that covers peers alone",
    [{ ...guardian, covers: ["peers"] }],
    true,
    { publish: false, why: "not-covered" },
  ],
  ["a word that covers the numbers", [{ ...guardian, covers: ["numbers"] }], true, { publish: true }],
  ["a second word after one taken back", [{ ...guardian, withdrawn: "2026-01-01" }, guardian], true, { publish: true }],
])("publishing to the family: %s", (_, consents, minor, expected) => {
  expect(publicationFor(consents, minor, "family", asOf)).toMatchObject(expected);
});
