import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Audience, linksCsv, linksOf } from "../../src/publish/links.ts";
import { base32, TOKEN_PATTERN, tokenFor } from "../../src/publish/token.ts";
import type { LinkState } from "../../src/schema/link-state.ts";
import type { Reader } from "../../src/schema/reasons.ts";

const secret = new Uint8Array(32).fill(7);
const untouched: LinkState = { changes: [], handed: [], forgotten: [], passphrases: [] };
const to = (recipient: string, reader: Reader, more: Partial<Audience> = {}): Audience => ({
  ...{ recipient, reader, label: null, until: null, sealed: false, withheld: null, agreedOn: "2025-10-01" },
  ...more,
});
const both = [to("family", "family"), to("club", "club")];

describe("base32", () => {
  // RFC 4648 section 10, padding removed and in lower case.
  test.each([
    ["", ""],
    ["f", "my"],
    ["fo", "mzxq"],
    ["foo", "mzxw6"],
    ["foob", "mzxw6yq"],
    ["fooba", "mzxw6ytb"],
    ["foobar", "mzxw6ytboi"],
  ])("of %j is %j", (text, expected) => {
    expect(base32(Buffer.from(text))).toBe(expected);
  });

  test("keeps different bytes apart", () => {
    const bytes = fc.uint8Array({ minLength: 20, maxLength: 20 });
    fc.assert(
      fc.property(bytes, bytes, (a, b) => {
        expect(base32(a) === base32(b)).toBe(Buffer.compare(a, b) === 0);
      }),
    );
  });
});

describe("a token", () => {
  const holder = { athlete: "ada-lund", recipient: "family-1", reader: "family", rotation: 0 } as const;

  test("has 160 bits in letters that every disk and mail program keeps", () => {
    expect(tokenFor(secret, holder)).toMatch(new RegExp(`^${TOKEN_PATTERN}$`));
  });

  test("stays the same from build to build", () => {
    // Worked with Python's hmac and base64 modules from the same key and text.
    expect(tokenFor(secret, holder)).toBe(tokenFor(new Uint8Array(secret), { ...holder }));
    expect(tokenFor(secret, holder)).toBe("rxjbaem7owhcvucy4sww2hedcuonbc3n");
  });

  test("changes with the secret, the athlete, the recipient, the reader and the rotation", () => {
    const tokens = [
      tokenFor(secret, holder),
      tokenFor(new Uint8Array(32).fill(8), holder),
      tokenFor(secret, { ...holder, athlete: "ada-lunn" }),
      tokenFor(secret, { ...holder, recipient: "family-2" }),
      tokenFor(secret, { ...holder, reader: "club" }),
      tokenFor(secret, { ...holder, rotation: 1 }),
    ];
    expect(new Set(tokens).size).toBe(tokens.length);
  });

  test("cannot be had from another holder by moving letters between the fields", () => {
    const a = tokenFor(secret, { ...holder, athlete: "a", recipient: 'b","recipient":"c' });
    const b = tokenFor(secret, { ...holder, athlete: 'a","recipient":"b', recipient: "c" });
    expect(a).not.toBe(b);
  });
});

describe("the links of a season", () => {
  test("are one for each recipient, in the folder of its kind of reader", () => {
    const links = linksOf(secret, untouched, [{ id: "ada-lund", audiences: both }], "2026-02-28");
    expect(links.map(({ recipient, reader }) => [recipient, reader])).toEqual([
      ["family", "family"],
      ["club", "club"],
    ]);
    expect(links[0]?.path).toBe(`r/${links[0]?.token}/`);
    expect(links[1]?.path).toBe(`c/${links[1]?.token}/`);
  });

  test("open through their last day", () => {
    const audiences = [
      to("home", "family"),
      to("gran", "family", { until: "2026-02-28" }),
      to("aunt", "family", { until: "2026-02-27" }),
    ];
    const links = linksOf(secret, untouched, [{ id: "ada-lund", audiences }], "2026-02-28");
    expect(links.map(({ recipient, withheld }) => [recipient, withheld])).toEqual([
      ["home", null],
      ["gran", null],
      ["aunt", "link-ended"],
    ]);
  });

  test("stop the build when two would be the same", () => {
    const twice = { id: "ada-lund", audiences: both };
    expect(() => linksOf(secret, untouched, [twice, twice], "2026-02-28")).toThrow("share one link");
  });

  test("say in the list who has none, and give no address there", () => {
    const links = linksOf(
      secret,
      untouched,
      [{ id: "ada-lund", audiences: [to("family", "family"), to("club", "club", { withheld: "no-consent" })] }],
      "2026-02-28",
    );
    const token = links[0]?.token;
    expect(linksCsv(links, "https://example.org/reports")).toBe(
      "athlete,recipient,reader,link,published\n" +
        `ada-lund,family,family,https://example.org/reports/r/${token}/,yes\n` +
        "ada-lund,club,club,,no: no-consent\n",
    );
    expect(linksCsv(links, null)).toContain(`family,family,r/${token}/,yes`);
    expect(linksCsv(links, "https://example.org/")).toContain(`https://example.org/r/${token}/`);
  });
});
