import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BASEBALL } from "../../src/hitting/ball.ts";
import { BATTED, type FlightModel, fly, GRAVITY, type Launch } from "../../src/hitting/flight.ts";

const launch = fc.record({
  speed: fc.double({ min: 5, max: 55, noNaN: true }),
  angle: fc.double({ min: -20, max: 80, noNaN: true }),
  backspin: fc.double({ min: -1000, max: 4000, noNaN: true }),
  sidespin: fc.double({ min: -2000, max: 2000, noNaN: true }),
  height: fc.double({ min: 0.3, max: 1.5, noNaN: true }),
});
const HIT: Launch = { speed: 44, angle: 28, backspin: 2000, sidespin: 0, height: 0.9 };
const air = 1.2;
const NO_AIR: FlightModel = { ...BATTED, drag: () => 0, lift: () => 0 };
const FEW = { numRuns: 60 };

describe("the integration", () => {
  test("halving the step changes carry, time and height by next to nothing, and the less the smaller it is", () => {
    const at = (step: number) => fly(HIT, air, BATTED, BASEBALL, step);
    const best = at(0.0005);
    expect(Math.abs(at(0.005).carry - best.carry)).toBeLessThan(1e-3);
    expect(Math.abs(at(0.005).hangTime - best.hangTime)).toBeLessThan(1e-5);
    expect(Math.abs(at(0.005).apex - best.apex)).toBeLessThan(1e-3);
    const [coarse, fine] = [Math.abs(at(0.08).carry - best.carry), Math.abs(at(0.04).carry - best.carry)];
    // Fourth order: sixteen times nearer for half the step, less what landing adds.
    expect(coarse / fine).toBeGreaterThan(6);
  });

  test("without air it is the parabola of the textbooks", () => {
    fc.assert(
      fc.property(launch, ({ speed, angle, height }) => {
        const up = (angle * Math.PI) / 180;
        const climb = speed * Math.sin(up);
        const time = (climb + Math.sqrt(climb ** 2 + 2 * GRAVITY * height)) / GRAVITY;
        const found = fly({ speed, angle, height, backspin: 0 }, 0);
        expect(found.hangTime).toBeCloseTo(time, 6);
        expect(found.carry).toBeCloseTo(speed * Math.cos(up) * time, 4);
        expect(found.apex).toBeCloseTo(height + (climb > 0 ? climb ** 2 / (2 * GRAVITY) : 0), 3);
      }),
      FEW,
    );
  });
});

describe("laws", () => {
  /** Energy per mass between neighbouring points, J/kg: speed from the path, height from the middle. */
  const energies = (path: readonly { t: number; x: number; y: number; z: number }[]) =>
    path.slice(1).map((point, i) => {
      const before = path[i]!;
      const dt = point.t - before.t;
      const square = (point.x - before.x) ** 2 + (point.y - before.y) ** 2 + (point.z - before.z) ** 2;
      return square / dt ** 2 / 2 + (GRAVITY * (point.z + before.z)) / 2;
    });

  test("lift does no work and drag takes energy: it never grows along the flight", () => {
    fc.assert(
      fc.property(launch, (one) => {
        const list = energies(fly(one, air).path);
        list.slice(1).forEach((energy, i) => {
          expect(energy).toBeLessThanOrEqual(list[i]! * (1 + 1e-4) + 1e-3);
        });
      }),
      FEW,
    );
    const lifted = energies(fly(HIT, air, { ...BATTED, drag: () => 0 }).path);
    for (const energy of lifted) expect(Math.abs(energy / lifted[0]! - 1)).toBeLessThan(1e-3);
  });

  test("sidespin turned round mirrors the flight", () => {
    fc.assert(
      fc.property(launch, (one) => {
        const [right, left] = [fly(one, air), fly({ ...one, sidespin: -one.sidespin }, air)];
        expect(left.carry).toBeCloseTo(right.carry, 9);
        expect(left.path.at(-1)!.y).toBeCloseTo(-right.path.at(-1)!.y, 9);
      }),
      FEW,
    );
  });

  test("positive sidespin bends to the right, without it the ball flies straight", () => {
    expect(fly({ ...HIT, sidespin: 1000 }, air).path.at(-1)!.y).toBeLessThan(-1);
    expect(fly(HIT, air).path.every(({ y }) => y === 0)).toBe(true);
  });

  test("thinner air, more speed and backspin carry a fly ball farther", () => {
    const far = (change: Partial<Launch>, density = air) => fly({ ...HIT, ...change }, density).carry;
    expect(far({}, 1)).toBeGreaterThan(far({}, 1.2));
    expect(far({ speed: 45 })).toBeGreaterThan(far({ speed: 44 }));
    expect(far({ backspin: 2000 })).toBeGreaterThan(far({ backspin: 500 }));
  });

  test("a ball without air keeps its way whatever its spin", () => {
    expect(fly({ ...HIT, sidespin: 3000 }, air, NO_AIR).carry).toBeCloseTo(fly(HIT, 0).carry, 9);
  });
});

describe("wrong calls", () => {
  test.each([
    [{ speed: 0 }, air, /exit speed/],
    [{ speed: Number.NaN }, air, /exit speed/],
    [{ speed: 200 }, air, /exit speed/],
    [{ angle: 91 }, air, /launch angle/],
    [{ height: 0 }, air, /starts above 0/],
    [{}, -0.1, /density/],
    [{}, Number.NaN, /density/],
  ])("%j in air of %d is refused", (change, density, message) => {
    expect(() => fly({ ...HIT, ...change }, density)).toThrow(message);
  });

  test("a step of nothing and a ball that never lands are refused", () => {
    expect(() => fly(HIT, air, BATTED, BASEBALL, 0)).toThrow(/step/);
    expect(() => fly(HIT, air, { ...NO_AIR, gravity: 0 })).toThrow(/still in the air/);
  });
});
