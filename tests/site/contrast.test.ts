import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const css = readFileSync(join(import.meta.dirname, "../../src/site/styles/02-roles.css"), "utf8");
const [light, dark] = css.split("@media (prefers-color-scheme: dark)");

function rolesOf(part: string): Record<string, string> {
  return Object.fromEntries(
    [...part.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, value]) => [name, value]),
  );
}

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

function contrast(a: string, b: string): number {
  const [hi, lo] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (hi! + 0.05) / (lo! + 0.05);
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
