import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { offsetCandidates } from "../../src/stats/clock-offsets.ts";

const rising = (max: number) =>
  fc.array(fc.integer({ min: 0, max }), { maxLength: 25 }).map((list) => list.sort((one, other) => one - other));

/** How many pairs lie near an offset, each weighed by how near: written down pair by pair, in whole steps as the definition has it. */
function support(a: readonly number[], b: readonly number[], most: number, width: number, offset: number): number {
  const step = width / 2;
  let sum = 0;
  for (const x of a) {
    for (const y of b) {
      if (Math.abs(y - x) > most) continue;
      const steps = Math.round((y - x) / step) - Math.round(offset / step);
      if (Math.abs(steps) <= 6) sum += Math.exp(-(steps ** 2) / 8);
    }
  }
  return sum;
}

describe("offsets at which many rows meet", () => {
  test("rows that are shifted by one offset meet there first, each with its full weight", () => {
    const a = [0, 31, 77, 140, 222];
    const [best] = offsetCandidates(
      a,
      a.map((time) => time + 53),
      900,
      2,
      3,
    );
    expect(best?.offset).toBe(53);
    expect(best?.support).toBeCloseTo(5, 12);
    expect(
      offsetCandidates(
        a,
        a.map((time) => time - 53),
        900,
        2,
        1,
      )[0]?.offset,
    ).toBe(-53);
  });

  test("every candidate is a peak of the smoothed count of differences, and none above the last is missing", () => {
    fc.assert(
      fc.property(rising(400), rising(400), fc.constantFrom(2, 4), (a, b, width) => {
        const most = 150;
        const step = width / 2;
        const found = offsetCandidates(a, b, most, width, 200);
        const last = Math.ceil(most / step);
        const heights = Array.from({ length: 2 * last + 1 }, (_, i) => support(a, b, most, width, (i - last) * step));
        const peaks = heights.flatMap((here, i) => {
          const [before, after] = [heights[i - 1] ?? -1, heights[i + 1] ?? -1];
          // Two equal heights may be told apart by the last bit of their sums.
          const near = Math.abs(here - before) < 1e-9 || Math.abs(here - after) < 1e-9;
          return here > 1e-9 && !near && here > before && here > after ? [(i - last) * step] : [];
        });
        const offsets = found.map(({ offset }) => offset);
        for (const peak of peaks) expect(offsets).toContain(peak);
        for (const { offset, support: told } of found) {
          expect(told).toBeCloseTo(support(a, b, most, width, offset), 9);
          expect(Math.abs(offset)).toBeLessThanOrEqual(most);
        }
        for (let i = 1; i < found.length; i += 1)
          expect(found[i - 1]!.support).toBeGreaterThanOrEqual(found[i]!.support);
      }),
    );
  });

  test("a difference beyond the largest offset does not count, one just there does", () => {
    expect(offsetCandidates([0], [10], 10, 2, 5).map(({ offset }) => offset)).toEqual([10]);
    expect(offsetCandidates([0], [11], 10, 2, 5)).toEqual([]);
    expect(offsetCandidates([11], [0], 10, 2, 5)).toEqual([]);
    expect(offsetCandidates([10], [0], 10, 2, 5).map(({ offset }) => offset)).toEqual([-10]);
  });

  test("equal peaks stand in order of offset, and no more than were asked for", () => {
    const found = offsetCandidates([0, 100], [30, 170], 900, 2, 10);
    expect(found.map(({ offset }) => offset)).toEqual([-70, 30, 70, 170]);
    expect(offsetCandidates([0, 100], [30, 170], 900, 2, 2).map(({ offset }) => offset)).toEqual([-70, 30]);
  });

  test("a sequence without rows meets nothing", () => {
    expect(offsetCandidates([], [1], 900, 2, 5)).toEqual([]);
    expect(offsetCandidates([1], [], 900, 2, 5)).toEqual([]);
  });
});
