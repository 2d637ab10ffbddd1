import { describe, expect, test } from "vitest";
import { reportFor } from "../../src/report/report.ts";
import type { Facility } from "../../src/schema/facility.ts";
import { input, type Rep, weekLater } from "./season.ts";

const facility = (measures: NonNullable<Facility["measures"]>, season: Partial<Facility["season"]> = {}): Facility => ({
  name: "Invented Cage",
  season: { name: "Invented winter", start: "2025-10-06", end: "2026-02-22", ...season },
  measures,
});

describe("what makes a series", () => {
  test("machine speeds fall into bands of five from multiples of five, the lower end included", () => {
    const reps = [59.9, 60, 64.9, 65].map((pitch_speed) => ({
      date: "2025-10-06",
      environment: "machine",
      pitch_speed,
      bat_speed: 60,
    }));
    const { report } = reportFor(input(reps));
    const bands = report.series.flatMap((one) => (one.measure === null ? [[one.condition.pitchSpeed, one.n]] : []));
    expect(bands).toEqual([
      [[55, 60], 1],
      [[60, 65], 2],
      [[65, 70], 1],
    ]);
  });

  test("pitch speeds read at different places never meet", () => {
    const reps = ["release", "plate"].map((pitch_speed_at) => ({
      date: "2025-10-06",
      environment: "machine",
      pitch_speed: 62,
      pitch_speed_at,
      bat_speed: 60,
    }));
    const { report } = reportFor(input(reps));
    expect(report.series.filter((one) => one.measure === null).map((one) => one.condition.pitchSpeedAt)).toEqual([
      "plate",
      "release",
    ]);
    expect(report.series.filter((one) => one.measure === 0).map((one) => one.n)).toEqual([1, 1]);
  });

  test("a toss has no pitch-speed band, whatever stands in the column", () => {
    const { report } = reportFor(
      input([{ date: "2025-10-06", environment: "front-toss", pitch_speed: 30, bat_speed: 60 }]),
    );
    expect(report.series.at(-1)?.condition).toEqual({ environment: "front-toss" });
  });

  test("the game bat of the day is called game, by its id or by its role", () => {
    const reps = [
      { date: "2025-10-06", implement: "old-32", bat_speed: 60 },
      { date: "2025-10-07", implement: "game", bat_speed: 60 },
      { date: "2025-12-01", implement: "new-33", bat_speed: 60 },
      { date: "2025-12-02", implement: "old-32", bat_speed: 60 },
    ];
    const profile = {
      name: "Invented One",
      game_bat: [
        { id: "old-32", from: "2025-10-01" },
        { id: "new-33", from: "2025-12-01" },
      ],
    };
    const { report } = reportFor(input(reps, { athlete: { profile } }));
    const others = report.series.filter((one) => one.measure === null).map((one) => [one.condition.implement, one.n]);
    expect(others).toEqual([
      ["game", 3],
      ["old-32", 1],
    ]);
  });

  test("a ball-flight figure says how many swings were missed, fouled or not known", () => {
    const reps: Rep[] = [
      { date: "2025-10-06", exit_velocity: 80, result: "hit" },
      { date: "2025-10-06", exit_velocity: 70, result: "foul" },
      { date: "2025-10-06", exit_velocity: 85, result: null },
      { date: "2025-10-06", exit_velocity: null, result: "miss" },
      { date: "2025-10-06", exit_velocity: null, result: "take" },
    ];
    const { report } = reportFor(input(reps));
    expect(report.series[0]?.of).toEqual({ swings: 4, hit: 1, foul: 1, miss: 1, notKnown: 1 });
    expect(report.series[0]?.n).toBe(3);
  });

  test("a pool's denominator holds the swings of conditions in which nothing was read", () => {
    const machine = (pitch_speed: number, result: string, exit_velocity: number | null): Rep => ({
      date: "2025-10-06",
      environment: "machine",
      pitch_speed,
      result,
      exit_velocity,
      bat_speed: 60,
    });
    const reps = [machine(62, "hit", 80), machine(67, "miss", null), machine(67, "foul", null)];
    const measures = [{ metric: "exit_velocity", condition: { environment: "machine" } }];
    const { report } = reportFor(input(reps, { season: { facility: facility(measures) } }));
    expect(report.series[0]).toMatchObject({
      n: 1,
      parts: 1,
      of: { swings: 3, hit: 1, foul: 1, miss: 1, notKnown: 0 },
    });
    const alone = report.series.find((one) => one.measure === null && one.metric === "exit_velocity");
    expect(alone?.of).toEqual({ swings: 1, hit: 1, foul: 0, miss: 0, notKnown: 0 });
  });

  test("the misses of a switch hitter's other side are not in the denominator", () => {
    const swing = (side: string, result: string, exit_velocity: number | null): Rep => ({
      date: "2025-10-06",
      environment: "tee",
      side,
      result,
      exit_velocity,
    });
    const reps = [swing("left", "hit", 80), swing("right", "miss", null)];
    const measures = [{ metric: "exit_velocity", condition: { environment: "tee" } }];
    const { report } = reportFor(input(reps, { season: { facility: facility(measures) } }));
    expect(report.series[0]?.of).toMatchObject({ swings: 1, miss: 0 });
  });

  test("slaps stand in a series of their own and in no measure", () => {
    const reps = [
      { date: "2025-10-06", environment: "tee", swing_type: "full", bat_speed: 60 },
      { date: "2025-10-06", environment: "tee", swing_type: "slap", bat_speed: 45 },
    ];
    const { report } = reportFor(
      input(reps, { season: { facility: facility([{ metric: "bat_speed", condition: { environment: "tee" } }]) } }),
    );
    expect(report.series.map((one) => [one.measure, one.condition.swing, one.sessions[0]?.mean])).toEqual([
      [0, undefined, 60],
      [null, "slap", 45],
    ]);
  });
});

describe("measures", () => {
  test("stand first, in the order of the facility, whichever moved most", () => {
    const reps = [0, 1, 2].flatMap((week) =>
      ["tee", "machine"].map((environment) => ({
        date: weekLater(week),
        environment,
        bat_speed: environment === "tee" ? 60 + 3 * week : 55,
      })),
    );
    const measures = ["machine", "tee"].map((environment) => ({ metric: "bat_speed", condition: { environment } }));
    const { report } = reportFor(input(reps, { season: { facility: facility(measures) } }));
    expect(report.series.map((one) => [one.measure, one.condition.environment, one.pooled])).toEqual([
      [0, "machine", false],
      [1, "tee", false],
    ]);
  });

  test("a pool weighs its parts as over the whole season, so a day with more of one part does not move by itself", () => {
    // Heavy ball: always 70, 6 swings in all; light ball: always 80, 2 swings in all. Weights 6/8 and 2/8 on every day.
    const swings = (date: string, ball: string, count: number): Rep[] =>
      Array.from({ length: count }, () => ({
        date,
        environment: "tee",
        ball,
        exit_velocity: ball === "heavy" ? 70 : 80,
      }));
    const reps = [
      ...swings("2025-10-06", "heavy", 5),
      ...swings("2025-10-06", "light", 1),
      ...swings("2025-10-13", "heavy", 1),
      ...swings("2025-10-13", "light", 1),
    ];
    const { report } = reportFor(
      input(reps, { season: { facility: facility([{ metric: "exit_velocity", condition: { environment: "tee" } }]) } }),
    );
    const pooled = report.series[0]!;
    expect([pooled.pooled, pooled.parts, pooled.condition]).toEqual([true, 2, { environment: "tee" }]);
    expect(pooled.sessions.map((one) => [one.n, one.mean])).toEqual([
      [6, 72.5],
      [2, 72.5],
    ]);
  });

  test("a switch hitter's sides are never pooled", () => {
    const reps = ["left", "right"].map((side) => ({
      date: "2025-10-06",
      environment: "tee",
      side,
      bat_speed: side === "left" ? 58 : 64,
    }));
    const { report } = reportFor(
      input(reps, { season: { facility: facility([{ metric: "bat_speed", condition: { environment: "tee" } }]) } }),
    );
    expect(
      report.series.filter((one) => one.measure === 0).map((one) => [one.condition.side, one.sessions[0]?.mean]),
    ).toEqual([
      ["left", 58],
      ["right", 64],
    ]);
  });

  test("a bat is found by the role it plays", () => {
    const reps = [{ date: "2025-10-06", environment: "tee", implement: "long-36", bat_speed: 55 }];
    const { report } = reportFor(
      input(reps, {
        season: {
          facility: facility([{ metric: "bat_speed", condition: { environment: "tee", implement: "overload" } }]),
          implements: [{ id: "long-36", role: "overload" }],
        },
      }),
    );
    expect(report.series[0]).toMatchObject({ measure: 0, pooled: true, n: 1 });
  });

  test("a measure that nothing was recorded for has no series, and is still counted among those looked at", () => {
    const { report } = reportFor(input([], { season: { facility: facility([{ metric: "bat_speed" }]) } }));
    expect([report.series.length, report.measures]).toEqual([0, 1]);
  });
});

describe("the two ends of a season", () => {
  const reps = Array.from({ length: 10 }, (_, week) => ({ date: weekLater(week), bat_speed: 60 + week }));

  test("are the outer thirds of the sessions where no windows are set", () => {
    const [series] = reportFor(input(reps)).report.series;
    expect(series?.first).toEqual({ from: weekLater(0), to: weekLater(2), sessions: 3, n: 3, mean: 61 });
    expect(series?.last).toEqual({ from: weekLater(7), to: weekLater(9), sessions: 3, n: 3, mean: 68 });
  });

  test("are the facility's windows where both hold three sessions", () => {
    const season = {
      baseline: { from: weekLater(0), to: weekLater(3) },
      final: { from: weekLater(6), to: weekLater(9) },
    };
    const [series] = reportFor(input(reps, { season: { facility: facility([], season) } })).report.series;
    expect([series?.first?.sessions, series?.last?.sessions]).toEqual([4, 4]);
  });

  test("fall back to thirds where a window is too empty", () => {
    const season = {
      baseline: { from: weekLater(0), to: weekLater(1) },
      final: { from: weekLater(6), to: weekLater(9) },
    };
    const [series] = reportFor(input(reps, { season: { facility: facility([], season) } })).report.series;
    expect([series?.first?.sessions, series?.last?.sessions]).toEqual([3, 3]);
  });
});

describe("days away", () => {
  const reps: Rep[] = Array.from({ length: 12 }, (_, week) => ({
    date: weekLater(week),
    environment: "tee",
    bat_speed: 60 + (week % 3),
  }));
  const notes = (away: { from: string; to: string }[]) =>
    reportFor(
      input(reps, {
        athlete: { profile: { name: "Invented One", away, measures: [{ metric: "bat_speed", condition: {} }] } },
      }),
    ).report.series[0]!.notes;

  test("inside the span of a verdict are named beside it, and before or after it not", () => {
    expect(notes([{ from: "2025-11-11", to: "2025-11-15" }])).toContain("absence-inside");
    expect(notes([])).not.toContain("absence-inside");
    expect(notes([{ from: "2026-01-20", to: "2026-01-28" }])).not.toContain("absence-inside");
  });
});
