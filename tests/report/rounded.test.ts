import fc from "fast-check";
import { expect, test } from "vitest";
import { rounded } from "../../src/report/rounded.ts";

test("accidents of adding are gone, everything else stays", () => {
  expect(rounded({ a: [0.1 + 0.2, null, "0.30000000000000004"], b: { c: 1_234_567_890_123, d: true } })).toEqual({
    a: [0.3, null, "0.30000000000000004"],
    b: { c: 1_234_567_890_123, d: true },
  });
});

test("no number moves by more than half of its tenth digit, and rounding again changes nothing", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e9, max: 1e9 }), (value) => {
      expect(Math.abs(rounded(value) - value)).toBeLessThanOrEqual(Math.abs(value) * 5.1e-10);
      expect(rounded(rounded(value))).toBe(rounded(value));
    }),
  );
});
