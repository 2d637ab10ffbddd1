import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { groupSums } from "../../src/stats/group-sums.ts";
import { ols } from "../../src/stats/ols.ts";
import { type RandomIntercept, randomIntercept, randomInterceptSlope } from "../../src/stats/random-intercept.ts";
import { profileAt, remlCriterion } from "../../src/stats/random-intercept-profile.ts";
import { expectNear, numbersIn, reordered, speed, WRONG_VALUES } from "./samples.ts";

/** A rep: session, week, speed. */
type Rep = readonly [session: string, week: number, speed: number];

const rep: fc.Arbitrary<Rep> = fc.tuple(
  fc.constantFrom("a", "b", "c", "d", "e"),
  fc.integer({ min: 0, max: 9 }),
  speed,
);
const reps = fc.array(rep, { maxLength: 30 });

/** Sessions of one number of reps each, every session at a week of its own. */
const balanced = fc
  .tuple(fc.integer({ min: 3, max: 8 }), fc.integer({ min: 2, max: 6 }))
  .chain(([sessions, size]) =>
    fc.tuple(
      fc.uniqueArray(fc.integer({ min: 0, max: 40 }), { minLength: sessions, maxLength: sessions }),
      fc.array(fc.array(speed, { minLength: size, maxLength: size }), { minLength: sessions, maxLength: sessions }),
    ),
  );

const fitReps = (list: readonly Rep[], withWeek = true) =>
  randomIntercept(
    list.map(([, , value]) => value),
    withWeek ? list.map(([, week]) => week) : null,
    list.map(([session]) => session),
  );

function model(...call: Parameters<typeof randomIntercept>): RandomIntercept {
  const fitted = randomIntercept(...call);
  if (fitted.kind !== "model") throw new Error(`expected a model, got ${fitted.reason}`);
  return fitted;
}

const average = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

describe("known answers", () => {
  test("three sessions of two, worked by hand: mean squares 14/3 between and 1/2 within", () => {
    const fitted = model([61, 62, 64, 65, 63, 64], null, ["a", "a", "b", "b", "c", "c"]);
    expect([fitted.rows, fitted.groups, fitted.slope, fitted.boundary]).toEqual([6, ["a", "b", "c"], null, false]);
    const { estimate, se, satterthwaite, kenwardRoger } = fitted.intercept;
    expect(estimate).toBeCloseTo(379 / 6, 12);
    expect(se).toBeCloseTo(Math.sqrt(14 / 3 / 6), 12);
    expect(fitted.residualSd ** 2).toBeCloseTo(0.5, 12);
    expect(fitted.groupSd ** 2).toBeCloseTo((14 / 3 - 0.5) / 2, 12);
    for (const { se: own, df, t, interval } of [satterthwaite, kenwardRoger]) {
      expect(own).toBeCloseTo(se, 12);
      expect(df).toBeCloseTo(2, 9);
      expect(t).toBeCloseTo(estimate / se, 9);
      // The 0.975 quantile of t with 2 degrees of freedom, in closed form: 0.95 sqrt(2 / (1 - 0.95^2)).
      const half = 0.95 * Math.sqrt(2 / (1 - 0.95 ** 2)) * se;
      expect(interval![0]).toBeCloseTo(estimate - half, 7);
      expect(interval![1]).toBeCloseTo(estimate + half, 7);
    }
    // Each session's own part is its mean's deviation, drawn in by 1 - MSW / MSB.
    const drawnIn = 1 - 0.5 / (14 / 3);
    [61.5, 64.5, 63.5].forEach((mean, i) => {
      expect(fitted.modes[i]).toBeCloseTo(drawnIn * (mean - 379 / 6), 10);
    });
    // Two eigenvalues of the covariance within (1/2, three times) and between (14/3, three times), and X' V^-1 X = 6 / (14/3).
    const logs = 3 * Math.log(0.5) + 3 * Math.log(14 / 3) + Math.log(6 / (14 / 3));
    expect(fitted.criterion).toBeCloseTo(5 * Math.log(2 * Math.PI) + 5 + logs, 9);
  });

  test("sessions that differ less than their reps let expect have no SD of their own: the boundary", () => {
    const fitted = model([1, 5, 2, 4, 3, 3], null, ["a", "a", "b", "b", "c", "c"]);
    expect([fitted.groupSd, fitted.boundary, fitted.modes]).toEqual([0, true, [0, 0, 0]]);
    expect(fitted.residualSd).toBeCloseTo(Math.sqrt(2), 12);
    expect(fitted.intercept.satterthwaite.df).toBe(5);
    expect(fitted.intercept.kenwardRoger.df).toBeCloseTo(2, 9);
  });

  test("a wider level gives a wider interval and nothing else", () => {
    const call = [[61, 62, 64, 65, 63, 64], null, ["a", "a", "b", "b", "c", "c"]] as const;
    const [narrow, wide] = [model(...call, 0.8), model(...call, 0.99)];
    expect(narrow.intercept.kenwardRoger.interval![0]).toBeGreaterThan(wide.intercept.kenwardRoger.interval![0]);
    expect(narrow.intercept.kenwardRoger.interval![1]).toBeLessThan(wide.intercept.kenwardRoger.interval![1]);
    expect(narrow.groupSd).toBe(wide.groupSd);
    expect(model(...call)).toEqual(model(...call, 0.95));
  });

  test("of two minima the deeper one: once inside, once at the boundary", () => {
    const inside = [
      [17, 6, 0, 2, 7, 1, 4],
      [0, 1, 2, 3, 3, 4, 5],
    ] as const;
    const edge = [
      [5, 6, 7, 3, 0, 6, 12, 1, 4, 7, 4, 4],
      [0, 0, 0, 0, 1, 1, 2, 3, 4, 4, 4, 5],
    ] as const;
    for (const [[y, group], boundary] of [
      [inside, false],
      [edge, true],
    ] as const) {
      const sums = groupSums(y, null, group, 6);
      // The derivative by the ratio: rising at 0, falling further out, rising at last.
      const signs = [0, boundary ? 0.45 : 0.5, 100].map((ratio) => Math.sign(profileAt(sums, ratio).score));
      expect(signs).toEqual([1, -1, 1]);
      expect(model(y, null, group).boundary).toBe(boundary);
    }
    expect(model(...([inside[0], null, inside[1]] as const)).criterion).toBeCloseTo(39.95745207652, 9);
  });

  test("a very small residual SD beside a large one of the sessions is found, however small", () => {
    const y = [0, 1e-6, 2e-6, 50, 50 + 1e-6, 50 + 3e-6, 90, 90 + 1e-6, 90 + 2e-6];
    const fitted = model(y, null, ["a", "a", "a", "b", "b", "b", "c", "c", "c"]);
    const within = (2 + 14 / 3 + 2) / 6;
    expect(fitted.residualSd).toBeCloseTo(Math.sqrt(within) * 1e-6, 11);
    expect(fitted.groupSd).toBeCloseTo(Math.sqrt(6100 / 3), 4);
  });

  test("names of groups keep their order and their type", () => {
    expect(model([1, 2, 5, 6, 9, 8], null, ["1", "1", 1, 1, "z", "z"]).groups).toEqual(["1", 1, "z"]);
  });
});

describe("no model, and why", () => {
  const reasons: [string, readonly number[], readonly number[] | null, readonly string[]][] = [
    ["too-few", [], null, []],
    ["too-few", [], [], []],
    ["too-few", [61], null, ["a"]],
    ["too-few", [61, 62], null, ["a", "a"]],
    ["too-few", [61, 62, 64], [0, 1, 2], ["a", "a", "a"]],
    ["no-repeats", [61, 62], null, ["a", "b"]],
    ["too-few", [61, 62], [0, 1], ["a", "b"]],
    ["no-repeats", [61, 62, 64], [0, 1, 2], ["a", "b", "c"]],
    ["same-x", [61, 62, 64, 65], [3, 3, 3, 3], ["a", "a", "b", "b"]],
    ["too-few", [61, 62, 64, 65], [0, 0, 1, 1], ["a", "a", "b", "b"]],
    ["too-few", [61, 62, 64], [0, 1, 2], ["a", "a", "b"]],
    ["no-repeats", [60, 61, 63, 60], [1, 0, 0, 0], ["a", "a", "b", "c"]],
    ["no-spread", [61, 61, 61, 61], null, ["a", "a", "b", "b"]],
    ["no-spread", [61.3, 61.3, 60.1, 60.1, 64.7, 64.7], [0, 0, 1, 1, 2, 2], ["a", "a", "b", "b", "c", "c"]],
    ["no-spread", [60, 60.3, 61, 61.3, 64, 64.3], [0, 1, 0, 1, 0, 1], ["a", "a", "b", "b", "c", "c"]],
  ];
  test.each(reasons)("%s: speeds %j, weeks %j, sessions %j", (reason, y, x, group) => {
    expect(randomIntercept(y, x, group)).toEqual({ kind: "no-model", reason });
  });

  test("one more session or rep, and there is one", () => {
    expect(randomIntercept([61, 62, 64], null, ["a", "a", "b"]).kind).toBe("model");
    expect(randomIntercept([61, 62, 64, 65, 60, 61], [0, 0, 1, 1, 2, 2], ["a", "a", "b", "b", "c", "c"]).kind).toBe(
      "model",
    );
    expect(randomIntercept([61, 62, 64, 65], [0, 1, 0, 2], ["a", "a", "b", "b"]).kind).toBe("model");
  });

  test("sessions without reps are left out of the slope, and the rest may be too few", () => {
    const weeks = [0, 1, 2, 3];
    expect(randomInterceptSlope([], [])).toEqual({ kind: "no-model", reason: "too-few" });
    expect(randomInterceptSlope(weeks, [[], [], [], []])).toEqual({ kind: "no-model", reason: "too-few" });
    expect(randomInterceptSlope(weeks, [[60, 61], [], [], [63, 62]])).toEqual({ kind: "no-model", reason: "too-few" });
    expect(randomInterceptSlope(weeks, [[60], [61], [64], [63]])).toEqual({ kind: "no-model", reason: "no-repeats" });
    expect(
      randomInterceptSlope(
        [1, 1, 1],
        [
          [60, 61],
          [61, 62],
          [64, 60],
        ],
      ),
    ).toEqual({ kind: "no-model", reason: "same-x" });
    const without = randomInterceptSlope(
      [0, 2, 3],
      [
        [60, 61],
        [64, 66],
        [63, 62],
      ],
    );
    expect(randomInterceptSlope(weeks, [[60, 61], [], [64, 66], [63, 62]])).toEqual(without);
    expect(without).toMatchObject({ kind: "line", sessions: 3, reps: 6 });
  });
});

describe("wrong calls", () => {
  const y = [61, 62, 64, 65, 63, 64];
  const x = [0, 0, 1, 1, 2, 2];
  const group = ["a", "a", "b", "b", "c", "c"];

  test.each(WRONG_VALUES)("a speed or a week of %s is refused", (wrong) => {
    expect(() => randomIntercept([wrong, ...y.slice(1)], x, group)).toThrow(RangeError);
    expect(() => randomIntercept(y, [...x.slice(1), wrong], group)).toThrow(RangeError);
    expect(() =>
      randomInterceptSlope(
        [0, 1, wrong],
        [
          [1, 2],
          [1, 3],
          [4, 4],
        ],
      ),
    ).toThrow(/times\[2\]/);
    expect(() =>
      randomInterceptSlope(
        [0, 1, 2],
        [
          [1, 2],
          [1, wrong],
          [4, 4],
        ],
      ),
    ).toThrow(/reps\[1\]/);
  });

  test("lists of unequal length and a level of 0 or 1 are refused", () => {
    expect(() => randomIntercept(y, [0, 1], group)).toThrow(/x has 2 values and y has 6/);
    expect(() => randomIntercept(y, x, ["a"])).toThrow(/y has 6 values and group has 1/);
    expect(() => randomIntercept(y, x, group, 1)).toThrow(/level/);
    expect(() => randomIntercept([], null, [], 0)).toThrow(RangeError);
    expect(() => randomInterceptSlope([0, 1], [[1, 2]])).toThrow(/2 times for 1 sessions/);
  });
});

describe("laws", () => {
  test("sessions of equal size: the slope of the session means, and sessions - 2 degrees of freedom", () => {
    fc.assert(
      fc.property(balanced, ([weeks, sessions]) => {
        const fitted = randomInterceptSlope(weeks, sessions);
        if (fitted.kind === "no-model") {
          expect(fitted.reason).toBe("no-spread");
          return;
        }
        const plain = ols(weeks, sessions.map(average));
        if (plain.kind !== "line") throw new Error("no line");
        expectNear(fitted.slope, plain.slope);
        expectNear(fitted.df, weeks.length - 2, 1e-6);
        if (fitted.sessionSd > 1e-6) {
          expectNear(fitted.se, plain.seSlope);
          const size = sessions[0]!.length;
          expectNear(fitted.sessionSd ** 2 + fitted.repSd ** 2 / size, plain.residualSd! ** 2, 1e-6);
        }
        expect(fitted.ci95[0] + fitted.ci95[1]).toBeCloseTo(2 * fitted.slope, 6);
      }),
    );
  });

  test("the short way to the slope is Kenward and Roger's of the whole model, at most sessions - 2 degrees of freedom", () => {
    const unequal = fc.array(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.array(speed, { maxLength: 8 })), {
      maxLength: 10,
    });
    fc.assert(
      fc.property(unequal, (list) => {
        const weeks = list.map(([week]) => week);
        const line = randomInterceptSlope(
          weeks,
          list.map(([, values]) => values),
        );
        const whole = fitReps(list.flatMap(([week, values], i) => values.map((value): Rep => [`${i}`, week, value])));
        if (line.kind === "no-model" || whole.kind === "no-model") {
          expect(line).toEqual(whole);
          return;
        }
        const { estimate, kenwardRoger } = whole.slope!;
        expect([line.slope, line.se]).toEqual([estimate, kenwardRoger.se]);
        expect(line.df).toBe(Math.min(kenwardRoger.df!, whole.groups.length - 2));
        expect([line.sessionSd, line.repSd]).toEqual([whole.groupSd, whole.residualSd]);
        expect([line.sessions, line.reps]).toEqual([whole.groups.length, whole.rows]);
      }),
    );
  });

  test("no ratio of the variances has a lower criterion, and its derivative is the slope of the criterion", () => {
    fc.assert(
      fc.property(reps, fc.boolean(), (list, withWeek) => {
        const fitted = fitReps(list, withWeek);
        if (fitted.kind === "no-model") return;
        const names = [...fitted.groups];
        const sums = groupSums(
          list.map(([, , value]) => value),
          withWeek ? list.map(([, week]) => week) : null,
          list.map(([session]) => names.indexOf(session)),
          names.length,
        );
        for (let power = -4; power <= 4; power += 0.25) {
          const ratio = 10 ** power;
          const at = (share: number) => remlCriterion(sums, profileAt(sums, ratio * share));
          expect(at(1)).toBeGreaterThanOrEqual(fitted.criterion - 1e-9 * Math.max(1, Math.abs(fitted.criterion)));
          const measured = (at(1 + 1e-4) - at(1 - 1e-4)) / (2e-4 * ratio);
          const { score } = profileAt(sums, ratio);
          expect(Math.abs(measured - score) * ratio).toBeLessThan(1e-6 * (1 + list.length));
        }
        expect(remlCriterion(sums, profileAt(sums, 0))).toBeGreaterThanOrEqual(fitted.criterion - 1e-9);
      }),
    );
  });

  test("the adjusted standard error is never below the plain one, and the two agree on the estimate", () => {
    fc.assert(
      fc.property(reps, (list) => {
        const fitted = fitReps(list);
        if (fitted.kind === "no-model") return;
        for (const effect of [fitted.intercept, fitted.slope!]) {
          expect(effect.satterthwaite.se).toBe(effect.se);
          expect(effect.kenwardRoger.se).toBeGreaterThanOrEqual(effect.se * (1 - 1e-9));
          for (const { t, p, se, interval } of [effect.satterthwaite, effect.kenwardRoger]) {
            if (t === null) continue;
            expectNear(t, effect.estimate / se);
            expect(p).toBeGreaterThanOrEqual(0);
            expect(p).toBeLessThanOrEqual(1);
            if (interval !== null && p !== null && Math.abs(p - 0.05) > 1e-6) {
              expect(interval[0] <= 0 && interval[1] >= 0).toBe(p > 0.05);
            }
          }
        }
      }),
    );
  });

  test("the order of the reps moves nothing but the order of the sessions", () => {
    fc.assert(
      fc.property(reordered(reps), ([list, other]) => {
        const [a, b] = [fitReps(list), fitReps(other)];
        if (a.kind === "no-model" || b.kind === "no-model") {
          expect(a).toEqual(b);
          return;
        }
        expectNear(b.criterion, a.criterion);
        expect(b.boundary).toBe(a.boundary);
        expectNear(b.slope!.estimate, a.slope!.estimate, 1e-6);
        expectNear(b.slope!.kenwardRoger.se, a.slope!.kenwardRoger.se, 1e-6);
        expectNear(b.slope!.kenwardRoger.df, a.slope!.kenwardRoger.df, 1e-5);
        a.groups.forEach((name, i) => {
          expectNear(b.modes[b.groups.indexOf(name)]!, a.modes[i]!, 1e-5);
        });
      }),
    );
  });

  test("another first week, a fixed speed added, another unit of either: slope, errors and SDs follow", () => {
    fc.assert(
      fc.property(reps, speed, speed, (list, later, faster) => {
        const a = fitReps(list);
        const b = fitReps(list.map(([session, week, value]) => [session, 8 * (week + later), -4 * (value + faster)]));
        if (a.kind === "no-model" || b.kind === "no-model") {
          expect(a).toEqual(b);
          return;
        }
        expectNear(b.slope!.estimate, -a.slope!.estimate / 2, 1e-6);
        expectNear(b.slope!.se, a.slope!.se / 2, 1e-6);
        expectNear(b.slope!.satterthwaite.df, a.slope!.satterthwaite.df, 1e-4);
        expectNear(b.slope!.kenwardRoger.df, a.slope!.kenwardRoger.df, 1e-4);
        expectNear(b.residualSd, 4 * a.residualSd, 1e-6);
        expectNear(b.groupSd, 4 * a.groupSd, 1e-4);
        const at = (fitted: RandomIntercept, week: number) => fitted.intercept.estimate + fitted.slope!.estimate * week;
        expectNear(at(b, 8 * (5 + later)), -4 * (at(a, 5) + faster), 1e-5);
        // REML of other units: the density of y changes by 4 a row, less what the two coefficients take up.
        const change = 2 * ((list.length - 2) * Math.log(4) + Math.log(8));
        expectNear(b.criterion, a.criterion + change, 1e-6);
      }),
    );
  });

  test("no result is ever NaN or infinite, whatever the size of the values", () => {
    const any = fc.oneof(
      speed,
      fc.constantFrom(0, 1e150, -1e150, 1e-300, 5e-324, 61.3),
      fc.double({ min: -1e150, max: 1e150, noNaN: true }),
    );
    const row = fc.tuple(fc.constantFrom("a", "b", "c", "d"), any, any);
    fc.assert(
      fc.property(fc.array(row, { maxLength: 14 }), fc.boolean(), (list, withWeek) => {
        try {
          expect(numbersIn(fitReps(list, withWeek)).filter((number) => !Number.isFinite(number))).toEqual([]);
        } catch (error) {
          if (!(error instanceof RangeError)) throw error;
          expect(error.message).toMatch(/too large for a double$/);
        }
      }),
      { numRuns: 500 },
    );
  });

  test("speeds of any ordinary or extreme unit give the same degrees of freedom", () => {
    const y = [1, 2, 3, 5, 4, 6, 8, 7, 9, 9];
    const x = [0, 0, 0, 1, 1, 1, 3, 3, 3, 3];
    const group = ["a", "a", "a", "b", "b", "b", "c", "c", "c", "c"];
    const plain = model(y, x, group);
    for (const unit of [1e-300, 1e-20, 1e140]) {
      const scaled = model(
        y.map((value) => value * unit),
        x,
        group,
      );
      expectNear(scaled.slope!.kenwardRoger.df, plain.slope!.kenwardRoger.df);
      expectNear(scaled.slope!.kenwardRoger.t, plain.slope!.kenwardRoger.t);
      expectNear(scaled.residualSd / unit, plain.residualSd);
    }
  });
});
