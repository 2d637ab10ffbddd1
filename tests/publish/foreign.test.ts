import { describe, expect, test } from "vitest";
import { foreignRequests, isForeign } from "../../src/publish/foreign.ts";

const html = (body: string) => foreignRequests([{ path: "index.html", body }]);
const css = (body: string) => foreignRequests([{ path: "assets/a.css", body }]);

describe("an address on another machine", () => {
  test.each([
    "https://example.org/a.css",
    "//example.org/a.css",
    "HTTP://EXAMPLE.ORG",
    "ht\ntps://example.org",
    "  https://example.org",
    "\\\\example.org/a",
    "/\\example.org",
    "ws://example.org",
    "javascript:alert(1)",
    "blob:https://example.org/1",
  ])("is %j", (address) => {
    expect(isForeign(address)).toBe(true);
  });

  test.each([
    "assets/a.css",
    "../assets/a.css",
    "/assets/a.css",
    "#top",
    "",
    "data:image/png;base64,AA",
    "?a=b",
    "a/b:c",
  ])("is not %j", (address) => {
    expect(isForeign(address)).toBe(false);
  });
});

describe("a page that would ask another machine is found", () => {
  test.each([
    ["a style sheet", '<link rel="stylesheet" href="https://example.org/a.css">'],
    ["a hint to connect", "<link rel=preconnect href=//example.org>"],
    ["a picture", '<img alt="" src="https://example.org/a.png">'],
    ["one of several pictures", '<img src="a.png" srcset="a.png 1x, https://example.org/b.png 2x">'],
    ["a picture whose address hides behind references", '<img src="&#104;ttps&colon;//example.org/a.png">'],
    ["a script", '<script src="//example.org/a.js"></script>'],
    ["a frame", "<iframe src='https://example.org'></iframe>"],
    ["a form", '<form action="https://example.org/"></form>'],
    ["a picture inside a chart", '<svg><image xlink:href="https://example.org/a.png"/></svg>'],
    ["a shape from elsewhere", '<svg><use href="https://example.org/a.svg#b"/></svg>'],
    ["a fill from elsewhere", '<svg><path fill="url(https://example.org/a.svg#b)"/></svg>'],
    ["a style attribute", '<p style="background: url(//example.org/a.png)">'],
    ["a style element", "<style>p { background: url('https://example.org/a.png') }</style>"],
    ["a jump to another page", '<meta http-equiv="Refresh" content="0; url=https://example.org">'],
    ["another base for all addresses", '<base href="/elsewhere/">'],
    ["a count of presses", '<a href="x.html" ping="https://example.org">x</a>'],
    ["a link that runs a script", '<a href="java&#10;script:alert(1)">x</a>'],
    ["a tag over several lines", '<img\n  alt=">"\n  src="https://example.org/a.png"\n>'],
  ])("%s", (_, body) => {
    expect(html(body).length).toBeGreaterThan(0);
  });

  test.each([
    ["a link to be pressed", '<a href="https://example.org">x</a> <a href="mailto:coach@example.org">write</a>'],
    [
      "names of languages of markup",
      '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"/>',
    ],
    ["an address in the text", "<p>See https://example.org/a.css and src=//example.org</p>"],
    ["an address in a description", '<img src="a.png" alt="from https://example.org">'],
    ["a policy", `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src 'self'">`],
    ["our own files", '<link href="../../assets/a.css"><img src="a.png"><svg><use href="#b"/></svg>'],
    ["a figure with a place in the report", '<data value="1.5" data-at="/series/3/change/estimate">1.5</data>'],
  ])("and %s is none", (_, body) => {
    expect(html(body)).toEqual([]);
  });
});

describe("a style sheet", () => {
  test.each([
    "a { background: url(https://example.org/a.png) }",
    "a { background: url( '//example.org/a.png' ) }",
    '@import "https://example.org/a.css";',
    "@import url(//example.org/a.css);",
    "a { background: url(\\68ttps://example.org/a.png) }",
    "a { background: url(/* x */https://example.org/a.png) }",
  ])("may not say %j", (body) => {
    expect(css(body)).toHaveLength(1);
  });

  test("may name fonts beside it", () => {
    expect(css("@font-face { src: url(sans.woff2) format('woff2') } /* https://example.org */")).toEqual([]);
  });
});

test("a script may not know an address at all", () => {
  expect(foreignRequests([{ path: "assets/a.js", body: 'fetch("https://example.org/x")' }])).toHaveLength(1);
});

test("pictures and fonts are not read as text", () => {
  expect(foreignRequests([{ path: "assets/a.png", body: Buffer.from('<img src="https://example.org">') }])).toEqual([]);
});
