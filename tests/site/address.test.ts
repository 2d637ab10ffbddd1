import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkedAddress } from "../../src/site/address.ts";

describe("addresses of the coach's links", () => {
  test.each([
    "https://example.org/drill?x=1#top",
    "HTTP://example.org",
    "mailto:coach@example.org",
    "notes.html",
    "../other/page.html",
    "#goals",
    "?page=2",
    "/here",
    "a/b:c",
  ])("%s may stand", (address) => {
    expect(checkedAddress(address)).toBe(address);
  });

  test.each([
    "javascript:alert(1)",
    "JaVaScRiPt:alert(1)",
    "java\nscript:alert(1)",
    "java\tscript:alert(1)",
    "\u0001javascript:alert(1)",
    "data:text/html,x",
    "vbscript:x",
    "file:///etc/passwd",
    "ftp://example.org",
    "//example.org",
    "\\\\example.org",
    "/\\example.org",
    "a b",
    "",
    "  ",
    ":x",
    "1a:b",
  ])("%j may not", (address) => {
    expect(checkedAddress(address)).toBeNull();
  });

  test("whatever passes, a browser reads as http, https, mailto or as an address on our own site", () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: "grapheme" }), fc.webUrl(), fc.stringMatching(/^[a-z:/\\.\t\n ]*$/)),
        (text) => {
          const address = checkedAddress(text);
          if (address === null) return;
          // The reading of a browser: WHATWG URL parsing against the page.
          const url = URL.canParse(address, "https://site.test/r/x/")
            ? new URL(address, "https://site.test/r/x/")
            : null;
          if (url === null) return;
          expect(["http:", "https:", "mailto:"]).toContain(url.protocol);
          if (!/^(https?|mailto):/i.test(address)) expect(url.origin).toBe("https://site.test");
        },
      ),
      { numRuns: 500 },
    );
  });
});
