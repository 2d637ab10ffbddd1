import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { linksCsv, linksOf } from "../../src/publish/links.ts";
import { base32, TOKEN_PATTERN, tokenFor } from "../../src/publish/token.ts";
import type { LinkState } from "../../src/schema/link-state.ts";

const secret = new Uint8Array(32).fill(7);
const open = { family: null, club: null };
const agreedOn = { family: "2025-10-01", club: "2025-10-01" };
const untouched: LinkState = { changes: [], handed: [] };

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
  test("are one for each reader when the profile names no recipients", () => {
    const links = linksOf(
      secret,
      untouched,
      [{ id: "ada-lund", recipients: undefined, withheld: open, agreedOn }],
      "2026-02-28",
    );
    expect(links.map(({ recipient, reader }) => [recipient, reader])).toEqual([
      ["family", "family"],
      ["club", "club"],
    ]);
    expect(links[0]?.path).toBe(`r/${links[0]?.token}/`);
    expect(links[1]?.path).toBe(`c/${links[1]?.token}/`);
  });

  test("are the recipients' where it names some, and none for a reader it leaves out", () => {
    const recipients = [
      { id: "home", reader: "family", label: "Home" },
      { id: "gran", reader: "family", until: "2026-02-28" },
      { id: "aunt", reader: "family", until: "2026-02-27" },
    ] as const;
    const links = linksOf(
      secret,
      untouched,
      [{ id: "ada-lund", recipients: [...recipients], withheld: open, agreedOn }],
      "2026-02-28",
    );
    expect(links.map(({ recipient, withheld }) => [recipient, withheld])).toEqual([
      ["home", null],
      ["gran", null],
      ["aunt", "link-ended"],
    ]);
  });

  test("stop the build when two would be the same", () => {
    const twice = { id: "ada-lund", recipients: undefined, withheld: open, agreedOn };
    expect(() => linksOf(secret, untouched, [twice, twice], "2026-02-28")).toThrow("share one link");
  });

  test("say in the list who has none, and give no address there", () => {
    const links = linksOf(
      secret,
      untouched,
      [{ id: "ada-lund", recipients: undefined, withheld: { family: null, club: "no-consent" }, agreedOn }],
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
