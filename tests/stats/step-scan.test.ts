import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tTwoSidedP } from "../../src/stats/distributions.ts";
import { lag1 } from "../../src/stats/lag1.ts";
import { olsMultiple } from "../../src/stats/ols-multiple.ts";
import { stepScan } from "../../src/stats/step-scan.ts";
import { randomFrom } from "../demo/random.ts";
import { expectNear, WRONG_VALUES } from "./samples.ts";

const FALSE_ALARM = 0.01;
const days = (n: number) => Array.from({ length: n }, (_, i) => i);

/** Values of a hitter who gains 0.1 a session with scatter 1, neighbours alike by `rho`. */
function steady(n: number, random: ReturnType<typeof randomFrom>, rho = 0): number[] {
  let wander = random.normal(0, 1);
  return days(n).map((i) => {
    if (i > 0) wander = rho * wander + Math.sqrt(1 - rho ** 2) * random.normal(0, 1);
    return 60 + 0.1 * i + wander;
  });
}

/** Share of simulated seasons with a step at p < 0.01. */
function alarms(runs: number, season: () => number[]): number {
  let found = 0;
  for (let run = 0; run < runs; run += 1) {
    const values = season();
    if (stepScan(days(values.length), values)!.p < FALSE_ALARM) found += 1;
  }
  return found / runs;
}

describe("a step is found", () => {
  test("at its place and with its size, whatever the hitter gains from week to week", () => {
    const wobble = [0.1, -0.2, 0.15, 0, -0.1, 0.2, -0.15, 0.05, -0.05, 0.1, -0.1, 0];
    const values = [...wobble, ...wobble].map((extra, i) => 60 + 0.3 * i + extra + (i < 10 ? 0 : 2.5));
    const step = stepScan(days(24), values)!;
    expect(step.at).toBe(10);
    expect(Math.abs(step.size - 2.5)).toBeLessThan(0.2);
    expect(step.p).toBeLessThan(1e-6);
  });

  test("in nine of ten seasons of 40 sessions where it is four times their scatter", () => {
    const random = randomFrom("a step of four");
    const stepped = () => steady(40, random).map((value, i) => value + (i < 20 ? 0 : 4));
    expect(alarms(200, stepped)).toBeGreaterThan(0.9);
  });
});

test("a step without any scatter is found too", () => {
  const step = stepScan(
    days(14),
    days(14).map((i) => (i < 8 ? 60 : 63)),
  )!;
  expect([step.at, step.p]).toEqual([8, 0]);
  expectNear(step.size, 3);
});

describe("a step is not imagined", () => {
  // 1 % with a standard error of sqrt(0.01 x 0.99 / 2000) = 0.22 %; three of them above.
  test.each([12, 20, 40])("in more than about one of a hundred seasons of %i sessions", (n) => {
    const random = randomFrom(`steady ${n}`);
    expect(alarms(2000, () => steady(n, random))).toBeLessThan(0.0167);
  });

  test("often where neighbouring sessions are alike, though more than that", () => {
    const random = randomFrom("alike");
    expect(alarms(1000, () => steady(20, random, 0.3))).toBeLessThan(0.08);
  });

  test("from one wild day", () => {
    const random = randomFrom("one wild day");
    const wild = () => steady(20, random).map((value, i) => (i === 9 ? value + 25 : value));
    expect(alarms(2000, wild)).toBeLessThan(0.0167);
  });

  test("in a hitter who gains much early and little late", () => {
    const random = randomFrom("levelling off");
    const levelling = () => days(30).map((i) => 60 + 3 * (1 - Math.exp(-i / 8)) + random.normal(0, 1));
    expect(alarms(2000, levelling)).toBeLessThan(0.0167);
  });
});

/** The same by another way: least squares with level, slope, bend and step at every place, values far inside five SDs. */
function bySearch(x: readonly number[], y: readonly number[]) {
  const squares = x.map((value) => value * value);
  const places = x.slice(4, x.length - 3).map((_, i) => i + 4);
  const fits = places.flatMap((at) => {
    const fit = olsMultiple([x, squares, x.map((_, i) => (i >= at ? 1 : 0))], y);
    if (fit.kind === "no-fit" || fit.standardErrors === null) return [];
    return [{ at, fit, size: fit.coefficients[3]!, se: fit.standardErrors[3]! }];
  });
  const best = fits.reduce((one, other) =>
    Math.abs(other.size / other.se) > Math.abs(one.size / one.se) ? other : one,
  );
  const [level, slope, bend, step] = best.fit.coefficients as [number, number, number, number];
  const left = y.map((value, i) => value - level - slope * x[i]! - bend * squares[i]! - (i >= best.at ? step : 0));
  const raw = lag1(left)!;
  const likeness = Math.min(0.9, Math.max(0, raw + (1 + 4 * raw) / x.length));
  const inflation = Math.sqrt((1 + likeness) / (1 - likeness));
  const p = places.length * tTwoSidedP(best.size / best.se / inflation, x.length - 4);
  return { at: best.at, size: best.size, se: best.se * inflation, p: Math.min(1, p), inflation };
}

describe("the same as least squares at every place", () => {
  test("for seasons with and without likeness of neighbours, at even and uneven days", () => {
    const random = randomFrom("every place");
    let widened = 0;
    let certain = 0;
    for (let season = 0; season < 120; season += 1) {
      const n = 12 + (season % 20);
      let day = -20;
      const x = days(n).map(() => {
        day += season % 2 === 0 ? 1 : 1 + Math.floor(4 * random.uniform());
        return day;
      });
      const stepAt = 4 + (season % (n - 7));
      const y = steady(n, random, season % 3 === 0 ? 0.6 : 0).map((value, i) => value + (i < stepAt ? 0 : season % 4));
      const found = stepScan(x, y)!;
      const wanted = bySearch(x, y);
      // A value beyond five SDs of its neighbours is pulled in first: those seasons are another test's.
      if (Math.abs(found.size - wanted.size) > 1e-6 && pulls(y)) continue;
      expect(found.at).toBe(wanted.at);
      expectNear(found.size, wanted.size, 1e-6);
      expectNear(found.se, wanted.se, 1e-6);
      expectNear(found.p, wanted.p, 1e-6);
      if (wanted.inflation > 1.1) widened += 1;
      if (wanted.p < 1) certain += 1;
    }
    expect(Math.min(widened, certain)).toBeGreaterThan(15);
  });

  test("a wild day counts as five SDs from the middle of its neighbours", () => {
    const y = [60, 61, 60.5, 61.5, 60, 61, 90, 61, 60.5, 60, 61.5, 60, 61, 60.5, 61.5, 60];
    const { middles, spread } = aroundNeighbours(y);
    const pulled = y.map((value, i) => (i === 6 ? middles[6]! + 5 * spread : value));
    const found = stepScan(days(16), y)!;
    const wanted = bySearch(days(16), pulled);
    expect(found.at).toBe(wanted.at);
    expectNear(found.size, wanted.size, 1e-8);
    expectNear(found.se, wanted.se, 1e-8);
  });
});

const middleOf = (values: readonly number[]): number => {
  const rising = [...values].sort((a, b) => a - b);
  return (rising[Math.floor((rising.length - 1) / 2)]! + rising[Math.ceil((rising.length - 1) / 2)]!) / 2;
};

/** Middles of five neighbours, and the scatter about them as an SD. */
function aroundNeighbours(y: readonly number[]) {
  const middles = y.map((_, i) => middleOf(y.slice(Math.max(0, i - 2), i + 3)));
  return { middles, spread: middleOf(y.map((value, i) => Math.abs(value - middles[i]!))) / 0.6744897501960817 };
}

function pulls(y: readonly number[]): boolean {
  const { middles, spread } = aroundNeighbours(y);
  return y.some((value, i) => Math.abs(value - middles[i]!) > 5 * spread);
}

describe("where nothing can be said", () => {
  test("fewer than twelve sessions, one day, and an exact line or curve have no step", () => {
    expect(stepScan(days(11), days(11))).toBeNull();
    expect(
      stepScan(
        days(12).map(() => 3),
        days(12),
      ),
    ).toBeNull();
    expect(
      stepScan(
        days(12),
        days(12).map(() => 60),
      ),
    ).toBeNull();
    expect(stepScan(days(12), days(12))).toBeNull();
    expect(
      stepScan(
        days(20),
        days(20).map((i) => 60.1 + 0.3 * i - 0.007 * i * i),
      ),
    ).toBeNull();
  });

  test.each(WRONG_VALUES)("a session of %s is refused", (wrong) => {
    expect(() =>
      stepScan(
        days(12),
        days(12).map((i) => (i === 3 ? wrong : i)),
      ),
    ).toThrow(RangeError);
  });
});

test("another unit and another zero move neither place nor certainty of a step", () => {
  const values = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 12, maxLength: 30 });
  fc.assert(
    fc.property(values, fc.integer({ min: -20, max: 20 }), (list, shift) => {
      const x = days(list.length);
      const plain = stepScan(x, list);
      const turned = stepScan(
        x,
        list.map((value) => -2 * (value + shift)),
      );
      expect(turned === null).toBe(plain === null);
      if (plain === null || turned === null || plain.se < 1e-9) return;
      expectNear(turned.p, plain.p, 1e-6);
      if (plain.at === turned.at) expectNear(turned.size, -2 * plain.size, 1e-6);
    }),
  );
});
