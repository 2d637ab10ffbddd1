import fc from "fast-check";
import { expect, test } from "vitest";
import { converter, UNITS, unitsFor } from "../../src/schema/units.ts";

/** Exact definitions: international mile 1609.344 m, foot 0.3048 m, inch 2.54 cm, pound 0.45359237 kg (NIST SP 811, from memory). */
test.each([
  ["km/h", "mph", 152.88768, 95],
  ["m/s", "mph", 44.704, 100],
  ["m", "ft", 1.524, 5],
  ["cm", "in", 254, 100],
  ["kg", "lb", 45.359237, 100],
  ["ms", "s", 150, 0.15],
  ["degC", "degF", 20, 68],
])("%s to %s: %d is just %d, so that the edge of a band stays the edge", (from, to, written, expected) => {
  expect(converter(from, to)?.(written)).toBe(expected);
});

test("every whole speed written in km/h or m/s comes back as itself", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 130 }),
      fc.constantFrom(["kmh", 1.609344], ["mps", 0.44704]),
      (mph, [unit, each]) => {
        const written = Number((mph * (each as number)).toFixed(6));
        expect(converter(unit as string, "mph")?.(written)).toBe(mph);
      },
    ),
  );
});

test("units of different things have no converter", () => {
  expect(converter("deg", "mph")).toBeNull();
  expect(converter("furlong", "ft")).toBeNull();
});

test("the canonical unit is named first among its spellings", () => {
  for (const { to } of Object.values(UNITS)) expect(unitsFor(to)[0]).toBe(to);
});
