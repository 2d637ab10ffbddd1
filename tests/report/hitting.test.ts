import { describe, expect, test } from "vitest";
import { exitSpeed } from "../../src/hitting/collision.ts";
import { relative } from "../../src/report/hitting/implements.ts";
import { reportFor } from "../../src/report/report.ts";
import type { Profile } from "../../src/schema/profile.ts";
import type { Implement } from "../../src/schema/tables.ts";
import { input, type Rep, weekLater } from "./season.ts";

const BATS: Implement[] = [
  { id: "b-33", label: "Alloy 33", length_in: 33, weight_oz: 30 },
  { id: "b-heavy", label: "Heavy", length_in: 33, weight_oz: 36 },
];
const PROFILE: Profile = { name: "Invented One", sport: "baseball", bats: "right", game_bat: "b-33" };
const made = (reps: readonly Rep[], profile: Partial<Profile> = {}, season: object = {}) =>
  reportFor(input(reps, { athlete: { profile: { ...PROFILE, ...profile } }, season: { implements: BATS, ...season } }))
    .report.hitting;
const game = { implement: "b-33", side: "right" } as const;
const weeks = (n: number) => Array.from({ length: n }, (_, week) => week);
/** A scatter that is the same on every run and means nothing. */
const wobble = (i: number) => ((i * 37) % 11) / 10 - 0.5;

describe("rounds", () => {
  const round = (week: number, number: number, swings: number, loss: number): Rep[] =>
    weeks(swings).map((i) => ({
      date: weekLater(week),
      environment: "machine",
      ...game,
      block: "1",
      round: number,
      rep: i + 1,
      bat_speed: 70 + week / 10 - loss * i + wobble(week * 13 + i) / 5,
    }));

  test("long rounds that lose half a mile an hour a swing are told apart from short ones that do not", () => {
    const reps = weeks(8).flatMap((week) => [...round(week, 1, 10, 0.5), ...round(week, 2, 5, 0)]);
    const { rounds } = made(reps);
    const [long, short] = ["long", "short"].map((length) => rounds.find((one) => one.length === length)!);
    expect(long).toMatchObject({ rounds: 8, swings: 80, days: 8, swingsInRound: 10, implement: "game" });
    expect(long!.perSwing.estimate).toBeCloseTo(-0.5, 1);
    expect(long!.perSwing.ci95[1]).toBeLessThan(-0.4);
    expect(long!.drop.estimate).toBeCloseTo(long!.perSwing.estimate * 9, 12);
    expect(short!.perSwing.ci95[0]).toBeLessThan(0);
    expect(short!.perSwing.ci95[1]).toBeGreaterThan(0);
    expect(long!.places.map(({ rep, n }) => [rep, n])).toEqual(weeks(10).map((i) => [i + 1, 8]));
    expect(long!.places.reduce((sum, { mean }) => sum + mean, 0)).toBeCloseTo(0, 9);
  });

  test("rounds that each start at another speed do not look like a loss", () => {
    const reps = weeks(8).flatMap((week) =>
      round(week, 1, week % 2 === 0 ? 5 : 4, 0).map((rep) => ({ ...rep, bat_speed: Number(rep.bat_speed) + 3 * week })),
    );
    const [found] = made(reps).rounds;
    expect(found!.perSwing.estimate).toBeCloseTo(0, 1);
  });

  test("four rounds, two days or rounds of two swings say nothing", () => {
    expect(made(weeks(4).flatMap((week) => round(week, 1, 8, 1))).rounds).toEqual([]);
    expect(made(weeks(2).flatMap((week) => weeks(4).flatMap((n) => round(week, n + 1, 8, 1)))).rounds).toEqual([]);
    expect(made(weeks(9).flatMap((week) => round(week, 1, 2, 1))).rounds).toEqual([]);
    expect(made([]).rounds).toEqual([]);
  });

  test("recovery is read where clocks tell the rest: from the last swing to the first of the next round", () => {
    const clocked = weeks(6).flatMap((week) =>
      [1, 2, 3].flatMap((number) =>
        round(week, number, 5, 1).map((rep, i) => ({
          ...rep,
          time: `17:${String(10 * number).padStart(2, "0")}:${String(10 + i).padStart(2, "0")}`,
        })),
      ),
    );
    const { recovery } = made(clocked);
    expect(recovery).toMatchObject({ pairs: 12, days: 6, restS: 596 });
    // Every round starts four miles an hour above where the last one ended.
    expect(recovery!.recovery.estimate).toBeCloseTo(4, 0);
    expect(made(weeks(6).flatMap((week) => round(week, 1, 5, 1))).recovery).toBeNull();
  });
});

describe("carry-over", () => {
  /** Tee and machine of one day; the machine falls back by `loss` a week. */
  const day = (week: number, loss: number, swap = false): Rep[] => {
    const tee = weeks(4).map(
      (i): Rep => ({ date: weekLater(week), environment: "tee", ...game, bat_speed: 70 + week + wobble(i + week) }),
    );
    const machine = weeks(4).map(
      (i): Rep => ({
        date: weekLater(week),
        environment: "machine",
        pitch_speed: 72,
        pitch_speed_at: "set",
        ...game,
        bat_speed: 67 + week - loss * week + wobble(i + 3 * week),
        result: i === 0 ? "miss" : "hit",
      }),
    );
    return swap ? [...machine, ...tee] : [...tee, ...machine];
  };

  test("a gap that stays is a gap, whatever the season gained; pairs are of one day", () => {
    const [found] = made(weeks(12).flatMap((week) => day(week, 0))).carryOver;
    expect(found).toMatchObject({
      metric: "bat_speed",
      from: "tee",
      to: "machine",
      pitchSpeed: [70, 75],
      days: 12,
      swings: [48, 48],
      answer: "cannot-tell",
      alwaysLater: true,
      pitchAdds: false,
    });
    expect(found!.gap.estimate).toBeCloseTo(-3, 0);
    expect(found!.gap.ci95![0]).toBeLessThan(-2.7);
  });

  test("a gain that does not reach the machine opens the gap; one that does closes it", () => {
    const [opened] = made(weeks(12).flatMap((week) => day(week, 0.5))).carryOver;
    expect(opened!.answer).toBe("opened");
    expect(opened!.change!.ci95![1]).toBeLessThan(0);
    expect(opened!.end! - opened!.start!).toBeCloseTo(opened!.change!.estimate, 9);
    const [closed] = made(weeks(12).flatMap((week) => day(week, -0.2))).carryOver;
    expect(closed!.answer).toBe("closed");
  });

  test("which came first is told; with the machine first on one day it is not always last", () => {
    const reps = weeks(12).flatMap((week) => day(week, 0, week === 5));
    expect(made(reps).carryOver[0]!.alwaysLater).toBe(false);
  });

  test("a faster machine is another gap, and no worse hitter", () => {
    const faster = weeks(6).flatMap((week) =>
      day(week + 6, 0).map((rep) =>
        rep.environment === "machine" ? { ...rep, pitch_speed: 82, bat_speed: 60 + week } : rep,
      ),
    );
    const found = made([...weeks(6).flatMap((week) => day(week, 0)), ...faster]).carryOver;
    expect(found.map(({ pitchSpeed, days }) => [pitchSpeed, days])).toEqual([
      [[70, 75], 6],
      [[80, 85], 6],
    ]);
    expect(found[0]!.gap.estimate).toBeCloseTo(-3, 0);
  });

  test("exit velocity off a pitch is not held against a tee as if it were the hitter's doing", () => {
    const reps = weeks(12).flatMap((week) =>
      day(week, 0.5).map((rep) => ({ ...rep, exit_velocity: Number(rep.bat_speed) + 15 })),
    );
    const exit = made(reps).carryOver.find(({ metric }) => metric === "exit_velocity");
    expect(exit).toMatchObject({ pitchAdds: true, answer: null });
  });

  test("contact is a share of the swings whose result is known, in each band", () => {
    const [share] = made(weeks(12).flatMap((week) => day(week, 0))).contactShares;
    expect(share).toMatchObject({
      environment: "machine",
      pitchSpeed: [70, 75],
      touched: { count: 36, of: 48, share: 0.75 },
    });
  });

  test("two common days give no gap, and other days are not borrowed", () => {
    expect(made(weeks(2).flatMap((week) => day(week, 0))).carryOver).toEqual([]);
    const apart = weeks(12).map((week): Rep => {
      const environment = week % 2 === 0 ? "tee" : "machine";
      return { date: weekLater(week), environment, ...game, bat_speed: 60 };
    });
    expect(made(apart).carryOver).toEqual([]);
  });
});

describe("implements", () => {
  const day = (week: number): Rep[] =>
    weeks(3).flatMap((i): Rep[] => [
      { date: weekLater(week), environment: "tee", side: "right", implement: "b-33", bat_speed: 60 + week + wobble(i) },
      {
        date: weekLater(week),
        environment: "tee",
        side: "right",
        implement: "b-heavy",
        bat_speed: 0.9 * (60 + week + wobble(i)),
      },
    ]);

  test("another bat is held against the game bat of the same days, as a part of its speed", () => {
    const [found] = made(weeks(6).flatMap(day)).implements;
    expect(found).toMatchObject({
      id: "b-heavy",
      gameBat: { id: "b-33" },
      roles: ["heavy"],
      mass: 1.2,
      length: 1,
      inertiaBy: "rod",
      days: 6,
      swings: 18,
    });
    expect(found!.ratio.estimate).toBeCloseTo(0.9, 9);
    expect(found!.ratioChange!.estimate).toBeCloseTo(0, 9);
    // Of one length inertia goes with mass: (1 / 1.2)^0.25 to ^0.27.
    expect(found!.inertia).toBeCloseTo(1.2, 12);
    expect(found!.expected![0]).toBeCloseTo(1.2 ** -0.27, 12);
    expect(found!.expected![1]).toBeCloseTo(1.2 ** -0.25, 12);
  });

  test("roles follow from mass and length against the game bat (33 in, 30 oz: common practice)", () => {
    const against = (length_in: number, weight_oz: number) =>
      relative({ id: "x", length_in, weight_oz }, BATS[0]).roles;
    expect(against(36, 35)).toEqual(["heavy", "long"]);
    expect(against(35, 24)).toEqual(["light", "long"]);
    expect(against(27, 30)).toEqual(["short"]);
    expect(against(33, 30)).toEqual(["alike"]);
    expect(relative({ id: "x" }, BATS[0])).toMatchObject({ roles: [], inertia: null, expected: null });
    expect(relative(undefined, undefined)).toMatchObject({ roles: [], mass: null, length: null });
  });

  test("swing periods count only where both bats were timed: a ratio of two methods would be none", () => {
    const timed = (id: string, period: number): Implement => ({
      ...BATS[0]!,
      id,
      balance_in: 20,
      swing_period_s: period,
    });
    const both = relative(timed("a", 1.6), timed("b", 1.5));
    expect(both.inertiaBy).toBe("swing-period");
    expect(both.inertia).toBeCloseTo((1.6 / 1.5) ** 2, 12);
    expect(relative(timed("a", 1.6), BATS[0]).inertiaBy).toBe("rod");
  });

  test("two common days are too few", () => {
    expect(made(weeks(2).flatMap(day)).implements).toEqual([]);
  });
});

describe("the plane of the swing", () => {
  const reps = weeks(5).flatMap((week) =>
    [2, 8, 12, 20].map(
      (attack_angle): Rep => ({
        date: weekLater(week),
        environment: "tee",
        ...game,
        drill: "low",
        attack_angle,
        ball_height: 18,
      }),
    ),
  );
  const goals: Profile["goals"] = [{ metric: "attack_angle", window: [4, 12], share: 0.6, by: "2026-02-20" }];

  test("is the share inside the athlete's window, ends included, with its interval", () => {
    const [found] = made(reps, { goals }).plane;
    expect(found).toMatchObject({ window: [4, 12], windowOf: "athlete", swings: 20, middle: 10 });
    expect(found!.inside).toMatchObject({ count: 10, of: 20, share: 0.5 });
    // Wilson's 95 % interval of 10 of 20 (Newcombe 1998, method 3): 0.299 to 0.701.
    expect(found!.inside!.ci95[0]).toBeCloseTo(0.299, 3);
    expect(found!.inside!.ci95[1]).toBeCloseTo(0.701, 3);
  });

  test("a drill with a window of its own is judged by that, and heights stand apart", () => {
    const drills = [
      { id: "low", label: "Low", aims: [{ metric: "attack_angle", window: [6, 25] as [number, number] }] },
    ];
    const found = made(reps, { goals }, { drills }).plane;
    expect(found.find(({ drill }) => drill === "low")).toMatchObject({
      window: [6, 25],
      windowOf: "drill",
      inside: { count: 15 },
    });
    expect(found.find(({ ballHeight }) => ballHeight !== null)).toMatchObject({ ballHeight: [0, 22], swings: 20 });
  });

  test("without a window there is a middle and no share", () => {
    expect(made(reps).plane[0]).toMatchObject({ window: null, inside: null, middle: 10 });
  });
});

describe("the flight of the ball", () => {
  const ball = (week: number, launch_angle: number, spray_angle: number, exit_velocity: number): Rep => ({
    date: weekLater(week),
    environment: "machine",
    ...game,
    launch_angle,
    spray_angle,
    exit_velocity,
    result: "hit",
  });
  const reps: Rep[] = weeks(4).flatMap((week) => [
    ball(week, 5, -30, 70),
    ball(week, 15, 0, 92),
    ball(week, 30, 30, 88),
    ball(week, 60, -20, 60),
    { date: weekLater(week), environment: "machine", ...game, result: "miss" },
    { date: weekLater(week), environment: "machine", ...game, result: "foul" },
  ]);

  test("every share has its denominator: misses stand in it, and classes are of the balls that were read", () => {
    const [found] = made(reps).flight;
    expect(found).toMatchObject({
      of: { swings: 24, hit: 16, foul: 4, miss: 4, notKnown: 0 },
      launch: { read: 16, groundBall: 4, lineDrive: 4, flyBall: 4, popUp: 4 },
      field: { read: 16, pull: 8, centre: 4, opposite: 4 },
      firm: null,
    });
  });

  test("a left-handed hitter pulls to the other field; a side that nobody noted gives no field", () => {
    const left = reps.map((rep) => ({ ...rep, side: "left" }));
    expect(made(left, { bats: "left" }).flight[0]!.field).toMatchObject({ pull: 4, opposite: 8 });
    const unknown = reps.map(({ side: _, ...rep }) => rep as Rep);
    expect(made(unknown, { bats: "switch" }).flight[0]!.field).toBeNull();
  });

  test("hard is what the trainer's own goal says, and no league's line", () => {
    const goals: Profile["goals"] = [{ metric: "exit_velocity", at_least: 88, share: 0.5, by: "2026-02-20" }];
    expect(made(reps, { goals }).flight[0]!.firm).toMatchObject({ mark: 88, count: 8, of: 16 });
  });

  test("zones are shares of the balls whose readings they need", () => {
    const zones = [
      {
        id: "line",
        label: "Line",
        launch_angle: [8, 25] as [number, number],
        exit_velocity: [90, 130] as [number, number],
      },
    ];
    expect(made(reps, {}, { zones }).flight[0]!.zones).toMatchObject([
      { id: "line", in: { count: 4, of: 16, share: 0.25 } },
    ]);
  });
});

describe("contact", () => {
  const balls = [{ id: "ball", kind: "baseball", q: 0.2 }];
  const reps = (factor: number): Rep[] =>
    weeks(12).map((week) => ({
      date: weekLater(week),
      environment: "tee",
      ...game,
      ball: "ball",
      bat_speed: 60 + week,
      exit_velocity: factor * exitSpeed(0.2, 0, 60 + week),
      result: "hit",
    }));

  test("is a part of the most that bat and pitch allow, off a tee of the bat alone", () => {
    const [found] = made(reps(0.9), {}, { balls }).contact;
    expect(found).toMatchObject({ q: 0.2, swings: 12, days: 12, impossible: 0 });
    expect(found!.middle).toBeCloseTo(0.9, 9);
    expect(found!.change!.estimate).toBeCloseTo(0, 9);
  });

  test("above the most possible is a measuring error, and counted as one", () => {
    expect(made(reps(1.05), {}, { balls }).contact[0]).toMatchObject({ impossible: 12 });
  });

  test("a pitch is taken at the plate, where drag has slowed it", () => {
    const pitched = reps(1).map((rep) => ({
      ...rep,
      environment: "machine",
      pitch_speed: 80,
      pitch_speed_at: "release",
      pitch_distance: 50,
      exit_velocity: exitSpeed(0.2, 72.8, Number(rep.bat_speed)),
    }));
    // 0.00188 a foot over 50 feet leaves 91 %.
    expect(made(pitched, {}, { balls }).contact[0]!.middle).toBeCloseTo(1, 2);
  });

  test("a ball without a stated q, or a toss whose speed nobody read, gives no share", () => {
    expect(made(reps(0.9), {}, { balls: [{ id: "ball", kind: "baseball" }] }).contact).toEqual([]);
    const tossed = reps(0.9).map((rep) => ({ ...rep, environment: "front-toss" }));
    expect(made(tossed, {}, { balls }).contact).toEqual([]);
  });
});

describe("worth", () => {
  const balls = [{ id: "ball", kind: "baseball", q: 0.2 }];
  const measures: Profile["measures"] = [{ metric: "bat_speed", condition: { environment: "machine" } }];
  const reps = (gain: number): Rep[] =>
    weeks(14).flatMap((week) =>
      weeks(4).map((i) => ({
        date: weekLater(week),
        environment: "machine",
        ...game,
        ball: "ball",
        pitch_speed: 85,
        pitch_speed_at: "plate",
        bat_speed: 68 + (gain * week) / 13 + wobble(i + week),
      })),
    );

  test("of a mile an hour of bat speed is 1 + q of exit speed, and five feet or so of carry a mile an hour of that", () => {
    const { worth } = made(reps(3), { measures }, { balls });
    expect(worth).toMatchObject({ environment: "machine", q: 0.2, pitchAtPlate: 85 });
    expect(worth!.exit.estimate).toBeCloseTo(1.2 * worth!.batSpeed.change, 12);
    expect(worth!.exit.range[0]).toBeLessThan(worth!.exit.estimate);
    const { estimate, range, extrapolated } = worth!.carry!;
    // 4.9 ft per mph (league-tracked balls, quoted), to the nearest five feet.
    expect(Math.abs(estimate - 4.9 * worth!.exit.estimate)).toBeLessThanOrEqual(5);
    expect(estimate % 5).toBe(0);
    expect(range[0]).toBeLessThanOrEqual(estimate);
    expect(range[1]).toBeGreaterThanOrEqual(estimate);
    expect(extrapolated).toBe(false);
  });

  test("softball has no carry: nobody has fitted its flight", () => {
    const softball = [{ id: "ball", kind: "softball", q: 0.2 }];
    const { worth } = made(reps(3), { measures, sport: "softball" }, { balls: softball });
    expect(worth!.carry).toBeNull();
    expect(worth!.exit.estimate).toBeGreaterThan(0);
  });

  test("slow swings are said to lie outside what the model was fitted to", () => {
    const slow = reps(3).map((rep) => ({ ...rep, bat_speed: Number(rep.bat_speed) - 20, pitch_speed: 50 }));
    expect(made(slow, { measures }, { balls }).worth!.carry!.extrapolated).toBe(true);
  });

  test("without a q or a change there is nothing to weigh", () => {
    expect(made(reps(3), { measures }).worth).toBeNull();
    expect(made(reps(3).slice(0, 4), { measures }, { balls }).worth).toBeNull();
  });
});

describe("the machine and growth", () => {
  const reps = weeks(5).flatMap((week) =>
    weeks(4).map(
      (i): Rep => ({
        date: weekLater(week),
        environment: "machine",
        ...game,
        pitch_type: "fastball",
        pitch_speed: 65,
        pitch_speed_at: "set",
        pitch_distance: 40,
        spin: 1500 + i,
        spin_axis: i % 2 === 0 ? "11:30" : "195",
        bat_speed: 60,
      }),
    ),
  );

  test("settings are told so that another club can set them up", () => {
    const [found] = made(reps).machine;
    expect(found).toMatchObject({ pitchType: "fastball", speed: 65, at: "set", distanceFt: 40, swings: 20, days: 5 });
    // Worked value of the drag-only model (domain check pit-12): 0.4358 s.
    expect(found!.flightTimeS).toBeCloseTo(0.4358, 3);
    expect(found!.plateSpeed).toBeCloseTo(65 * Math.exp(-0.00188 * 40), 1);
    expect(found!.equalTime.find(({ distanceFt }) => distanceFt === 60.5)!.mph).toBeCloseTo((65 * 60.5) / 40, 9);
    // 11:30 and 12:30 (195 degrees) meet at 12:00, not at 6.
    expect(found!.axis).toMatchObject({ hour: 12, minute: 0 });
    expect(found!.axis!.agreement).toBeGreaterThan(0.9);
  });

  test("a speed read at the plate is that; without a distance there is no time", () => {
    const plate = reps.map((rep) => ({ ...rep, pitch_speed_at: "plate" }));
    expect(made(plate).machine[0]).toMatchObject({ plateSpeed: 65, flightTimeS: null });
    const near = reps.map(({ pitch_distance: _, ...rep }) => rep as Rep);
    expect(made(near).machine[0]).toMatchObject({ plateSpeed: null, flightTimeS: null, equalTime: [] });
  });

  test("growing is shown beside the change of minors alone", () => {
    const grown: Partial<Profile> = {
      born: "2012-03-01",
      heights: [
        { date: "2025-10-06", in: 64 },
        { date: "2026-02-10", in: 65.5 },
      ],
    };
    expect(made(reps, grown).growth).toMatchObject({ heightIn: 1.5, massLb: null, days: 127, peers: [] });
    expect(made(reps, { ...grown, born: "2000-03-01" }).growth).toBeNull();
  });
});

describe("work", () => {
  const swing = (week: number, more: object = {}): Rep => ({
    date: weekLater(week),
    environment: "tee",
    bat_speed: 60,
    ...more,
  });

  test("is counted by effort and by the bat's mass against the game bat of the day", () => {
    const { load } = made([
      swing(0, { implement: "b-33", effort: "max" }),
      swing(0, { implement: "b-heavy", effort: "game" }),
      swing(0, { implement: "unknown" }),
      swing(2, { implement: "game", effort: "technical" }),
      swing(2, { result: "take" }),
      swing(2, { swing_type: "practice" }),
    ]);
    expect(load.weeks[0]).toMatchObject({
      swings: 3,
      byEffort: { max: 1, game: 1, technical: 0, unknown: 1 },
      byMass: { heavier: 1, alike: 1, lighter: 0, unknown: 1 },
    });
    expect(load.weeks[2]).toMatchObject({ swings: 1, byEffort: { technical: 1 }, byMass: { alike: 1 } });
    expect(load).toMatchObject({ lastMax: weekLater(0), daysSinceMax: 139, weeksWithWork: 2, weeksInSeason: 20 });
  });

  test("none at all is twenty empty weeks, and no last day", () => {
    expect(made([]).load).toMatchObject({ lastMax: null, daysSinceMax: null, weeksWithWork: 0 });
  });
});

describe("fitting", () => {
  /** Rounds of three swings with each bat in turn; the heavy one is slower by `loss`. */
  const tried = (loss: number, rounds = 6): Rep[] =>
    weeks(rounds).flatMap((round) =>
      ["b-33", "b-heavy"].flatMap((implement, bat) =>
        weeks(3).map(
          (i): Rep => ({
            date: weekLater(2),
            environment: "front-toss",
            ball: "ball",
            side: "right",
            purpose: "fitting",
            implement,
            round: round + 1,
            bat_speed: 65 - loss * bat + wobble(round * 7 + bat * 3 + i),
            result: i === 2 && bat === 1 ? "miss" : "hit",
          }),
        ),
      ),
    );

  test("tells what each bat did, misses too, and the difference paired by round", () => {
    const [found] = made(tried(3)).fittings;
    expect(found).toMatchObject({ date: weekLater(2), environment: "front-toss", side: "right" });
    expect(found!.bats.map(({ id, swings, misses }) => [id, swings, misses])).toEqual([
      ["game", 18, 0],
      ["b-heavy", 18, 6],
    ]);
    const [pair] = found!.pairs;
    expect(pair).toMatchObject({ metric: "bat_speed", bat: "game", other: "b-heavy", rounds: 6, differs: true });
    expect(pair!.estimate).toBeCloseTo(3, 0);
    expect(pair!.ci95[0]).toBeGreaterThan(2);
    expect(pair!.pHolm).toBeGreaterThanOrEqual(pair!.p);
  });

  test("no difference that can be seen is an answer", () => {
    expect(made(tried(0)).fittings[0]!.pairs).toMatchObject([{ differs: false }]);
  });

  test("two rounds give no difference, one bat or six no fitting, and its swings are no training", () => {
    expect(made(tried(3, 2)).fittings[0]!.pairs).toEqual([]);
    expect(made(tried(3).filter(({ implement }) => implement === "b-33")).fittings).toEqual([]);
    const six = tried(3).map((rep, i) => ({ ...rep, implement: `bat-${i % 6}` }));
    expect(made(six).fittings).toEqual([]);
    expect(made(tried(3)).implements).toEqual([]);
  });

  test("other days, balls and sides are other fittings", () => {
    const other = tried(1).map((rep) => ({ ...rep, ball: "other" }));
    expect(made([...tried(3), ...other]).fittings).toHaveLength(2);
  });
});
