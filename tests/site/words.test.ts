import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { IntlMessageFormat } from "intl-messageformat";
import { describe, expect, test } from "vitest";
import {
  CHANGE_METHODS,
  GOAL_STATUSES,
  NOT_COUNTED_REASONS,
  SENTENCES,
  SET_ASIDE_REASONS,
  VERDICTS,
} from "../../src/schema/reasons.ts";
import { desk } from "../../src/site/messages/desk.ts";
import { en as pages } from "../../src/site/messages/en.ts";
import { es } from "../../src/site/messages/es.ts";
import { localText, type MessageKey, wordsFor } from "../../src/site/words.ts";

const en = { ...desk, ...pages };
const keys = Object.keys(en) as MessageKey[];
type Part = ReturnType<IntlMessageFormat["getAst"]>[number];
const partsOf = (sentence: string) => new IntlMessageFormat(sentence, "en", undefined, { ignoreTag: true }).getAst();
const namesIn = (parts: readonly Part[]): string[] =>
  parts.flatMap((part) => {
    const options = "options" in part ? Object.values(part.options).flatMap(({ value }) => namesIn(value)) : [];
    // A literal's value is its text.
    return part.type === 0 || !("value" in part) ? options : [String(part.value), ...options];
  });
/** Gaps of a sentence, each once. */
const gapsOf = (sentence: string): string[] => [...new Set(namesIn(partsOf(sentence)))];
/** What a sentence says besides its gaps and choices. */
const plainOf = (sentence: string): string =>
  partsOf(sentence)
    .map((part) => (part.type === 0 ? part.value : ""))
    .join("");
const folder = join(import.meta.dirname, "../../src/site");
const source = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.tsx?$/.test(name) && !name.startsWith("messages"))
  .map((name) => readFileSync(join(folder, name), "utf8"))
  .join("\n");

describe("the catalogue", () => {
  test.each(["en", "es"])("every sentence can be read and filled: %s", (language) => {
    const words = wordsFor(language);
    for (const key of keys) {
      for (const n of [1, 2]) {
        const filled = words.rich(
          key,
          Object.fromEntries(gapsOf(en[key]).map((name) => [name, name === "n" ? n : "…"])),
        );
        expect(filled.join(""), key).not.toMatch(/[{}]|undefined/);
      }
    }
  });

  test("every language has the sentences of English, with the same gaps", () => {
    expect(Object.keys(es).sort()).toEqual(Object.keys(pages).sort());
    for (const [key, sentence] of Object.entries(es))
      expect(gapsOf(sentence).sort(), key).toEqual(gapsOf(pages[key as keyof typeof pages]).sort());
  });

  test("a sentence that is the same in both languages is a name, a sign or a unit", () => {
    const same = Object.entries(es).filter(([key, sentence]) => sentence === pages[key as keyof typeof pages]);
    for (const [key, sentence] of same) expect(plainOf(sentence).length, key).toBeLessThan(8);
  });

  test("no sentence prints a number of its own: no # and no ICU number or date", () => {
    for (const sentence of [...Object.values(en), ...Object.values(es)])
      expect(sentence).not.toMatch(/#|, (number|date|time)/);
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

  test("every sentence, note, status and verdict that a report may give has words", () => {
    const words = wordsFor("en");
    for (const id of SENTENCES) expect(words.has(`says.${id}`), id).toBe(true);
    for (const status of GOAL_STATUSES) expect(words.has(`goals.status.${status}`), status).toBe(true);
    for (const verdict of VERDICTS) expect(words.has(`club.verdict.${verdict}`), verdict).toBe(true);
    for (const method of CHANGE_METHODS) expect(words.has(`club.method.${method}`), method).toBe(true);
  });

  test("what a family reads holds no words of the trade of statistics", () => {
    const jargon =
      /\b(significan\w*|p[- ]value|p [<=]|confidence|degrees of freedom|df|ICC|hypothes\w*|regression|likely)\b/i;
    const family = keys.filter((key) => /^(says|note|worth|peers|method|goals|change|measure|growth)\./.test(key));
    expect(family.length).toBeGreaterThan(100);
    for (const key of family) expect(en[key], key).not.toMatch(jargon);
    const enEspañol = /\b(significativ\w*|valor p|confianza|grados de libertad|hipótesis|regresión|verosímil)\b/i;
    for (const key of family) expect(es[key as keyof typeof es], key).not.toMatch(enEspañol);
  });

  test("a verdict outside the sentences for verdicts is nowhere", () => {
    const judging = /\b(improved|declined|progressed)\b/i;
    const allowed = /^(says|club\.verdict|club\.term|method)\./;
    for (const key of keys) if (!allowed.test(key)) expect(en[key], key).not.toMatch(judging);
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
