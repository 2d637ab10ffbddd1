import { compactDecrypt } from "jose";
import { describe, expect, test } from "vitest";
import { NOTHING } from "../../src/publish/link-state.ts";
import { addressOf, type Link, linksOf } from "../../src/publish/links.ts";
import { isSealed, linkFolder, sealFiles, withKeys } from "../../src/publish/sealing.ts";
import { SEALED_HERE } from "../../src/schema/sealed.ts";
import { fromBase64url } from "../../src/seal/base64url.ts";
import { opened } from "../../src/seal/open.ts";
import { withPassphrase } from "../../src/seal/passphrase.ts";

const secret = new Uint8Array(32).fill(7);

describe("are a link's pages sealed?", () => {
  const said = (facility: boolean | "club" | undefined, athlete?: boolean, recipient?: boolean) => ({
    ...{ facility: facility === "club" ? (["club"] as const) : facility, athlete, recipient },
  });

  test("without a word those of minors are, and no others", () => {
    expect(isSealed(said(undefined), "family", true)).toBe(true);
    expect(isSealed(said(undefined), "family", false)).toBe(false);
  });

  test("the narrowest word counts", () => {
    expect(isSealed(said(true), "family", false)).toBe(true);
    expect(isSealed(said(true, false), "family", false)).toBe(false);
    expect(isSealed(said(false, false, true), "family", false)).toBe(true);
    expect(isSealed(said(true, true, false), "family", true)).toBe(false);
  });

  test("a facility that names readers says nothing of the others", () => {
    expect(isSealed(said("club"), "club", false)).toBe(true);
    expect(isSealed(said("club"), "family", false)).toBe(false);
    expect(isSealed(said("club"), "family", true)).toBe(true);
  });
});

describe("sealing a site", () => {
  const to = (recipient: string, reader: "family" | "club", sealed: boolean, withheld: string | null = null) => ({
    ...{ recipient, reader, sealed, withheld, label: null, until: null, agreedOn: "2025-10-01" },
  });
  const audiences = [
    to("home", "family", true),
    to("other-home", "family", true),
    to("club", "club", false),
    to("gone", "club", true, "withdrawn"),
  ];
  const made = async (state = NOTHING) =>
    withKeys(secret, linksOf(secret, state, [{ id: "ada-lund", audiences }], "2026-02-28"));
  const site = (links: readonly Link[]) => [
    { path: "index.html", body: "front" },
    ...links.flatMap(({ path, withheld }) =>
      withheld === null
        ? [
            { path: `${path}index.html`, body: `report of ${path}`, frame: `around ${SEALED_HERE} around` },
            { path: `${path}es/metric/index.html`, body: "informe", frame: SEALED_HERE },
            { path: `${path}img-0123456789ab.png`, body: new Uint8Array([1, 2, 3]) },
          ]
        : [],
    ),
  ];

  test("turns what lies below a sealed link into ciphertext, and leaves everything else as it is", async () => {
    const links = await made();
    const [home, , club] = links as [Link, Link, Link];
    const files = await sealFiles(secret, site(links), links);
    const at = (path: string) => files.find((file) => file.path === path)?.body;
    expect(at("index.html")).toBe("front");
    expect(at(`${club.path}index.html`)).toBe(`report of ${club.path}`);
    expect(at(`${club.path}img-0123456789ab.png`)).toEqual(new Uint8Array([1, 2, 3]));
    expect(at(`${home.path}img-0123456789ab.png`)).toBeUndefined();
    const around = /^around (\S+) around$/.exec(String(at(`${home.path}index.html`)));
    const key = fromBase64url(home.key!);
    expect(Buffer.from((await compactDecrypt(around![1]!, key)).plaintext).toString()).toBe(`report of ${home.path}`);
    const picture = await compactDecrypt(String(at(`${home.path}img-0123456789ab.png.jwe`)), key);
    expect([...picture.plaintext]).toEqual([1, 2, 3]);
    expect(JSON.stringify(files)).not.toContain(SEALED_HERE);
    expect(await sealFiles(secret, site(links), links)).toEqual(files);
  });

  test("gives every link a key of its own, another after each rotation, and unsealed ones none", async () => {
    const change = { athlete: "ada-lund", recipient: "home", kind: "rotated", on: "2026-02-01" } as const;
    const [before, after] = [await made(), await made({ ...NOTHING, changes: [change] })];
    const keys = [...before, ...after].map(({ key }) => key).filter((key) => key !== null);
    expect(new Set(keys).size).toBe(4);
    expect(before.map(({ key }) => key === null)).toEqual([false, false, true, false]);
    expect(after[1]?.key).toBe(before[1]?.key);
    expect(addressOf(before[0]!, "https://a.example")).toBe(`https://a.example/${before[0]!.path}#${before[0]!.key}`);
    expect(addressOf(before[2]!, null)).toBe(before[2]!.path);
  });

  test("mixes in the words that a link asks for: its own key alone opens nothing", async () => {
    const passphrases = [{ athlete: "ada-lund", recipient: "home", words: "four quiet words", on: "2026-02-01" }];
    const links = await made({ ...NOTHING, passphrases });
    const [home, other] = links as [Link, Link, Link];
    expect([home.key, other.key]).toEqual((await made()).slice(0, 2).map(({ key }) => key));
    const files = await sealFiles(secret, site(links), links);
    const sealedAt = (link: Link) =>
      String(files.find(({ path }) => path === `${link.path}es/metric/index.html`)?.body);
    const key = fromBase64url(home.key!);
    await expect(opened(sealedAt(home), key)).rejects.toThrow();
    const whole = await withPassphrase(key, "four quiet words", home.token);
    expect(Buffer.from(await opened(sealedAt(home), whole)).toString()).toBe("informe");
    expect(Buffer.from(await opened(sealedAt(other), fromBase64url(other.key!))).toString()).toBe("informe");
  });

  test("takes files of any length", async () => {
    const links = await made();
    const body = new Uint8Array(2_000_000).fill(65);
    const files = await sealFiles(secret, [{ path: `${links[0]!.path}report.pdf`, body }], links);
    expect(files.map(({ path }) => path)).toEqual([`${links[0]!.path}report.pdf.jwe`]);
    expect((await opened(String(files[0]!.body), fromBase64url(links[0]!.key!))).length).toBe(2_000_000);
  });

  test("stops where a page of a sealed link has no page to stand in its place", async () => {
    const links = await made();
    const page = { path: `${links[0]!.path}index.html`, body: "report" };
    await expect(sealFiles(secret, [page], links)).rejects.toThrow("no page that opens it");
    const without = { ...page, frame: "a page that holds nothing" };
    await expect(sealFiles(secret, [without], links)).rejects.toThrow("no page that opens it");
    const twice = { ...page, frame: `${SEALED_HERE} ${SEALED_HERE}` };
    await expect(sealFiles(secret, [twice], links)).rejects.toThrow("no page that opens it");
  });

  test("knows a link's folder wherever below it a file lies", () => {
    expect(linkFolder("r/abc/es/metric/index.html")).toBe("r/abc/");
    expect(linkFolder("index.html")).toBe("index.html/");
  });
});
