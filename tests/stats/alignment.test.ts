import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { align, DOUBTFUL, MADE } from "../../src/stats/alignment.ts";
import { fitClocks } from "../../src/stats/clock-fit.ts";
import { type Band, pairChain } from "../../src/stats/pair-chain.ts";
import { randomFrom } from "../demo/random.ts";
import { expectNear } from "./samples.ts";

/** Every way to pair rows with columns in order, each as a list of pairs. */
function ways(rows: number, columns: number, allowed: (i: number, j: number) => boolean): [number, number][][] {
  const from = (i: number, j: number): [number, number][][] => {
    const found: [number, number][][] = [[]];
    for (let row = i; row < rows; row += 1) {
      for (let column = j; column < columns; column += 1) {
        if (!allowed(row, column)) continue;
        for (const rest of from(row + 1, column + 1)) found.push([[row, column], ...rest]);
      }
    }
    return found;
  };
  return from(0, 0);
}

describe("the sum over all ways to pair", () => {
  const shapes = fc
    .record({
      rows: fc.integer({ min: 1, max: 4 }),
      columns: fc.integer({ min: 1, max: 4 }),
      odds: fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 16, maxLength: 16 }),
      cuts: fc.array(fc.nat({ max: 4 }), { minLength: 8, maxLength: 8 }),
    })
    .map(({ rows, columns, odds, cuts }) => {
      const from = cuts
        .slice(0, rows)
        .map((cut) => Math.min(cut, columns))
        .sort((a, b) => a - b);
      const to = cuts
        .slice(4, 4 + rows)
        .map((cut) => Math.min(cut, columns))
        .sort((a, b) => a - b);
      const band: Band = {
        from: Int32Array.from(from),
        to: Int32Array.from(to.map((end, i) => Math.max(end, from[i]!))),
      };
      return { rows, columns, band, logOdds: (i: number, j: number) => odds[4 * i + j]! };
    });

  test("and the chance of each pair are those of writing every way down", () => {
    fc.assert(
      fc.property(shapes, ({ rows, columns, band, logOdds }) => {
        const allowed = (i: number, j: number) => j >= band.from[i]! && j < band.to[i]!;
        const all = ways(rows, columns, allowed);
        const weight = (way: [number, number][]) => Math.exp(way.reduce((sum, [i, j]) => sum + logOdds(i, j), 0));
        const total = all.reduce((sum, way) => sum + weight(way), 0);
        const chain = pairChain(band, columns, logOdds);
        expectNear(chain.logTotal, Math.log(total), 1e-9);
        for (let i = 0; i < rows; i += 1) {
          for (let j = band.from[i]!; j < band.to[i]!; j += 1) {
            const holding = all.filter((way) => way.some(([row, column]) => row === i && column === j));
            const chance = chain.chance[chain.start[i]! + j - band.from[i]!]!;
            expectNear(chance, holding.reduce((sum, way) => sum + weight(way), 0) / total, 1e-9);
          }
        }
      }),
    );
  });

  test("stays in the range of a double over thousands of pairs, and an impossible pair has no chance", () => {
    const n = 5000;
    const band: Band = {
      from: Int32Array.from({ length: n }, (_, i) => i),
      to: Int32Array.from({ length: n }, (_, i) => Math.min(n, i + 2)),
    };
    const chain = pairChain(band, n, (i, j) => (i === j ? 8 : Number.NEGATIVE_INFINITY));
    expectNear(chain.logTotal / n, Math.log(1 + Math.exp(8)), 1e-9);
    expect(chain.chance[0]).toBeGreaterThan(0.999);
    expect(chain.chance[1]).toBe(0);
  });
});

/** Times of rows with these gaps. */
const timesOf = (list: readonly number[]) =>
  list.map((_, i) => list.slice(0, i + 1).reduce((sum, gap) => sum + gap, 0));

describe("clocks", () => {
  // A long session on clocks that drift: rows far enough apart that each can have one partner alone.
  const a = Array.from({ length: 300 }, (_, i) => 1000 + 20 * i + ((i * 7919) % 7));
  const centre = (a[0]! + a.at(-1)!) / 2;
  const off = a.map((_, i) => Math.sin(i * 12.9898) * 0.9 + Math.cos(i * 4.1414) * 0.6);
  const b = a.map((time, i) => time + 50 + 2e-4 * (time - centre) + off[i]!);

  test("offset, drift and noise are those of least squares on the rows, the drift drawn in by what clocks usually do", () => {
    const fit = fitClocks(a, b, 49, () => 0);
    const x = a.map((time) => time - centre);
    const y = b.map((time, i) => time - a[i]!);
    const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0) / of.length;
    const [meanX, meanY] = [mean(x), mean(y)];
    const spread = x.reduce((sum, one) => sum + (one - meanX) ** 2, 0);
    const products = x.reduce((sum, one, i) => sum + (one - meanX) * (y[i]! - meanY), 0);
    const drift = products / (spread + (fit.noise / 1e-4) ** 2);
    const offset = meanY - drift * meanX;
    const noise = Math.sqrt(mean(x.map((one, i) => (y[i]! - offset - drift * one) ** 2)));
    expect(fit.paired).toBeGreaterThan(299);
    expectNear(fit.drift / drift, 1, 1e-3);
    expectNear(fit.offset, offset, 1e-4);
    expectNear(fit.noise, noise, 1e-3);
    // The offset is that at the middle of a.
    expect(Math.abs(fit.offset - 50)).toBeLessThan(0.2);
    expect(Math.abs(fit.drift - 2e-4)).toBeLessThan(4e-5);
  });

  test("the evidence of a fit is that of its pairs, weighed by their chances", () => {
    const fit = fitClocks(a, b, 49, (i, j) => (i === j ? 0.25 : -4));
    expectNear(fit.evidence, 0.25 * fit.paired, 1e-6);
  });

  test("noise is never taken for less than a stamp's own coarseness, nor drift told from two rows", () => {
    const exact = fitClocks(
      a,
      a.map((time) => time + 50),
      49.5,
      () => 0,
    );
    expect(exact.noise).toBe(0.2);
    const two = fitClocks([0, 30], [5, 35.02], 5, () => 0);
    expect([two.offset, two.drift, two.noise]).toEqual([5, 0, 2]);
  });
});

describe("what cannot be told is not made", () => {
  const none = { kind: "none", reason: "cannot-tell" } as const;
  /** Rows that a device saw of a feed: all but some, chosen without a pattern. */
  const seen = (times: readonly number[], salt: number) =>
    times.filter((_, i) => Math.abs(Math.sin((i + 1) * salt)) > 0.25);
  const feed = Array.from({ length: 120 }, (_, i) => 8 * i);
  const wobble = (times: readonly number[], salt: number) =>
    times.map((time, i) => time + 1.2 * Math.sin((i + 1) * salt));

  test("an endless feed looks the same when it is shifted by one swing", () => {
    const [a, b] = [wobble(seen(feed, 12.9898), 3.7), wobble(seen(feed, 78.233), 5.3).map((time) => time + 3)];
    expect(align(a, b)).toEqual(none);
  });

  test("the same feed is told by evidence that fits one shift alone", () => {
    const a = wobble(seen(feed, 12.9898), 3.7);
    const b = wobble(seen(feed, 78.233), 5.3);
    const swing = (time: number) => Math.round(time / 8);
    const evidence = (i: number, j: number) => (swing(a[i]!) === swing(b[j]!) ? 1 : -1);
    const found = align(a, b, { evidence });
    if ("kind" in found) throw new Error(found.reason);
    for (const pair of found.pairs) expect(swing(a[pair.a]!)).toBe(swing(b[pair.b]!));
    expect(found.pairs.length).toBeGreaterThan(0.5 * Math.min(a.length, b.length));
    // Weak evidence is none.
    expect(align(a, b, { evidence: (i, j) => 0.05 * evidence(i, j) })).toEqual(none);
  });

  test("rows that have nothing to do with each other are hardly ever paired, few as they may be", () => {
    const random = randomFrom("two clocks, two sessions");
    let made = 0;
    for (let session = 0; session < 120; session += 1) {
      const own = () => timesOf(Array.from({ length: 10 + (session % 51) }, () => 6 + 19 * random.uniform()));
      if (!("kind" in align(own(), own()))) made += 1;
    }
    // Held against rows that come at any moment, which rows that keep a distance do not: two or three in a hundred pass.
    expect(made).toBeLessThanOrEqual(4);
  });

  test("a row with two partners equally near is doubtful or single, never made", () => {
    const times = Array.from({ length: 60 }, (_, i) => 15 * i + ((i * 7919) % 11));
    // The other device saw the thirtieth twice, unequally near.
    const twice = [...times.slice(0, 30), times[30]! - 0.25, times[30]! + 0.4, ...times.slice(31)];
    const noisy = twice.map((time, i) => time + 0.5 * Math.sin((i + 1) * 12.9898) * (i === 30 || i === 31 ? 0 : 1));
    const found = align(times, noisy);
    if ("kind" in found) throw new Error(found.reason);
    expect(found.pairs.map(({ a }) => a)).not.toContain(30);
    expect(found.pairs).toHaveLength(59);
    expect(found.doubtful.map(({ a, b }) => [a, b])).toEqual([[30, 30]]);
    for (const { confidence } of found.pairs) expect(confidence).toBeGreaterThanOrEqual(MADE);
    for (const { confidence } of found.doubtful) {
      expect(confidence).toBeGreaterThan(DOUBTFUL);
      expect(confidence).toBeLessThan(MADE);
    }
  });

  test("an offset that is known is refined, and as sure as it was before", () => {
    const times = Array.from({ length: 40 }, (_, i) => 15 * i + ((i * 7919) % 11));
    const later = times.map((time) => time + 600);
    const found = align(times, later, { known: { offset: 599, offsetConfidence: 0.97 } });
    if ("kind" in found) throw new Error(found.reason);
    expect(found.offsetConfidence).toBe(0.97);
    expectNear(found.offset, 600, 1e-3);
    expect(found.pairs).toHaveLength(40);
    for (const { confidence } of found.pairs) expect(confidence).toBeLessThanOrEqual(0.97);
    expect(align(times, later, { known: { offset: 599, offsetConfidence: 0.9 } })).toEqual(none);
    // Where hardly a row meets, knowing helps nothing.
    expect(align(times, later, { known: { offset: -3000, offsetConfidence: 1 } })).toEqual(none);
  });

  test("two rows of one moment are allowed", () => {
    const times = [0, 12, 12, 31, 44, 60, 71, 90];
    const found = align(times, times);
    if ("kind" in found) throw new Error(found.reason);
    expect(found.pairs.length).toBeGreaterThanOrEqual(6);
  });
});

describe("two devices", () => {
  const gaps = fc.array(fc.double({ min: 6, max: 25, noNaN: true }), { minLength: 40, maxLength: 80 });
  test("with one clock wrong and nothing missing are paired row by row", () => {
    fc.assert(
      fc.property(gaps, fc.double({ min: -600, max: 600, noNaN: true }), (list, offset) => {
        const times = timesOf(list);
        const found = align(
          times,
          times.map((time) => time + offset),
        );
        if ("kind" in found) throw new Error(found.reason);
        expect(found.pairs.map(({ a, b }) => [a, b])).toEqual(times.map((_, i) => [i, i]));
        expectNear(found.offset, offset, 0.1);
        expect(found.noise).toBeLessThan(0.5);
      }),
      { numRuns: 25 },
    );
  });

  test("exchanged give the same pairs the other way round, and pairs never cross", () => {
    fc.assert(
      fc.property(gaps, (list) => {
        const times = timesOf(list);
        const a = times.filter((_, i) => i % 7 !== 3);
        const b = times.filter((_, i) => i % 5 !== 2).map((time, i) => time + 40 + Math.sin(i * 12.9898));
        const [one, other] = [align(a, b), align(b, a)];
        if ("kind" in one || "kind" in other) throw new Error("nothing paired");
        expect(other.pairs.map((pair) => [pair.b, pair.a])).toEqual(one.pairs.map((pair) => [pair.a, pair.b]));
        one.pairs.slice(1).forEach((pair, i) => {
          expect(pair.a).toBeGreaterThan(one.pairs[i]!.a);
          expect(pair.b).toBeGreaterThan(one.pairs[i]!.b);
        });
      }),
      { numRuns: 25 },
    );
  });

  test("drift of 200 ppm over a long session is found", () => {
    const times = timesOf(Array.from({ length: 600 }, (_, i) => 6 + ((i * 7919) % 19)));
    const found = align(
      times,
      times.map((time) => time * 1.0002 + 50),
    );
    if ("kind" in found) throw new Error(found.reason);
    expect(found.drift * 1e6).toBeGreaterThan(150);
    expect(found.pairs).toHaveLength(600);
  });

  test("evidence that forbids a pair keeps it from being made", () => {
    const times = timesOf(Array.from({ length: 50 }, (_, i) => 6 + ((i * 7919) % 19)));
    const found = align(times, times, { evidence: (a, b) => (a === 10 && b === 10 ? Number.NEGATIVE_INFINITY : 0) });
    if ("kind" in found) throw new Error(found.reason);
    expect(found.pairs.map(({ a }) => a)).not.toContain(10);
    expect(found.pairs).toHaveLength(49);
  });

  test("of which one has no rows, or whose rows never meet, are not paired", () => {
    expect(align([], [1, 2])).toEqual({ kind: "none", reason: "empty" });
    expect(align([1], [])).toEqual({ kind: "none", reason: "empty" });
    expect(align([0, 10, 20], [5000, 5010])).toEqual({ kind: "none", reason: "cannot-tell" });
  });

  test("times that fall or are no numbers are refused", () => {
    expect(() => align([0, 5, 4], [1])).toThrow(/a\[2\] falls/);
    expect(() => align([0], [1, 0])).toThrow(/b\[1\] falls/);
    expect(() => align([Number.NaN], [1])).toThrow(/a\[0\] must be a finite number/);
  });
});
