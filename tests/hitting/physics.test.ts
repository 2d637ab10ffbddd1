import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { battedLift, pitchedLift, spinAfter, spinFactor } from "../../src/hitting/aerodynamics.ts";
import { moistDensity, standardDensity, standardPressure, weatherDensity } from "../../src/hitting/air.ts";
import { BASEBALL, ballOf, dragPerMetre, SOFTBALL } from "../../src/hitting/ball.ts";
import { fieldThird, launchClass, pulledAngle } from "../../src/hitting/batted-ball.ts";
import { efficiencyFromRestitution, efficiencyOf, exitSpeed, shareOfMost } from "../../src/hitting/collision.ts";
import { expectedSpeedShare, inertiaAtKnob, inertiaFromPeriod, rodInertia } from "../../src/hitting/inertia.ts";
import {
  axisDegrees,
  axisToClock,
  equalTimeSpeed,
  flightTime,
  speedAfter,
  steadyArrival,
} from "../../src/hitting/pitch.ts";

const speed = fc.double({ min: 0.1, max: 120, noNaN: true });
const q = fc.double({ min: -0.3, max: 0.5, noNaN: true });

describe("bat meets ball", () => {
  test("q goes there and back again, and a hit as hard as can be is all of the most", () => {
    fc.assert(
      fc.property(q, speed, speed, (efficiency, pitch, bat) => {
        const exit = exitSpeed(efficiency, pitch, bat);
        fc.pre(exit > 0.01);
        expect(efficiencyOf(exit, pitch, bat)).toBeCloseTo(efficiency, 9);
        expect(shareOfMost(exit, efficiency, pitch, bat)).toBeCloseTo(1, 9);
        expect(shareOfMost(exit / 2, efficiency, pitch, bat)).toBeCloseTo(0.5, 9);
      }),
    );
  });

  test("momentum is kept: the same q comes out of the equations of two masses that meet", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 100, max: 200, noNaN: true }),
        fc.double({ min: 400, max: 1200, noNaN: true }),
        speed,
        speed,
        (restitution, ball, batMass, pitch, bat) => {
          // Ball comes at -pitch, bat at +bat: m u = m v + M V and v - V = e (pitch + bat).
          const after = (batMass * bat - ball * pitch + batMass * restitution * (pitch + bat)) / (ball + batMass);
          const efficiency = efficiencyFromRestitution(restitution, ball, batMass);
          const exit = efficiency * pitch + (1 + efficiency) * bat;
          expect(exit).toBeCloseTo(after, 9);
        },
      ),
    );
  });

  test("nothing that moves gives nothing, and what is no speed, q, mass or restitution is refused", () => {
    expect(efficiencyOf(0, 0, 0)).toBeNull();
    expect(shareOfMost(10, 0.2, 0, 0)).toBeNull();
    for (const wrong of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => exitSpeed(0.2, wrong, 60)).toThrow(/pitch speed/);
      expect(() => exitSpeed(0.2, 60, wrong)).toThrow(/bat speed/);
      expect(() => efficiencyOf(wrong, 1, 1)).toThrow(/exit speed/);
      expect(() => efficiencyOf(1, wrong, 1)).toThrow(/pitch speed/);
      expect(() => efficiencyOf(1, 1, wrong)).toThrow(/bat speed/);
      expect(() => shareOfMost(wrong, 0.2, 1, 1)).toThrow(/exit speed/);
      expect(() => efficiencyFromRestitution(0.5, wrong, 900)).toThrow(/masses/);
      expect(() => efficiencyFromRestitution(0.5, 145, wrong)).toThrow(/masses/);
      expect(() => efficiencyFromRestitution(wrong, 145, 900)).toThrow(/restitution/);
    }
    for (const wrong of [-1, 1, Number.NaN]) expect(() => exitSpeed(wrong, 1, 1)).toThrow(/q must lie/);
  });
});

describe("air", () => {
  test("three ways to its density agree where they meet", () => {
    const weather = { celsius: 15, humidity: 0, seaLevelPa: 101_325, altitudeM: 0 };
    expect(weatherDensity(weather)).toBeCloseTo(standardDensity(0), 2);
    expect(weatherDensity({ ...weather, celsius: 20, humidity: 0.5 })).toBeCloseTo(
      moistDensity(20, 101_325, 0.5, 0.0004),
      2,
    );
  });

  test("is thinner when warm, damp and high", () => {
    const at = { celsius: 20, humidity: 0.4, seaLevelPa: 101_325, altitudeM: 100 };
    expect(weatherDensity({ ...at, celsius: 25 })).toBeLessThan(weatherDensity(at));
    expect(weatherDensity({ ...at, humidity: 0.8 })).toBeLessThan(weatherDensity(at));
    expect(weatherDensity({ ...at, altitudeM: 500 })).toBeLessThan(weatherDensity(at));
    expect(standardPressure(1000)).toBeLessThan(standardPressure(0));
  });

  test("that cannot be is refused", () => {
    const at = { celsius: 20, humidity: 0.4, seaLevelPa: 101_325, altitudeM: 100 };
    expect(() => weatherDensity({ ...at, humidity: 1.1 })).toThrow(/humidity/);
    expect(() => weatherDensity({ ...at, humidity: -0.1 })).toThrow(/humidity/);
    expect(() => weatherDensity({ ...at, celsius: 61 })).toThrow(/degrees/);
    expect(() => weatherDensity({ ...at, celsius: -41 })).toThrow(/degrees/);
    // Inches of mercury or a station's own pressure at altitude.
    expect(() => weatherDensity({ ...at, seaLevelPa: 29.92 })).toThrow(/barometer/);
    expect(() => weatherDensity({ ...at, seaLevelPa: 1e6 })).toThrow(/barometer/);
    expect(() => standardDensity(12_000)).toThrow(/altitude/);
    expect(() => standardDensity(-501)).toThrow(/altitude/);
    expect(() => moistDensity(20, 0, 0.5, 0.0004)).toThrow(/pressure/);
  });
});

describe("the ball and its spin", () => {
  test("rule-book balls have the radius of their circumference", () => {
    expect(BASEBALL.radiusM).toBeCloseTo(0.03689, 5);
    expect(BASEBALL.massKg).toBeCloseTo(0.14529, 5);
    expect(SOFTBALL.radiusM).toBeCloseTo(0.0485, 4);
    expect(() => ballOf(0, 9)).toThrow(/above 0/);
    expect(() => ballOf(5, Number.NaN)).toThrow(/above 0/);
  });

  test("drag per foot of a baseball is what the notes on hitting print: 0.00188 at C_D 0.35 and 1.2 kg/m3", () => {
    expect(dragPerMetre(BASEBALL, 0.35, 1.2) * 0.3048).toBeCloseTo(0.00188, 5);
  });

  test("lift grows with spin and stays below the law's limit; the pitched law has no step at 0.1", () => {
    expect(battedLift(0)).toBe(0);
    expect(battedLift(0.3)).toBeGreaterThan(battedLift(0.2));
    expect(battedLift(1e9)).toBeLessThan(1.12 / 2.333 + 1e-6);
    expect(pitchedLift(0.1)).toBeCloseTo(pitchedLift(0.1 - 1e-12), 9);
    expect(spinFactor(-2500, 40, 0.0369)).toBe(spinFactor(2500, 40, 0.0369));
    expect(spinAfter(2500, 0, 40, 30)).toBe(2500);
    expect(spinAfter(2500, 2, 40, 30)).toBeLessThan(spinAfter(2500, 1, 40, 30));
  });
});

describe("a pitch", () => {
  const k = fc.double({ min: 1e-5, max: 0.01, noNaN: true });
  const distance = fc.double({ min: 5, max: 70, noNaN: true });

  test("takes longer than without drag and less than at its speed at the plate", () => {
    fc.assert(
      fc.property(speed, distance, k, (v, x, drag) => {
        const time = flightTime(v, x, drag);
        expect(time).toBeGreaterThanOrEqual(x / v);
        expect(time).toBeLessThanOrEqual((x / speedAfter(v, x, drag)) * (1 + 1e-12));
        expect(flightTime(v, x, 0)).toBe(x / v);
      }),
    );
  });

  test("flown in two parts takes as long", () => {
    fc.assert(
      fc.property(speed, distance, k, (v, x, drag) => {
        const halfway = speedAfter(v, x / 2, drag);
        expect(flightTime(v, x / 2, drag) + flightTime(halfway, x / 2, drag)).toBeCloseTo(flightTime(v, x, drag), 6);
      }),
    );
  });

  test("from twice as far leaves as much time at twice the speed", () => {
    expect(equalTimeSpeed(40, 30, 60)).toBe(80);
    expect(flightTime(equalTimeSpeed(40, 30, 60), 60, 0)).toBe(flightTime(40, 30, 0));
  });

  test("under constant acceleration that stops short never arrives; without any it is distance over speed", () => {
    expect(steadyArrival({ y0: 50, yPlate: 1, vy0: -10, ay: 30 })).toBeNull();
    expect(steadyArrival({ y0: 50, yPlate: 1, vy0: 10, ay: 0 })).toBeNull();
    expect(steadyArrival({ y0: 51, yPlate: 1, vy0: -100, ay: 0 })).toEqual({ vy: -100, time: 0.5 });
  });

  test("of no speed or distance is refused", () => {
    for (const wrong of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => speedAfter(wrong, 50, 0.001)).toThrow(/speed/);
      expect(() => speedAfter(50, wrong, 0.001)).toThrow(/distance/);
      expect(() => flightTime(wrong, 50, 0.001)).toThrow(/speed/);
      expect(() => flightTime(50, wrong, 0.001)).toThrow(/distance/);
      expect(() => equalTimeSpeed(50, 50, wrong)).toThrow(/distance/);
      expect(() => equalTimeSpeed(50, wrong, 50)).toThrow(/distance/);
      expect(() => equalTimeSpeed(wrong, 50, 50)).toThrow(/speed/);
    }
  });

  test("spins about an axis that the clock shows, round and round", () => {
    expect(axisToClock(180)).toEqual({ hour: 12, minute: 0 });
    expect(axisToClock(195)).toEqual({ hour: 12, minute: 30 });
    expect(axisToClock(270)).toEqual({ hour: 3, minute: 0 });
    expect(axisToClock(359.9)).toEqual({ hour: 6, minute: 0 });
    expect(axisToClock(-90)).toEqual(axisToClock(270));
    expect(axisToClock(570)).toEqual(axisToClock(210));
    for (const [written, degrees] of [
      ["12:00", 180],
      ["12:45", 202.5],
      ["6:00", 0],
      ["11:30", 165],
      ["210", 210],
      ["0", 0],
      ["", null],
      ["noon", null],
    ] as const)
      expect(axisDegrees(written), written).toBe(degrees);
    expect(() => axisToClock(Number.NaN)).toThrow(/spin axis/);
  });
});

describe("a bat", () => {
  test("a rod swung from its pivot has the period that its inertia asks for", () => {
    // Uniform 34 in, 30 oz rod: 6 520 oz in2 (own arithmetic of the textbook formula).
    expect(rodInertia(30, 34)).toBeCloseTo(6520, 0);
    const period = 2 * Math.PI * Math.sqrt(rodInertia(30, 34) / (30 * 386.09 * 11));
    expect(inertiaFromPeriod(30, 17, period)).toBeCloseTo(rodInertia(30, 34), 6);
  });

  test("about the knob it is a rod about its end", () => {
    expect(inertiaAtKnob(rodInertia(30, 34), 30, 17)).toBeCloseTo((30 * 34 ** 2) / 3, 6);
  });

  test("harder to turn is slower, alike is alike", () => {
    expect(expectedSpeedShare(9000, 9000, 0.25)).toBe(1);
    expect(expectedSpeedShare(10_000, 9000, 0.25)).toBeLessThan(1);
    expect(expectedSpeedShare(8000, 9000, 0.25)).toBeGreaterThan(1);
  });

  test("that cannot be is refused", () => {
    for (const wrong of [0, -1, Number.NaN]) {
      expect(() => inertiaFromPeriod(wrong, 20, 1.4)).toThrow(/weighs/);
      expect(() => inertiaFromPeriod(30, 20, wrong)).toThrow(/period/);
      expect(() => rodInertia(30, wrong)).toThrow(/above 0/);
      expect(() => expectedSpeedShare(wrong, 9000, 0.25)).toThrow(/inertia/);
      expect(() => expectedSpeedShare(9000, wrong, 0.25)).toThrow(/inertia/);
    }
    expect(() => inertiaFromPeriod(30, 6, 1.4)).toThrow(/beyond 6 in/);
    expect(() => inertiaAtKnob(9000, 30, 0)).toThrow(/balance point/);
  });
});

describe("the batted ball", () => {
  test("every angle has one class, and they follow each other upward", () => {
    const order = ["ground-ball", "line-drive", "fly-ball", "pop-up"];
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: 0, max: 90, noNaN: true }),
        (a, more) => {
          expect(order.indexOf(launchClass(a))).toBeGreaterThanOrEqual(0);
          expect(order.indexOf(launchClass(Math.min(90, a + more)))).toBeGreaterThanOrEqual(
            order.indexOf(launchClass(a)),
          );
        },
      ),
    );
  });

  test("what a right-handed hitter pulls is the left-handed hitter's other field", () => {
    fc.assert(
      fc.property(fc.double({ min: -180, max: 180, noNaN: true }), (spray) => {
        expect(pulledAngle(spray, "left")).toBe(-pulledAngle(spray, "right"));
        expect(fieldThird(spray, "left")).toBe(fieldThird(-spray, "right"));
      }),
    );
    expect([-15.1, -15, 15, 15.1].map((spray) => fieldThird(spray, "right"))).toEqual([
      "pull",
      "centre",
      "centre",
      "opposite",
    ]);
  });
});
