import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { NOT_COUNTED_REASONS, SET_ASIDE_REASONS } from "../../src/schema/reasons.ts";
import { en } from "../../src/site/messages/en.ts";
import { localText, type MessageKey, wordsFor } from "../../src/site/words.ts";

const keys = Object.keys(en) as MessageKey[];
const folder = join(import.meta.dirname, "../../src/site");
const source = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.tsx?$/.test(name) && !name.startsWith("messages"))
  .map((name) => readFileSync(join(folder, name), "utf8"))
  .join("\n");

describe("the catalogue", () => {
  test("every sentence can be read and filled", () => {
    const words = wordsFor("en");
    for (const key of keys) {
      const gaps = [...en[key].matchAll(/\{(\w+)/g)].map(([, name]) => name!);
      const filled = words.rich(key, Object.fromEntries(gaps.map((name) => [name, name === "n" ? 2 : "…"])));
      expect(filled.join(""), key).not.toMatch(/[{}]|undefined/);
    }
  });

  test("no sentence prints a number of its own: no # and no ICU number or date", () => {
    for (const key of keys) expect(en[key], key).not.toMatch(/#|, (number|date|time)/);
  });

  test("plurals follow the number", () => {
    const say = (n: number) =>
      wordsFor("en")
        .rich("count.days", { n, figure: String(n) })
        .join("");
    expect(say(1)).toBe("1 training day");
    expect(say(0)).toBe("0 training days");
    expect(say(12)).toBe("12 training days");
  });

  test("no sentence is a verdict: none is given before the statistics can bear it", () => {
    const verdict =
      /\b(improv\w*|declin\w*|progressed|better|worse|significant\w*|clear(ly)? (gain|loss|change)|cannot tell)\b/i;
    for (const key of keys) expect(en[key], key).not.toMatch(verdict);
  });

  test("every reason of the ledger has words", () => {
    for (const reason of [...SET_ASIDE_REASONS, ...NOT_COUNTED_REASONS])
      expect(wordsFor("en").has(`reason.${reason}`)).toBe(true);
  });

  test("no sentence is kept that no page says", () => {
    const families = [...source.matchAll(/[`"]([a-z.]+)\.\$\{/g)].map(([, prefix]) => `${prefix}.`);
    const kinds = [...source.matchAll(/kind="([a-z.]+)"/g), ...source.matchAll(/\["[a-z]+", "([a-z]+)"\]/g)].map(
      ([, k]) => `${k}.`,
    );
    const plain = [...source.matchAll(/plainName\(words, "([a-z]+)"/g)].map(([, k]) => `${k}.`);
    const reached = [...families, ...kinds, ...plain];
    const unused = keys.filter(
      (key) => !source.includes(`"${key}"`) && !reached.some((prefix) => key.startsWith(prefix)),
    );
    expect(unused).toEqual([]);
  });
});

test("a language without a catalogue is read in English, and says so", () => {
  expect(wordsFor("fr").language).toBe("en");
  expect(wordsFor("__proto__").language).toBe("en");
});

test("text in several languages is given in the reader's, else in English, else in the first there is", () => {
  expect(localText({ en: "Tee", es: "Soporte" }, "es")).toEqual({ text: "Soporte", language: "es" });
  expect(localText({ en: "Tee", es: "Soporte" }, "fr")).toEqual({ text: "Tee", language: "en" });
  expect(localText({ es: "Soporte" }, "en")).toEqual({ text: "Soporte", language: "es" });
  expect(localText("Tee", "es")).toEqual({ text: "Tee", language: null });
});
