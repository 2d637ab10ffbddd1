import { expect, test } from "vitest";
import { CLUB_FIELDS } from "../../src/report/club.allow.ts";
import { FAMILY_FIELDS } from "../../src/report/family.allow.ts";
import { forReader } from "../../src/report/reader.ts";
import { reportFor } from "../../src/report/report.ts";
import { input, weekLater } from "./season.ts";

const note = (name: string, readers: ("family" | "club")[] | undefined) => ({
  file: `content/athletes/invented-one/notes/${name}.md`,
  front: { date: "2025-11-03", author: "coach-a", kind: "observation" as const, ...(readers ? { readers } : {}) },
  body: name,
  bodyLine: 6,
  images: {},
});

const { report } = reportFor(
  input(
    [0, 1, 2].map((week) => ({ date: weekLater(week), bat_speed: 60 + week })),
    {
      athlete: {
        profile: {
          name: "Ada Brook",
          born: "2012-05-14",
          sex: "female",
          masses: [{ date: "2025-10-06", lb: 100 }],
          heights: [{ date: "2025-10-06", in: 60 }],
          goals: [{ metric: "bat_speed", target: 66, by: "2026-02-20" }],
        },
        notes: [note("desk-only", undefined), note("for-family", ["family"]), note("for-both", ["family", "club"])],
      },
    },
  ),
);

test("a note without readers never leaves the desk, others go to their readers only", () => {
  expect(report.notes.map((one) => one.body)).toEqual(["desk-only", "for-both", "for-family"]);
  expect(forReader(report, "family").notes.map((one) => one.body)).toEqual(["for-both", "for-family"]);
  expect(forReader(report, "club").notes.map((one) => one.body)).toEqual(["for-both"]);
});

test("a minor's body mass stays on the desk", () => {
  expect(report.athlete.masses).toHaveLength(1);
  expect(forReader(report, "family").athlete.masses).toEqual([]);
  expect(forReader(report, "family").athlete.heights).toHaveLength(1);
});

test("a field that is on no list is emptied", () => {
  expect(report.athlete.sex).toBe("female");
  expect(forReader(report, "family").athlete.sex).toBeNull();
});

test("the club reads no goals, and the series keep their places", () => {
  const club = forReader(report, "club");
  expect(club.goals).toEqual([]);
  expect(club.series).toEqual(report.series);
});

test("every field on a reader's list exists in the report", () => {
  for (const field of [...FAMILY_FIELDS, ...CLUB_FIELDS]) {
    const found = field.split(".").reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], report);
    expect(found, field).not.toBeUndefined();
  }
});
