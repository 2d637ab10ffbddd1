import { describe, expect, test } from "vitest";
import { exitSpeed } from "../../src/hitting/collision.ts";
import { pairingEvidence } from "../../src/hitting/pairing-evidence.ts";

const setup = { exitMean: 85, exitSd: 6 };
const bat = (speed: number | null, noBall = false) => ({ speed, noBall });
const ball = (exit: number | null, noBat = false, pitch: number | null = 60) => ({ exit, pitch, q: 0.2, noBat });
const of = (speed: number | null, exit: number | null) => pairingEvidence(bat(speed), ball(exit), setup);

describe("what physics says of two rows", () => {
  test("a ball faster than bat and pitch allow is another swing's; sensors may err by a little", () => {
    const most = exitSpeed(0.2, 60, 60);
    expect(of(60, most * 1.1)).toBe(Number.NEGATIVE_INFINITY);
    expect(of(60, most * 1.03)).toBeGreaterThan(Number.NEGATIVE_INFINITY);
  });

  test("a square ball off that bat speaks for the pair, a ball far too slow for it against it", () => {
    expect(of(55, 0.94 * exitSpeed(0.2, 60, 55))).toBeGreaterThan(1);
    expect(of(75, 85)).toBeLessThan(of(66, 85));
    expect(of(75, 75)).toBeLessThan(of(60, 78));
  });

  test("a miss or a take has no partner, and a reading that is missing says nothing", () => {
    expect(pairingEvidence(bat(65, true), ball(85), setup)).toBe(Number.NEGATIVE_INFINITY);
    expect(pairingEvidence(bat(65), ball(85, true), setup)).toBe(Number.NEGATIVE_INFINITY);
    expect(of(null, 85)).toBe(0);
    expect(of(65, null)).toBe(0);
  });

  test("a toss whose speed nobody read is given the benefit of the doubt", () => {
    const tossed = pairingEvidence(bat(60), ball(exitSpeed(0.2, 30, 60), false, null), setup);
    expect(tossed).toBeGreaterThan(Number.NEGATIVE_INFINITY);
  });

  test("a session whose balls all leave alike has no spread to weigh by", () => {
    expect(() => pairingEvidence(bat(60), ball(80), { ...setup, exitSd: 0 })).toThrow(/spread/);
  });
});
