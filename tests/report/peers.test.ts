import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { peersOf } from "../../src/report/peers.ts";
import type { Reference } from "../../src/schema/season.ts";
import { normalCdf } from "../../src/stats/distributions.ts";
import { wilson } from "../../src/stats/proportion-ci.ts";
import { quantile } from "../../src/stats/quantile.ts";
import { aged, asked, ending, lineRow, lmsRow, meanSdRow, metricOf, valueRow, valueRows } from "./peer-rows.ts";

const steps = (n: number, from = 50, by = 1) => Array.from({ length: n }, (_, i) => from + by * i);
/** A case of the outside values in tests/reference/stats, whose files name where they come from. */
function outside(file: string, id: string) {
  const path = join(import.meta.dirname, "..", "reference", "stats", `${file}.json`);
  const { cases } = JSON.parse(readFileSync(path, "utf8"));
  return cases.find((one: { id: string }) => one.id === id);
}

describe("athletes' own values", () => {
  test("give bands as type-8 quantiles and the mean rule's percentile with Wilson's interval", () => {
    const values = [...steps(20, 51), 60];
    const { peers, peersTooFew } = peersOf(ending(60, null), valueRows(values));
    expect(peersTooFew).toBeNull();
    expect(peers).toMatchObject({
      group: { sport: "baseball", sex: "male", level: "high-school", ages: [null, null] },
      source: "Invented league",
      year: 2024,
      n: 21,
      kind: "value",
      start: null,
      bandsStart: null,
    });
    expect(peers?.bands).toEqual({
      p10: quantile(values, 0.1, 8),
      p25: quantile(values, 0.25, 8),
      p50: quantile(values, 0.5, 8),
      p75: quantile(values, 0.75, 8),
      p90: quantile(values, 0.9, 8),
    });
    // Nine below and two equal, each of whom counts half.
    expect(peers?.end).toMatchObject({ value: 60, age: null, percentile: (100 * 10) / 21 });
    const [low, high] = wilson(10, 21, 0.95);
    expect(peers?.end?.ci95).toEqual([100 * low, 100 * high]);
  });

  test("agree with R and the published formulas on percentile ranks", () => {
    const { inputs, expected } = outside("percentile-rank", "airquality-ozone");
    const rows = valueRows(inputs.peers);
    for (const { value, mean, wilsonMean } of expected.results) {
      const end = peersOf(ending(value), rows).peers?.end;
      expect(end?.percentile).toBeCloseTo(mean, 10);
      expect(end?.ci95?.[0]).toBeCloseTo(wilsonMean[0], 9);
      expect(end?.ci95?.[1]).toBeCloseTo(wilsonMean[1], 9);
    }
  });

  test("of nineteen athletes are too few, and their number is said", () => {
    const few = peersOf(asked(), valueRows(steps(19)));
    expect(few).toEqual({ peers: null, peerLines: [], peersTooFew: 19 });
    expect(peersOf(asked(), valueRows(steps(20))).peers?.n).toBe(20);
    expect(peersOf(asked(), valueRows([61]))).toMatchObject({ peers: null, peersTooFew: 1 });
  });

  test("along age are R's regression quantiles (quantreg, on Engel's data) at the athlete's age", () => {
    const { inputs, expected } = outside("quantile-regression", "engel");
    const rows = aged(inputs.x, inputs.y);
    const [before, now] = [900, 1100];
    const { peers } = peersOf(asked({ start: { value: 500, age: before }, end: { value: 700, age: now } }), rows);
    const line = (tau: number) => expected.lines.find((one: { tau: number }) => one.tau === tau);
    for (const [name, tau] of [
      ["p10", 0.1],
      ["p25", 0.25],
      ["p50", 0.5],
      ["p75", 0.75],
      ["p90", 0.9],
    ] as const) {
      const { intercept, slope } = line(tau);
      expect(peers?.bands[name]).toBeCloseTo(intercept + slope * now, 6);
      expect(peers?.bandsStart?.[name]).toBeCloseTo(intercept + slope * before, 6);
    }
    expect(peers?.n).toBe(235);
    const onMedian = line(0.5).intercept + line(0.5).slope * now;
    expect(peersOf(ending(onMedian, now), rows).peers?.end?.percentile).toBeCloseTo(50, 5);
  });

  // Values rise by two a year, with the same ten steps at every age.
  const ages = steps(5, 14).flatMap((age) => Array<number>(10).fill(age));
  const along = aged(
    ages,
    ages.map((age, i) => 2 * age + (i % 10)),
  );

  test("move with age, so that a hitter who grows with the others keeps the percentile", () => {
    const { peers } = peersOf(asked({ start: { value: 34.5, age: 15 }, end: { value: 38.5, age: 17 } }), along);
    expect(peers?.start?.percentile).toBeCloseTo(peers?.end?.percentile ?? Number.NaN, 9);
    expect(peers?.bands.p50).toBeCloseTo((peers?.bandsStart?.p50 ?? Number.NaN) + 4, 9);
    expect(peers?.group.ages).toEqual([14, 18]);
    const count = ((peers?.end?.percentile ?? 0) / 100) * 50;
    expect(peers?.end?.ci95?.[0]).toBeCloseTo(100 * wilson(count, 50, 0.95)[0], 9);
  });

  test("are never drawn on beyond their ages, at either end", () => {
    expect(peersOf(ending(40, 18.01), along)).toEqual({ peers: null, peerLines: [], peersTooFew: null });
    const young = peersOf(asked({ start: { value: 30, age: 13.9 }, end: { value: 36, age: 14.2 } }), along).peers;
    expect(young).toMatchObject({ start: null, bandsStart: null, end: { age: 14.2 } });
  });

  test("stand as they are where ages do not tell: unknown, fewer than thirty, or less than two years apart", () => {
    const plain = (rows: readonly Reference[], age: number | null = 16) => {
      const values = rows.flatMap((row) => (row.kind === "value" ? [row.value] : []));
      expect(peersOf(ending(60, age), rows).peers?.bands.p50).toBe(quantile(values, 0.5, 8));
    };
    plain(along, null);
    plain(aged(ages.slice(0, 29), steps(29)));
    plain(aged(Array<number>(40).fill(15), steps(40)));
    plain(
      aged(
        ages.map((age) => 14 + (age - 14) * 0.49),
        steps(50),
      ),
    );
    plain([...along, valueRow(40)]);
  });

  test("never cross: lines that do, beyond nearly all of the sample, are put in order", () => {
    const young = [14.5, 14.5, 14.5, 14, 14, 14.5, 14.5, 15, 15, 14, 14, 14.5, 15, 14, 14.5, 15, 14.5, 15, 14.5, 14.5];
    const also = [14, 14.5, 14.5, 15, 15, 14.5, 14.5, 14.5, 18, 18];
    const values = [56, 57, 55, 52, 55, 57, 54, 53, 57, 52, 51, 52, 58, 53, 56, 56, 51, 57, 51, 55];
    const more = [55, 54, 52, 57, 53, 54, 52, 54, 57, 54];
    const found = peersOf(ending(57, 17.5), aged([...young, ...also], [...values, ...more])).peers;
    // The line of the upper tenth lies five below that of the upper quarter there.
    const bands = Object.values(found?.bands ?? {});
    expect(bands).toEqual(bands.toSorted((a, b) => a - b));
    expect(bands).toHaveLength(5);
  });

  test("that are all the same have a value like them in the middle", () => {
    const same = aged(
      ages,
      ages.map(() => 60),
    );
    expect(peersOf(ending(60, 16), same).peers?.end?.percentile).toBe(50);
    expect(peersOf(ending(59.9, 16), same).peers?.end?.percentile).toBe(0.5);
    expect(peersOf(ending(60.1, 16), same).peers?.end?.percentile).toBe(99.5);
  });

  test("beyond all of them leave half a percent at either end", () => {
    expect(peersOf(ending(0, 16), along).peers?.end?.percentile).toBe(0.5);
    expect(peersOf(ending(99, 16), along).peers?.end?.percentile).toBe(99.5);
  });

  test("without a level are those of the athlete's age", () => {
    const of = (low: number, n: number) => valueRows(steps(n, 40), { level: null, ages: [low, low + 1] });
    // Too few for lines in age.
    const rows = [...of(12, 20), ...of(14, 9)];
    expect(peersOf(ending(60, 13.5), rows).peers).toMatchObject({
      n: 20,
      group: { level: null, ages: [12, 13] },
      bands: { p50: 49.5 },
    });
    expect(peersOf(ending(60, 15.9), rows).peersTooFew).toBe(9);
    for (const age of [null, 11, 16]) {
      expect(peersOf(ending(60, age), rows)).toMatchObject({ peers: null, peersTooFew: null });
    }
  });
});

describe("published tables", () => {
  test("L, M and S give the percentiles that the CDC growth charts print (boys' weight at 24 months)", () => {
    const { inputs, expected, published } = outside("lms", "cdc-weight-boys-24m");
    const rows = [lmsRow(inputs.L, inputs.M, inputs.S)];
    const { peers } = peersOf(ending(12.7), rows);
    const printed = (percentile: number): number => published.values[published.percentiles.indexOf(percentile)];
    for (const [name, value] of Object.entries(peers?.bands ?? {})) {
      // The table prints eight decimals.
      expect(value).toBeCloseTo(printed(Number(name.slice(1))), 7);
    }
    for (const [i, value] of inputs.values.entries()) {
      const end = peersOf(ending(value), rows).peers?.end;
      expect(end?.percentile).toBeCloseTo(expected.percentileOfValues[i], 9);
      expect(end?.ci95).toBeNull();
    }
  });

  test("rows at single ages are read straight between two of them, and not beyond", () => {
    const rows = [lmsRow(1, 50, 0.1, { ages: [14, 14], n: 60 }), lmsRow(1, 60, 0.2, { ages: [16, 16], n: 40 })];
    const { peers } = peersOf(asked({ start: { value: 50, age: 14 }, end: { value: 55, age: 15 } }), rows);
    expect(peers).toMatchObject({ kind: "lms", n: 40, bands: { p50: 55 }, bandsStart: { p50: 50 } });
    // L = 1 is a normal distribution with M and M S.
    expect(peers?.bands.p90).toBeCloseTo(55 + 55 * 0.15 * 1.2815515655446004, 9);
    expect(peersOf(ending(55, 13.9), rows).peers).toBeNull();
    expect(peersOf(ending(55, 16.1), rows).peers).toBeNull();
    expect(peersOf(ending(55, null), rows).peers).toBeNull();
  });

  test("a row for a range of ages holds them to the end of the last year of life", () => {
    const rows = [meanSdRow(50, 4, { ages: [13, 14], n: 30 }), meanSdRow(58, 5, { ages: [15, 16], n: 30 })];
    const middle = (age: number) => peersOf(ending(55, age), rows).peers?.bands.p50;
    expect([13, 14.9, 15, 16.99].map(middle)).toEqual([50, 50, 58, 58]);
    expect(middle(17)).toBeUndefined();
    const moved = peersOf(asked({ start: { value: 50, age: 14.9 }, end: { value: 58, age: 15.3 } }), rows).peers;
    expect(moved).toMatchObject({ start: { percentile: 50 }, end: { percentile: 50 }, bandsStart: { p50: 50 } });
  });

  test("of several rows that hold an age the narrowest is read, to the letter before to the year", () => {
    const middle = (rows: readonly Reference[]) => peersOf(ending(55, 14.5), rows).peers?.bands.p50;
    const row = (mean: number, low: number, high: number, n = 30) => meanSdRow(mean, 4, { ages: [low, high], n });
    expect(middle([row(50, 13, 14, 90), row(51, 14, 15)])).toBe(51);
    expect(middle([row(50, 10, 18, 90), row(51, 14, 15)])).toBe(51);
    expect(middle([row(50, 14, 15), row(51, 14, 15, 90)])).toBe(51);
    expect(middle([meanSdRow(50, 4, { n: 90 }), row(51, 10, 18)])).toBe(51);
  });

  test("a mean and a standard deviation are taken as normal", () => {
    const { peers } = peersOf(asked({ end: { value: 67, age: null } }), [meanSdRow(60, 5, { n: 33 })]);
    expect(peers).toMatchObject({ kind: "mean-sd", n: 33, bandsStart: null, start: { percentile: 50 } });
    expect(peers?.end?.percentile).toBeCloseTo(100 * normalCdf(1.4), 10);
    expect(peers?.end?.ci95?.[0]).toBeCloseTo(100 * wilson(33 * normalCdf(1.4), 33, 0.95)[0], 8);
  });

  test("with an n below twenty give no bands; without one, bands and no interval", () => {
    expect(peersOf(asked(), [meanSdRow(60, 5, { n: 19 })])).toMatchObject({ peers: null, peersTooFew: 19 });
    expect(peersOf(asked(), [lmsRow(1, 60, 0.1, { n: 12 })])).toMatchObject({ peers: null, peersTooFew: 12 });
    expect(peersOf(asked(), [meanSdRow(60, 5)]).peers).toMatchObject({ n: null, end: { ci95: null } });
  });

  test("a mean alone is a line and never a band", () => {
    const lines = [
      lineRow(61, { n: 12 }),
      lineRow(58, { level: null, ages: [16, 17], source: "Other league", year: 2020 }),
      lineRow(40, { level: null, ages: [10, 12] }),
      lineRow(70, { level: "college" }),
    ];
    expect(peersOf(asked(), lines)).toEqual({
      peers: null,
      peerLines: [
        { value: 61, label: "high-school", n: 12, source: "Invented league", year: 2024 },
        { value: 58, label: "16–17", n: null, source: "Other league", year: 2020 },
      ],
      peersTooFew: null,
    });
    expect(peersOf(ending(60, null), lines).peerLines.map(({ value }) => value)).toEqual([61]);
  });

  test("values that a distribution cannot hold have no place in it", () => {
    const angle = { ...asked({ metric: metricOf("attack_angle") }), end: { value: -3, age: 16 } };
    const { peers } = peersOf(angle, [lmsRow(1, 8, 0.4, { metric: "attack_angle" })]);
    expect(peers).toMatchObject({ end: null, bands: { p50: 8 } });
    // With L S of -1 nobody is one standard deviation above: there is no band to draw.
    expect(peersOf(angle, [lmsRow(-4, 8, 0.4, { metric: "attack_angle" })]).peers).toBeNull();
  });

  test("with an L next to 0 are those of L = 0", () => {
    const bands = (l: number) => peersOf(ending(64), [lmsRow(l, 60, 0.01, { n: 50 })]).peers;
    expect(bands(5e-324)).toEqual(bands(0));
    expect(bands(0)?.bands.p90).toBeCloseTo(60 * Math.exp(0.01 * 1.2815515655446004), 9);
  });
});

describe("one group is chosen and none is mixed", () => {
  const source = (name: string, year: number | null = 2024) => ({ source: name, year });
  const chosen = (rows: readonly Reference[]) => {
    const { peers } = peersOf(asked(), rows);
    return peers && [peers.kind, peers.source, peers.year, peers.n];
  };

  test("values before L, M, S before a mean; then the larger, the newer, the first by name", () => {
    const small = valueRows(steps(20), source("B"));
    const large = valueRows(steps(25), source("C", 2020));
    const newer = valueRows(steps(20), source("B", 2025));
    const named = valueRows(steps(20), source("A", 2025));
    const table = [lmsRow(1, 60, 0.1, { n: 500 }), meanSdRow(60, 5, { n: 900 })];
    expect(chosen([...table, ...small, ...large])).toEqual(["value", "C", 2020, 25]);
    expect(chosen([...small, ...newer])).toEqual(["value", "B", 2025, 20]);
    expect(chosen([...newer, ...named])).toEqual(["value", "A", 2025, 20]);
    expect(chosen(table)).toEqual(["lms", "Invented league", 2024, 500]);
    expect(chosen(table.slice(1))).toEqual(["mean-sd", "Invented league", 2024, 900]);
  });

  test("two small samples do not become one; a table that tells steps in", () => {
    const two = [...valueRows(steps(15), source("A")), ...valueRows(steps(15), source("B"))];
    expect(peersOf(asked(), two)).toMatchObject({ peers: null, peersTooFew: 15 });
    expect(chosen([...two, meanSdRow(60, 5, { n: 40 })])).toEqual(["mean-sd", "Invented league", 2024, 40]);
  });

  test("values of the athlete's level come before those that only ages tell", () => {
    const anyone = valueRows(steps(40), { level: null, ages: [14, 18] });
    expect(peersOf(asked(), [...anyone, ...valueRows(steps(20))]).peers).toMatchObject({ n: 20 });
  });

  const rows = valueRows(steps(20));
  test.each([
    ["a slap", { condition: { environment: "tee", implement: "game", swing: "slap" } }],
    ["a bat fitting", { condition: { environment: "tee", implement: "game", purpose: "fitting" } }],
    ["a swing at home", { condition: { environment: "tee", implement: "game", place: "home" } }],
    ["one ball", { condition: { environment: "tee", implement: "game", ball: "soft" } }],
    [
      "one band of pitch speeds",
      { condition: { environment: "tee", implement: "game", pitchSpeed: [60, 65] as [number, number] } },
    ],
    ["no environment", { condition: { implement: "game" } }],
    ["another bat", { condition: { environment: "tee", implement: "overload" } }],
    ["another environment", { condition: { environment: "machine", implement: "game" } }],
    ["another point on the bat", { pointOnBat: "middle" }],
    ["an unknown point on the bat", { pointOnBat: null }],
    ["no sport", { sport: null }],
    ["no sex", { sex: null }],
    ["the other sex", { sex: "female" }],
    ["another sport", { sport: "softball" }],
    ["another level", { level: "college" }],
    ["no level", { level: null }],
    ["another metric", { metric: metricOf("swing_time") }],
  ])("nobody is compared by %s", (_, over) => {
    expect(peersOf(asked(over), rows)).toEqual({ peers: null, peerLines: [], peersTooFew: null });
  });

  test("tests, facility swings, both sides of a switch hitter and words in other letters are the same", () => {
    const condition = { environment: "tee", implement: "game", purpose: "test", place: "facility", side: "left" };
    expect(peersOf(asked({ condition, pointOnBat: " TIP", level: "High-School" }), rows).peers?.n).toBe(20);
  });

  test("a ball metric knows no point on the bat", () => {
    const exit = asked({ metric: metricOf("exit_velocity"), pointOnBat: null });
    const cells = { metric: "exit_velocity" };
    expect(peersOf(exit, valueRows(steps(20), { ...cells, pointOnBat: null })).peers?.n).toBe(20);
    expect(peersOf(exit, valueRows(steps(20), { ...cells, pointOnBat: "tip" })).peers?.n).toBe(20);
  });

  test("whatever the cells, every peer agrees with the athlete in each of them", () => {
    const cell = <T extends string | null>(...words: T[]) => fc.constantFrom(...words);
    const keys = fc.record({
      metric: cell("bat_speed", "attack_angle"),
      pointOnBat: cell("tip", "middle", null),
      environment: cell("tee", "machine", null),
      implement: cell("game", "wood", null),
      sport: cell("baseball", "softball"),
      sex: cell("male", "female"),
      level: cell("college", "12u"),
      source: cell("A", "B"),
    });
    const sample = fc.array(fc.record({ keys, n: fc.integer({ min: 1, max: 40 }) }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(sample, fc.nat(), (parts, pick) => {
        const reference = parts.flatMap(({ keys: cells, n }) => valueRows(steps(n), cells));
        const { metric, environment, implement, source: _, ...who } = parts[pick % parts.length]!.keys;
        const condition = { ...(environment && { environment }), ...(implement && { implement }) };
        const found = peersOf(asked({ ...who, metric: metricOf(metric), condition }), reference);
        const sizes = ["A", "B"].map(
          (name) =>
            reference.filter(
              (row) =>
                row.source === name &&
                JSON.stringify([row.metric, row.pointOnBat, row.environment, row.implement]) ===
                  JSON.stringify([metric, who.pointOnBat, environment, implement]) &&
                JSON.stringify([row.sport, row.sex, row.level]) === JSON.stringify([who.sport, who.sex, who.level]),
            ).length,
        );
        const largest = Math.max(...sizes);
        expect(found.peers?.n ?? found.peersTooFew).toBe(largest);
        expect(found.peers === null).toBe(largest < 20);
      }),
    );
  });
});

describe("laws", () => {
  const quarter = fc.integer({ min: 160, max: 360 }).map((n) => n / 4);
  const person = fc.record({ value: quarter, age: fc.integer({ min: 56, max: 76 }).map((n) => n / 4) });
  const people = fc.array(person, { minLength: 1, maxLength: 60 });
  const rowsOf = (list: readonly { value: number; age: number }[]) =>
    aged(
      list.map(({ age }) => age),
      list.map(({ value }) => value),
    );
  const placeOf = (rows: readonly Reference[], value: number, age: number) =>
    peersOf(ending(value, age), rows).peers?.end;
  const age = fc.integer({ min: 56, max: 76 }).map((n) => n / 4);

  test("a higher value never has a lower percentile", () => {
    fc.assert(
      fc.property(people, quarter, quarter, age, (list, one, other, at) => {
        const rows = rowsOf(list);
        const [low, high] = [placeOf(rows, Math.min(one, other), at), placeOf(rows, Math.max(one, other), at)];
        if (low && high) expect(low.percentile).toBeLessThanOrEqual(high.percentile);
      }),
    );
  });

  test("another origin or unit of all values changes no percentile", () => {
    fc.assert(
      fc.property(
        people,
        quarter,
        age,
        fc.integer({ min: -64, max: 64 }),
        fc.constantFrom(0.25, 0.5, 2, 8),
        (list, value, at, shift, scale) => {
          const other = (one: number) => (one + shift) * scale;
          const moved = rowsOf(list.map((one) => ({ ...one, value: other(one.value) })));
          const [before, after] = [placeOf(rowsOf(list), value, at), placeOf(moved, other(value), at)];
          expect(after === undefined).toBe(before === undefined);
          if (before && after) expect(after.percentile).toBeCloseTo(before.percentile, 6);
        },
      ),
    );
  });

  test("the order of the rows changes nothing", () => {
    fc.assert(
      fc.property(people, quarter, age, (list, value, at) => {
        const turned = peersOf(ending(value, at), rowsOf(list.toReversed())).peers;
        const straight = peersOf(ending(value, at), rowsOf(list)).peers;
        expect(turned?.bands).toEqual(straight?.bands);
        expect(turned?.end).toEqual(straight?.end);
      }),
    );
  });

  test("intervals hold the percentile, bands rise, and nothing is NaN, with ties, one athlete or one age", () => {
    const tied = fc.array(fc.record({ value: fc.constantFrom(50, 51), age: fc.constantFrom(15, 15, 17, 18) }), {
      minLength: 1,
      maxLength: 60,
    });
    fc.assert(
      fc.property(fc.oneof(people, tied), quarter, age, (list, value, at) => {
        const found = peersOf(asked({ start: { value, age: at - 0.25 }, end: { value, age: at } }), rowsOf(list));
        expect(JSON.parse(JSON.stringify(found))).toEqual(found);
        for (const bands of [found.peers?.bands, found.peers?.bandsStart]) {
          const rising = Object.values(bands ?? {});
          expect(rising).toEqual(rising.toSorted((a, b) => a - b));
        }
        for (const end of [found.peers?.start, found.peers?.end]) {
          const [low, high] = end?.ci95 ?? [0, 100];
          expect(low).toBeLessThanOrEqual(end?.percentile ?? 0);
          expect(high).toBeGreaterThanOrEqual((end?.percentile ?? 100) - 1e-9);
          expect(low).toBeGreaterThanOrEqual(0);
          expect(high).toBeLessThanOrEqual(100);
        }
      }),
    );
  });

  test("published tables obey them too", () => {
    const table = fc.oneof(
      fc
        .record({ l: fc.double({ min: -3, max: 3, noNaN: true }), s: fc.double({ min: 0.01, max: 0.5, noNaN: true }) })
        .map(({ l, s }) => lmsRow(l, 60, s, { n: 50 })),
      fc.double({ min: 0.1, max: 20, noNaN: true }).map((sd) => meanSdRow(60, sd, { n: 50 })),
    );
    fc.assert(
      fc.property(table, quarter, quarter, (row, one, other) => {
        const [low, high] = [placeOf([row], Math.min(one, other), 16), placeOf([row], Math.max(one, other), 16)];
        if (!low || !high) return;
        expect(low.percentile).toBeLessThanOrEqual(high.percentile);
        expect(Number.isFinite(low.percentile + high.percentile)).toBe(true);
        expect(low.ci95![0]).toBeLessThanOrEqual(low.percentile + 1e-9);
        expect(high.ci95![1]).toBeGreaterThanOrEqual(high.percentile - 1e-9);
      }),
    );
  });
});

test("a series without both ends has no peers, but it is said when there are too few", () => {
  const nowhere = asked({ start: null, end: null });
  expect(peersOf(nowhere, valueRows(steps(40)))).toMatchObject({ peers: null, peersTooFew: null });
  expect(peersOf(nowhere, valueRows(steps(6)))).toMatchObject({ peers: null, peersTooFew: 6 });
});

test("nothing of a single other athlete is in the answer", () => {
  const values = steps(30, 50.123, 0.917);
  const text = JSON.stringify(peersOf(ending(61, null), valueRows(values)));
  for (const value of values) expect(text).not.toContain(String(value));
  expect(text).not.toContain("data/reference");
});
