import { readFileSync } from "node:fs";
import { join } from "node:path";
import {
  type Color,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  filterGrayscale,
  formatHex,
  parse,
} from "culori";
import { describe, expect, test } from "vitest";
import { contrast } from "../../src/schema/colour.ts";

const through = (filter: (colour: Color) => Color) => (colour: string) => formatHex(filter(parse(colour)!));

/**
 * Colours as they are seen without one kind of cone, simulated by culori after Machado, Oliveira & Fernandes (2009), IEEE TVCG
 * 15:1291-1298, at full strength; and as a grey print has them. Differences are CIEDE2000, culori's.
 */
const SEEN = {
  "with all cones": (colour: string) => colour,
  "without long-wave cones": through(filterDeficiencyProt(1)),
  "without middle-wave cones": through(filterDeficiencyDeuter(1)),
  "without short-wave cones": through(filterDeficiencyTrit(1)),
  "in grey": through(filterGrayscale(1)),
};
const different = differenceCiede2000();

/** Told apart at a glance (common practice; a difference of about 2 can just be seen). */
const AT_A_GLANCE = 10;
/** A tint that may be missed without losing a word, and can still be seen. */
const JUST_SEEN = 2;

const sheet = (name: string) => readFileSync(join(import.meta.dirname, `../../src/site/styles/${name}`), "utf8");
const rolesOf = (css: string) =>
  Object.fromEntries([...css.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, value]) => [name, value!]));
const [day, night] = sheet("02-roles.css").split("@media").map(rolesOf);
const looks = { "by day": day!, "by night": night!, "in print": rolesOf(sheet("07-print.css")) };

test("a known pair: pure red and green of one lightness are close to one colour without middle-wave cones", () => {
  const seen = SEEN["without middle-wave cones"];
  const [red, green] = ["#c83232", "#5a7a1e"];
  expect(different(seen(red), seen(green))).toBeLessThan(different(red, green) / 2);
});

describe.each(Object.entries(looks))("%s", (_look, roles) => {
  describe.each(Object.entries(SEEN))("%s", (way, seen) => {
    test.each(["mark", "second", "goal"])("%s stands out from every ground of a chart by at least 3", (role) => {
      for (const ground of ["card", "away", "quiet", "band"]) {
        expect(contrast(seen(roles[role]!), seen(roles[ground]!)), ground).toBeGreaterThanOrEqual(3);
      }
    });

    test.each(["away", "quiet", "band"])("the tint %s can be seen on the card", (tint) => {
      expect(different(seen(roles[tint]!), seen(roles.card!))).toBeGreaterThanOrEqual(JUST_SEEN);
    });

    // In grey the dot, the dashed line, the upright line and the triangle tell marks apart, and nothing else has to.
    if (way === "in grey") return;
    test.each([
      ["mark", "second"],
      ["mark", "goal"],
      ["second", "goal"],
    ])("%s and %s are told apart at a glance", (one, other) => {
      expect(different(seen(roles[one]!), seen(roles[other]!))).toBeGreaterThanOrEqual(AT_A_GLANCE);
    });
  });
});
