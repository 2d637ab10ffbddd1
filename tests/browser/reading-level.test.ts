import { fleschKincaid } from "flesch-kincaid";
import { IntlMessageFormat } from "intl-messageformat";
import { syllable } from "syllable";
import { describe, expect, test } from "vitest";
import { en } from "../../src/site/messages/en.ts";
import { lookedAt } from "../site/fixture-site.ts";
import { fixturesServed } from "./fixtures-served.ts";

/** The grade of school that the family's English must not pass. */
const GRADE = 8;
/** A figure or a name is one short word, whatever stands in its place. */
const FIGURE = "ten";
/** Fewer words are a head or a label; the formula is made for sentences. */
const LEAST_WORDS = 5;

const wordsIn = (text: string): string[] => text.match(/[\p{L}’'-]+/gu) ?? [];

/** Flesch-Kincaid grade level: Kincaid et al. (1975), Navy Research Branch Report 8-75; syllables and formula by two libraries. */
function grade(text: string): number {
  const words = wordsIn(text);
  const sentences = text.split(/(?<=[.!?])\s+/).filter((part) => /\p{L}/u.test(part));
  return fleschKincaid({
    sentence: Math.max(1, sentences.length),
    word: words.length,
    syllable: words.reduce((sum, word) => sum + syllable(word), 0),
  });
}

type Part = ReturnType<IntlMessageFormat["getAst"]>[number];
/** A sentence with its gaps filled, of a choice the last form. */
const filled = (parts: readonly Part[]): string =>
  parts
    .map((part) => {
      if (part.type === 0) return part.value;
      return "options" in part ? filled(Object.values(part.options).at(-1)?.value ?? []) : FIGURE;
    })
    .join("");

test("the formula gives what its handbook example gives", () => {
  // "The cat sat on the mat.": 6 words, 1 sentence, 6 syllables: 0.39 · 6 + 11.8 · 1 - 15.59, the formula worked by hand.
  expect(grade("The cat sat on the mat.")).toBeCloseTo(0.39 * 6 + 11.8 - 15.59, 10);
});

describe("what a family reads is at or below the eighth grade", () => {
  const sentences = Object.entries(en)
    .filter(([key]) => !key.startsWith("club."))
    .map(([key, sentence]) => {
      const text = filled(new IntlMessageFormat(sentence, "en", undefined, { ignoreTag: true }).getAst());
      return { key, text };
    })
    .filter(({ text }) => wordsIn(text).length >= LEAST_WORDS && /[.!?]/.test(text));

  test("every pattern of a sentence", () => {
    expect(sentences.length).toBeGreaterThan(200);
    const hard = sentences.filter(({ text }) => grade(text) > GRADE);
    expect(hard.map(({ key, text }) => `${key}: ${grade(text).toFixed(1)} ${text}`)).toEqual([]);
  });

  const served = fixturesServed();
  test("every page", async () => {
    const english = lookedAt.filter(({ reader, path }) => reader === "family" && !/\/es\/|^style/.test(path));
    const page = await served.browser.newPage();
    for (const { path } of english) {
      await page.goto(`${served.server.origin}/${path}`);
      // What people wrote themselves is theirs; tables, heads and lists of facts are no sentences.
      const lines = (await page.evaluate(`(() => {
        document.querySelectorAll("[data-own], [data-coach], .voice, svg, table, nav, .dots").forEach((one) => one.remove());
        document.querySelectorAll("data, time").forEach((one) => { one.textContent = "${FIGURE}"; });
        return [...document.querySelectorAll("main p, main li, main dd")]
          .filter((one) => one.querySelector("p, li, dd") === null)
          .map((one) => one.textContent.trim());
      })()`)) as string[];
      const text = lines.filter((line) => /[.!?]$/.test(line) && wordsIn(line).length >= LEAST_WORDS).join(" ");
      expect(wordsIn(text).length, path).toBeGreaterThan(10);
      expect(grade(text), path).toBeLessThanOrEqual(GRADE);
    }
    await page.close();
  });
});
