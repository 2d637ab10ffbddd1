import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import { AthleteReport } from "../../src/report/schema.ts";
import { BUILT_IN_METRICS } from "../../src/schema/metric.ts";
import type { Goal } from "../../src/schema/profile.ts";
import { tInterval } from "../../src/stats/interval.ts";
import { lag1Inflation } from "../../src/stats/lag1-inflation.ts";
import { ols } from "../../src/stats/ols.ts";
import { olsAt } from "../../src/stats/ols-at.ts";
import { satterthwaite } from "../../src/stats/satterthwaite.ts";
import { sd } from "../../src/stats/sd.ts";
import { targetProbability } from "../../src/stats/target-probability.ts";
import { welch } from "../../src/stats/welch.ts";
import { expectNear } from "../stats/samples.ts";
import { input, type Rep, weekLater } from "./season.ts";

const swings = Array.from({ length: 9 }, (_, week) =>
  [-2, 2].map((off) => ({
    date: weekLater(week),
    environment: "machine",
    bat_speed: 64 + week + off,
    attack_angle: week + off,
  })),
).flat();
const goal = (one: Goal) =>
  reportFor(input(swings, { athlete: { profile: { name: "Invented One", goals: [one] } } })).report.goals[0]!;

test("progress toward a target is the part of the way from the first block to it", () => {
  // First block: weeks 0-2, mean 65. Last block: weeks 6-8, mean 71. Of the 10 mph to 75, 6 are done.
  const found = goal({ metric: "bat_speed", condition: { environment: "machine" }, target: 75, by: "2026-02-20" });
  expect(found).toMatchObject({ kind: "target", baseline: 65, current: 71, progress: 0.6, status: "behind" });
  expect(found.baselineN).toEqual({ sessions: 3, n: 6 });
});

test("a goal passed has progress above one", () => {
  expect(goal({ metric: "bat_speed", target: 68, by: "2026-02-20" }).progress).toBe(2);
});

test("a hitter who fell back has progress below zero", () => {
  // Lower is better: from 65 the goal of 60 lies below, and the hitter went up to 71.
  const slower = swings.map(({ bat_speed, ...rep }) => ({ ...rep, swing_time: bat_speed / 400 }));
  const profile = { name: "Invented One", goals: [{ metric: "swing_time", target: 60 / 400, by: "2026-02-20" }] };
  expect(reportFor(input(slower, { athlete: { profile } })).report.goals[0]?.progress).toBeCloseTo(-1.2, 12);
});

test("a goal that the hitter stood on or beyond from the start has no progress to tell", () => {
  expect(goal({ metric: "bat_speed", target: 65, by: "2026-02-20" }).progress).toBeNull();
  expect(goal({ metric: "bat_speed", target: 62, by: "2026-02-20" })).toMatchObject({
    baseline: 65,
    current: 71,
    progress: null,
  });
});

test("a window goal looks at the share of swings inside it, both ends included", () => {
  // Attack angles of the last block: 4 8, 5 9, 6 10. In 4 to 8: both, one, one.
  const found = goal({ metric: "attack_angle", window: [4, 8], share: 0.8, by: "2026-02-20" });
  expect(found.current).toBeCloseTo((1 + 0.5 + 0.5) / 3, 12);
  expect(found).toMatchObject({ kind: "window", window: [4, 8], share: 0.8, target: null });
});

test("an at-least goal looks at the share of swings at the value or over it", () => {
  const found = goal({ metric: "bat_speed", at_least: 72, share: 0.5, by: "2026-02-20" });
  expect([found.kind, found.baseline, found.current]).toEqual(["at-least", 0, 0.5]);
});

test("a goal for a condition that was never measured is shown without figures", () => {
  expect(goal({ metric: "bat_speed", condition: { environment: "live" }, target: 70, by: "2026-02-20" })).toMatchObject(
    {
      condition: { environment: "live" },
      baseline: null,
      current: null,
    },
  );
});

test("a goal that names no purpose is meant for training, unless there are tests alone", () => {
  const tests = swings.map((rep) => ({ ...rep, purpose: "test", bat_speed: rep.bat_speed + 20 }));
  const told = (reps: readonly Rep[], condition = {}) => {
    const goals: Goal[] = [{ metric: "bat_speed", condition, target: 75, by: "2026-02-20" }];
    return reportFor(input(reps, { athlete: { profile: { name: "Invented One", goals } } })).report.goals;
  };
  expect(told([...swings, ...tests]).map(({ current }) => current)).toEqual([71]);
  expect(told(tests).map(({ current }) => current)).toEqual([91]);
  expect(told([...swings, ...tests], { purpose: "test" }).map(({ current }) => current)).toEqual([91]);
});

describe("where a goal stands", () => {
  /** Two swings a week around each mean. */
  const season = (means: readonly number[]) =>
    means.flatMap((mean, week) => [-1, 1].map((off) => ({ date: weekLater(week), bat_speed: mean + off })));
  const standing = (means: readonly number[], one: Partial<Goal> & { target: number }, asOf = "2026-02-22") => {
    const wanted = { metric: "bat_speed", by: "2026-02-20", ...one } as Goal;
    const profile = { name: "Invented One", goals: [wanted] };
    return reportFor(input(season(means), { athlete: { profile }, asOf })).report.goals[0]!;
  };
  // Last three sessions 65, 66, 67: mean 66, standard error 1 / sqrt 3, t(0.975, 2) = 4.3027 (printed tables, from memory):
  // 66 -+ 2.484.
  const nine = [59, 60, 61, 62, 63, 64, 65, 66, 67];

  test("its current figure has an interval from the sessions of the last block", () => {
    const { current, currentCi95 } = standing(nine, { target: 70 });
    expect(current).toBe(66);
    expect(currentCi95![0]).toBeCloseTo(66 - 4.3027 / Math.sqrt(3), 3);
    expect(currentCi95![1]).toBeCloseTo(66 + 4.3027 / Math.sqrt(3), 3);
  });

  test.each([
    [63.5, "met-clear"],
    [64, "met-unsure"],
    [66, "met-unsure"],
    [68, "cannot-tell"],
    [68.5, "behind"],
  ])("once the day has passed: a goal of %f is %s", (target, status) => {
    expect(standing(nine, { target }).status).toBe(status);
  });

  test("before the day the line decides: it reaches the goal by then, cannot tell, or falls short", () => {
    // One mph a week, eight weeks after the last session: 75.
    const by = weekLater(16);
    expect(standing(nine, { target: 74.9, by }, weekLater(9)).status).toBe("on-course");
    expect(standing(nine, { target: 75.1, by }, weekLater(9)).status).toBe("behind");
    const rough = nine.map((mean, i) => mean + (i % 2 === 0 ? 1.5 : -1.5));
    expect(standing(rough, { target: 76, by }, weekLater(9)).status).toBe("cannot-tell");
  });

  test("sessions that are like their neighbours weigh less: the line's interval is widened for it", () => {
    const wave = [...nine, 68, 69, 70].map((mean, i) => mean + [1, 1, 1, -1, -1, -1][i % 6]!);
    const weeks = wave.map((_, i) => i);
    const line = ols(weeks, wave);
    if (line.kind !== "line") throw new Error("expected a line");
    const plain = olsAt(line, 16);
    const { inflation, df } = lag1Inflation(wave.map((value, i) => value - line.intercept - line.slope * i));
    expect(df).toBeLessThan(line.df);
    const [, high] = tInterval(plain.fit, plain.seFit! * inflation, df, 0.95)!;
    expect(high).toBeGreaterThan(plain.confidence![1] + 1);
    const status = (target: number) => standing(wave, { target, by: weekLater(16) }, weekLater(12)).status;
    expect([plain.fit - 0.01, plain.confidence![1] + 0.01, high - 0.01, high + 0.01].map(status)).toEqual([
      "on-course",
      "cannot-tell",
      "cannot-tell",
      "behind",
    ]);
  });

  test("with fewer than five sessions nothing is said", () => {
    expect(standing([60, 61, 62, 63], { target: 60 }).status).toBe("too-few");
  });

  test("progress has the interval of the change over the way to go", () => {
    // Blocks 59 60 61 and 65 66 67: change 6, Welch standard error sqrt(1/3 + 1/3), 4 degrees of freedom, t = 2.7764.
    const { progress, ci95 } = standing(nine, { target: 70 });
    expect(progress).toBeCloseTo(0.6, 12);
    const half = (2.7764 * Math.sqrt(2 / 3)) / 10;
    expect(ci95![0]).toBeCloseTo(0.6 - half, 4);
    expect(ci95![1]).toBeCloseTo(0.6 + half, 4);
  });

  test("a figure that rounding alone keeps from the goal is there", () => {
    // The line through 0.1, 0.2 … 0.9 read eight weeks on is 1.7 but for the last digits of a double.
    const tenths = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
    expect(standing(tenths, { target: 1.7, by: weekLater(16) }, weekLater(9)).status).toBe("on-course");
    expect(standing(tenths, { target: 1.7001, by: weekLater(16) }, weekLater(9)).status).toBe("behind");
  });

  test("the day of the goal itself is no longer before it", () => {
    // The line will be at 75 by then; the interval of the current figure falls short.
    expect(standing(nine, { target: 74, by: weekLater(16) }, weekLater(15)).status).toBe("on-course");
    expect(standing(nine, { target: 74, by: weekLater(16) }, weekLater(16)).status).toBe("behind");
  });

  test("sessions that are all alike have an interval of no width", () => {
    const still = Array.from({ length: 9 }, () => 62.3);
    expect(standing(still, { target: 62.3 })).toMatchObject({
      current: 62.3,
      currentCi95: [62.3, 62.3],
      progress: null,
      ci95: null,
      status: "met-clear",
    });
    expect(standing(still, { target: 65, by: weekLater(10) }, weekLater(9))).toMatchObject({
      progress: 0,
      ci95: [0, 0],
      status: "behind",
      probabilityByDate: null,
    });
  });

  test("shares stay between 0 and 1", () => {
    // Shares of the last block: 1, 1 and 1/2. Mean 5/6, standard error 1/6: 5/6 + 0.717 is above 1.
    const reps = nine.flatMap((mean, week) =>
      [-1, 1].map((off) => ({ date: weekLater(week), bat_speed: week === 7 && off < 0 ? 60 : mean + off })),
    );
    const goals: Goal[] = [{ metric: "bat_speed", at_least: 64, share: 0.9, by: "2026-02-20" }];
    const [found] = reportFor(input(reps, { athlete: { profile: { name: "Invented One", goals } } })).report.goals;
    expect(found?.current).toBeCloseTo(5 / 6, 12);
    expect(found?.currentCi95?.[0]).toBeCloseTo(5 / 6 - 4.3027 / 6, 4);
    expect(found?.currentCi95?.[1]).toBe(1);
    expect(found?.status).toBe("cannot-tell");
  });

  test("a value of a window metric is approached from where the hitter started", () => {
    const angles = (means: readonly number[], target: number) => {
      const reps = means.map((mean, week) => ({ date: weekLater(week), attack_angle: mean }));
      const goals: Goal[] = [{ metric: "attack_angle", target, by: "2026-02-20" }];
      return reportFor(input(reps, { athlete: { profile: { name: "Invented One", goals } } })).report.goals[0]!;
    };
    const up = [1, 3, 2, 5, 4, 7, 8, 10, 9];
    const down = up.map((angle) => 12 - angle);
    // From 2 to 9, and from 10 to 3.
    for (const [from, to, status] of [
      [5, 7, "met-clear"],
      [8, 4, "met-unsure"],
      [11, 1, "cannot-tell"],
      [13, -1, "behind"],
    ] as const) {
      expect([angles(up, from).status, angles(down, to).status]).toEqual([status, status]);
      expect(angles(down, to).progress).toBeCloseTo(angles(up, from).progress!, 12);
    }
    expect(angles(up, 2)).toMatchObject({ progress: null, ci95: null, status: "cannot-tell", probabilityByDate: null });
  });

  test("the interval of progress is Welch's, its ends in rising order for a way down too", () => {
    const down = [60, 58.5, 59, 57, 57.5, 55, 53, 54.5, 51];
    const metrics = BUILT_IN_METRICS.map((metric) => ({ ...metric, better: "lower" as const }));
    const goals: Goal[] = [{ metric: "bat_speed", target: 50, by: "2026-02-20" }];
    const athlete = { profile: { name: "Invented One", goals } };
    const { baseline, ci95 } = reportFor(input(season(down), { season: { metrics }, athlete })).report.goals[0]!;
    const [low, high] = welch(down.slice(0, 3), down.slice(6))!.interval!;
    expect(ci95![0]).toBeCloseTo(high / (50 - baseline!), 12);
    expect(ci95![1]).toBeCloseTo(low / (50 - baseline!), 12);
    expect(ci95![0]).toBeLessThan(ci95![1]);
  });

  test("lower is better the other way round", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -16, max: 16 }), { minLength: 9, maxLength: 12 }),
        fc.integer({ min: -24, max: 24 }),
        fc.boolean(),
        (steps, goalAt, early) => {
          const asOf = early ? weekLater(12) : "2026-02-22";
          const up = steps.map((step) => 60 + step / 8);
          const down = up.map((mean) => 120 - mean);
          const target = 60 + goalAt / 8;
          const plain = standing(up, { target }, asOf);
          const metrics = BUILT_IN_METRICS.map((metric) => ({ ...metric, better: "lower" as const }));
          const goals = [{ metric: "bat_speed", target: 120 - target, by: "2026-02-20" }];
          const athlete = { profile: { name: "Invented One", goals } };
          const mirrored = reportFor(input(season(down), { season: { metrics }, athlete, asOf })).report.goals[0]!;
          expect(mirrored.status).toBe(plain.status);
          if (plain.probabilityByDate === null) expect(mirrored.probabilityByDate).toBeNull();
          else expect(mirrored.probabilityByDate).toBeCloseTo(plain.probabilityByDate, 9);
        },
      ),
      { numRuns: 60 },
    );
  });

  test("a constant added to swings and goal leaves the status", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -16, max: 16 }), { minLength: 9, maxLength: 9 }),
        fc.integer({ min: -10, max: 10 }),
        (steps, more) => {
          const means = steps.map((step) => 60 + step / 8);
          const moved = means.map((mean) => mean + more);
          expect(standing(moved, { target: 61 + more }).status).toBe(standing(means, { target: 61 }).status);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe("whatever the values", () => {
  const values = fc.array(fc.double({ min: 40, max: 90, noNaN: true }), { minLength: 1, maxLength: 14 });
  const wanted = fc.double({ min: 40, max: 90, noNaN: true });
  const onDays = (means: readonly number[]) =>
    means.map((bat_speed, week) => ({ date: weekLater(week), bat_speed, attack_angle: bat_speed - 60 }));
  const told = (reps: readonly Rep[], goals: Goal[], asOf = weekLater(14)) =>
    reportFor(input(reps, { athlete: { profile: { name: "Invented One", goals } }, asOf })).report.goals;
  const by = weekLater(15);

  test("no figure is NaN: also with one session, equal values, a goal at the start", () => {
    fc.assert(
      fc.property(
        fc.oneof(
          values,
          values.map((list) => list.map(() => list[0]!)),
        ),
        fc.boolean(),
        (means, atStart) => {
          const target = atStart
            ? means.slice(0, 3).reduce((sum, one) => sum + one, 0) / Math.min(3, means.length)
            : 60;
          const report = reportFor(
            input(onDays(means), {
              athlete: {
                profile: {
                  name: "Invented One",
                  goals: [
                    { metric: "bat_speed", target, by },
                    { metric: "attack_angle", target: target - 60, by },
                    { metric: "attack_angle", window: [0, 5], share: 0, by },
                    { metric: "bat_speed", at_least: target, share: 1, by },
                  ],
                },
              },
              asOf: weekLater(14),
            }),
          ).report;
          expect(() => AthleteReport.parse(report)).not.toThrow();
          for (const { ci95, currentCi95, current, progress } of report.goals) {
            if (currentCi95) expect(currentCi95[0] <= current! && current! <= currentCi95[1]).toBe(true);
            if (ci95) expect(ci95[0] <= progress! && progress! <= ci95[1]).toBe(true);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test("another zero or unit of the metric changes no status, progress or chance", () => {
    const one = (means: readonly number[], target: number) =>
      told(onDays(means), [{ metric: "bat_speed", target, by }])[0]!;
    fc.assert(
      fc.property(
        values,
        wanted,
        fc.integer({ min: -30, max: 30 }),
        fc.constantFrom(0.25, 1.609344, 3),
        (means, target, more, times) => {
          const plain = one(means, target);
          for (const other of [
            one(
              means.map((mean) => mean + more),
              target + more,
            ),
            one(
              means.map((mean) => mean * times),
              target * times,
            ),
          ]) {
            expect(other.status).toBe(plain.status);
            expectNear(other.progress, plain.progress, 1e-6);
            expectNear(other.probabilityByDate, plain.probabilityByDate, 1e-6);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test("the order of the rows changes nothing", () => {
    const goals: Goal[] = [
      { metric: "bat_speed", target: 66, by },
      { metric: "attack_angle", window: [0, 8], share: 0.5, by },
    ];
    const reps = values
      .map(onDays)
      .chain((list) =>
        fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length, maxLength: list.length })),
      );
    fc.assert(
      fc.property(reps, ([list, other]) => {
        expect(told(other, goals)).toEqual(told(list, goals));
      }),
      { numRuns: 40 },
    );
  });
});

test("the share of a pool weighs its parts as over the whole season, like its mean", () => {
  // Off the tee every swing is in the window, off the machine none; 30 swings of 40 are off the tee, whatever the day's mixture.
  const tee = [4, 4, 4, 4, 4, 4, 2, 2, 2];
  const machine = [1, 1, 1, 1, 1, 1, 1, 1, 2];
  const swing = (week: number, environment: string, attack_angle: number, count: number) =>
    Array.from({ length: count }, () => ({ date: weekLater(week), environment, attack_angle }));
  const reps = tee.flatMap((count, week) => [
    ...swing(week, "tee", 6, count),
    ...swing(week, "machine", 20, machine[week]!),
  ]);
  expect(reps.filter(({ environment }) => environment === "tee")).toHaveLength(30);
  expect(reps.filter(({ environment }) => environment === "machine")).toHaveLength(10);
  const goals: Goal[] = [{ metric: "attack_angle", window: [4, 8], share: 0.8, by: "2026-02-20" }];
  const [found] = reportFor(input(reps, { athlete: { profile: { name: "Invented One", goals } } })).report.goals;
  expect([found?.baseline, found?.current]).toEqual([0.75, 0.75]);
  expect(found?.currentN).toEqual({ sessions: 3, n: 10 });
});

describe("a goal over a joined line", () => {
  const DAY = weekLater(6);
  const devices = [{ id: "old" }, { id: "new", from: DAY }];
  const OFFSET = 2.5;
  const scatter = (i: number) => ((i * 37) % 17) / 8 - 1;
  const training: Rep[] = Array.from({ length: 48 }, (_, i) => {
    const week = Math.floor(i / 4);
    const device = week < 6 ? { device_bat: "old" } : { device_bat: "new" };
    return { date: weekLater(week), ...device, bat_speed: 60 + week / 2 + scatter(i) + (week < 6 ? 0 : OFFSET) };
  });
  const both: Rep[] = Array.from({ length: 24 }, (_, i) =>
    (["old", "new"] as const).map((device) => ({
      date: DAY,
      bat_speed: 63 + scatter(i) + (device === "new" ? OFFSET + ((i * 11) % 7) / 10 - 0.3 : 0),
      device_bat: device,
      time: `17:${String(i).padStart(2, "0")}:30`,
    })),
  ).flat();
  const of = (one: Goal, asOf = "2026-02-22") => {
    const { goals, series } = reportFor(
      input([...training, ...both], {
        season: { devices },
        athlete: { profile: { name: "Invented One", goals: [one] } },
        asOf,
      }),
    ).report;
    return { goal: goals[0]!, series: series[0]! };
  };
  const target = (value: number, by = "2026-02-20"): Goal => ({ metric: "bat_speed", target: value, by });

  test("has the offset's error in the interval of its progress, and none where the block holds no offset", () => {
    const { goal: found, series } = of(target(70));
    const { offset, n } = series.breaks[0]!.bridge!;
    const means = series.sessions.map((session) => session.mean);
    const [first, last] = [means.slice(0, 4), means.slice(-4)];
    // The whole first block was read by the old sensor, the last by the new one: the change holds the offset once.
    const pairs = both
      .filter((_, i) => i % 2 === 0)
      .map((rep, i) => (both[2 * i + 1]!.bat_speed as number) - (rep.bat_speed as number));
    const { variance, df } = satterthwaite([
      { variance: sd(first)! ** 2 / 4, df: 3 },
      { variance: sd(last)! ** 2 / 4, df: 3 },
      { variance: sd(pairs)! ** 2 / n, df: n - 1 },
    ]);
    const [low, high] = tInterval(found.current! - found.baseline!, Math.sqrt(variance), df, 0.95)!;
    expect(offset).toBeGreaterThan(2);
    expect(found.ci95![0]).toBeCloseTo(low / (70 - found.baseline!), 9);
    expect(found.ci95![1]).toBeCloseTo(high / (70 - found.baseline!), 9);
    const now = tInterval(found.current!, sd(last)! / 2, 3, 0.95)!;
    expect(found.currentCi95![0]).toBeCloseTo(now[0], 9);
    expect(found.currentCi95![1]).toBeCloseTo(now[1], 9);
  });

  test("is never clear, on course or behind, and has no chance", () => {
    expect(of(target(62)).goal.status).toBe("met-unsure");
    expect(of(target(90)).goal.status).toBe("cannot-tell");
    const ahead = of(target(69, weekLater(14)), weekLater(12)).goal;
    expect([ahead.status, ahead.probabilityByDate]).toEqual(["cannot-tell", null]);
  });

  test("tells shares without an interval of the change: how an offset moves a share nobody knows", () => {
    const { goal: found } = of({ metric: "bat_speed", at_least: 66, share: 0.9, by: "2026-02-20" });
    expect(found.baseline).toBeGreaterThanOrEqual(0);
    expect(found.progress).not.toBeNull();
    expect(found.ci95).toBeNull();
    expect(found.currentCi95).not.toBeNull();
  });
});

describe("the chance of being there by the day", () => {
  const nine = [60, 62, 61, 63, 65, 64, 66, 67, 66];
  const reps = nine.flatMap((mean, week) => [-1, 1].map((off) => ({ date: weekLater(week), bat_speed: mean + off })));
  const chance = (by: string, asOf: string, list = reps) => {
    const profile = { name: "Invented One", goals: [{ metric: "bat_speed", target: 68, by }] };
    return reportFor(input(list, { athlete: { profile }, asOf })).report.goals[0]!.probabilityByDate;
  };

  test("is the predictive t chance of one more session on the line", () => {
    const line = ols([0, 1, 2, 3, 4, 5, 6, 7, 8], nine);
    if (line.kind !== "line") throw new Error("expected a line");
    const wanted = targetProbability(line, 10, 68, "higher")!.probNewValueReaches;
    expect(chance(weekLater(10), weekLater(9))).toBeCloseTo(wanted, 12);
  });

  test("is told no further ahead than half the span, for days to come, from eight sessions on", () => {
    expect(chance(weekLater(12), weekLater(9))).not.toBeNull();
    expect(chance(weekLater(13), weekLater(9))).toBeNull();
    expect(chance(weekLater(10), weekLater(10))).toBeNull();
    expect(chance(weekLater(8), weekLater(7))).toBeNull();
    expect(chance(weekLater(9), weekLater(8), reps.slice(0, 14))).toBeNull();
    expect(chance(weekLater(9), weekLater(8), reps.slice(0, 16))).not.toBeNull();
  });
});

describe("a goal set anew", () => {
  const goals: Goal[] = [
    { metric: "bat_speed", target: 75, by: "2026-02-20", set: "2025-12-01" },
    { metric: "attack_angle", window: [4, 8], share: 0.8, by: "2026-02-20" },
    { metric: "bat_speed", target: 70, by: "2026-02-20", set: "2025-10-06" },
    { metric: "bat_speed", at_least: 70, share: 0.5, by: "2026-02-20", set: "2025-12-24" },
  ];
  const told = reportFor(input(swings, { athlete: { profile: { name: "Invented One", goals } } })).report.goals;

  test("stands beside its earlier version, which says until when it was meant and has no status", () => {
    expect(told.map(({ kind, target, replacedOn }) => [kind, target, replacedOn])).toEqual([
      ["target", 70, "2025-12-01"],
      ["target", 75, null],
      ["window", null, null],
      ["at-least", null, null],
    ]);
    expect(told[0]).toMatchObject({ status: null, probabilityByDate: null, current: 71 });
    expect(told[1]?.status).toBe("behind");
  });

  test("on three days is one list, each version replaced by the next; without a day it is the first", () => {
    const target = (value: number, set?: string): Goal => ({
      metric: "bat_speed",
      target: value,
      by: "2026-02-20",
      ...(set ? { set } : {}),
    });
    const list = [target(72, "2025-12-01"), target(75, "2026-01-10"), target(70)];
    const reports = reportFor(input(swings, { athlete: { profile: { name: "Invented One", goals: list } } })).report
      .goals;
    expect(reports.map((one) => [one.target, one.set, one.replacedOn])).toEqual([
      [70, null, "2025-12-01"],
      [72, "2025-12-01", "2026-01-10"],
      [75, "2026-01-10", null],
    ]);
  });

  test("stands next to its version for each side of a switch hitter", () => {
    const both = swings.flatMap((rep) => [
      { ...rep, side: "left" },
      { ...rep, side: "right" },
    ]);
    const list: Goal[] = [
      { metric: "bat_speed", target: 72, by: "2026-02-20", set: "2025-12-01" },
      { metric: "bat_speed", target: 70, by: "2026-02-20", set: "2025-10-06" },
    ];
    const reports = reportFor(input(both, { athlete: { profile: { name: "Invented One", goals: list } } })).report
      .goals;
    expect(reports.map((one) => [one.condition.side, one.target, one.status === null])).toEqual([
      ["left", 70, true],
      ["left", 72, false],
      ["right", 70, true],
      ["right", 72, false],
    ]);
  });

  test("twice on one day stands twice", () => {
    const list: Goal[] = [72, 70].map((target) => ({
      metric: "bat_speed",
      target,
      by: "2026-02-20",
      set: "2025-10-06",
    }));
    const reports = reportFor(input(swings, { athlete: { profile: { name: "Invented One", goals: list } } })).report
      .goals;
    expect(reports.map((one) => [one.target, one.replacedOn])).toEqual([
      [72, null],
      [70, null],
    ]);
    expect(reports.every(({ status }) => status !== null)).toBe(true);
  });
});
