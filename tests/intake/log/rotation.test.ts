import { describe, expect, test } from "vitest";
import { balance } from "../season-of.ts";
import { type Mishaps, type Planned, seasonOfLane, seeded, sightings } from "./cage.ts";

const PLAN: readonly Planned[] = [
  { block: "1", rounds: 3, reps: 5 },
  { block: "2", rounds: 4, reps: 4 },
];

/** What became of the sightings: given to the right hitter, bat and block, to another, or set aside. */
async function told(mishaps: Mishaps, seed: number) {
  const seen = sightings(PLAN, mishaps, seeded(seed));
  const season = await seasonOfLane(seen, PLAN);
  const { read, kept, setAside } = balance(season);
  expect(read).toBe(seen.length);
  expect(kept + setAside).toBe(read);
  expect(season.setAside.every(({ reason, athlete }) => reason === "unassigned-block" && athlete === null)).toBe(true);
  let right = 0;
  let rounds = { right: 0, told: 0 };
  for (const { id, reps } of season.athletes) {
    for (const [i, line] of reps.line.entries()) {
      const truth = seen[line - 2];
      const { block, implement } = reps.words;
      const same = truth?.athlete === id && truth.block === block?.[i] && truth.bat === implement?.[i];
      if (same) right++;
      const round = reps.numbers.round?.[i] ?? null;
      if (same && round !== null)
        rounds = { right: rounds.right + (round === truth.round ? 1 : 0), told: rounds.told + 1 };
    }
  }
  return { read, kept, right, rounds };
}

async function many(mishaps: Mishaps, days: number) {
  const sum = { read: 0, kept: 0, right: 0, rounds: { right: 0, told: 0 } };
  for (let seed = 1; seed <= days; seed++) {
    const day = await told(mishaps, seed);
    sum.read += day.read;
    sum.kept += day.kept;
    sum.right += day.right;
    sum.rounds.right += day.rounds.right;
    sum.rounds.told += day.rounds.told;
  }
  return {
    assigned: sum.kept / sum.read,
    right: sum.right / sum.kept,
    rounds: sum.rounds.right / sum.rounds.told,
    sum,
  };
}

describe("three hitters rotating round by round in one lane, bats alternating, under no names (known truth)", () => {
  test("a day that went to plan is told apart to the last swing", async () => {
    const day = await told({ missed: 0, waggle: 0, leftOut: 0 }, 7);
    expect(day).toEqual({ read: 186, kept: 186, right: 186, rounds: { right: 186, told: 186 } });
  });

  test.each([
    ["a sensor that misses swings and takes waggles for swings", { missed: 0.04, waggle: 0.03, leftOut: 0 }],
    ["hitters who leave out a round now and then", { missed: 0.03, waggle: 0.02, leftOut: 0.04 }],
    ["a bad sensor", { missed: 0.12, waggle: 0.08, leftOut: 0.02 }],
  ])("%s: at least 98 % of what is assigned is right, the rest is set aside", async (_, mishaps) => {
    const { assigned, right, rounds } = await many(mishaps, 10);
    expect(right).toBeGreaterThanOrEqual(0.98);
    expect(rounds).toBeGreaterThanOrEqual(0.98);
    expect(assigned).toBeGreaterThan(0.6);
  });
});
