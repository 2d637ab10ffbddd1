import { describe, expect, test } from "vitest";
import { brokenLimits } from "../../src/report/limits.ts";
import type { Profile } from "../../src/schema/profile.ts";
import type { LoggedBlock } from "../../src/schema/season.ts";
import { input, type Rep, weekLater } from "./season.ts";

const BATS = [
  { id: "b-33", length_in: 33, weight_oz: 30 },
  { id: "b-heavy", length_in: 33, weight_oz: 36 },
  { id: "b-named", role: "overload" },
];
const broken = (
  reps: readonly Rep[],
  profile: Partial<Profile>,
  more: { log?: LoggedBlock[]; fromAge?: number } = {},
) => {
  const { season, athlete } = input(reps, {
    season: { implements: BATS },
    athlete: { profile: { name: "Invented One", game_bat: "b-33", ...profile }, log: more.log ?? [] },
  });
  const facility = { ...season.facility, ...(more.fromAge === undefined ? {} : { overload_from_age: more.fromAge }) };
  return brokenLimits(athlete, { ...season, facility }, ["data/swings/a.csv"]);
};
const swing = (week: number, more: object = {}): Rep => ({ date: weekLater(week), environment: "tee", ...more });
const LIMITS: Profile["limits"] = [
  { from: weekLater(2), to: weekLater(4), none_of: ["overload", "max"], decided_by_role: "physiotherapist" },
];

describe("a limit of the profile", () => {
  test("is broken by a bat of that role, by one that is heavy against the game bat, and by effort; once a day and word", () => {
    const reps = [
      swing(3, { implement: "b-heavy" }),
      swing(3, { implement: "b-heavy" }),
      swing(3, { implement: "b-named" }),
      swing(4, { implement: "b-33", effort: "max" }),
      swing(3, { implement: "b-33", effort: "game" }),
    ];
    expect(broken(reps, { limits: LIMITS })).toEqual([
      {
        athlete: "invented-one",
        date: weekLater(3),
        word: "overload",
        rule: "limit",
        decidedBy: "physiotherapist",
        swings: 3,
        at: { file: "data/swings/a.csv", line: 2 },
      },
      expect.objectContaining({ date: weekLater(4), word: "max", swings: 1 }),
    ]);
  });

  test("holds from its first day to its last and on no other", () => {
    const weeks = [1, 2, 4, 5].map((week) => swing(week, { effort: "max" }));
    expect(broken(weeks, { limits: LIMITS }).map(({ date }) => date)).toEqual([weekLater(2), weekLater(4)]);
    const open = [{ from: weekLater(2), none_of: ["max"] }];
    expect(broken(weeks, { limits: open })).toHaveLength(3);
    expect(broken(weeks, {})).toEqual([]);
  });

  test("is broken by a block of the log that nobody measured, and not twice by one that was", () => {
    const block = (assigned: LoggedBlock["assigned"]): LoggedBlock => ({
      date: weekLater(3),
      session: null,
      block: "1",
      part: null,
      context: { environment: "dry", implement: "b-named" },
      rounds: 2,
      reps: 10,
      swings: 20,
      measured: "none",
      assigned,
      from: [{ file: "data/blocks/a.csv", line: 5 }],
    });
    expect(broken([], { limits: LIMITS }, { log: [block({})] })).toMatchObject([
      { word: "overload", swings: 20, at: { file: "data/blocks/a.csv", line: 5 } },
    ]);
    expect(broken([], { limits: LIMITS }, { log: [block({ number: 20 })] })).toEqual([]);
  });
});

describe("the facility's age for heavy bats", () => {
  const reps = [
    swing(3, { implement: "b-heavy" }),
    swing(12, { implement: "b-heavy" }),
    swing(3, { implement: "b-33" }),
  ];

  test("rules out heavy bats until the birthday, whatever the profile says", () => {
    expect(broken(reps, { born: "2011-12-01" }, { fromAge: 14 })).toMatchObject([
      { rule: "age", date: weekLater(3), word: "overload", decidedBy: null },
    ]);
    expect(broken(reps, { born: "2011-09-01" }, { fromAge: 14 })).toEqual([]);
  });

  test("says nothing of an athlete whose birthday is not on file", () => {
    expect(broken(reps, { born: 2014 }, { fromAge: 14 })).toEqual([]);
    expect(broken(reps, {}, { fromAge: 14 })).toEqual([]);
  });
});
