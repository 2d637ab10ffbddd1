import { HtmlValidate } from "html-validate";
import { expect, test } from "vitest";
import { renderDesk } from "../../src/site/desk.ts";
import { desk } from "./fixture-desk.ts";
import { renderLookedAt } from "./fixture-site.ts";

const validator = new HtmlValidate({
  extends: ["html-validate:recommended", "html-validate:document"],
  rules: {
    // Written by a renderer: how a void element is closed, where white space stands and how long a line is tell a reader nothing.
    "void-style": "off",
    "no-trailing-whitespace": "off",
    // Our own file from our own host, under a name that is the hash of what is in it.
    "require-sri": "off",
    // The standard asks for "<" and "&" to be escaped, which the site's tests hold; a bare ">" is text.
    "no-raw-characters": "off",
    "no-inline-style": "error",
    // It wants <img> in place of a figure with role=img; the charts are SVG in the page, so that one drawing serves light, dark and print.
    "prefer-native-element": "off",
  },
});

test("the HTML of every page and of the desk is valid", async () => {
  const pages = [
    ...(await renderLookedAt()),
    ...(await renderDesk(desk)).map((file) => ({ ...file, path: `desk/${file.path}` })),
  ];
  const all: string[] = [];
  for (const { path, body } of pages) {
    if (!path.endsWith(".html")) continue;
    const report = await validator.validateString(String(body), path);
    const found = report.results.flatMap(({ messages }) =>
      messages.map(({ ruleId, message }) => `${path.slice(0, 2)} ${ruleId}: ${message}`),
    );
    all.push(...found);
  }
  expect([...new Set(all)]).toEqual([]);
});
