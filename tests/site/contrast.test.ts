import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { contrast, PAPER, readableOn, TEXT_CONTRAST } from "../../src/schema/colour.ts";

const css = readFileSync(join(import.meta.dirname, "../../src/site/styles/02-roles.css"), "utf8");
const [light, dark] = css.split("@media (prefers-color-scheme: dark)");

function rolesOf(part: string): Record<string, string> {
  return Object.fromEntries(
    [...part.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, value]) => [name, value]),
  );
}

test("the contrast of black on white is 21, as WCAG 2.2 says", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
});

describe.each([
  ["by day", rolesOf(light!)],
  ["by night", rolesOf(dark!)],
])("colours %s", (_name, roles) => {
  test("all roles are there", () => {
    expect(Object.keys(roles).sort()).toEqual(
      ["away", "band", "card", "goal", "ink", "ink-soft", "line", "mark", "paper", "quiet", "second"].sort(),
    );
  });

  test.each(["paper", "card", "away", "quiet"])("text on %s has a contrast of at least 4.5", (ground) => {
    expect(contrast(roles.ink!, roles[ground]!)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(roles["ink-soft"]!, roles[ground]!)).toBeGreaterThanOrEqual(4.5);
  });

  test.each(["mark", "second"])("%s is also used for words and keeps 4.5 on paper", (role) => {
    expect(contrast(roles[role]!, roles.paper!)).toBeGreaterThanOrEqual(4.5);
  });

  test.each(["mark", "second", "goal"])(
    "%s stands out from paper, card and absence tint and ribbon by at least 3",
    (role) => {
      for (const ground of ["paper", "card", "away", "quiet"]) {
        expect(contrast(roles[role]!, roles[ground]!)).toBeGreaterThanOrEqual(3);
      }
    },
  );

  test("dots and line stand out from the band behind them by at least 3", () => {
    expect(contrast(roles.mark!, roles.band!)).toBeGreaterThanOrEqual(3);
  });
});

describe("a facility's own colour", () => {
  test("the papers it is held against are those of the style sheet", () => {
    expect([rolesOf(light!).paper, rolesOf(dark!).paper]).toEqual([PAPER.day, PAPER.night]);
  });

  test("any colour can be read on both papers, and one that can be read is left as it is", () => {
    const hex = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, "0")}`);
    fc.assert(
      fc.property(hex, fc.constantFrom(PAPER.day, PAPER.night, "#ffffff", "#000000"), (colour, ground) => {
        const shown = readableOn(colour, ground, TEXT_CONTRAST);
        expect(contrast(shown, ground)).toBeGreaterThanOrEqual(TEXT_CONTRAST);
        if (contrast(colour, ground) >= TEXT_CONTRAST) expect(shown).toBe(colour);
      }),
    );
  });
});
