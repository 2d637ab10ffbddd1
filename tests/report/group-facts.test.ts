import { describe, expect, test } from "vitest";
import { groupOf } from "../../src/report/change/group-of.ts";
import { reboundOf } from "../../src/report/change/rebound.ts";
import { noiseOf, testScatter, worthOf } from "../../src/report/change/yardsticks.ts";
import { factKey, type GroupFact, groupFacts } from "../../src/report/group-facts.ts";
import { reportFor } from "../../src/report/report.ts";
import type { Facility } from "../../src/schema/facility.ts";
import { BUILT_IN_METRICS } from "../../src/schema/metric.ts";
import type { AthleteSeason } from "../../src/schema/season.ts";
import { randomFrom } from "../demo/random.ts";
import { input, type Rep, table, weekLater } from "./season.ts";

const { season } = input([]);
const facility: Facility = {
  ...season.facility,
  season: {
    ...season.facility.season,
    baseline: { from: "2025-10-06", to: "2025-10-26" },
    final: { from: "2026-02-02", to: "2026-02-22" },
  },
  measures: [{ metric: "bat_speed", condition: { purpose: "test" } }, { metric: "exit_velocity" }],
};
const batSpeed = BUILT_IN_METRICS.find(({ id }) => id === "bat_speed")!;

const athlete = (id: string, reps: readonly Rep[], profile: Partial<AthleteSeason["profile"]> = {}): AthleteSeason => ({
  ...input([]).athlete,
  id,
  profile: { name: id, sport: "baseball", sex: "male", level: "high-school", ...profile },
  reps: table(reps),
});
const facts = (athletes: readonly AthleteSeason[]): GroupFact[] => groupFacts({ ...season, facility, athletes }, []);
const factOf = (athletes: readonly AthleteSeason[], metric: string, condition = {}) =>
  facts(athletes).find(({ key }) => key === factKey(metric, condition));

/** Test days at both ends: two in October that differ by `spread`, two in February likewise. */
const tested = (level: number, spread: number): Rep[] =>
  [
    ["2025-10-06", level],
    ["2025-10-20", level + spread],
    ["2026-02-03", level],
    ["2026-02-17", level + spread],
  ].map(([date, bat_speed]) => ({ date: date as string, purpose: "test", bat_speed: bat_speed as number }));

describe("the scatter of test days", () => {
  // Two days that differ by d have squares d^2 / 2 about their mean and one degree of freedom.
  const group = (n: number, spread = 2) =>
    Array.from({ length: n }, (_, i) => athlete(`a${i}`, tested(60 + i, spread)));

  test("pools all athletes' days about the mean of their own window", () => {
    const found = factOf(group(16), "bat_speed", { purpose: "test" })!;
    expect(found.testDays).toEqual({ sd: Math.SQRT2, df: 32, athletes: 16 });
    expect(testScatter(found)).toEqual(found.testDays);
  });

  test("is taken from ten athletes and thirty degrees of freedom on, not before", () => {
    // Fifteen athletes have 30; fourteen have 28.
    expect(testScatter(factOf(group(15), "bat_speed", { purpose: "test" }))).not.toBeNull();
    expect(testScatter(factOf(group(14), "bat_speed", { purpose: "test" }))).toBeNull();
    const busy = Array.from({ length: 9 }, (_, i) =>
      athlete(`a${i}`, [...tested(60, 2), ...tested(60, 2).map((rep) => ({ ...rep, session: "late" }))]),
    );
    // Nine athletes with 6 each have 54, and are too few people.
    expect(factOf(busy, "bat_speed", { purpose: "test" })?.testDays?.df).toBe(54);
    expect(testScatter(factOf(busy, "bat_speed", { purpose: "test" }))).toBeNull();
  });

  test("gives an athlete with two and two days a verdict, and the same athlete alone none", () => {
    const hitter = athlete("a0", [...tested(60, 2).slice(0, 2), ...tested(68, 2).slice(2)]);
    const all = [hitter, ...group(15).map((one, i) => ({ ...one, id: `b${i}` }))];
    const metrics = BUILT_IN_METRICS.map((metric) => ({ ...metric, smallestWorthwhile: 1 }));
    const change = (group: readonly GroupFact[]) =>
      reportFor({ ...input([]), season: { ...season, facility, metrics, group }, athlete: hitter }).report.series[0]!;
    const judged = change(facts(all));
    expect(judged).toMatchObject({
      change: { method: "test-windows", estimate: 8, df: 32, verdict: "clear-improvement" },
      notes: ["few-sessions", "worth-below-noise"],
      noise: { source: "test-days", athletes: 16, df: 32 },
    });
    // 8 -+ t(0.975, 32) x sqrt 2 x sqrt(1/2 + 1/2); t = 2.0369 from printed tables (from memory).
    expect(judged.change!.ci95[0]).toBeCloseTo(8 - 2.0369 * Math.SQRT2, 3);
    const alone = change(facts([hitter]));
    expect(alone).toMatchObject({
      change: { method: "test-windows", estimate: 8, verdict: "too-few", p: null },
      notes: ["few-sessions", "noise-unknown"],
      says: { id: "tests-noise-unknown" },
      noise: null,
    });
  });
});

describe("the scatter about own lines", () => {
  // Values 0 1 0 1 ... about a level: a line leaves little but the zigzag.
  const zigzag = (level: number, n: number, step = 1): Rep[] =>
    Array.from({ length: n }, (_, week) => ({ date: weekLater(week), exit_velocity: level + step * (week % 2) }));

  test("pools residuals of every athlete's own line, whatever the level or slope", () => {
    const one = athlete("a", zigzag(80, 8));
    const steep = athlete(
      "b",
      zigzag(90, 8).map((rep, week) => ({ ...rep, exit_velocity: (rep.exit_velocity as number) + 3 * week })),
    );
    const alone = factOf([one], "exit_velocity")!.ownLines!;
    const both = factOf([one, steep], "exit_velocity")!.ownLines!;
    expect([alone.df, both.df, both.athletes]).toEqual([6, 12, 2]);
    expect(both.sd).toBeCloseTo(alone.sd, 12);
  });

  test("stands in for a retest from ten degrees of freedom on, and the trainer's own figure comes first", () => {
    const fact = factOf([athlete("a", zigzag(80, 8)), athlete("b", zigzag(70, 8))], "exit_velocity");
    expect(noiseOf(batSpeed, fact, false)).toMatchObject({ source: "own-lines", df: 12, athletes: 2 });
    expect(noiseOf(batSpeed, factOf([athlete("a", zigzag(80, 8))], "exit_velocity"), false)).toBeNull();
    const set = noiseOf({ ...batSpeed, typicalError: 1.5 }, fact, false)!;
    // MDC95 = 1.96 sqrt 2 x SEM (Weir 2005).
    expect(set.mdc95).toBeCloseTo(1.96 * Math.SQRT2 * 1.5, 12);
    expect(set.source).toBe("configured");
  });

  test("is nothing with two sessions each: a line takes both up", () => {
    expect(factOf([athlete("a", zigzag(80, 2))], "exit_velocity")?.ownLines).toBeNull();
  });
});

describe("the spread between athletes", () => {
  const level = (value: number): Rep[] =>
    Array.from({ length: 9 }, (_, week) => ({ date: weekLater(week), exit_velocity: value + (week % 3) - 1 }));
  const kind = { sport: "baseball", sex: "male", level: "high-school" };

  test("is told from ten of one kind, with the error of their starts taken out", () => {
    const ten = Array.from({ length: 10 }, (_, i) => athlete(`a${i}`, level(80 + i)));
    const fact = factOf(ten, "exit_velocity")!;
    // Starts 80 to 89: variance 9.1666..; each is a mean of three sessions.
    const error = fact.ownLines!.sd ** 2 / 3;
    expect(fact.between).toHaveLength(1);
    expect(fact.between[0]).toMatchObject({ ...kind, athletes: 10 });
    expect(fact.between[0]!.sd).toBeCloseTo(Math.sqrt(82.5 / 9 - error), 12);
    expect(worthOf(batSpeed, groupOf(fact, kind, null))).toEqual({
      value: 0.2 * fact.between[0]!.sd,
      source: "season",
      athletes: 10,
    });
    expect(worthOf(batSpeed, groupOf(fact, { ...kind, level: "college" }, null))).toBeNull();
  });

  test("is not told from nine, nor from ten of two kinds", () => {
    const nine = Array.from({ length: 9 }, (_, i) => athlete(`a${i}`, level(80 + i)));
    expect(factOf(nine, "exit_velocity")!.between).toEqual([]);
    const other = athlete("z", level(99), { level: "college" });
    expect(factOf([...nine, other], "exit_velocity")!.between).toEqual([]);
  });

  test("comes from the reference sample where the season has too few, and from the trainer before both", () => {
    const reference = { sd: 6, middle: 70, athletes: 40 };
    expect(worthOf(batSpeed, groupOf(undefined, kind, reference))).toEqual({
      value: 0.2 * 6,
      source: "reference",
      athletes: 40,
    });
    expect(worthOf({ ...batSpeed, smallestWorthwhile: 2 }, groupOf(undefined, kind, reference))).toEqual({
      value: 2,
      source: "configured",
      athletes: null,
    });
  });

  test("is not asked where better is a window: a trainer has to say what matters there", () => {
    expect(
      worthOf({ ...batSpeed, better: "window" }, groupOf(undefined, kind, { sd: 6, middle: 70, athletes: 40 })),
    ).toBeNull();
  });
});

describe("a start that comes back by itself", () => {
  const first = { from: "2025-11-03", to: "2025-11-17", sessions: 4, n: 40, mean: 60 };
  const noise = { typicalError: 2, ci95: null, df: null, athletes: null, mdc95: 5.5, source: "configured" } as const;
  const group = { sd: 3, middle: 66, athletes: 40, source: "reference" } as const;

  test("worked by hand: (1 - ICC) of the distance from the middle; the error of four days is half that of one", () => {
    const icc = 9 / (9 + 4 / 4);
    expect(reboundOf(first, noise, group)).toEqual({
      estimate: (1 - icc) * 6,
      icc,
      middle: 66,
      athletes: 40,
      source: "reference",
    });
    expect(reboundOf({ ...first, mean: 70 }, noise, group)!.estimate).toBeCloseTo(-0.4, 12);
  });

  test("athletes picked for a bad start come back by so much, simulated without any change", () => {
    const random = randomFrom("picked for a bad start");
    const picked = Array.from({ length: 4000 }, () => random.normal(66, 3)).flatMap((level) => {
      const day = () => random.normal(level, 2);
      const mean = () => (day() + day() + day() + day()) / 4;
      const [start, end] = [mean(), mean()];
      return start < 62 ? [{ start, gained: end - start }] : [];
    });
    const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0) / of.length;
    const expected = mean(picked.map(({ start }) => reboundOf({ ...first, mean: start }, noise, group)!.estimate));
    // Four standard errors: sd of a gain about sqrt(2), over the number picked.
    expect(Math.abs(mean(picked.map(({ gained }) => gained)) - expected)).toBeLessThan(
      (4 * 1.5) / Math.sqrt(picked.length),
    );
  });

  test("nothing is said without a start, a scatter, a group or its middle", () => {
    expect(reboundOf(null, noise, group)).toBeNull();
    expect(reboundOf(first, null, group)).toBeNull();
    expect(reboundOf(first, noise, null)).toBeNull();
    expect(reboundOf(first, noise, { ...group, middle: null })).toBeNull();
  });
});
