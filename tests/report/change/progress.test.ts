import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reportFor } from "../../../src/report/report.ts";
import type { Series } from "../../../src/report/schema.ts";
import type { Measure } from "../../../src/schema/facility.ts";
import type { Metric } from "../../../src/schema/metric.ts";
import { BUILT_IN_METRICS } from "../../../src/schema/metric.ts";
import type { Goal } from "../../../src/schema/profile.ts";
import { input, type Rep, weekLater } from "../season.ts";

const FACILITY = { name: "Invented Cage", season: { name: "Invented winter", start: "2025-10-06", end: "2026-02-22" } };

interface Setting {
  readonly measures?: readonly Measure[];
  readonly settings?: Partial<Metric>;
  readonly goals?: Goal[];
}

/** The first measure's series of a season of reps. */
function seriesOf(reps: readonly Rep[], { measures, settings = {}, goals = [] }: Setting = {}): Series {
  const facility = { ...FACILITY, measures: [...(measures ?? [{ metric: "bat_speed" }])] };
  const metrics = BUILT_IN_METRICS.map((metric) => ({ ...metric, ...settings }));
  const athlete = { profile: { name: "Invented One", goals } };
  const { series } = reportFor(input(reps, { season: { facility, metrics }, athlete })).report;
  return series.find(({ measure }) => measure === 0)!;
}

/** Four swings a week whose mean is the given speed. */
const weekly = (means: readonly number[], field = "bat_speed"): Rep[] =>
  means.flatMap((mean, week) => [-1.5, -0.5, 0.5, 1.5].map((off) => ({ date: weekLater(week), [field]: mean + off })));

// A rise of one mph a week with a scatter that no line takes up.
const rising = (n: number) => Array.from({ length: n }, (_, i) => 60 + i + (i % 2 === 0 ? 0.4 : -0.4));

describe("how many sessions say how much", () => {
  const worth = { settings: { smallestWorthwhile: 1 } };

  test("one session: its values, no change", () => {
    const { change, says, trend } = seriesOf(weekly([60]), worth);
    expect([change, says, trend.theilSen]).toEqual([null, { id: "one-session", args: { sessions: 1 } }, null]);
  });

  test("two sessions without a known noise: no change", () => {
    const { change, says, notes } = seriesOf(weekly([60, 64]), worth);
    expect([change, says?.id, notes]).toEqual([null, "two-noise-unknown", ["few-sessions", "noise-unknown"]]);
  });

  test("two sessions against the noise that the trainer gave: within or beyond, no verdict word", () => {
    const settings = { smallestWorthwhile: 1, typicalError: 1 };
    const within = seriesOf(weekly([60, 62]), { settings });
    expect(within.change).toMatchObject({ estimate: 2, method: "two-tests", verdict: "too-few", beyondNoise: false });
    expect(within.says?.id).toBe("two-within-noise");
    const beyond = seriesOf(weekly([60, 63]), { settings });
    expect(beyond.change).toMatchObject({ estimate: 3, verdict: "too-few", beyondNoise: true });
    expect(beyond.trend.sessionLine).toBeNull();
  });

  test.each([3, 4])("%i sessions: a line without a verdict", (n) => {
    const { change, trend, says } = seriesOf(weekly(rising(n)), worth);
    expect([change?.verdict, says?.id]).toEqual(["too-few", "too-few"]);
    expect(trend.sessionLine).not.toBeNull();
  });

  test("five to nine sessions: a verdict that says how few they are; ten: without that", () => {
    expect(seriesOf(weekly(rising(9)), worth)).toMatchObject({
      change: { verdict: "clear-improvement", method: "session-line" },
      notes: ["few-sessions"],
    });
    expect(seriesOf(weekly(rising(10)), worth).notes).toEqual([]);
  });

  test("fewer than three weeks: nothing is claimed of a season", () => {
    const daily = rising(10).flatMap((mean, i) =>
      [-1, 1].map((off) => ({ date: `2025-10-${String(10 + i)}`, bat_speed: mean + off })),
    );
    expect(seriesOf(daily, worth).notes).toContain("short-span");
  });
});

describe("the line's change", () => {
  test("is the mixed model's where sessions hold very unlike numbers of swings", () => {
    const unlike = rising(10).flatMap((mean, week) =>
      Array.from({ length: week % 2 === 0 ? 3 : 12 }, (_, i) => ({
        date: weekLater(week),
        bat_speed: mean + (i % 3) - 1,
      })),
    );
    const { change, trend } = seriesOf(unlike);
    expect(change?.method).toBe("mixed");
    expect(change!.estimate).toBeCloseTo(trend.mixed!.perWeek * 9, 9);
    expect(change!.df).toBeLessThanOrEqual(8);
  });

  test("is seen by nobody as a change when the ranks do not bear it out", () => {
    // One wild last day pulls the line up; the other nine fall a little.
    const means = [60, 59.9, 59.8, 59.7, 59.6, 59.5, 59.4, 59.3, 59.2, 70];
    const { change, says } = seriesOf(weekly(means), { settings: { smallestWorthwhile: 0.5 } });
    expect(change?.verdict).toBe("cannot-tell");
    expect(says?.id).toMatch(/^cannot-tell/);
  });

  test("without a smallest change that matters is an improvement of unknown weight", () => {
    const { change, says, notes } = seriesOf(weekly(rising(10)));
    expect([change?.verdict, change?.smallestWorthwhile, says?.id]).toEqual([
      "improvement",
      null,
      "improvement-unweighed",
    ]);
    expect(notes).toEqual(["no-worth"]);
  });

  test("stays the same when the whole range is smaller than what matters", () => {
    const flat = Array.from({ length: 12 }, (_, i) => 60 + (i % 2 === 0 ? 0.2 : -0.2));
    expect(seriesOf(weekly(flat), { settings: { smallestWorthwhile: 2 } }).change?.verdict).toBe("same");
  });

  test("tells how many sessions a change that matters would need", () => {
    const noisy = Array.from({ length: 10 }, (_, i) => 60 + (i % 3) * 1.5 - 1.5);
    const { change, sessionsNeeded, says } = seriesOf(weekly(noisy), { settings: { smallestWorthwhile: 2 } });
    expect(change?.verdict).toBe("cannot-tell");
    expect(sessionsNeeded).toBeGreaterThan(10);
    expect(says).toMatchObject({ id: "cannot-tell", args: { sessions: 10, needed: sessionsNeeded } });
  });
});

describe("a measure with a window", () => {
  const angle = { measures: [{ metric: "attack_angle" }] };
  // Nine degrees below the window at first, inside it at the end.
  const nearer = weekly(
    Array.from({ length: 10 }, (_, i) => -5 + i),
    "attack_angle",
  );

  test("has no verdict without the window", () => {
    const { change, says, window } = seriesOf(nearer, angle);
    expect([change?.verdict, says?.id, window]).toEqual([null, "no-window", null]);
  });

  test("improves by coming nearer, whichever side it comes from", () => {
    const settings = { window: [4, 14], smallestWorthwhile: 1 } as const;
    const below = seriesOf(nearer, { ...angle, settings });
    expect(below.change).toMatchObject({ verdict: "clear-improvement" });
    expect(below.change!.outside!.estimate).toBeLessThan(-5);
    expect(below.says?.id).toBe("window-clear-improvement");
    const above = weekly(
      Array.from({ length: 10 }, (_, i) => 23 - i),
      "attack_angle",
    );
    const mirrored = seriesOf(above, { ...angle, settings });
    expect(mirrored.change?.verdict).toBe("clear-improvement");
    expect(mirrored.change!.outside!.estimate).toBeCloseTo(below.change!.outside!.estimate, 9);
    expect(mirrored.change!.estimate).toBeCloseTo(-below.change!.estimate, 9);
  });

  test("takes the athlete's own goal before the metric's window", () => {
    const goals: Goal[] = [{ metric: "attack_angle", window: [-30, -7], share: 0.6, by: "2026-02-20" }];
    const { window, change } = seriesOf(nearer, { ...angle, settings: { window: [4, 14] }, goals });
    expect(window).toEqual([-30, -7]);
    expect(change?.verdict).toMatch(/decline/);
  });
});

describe("a pool whose mix moved", () => {
  const mixed = (share: (week: number) => number) =>
    rising(9).flatMap((mean, week) =>
      Array.from({ length: 10 }, (_, i) => ({
        date: weekLater(week),
        environment: i < share(week) ? "tee" : "front-toss",
        bat_speed: mean + (i % 2),
      })),
    );

  test("by more than a fifth has no verdict", () => {
    const { change, says, pooled } = seriesOf(mixed((week) => (week < 3 ? 8 : week < 6 ? 6 : 5)));
    expect([pooled, change?.verdict, says?.id]).toEqual([true, null, "mix-moved"]);
  });

  test("by a fifth has one", () => {
    expect(seriesOf(mixed((week) => (week < 3 ? 8 : 6))).change?.verdict).toBe("improvement");
  });
});

test("tests are not training: they form a series of their own, also for a measure that names no purpose", () => {
  const reps = rising(9).flatMap((mean, week) =>
    [0, 1, 2, 3].map((i) => ({
      date: weekLater(week),
      environment: "tee",
      purpose: week % 4 === 0 ? "test" : "training",
      bat_speed: mean + i,
    })),
  );
  const facility = { ...FACILITY, measures: [{ metric: "bat_speed", condition: { environment: "tee" } }] };
  const { series } = reportFor(input(reps, { season: { facility } })).report;
  const judged = series.filter(({ measure }) => measure === 0);
  expect(judged.map(({ condition, sessionCount }) => [condition, sessionCount])).toEqual([
    [{ environment: "tee" }, 6],
    [{ environment: "tee", purpose: "test" }, 3],
  ]);
});

test("a series that is no measure has figures and no verdict", () => {
  const facility = { ...FACILITY, measures: [{ metric: "exit_velocity" }] };
  const { series } = reportFor(input(weekly(rising(10)), { season: { facility } })).report;
  expect(series[0]).toMatchObject({ measure: null, says: null, change: { verdict: "not-a-measure" } });
});

describe("laws", () => {
  const means = fc.array(fc.integer({ min: 500, max: 700 }), { minLength: 5, maxLength: 14 });
  const MIRROR: Readonly<Record<string, string>> = {
    "clear-improvement": "clear-decline",
    improvement: "decline",
    "small-improvement": "small-decline",
    "clear-decline": "clear-improvement",
    decline: "improvement",
    "small-decline": "small-improvement",
  };
  const verdictOf = (list: readonly number[], settings: Partial<Metric>) =>
    seriesOf(weekly(list), { settings }).change?.verdict ?? null;

  test("a constant added to every value moves no verdict", () => {
    fc.assert(
      fc.property(means, fc.integer({ min: -100, max: 100 }), (list, more) => {
        const settings = { smallestWorthwhile: 2, plausible: [-1e6, 1e6] as const };
        const tenths = list.map((one) => one / 8);
        expect(
          verdictOf(
            tenths.map((one) => one + more),
            settings,
          ),
        ).toBe(verdictOf(tenths, settings));
      }),
      { numRuns: 40 },
    );
  });

  test("lower-is-better mirrors the verdict", () => {
    fc.assert(
      fc.property(means, (list) => {
        const tenths = list.map((one) => one / 8);
        const up = verdictOf(tenths, { smallestWorthwhile: 2 });
        const down = verdictOf(tenths, { smallestWorthwhile: 2, better: "lower" });
        expect(down).toBe(MIRROR[up ?? ""] ?? up);
      }),
      { numRuns: 40 },
    );
  });

  test("every interval holds its estimate", () => {
    fc.assert(
      fc.property(means, (list) => {
        const { change, trend, earlyLate } = seriesOf(weekly(list.map((one) => one / 8)));
        const pairs: [number, readonly (number | null)[]][] = [
          [change!.estimate, change!.ci95],
          [change!.estimate, change!.ci90],
          [trend.sessionLine!.perWeek, trend.sessionLine!.ci95],
          [trend.ols!.perWeek, trend.ols!.ci95],
          [trend.theilSen!.perWeek, trend.theilSen!.ci95],
          ...(trend.mixed ? [[trend.mixed.perWeek, trend.mixed.ci95] as [number, number[]]] : []),
          ...(earlyLate ? [[earlyLate.estimate, earlyLate.ci95] as [number, number[]]] : []),
        ];
        for (const [estimate, [low, high]] of pairs) {
          if (low !== null) expect(low).toBeLessThanOrEqual(estimate + 1e-9);
          if (high !== null) expect(high).toBeGreaterThanOrEqual(estimate - 1e-9);
        }
      }),
      { numRuns: 40 },
    );
  });

  test("all values equal, one session, one swing, ties everywhere: an answer without NaN", () => {
    const seasons: Rep[][] = [
      weekly(Array.from({ length: 10 }, () => 60)),
      Array.from({ length: 10 }, (_, week) => ({ date: weekLater(week), bat_speed: 60 })),
      Array.from({ length: 10 }, (_, week) => ({ date: weekLater(week), bat_speed: 60 + (week % 2) })),
      [{ date: weekLater(0), bat_speed: 60 }],
      weekly([60, 60, 60]),
      Array.from({ length: 6 }, (_, i) => ({ date: weekLater(0), session: `s${i}`, bat_speed: 60 + i })),
    ];
    for (const reps of seasons) {
      for (const settings of [{}, { smallestWorthwhile: 1, typicalError: 1 }]) {
        const text = JSON.stringify(seriesOf(reps, { settings }), (_, value) => {
          if (typeof value === "number" && !Number.isFinite(value)) throw new Error("not a number in a report");
          return value;
        });
        expect(text).not.toContain("undefined");
      }
    }
  });
});
