import fc from "fast-check";
import { expect, test } from "vitest";
import { plainNumber } from "../../src/intake/plain-number.ts";

const POINT = ".".charCodeAt(0);

test("plain digits are the very number that they are for JavaScript", () => {
  const text = fc
    .tuple(fc.constantFrom("", "-"), fc.stringMatching(/^\d{1,9}$/), fc.option(fc.stringMatching(/^\d{1,5}$/)))
    .map(([sign, whole, part]) => sign + whole + (part === null ? "" : `.${part}`));
  fc.assert(
    fc.property(text, (written) => {
      expect(plainNumber(written, POINT)).toBe(Number(written));
    }),
    { numRuns: 5000 },
  );
});

test.each(["", "-", ".", "1.", ".5", "1.2.3", "1e3", " 1", "+1", "0x1", "1,5", "1234567890123456"])(
  "%j is left to others",
  (text) => expect(plainNumber(text, POINT)).toBe(null),
);
