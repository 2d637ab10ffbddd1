import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { align } from "../../src/stats/alignment.ts";
import { type Band, pairChain } from "../../src/stats/pair-chain.ts";
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

describe("two devices", () => {
  const gaps = fc.array(fc.double({ min: 6, max: 25, noNaN: true }), { minLength: 40, maxLength: 80 });
  const timesOf = (list: readonly number[]) =>
    list.map((_, i) => list.slice(0, i + 1).reduce((sum, gap) => sum + gap, 0));

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
