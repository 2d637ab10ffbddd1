import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type GatedSwing, gate, type Mark } from "../../src/hitting/gate.ts";

const fixed = (atLeast: number): Mark => ({ kind: "fixed", atLeast });
const recent: Mark = { kind: "recent", share: 0.9, days: 28, best: "max" };
const swing = (speed: number | null, mark: Mark | null, day = 0, group = "game"): GatedSwing => ({
  day,
  speed,
  mark,
  group,
});
const speeds = fc.array(fc.option(fc.integer({ min: 30, max: 90 }), { freq: 4 }), { maxLength: 40 });

describe("a fixed mark", () => {
  test("passes what reaches it, keeps out what does not, and judges no swing without a speed", () => {
    const swings = [66, 65.9, 70, null].map((speed) => swing(speed, fixed(66)));
    expect(gate(swings)).toEqual(["passed", "under-mark", "passed", "no-speed-to-judge"]);
  });

  test("that is not there judges nothing", () => {
    expect(gate([swing(20, null), swing(null, null)])).toEqual(["no-mark", "no-mark"]);
    expect(gate([])).toEqual([]);
  });

  test("moved up never lets more through, and moves by as much as it is told", () => {
    fc.assert(
      fc.property(speeds, fc.integer({ min: -3, max: 3 }), (list, by) => {
        const swings = list.map((speed) => swing(speed, fixed(60)));
        const passed = (shift: number) => gate(swings, shift).filter((answer) => answer === "passed").length;
        expect(passed(by + 1)).toBeLessThanOrEqual(passed(by));
        expect(gate(swings, by)).toEqual(gate(list.map((speed) => swing(speed, fixed(60 + by)))));
      }),
    );
  });
});

describe("a share of the recent best", () => {
  const earlier = (day: number, ...list: number[]) => list.map((speed) => swing(speed, recent, day));

  test("is that of earlier days: the first day is judged by nothing", () => {
    const first = earlier(0, 60, 62, 64, 70, 61);
    expect(new Set(gate(first))).toEqual(new Set(["no-mark"]));
    // Nine tenths of 70 are 63.
    const answers = gate([...first, swing(63, recent, 1), swing(62.9, recent, 1), swing(90, recent, 1)]);
    expect(answers.slice(5)).toEqual(["passed", "under-mark", "passed"]);
  });

  test("the order within a day moves nothing", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 40, max: 80 }), { minLength: 5, maxLength: 12 }), (list) => {
        const today = [70, 62, 66].map((speed) => swing(speed, recent, 3));
        const there = gate([...list.map((speed) => swing(speed, recent, 0)), ...today]);
        const turned = gate([...list.map((speed) => swing(speed, recent, 0)), ...today.slice().reverse()]);
        expect(turned.slice(-3).reverse()).toEqual(there.slice(-3));
      }),
    );
  });

  test("forgets what lies longer ago than its days", () => {
    const old = earlier(0, 90, 90, 90, 90, 90);
    expect(gate([...old, swing(60, recent, 28)]).at(-1)).toBe("under-mark");
    expect(gate([...old, swing(60, recent, 29)]).at(-1)).toBe("no-mark");
  });

  test("four swings are no best; five are", () => {
    const four = earlier(0, 90, 90, 90, 90);
    expect(gate([...four, swing(60, recent, 1)]).at(-1)).toBe("no-mark");
    expect(gate([...four, ...earlier(0, 90), swing(60, recent, 1)]).at(-1)).toBe("under-mark");
  });

  test("is each bat's own, and that of its upper tenth where it says so", () => {
    const game = earlier(0, 80, 80, 80, 80, 80);
    expect(gate([...game, swing(50, recent, 1, "heavy")]).at(-1)).toBe("no-mark");
    const upper: Mark = { ...recent, best: "p90" };
    const spread = [60, 60, 60, 60, 60, 60, 60, 60, 60, 90].map((speed) => swing(speed, upper, 0));
    // The highest of ten is 90, nine tenths of it 81; the 90th percentile of these lies at 87 (type 8) or below.
    expect(gate([...spread, swing(80.5, upper, 1)]).at(-1)).toBe("passed");
    expect(gate([...spread, swing(80.5, recent, 1)]).at(-1)).toBe("under-mark");
  });

  test("moves with the shift", () => {
    const first = earlier(0, 70, 70, 70, 70, 70);
    expect(gate([...first, swing(64, recent, 1)], 1).at(-1)).toBe("passed");
    expect(gate([...first, swing(63.9, recent, 1)], 1).at(-1)).toBe("under-mark");
  });
});
